//! Names: components, tests, faults, and the texts that belong to each of them.

use holdfast_diagnose::{ComponentId, FaultId, TestId};

use super::{Args, Texts};

impl Texts {
    /// A component as it stands after "the": "front mount".
    #[must_use]
    pub fn part(&self, part: &ComponentId) -> String {
        self.part_by_id(part.as_str())
    }

    fn part_by_id(&self, id: &str) -> String {
        self.known_part(id).unwrap_or_else(|| id.replace('_', " "))
    }

    /// A part's name: its own, a side with the name of the rest, or the name of the stem with a number.
    fn known_part(&self, id: &str) -> Option<String> {
        if let Some(name) = self.find(&format!("part-{}", kebab(id)), &Args::new()) {
            return Some(name);
        }
        if let Some((side, rest)) = id.split_once('_')
            && let Some(side) = self.find(&format!("side-{side}"), &Args::new())
        {
            let part = self.known_part(rest)?;
            return Some(self.say_with("part-of-side", &Args::new().text("side", side).text("part", part)));
        }
        let (stem, number) = id.rsplit_once('_')?;
        if !is_ordinal(number) {
            return None;
        }
        let part = self.known_part(stem)?;
        let args = Args::new()
            .text("part", part)
            .text("number", number.to_uppercase());
        Some(self.say_with("part-numbered", &args))
    }

    #[cfg(test)]
    pub(super) fn knows_part(&self, id: &str) -> bool {
        self.known_part(id).is_some()
    }

    /// A component at the start of a line: "Front mount".
    #[must_use]
    pub fn part_title(&self, part: &ComponentId) -> String {
        capital(&self.part(part))
    }

    /// What a component is and does, for someone who never saw one.
    #[must_use]
    pub fn about_part(&self, part: &ComponentId) -> Option<String> {
        families(part.as_str())
            .iter()
            .find_map(|family| self.find(&format!("about-{family}"), &Args::new()))
    }

    /// What to look for on a component.
    #[must_use]
    pub fn look_hint(&self, part: &ComponentId) -> Option<String> {
        families(part.as_str())
            .iter()
            .map(String::as_str)
            .chain(["other"])
            .find_map(|family| self.find(&format!("look-hint-{family}"), &Args::new()))
    }

    /// A test's name.
    #[must_use]
    pub fn test_title(&self, test: &TestId) -> String {
        self.test_text(test, "title", &Args::new())
            .unwrap_or_else(|| test.to_string())
    }

    /// A test in a line with its reading, where a question would read badly: "Vacuum at the mounts".
    #[must_use]
    pub fn test_name(&self, test: &TestId) -> String {
        self.test_text(test, "name", &Args::new())
            .map_or_else(|| self.test_title(test), |name| capital(&name))
    }

    /// A text of a test by what it is: `title`, `why`, `explain`, `place`, `means-leaks`, `field-pin1` …
    ///
    /// A test of one part looks for its own text, then for that of the part's family, then for the test's. `$part` is
    /// always there; `args` brings the rest.
    #[must_use]
    pub fn test_text(&self, test: &TestId, what: &str, args: &Args) -> Option<String> {
        let args = match &test.part {
            Some(part) => args.clone().text("part", self.part(part)),
            None => args.clone(),
        };
        test_keys(test)
            .iter()
            .find_map(|key| self.find(&format!("{key}-{what}"), &args))
    }

    /// The steps of a test, or the things to look for: all texts `what-1`, `what-2` … of the nearest set there is.
    #[must_use]
    pub fn test_texts(&self, test: &TestId, what: &str, args: &Args) -> Vec<String> {
        let args = match &test.part {
            Some(part) => args.clone().text("part", self.part(part)),
            None => args.clone(),
        };
        test_keys(test)
            .iter()
            .map(|key| self.numbered(&format!("{key}-{what}"), &args))
            .find(|texts| !texts.is_empty())
            .unwrap_or_default()
    }

    /// A fault as a clause: "the front hose leaks".
    #[must_use]
    pub fn fault(&self, fault: &FaultId) -> String {
        if fault.mode.is_empty() {
            return self.say("fault-other");
        }
        let args = Args::new().text("part", self.part(&fault.component));
        let mode = kebab(&fault.mode);
        families(fault.component.as_str())
            .iter()
            .map(|family| format!("fault-{family}-{mode}"))
            .chain([format!("fault-{mode}"), "fault-unknown".to_owned()])
            .find_map(|key| self.find(&key, &args))
            .unwrap_or_else(|| fault.to_string())
    }

    /// The faults of one cause as a clause; none of them is a sound circuit.
    #[must_use]
    pub fn cause(&self, faults: &[FaultId]) -> String {
        match faults {
            [] => self.say("fault-none"),
            [one] => self.fault(one),
            several => {
                let clauses: Vec<String> = several.iter().map(|f| self.fault(f)).collect();
                self.list(&clauses)
            }
        }
    }

    /// What to do about a part and what to mind, in order; the last lines hold for every repair.
    #[must_use]
    pub fn repair_lines(&self, part: &ComponentId) -> Vec<String> {
        let args = Args::new().text("part", self.part(part));
        let mut lines = families(part.as_str())
            .iter()
            .map(|family| self.numbered(&format!("repair-{family}"), &args))
            .find(|lines| !lines.is_empty())
            .unwrap_or_else(|| self.numbered("repair-part", &args));
        lines.extend(self.numbered("repair-all", &args));
        lines
    }

    /// All texts `key-1`, `key-2` … until one is missing.
    #[must_use]
    pub fn numbered(&self, key: &str, args: &Args) -> Vec<String> {
        (1..)
            .map_while(|n| self.find(&format!("{key}-{n}"), args))
            .collect()
    }
}

/// A clause as a sentence: capital and full stop.
#[must_use]
pub fn sentence(clause: &str) -> String {
    let clause = capital(clause.trim());
    if clause.ends_with(['.', '!', '?', '…']) || clause.is_empty() {
        clause
    } else {
        format!("{clause}.")
    }
}

/// The first letter as a capital.
#[must_use]
pub fn capital(words: &str) -> String {
    let mut letters = words.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// An id as it stands in a key: `front_hose` → `front-hose`.
#[must_use]
pub(crate) fn kebab(id: &str) -> String {
    id.replace('_', "-")
}

/// Where the texts of a test are looked for, nearest first.
fn test_keys(test: &TestId) -> Vec<String> {
    let kind = test.kind.as_str();
    let mut keys: Vec<String> = match &test.part {
        Some(part) => families(part.as_str())
            .into_iter()
            .map(|family| format!("test-{kind}-{family}"))
            .collect(),
        None => Vec::new(),
    };
    keys.push(format!("test-{kind}"));
    keys
}

/// What a component's texts are looked up by, nearest first: its id, its id without a number, its last words.
pub(super) fn families(id: &str) -> Vec<String> {
    let mut families = vec![kebab(id)];
    let mut rest = id;
    if let Some((stem, number)) = rest.rsplit_once('_')
        && is_ordinal(number)
    {
        rest = stem;
        families.push(kebab(stem));
    }
    while let Some((_, last)) = rest.split_once('_') {
        rest = last;
        families.push(kebab(last));
    }
    if rest == "chamber" {
        families.push("mount".to_owned());
    }
    families
}

/// Whether the end of an id numbers it: `mount_2`, `valve_b`.
fn is_ordinal(end: &str) -> bool {
    !end.is_empty()
        && (end.chars().all(|c| c.is_ascii_digit())
            || (end.len() == 1 && end.chars().all(|c| c.is_ascii_lowercase())))
}
