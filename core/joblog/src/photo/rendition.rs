//! Decoding within bounds, making smaller, turning upright, writing as JPEG.

use std::io::Cursor;

use image::codecs::jpeg::JpegDecoder;
use image::codecs::png::PngDecoder;
use image::codecs::webp::WebPDecoder;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageError, Limits, Rgb, RgbImage};
use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

use super::error::ImportError;
use crate::payload::PhotoFormat;

/// The most pixels decoded. A 50-megapixel phone camera fits.
pub(super) const MOST_PIXELS: u64 = 64_000_000;
/// The most bytes of a decoded picture: 64 million pixels in 8-bit RGB, and a few more for alpha.
const MOST_DECODED_BYTES: u64 = 256 << 20;
/// Quality of the renditions, 1 to 100: the lines of a gauge's dial stay sharp.
const QUALITY: u8 = 85;

/// A picture whose size is known and within bounds, not decoded yet.
pub(super) struct Bounded<'a> {
    decoder: Box<dyn ImageDecoder + 'a>,
    /// As stored, before turning.
    pub(super) width: u32,
    pub(super) height: u32,
}

/// Looks at the size before anything is decoded.
pub(super) fn bounded(bytes: &[u8], format: PhotoFormat) -> Result<Bounded<'_>, ImportError> {
    let from = Cursor::new(bytes);
    let mut decoder: Box<dyn ImageDecoder + '_> = match format {
        PhotoFormat::Jpeg => Box::new(JpegDecoder::new(from).map_err(damaged)?),
        PhotoFormat::Png => {
            let mut limits = Limits::no_limits();
            limits.max_alloc = Some(MOST_DECODED_BYTES);
            Box::new(PngDecoder::with_limits(from, limits).map_err(damaged)?)
        }
        PhotoFormat::Webp => Box::new(WebPDecoder::new(from).map_err(damaged)?),
    };
    let (width, height) = decoder.dimensions();
    let pixels = u64::from(width) * u64::from(height);
    if pixels == 0 {
        return Err(ImportError::Damaged {
            detail: "a picture without pixels".into(),
        });
    }
    if pixels > MOST_PIXELS || decoder.total_bytes() > MOST_DECODED_BYTES {
        return Err(ImportError::TooManyPixels {
            pixels,
            most: MOST_PIXELS,
        });
    }
    let mut limits = Limits::no_limits();
    limits.max_alloc = Some(2 * MOST_DECODED_BYTES);
    decoder.set_limits(limits).map_err(damaged)?;
    Ok(Bounded {
        decoder,
        width,
        height,
    })
}

fn damaged(error: ImageError) -> ImportError {
    ImportError::Damaged {
        detail: error.to_string(),
    }
}

impl Bounded<'_> {
    /// Decodes, on white where it is transparent.
    pub(super) fn decode(self) -> Result<RgbImage, ImportError> {
        let image = DynamicImage::from_decoder(self.decoder).map_err(damaged)?;
        if !image.color().has_alpha() {
            return Ok(image.into_rgb8());
        }
        let blended = image.into_rgba8();
        let on_white = |value: u8, alpha: u8| {
            let (value, alpha) = (u32::from(value), u32::from(alpha));
            u8::try_from((value * alpha + 255 * (255 - alpha) + 127) / 255).unwrap_or(255)
        };
        let mut flat = RgbImage::new(blended.width(), blended.height());
        for (to, from) in flat.pixels_mut().zip(blended.pixels()) {
            let [r, g, b, alpha] = from.0;
            *to = Rgb([on_white(r, alpha), on_white(g, alpha), on_white(b, alpha)]);
        }
        Ok(flat)
    }
}

/// Reads a rendition back.
pub(super) fn read_jpeg(bytes: &[u8]) -> Result<RgbImage, ImportError> {
    bounded(bytes, PhotoFormat::Jpeg)?.decode()
}

