//! Quantities as a person reads them: number, no-break space, unit, with no more decimals than mean something.

use chrono::{Datelike, NaiveDate, NaiveDateTime, Timelike};
use holdfast_measure::{Bound, EverydayUnit, Pressure, PressureUnit};

use super::figures::Thousands;
use super::{Args, Texts};
use crate::odometer;

impl Texts {
    /// A vacuum or a drop in the shown unit: "20 inHg", "6.5 inHg".
    #[must_use]
    pub fn vacuum(&self, vacuum: Pressure) -> String {
        self.vacuum_in(vacuum, self.unit())
    }

    /// A vacuum in a unit of its own, such as the unit it was typed in.
    #[must_use]
    pub fn vacuum_in(&self, vacuum: Pressure, unit: PressureUnit) -> String {
        let number = self.number(unit.from_pressure(vacuum), unit.decimals());
        self.with_unit(&number, unit.symbol())
    }

    /// A pressure counted from nothing, in kPa: "101.3 kPa".
    #[must_use]
    pub fn absolute_kpa(&self, kpa: f64) -> String {
        self.with_unit(&self.number(kpa, 1), "kPa")
    }

    /// Volts: two decimals below 1 V, else one.
    #[must_use]
    pub fn volts(&self, volts: f64) -> String {
        let decimals = if volts.abs() < 0.995 { 2 } else { 1 };
        self.with_unit(&self.number(volts, decimals), "V")
    }

    /// Ohms, in Ω, kΩ or MΩ, to about three figures.
    #[must_use]
    pub fn ohms(&self, ohms: f64) -> String {
        let (value, unit) = match ohms.abs() {
            below if below < 1e3 => (ohms, "Ω"),
            below if below < 1e6 => (ohms / 1e3, "kΩ"),
            _ => (ohms / 1e6, "MΩ"),
        };
        let decimals = usize::from(value.abs() < 99.95);
        self.with_unit(&self.number(value, decimals), unit)
    }

    /// Amperes, to two decimals below 1 A, else one; whole ones without.
    #[must_use]
    pub fn amperes(&self, amperes: f64) -> String {
        let decimals = if amperes.fract().abs() < 1e-9 {
            0
        } else if amperes.abs() < 0.995 {
            2
        } else {
            1
        };
        self.with_unit(&self.number(amperes, decimals), "A")
    }

    /// Seconds, as minutes and seconds from two minutes on: "20 s", "1.5 s", "2 min 30 s".
    #[must_use]
    pub fn seconds(&self, seconds: f64) -> String {
        let whole = seconds.round();
        if whole >= 120.0 {
            let minutes = (whole / 60.0).floor();
            let rest = whole - minutes * 60.0;
            let minutes = self.with_unit(&self.number(minutes, 0), "min");
            if rest < 0.5 {
                return minutes;
            }
            return format!("{minutes} {}", self.with_unit(&self.number(rest, 0), "s"));
        }
        let decimals = usize::from(seconds < 9.95 && (seconds - whole).abs() > 0.049);
        self.with_unit(&self.number(seconds, decimals), "s")
    }

    /// Minutes to plan with: whole ones, hours from 60 on, "under 1 min" for less.
    #[must_use]
    pub fn minutes(&self, minutes: f64) -> String {
        let whole = minutes.round();
        if whole < 1.0 {
            return self.say("quantity-under-a-minute");
        }
        if whole < 60.0 {
            return self.with_unit(&self.number(whole, 0), "min");
        }
        let hours = (whole / 60.0).floor();
        let rest = whole - hours * 60.0;
        let hours = self.with_unit(&self.number(hours, 0), "h");
        if rest < 0.5 {
            return hours;
        }
        format!("{hours} {}", self.with_unit(&self.number(rest, 0), "min"))
    }

    /// A share between 0 and 1 in percent, never rounded to certainty: "97 %", "over 99 %", "under 1 %".
    #[must_use]
    pub fn percent(&self, share: f64) -> String {
        let percent = share * 100.0;
        if percent >= 99.5 {
            return self.say("quantity-over-99-percent");
        }
        if percent < 0.5 {
            return self.say("quantity-under-1-percent");
        }
        self.percents(&self.number(percent, 0))
    }

    /// A figure in percent.
    #[must_use]
    pub fn percents(&self, figure: &str) -> String {
        self.say_with("quantity-percent", &Args::new().text("number", figure))
    }

    /// A leak in standard cm³/min, to two figures.
    #[must_use]
    pub fn leak(&self, std_cm3_min: f64) -> String {
        self.with_unit(&self.two_figures(std_cm3_min), &self.say("unit-leak"))
    }

    /// A leak's figure alone, to two figures, beside another one that bears the unit.
    #[must_use]
    pub fn leak_number(&self, std_cm3_min: f64) -> String {
        self.two_figures(std_cm3_min)
    }

    /// A hole's width, to two figures.
    #[must_use]
    pub fn millimetres(&self, mm: f64) -> String {
        let (width, unit) = self.everyday(mm, EverydayUnit::Millimetre);
        self.with_unit(&self.two_figures(width), unit.symbol())
    }

    /// A gap or a sag as a rule shows it: whole millimetres, hundredths of an inch.
    #[must_use]
    pub fn gap(&self, mm: f64) -> String {
        let (gap, unit) = self.everyday(mm, EverydayUnit::Millimetre);
        let decimals = if unit == EverydayUnit::Inch { 2 } else { 0 };
        self.with_unit(&self.number(gap, decimals), unit.symbol())
    }

