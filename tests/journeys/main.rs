//! Tests: journeys.
