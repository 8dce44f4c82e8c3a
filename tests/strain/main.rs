//! The report of a job made to strain it: sixty readings, twenty-four pictures, names in six scripts, notes of ten
//! thousand characters. The validator that is not ours judges the same files in `cargo xtask test report`.

use holdfast_tests::printed::drawn;
use holdfast_tests::stress::{NAMES, PICTURES, job};

/// What can't be drawn is shown as this.
const REPLACED: char = '\u{fffd}';

#[test]
fn the_report_has_all_pictures_names_and_long_notes() {
    let data = tempfile::tempdir().expect("a folder");
    let job = job(data.path()).expect("the job").to_string();
    for paper in ["a4", "letter"] {
        let pages = drawn(data.path(), &job, paper).expect("the pages");
        let texts: Vec<&String> = pages.iter().flat_map(|page| &page.texts).collect();
        let all = texts
            .iter()
            .map(|text| text.as_str())
            .collect::<Vec<_>>()
            .join(" ");
        for name in NAMES {
            assert!(all.contains(name), "{name} on {paper}");
        }
        // One picture of a car among the notes has no font; nothing else is replaced.
        assert_eq!(all.matches(REPLACED).count(), 1, "{paper}");
        let images: usize = pages.iter().map(|page| page.images).sum();
        assert_eq!(images, PICTURES, "{paper}");
        let count = pages.len();
        assert!(
            all.contains(&format!("Page {count} of {count}")),
            "{count} on {paper}"
        );
        // The second page is the evidence: the customer's is one page.
        assert!(pages[1].texts.iter().any(|text| text == "Evidence"), "{paper}");
    }
}
