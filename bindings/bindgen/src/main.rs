//! Writes the foreign sources for the bindings; `cargo xtask` calls it.
fn main() {
    uniffi::uniffi_bindgen_main()
}
