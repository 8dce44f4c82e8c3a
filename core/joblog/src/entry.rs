//! The entry: its key, its place in the order, and what it holds.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};

/// A phone's own random 128 bits, drawn once when its log is made. It says nothing of the phone or its owner.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct DeviceId(pub [u8; 16]);

/// A job's 128 bits. All that is left of a job after its purge.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct JobId(pub [u8; 16]);

/// Which entry: the device that wrote it and that device's running number.
///
/// As text, `<32 hex digits>-<counter>`; that is also how it stands in JSON.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct EntryKey {
    /// Who wrote it.
    pub device: DeviceId,
    /// The how manieth of that device: `1 <= counter <= 2^63 - 1`.
    pub counter: u64,
}

/// When a thing was done, by the phone's wall clock.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stamp {
    /// Milliseconds since 1970-01-01T00:00Z.
    pub wall_ms: i64,
    /// Local time's offset from UTC in minutes, such as 60 for UTC+1.
    pub offset_min: i32,
}

/// One thing that was done, as it stands in the log; as JSON, it is a line of a bundle.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Which.
    pub key: EntryKey,
    /// To which job it belongs.
    pub job: JobId,
    /// Hybrid logical clock, ms: at least the wall clock's reading (bounded), and more than any entry seen before.
    pub hlc: i64,
    /// The wall clock when it was written, ms since 1970-01-01T00:00Z.
    pub at_ms: i64,
    /// Local time's offset from UTC then, minutes.
    pub offset_min: i32,
    /// What kind of thing, such as `reading`.
    pub kind: String,
    /// The version of the body's form.
    pub v: u32,
    /// The body: JSON as text, verbatim as it was written or received.
    pub body: String,
}

impl Entry {
    /// The place in the order that holds on every phone: (hlc, device, counter).
    pub fn order(&self) -> (i64, DeviceId, u64) {
        (self.hlc, self.key.device, self.key.counter)
    }
}

/// A text that is no id.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{text:?} is no id of the job log")]
pub struct IdError {
    /// The text, at most its first 80 characters.
    pub text: String,
}

fn not_an_id(text: &str) -> IdError {
    IdError {
        text: text.chars().take(80).collect(),
    }
}

fn write_hex(bytes: &[u8; 16], f: &mut fmt::Formatter<'_>) -> fmt::Result {
    bytes.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
}

fn read_hex(text: &str) -> Option<[u8; 16]> {
    let digits: Vec<u8> = text
        .chars()
        .map(|c| c.to_digit(16).and_then(|d| u8::try_from(d).ok()))
        .collect::<Option<_>>()?;
    let pairs: Vec<u8> = digits
        .chunks_exact(2)
        .map(|pair| pair.iter().fold(0, |all, d| all * 16 + d))
        .collect();
    if digits.len() == 32 {
        pairs.try_into().ok()
    } else {
        None
    }
}

macro_rules! hex_id {
    ($name:ident) => {
        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write_hex(&self.0, f)
            }
        }
        impl fmt::Debug for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, concat!(stringify!($name), "({})"), self)
            }
        }
        impl FromStr for $name {
            type Err = IdError;
            fn from_str(text: &str) -> Result<Self, IdError> {
                read_hex(text).map(Self).ok_or_else(|| not_an_id(text))
            }
        }
    };
}
hex_id!(DeviceId);
hex_id!(JobId);

impl fmt::Display for EntryKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}-{}", self.device, self.counter)
    }
}

impl fmt::Debug for EntryKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "EntryKey({self})")
    }
}

impl FromStr for EntryKey {
    type Err = IdError;
    fn from_str(text: &str) -> Result<Self, IdError> {
        let read = || {
            let (device, counter) = text.split_once('-')?;
            let counter: u64 = counter.parse().ok()?;
            let in_range = counter >= 1 && i64::try_from(counter).is_ok();
            in_range.then_some(EntryKey {
                device: DeviceId(read_hex(device)?),
                counter,
            })
        };
        read().ok_or_else(|| not_an_id(text))
    }
}

macro_rules! serde_as_text {
    ($name:ident) => {
        impl Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                to.collect_str(self)
            }
        }
        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
                let text = String::deserialize(from)?;
                text.parse().map_err(serde::de::Error::custom)
            }
        }
    };
}
serde_as_text!(DeviceId);
serde_as_text!(JobId);
serde_as_text!(EntryKey);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_read_back_from_their_text() {
        let key = EntryKey {
            device: DeviceId([0xA7; 16]),
            counter: 12,
        };
        assert_eq!(key.to_string(), format!("{}-12", "a7".repeat(16)));
        assert_eq!(key.to_string().parse(), Ok(key));
        let job = JobId(*b"0123456789abcdef");
        assert_eq!(job.to_string().parse(), Ok(job));
    }

    #[test]
    fn what_is_no_id_is_refused() {
        for text in [
            "",
            "a7",
            "zz".repeat(16).as_str(),
            "é".repeat(32).as_str(),
            "00".repeat(17).as_str(),
        ] {
            assert!(text.parse::<JobId>().is_err(), "{text}");
        }
        let device = "00".repeat(16);
        for counter in ["0", "-1", "x", "9223372036854775808", ""] {
            assert!(
                format!("{device}-{counter}").parse::<EntryKey>().is_err(),
                "{counter}"
            );
        }
    }

    #[test]
    fn order_goes_by_clock_then_device_then_counter() {
        let entry = |hlc, device, counter| Entry {
            key: EntryKey {
                device: DeviceId([device; 16]),
                counter,
            },
            job: JobId([0; 16]),
            hlc,
            at_ms: 0,
            offset_min: 0,
            kind: "note".into(),
            v: 1,
            body: "{}".into(),
        };
        let mut all = [entry(2, 1, 1), entry(1, 2, 9), entry(1, 2, 10), entry(1, 1, 11)];
        all.sort_by_key(Entry::order);
        let seen: Vec<_> = all
            .iter()
            .map(|e| (e.hlc, e.key.device.0[0], e.key.counter))
            .collect();
        assert_eq!(seen, [(1, 1, 11), (1, 2, 9), (1, 2, 10), (2, 1, 1)]);
    }
}
