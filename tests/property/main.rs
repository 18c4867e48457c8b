//! Tests: property.
