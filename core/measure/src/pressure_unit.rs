//! The units found on vacuum dials and in phones' barometers.

use serde::{Deserialize, Serialize};
use uom::si::f64::Pressure;
use uom::si::pressure::{
    bar, centimeter_of_mercury, inch_of_mercury, kilogram_force_per_square_centimeter, kilopascal, millibar,
    millimeter_of_mercury, pound_force_per_square_inch,
};

/// A unit of pressure as it is printed on a dial.
///
/// Columns of mercury are the conventional ones (density 13 595.1 kg/m³, 9.806 65 m/s²), so that
/// 29.92 inHg is one standard atmosphere; the unit "at 60 °F" of some handbooks is 0.28 % smaller and is
/// not modelled.
///
/// # Source
/// NIST Special Publication 811, appendix B.8, by way of the `uom` library.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, Default)]
pub enum PressureUnit {
    /// Inch of mercury, 3386.389 Pa.
    #[default]
    #[serde(rename = "inHg")]
    InHg,
    /// Centimetre of mercury, 1333.224 Pa; the inner scale of many dials.
    #[serde(rename = "cmHg")]
    CmHg,
    /// Millimetre of mercury, 133.3224 Pa.
    #[serde(rename = "mmHg")]
    MmHg,
    /// Kilopascal.
    #[serde(rename = "kPa")]
    KPa,
    /// Millibar, the same as hectopascal, 100 Pa.
    #[serde(rename = "mbar")]
    Mbar,
    /// Bar, 100 000 Pa.
    #[serde(rename = "bar")]
    Bar,
    /// Pound-force per square inch, 6894.76 Pa.
    #[serde(rename = "psi")]
    Psi,
    /// Kilogram-force per square centimetre, 98 066.5 Pa; older dials.
    #[serde(rename = "kgf/cm2")]
    KgfCm2,
}

impl PressureUnit {
    /// Every unit, in the order in which a person is offered them.
    pub const ALL: [Self; 8] = [
        Self::InHg,
        Self::KPa,
        Self::Mbar,
        Self::Bar,
        Self::CmHg,
        Self::MmHg,
        Self::Psi,
        Self::KgfCm2,
    ];

    /// The symbol in plain ASCII, the same as in stored data: `inHg`, `kgf/cm2`.
    #[must_use]
    pub fn symbol(self) -> &'static str {
        match self {
            Self::InHg => "inHg",
            Self::CmHg => "cmHg",
            Self::MmHg => "mmHg",
            Self::KPa => "kPa",
            Self::Mbar => "mbar",
            Self::Bar => "bar",
            Self::Psi => "psi",
            Self::KgfCm2 => "kgf/cm2",
        }
    }

    /// The unit of a symbol; case, spaces and the superscript in `kgf/cm²` don't matter, and `hPa` is `mbar`.
    #[must_use]
    pub fn from_symbol(text: &str) -> Option<Self> {
        let plain: String = text
            .chars()
            .filter(|c| !c.is_whitespace())
            .map(|c| if c == '²' { '2' } else { c })
            .collect();
        let plain = plain.to_ascii_lowercase();
        if plain == "hpa" {
            return Some(Self::Mbar);
        }
        Self::ALL
            .into_iter()
            .find(|unit| unit.symbol().eq_ignore_ascii_case(&plain))
    }

    /// Decimals that show about a tenth of an inHg, what a person can tell on a dial.
    #[must_use]
    pub fn decimals(self) -> usize {
        match self {
            Self::MmHg | Self::Mbar => 0,
            Self::InHg | Self::CmHg | Self::KPa => 1,
            Self::Psi => 2,
            Self::Bar | Self::KgfCm2 => 3,
        }
    }

    /// The pressure of a figure in this unit.
    #[must_use]
    pub fn to_pressure(self, figure: f64) -> Pressure {
        match self {
            Self::InHg => Pressure::new::<inch_of_mercury>(figure),
            Self::CmHg => Pressure::new::<centimeter_of_mercury>(figure),
            Self::MmHg => Pressure::new::<millimeter_of_mercury>(figure),
            Self::KPa => Pressure::new::<kilopascal>(figure),
            Self::Mbar => Pressure::new::<millibar>(figure),
            Self::Bar => Pressure::new::<bar>(figure),
            Self::Psi => Pressure::new::<pound_force_per_square_inch>(figure),
            Self::KgfCm2 => Pressure::new::<kilogram_force_per_square_centimeter>(figure),
        }
    }

    /// The figure of a pressure in this unit.
    #[must_use]
    pub fn from_pressure(self, pressure: Pressure) -> f64 {
        match self {
            Self::InHg => pressure.get::<inch_of_mercury>(),
            Self::CmHg => pressure.get::<centimeter_of_mercury>(),
            Self::MmHg => pressure.get::<millimeter_of_mercury>(),
            Self::KPa => pressure.get::<kilopascal>(),
            Self::Mbar => pressure.get::<millibar>(),
            Self::Bar => pressure.get::<bar>(),
            Self::Psi => pressure.get::<pound_force_per_square_inch>(),
            Self::KgfCm2 => pressure.get::<kilogram_force_per_square_centimeter>(),
        }
    }

    /// The figure with [`decimals`](Self::decimals) and a full stop, without the symbol: `"67.7"`.
    ///
    /// A figure that rounds to zero has no minus. Local decimal signs are the business of the caller.
    #[must_use]
    pub fn format(self, pressure: Pressure) -> String {
        let text = format!("{:.*}", self.decimals(), self.from_pressure(pressure));
        match text.strip_prefix('-') {
            Some(rest) if rest.chars().all(|c| c == '0' || c == '.') => rest.to_owned(),
            _ => text,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_symbol_names_its_unit() {
        for unit in PressureUnit::ALL {
            assert_eq!(PressureUnit::from_symbol(unit.symbol()), Some(unit));
        }
        assert_eq!(PressureUnit::from_symbol(" kgf/cm² "), Some(PressureUnit::KgfCm2));
        assert_eq!(PressureUnit::from_symbol("hPa"), Some(PressureUnit::Mbar));
        assert_eq!(PressureUnit::from_symbol("furlong"), None);
    }

    #[test]
    fn a_figure_that_rounds_to_zero_has_no_minus() {
        assert_eq!(
            PressureUnit::InHg.format(PressureUnit::InHg.to_pressure(-0.01)),
            "0.0"
        );
        assert_eq!(
            PressureUnit::InHg.format(PressureUnit::InHg.to_pressure(-0.06)),
            "-0.1"
        );
    }
}
