//! A symbol for each kind of part, about 28 units across, standing on the vertical line of its column.

use super::PartKind;
use crate::diagram::sketch::{Sketch, at, polar, solid};
use crate::scene::{Point, Role};

/// Draws a symbol; `ink` is the role of its lines, `face` of its inside.
pub(crate) fn symbol(sketch: &mut Sketch, kind: PartKind, centre: Point, ink: Role, face: Role) {
    let mut pen = Pen {
        sketch,
        x: centre.x,
        y: centre.y,
        ink,
        face,
    };
    match kind {
        PartKind::Source => pen.source(),
        PartKind::CheckValve => pen.check_valve(),
        PartKind::Reservoir => pen.reservoir(),
        PartKind::Hose => pen.hose(),
        PartKind::Tee => pen.dot(5.5),
        PartKind::Valve => pen.valve(),
        PartKind::Mount => pen.mount(),
        PartKind::Restrictor => pen.restrictor(),
        PartKind::Bleed => pen.bleed(),
        PartKind::OtherUser => pen.other_user(),
        PartKind::Battery => pen.battery(),
        PartKind::Fuse => pen.fuse(),
        PartKind::Relay => pen.relay(),
        PartKind::Wire => pen.wire(),
        PartKind::Connector => pen.connector(),
        PartKind::Coil => pen.coil(),
        PartKind::Module => pen.module(),
        PartKind::GroundPoint => pen.ground_point(),
        PartKind::Splice => pen.dot(5.0),
    }
}

const LINE: f32 = 1.8;

struct Pen<'a> {
    sketch: &'a mut Sketch,
    x: f32,
    y: f32,
    ink: Role,
    face: Role,
}

