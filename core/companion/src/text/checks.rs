//! What every text must be: parsed, resolvable, used, short where it is a step, honest everywhere.

use std::collections::{BTreeMap, BTreeSet};

use fluent_bundle::{FluentBundle, FluentResource, FluentValue};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};

use super::*;

/// All messages of the English files: key → the variables its text uses. Attributes are keys of their own.
pub(super) fn keys() -> BTreeMap<String, BTreeSet<String>> {
    let mut keys = BTreeMap::new();
    for (file, source) in embedded::FILES {
        let resource = FluentResource::try_new((*source).to_owned())
            .unwrap_or_else(|(_, errors)| panic!("{file} does not parse: {errors:?}"));
        for entry in resource.entries() {
            match entry {
                Entry::Message(message) => {
                    if let Some(pattern) = &message.value {
                        let old = keys.insert(message.id.name.to_owned(), variables(pattern));
                        assert!(
                            old.is_none(),
                            "{} is defined twice, again in {file}",
                            message.id.name
                        );
                    }
                }
                Entry::Junk { content } => panic!("{file}: junk {content:?}"),
                _ => {}
            }
        }
    }
    keys
}

fn variables(pattern: &Pattern<&str>) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            collect(expression, &mut found);
        }
    }
    found
}

fn collect(expression: &Expression<&str>, found: &mut BTreeSet<String>) {
    match expression {
        Expression::Inline(inline) => collect_inline(inline, found),
        Expression::Select { selector, variants } => {
            collect_inline(selector, found);
            for variant in variants {
                found.extend(variables(&variant.value));
            }
        }
    }
}

fn collect_inline(inline: &InlineExpression<&str>, found: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.to_owned());
        }
        InlineExpression::Placeable { expression } => collect(expression, found),
        _ => {}
    }
}

/// The words of each key, with a stand-in for each variable.
fn words(british: bool) -> BTreeMap<String, String> {
    let mut bundle: FluentBundle<FluentResource> = FluentBundle::new(vec!["en".parse().unwrap()]);
    bundle.set_use_isolating(false);
    for (_, source) in embedded::FILES {
        bundle
            .add_resource(parsed(source))
            .unwrap_or_else(|errors| panic!("{errors:?}"));
    }
    if british {
        bundle.add_resource_overriding(parsed(embedded::BRITISH_TERMS));
    }
    keys()
        .into_iter()
        .map(|(key, variables)| {
            let mut args = fluent_bundle::FluentArgs::new();
            for variable in variables {
                let value = if variable.ends_with("-n") {
                    FluentValue::from(2)
                } else {
                    FluentValue::from("7")
                };
                args.set(variable, value);
            }
            let message = bundle.get_message(&key).unwrap();
            let mut errors = Vec::new();
            let text = bundle
                .format_pattern(message.value().unwrap(), Some(&args), &mut errors)
                .into_owned();
            assert!(errors.is_empty(), "{key}: {errors:?}");
            (key, text)
        })
        .collect()
}

#[test]
fn every_file_parses_and_every_reference_resolves_in_both_word_lists() {
    assert!(words(false).len() > 400);
    let british = words(true);
    assert!(british["test-supply-volts-lead-black"].contains("earth"));
}

#[test]
fn british_words_replace_only_terms_that_exist() {
    let american: BTreeSet<&str> = terms(embedded::FILES[0].1);
    for term in terms(embedded::BRITISH_TERMS) {
        assert!(american.contains(term), "-{term} is no American term");
    }
}

fn terms(source: &str) -> BTreeSet<&str> {
    source
        .lines()
        .filter_map(|line| line.strip_prefix('-')?.split_once(" ="))
        .map(|(name, _)| name)
        .collect()
}

/// What must never be said (design §11 and trade.md §11, §16). Whole words or phrases, lower case.
const NEVER: [&str; 16] = [
    "guaranteed",
    "guarantee",
    "no other faults",
    "safe to drive",
    "as new",
    "prior",
    "posterior",
    "verdict",
    "condemned",
    "dead-head",
    "seeps",
    "probe point",
    "fused lead",
    "error code",
    "pull down",
    "outcome",
];

#[test]
fn words_that_promise_too_much_or_belong_to_no_workshop_are_absent() {
    for (key, text) in words(false) {
        let plain: String = text
            .to_lowercase()
            .chars()
            .map(|c| if c.is_alphanumeric() || c == '-' { c } else { ' ' })
            .collect();
        let padded = format!(" {} ", plain.split_whitespace().collect::<Vec<_>>().join(" "));
        for word in NEVER {
            assert!(
                !padded.contains(&format!(" {word} ")),
                "{key} says {word:?}: {text}"
            );
        }
    }
}

#[test]
fn sentences_of_a_test_stay_under_fourteen_words() {
    let mut long = Vec::new();
    for (key, text) in words(false) {
        if !key.starts_with("test-") || key.contains("-title") {
            continue;
        }
        for sentence in text.split(['.', '?', ':', '!', ';']) {
            let count = sentence
                .split_whitespace()
                .filter(|w| w.chars().any(char::is_alphanumeric))
                .count();
            let most = if key.contains("-explain") { 18 } else { 13 };
            if count > most {
                long.push(format!("{key}: {count} words: {sentence}"));
            }
        }
    }
    assert!(long.is_empty(), "{}", long.join("\n"));
}

#[test]
fn a_space_before_a_unit_never_breaks_the_line() {
    let units = ["inHg", "V", "W", "A", "mm", "s", "min", "%", "°C", "Ω", "rpm"];
    for (key, text) in words(false) {
        let mut before = "";
        for word in text.split(' ') {
            let bare = word.trim_end_matches(['.', ',', ':', ')', '?']);
            let number = before.chars().next_back().is_some_and(|c| c.is_ascii_digit());
            assert!(
                !(number && units.contains(&bare)),
                "{key}: a plain space before {bare}: {text}"
            );
            before = word;
        }
    }
}

#[test]
fn a_missing_key_and_a_missing_value_never_panic() {
    let texts = Texts::new("xx-not-a-locale-at-all");
    assert_eq!(texts.find("no-such-key", &Args::new()), None);
    assert_eq!(without_braces("lost {$drop} in {$seconds}"), "lost … in …");
    assert_eq!(without_braces("odd { brace"), "odd …");
    assert_eq!(texts.language(), "en-US");
}