    /// A figure with its unit, two decimals unless it is whole; lengths and temperatures in the person's unit.
    #[must_use]
    pub fn figure(&self, figure: f64, unit: &str) -> String {
        let (figure, unit) = match EverydayUnit::from_symbol(unit) {
            Some(stored) => {
                let (figure, shown) = self.everyday(figure, stored);
                (figure, shown.symbol())
            }
            None => (figure, unit),
        };
        let decimals = if (figure - figure.round()).abs() < 1e-9 {
            0
        } else {
            2
        };
        self.with_unit(&self.number(figure, decimals), unit)
    }

    /// An odometer as typed with its unit; a plain figure as the locale writes it.
    #[must_use]
    pub fn odometer(&self, typed: &str) -> String {
        let (figure, unit) = odometer::parts(typed);
        match (figure.parse::<u32>(), unit) {
            (Ok(figure), Some(unit)) => self.with_unit(&self.number(f64::from(figure), 0), unit.symbol()),
            _ => typed.to_owned(),
        }
    }

    /// A stored figure in the unit it is shown in.
    fn everyday(&self, figure: f64, stored: EverydayUnit) -> (f64, EverydayUnit) {
        let shown = self.units().shown(stored);
        (stored.convert(figure, shown), shown)
    }

    /// A volume in cm³, whole.
    #[must_use]
    pub fn volume(&self, cm3: f64) -> String {
        self.with_unit(&self.number(cm3, 0), "cm³")
    }

    /// A temperature, whole.
    #[must_use]
    pub fn celsius(&self, celsius: f64) -> String {
        let (temperature, unit) = self.everyday(celsius, EverydayUnit::Celsius);
        self.with_unit(&self.number(temperature, 0), unit.symbol())
    }

    /// A length: whole from ten on, else one decimal.
    #[must_use]
    pub fn metres(&self, metres: f64) -> String {
        let (length, unit) = self.everyday(metres, EverydayUnit::Metre);
        let decimals = usize::from(length.abs() < 9.95);
        self.with_unit(&self.number(length, decimals), unit.symbol())
    }

    /// A height above the sea, whole.
    #[must_use]
    pub fn altitude(&self, metres: f64) -> String {
        let (height, unit) = self.everyday(metres, EverydayUnit::Metre);
        self.with_unit(&self.number(height, 0), unit.symbol())
    }

    /// Revolutions a minute, to the nearest ten.
    #[must_use]
    pub fn rpm(&self, rpm: f64) -> String {
        self.with_unit(&self.number((rpm / 10.0).round() * 10.0, 0), Bound::RPM.unit)
    }

    /// How many times as much: "2.4 times", whole from ten on, two figures from a hundred on, never over a thousand.
    #[must_use]
    pub fn times(&self, times: f64) -> String {
        if times > 1_000.0 {
            return self.say("quantity-over-1000-times");
        }
        if times >= 99.5 {
            return self.with_unit(&self.two_figures(times), &self.say("quantity-times"));
        }
        let decimals = usize::from(times.abs() < 9.95 && (times - times.round()).abs() > 0.049);
        self.with_unit(&self.number(times, decimals), &self.say("quantity-times"))
    }

    /// A number with its unit behind a no-break space.
    #[must_use]
    pub fn with_unit(&self, number: &str, unit: &str) -> String {
        let unit = self.unit_name(unit);
        self.say_with("quantity", &Args::new().text("number", number).text("unit", unit))
    }

    /// A unit as people write it behind a number: its symbol, but for those that each language has its own for.
    #[must_use]
    pub fn unit_name(&self, symbol: &str) -> String {
        if symbol == Bound::RPM.unit {
            self.say("unit-rpm")
        } else {
            symbol.replace("cm2", "cm²")
        }
    }

    /// A number with a fixed count of decimals, the language's decimal mark and a true minus.
    #[must_use]
    pub fn number(&self, value: f64, decimals: usize) -> String {
        if !value.is_finite() {
            return self.say("quantity-no-number");
        }
        self.figures.number(value, decimals, Thousands::Apart)
    }

    /// A number to be edited: as [`Texts::number`], nothing between the thousands.
    #[must_use]
    pub fn editable(&self, value: f64, decimals: usize) -> String {
        if !value.is_finite() {
            return String::new();
        }
        self.figures.number(value, decimals, Thousands::Together)
    }

    /// A typed number as [`holdfast_measure::parse_number`] reads it: this locale's thousands together.
    #[must_use]
    pub fn typed_number(&self, typed: &str) -> String {
        self.figures.without_groups(typed)
    }

    /// The language's decimal mark.
    #[must_use]
    pub fn decimal_mark(&self) -> char {
        self.figures.decimal_mark()
    }

    /// A day in full: "November 25, 2026".
    #[must_use]
    pub fn day(&self, day: NaiveDate) -> Option<String> {
        self.figures.day(parts_of(day)?)
    }

    /// A day in full with the minute: "November 25, 2026 at 9:10 AM".
    #[must_use]
    pub fn day_and_minute(&self, time: NaiveDateTime) -> Option<String> {
        let minute = (u8::try_from(time.hour()).ok()?, u8::try_from(time.minute()).ok()?);
        self.figures.minute(parts_of(time.date())?, minute)
    }

    /// A number to two figures: "0.22", "4.1", "41", "410".
    #[must_use]
    pub fn two_figures(&self, value: f64) -> String {
        if value == 0.0 || !value.is_finite() {
            return self.number(value, 0);
        }
        let exponent = value.abs().log10().floor();
        let step = 10f64.powf(exponent - 1.0);
        let rounded = (value / step).round() * step;
        let decimals = if exponent < 1.0 {
            (1.0 - exponent).clamp(0.0, 4.0) as usize
        } else {
            0
        };
        self.number(rounded, decimals)
    }
}

fn parts_of(day: NaiveDate) -> Option<(i32, u8, u8)> {
    let month = u8::try_from(day.month()).ok()?;
    Some((day.year(), month, u8::try_from(day.day()).ok()?))
}
