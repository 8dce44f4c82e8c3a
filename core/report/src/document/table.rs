//! Tables: columns as wide as they need, decimal marks under each other, hairlines, no boxes.

use super::compose::{Composer, head_of};
use super::flow::{Piece, Run};
use super::input::{Align, Direction, Table};
use super::look::{Look, SMALL, SMALL_LEADING};
use super::structure::{Kind, NodeId};
use crate::diagram::sketch::{Sketch, at, solid};
use crate::scene::{Anchor, Item, Placement, Role, Weight};

const CELL: Look = Look {
    size: 9.0,
    leading: 12.5,
    weight: Weight::Regular,
    role: Role::Ink,
};
const SUM: Look = Look {
    weight: Weight::Bold,
    ..CELL
};
const HEAD: Look = Look {
    size: SMALL,
    leading: SMALL_LEADING,
    weight: Weight::Bold,
    role: Role::QuietInk,
};
const CAPTION: Look = Look {
    size: 9.0,
    leading: 13.0,
    weight: Weight::Bold,
    role: Role::Ink,
};
const GUTTER: f32 = 14.0;
const PAD: f32 = 3.5;
/// A column of words is never squeezed below this.
const LEAST: f32 = 52.0;
/// Rows with more lines than this may be split over pages; shorter ones stay whole.
const WHOLE: usize = 12;

/// A column with its place.
struct Place {
    x: f32,
    width: f32,
    align: Align,
    /// Where the integer part ends, from the column's start.
    mark: f32,
}

/// The width a column asks for.
struct Need {
    /// With its head on one line.
    whole: f32,
    /// With its head broken between words.
    least: f32,
    /// Where the integer part ends.
    mark: f32,
}

/// Lays a table out as pieces: caption, head, then a piece for each line of a row.
pub(crate) fn lay(composer: &mut Composer<'_>, parent: NodeId, input: &Table) -> Vec<Piece> {
    if input.columns.is_empty() {
        return Vec::new();
    }
    let table = composer.tree.add(
        parent,
        Kind::Table {
            summary: input.caption.clone(),
        },
    );
    let places = places(composer, input);
    let width = composer.sheet.text_width();
    let mut pieces = Vec::new();
    if !input.caption.is_empty() {
        let node = composer.tree.add(table, Kind::Caption);
        let lines = composer
            .type_
            .wrap(&input.caption, CAPTION.weight, CAPTION.size, width);
        let height = lines.len() as f32 * CAPTION.leading + 2.0;
        let items = lines
            .iter()
            .enumerate()
            .map(|(at, line)| CAPTION.item(0.0, at as f32 * CAPTION.leading, Anchor::Start, line))
            .collect();
        let runs = vec![Run {
            node: Some(node),
            items,
        }];
        pieces.push(Piece {
            gap: 14.0,
            height,
            runs,
            stay: true,
            ..Piece::default()
        });
    }
    let (height, runs) = head(composer, table, input, &places, width);
    let repeated = head_of(height, &runs);
    // A row that goes on stands as far below the head as one that begins.
    let going_on = head_of(height + PAD, &runs);
    let gap = if input.caption.is_empty() { 12.0 } else { 0.0 };
    pieces.push(Piece {
        gap,
        height,
        runs,
        stay: !input.rows.is_empty(),
        ..Piece::default()
    });

    let sums = input.rows.len().saturating_sub(input.sums);
    // Where the customer's page gives way, its rows move closer.
    let pad = PAD * composer.tighten;
    for (at_row, row) in input.rows.iter().enumerate() {
        let look = if at_row >= sums && at_row + 1 == input.rows.len() {
            SUM
        } else {
            CELL
        };
        let node = composer.tree.add(table, Kind::Row);
        let cells: Vec<NodeId> = places
            .iter()
            .map(|_| composer.tree.add(node, Kind::Cell))
            .collect();
        let lines: Vec<Vec<String>> = places
            .iter()
            .enumerate()
            .map(|(i, place)| {
                let cell = row.get(i).map_or("", String::as_str);
                composer.type_.wrap(cell, look.weight, look.size, place.width)
            })
            .collect();
        let count = lines.iter().map(Vec::len).max().unwrap_or(1);
        // Sums stay with the last line they sum, and no page begins with the last row alone.
        let with_next = (input.sums > 0 && at_row + 1 >= sums || at_row + 2 == input.rows.len())
            && at_row + 1 < input.rows.len();
        for n in 0..count {
            let mut runs = Vec::with_capacity(places.len() + 1);
            let top = if n == 0 { pad } else { 0.0 };
            for ((place, column), cell) in places.iter().zip(&lines).zip(&cells) {
                let Some(line) = column.get(n) else { continue };
                let item = cell_item(composer, look, place, line, top);
                runs.push(Run {
                    node: Some(*cell),
                    items: vec![item],
                });
            }
            let last = n + 1 == count;
            let height = top + CELL.leading + if last { pad } else { 0.0 };
            if last {
                let mut rule = Sketch::new();
                let before_sums = input.sums > 0 && at_row + 1 == sums;
                let line = if before_sums {
                    solid(1.0, Role::Ink)
                } else {
                    solid(0.4, Role::Line)
                };
                rule.line(&[at(0.0, height), at(width, height)], line);
                runs.push(Run {
                    node: None,
                    items: rule.finish(1.0, 1.0, "").items,
                });
            }
            pieces.push(Piece {
                height,
                runs,
                stay: if last {
                    with_next
                } else {
                    count <= WHOLE || n == 0 || n + 2 == count
                },
                head: Some(if n == 0 { &repeated } else { &going_on }.clone()),
                ..Piece::default()
            });
        }
    }
    pieces
}

