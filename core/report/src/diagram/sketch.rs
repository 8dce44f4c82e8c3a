//! Short words for adding things to a scene.

use crate::diagram::state::State;
use crate::scene::{Anchor, Dash, Ends, Item, Point, Role, Scene, Stroke, Weight};

/// A point, shortly.
pub(crate) const fn at(x: f32, y: f32) -> Point {
    Point { x, y }
}

/// A whole line of a width and role.
pub(crate) const fn solid(width: f32, role: Role) -> Stroke {
    Stroke {
        width,
        role,
        dash: Dash::Solid,
    }
}

/// A broken line of a width and role.
pub(crate) const fn dashed(width: f32, role: Role) -> Stroke {
    Stroke {
        width,
        role,
        dash: Dash::Dashed,
    }
}

/// A dotted line of a width and role.
pub(crate) const fn dotted(width: f32, role: Role) -> Stroke {
    Stroke {
        width,
        role,
        dash: Dash::Dotted,
    }
}

/// The point at `radius` from `centre`, `degrees` clockwise from the right.
pub(crate) fn polar(centre: Point, radius: f32, degrees: f32) -> Point {
    let (sin, cos) = degrees.to_radians().sin_cos();
    at(centre.x + radius * cos, centre.y + radius * sin)
}

/// A scene being drawn.
pub(crate) struct Sketch {
    items: Vec<Item>,
}

impl Sketch {
    pub(crate) fn new() -> Self {
        Self {
            items: Vec::with_capacity(64),
        }
    }

    pub(crate) fn finish(self, width: f32, height: f32, alt: &str) -> Scene {
        Scene {
            width,
            height,
            alt: alt.to_owned(),
            items: self.items,
        }
    }

    pub(crate) fn push(&mut self, item: Item) {
        self.items.push(item);
    }

    pub(crate) fn line(&mut self, points: &[Point], stroke: Stroke) {
        self.push(Item::Path {
            points: points.to_vec(),
            ends: Ends::Open,
            stroke: Some(stroke),
            fill: None,
        });
    }

    pub(crate) fn shape(&mut self, points: &[Point], stroke: Option<Stroke>, fill: Option<Role>) {
        self.push(Item::Path {
            points: points.to_vec(),
            ends: Ends::Closed,
            stroke,
            fill,
        });
    }

    pub(crate) fn rect(
        &mut self,
        from: Point,
        width: f32,
        height: f32,
        stroke: Option<Stroke>,
        fill: Option<Role>,
    ) {
        let (x, y) = (from.x, from.y);
        self.shape(
            &[
                at(x, y),
                at(x + width, y),
                at(x + width, y + height),
                at(x, y + height),
            ],
            stroke,
            fill,
        );
    }

    pub(crate) fn rounded(
        &mut self,
        from: Point,
        width: f32,
        height: f32,
        corner: f32,
        stroke: Option<Stroke>,
        fill: Option<Role>,
    ) {
        let corner = corner.min(width / 2.0).min(height / 2.0);
        let (left, top, right, bottom) = (from.x, from.y, from.x + width, from.y + height);
        let corners = [
            (at(right - corner, top + corner), -90.0),
            (at(right - corner, bottom - corner), 0.0),
            (at(left + corner, bottom - corner), 90.0),
            (at(left + corner, top + corner), 180.0),
        ];
        let points: Vec<Point> = corners
            .iter()
            .flat_map(|&(centre, start)| {
                (0_u8..=6).map(move |i| polar(centre, corner, start + 15.0 * f32::from(i)))
            })
            .collect();
        self.shape(&points, stroke, fill);
    }

    pub(crate) fn circle(&mut self, centre: Point, radius: f32, stroke: Option<Stroke>, fill: Option<Role>) {
        self.push(Item::Circle {
            centre,
            radius,
            stroke,
            fill,
        });
    }

    pub(crate) fn arc(&mut self, centre: Point, radius: f32, start_deg: f32, sweep_deg: f32, stroke: Stroke) {
        self.push(Item::Arc {
            centre,
            radius,
            start_deg,
            sweep_deg,
            stroke,
        });
    }

    pub(crate) fn text(
        &mut self,
        at: Point,
        anchor: Anchor,
        size: f32,
        weight: Weight,
        role: Role,
        text: &str,
    ) {
        if !text.is_empty() {
            self.push(Item::Text {
                at,
                anchor,
                size,
                weight,
                role,
                text: text.to_owned(),
            });
        }
    }

    pub(crate) fn region(&mut self, id: &str, from: Point, width: f32, height: f32, label: &str) {
        self.push(Item::Region {
            id: id.to_owned(),
            at: from,
            width,
            height,
            label: label.to_owned(),
        });
    }

    /// The shape of a state, in its colour, `radius` from its centre.
    pub(crate) fn state(&mut self, centre: Point, radius: f32, state: State) {
        let role = state.role();
        let line = (radius * 0.3).max(1.2);
        let ring = radius - line / 2.0;
        match state {
            State::Holds => self.circle(centre, radius, None, Some(role)),
            State::SlowLeak => {
                self.circle(centre, ring, Some(solid(line, role)), Some(Role::Paper));
                let half: Vec<Point> = (0_u8..=12)
                    .map(|i| polar(centre, radius, f32::from(i) * 15.0))
                    .collect();
                self.shape(&half, None, Some(role));
            }
            State::Leaks => self.shape(
                &[
                    at(centre.x - radius * 1.1, centre.y - radius * 0.85),
                    at(centre.x + radius * 1.1, centre.y - radius * 0.85),
                    at(centre.x, centre.y + radius * 1.1),
                ],
                None,
                Some(role),
            ),
            State::Undecided => self.circle(centre, ring, Some(solid(line, role)), Some(Role::Paper)),
            State::WontBuild => {
                self.circle(centre, ring, Some(solid(line, role)), Some(Role::Paper));
                self.line(
                    &[
                        at(centre.x - radius * 1.3, centre.y),
                        at(centre.x + radius * 1.3, centre.y),
                    ],
                    solid(line * 1.2, role),
                );
            }
            State::NotDone => self.circle(centre, ring, Some(dotted(line * 0.8, role)), Some(Role::Paper)),
            State::CantDo => {
                self.circle(centre, ring, None, Some(Role::Paper));
                self.arc(centre, ring, -20.0, 290.0, solid(line, role));
            }
        }
    }
}
