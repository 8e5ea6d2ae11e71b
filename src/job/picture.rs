//! Pictures of cameras and scanners, from the bytes of their files to pixels: with limits on what they may take, and
//! upright. Whatever else such a file tells, of the place, the day and the device, ends here.

use std::io::Cursor;

use image::imageops::FilterType;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder as _, ImageReader, ImageResult, Limits};

/// No camera makes pictures with more pixels than this a side.
const LONGEST: u32 = 20_000;
/// What the pixels of one picture may take in memory. Decoders of JPEG may take three times as much.
const MEMORY: u64 = 200 << 20;

/// The pixels of a JPEG or PNG, turned as its camera was held, no more than `side` of them wide or high.
///
/// # Errors
/// If it is neither, is damaged, or would take too much memory.
pub fn upright(bytes: &[u8], side: u32) -> ImageResult<DynamicImage> {
    let mut reader = ImageReader::new(Cursor::new(bytes)).with_guessed_format()?;
    let mut limits = Limits::default();
    (limits.max_image_width, limits.max_image_height) = (Some(LONGEST), Some(LONGEST));
    limits.max_alloc = Some(MEMORY);
    reader.limits(limits.clone());
    let mut decoder = reader.into_decoder()?;
    limits.reserve(decoder.total_bytes())?;
    decoder.set_limits(limits)?;
    // A picture that doesn't say how it was held is taken as it is.
    let held = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    let mut picture = shrunk(DynamicImage::from_decoder(decoder)?, side);
    // Turning copies the pixels, so there are to be few by then.
    picture.apply_orientation(held);
    Ok(picture)
}

/// The picture, made to fit: roughly first, which is quick, then well.
fn shrunk(picture: DynamicImage, side: u32) -> DynamicImage {
    let fits = |picture: &DynamicImage, side: u32| picture.width().max(picture.height()) <= side;
    if fits(&picture, side) {
        return picture;
    }
    let rough = side.saturating_mul(2);
    let picture = if fits(&picture, rough) { picture } else { picture.thumbnail(rough, rough) };
    picture.resize(side, side, FilterType::CatmullRom)
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::{ImageFormat, RgbImage};

    fn png(width: u32, height: u32) -> Vec<u8> {
        let mut bytes = Cursor::new(Vec::new());
        RgbImage::new(width, height).write_to(&mut bytes, ImageFormat::Png).expect("written");
        bytes.into_inner()
    }

    #[test]
    fn a_picture_keeps_its_shape_and_small_ones_their_size() {
        for ((width, height), made) in [((800, 400), (160, 80)), ((200, 320), (100, 160)), ((16, 9), (16, 9))]
        {
            let picture = upright(&png(width, height), 160).expect("a picture");
            assert_eq!((picture.width(), picture.height()), made);
        }
    }

    #[test]
    fn a_small_file_cant_ask_for_much_memory() {
        // 15,000 by 15,000 pixels, all alike: few bytes in the file, 675 MB of pixels.
        let mut header = png(1, 1);
        header[16..24].copy_from_slice(&[0, 0, 0x3a, 0x98, 0, 0, 0x3a, 0x98]);
        let sum = crc32(&header[12..29]);
        header[29..33].copy_from_slice(&sum.to_be_bytes());
        let error = upright(&header, 160).expect_err("too large");
        assert!(matches!(error, image::ImageError::Limits(_)), "{error}");
    }

    /// The checksum of a PNG's chunks (PNG specification, appendix D).
    fn crc32(bytes: &[u8]) -> u32 {
        let mut sum = u32::MAX;
        for byte in bytes {
            sum ^= u32::from(*byte);
            for _ in 0..8 {
                sum = (sum >> 1) ^ (0xedb8_8320 & (sum & 1).wrapping_neg());
            }
        }
        !sum
    }
}
