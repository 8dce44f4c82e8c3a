//! What is shown and said: the language, voice and buzz, figures for two metres, the spoken script.

use crate::companion::Companion;
use crate::flow::cues::{self, Cue};
use crate::flow::parts::{any_of, entry, one_of, option, quiet, section, tap, text_field, words};
use crate::protocol::{Action, ChoiceOption, FieldId, Keys, Pick, Section};
use crate::text::Language;

pub(super) fn shown_section(core: &Companion) -> Section {
    let cues = vec![
        option(
            core.say("settings-speech"),
            core.session.settings.speech.is_on(),
            Pick::Speech,
        ),
        option(
            core.say("settings-buzz"),
            core.session.settings.buzz.is_on(),
            Pick::Buzzing,
        ),
        option(
            core.say("settings-large-figures"),
            core.session.settings.large_figures.is_on(),
            Pick::LargeFigures,
        ),
    ];
    section(
        core.say("settings-shown"),
        vec![
            one_of(core.say("settings-language"), languages(core)),
            any_of(core.say("settings-cues"), cues),
        ],
    )
}

/// What is said during a hold, line by line, while it is said at all.
pub(super) fn script_section(core: &Companion) -> Section {
    let settings = &core.session.settings;
    if !settings.speech.is_on() {
        return section(String::new(), Vec::new());
    }
    let mut items = vec![words(core.say("settings-script-hint"))];
    items.extend(Cue::ALL.map(|cue| {
        let id = FieldId::Script {
            cue: cue.id().to_owned(),
        };
        let label = core.say(&format!("script-{}", cue.id()));
        entry(text_field(id, label, cues::line(core, cue), Keys::Text))
    }));
    if settings.script.contains_key(core.texts.language().tag()) {
        let as_before = Action::Pick {
            pick: Pick::PlainScript,
        };
        items.push(tap(quiet(core.say("settings-script-plain"), as_before)));
    }
    section(core.say("settings-script"), items)
}

/// The phone's language, then each by its own name.
fn languages(core: &Companion) -> Vec<ChoiceOption> {
    let picked = &core.session.settings.language;
    let language = |tag: &str, label| option(label, picked == tag, Pick::Language { tag: tag.to_owned() });
    let named = Language::OFFERED
        .into_iter()
        .map(|it| language(it.tag(), core.texts.name_of(it)));
    std::iter::once(language("", core.say("settings-language-phone")))
        .chain(named)
        .collect()
}