/// Made smaller so that the long side is at most `longest`; as it is if it fits.
pub(super) fn fit(image: &RgbImage, longest: u32) -> RgbImage {
    let (width, height) = image.dimensions();
    let long = width.max(height);
    if long <= longest {
        return image.clone();
    }
    let scaled = |side: u32| {
        let exact = (u64::from(side) * u64::from(longest) + u64::from(long) / 2) / u64::from(long);
        u32::try_from(exact).unwrap_or(longest).max(1)
    };
    shrink(image, scaled(width), scaled(height))
}

/// A run of source pixels that make one target pixel: the first, and the weight of each.
type Run = (usize, Vec<f32>);

/// Which source pixels make each target pixel, by the share of it that each covers.
fn runs(from: u32, to: u32) -> Vec<Run> {
    let ratio = f64::from(from) / f64::from(to);
    (0..to)
        .map(|index| {
            let (start, end) = (f64::from(index) * ratio, (f64::from(index) + 1.0) * ratio);
            let first = start.floor();
            let count = (end.ceil().min(f64::from(from)) - first).max(1.0);
            let weights = (0..whole(count)).map(|step| {
                let left = first + f64::from(u32::try_from(step).unwrap_or(0));
                (((left + 1.0).min(end) - left.max(start)).max(0.0) / ratio) as f32
            });
            (whole(first), weights.collect())
        })
        .collect()
}

fn whole(value: f64) -> usize {
    value as usize
}

/// Averages over areas: no line of a dial is lost, none is made up. Down first, because whole lines add up fast.
fn shrink(image: &RgbImage, width: u32, height: u32) -> RgbImage {
    let (across, down) = (runs(image.width(), width), runs(image.height(), height));
    let stride = image.width() as usize * 3;
    let mut line = vec![0f32; stride];
    let mut out = Vec::with_capacity(across.len() * down.len() * 3);
    for (first, weights) in &down {
        line.fill(0.0);
        let from = image.as_raw().get(first * stride..).unwrap_or(&[]);
        for (pixels, weight) in from.chunks_exact(stride).zip(weights) {
            add(&mut line, pixels, *weight);
        }
        gather(&line, &across, &mut out);
    }
    RgbImage::from_raw(width, height, out).unwrap_or_default()
}

/// Adds a line of pixels by its weight.
fn add(line: &mut [f32], pixels: &[u8], weight: f32) {
    for (sum, value) in line.iter_mut().zip(pixels) {
        *sum += f32::from(*value) * weight;
    }
}

/// Makes a line of target pixels. Plain loops: it is run for each of them.
fn gather(line: &[f32], across: &[Run], out: &mut Vec<u8>) {
    for (first, weights) in across {
        let (mut red, mut green, mut blue) = (0.0, 0.0, 0.0);
        let mut at = first * 3;
        for weight in weights {
            if let Some([r, g, b]) = line.get(at..at + 3) {
                red += r * weight;
                green += g * weight;
                blue += b * weight;
            }
            at += 3;
        }
        out.extend_from_slice(&[(red + 0.5) as u8, (green + 0.5) as u8, (blue + 0.5) as u8]);
    }
}

/// Turned so that it is seen as it was taken.
pub(super) fn upright(image: RgbImage, orientation: u8) -> RgbImage {
    let mut image = DynamicImage::ImageRgb8(image);
    image.apply_orientation(Orientation::from_exif(orientation).unwrap_or(Orientation::NoTransforms));
    image.into_rgb8()
}

/// Written as JPEG, colour at half the resolution as cameras do.
pub(super) fn write_jpeg(image: &RgbImage) -> Result<Vec<u8>, ImportError> {
    let damaged = |error: &dyn std::fmt::Display| ImportError::Damaged {
        detail: error.to_string(),
    };
    let (width, height) = (u16::try_from(image.width()), u16::try_from(image.height()));
    let (Ok(width), Ok(height)) = (width, height) else {
        return Err(damaged(&"a rendition past 65,535 pixels"));
    };
    let mut bytes = Vec::with_capacity(image.as_raw().len() / 8);
    let mut encoder = Encoder::new(&mut bytes, QUALITY);
    encoder.set_sampling_factor(SamplingFactor::F_2_2);
    encoder
        .encode(image.as_raw(), width, height, ColorType::Rgb)
        .map_err(|error| damaged(&error))?;
    Ok(bytes)
}
