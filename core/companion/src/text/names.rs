//! Names: components, tests, faults, and the texts that belong to each of them.

use holdfast_diagnose::{ComponentId, FaultId, TestId};
use holdfast_measure::PressureUnit;

use super::{Args, Texts};

/// Vacuum that is not to be passed, inHg. Common practice, no source.
const DEEPEST_INHG: f64 = 25.0;

/// Ways a part's name stands in a sentence; a language has those that its `parts.ftl` gives a `form-…`: with its article
/// as the one that acts, as the one acted on, after "at", after "of", after "to".
const FORMS: [&str; 5] = ["the", "acc", "dat", "of", "to"];

/// A part's name with what the words around it agree with, as the language's `parts.ftl` has it.
#[derive(Default)]
struct Noun {
    name: String,
    gender: String,
    elides: String,
}

impl Noun {
    fn args(&self) -> Args {
        Args::new()
            .text("part", self.name.as_str())
            .text("gender", self.gender.as_str())
            .text("elides", self.elides.as_str())
    }
}

impl Texts {
    /// A component by its bare name: "front mount".
    #[must_use]
    pub fn part(&self, part: &ComponentId) -> String {
        self.noun(part).name
    }

    /// The values of a sentence about a component.
    ///
    /// `$part` is its bare name. A language that inflects says in its `parts.ftl` how a name stands in a sentence, by
    /// gender (`form-the` and so on), and gets each of these forms as `$part-the` …, the first also as
    /// `$part-start` for the start of a sentence; `$part-gender` is for words that agree with it.
    #[must_use]
    pub fn of_part(&self, part: &ComponentId) -> Args {
        self.with_part(Args::new(), "part", part)
    }

    /// Adds a component to the values of a sentence, see [`Texts::of_part`].
    #[must_use]
    pub(super) fn with_part(&self, args: Args, name: &str, part: &ComponentId) -> Args {
        let noun = self.noun(part);
        let own = noun.args();
        let form = |form: &str| self.find(&format!("form-{form}"), &own);
        let mut args = FORMS.iter().fold(args, |args, it| match form(it) {
            Some(words) => args.text(format!("{name}-{it}"), words),
            None => args,
        });
        if let Some(words) = form("the") {
            args = args.text(format!("{name}-start"), capital(&words));
        }
        args.text(format!("{name}-gender"), noun.gender)
            .text(name.to_owned(), noun.name)
    }

    fn noun(&self, part: &ComponentId) -> Noun {
        let id = part.as_str();
        self.known_noun(id).unwrap_or_else(|| Noun {
            name: id.replace('_', " "),
            ..Noun::default()
        })
    }

    /// A part's name: its own, a side with the name of the rest, or the name of the stem with a number.
    fn known_noun(&self, id: &str) -> Option<Noun> {
        let key = format!("part-{}", kebab(id));
        if let Some(name) = self.find(&key, &Args::new()) {
            let about = |what| {
                self.find(&format!("{key}.{what}"), &Args::new())
                    .unwrap_or_default()
            };
            return Some(Noun {
                name,
                gender: about("gender"),
                elides: about("elides"),
            });
        }
        if let Some((side, rest)) = id.split_once('_')
            && self
                .find(&format!("side-{side}"), &Noun::default().args())
                .is_some()
        {
            let noun = self.known_noun(rest)?;
            let side = self.say_with(&format!("side-{side}"), &noun.args());
            let name = self.say_with("part-of-side", &noun.args().text("side", side));
            return Some(Noun { name, ..noun });
        }
        let (stem, number) = id.rsplit_once('_')?;
        if !is_ordinal(number) {
            return None;
        }
        let noun = self.known_noun(stem)?;
        let name = self.say_with(
            "part-numbered",
            &noun.args().text("number", number.to_uppercase()),
        );
        Some(Noun { name, ..noun })
    }

    #[cfg(test)]
    pub(super) fn knows_part(&self, id: &str) -> bool {
        self.known_noun(id).is_some()
    }

    /// A component at the start of a line: "Front mount".
    #[must_use]
    pub fn part_title(&self, part: &ComponentId) -> String {
        capital(&self.part(part))
    }

    /// A caution by its id. `$most` is the deepest vacuum a diaphragm has to bear.
    #[must_use]
    pub fn caution(&self, id: &str) -> Option<String> {
        let deepest = self
            .unit()
            .from_pressure(PressureUnit::InHg.to_pressure(DEEPEST_INHG));
        let most = self.with_unit(&self.two_figures(deepest), self.unit().symbol());
        self.find(&format!("caution-{id}"), &Args::new().text("most", most))
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
            Some(part) => self.with_part(args.clone(), "part", part),
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
            Some(part) => self.with_part(args.clone(), "part", part),
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
        let args = self.of_part(&fault.component);
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
        let args = self.of_part(part);
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
