//! Making a face or a plate unreadable, in pixels: for what leaves the phone.

use std::path::PathBuf;

use image::{Rgb, RgbImage};
use sha2::{Digest, Sha256};

use super::error::ImportError;
use super::{Photos, Rendition, digest, rendition};
use crate::payload::Photo;

/// A box on the upright picture: two opposite corners, as shares of its width and height.
pub type BlurBox = ([f64; 2], [f64; 2]);

/// Squares that the longer side of a box is made of: too few for a letter or a face.
const SQUARES: u32 = 5;
/// Side of a square at least, pixels.
const LEAST_SQUARE: u32 = 12;

impl Photos {
    /// The print rendition with these boxes made unreadable; made once for a set of boxes. None if the photo's file is
    /// missing.
    ///
    /// # Errors
    /// [`ImportError`] if the rendition no longer reads, or there is no room for another.
    pub fn blurred(&self, photo: &Photo, boxes: &[BlurBox]) -> Result<Option<PathBuf>, ImportError> {
        let Some(print) = self.find(photo, Rendition::Print) else {
            return Ok(None);
        };
        if boxes.is_empty() {
            return Ok(Some(print));
        }
        let mut sum = Sha256::new();
        for figure in boxes.iter().flat_map(|(from, to)| from.iter().chain(to)) {
            sum.update(figure.to_le_bytes());
        }
        let named: String = sum
            .finalize()
            .iter()
            .take(8)
            .map(|b| format!("{b:02x}"))
            .collect();
        let name = format!("{}.blurred-{named}.jpg", photo.sha256);
        let file = self.dir.join(&name);
        if digest::is_digest(&photo.sha256) && !file.is_file() {
            let mut image = rendition::read_jpeg(&std::fs::read(print)?)?;
            for corners in boxes {
                coarsen(&mut image, corners);
            }
            self.put(&name, &rendition::write_jpeg(&image)?)?;
        }
        Ok(Some(file))
    }
}

/// Puts the mean colour in the place of each square of a box.
fn coarsen(image: &mut RgbImage, (from, to): &BlurBox) {
    let whole = |share: f64, of: u32| (share.clamp(0.0, 1.0) * f64::from(of)).round() as u32;
    let span = |axis: usize, of: u32| {
        let ends = [from, to].map(|corner| whole(corner.get(axis).copied().unwrap_or(0.0), of));
        (ends[0].min(ends[1]), ends[0].max(ends[1]))
    };
    let ((left, right), (top, bottom)) = (span(0, image.width()), span(1, image.height()));
    let square = ((right - left).max(bottom - top))
        .div_ceil(SQUARES)
        .max(LEAST_SQUARE);
    let steps = |start: u32, end: u32| (start..end).step_by(square as usize);
    for y in steps(top, bottom) {
        for x in steps(left, right) {
            let (width, height) = (square.min(right - x), square.min(bottom - y));
            let mean = mean(image, x, y, width, height);
            for row in y..y + height {
                for column in x..x + width {
                    image.put_pixel(column, row, mean);
                }
            }
        }
    }
}

fn mean(image: &RgbImage, x: u32, y: u32, width: u32, height: u32) -> Rgb<u8> {
    let mut sums = [0u64; 3];
    for row in y..y + height {
        for column in x..x + width {
            for (sum, value) in sums.iter_mut().zip(image.get_pixel(column, row).0) {
                *sum += u64::from(value);
            }
        }
    }
    let count = (u64::from(width) * u64::from(height)).max(1);
    Rgb(sums.map(|sum| u8::try_from(sum / count).unwrap_or(u8::MAX)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::payload::{PhotoFormat, Subject};

    #[test]
    fn what_lies_in_the_box_is_gone_and_all_else_is_as_it_was() {
        let dir = tempfile::tempdir().unwrap();
        let photos = Photos::at(dir.path());
        let file = dir.path().join("lines.png");
        // Black and white lines of one pixel: the finest detail there is.
        RgbImage::from_fn(400, 200, |x, _| Rgb([if x % 2 == 0 { 0 } else { 255 }; 3]))
            .save(&file)
            .unwrap();
        let photo = photos.import(&file, &|_| true).unwrap().photo(Subject::Job, "");
        assert_eq!(photo.format, PhotoFormat::Png);
        // Corners in any order, past the edge too.
        let boxes = [([0.75, 1.4], [0.25, 0.5])];
        let path = photos.blurred(&photo, &boxes).unwrap().unwrap();
        let image = rendition::read_jpeg(&std::fs::read(&path).unwrap()).unwrap();
        let contrast = |left: u32, right: u32, top: u32, bottom: u32| {
            let values = (top..bottom)
                .flat_map(|y| (left..right).map(move |x| (x, y)))
                .map(|(x, y)| image.get_pixel(x, y).0[0]);
            values.clone().max().unwrap() - values.min().unwrap()
        };
        assert!(
            contrast(104, 296, 104, 200) < 20,
            "{}",
            contrast(104, 296, 104, 200)
        );
        assert!(contrast(0, 400, 0, 96) > 200 && contrast(0, 96, 0, 200) > 200);
        assert_eq!(
            photos.blurred(&photo, &[]).unwrap(),
            photos.find(&photo, Rendition::Print)
        );
        // It goes with the photo.
        photos.remove(&photo.sha256).unwrap();
        assert!(!path.exists() && photos.blurred(&photo, &boxes).unwrap().is_none());
    }
}
