//! Who writes the papers, with their logo, and the letter's wording where it was changed.

use std::sync::Arc;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use image::ImageFormat;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::picture::upright;
use super::svg_logo;

/// A logo that is larger than this, as it is kept, is refused: in bytes.
const LARGEST: usize = 300_000;
/// Pictures are kept no wider or higher than this many pixels.
const PIXELS: u32 = 800;

/// Who writes the papers.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Contractor {
    /// Name of the firm.
    pub name: String,
    /// Address and telephone, in lines.
    pub details: String,
    /// Who signs.
    pub signs: String,
    /// License or registration number, where the state asks for one.
    pub license: String,
    /// Insurance: carrier and policy.
    pub insurance: String,
    /// The logo, if there is one.
    pub logo: Option<Logo>,
}

/// A logo: the bytes of a PNG or an SVG, kept in the job so that it is never missing. They tell nothing but what
/// is seen: not where a picture was taken, nor with what.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(try_from = "String", into = "String")]
pub struct Logo(Arc<[u8]>);

/// Why a file is no logo. The sentences for people are made in `words`.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum LogoError {
    /// Not a picture that is understood.
    #[error("not a PNG, JPEG or SVG")]
    Kind,
    /// It is too large.
    #[error("{kilobytes} kB are more than {limit}")]
    Size {
        /// Its size as it would be kept.
        kilobytes: usize,
        /// The largest that is kept.
        limit: usize,
    },
    /// The text that stands for it in a job file is not base64.
    #[error("not base64")]
    Text,
}

impl Logo {
    /// Takes a logo from the bytes of a PNG, JPEG or SVG file. Pictures are made smaller where they
    /// are large, and turned upright.
    ///
    /// # Errors
    /// If it is no such file, or too large.
    pub fn new(bytes: &[u8]) -> Result<Self, LogoError> {
        let kept = as_svg(bytes).map_or_else(|| as_png(bytes), Ok)?;
        if kept.len() > LARGEST {
            return Err(LogoError::Size { kilobytes: kept.len() / 1000, limit: LARGEST / 1000 });
        }
        Ok(Self(kept.into()))
    }

    /// Its bytes.
    pub fn bytes(&self) -> &[u8] {
        &self.0
    }

    /// What its file is called: by its ending programs know its kind.
    pub fn file_name(&self) -> &'static str {
        if self.0.starts_with(b"<svg") { "logo.svg" } else { "logo.png" }
    }
}

/// A drawing as it is kept, if it is one.
fn as_svg(bytes: &[u8]) -> Option<Vec<u8>> {
    let svg = svg_logo::plain(bytes, |picture| as_png(picture).ok())?;
    usvg::Tree::from_data(&svg, &usvg::Options::default()).is_ok().then_some(svg)
}

/// The pixels of a picture as a PNG that tells nothing else.
fn as_png(bytes: &[u8]) -> Result<Vec<u8>, LogoError> {
    let picture = upright(bytes, PIXELS).map_err(|_broken| LogoError::Kind)?;
    let mut png = std::io::Cursor::new(Vec::new());
    picture.write_to(&mut png, ImageFormat::Png).map_err(|_unwritten| LogoError::Kind)?;
    Ok(png.into_inner())
}

impl TryFrom<String> for Logo {
    type Error = LogoError;

    /// A logo as it is written in a file. What is no picture is refused: no paper is to break on it.
    fn try_from(text: String) -> Result<Self, LogoError> {
        let bytes = BASE64_STANDARD.decode(text.trim()).map_err(|_bad| LogoError::Text)?;
        Self::new(&bytes)
    }
}

impl From<Logo> for String {
    fn from(logo: Logo) -> Self {
        BASE64_STANDARD.encode(logo.bytes())
    }
}

/// The parts of the letter whose wording can be edited.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
pub enum LetterPart {
    /// What was seen.
    Saw,
    /// Why it happened.
    Why,
    /// How the joints go on moving.
    Moves,
    /// What will be done.
    Plan,
    /// What is asked of the owner, a line for each.
    Asks,
    /// Anything else, before the signatures.
    More,
}

impl LetterPart {
    /// All of them, in the order of the letter.
    pub const ALL: [Self; 6] = [Self::Saw, Self::Why, Self::Moves, Self::Plan, Self::Asks, Self::More];
}

/// A part of the letter in the user's own words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OwnWords {
    /// Which part.
    pub part: LetterPart,
    /// What stands in its place, in lines.
    pub text: String,
    /// The draft that was changed: where the figures have changed since, it no longer is the draft.
    pub draft: String,
}

#[cfg(test)]
mod tests {
    use super::*;

    fn png(side: u32) -> Vec<u8> {
        let mut bytes = std::io::Cursor::new(Vec::new());
        image::DynamicImage::new_rgb8(side, side / 2).write_to(&mut bytes, ImageFormat::Png).unwrap();
        bytes.into_inner()
    }

    #[test]
    fn a_large_picture_is_made_smaller_and_comes_back_from_its_text() {
        let logo = Logo::new(&png(3000)).unwrap();
        let kept = image::load_from_memory(logo.bytes()).unwrap();
        assert_eq!((kept.width(), kept.height(), logo.file_name()), (800, 400, "logo.png"));
        assert_eq!(Logo::try_from(String::from(logo.clone())).unwrap(), logo);
        let svg = Logo::new(br#"<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>"#).unwrap();
        assert_eq!(svg.file_name(), "logo.svg");
    }

    #[test]
    fn what_is_no_picture_is_refused() {
        assert_eq!(Logo::new(b"GIF89a nonsense"), Err(LogoError::Kind));
        assert_eq!(Logo::try_from("no base64!".to_owned()), Err(LogoError::Text));
        let mut cut = png(100);
        cut.truncate(40);
        assert_eq!(Logo::new(&cut), Err(LogoError::Kind));
    }
}
