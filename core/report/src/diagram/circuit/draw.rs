//! Draws the placed parts and their links.

use super::place::{Cell, Grid};
use super::{CircuitMap, MapPart, Side, symbol};
use crate::diagram::label::wrapped;
use crate::diagram::sketch::{Sketch, at, dotted, solid};
use crate::scene::{Anchor, Point, Role, Scene, Weight};
use crate::text::Ruler;

const LEAST_WIDTH: f32 = 360.0;
const LEAST_COLUMN: f32 = 121.0;
const MOST_COLUMN: f32 = 172.0;
const ROW: f32 = 54.0;
/// Above the first row and below the last.
const EDGE: f32 = 5.0;
/// Names grow at most so much.
const MOST_LARGER: f32 = 2.0;
/// From the left edge of a column to the line its symbols stand on.
const STEM: f32 = 27.0;
/// From that line to the words.
const WORDS: f32 = 24.0;
const MARK: f32 = 13.0;
/// Shares below this get no number, those below `LEAST_RING` no ring: the eye shall go to the few that matter.
const LEAST_SHARE: f64 = 0.01;
const LEAST_RING: f64 = 0.05;

struct Sheet {
    column: f32,
    row: f32,
    /// Type size of the names: larger where there is room.
    label: f32,
}

impl Sheet {
    /// Width there is for words beside a symbol.
    fn words(&self) -> f32 {
        self.column - STEM - WORDS - 3.0
    }

    fn centre(&self, cell: Cell) -> Point {
        at(
            cell.column as f32 * self.column + STEM,
            self.row / 2.0 + EDGE + cell.row as f32 * self.row,
        )
    }
}

/// The size of the names: as much larger as is asked for and lets each word fit its place whole.
fn label_size(map: &CircuitMap, usual: f32, room: f32) -> f32 {
    let asked = if map.larger.is_finite() {
        map.larger.clamp(1.0, MOST_LARGER)
    } else {
        1.0
    };
    let ruler = Ruler::of(Weight::Bold, usual);
    let words = map.parts.iter().flat_map(|part| part.label.split_whitespace());
    let longest = words.map(|word| ruler.width(word)).fold(1.0, f32::max);
    usual * asked.min(room / longest).max(1.0)
}

/// Draws the map on its grid.
pub(crate) fn draw(map: &CircuitMap, grid: &Grid) -> Scene {
    let width = (grid.columns as f32 * LEAST_COLUMN).max(LEAST_WIDTH);
    let usual = if grid.columns <= 2 { 15.0 } else { 13.0 };
    let mut sheet = Sheet {
        column: (width / grid.columns as f32).min(MOST_COLUMN),
        row: ROW,
        label: usual,
    };
    sheet.label = label_size(map, usual, sheet.words());
    sheet.row = ROW * sheet.label / usual;
    let mut sketch = Sketch::new();
    let testing = map.parts.iter().any(|p| p.in_test);
    for link in &map.links {
        let find = |id: &str| map.parts.iter().position(|p| p.id == id);
        if let (Some(from), Some(to)) = (find(&link.from), find(&link.to)) {
            line(&mut sketch, &sheet, grid, &map.parts, (from, to));
        }
    }
    for (part, cell) in map.parts.iter().zip(&grid.cells) {
        draw_part(&mut sketch, &sheet, part, *cell, testing);
    }
    sketch.finish(width, EDGE * 2.0 + grid.rows.max(1) as f32 * sheet.row, &map.alt)
}

