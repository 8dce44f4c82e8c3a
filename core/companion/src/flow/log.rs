//! The job's photos and every entry of its log.

use crate::companion::Companion;
use crate::compose;
use crate::flow::brief::photo_buttons;
use crate::flow::parts::tap;
use crate::flow::{photo, travel};
use crate::protocol::{Body, Frame, LogScreen, PhotoSubject};

pub(super) fn screen(core: &Companion) -> (Frame, Body) {
    let body = match &core.job {
        Some(job) => {
            let mut photos = photo_buttons(core, PhotoSubject::Job);
            photos.extend(photo::cards(core, None));
            photos.push(tap(travel::export_open(core)));
            Body::Log {
                log: LogScreen {
                    photos,
                    rows: compose::log_rows(&core.texts, job),
                },
            }
        }
        None => core.nothing(),
    };
    (Frame::titled(core.say("log-title")), body)
}
