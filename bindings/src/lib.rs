//! The library that phones load: the companion's scaffolding under one name, and nothing else.
holdfast_companion::uniffi_reexport_scaffolding!();
