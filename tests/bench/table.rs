//! The figures as a table.

/// A figure in ms, with what is wanted of it.
pub struct Row {
    what: String,
    want: &'static str,
    ms: f64,
}

impl Row {
    /// A figure that something is wanted of.
    pub fn wanted(what: &str, want: &'static str, ms: f64) -> Self {
        Self {
            what: what.to_owned(),
            want,
            ms,
        }
    }

    /// A figure that stands beside it.
    pub fn shown(what: impl Into<String>, ms: f64) -> Self {
        Self {
            what: what.into(),
            want: "",
            ms,
        }
    }
}

/// Prints the rows.
pub fn print(rows: &[Row]) {
    println!("{:<48} {:>10} {:>12}", "", "want", "got");
    for Row { what, want, ms } in rows {
        println!("{what:<48} {want:>10} {ms:>9.2} ms");
    }
}