fn line(sketch: &mut Sketch, sheet: &Sheet, grid: &Grid, parts: &[MapPart], (from, to): (usize, usize)) {
    let (Some(&upper), Some(&lower)) = (grid.cells.get(from), grid.cells.get(to)) else {
        return;
    };
    let (Some(first), Some(second)) = (parts.get(from), parts.get(to)) else {
        return;
    };
    let (a, b) = (sheet.centre(upper), sheet.centre(lower));
    if first.kind.side() != second.kind.side() {
        // A coil belongs to its valve: shown where they stand level with nothing between them.
        let (left, right) = if upper.column < lower.column {
            (upper, lower)
        } else {
            (lower, upper)
        };
        let between = |c: &Cell| c.row == left.row && c.column > left.column && c.column < right.column;
        if left.row == right.row && !grid.cells.iter().any(between) {
            let name = if upper.column < lower.column {
                first
            } else {
                second
            };
            let words = Ruler::of(Weight::Bold, sheet.label)
                .width(&name.label)
                .min(sheet.words());
            let end = sheet.centre(right);
            let start = at(sheet.centre(left).x + WORDS + words + 6.0, end.y);
            if start.x < end.x - symbol::REACH - 8.0 {
                sketch.line(
                    &[start, at(end.x - symbol::REACH, end.y)],
                    dotted(2.5, Role::Line),
                );
            }
        }
        return;
    }
    let role = if first.kind.side() == Side::Vacuum {
        Role::Vacuum
    } else {
        Role::Electric
    };
    let width = if first.in_test && second.in_test { 6.0 } else { 2.5 };
    let bend = if upper.row < lower.row {
        b.y - sheet.row / 2.0
    } else {
        a.y + sheet.row / 2.0
    };
    let points = if upper.column == lower.column {
        vec![a, b]
    } else {
        vec![a, at(a.x, bend), at(b.x, bend), b]
    };
    sketch.line(&points, solid(width, role));
}

fn draw_part(sketch: &mut Sketch, sheet: &Sheet, part: &MapPart, cell: Cell, testing: bool) {
    let centre = sheet.centre(cell);
    let aside = testing && !part.in_test;
    let suspicion = part.suspicion.as_ref().filter(|s| s.share >= LEAST_RING);
    if let Some(suspicion) = suspicion {
        symbol::suspicion(sketch, centre, suspicion.share.clamp(0.0, 1.0) as f32);
    }
    let ink = if aside { Role::QuietInk } else { Role::Ink };
    symbol::symbol(sketch, part.kind, centre, ink, Role::Paper);
    if let Some(state) = part.state {
        let badge = at(centre.x + 14.0, centre.y + 14.0);
        sketch.circle(badge, 8.5, None, Some(Role::Paper));
        sketch.state(badge, 6.5, state);
    }
    if let Some(point) = &part.test_point {
        let pin = at(centre.x - 16.0, centre.y - 12.0);
        let role = point.lead.map_or(Role::Needle, super::Lead::role);
        sketch.circle(pin, 11.5, None, Some(Role::Paper));
        sketch.circle(pin, 10.0, None, Some(role));
        sketch.text(
            at(pin.x, pin.y + 4.5),
            Anchor::Middle,
            MARK,
            Weight::Bold,
            Role::OnNeedle,
            &point.mark,
        );
    }
    words(sketch, sheet, part, centre, ink);
    let corner = at(centre.x - STEM, centre.y - sheet.row / 2.0);
    sketch.region(&part.id, corner, sheet.column, sheet.row, &part.spoken);
}

/// The label beside the symbol and the number under it, three lines at most.
fn words(sketch: &mut Sketch, sheet: &Sheet, part: &MapPart, centre: Point, role: Role) {
    let left = centre.x + WORDS;
    let leading = sheet.label + 2.0;
    let weight = if part.in_test {
        Weight::Bold
    } else {
        Weight::Regular
    };
    let number = part.suspicion.as_ref().filter(|s| s.share >= LEAST_SHARE);
    let lines = wrapped(
        &part.label,
        weight,
        sheet.label,
        sheet.words(),
        if number.is_some() { 2 } else { 3 },
    );
    let count = lines.len() + usize::from(number.is_some());
    let mut y = centre.y + 4.5 * sheet.row / ROW - (count.max(1) - 1) as f32 * leading / 2.0;
    for line in &lines {
        sketch.text(at(left, y), Anchor::Start, sheet.label, weight, role, line);
        y += leading;
    }
    if let Some(number) = number {
        sketch.text(
            at(left, y),
            Anchor::Start,
            sheet.label,
            Weight::Bold,
            Role::Needle,
            &number.text,
        );
    }
}