impl Pen<'_> {
    fn p(&self, dx: f32, dy: f32) -> Point {
        at(self.x + dx, self.y + dy)
    }

    fn line(&mut self, points: &[(f32, f32)]) {
        let points: Vec<Point> = points.iter().map(|(dx, dy)| self.p(*dx, *dy)).collect();
        self.sketch.line(&points, solid(LINE, self.ink));
    }

    fn shape(&mut self, points: &[(f32, f32)]) {
        let points: Vec<Point> = points.iter().map(|(dx, dy)| self.p(*dx, *dy)).collect();
        self.sketch
            .shape(&points, Some(solid(LINE, self.ink)), Some(self.face));
    }

    fn filled(&mut self, points: &[(f32, f32)]) {
        let points: Vec<Point> = points.iter().map(|(dx, dy)| self.p(*dx, *dy)).collect();
        self.sketch.shape(&points, None, Some(self.ink));
    }

    fn rounded(&mut self, half_width: f32, half_height: f32, corner: f32) {
        let from = self.p(-half_width, -half_height);
        let stroke = Some(solid(LINE, self.ink));
        self.sketch.rounded(
            from,
            half_width * 2.0,
            half_height * 2.0,
            corner,
            stroke,
            Some(self.face),
        );
    }

    fn ring(&mut self, radius: f32) {
        self.sketch.circle(
            self.p(0.0, 0.0),
            radius,
            Some(solid(LINE, self.ink)),
            Some(self.face),
        );
    }

    fn dot(&mut self, radius: f32) {
        self.sketch.circle(self.p(0.0, 0.0), radius, None, Some(self.ink));
    }

    /// Air drawn up into a ring.
    fn source(&mut self) {
        self.ring(13.0);
        self.line(&[(0.0, 8.0), (0.0, -4.0)]);
        self.filled(&[(-5.0, -2.0), (5.0, -2.0), (0.0, -9.0)]);
    }

    /// Air passes up to the seat, not down.
    fn check_valve(&mut self) {
        self.shape(&[(-10.0, 9.0), (10.0, 9.0), (0.0, -8.0)]);
        self.line(&[(-10.0, -9.0), (10.0, -9.0)]);
    }

    fn reservoir(&mut self) {
        self.rounded(13.0, 14.0, 9.0);
        self.line(&[(-6.0, 4.0), (6.0, 4.0)]);
    }

    fn hose(&mut self) {
        self.rounded(5.0, 14.0, 2.5);
        self.line(&[(-5.0, -8.5), (5.0, -8.5)]);
        self.line(&[(-5.0, 8.5), (5.0, 8.5)]);
    }

    /// Two positions, one open, one shut.
    fn valve(&mut self) {
        self.shape(&[(-14.0, -9.0), (14.0, -9.0), (14.0, 9.0), (-14.0, 9.0)]);
        self.line(&[(0.0, -9.0), (0.0, 9.0)]);
        self.line(&[(-7.0, 6.0), (-7.0, -2.0)]);
        self.filled(&[(-10.0, -1.0), (-4.0, -1.0), (-7.0, -6.5)]);
        self.line(&[(7.0, -9.0), (7.0, -3.5)]);
        self.line(&[(4.0, -3.5), (10.0, -3.5)]);
        self.line(&[(7.0, 9.0), (7.0, 3.5)]);
        self.line(&[(4.0, 3.5), (10.0, 3.5)]);
    }

    /// A stud on rubber on a foot.
    fn mount(&mut self) {
        self.line(&[(0.0, -8.0), (0.0, -14.0)]);
        self.shape(&[(-7.0, -8.0), (7.0, -8.0), (12.0, 7.0), (-12.0, 7.0)]);
        self.filled(&[(-15.0, 7.0), (15.0, 7.0), (15.0, 11.0), (-15.0, 11.0)]);
        self.line(&[(-9.5, -0.5), (9.5, -0.5)]);
    }

    fn restrictor(&mut self) {
        let (x, y) = (self.x, self.y);
        self.sketch.circle(at(x, y), 9.0, None, Some(self.face));
        self.sketch
            .arc(at(x - 13.0, y), 11.0, -55.0, 110.0, solid(LINE + 0.6, self.ink));
        self.sketch
            .arc(at(x + 13.0, y), 11.0, 125.0, 110.0, solid(LINE + 0.6, self.ink));
    }

    /// Open to the air through a small hole.
    fn bleed(&mut self) {
        self.shape(&[(-9.0, 8.0), (9.0, 8.0), (0.0, -8.0)]);
        self.dot(2.2);
    }

    fn other_user(&mut self) {
        self.rounded(13.0, 11.0, 4.0);
        for dx in [-6.0, 0.0, 6.0] {
            self.sketch
                .circle(at(self.x + dx, self.y), 2.0, None, Some(self.ink));
        }
    }

    fn battery(&mut self) {
        self.filled(&[(-9.0, -12.0), (-4.0, -12.0), (-4.0, -8.0), (-9.0, -8.0)]);
        self.filled(&[(4.0, -12.0), (9.0, -12.0), (9.0, -8.0), (4.0, -8.0)]);
        self.shape(&[(-14.0, -8.0), (14.0, -8.0), (14.0, 10.0), (-14.0, 10.0)]);
        self.line(&[(-9.0, 1.0), (-3.0, 1.0)]);
        self.line(&[(3.0, 1.0), (9.0, 1.0)]);
        self.line(&[(6.0, -2.0), (6.0, 4.0)]);
    }

    fn fuse(&mut self) {
        self.rounded(7.0, 13.0, 3.0);
        self.line(&[
            (0.0, -13.0),
            (0.0, -6.0),
            (2.5, -3.0),
            (-2.5, 3.0),
            (0.0, 6.0),
            (0.0, 13.0),
        ]);
    }

    fn relay(&mut self) {
        self.shape(&[(-12.0, -12.0), (12.0, -12.0), (12.0, 12.0), (-12.0, 12.0)]);
        self.line(&[(-5.0, 12.0), (-5.0, 4.0), (4.0, -4.0)]);
        self.line(&[(-5.0, -12.0), (-5.0, -5.0)]);
        self.line(&[(7.0, -6.0), (7.0, 6.0)]);
    }

    /// Strands in their cover.
    fn wire(&mut self) {
        self.rounded(4.0, 14.0, 4.0);
        self.line(&[(0.0, -14.0), (0.0, 14.0)]);
    }

    fn connector(&mut self) {
        self.rounded(12.0, 10.0, 4.0);
        for dx in [-5.0, 5.0] {
            self.sketch
                .circle(at(self.x + dx, self.y), 2.6, None, Some(self.ink));
        }
        self.filled(&[(-4.0, -13.5), (4.0, -13.5), (4.0, -10.0), (-4.0, -10.0)]);
    }

    fn coil(&mut self) {
        self.shape(&[(-13.0, -8.0), (13.0, -8.0), (13.0, 8.0), (-13.0, 8.0)]);
        self.line(&[(-6.0, 8.0), (6.0, -8.0)]);
    }

    fn module(&mut self) {
        for dy in [-7.0, 0.0, 7.0] {
            self.line(&[(-15.0, dy), (15.0, dy)]);
        }
        self.shape(&[(-11.0, -12.0), (11.0, -12.0), (11.0, 12.0), (-11.0, 12.0)]);
        self.sketch.circle(self.p(-6.0, -7.0), 1.6, None, Some(self.ink));
    }

    fn ground_point(&mut self) {
        self.line(&[(0.0, -12.0), (0.0, -3.0)]);
        for (half, dy) in [(12.0, -3.0), (8.0, 2.0), (4.0, 7.0)] {
            self.line(&[(-half, dy), (half, dy)]);
        }
    }
}

/// How far a symbol reaches from its centre, for what stands beside it.
pub(crate) const REACH: f32 = 16.0;

/// A ring of suspicion round a symbol: from the top, clockwise, as much of a turn as the share.
pub(crate) fn suspicion(sketch: &mut Sketch, centre: Point, share: f32) {
    const RADIUS: f32 = 19.5;
    sketch.circle(centre, RADIUS, None, Some(Role::Suspect));
    sketch.arc(centre, RADIUS, -90.0, 360.0 * share, solid(3.5, Role::Needle));
    let start = polar(centre, RADIUS - 3.0, -90.0);
    sketch.line(
        &[start, polar(centre, RADIUS + 3.0, -90.0)],
        solid(1.5, Role::Needle),
    );
}
