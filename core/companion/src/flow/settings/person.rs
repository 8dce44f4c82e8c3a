//! Who does the work, and the paper it is printed on.

use crate::companion::Companion;
use crate::flow::parts::{entry, section, text_field};
use crate::flow::report::paper_choice;
use crate::protocol::{FieldId, Keys, Section};

pub(super) fn person_section(core: &Companion) -> Section {
    let settings = &core.session.settings;
    let mut business = text_field(
        FieldId::Business,
        core.say("settings-business"),
        settings.business.clone(),
        Keys::Lines,
    );
    business.hint = core.say("settings-business-hint");
    let technician = text_field(
        FieldId::Technician,
        core.say("settings-technician"),
        settings.technician.clone(),
        Keys::Text,
    );
    section(
        core.say("settings-report"),
        vec![entry(business), entry(technician), paper_choice(core)],
    )
}