fn head(
    composer: &mut Composer<'_>,
    table: NodeId,
    input: &Table,
    places: &[Place],
    width: f32,
) -> (f32, Vec<Run>) {
    let row = composer.tree.add(table, Kind::Row);
    let mut runs = Vec::with_capacity(places.len() + 1);
    let mut tallest = 1;
    for (column, place) in input.columns.iter().zip(places) {
        let cell = composer.tree.add(row, Kind::HeadCell);
        let lines = composer
            .type_
            .wrap(&column.head, HEAD.weight, HEAD.size, place.width);
        tallest = tallest.max(lines.len());
        let (x, anchor) = match place.align {
            Align::End => (place.x + place.width, Anchor::End),
            Align::Start | Align::Decimal => (place.x, Anchor::Start),
        };
        let items = lines
            .iter()
            .enumerate()
            .map(|(i, line)| HEAD.item(x, i as f32 * HEAD.leading, anchor, line))
            .collect();
        runs.push(Run {
            node: Some(cell),
            items,
        });
    }
    let height = tallest as f32 * HEAD.leading + PAD;
    let mut rule = Sketch::new();
    rule.line(&[at(0.0, height), at(width, height)], solid(1.0, Role::Ink));
    runs.push(Run {
        node: None,
        items: rule.finish(1.0, 1.0, "").items,
    });
    (height, runs)
}

fn cell_item(composer: &mut Composer<'_>, look: Look, place: &Place, line: &str, top: f32) -> Item {
    match place.align {
        Align::Start => look.item(place.x, top, Anchor::Start, line),
        Align::End => look.item(place.x + place.width, top, Anchor::End, line),
        Align::Decimal => {
            let whole = whole_part(line, composer.report.words.decimal);
            let before = composer.type_.width(whole, look.weight, look.size);
            let x = if whole.is_empty() {
                place.x
            } else {
                place.x + place.mark - before
            };
            let mut item = look.item(x, top, Anchor::Start, line);
            if composer.report.direction == Direction::RightToLeft {
                // Numbers run from left to right everywhere: their marks stay under each other.
                Placement::turned_in(place.x, place.width).place(&mut item);
            }
            item
        }
    }
}

/// What stands before the first decimal mark of the first number, or the whole first number; empty without a digit.
fn whole_part(cell: &str, decimal: char) -> &str {
    let Some(digit) = cell.find(|c: char| c.is_ascii_digit()) else {
        return "";
    };
    let (before, number) = cell.split_at_checked(digit).unwrap_or(("", cell));
    let ends = number.char_indices().find(|(i, c)| {
        let grouped = *c != decimal
            && matches!(c, '\u{a0}' | '\u{202f}' | '\u{2009}' | ',' | '.' | '’')
            && number
                .get(i + c.len_utf8()..)
                .is_some_and(|r| r.starts_with(|d: char| d.is_ascii_digit()));
        *c == decimal || !(c.is_ascii_digit() || grouped)
    });
    let length = before.len() + ends.map_or(number.len(), |(i, _)| i);
    cell.get(..length).unwrap_or("")
}

