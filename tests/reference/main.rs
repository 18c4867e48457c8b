//! Tests: reference.
