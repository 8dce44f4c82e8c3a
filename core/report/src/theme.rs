//! One table from colour role to colour, for day and for night.

use crate::scene::Role;

/// Light ground or dark ground.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Theme {
    /// For daylight, print and PDF.
    #[default]
    Day,
    /// For a dark garage.
    Night,
}

/// The colour of a role as sRGB red, green, blue.
#[must_use]
pub fn colour(role: Role, theme: Theme) -> [u8; 3] {
    let (day, night) = pair(role);
    let rgb = match theme {
        Theme::Day => day,
        Theme::Night => night,
    };
    let [_, red, green, blue] = u32::to_be_bytes(rgb);
    [red, green, blue]
}

/// The colour of a role in print: the day's, on white paper.
pub(crate) fn print(role: Role) -> [u8; 3] {
    match role {
        Role::Paper | Role::Raised => [255, 255, 255],
        role => colour(role, Theme::Day),
    }
}

/// Day and night colour as 0xRRGGBB.
fn pair(role: Role) -> (u32, u32) {
    match role {
        Role::Paper => (0x00FB_FAF6, 0x0010_1316),
        Role::Raised => (0x00FF_FFFF, 0x001B_1F23),
        Role::Ink => (0x0015_191C, 0x00F3_F1EA),
        Role::QuietInk => (0x004B_5156, 0x00B4_B8B8),
        Role::Line => (0x008B_9093, 0x0061_686D),
        Role::Needle => (0x0096_3000, 0x00FF_8A4C),
        Role::OnNeedle => (0x00FF_FFFF, 0x0010_1316),
        Role::Band => (0x00D5_E3DC, 0x0024_4238),
        Role::Suspect => (0x00F4_DCC8, 0x0052_2F1A),
        Role::Holds => (0x0000_5A43, 0x002F_C79B),
        Role::SlowLeak => (0x0074_4C00, 0x00E6_9F00),
        Role::Leaks => (0x0093_3A00, 0x00FF_8B4D),
        Role::Undecided => (0x0000_527F, 0x006D_BFEE),
        Role::WontBuild => (0x007D_2F5C, 0x00E3_9BC3),
        Role::NotDone | Role::CantDo => (0x004B_5156, 0x00B4_B8B8),
        Role::Vacuum => (0x002E_5F73, 0x007F_B9CE),
        Role::Electric => (0x006A_4A86, 0x00C3_A5DE),
        Role::LeadRed => (0x00A6_1414, 0x00FF_8F85),
        Role::LeadBlack => (0x0015_191C, 0x00F3_F1EA),
        Role::Danger => (0x009E_1B1B, 0x00FF_8F85),
        Role::Warning => (0x008A_3C00, 0x00FF_9A52),
        Role::Caution => (0x006B_5200, 0x00F2_C94C),
        Role::Notice => (0x0000_4F86, 0x0077_BDF2),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: WCAG 2.2, definitions of relative luminance and contrast ratio.
    fn luminance(rgb: [u8; 3]) -> f64 {
        let [r, g, b] = rgb.map(|c| {
            let c = f64::from(c) / 255.0;
            if c <= 0.04045 {
                c / 12.92
            } else {
                ((c + 0.055) / 1.055).powf(2.4)
            }
        });
        0.2126 * r + 0.7152 * g + 0.0722 * b
    }

    fn contrast(a: [u8; 3], b: [u8; 3]) -> f64 {
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    const TEXT: [Role; 16] = [
        Role::Ink,
        Role::QuietInk,
        Role::Needle,
        Role::Holds,
        Role::SlowLeak,
        Role::Leaks,
        Role::Undecided,
        Role::WontBuild,
        Role::NotDone,
        Role::CantDo,
        Role::LeadRed,
        Role::LeadBlack,
        Role::Danger,
        Role::Warning,
        Role::Caution,
        Role::Notice,
    ];

    /// Source: worked values for black/white, #777777/white and a published pair (255,129,0)/(100,0,58).
    #[test]
    fn contrast_formula_gives_the_published_values() {
        assert!((contrast([0, 0, 0], [255, 255, 255]) - 21.0).abs() < 1e-3);
        assert!((contrast([0x77; 3], [255; 3]) - 4.4781).abs() < 1e-3);
        assert!((contrast([255, 129, 0], [100, 0, 58]) - 5.235_370).abs() < 1e-3);
    }

    #[test]
    fn text_has_seven_to_one_on_its_grounds_by_day_and_night() {
        for theme in [Theme::Day, Theme::Night] {
            for ground in [Role::Paper, Role::Raised] {
                for role in TEXT {
                    let ratio = contrast(colour(role, theme), colour(ground, theme));
                    assert!(ratio >= 7.0, "{role:?} on {ground:?} by {theme:?}: {ratio:.2}");
                }
            }
            for ground in [Role::Needle, Role::LeadRed, Role::LeadBlack] {
                let ratio = contrast(colour(Role::OnNeedle, theme), colour(ground, theme));
                assert!(ratio >= 7.0, "text on {ground:?} by {theme:?}: {ratio:.2}");
            }
        }
    }

    #[test]
    fn text_has_seven_to_one_in_print() {
        for role in TEXT {
            let ratio = contrast(print(role), print(Role::Paper));
            assert!(ratio >= 7.0, "{role:?} in print: {ratio:.2}");
        }
    }

    /// Source: WCAG 2.2, 1.4.11 non-text contrast, 3:1.
    #[test]
    fn lines_have_three_to_one_on_paper() {
        for theme in [Theme::Day, Theme::Night] {
            for role in [Role::Line, Role::Vacuum, Role::Electric] {
                let ratio = contrast(colour(role, theme), colour(Role::Paper, theme));
                assert!(ratio >= 3.0, "{role:?} by {theme:?}: {ratio:.2}");
            }
        }
    }
}
