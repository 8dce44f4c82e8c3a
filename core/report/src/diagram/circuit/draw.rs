//! Draws the placed parts and their links.

use super::place::{Cell, Grid};
use super::{CircuitMap, MapPart, Side, Suspicion, symbol};
use crate::diagram::label::{Place, widest_piece};
use crate::diagram::sketch::{Sketch, at, dotted, solid};
use crate::scene::{Anchor, Point, Role, Scene, Weight};
use crate::text::Ruler;

const LEAST_WIDTH: f32 = 360.0;
const LEAST_COLUMN: f32 = 121.0;
const MOST_COLUMN: f32 = 172.0;
const ROW: f32 = 54.0;
/// Above the first row and below the last.
const EDGE: f32 = 5.0;
/// Between the words of one row and of the next.
const BETWEEN: f32 = 10.0;
/// Names grow at most so much.
const MOST_LARGER: f32 = 2.0;
/// Smaller than this they can't be read at arm's length.
const LEAST_LABEL: f32 = 11.0;
/// Lines of a name: enough for the longest in the languages there are.
const MOST_LINES: usize = 6;
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
    /// Where each row begins, and where the last one ends.
    rows: Vec<f32>,
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
            f32::midpoint(self.top(cell.row), self.top(cell.row + 1)),
        )
    }

    fn top(&self, row: usize) -> f32 {
        self.rows.get(row).copied().unwrap_or_default()
    }

    fn leading(&self) -> f32 {
        self.label + 2.0
    }
}

/// The size of the names: as much larger as is asked for and lets each word fit its place whole; smaller than usual
/// only where even a syllable would not fit.
fn label_size(map: &CircuitMap, usual: f32, room: f32) -> f32 {
    let asked = if map.larger.is_finite() {
        map.larger.clamp(1.0, MOST_LARGER)
    } else {
        1.0
    };
    let ruler = Ruler::of(Weight::Bold, usual);
    let widest = |of: &dyn Fn(&str) -> f32| map.parts.iter().map(|part| of(&part.label)).fold(1.0, f32::max);
    let word = widest(&|label| {
        label
            .split_whitespace()
            .map(|word| ruler.width(word))
            .fold(0.0, f32::max)
    });
    let piece = widest(&|label| widest_piece(label, &map.language, &ruler));
    let least = (LEAST_LABEL / usual).min(1.0);
    usual * asked.min(room / word).max((room / piece).clamp(least, 1.0))
}

/// The lines of a part's name, and of the number under it.
fn lines(map: &CircuitMap, sheet: &Sheet, part: &MapPart) -> Vec<String> {
    let weight = if part.in_test {
        Weight::Bold
    } else {
        Weight::Regular
    };
    let place = Place {
        language: &map.language,
        weight,
        size: sheet.label,
        width: sheet.words(),
        lines: MOST_LINES,
    };
    place.wrapped(&part.label)
}

fn number(part: &MapPart) -> Option<&Suspicion> {
    part.suspicion.as_ref().filter(|s| s.share >= LEAST_SHARE)
}

/// Where the rows begin: each as high as the longest name in it.
fn rows(map: &CircuitMap, grid: &Grid, sheet: &Sheet, least: f32) -> Vec<f32> {
    let mut heights = vec![least; grid.rows.max(1)];
    for (part, cell) in map.parts.iter().zip(&grid.cells) {
        let count = lines(map, sheet, part).len() + usize::from(number(part).is_some());
        if let Some(height) = heights.get_mut(cell.row) {
            *height = height.max(count as f32 * sheet.leading() + BETWEEN);
        }
    }
    let mut top = EDGE;
    let mut tops = vec![top];
    for height in heights {
        top += height;
        tops.push(top);
    }
    tops
}

/// Draws the map on its grid.
pub(crate) fn draw(map: &CircuitMap, grid: &Grid) -> Scene {
    let width = (grid.columns as f32 * LEAST_COLUMN).max(LEAST_WIDTH);
    let usual = if grid.columns <= 2 { 15.0 } else { 13.0 };
    let mut sheet = Sheet {
        column: (width / grid.columns as f32).min(MOST_COLUMN),
        rows: Vec::new(),
        label: usual,
    };
    sheet.label = label_size(map, usual, sheet.words());
    sheet.rows = rows(map, grid, &sheet, ROW * (sheet.label / usual).max(1.0));
    let mut sketch = Sketch::new();
    let testing = map.parts.iter().any(|p| p.in_test);
    for link in &map.links {
        let find = |id: &str| map.parts.iter().position(|p| p.id == id);
        if let (Some(from), Some(to)) = (find(&link.from), find(&link.to)) {
            line(&mut sketch, &sheet, grid, &map.parts, (from, to));
        }
    }
    for (part, cell) in map.parts.iter().zip(&grid.cells) {
        draw_part(&mut sketch, &sheet, map, (part, *cell), testing);
    }
    let bottom = sheet.top(grid.rows.max(1));
    sketch.finish(width, bottom + EDGE, &map.alt)
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
    // Lines turn where a row begins, where no words stand.
    let bend = sheet.top(if upper.row < lower.row {
        lower.row
    } else {
        upper.row + 1
    });
    let points = if upper.column == lower.column {
        vec![a, b]
    } else {
        vec![a, at(a.x, bend), at(b.x, bend), b]
    };
    sketch.line(&points, solid(width, role));
}

fn draw_part(
    sketch: &mut Sketch,
    sheet: &Sheet,
    map: &CircuitMap,
    (part, cell): (&MapPart, Cell),
    testing: bool,
) {
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
    words(sketch, sheet, map, part, (centre, ink));
    let (top, bottom) = (sheet.top(cell.row), sheet.top(cell.row + 1));
    let corner = at(centre.x - STEM, top);
    sketch.region(&part.id, corner, sheet.column, bottom - top, &part.spoken);
}

/// The name beside the symbol and the number under it.
fn words(
    sketch: &mut Sketch,
    sheet: &Sheet,
    map: &CircuitMap,
    part: &MapPart,
    (centre, role): (Point, Role),
) {
    let left = centre.x + WORDS;
    let weight = if part.in_test {
        Weight::Bold
    } else {
        Weight::Regular
    };
    let number = number(part);
    let lines = lines(map, sheet, part);
    let count = lines.len() + usize::from(number.is_some());
    let mut y = centre.y + 0.35 * sheet.label - (count.max(1) - 1) as f32 * sheet.leading() / 2.0;
    let mut write = |weight, role, line: &str| {
        sketch.text(at(left, y), Anchor::Start, sheet.label, weight, role, line);
        y += sheet.leading();
    };
    for line in &lines {
        write(weight, role, line);
    }
    if let Some(number) = number {
        write(Weight::Bold, Role::Needle, &number.text);
    }
}
