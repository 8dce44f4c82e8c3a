//! Number plates: typed with and without gaps, dashes and dots, searched for alike.

/// A plate for search: letters and digits only, upper case.
///
/// ```
/// assert_eq!(holdfast_joblog::plate_for_search("hf-204 é"), "HF204É");
/// ```
pub fn normal(plate: &str) -> String {
    plate
        .chars()
        .filter(|c| c.is_alphanumeric())
        .flat_map(char::to_uppercase)
        .collect()
}
