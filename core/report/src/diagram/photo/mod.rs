//! A photo with its marks: vectors over the picture, editable later.

mod plates;
mod sheet;

use sheet::Sheet;

use crate::scene::{Role, Scene};

/// A photo and its marks.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PhotoScene {
    /// Alternative text.
    pub alt: String,
    /// Path of an upright JPEG or PNG.
    pub path: String,
    /// Width in pixels, above zero.
    pub width_px: u32,
    /// Height in pixels, above zero.
    pub height_px: u32,
    /// Marks, drawn in order.
    pub marks: Vec<PhotoMark>,
    /// Where the mark in hand can be gripped; none but while it is edited.
    pub grips: Vec<Spot>,
}

/// A place on the photo as shares of its width and height, 0 to 1, from the upper left.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Spot {
    /// Share of the width.
    pub x: f64,
    /// Share of the height.
    pub y: f64,
}

/// A mark on the photo.
#[derive(Debug, Clone, PartialEq)]
pub struct PhotoMark {
    /// Shape and place.
    pub shape: PhotoShape,
    /// Its colour.
    pub role: Role,
    /// Words beside it, or empty.
    pub words: String,
}

/// Shape and place of a mark.
#[derive(Debug, Clone, PartialEq)]
pub enum PhotoShape {
    /// A ring round something.
    Ring {
        /// Centre.
        centre: Spot,
        /// Radius as a share of the photo's width.
        radius: f64,
    },
    /// An arrow that points at something.
    Arrow {
        /// Tail.
        from: Spot,
        /// Tip.
        to: Spot,
    },
    /// A numbered pin whose tip is at the place.
    Pin {
        /// Tip.
        at: Spot,
        /// One to three characters.
        number: String,
    },
    /// A test point: where a lead or a tool goes.
    TestPoint {
        /// The place.
        at: Spot,
    },
    /// A measure: a line with an end stroke on either side.
    Measure {
        /// One end.
        from: Spot,
        /// The other.
        to: Spot,
    },
    /// A box that is made unreadable on export; drawn hatched until then.
    Blur {
        /// One corner.
        from: Spot,
        /// The opposite one.
        to: Spot,
    },
    /// Words alone, beginning at the place.
    Words {
        /// Left end of their baseline.
        at: Spot,
    },
}

impl PhotoShape {
    /// The mark of this shape in the usual colour, without words.
    #[must_use]
    pub fn plain(self) -> PhotoMark {
        PhotoMark {
            shape: self,
            role: Role::Needle,
            words: String::new(),
        }
    }
}

/// How wide the photo is drawn, scene units.
const WIDTH: f32 = 360.0;
/// Width of a mark's lines.
const LINE: f32 = 4.0;
/// Size of the words and numbers on it.
const TYPE: f32 = 15.0;

/// Draws the photo 360 units wide, its height in proportion.
#[must_use]
pub fn photo(scene: &PhotoScene) -> Scene {
    let mut sheet = Sheet::of(scene);
    for mark in &scene.marks {
        sheet.mark(mark);
    }
    sheet.finish(scene)
}

#[cfg(test)]
mod tests {
    use super::plates::PLATE_HEIGHT;
    use super::*;
    use crate::scene::{Item, Point};

    fn scene(marks: Vec<PhotoMark>) -> Scene {
        photo(&PhotoScene {
            width_px: 400,
            height_px: 300,
            marks,
            ..PhotoScene::default()
        })
    }

    fn test_point(x: f64, y: f64, words: &str) -> PhotoMark {
        let shape = PhotoShape::TestPoint { at: Spot { x, y } };
        PhotoMark {
            words: words.into(),
            ..shape.plain()
        }
    }

    fn words(scene: &Scene) -> Vec<Point> {
        let place = |item: &Item| match item {
            Item::Text { at, .. } => Some(*at),
            _ => None,
        };
        scene.items.iter().filter_map(place).collect()
    }

    #[test]
    fn words_of_marks_that_lie_together_do_not_cover_each_other() {
        let at_one_place =
            ["Red lead", "Black lead", "Measure here"].map(|words| test_point(0.5, 0.5, words));
        let places = words(&scene(at_one_place.into()));
        assert_eq!(places.len(), 3);
        for (i, place) in places.iter().enumerate() {
            let rest = places.iter().skip(i + 1);
            assert!(
                rest.clone()
                    .all(|other| (other.y - place.y).abs() >= PLATE_HEIGHT),
                "{places:?}"
            );
        }
    }

    #[test]
    fn words_hide_nothing_that_is_pointed_at() {
        let marks = vec![test_point(0.3, 0.5, "Red lead: pin 1"), test_point(0.45, 0.5, "")];
        let place = words(&scene(marks))[0];
        assert!((place.y - 0.5 * 270.0).abs() > PLATE_HEIGHT / 2.0, "{place:?}");
    }

    #[test]
    fn words_stay_inside_the_photo() {
        let marks = (0..12).map(|_| test_point(1.0, 1.0, "Measure here"));
        for place in words(&scene(marks.collect())) {
            assert!((0.0..=270.0).contains(&place.y) && place.x < WIDTH, "{place:?}");
        }
    }
}
