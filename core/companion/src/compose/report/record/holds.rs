//! The numbers of each hold.

use holdfast_report::{Align, Table};

use super::columns;
use crate::compose::hold::{fall, is_unusable};
use crate::job::JobView;
use crate::text::{Args, Texts};

/// A row for each hold.
pub(super) fn hold_table(texts: &Texts, job: &JobView) -> Table {
    let rows = job
        .done
        .iter()
        .filter_map(|(reading, result)| {
            let hold = result.hold.as_ref()?;
            let (leak, range) = match &hold.leak {
                Some(leak) => (
                    leak_words(texts, leak.value),
                    texts.say_with(
                        "band-from-to",
                        &Args::new()
                            .text("low", texts.leak_number(leak.low))
                            .text("high", texts.leak_number(leak.high)),
                    ),
                ),
                None => (texts.say("record-none"), String::new()),
            };
            Some(vec![
                texts.test_name(&reading.test),
                fall(texts, hold),
                leak,
                range,
                texts.leak_number(hold.limit_std_cm3_min),
                texts.number(hold.volume_cm3, 0),
                if is_unusable(hold) {
                    texts.say("record-none")
                } else {
                    texts.percent(hold.p_over_limit)
                },
            ])
        })
        .collect();
    Table {
        caption: texts.say("record-holds-caption"),
        columns: columns(
            texts,
            &[
                ("record-test", Align::Start),
                ("record-fall", Align::Start),
                ("record-leak", Align::Decimal),
                ("record-range", Align::Start),
                ("record-limit-leak", Align::Decimal),
                ("record-volume", Align::Decimal),
                ("record-over", Align::End),
            ],
        ),
        rows,
        sums: 0,
    }
}

/// A leak's figure; a dash where none is proved, as the range beside it says how large it can be.
fn leak_words(texts: &Texts, std_cm3_min: f64) -> String {
    if std_cm3_min > 0.0 {
        texts.leak_number(std_cm3_min)
    } else {
        texts.say("record-none")
    }
}
