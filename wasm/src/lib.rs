//! Thin bindings of the engine for the page. No engineering here.