/// Shares the width among the columns: each what it needs, and where that is too much, the wide ones give way.
fn places(composer: &mut Composer<'_>, input: &Table) -> Vec<Place> {
    let decimal = composer.report.words.decimal;
    let mut needs = Vec::with_capacity(input.columns.len());
    for (i, column) in input.columns.iter().enumerate() {
        let last = input.rows.len().checked_sub(1).filter(|_| input.sums > 0);
        let cells = input
            .rows
            .iter()
            .enumerate()
            .filter_map(|(at, r)| Some((at, r.get(i)?)));
        let mut mark: f32 = 0.0;
        let mut after: f32 = 0.0;
        let mut plain: f32 = 0.0;
        for (at, cell) in cells {
            let weight = if Some(at) == last { SUM.weight } else { CELL.weight };
            let width = composer.type_.width(cell, weight, CELL.size);
            plain = plain.max(width);
            if column.align == Align::Decimal {
                let whole = composer
                    .type_
                    .width(whole_part(cell, decimal), CELL.weight, CELL.size);
                mark = mark.max(whole);
                after = after.max(width - whole);
            }
        }
        let widest_word = column
            .head
            .split_whitespace()
            .map(|w| composer.type_.width(w, HEAD.weight, HEAD.size))
            .fold(0.0, f32::max);
        let body = if column.align == Align::Decimal {
            mark + after
        } else {
            plain
        };
        needs.push(Need {
            whole: body.max(composer.type_.width(&column.head, HEAD.weight, HEAD.size)) + 0.5,
            least: body.max(widest_word) + 0.5,
            mark,
        });
    }
    let room = composer.sheet.text_width() - GUTTER * (needs.len() - 1) as f32;
    // Heads are broken over lines only where the columns would else not fit.
    let whole: Vec<f32> = needs.iter().map(|need| need.whole).collect();
    let widths = if whole.iter().sum::<f32>() <= room {
        share(&whole, room)
    } else {
        share(&needs.iter().map(|need| need.least).collect::<Vec<_>>(), room)
    };
    let mut x = 0.0;
    let mut places = Vec::with_capacity(widths.len());
    for ((width, need), column) in widths.into_iter().zip(needs).zip(&input.columns) {
        places.push(Place {
            x,
            width,
            align: column.align,
            mark: need.mark,
        });
        x += width + GUTTER;
    }
    places
}

/// Widths that sum to at most `room`: narrow columns keep what they need, wide ones share the rest evenly.
fn share(needs: &[f32], room: f32) -> Vec<f32> {
    let mut widths = needs.to_vec();
    let total: f32 = needs.iter().sum();
    if total <= room {
        // The widest column takes what is left, so that the table spans the page.
        let widest = (0..needs.len()).max_by(|a, b| needs[*a].total_cmp(&needs[*b]));
        if let Some(width) = widest.and_then(|i| widths.get_mut(i)) {
            *width += room - total;
        }
        return widths;
    }
    // The level to which wide columns are cut, found from the narrowest up.
    let mut sorted = needs.to_vec();
    sorted.sort_by(f32::total_cmp);
    let mut left = room;
    for (i, need) in sorted.iter().enumerate() {
        let level = left / (sorted.len() - i) as f32;
        if *need > level {
            let level = level.max(LEAST.min(room / needs.len() as f32));
            widths.iter_mut().for_each(|w| *w = w.min(level));
            break;
        }
        left -= need;
    }
    widths
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whole_part_ends_at_the_decimal_mark_of_the_language() {
        assert_eq!(whole_part("12.4 V", '.'), "12");
        assert_eq!(whole_part("12,4 V", ','), "12");
        assert_eq!(whole_part("−0.02 V", '.'), "−0");
        assert_eq!(whole_part("1\u{a0}240 s", '.'), "1\u{a0}240");
        assert_eq!(whole_part("1,100.5", '.'), "1,100");
        assert_eq!(whole_part("1.100,5", ','), "1.100");
        assert_eq!(whole_part("3, then 4", '.'), "3");
        assert_eq!(whole_part("300 s", '.'), "300");
        assert_eq!(whole_part("over range", '.'), "");
    }

    #[test]
    fn narrow_columns_keep_their_width_and_wide_ones_share_the_rest() {
        assert_eq!(
            share(&[50.0, 400.0, 60.0, 500.0], 480.0),
            [50.0, 185.0, 60.0, 185.0]
        );
    }

    #[test]
    fn a_table_that_fits_spans_the_page() {
        assert_eq!(share(&[50.0, 100.0], 480.0), [50.0, 430.0]);
    }

    #[test]
    fn shared_widths_never_exceed_the_room() {
        for count in 1..14_usize {
            let needs: Vec<f32> = (0..count).map(|i| 30.0 + 70.0 * i as f32).collect();
            let sum: f32 = share(&needs, 480.0).iter().sum();
            assert!(sum <= 480.5, "{count}: {sum}");
        }
    }
}
