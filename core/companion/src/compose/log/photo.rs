//! Photos in the log.

use holdfast_joblog::{Photo, PhotoMarked};

use super::about;
use crate::text::{Args, Texts};

pub(super) fn taken(texts: &Texts, photo: &Photo) -> String {
    let words = if photo.caption.trim().is_empty() {
        texts.say("log-photo")
    } else {
        texts.say_with(
            "log-photo-caption",
            &Args::new().text("caption", photo.caption.trim()),
        )
    };
    about(texts, words, &photo.about)
}

pub(super) fn marked(texts: &Texts, marked: &PhotoMarked) -> String {
    let marks = Args::new().count("count", marked.marks.len());
    let words = texts.say_with("log-photo-marked", &marks);
    let caption = marked.caption.trim();
    if caption.is_empty() {
        words
    } else {
        let args = Args::new().text("label", words).text("value", caption);
        texts.say_with("reading-field", &args)
    }
}
