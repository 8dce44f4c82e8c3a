//! What every text must be: parsed, resolvable, used, short where it is a step, honest everywhere.

use std::collections::{BTreeMap, BTreeSet};

use fluent_bundle::{FluentBundle, FluentResource, FluentValue};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};

use super::*;

/// The languages with files of their own.
pub(super) const WRITTEN: [Language; 4] = [
    Language::American,
    Language::German,
    Language::Spanish,
    Language::French,
];

/// All messages of a language's files: key → the variables its text uses.
pub(super) fn keys(language: Language) -> BTreeMap<String, BTreeSet<String>> {
    let mut keys = BTreeMap::new();
    for (file, source) in language.files().iter().chain([&("shared.ftl", embedded::SHARED)]) {
        let file = format!("{}/{file}", language.tag());
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
fn words(language: Language) -> BTreeMap<String, String> {
    let mut bundle: FluentBundle<FluentResource> = FluentBundle::new(vec![language.tag().parse().unwrap()]);
    bundle.set_use_isolating(false);
    for source in language
        .files()
        .iter()
        .map(|(_, source)| *source)
        .chain([embedded::SHARED])
    {
        bundle
            .add_resource(parsed(source))
            .unwrap_or_else(|errors| panic!("{errors:?}"));
    }
    if let Some(source) = language.instead() {
        bundle.add_resource_overriding(parsed(source));
    }
    keys(language)
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
fn every_file_parses_and_every_reference_resolves_in_every_language() {
    for language in Language::OFFERED {
        assert!(words(language).len() > 400, "{language:?}");
    }
    let british = words(Language::British);
    assert!(british["test-supply-volts-lead-black"].contains("earth"));
}

/// A key of the inflection, which each language has in its own way.
fn is_grammar(key: &str) -> bool {
    key.starts_with("form-") || key.starts_with("side-") || key.starts_with("part-of-side")
}

/// The value a variable belongs to: a number's text, a part's form in a sentence.
fn value_of(variable: &str) -> &str {
    let ends = ["-n", "-the", "-start", "-acc", "-dat", "-of", "-to", "-gender"];
    ends.iter()
        .find_map(|end| variable.strip_suffix(end))
        .unwrap_or(variable)
}

#[test]
fn every_language_has_the_same_keys() {
    let english: BTreeSet<String> = keys(Language::American).into_keys().collect();
    let mut wrong = Vec::new();
    for language in WRITTEN {
        let there: BTreeSet<String> = keys(language).into_keys().collect();
        let tag = language.tag();
        wrong.extend(english.difference(&there).map(|key| format!("{tag} lacks {key}")));
        let more = there.difference(&english).filter(|key| !key.starts_with("form-"));
        wrong.extend(more.map(|key| format!("{tag} has {key}, English has not")));
    }
    assert!(wrong.is_empty(), "{} keys: {wrong:#?}", wrong.len());
}

#[test]
fn every_language_uses_the_same_values() {
    let english = keys(Language::American);
    let values = |variables: &BTreeSet<String>| -> BTreeSet<String> {
        variables.iter().map(|it| value_of(it).to_owned()).collect()
    };
    let mut wrong = Vec::new();
    for language in WRITTEN {
        for (key, variables) in keys(language) {
            if let Some(there) = english.get(&key)
                && !is_grammar(&key)
                && values(there) != values(&variables)
            {
                wrong.push(format!(
                    "{} {key}: {variables:?}, English {there:?}",
                    language.tag()
                ));
            }
        }
    }
    assert!(wrong.is_empty(), "{} keys: {wrong:#?}", wrong.len());
}

/// Words that two languages share by right: signs, names, one-word terms.
#[test]
fn no_sentence_was_left_in_english() {
    let english = words(Language::American);
    let mut left = Vec::new();
    for language in [Language::German, Language::Spanish, Language::French] {
        for (key, text) in words(language) {
            let letters = text
                .split_whitespace()
                .filter(|word| word.chars().all(char::is_alphabetic));
            if letters.count() >= 3 && english.get(&key) == Some(&text) {
                left.push(format!("{} {key}: {text}", language.tag()));
            }
        }
    }
    assert!(left.is_empty(), "{left:#?}");
}

#[test]
fn every_part_has_a_gender_where_names_have_one() {
    for language in [Language::German, Language::Spanish, Language::French] {
        let texts = Texts::in_language(language, &locale_of(language.tag()));
        let parts = keys(language).into_keys().filter(|key| {
            key.starts_with("part-") && !matches!(key.as_str(), "part-of-side" | "part-numbered")
        });
        for key in parts {
            let gender = texts.find(&format!("{key}.gender"), &Args::new());
            let gender = gender.unwrap_or_else(|| panic!("{} {key} has no gender", language.tag()));
            assert!(["m", "f", "n", "p"].contains(&gender.as_str()), "{key}: {gender}");
        }
    }
}

#[test]
fn british_words_replace_only_terms_that_exist() {
    let american: BTreeSet<&str> = terms(embedded::ENGLISH[0].1);
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
    for (key, text) in words(Language::American) {
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
fn sentences_of_a_test_stay_short() {
    let mut long = Vec::new();
    let every = WRITTEN.iter().flat_map(|language| {
        words(*language)
            .into_iter()
            .map(|(key, text)| (*language, key, text))
    });
    for (language, key, text) in every {
        if !key.starts_with("test-") || key.contains("-title") {
            continue;
        }
        for sentence in text.split(['.', '?', ':', '!', ';']) {
            let count = sentence
                .split_whitespace()
                .filter(|w| w.chars().any(char::is_alphanumeric))
                .count();
            let most = if key.contains("-explain") { 18 } else { 13 } + more_words(language);
            if count > most {
                long.push(format!("{} {key}: {count} words: {sentence}", language.tag()));
            }
        }
    }
    assert!(long.is_empty(), "{}", long.join("\n"));
}

/// Languages that say with articles and prepositions what English says with compounds need more words for the same.
fn more_words(language: Language) -> usize {
    match language {
        Language::Spanish | Language::French => 6,
        _ => 0,
    }
}

#[test]
fn a_space_before_a_unit_never_breaks_the_line() {
    let units = ["inHg", "V", "W", "A", "mm", "s", "min", "%", "°C", "Ω", "rpm"];
    for (key, text) in WRITTEN.into_iter().flat_map(words) {
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
    assert_eq!(texts.language(), Language::American);
}
