//! What is on a screen: its fields, choices, cautions and buttons, whichever screen it is.

use holdfast_companion::{
    Body, Button, Caution, Choice, Field, FormItem, HoldPhase, ReportState, Screen, Section, TestStage,
};

/// The forms on a screen, whatever it is.
fn sections(screen: &Screen) -> &[Section] {
    match &screen.body {
        Body::Vehicle { form } | Body::Prepare { form } | Body::Settings { form } | Body::Costs { form } => {
            &form.sections
        }
        Body::Approval { approval } => &approval.sections,
        Body::Repaired { repair } => &repair.sections,
        Body::Report { report } => &report.sections,
        _ => &[],
    }
}

/// What stands in its forms, whatever it is.
pub(crate) fn items(screen: &Screen) -> Vec<&FormItem> {
    let mut all: Vec<&FormItem> = sections(screen)
        .iter()
        .flat_map(|section| &section.items)
        .collect();
    match &screen.body {
        Body::Meter { meter } | Body::Vibration { meter } => all.extend(&meter.items),
        Body::Test { test } => {
            if let TestStage::Brief { extras, .. } | TestStage::Result { extras, .. } = &test.stage {
                all.extend(extras);
            }
        }
        Body::Log { log } => all.extend(&log.photos),
        _ => {}
    }
    all
}

/// Its fields.
pub(crate) fn fields(screen: &Screen) -> Vec<&Field> {
    let mut all: Vec<&Field> = items(screen)
        .into_iter()
        .filter_map(|item| {
            if let FormItem::Entry { field } = item {
                Some(field)
            } else {
                None
            }
        })
        .collect();
    match &screen.body {
        Body::Jobs { jobs } => {
            all.push(&jobs.search);
            all.extend(&jobs.dates);
        }
        Body::Hold { hold } => {
            if let HoldPhase::Read { field, .. } = &hold.phase {
                all.push(field);
            }
        }
        Body::Photo { photo } => all.push(&photo.caption),
        _ => {}
    }
    all
}

/// Its choices.
pub(crate) fn choices(screen: &Screen) -> Vec<&Choice> {
    let mut all: Vec<&Choice> = items(screen)
        .into_iter()
        .filter_map(|item| {
            if let FormItem::Options { choice } = item {
                Some(choice)
            } else {
                None
            }
        })
        .collect();
    match &screen.body {
        Body::LookOver { look } => all.extend(look.rows.iter().map(|row| &row.states)),
        Body::Photo { photo } => all.push(&photo.palette),
        _ => {}
    }
    all
}

/// Its cautions.
pub(crate) fn cautions(screen: &Screen) -> Vec<&Caution> {
    let mut all: Vec<&Caution> = screen.frame.cautions.iter().collect();
    all.extend(items(screen).into_iter().filter_map(|item| {
        if let FormItem::Care { caution } = item {
            Some(caution)
        } else {
            None
        }
    }));
    if let Body::Test { test } = &screen.body
        && let TestStage::Brief { steps, .. } = &test.stage
    {
        all.extend(steps.iter().flat_map(|step| &step.cautions));
    }
    all
}

/// Its buttons.
pub(crate) fn buttons(screen: &Screen) -> Vec<&Button> {
    let mut all: Vec<&Button> = screen.frame.menu.iter().chain(&screen.frame.back).collect();
    all.extend(screen.frame.notice.iter().flat_map(|notice| &notice.buttons));
    all.extend(items(screen).into_iter().filter_map(|item| {
        if let FormItem::Tap { button } = item {
            Some(button)
        } else {
            None
        }
    }));
    match &screen.body {
        Body::Jobs { jobs } => {
            all.push(&jobs.new_job);
            all.extend(
                jobs.rows
                    .iter()
                    .flat_map(|row| std::iter::once(&row.open).chain(&row.buttons)),
            );
        }
        Body::Vehicle { form } | Body::Prepare { form } | Body::Settings { form } | Body::Costs { form } => {
            all.extend(&form.next)
        }
        Body::Approval { approval } => {
            all.extend(&approval.pad_buttons);
            all.push(&approval.next);
        }
        Body::Overview { overview } => {
            all.push(&overview.next.go);
            all.extend(overview.tests.iter().map(|row| &row.open));
            all.extend(&overview.buttons);
        }
        Body::Test { test } => match &test.stage {
            TestStage::Brief { start, cannot, .. } => {
                all.push(start);
                all.extend(cannot);
            }
            TestStage::Question { buttons, .. } | TestStage::Result { buttons, .. } => all.extend(buttons),
        },
        Body::Hold { hold } => match &hold.phase {
            HoldPhase::Pump {
                count,
                let_go,
                others,
                ..
            } => {
                all.extend(count);
                all.push(let_go);
                all.extend(others);
            }
            HoldPhase::Read { confirm, others, .. } => {
                all.push(confirm);
                all.extend(others);
            }
            HoldPhase::Watch { buttons, .. } | HoldPhase::Interrupted { buttons, .. } => all.extend(buttons),
        },
        Body::Meter { meter } | Body::Vibration { meter } => all.push(&meter.confirm),
        Body::YesNo { ask } => {
            all.extend(&ask.answers);
            all.push(&ask.not_sure);
        }
        Body::LookOver { look } => {
            all.push(&look.done);
            all.extend(look.rows.iter().map(|row| &row.photo));
        }
        Body::Photo { photo } => all.extend(&photo.buttons),
        Body::Finding { finding } => all.extend(&finding.buttons),
        Body::Repaired { repair } => all.push(&repair.next),
        Body::Report { report } => match &report.state {
            ReportState::ToMake { make } => all.push(make),
            ReportState::Working { stop, .. } => all.push(stop),
            ReportState::Ready {
                share,
                share_readings,
                ..
            } => all.extend([share, share_readings]),
        },
        Body::Log { .. } => {}
    }
    all
}
