//! What stored trouble codes are about.

/// Codes of the mounts' control circuits. Source: public code lists, not the standard itself.
const MOUNT_CIRCUITS: [&str; 3] = ["P0A14", "P0A15", "P0A16"];
/// Codes of misfires: P0300, and P0301 to P0312 by cylinder. Source: ISO 15031-6 (SAE J2012), from memory.
const MISFIRES: &str = "P03";
const CYLINDERS: u32 = 12;

/// Whether a code is of a mount's control circuit. It names a circuit, never a part.
pub(crate) fn is_of_a_mount(code: &str) -> bool {
    let code = plain(code);
    MOUNT_CIRCUITS.iter().any(|known| code.starts_with(known))
}

/// Whether a code says that the engine misfires.
pub(crate) fn is_misfire(code: &str) -> bool {
    let code = plain(code);
    let cylinder = code.strip_prefix(MISFIRES).and_then(|rest| rest.get(..2));
    cylinder
        .and_then(|digits| digits.parse::<u32>().ok())
        .is_some_and(|n| n <= CYLINDERS)
}

fn plain(code: &str) -> String {
    code.trim().to_ascii_uppercase()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_are_told_apart_as_people_type_them() {
        assert!(is_of_a_mount(" p0a15 "));
        assert!(
            is_of_a_mount("P0A14-13"),
            "with the failure type of newer readers"
        );
        assert!(!is_of_a_mount("P0300"));
        for misfire in ["P0300", "p0304", "P0312"] {
            assert!(is_misfire(misfire), "{misfire}");
        }
        for other in ["P0313", "P0335", "P03", "P0A14", ""] {
            assert!(!is_misfire(other), "{other}");
        }
    }
}
