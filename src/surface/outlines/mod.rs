//! Room outlines out of the files other programs write: drawings as DXF or SVG, corners as CSV.
//!
//! [`read_outlines`] gives the closed outlines in a file, in meters, and says what it left out. [`write_dxf`] writes rings and lines back for the other programs.
//!
//! The libraries that know the formats never see a file as it came. A drawing is first cut down
//! to the few things an outline is made of: that keeps what could make a library stop, run away
//! or open another file from reaching it, and lets every message name the line.
//!
//! | module | idea |
//! |---|---|
//! | `table` | CSV rows into corners |
//! | `pairs`, `drawing`, `chain` | DXF: cutting down, shapes, lines joined into rings |
//! | `marks`, `picture` | SVG: cutting down, paths |
//! | `ring` | arcs into straight pieces; what is no outline is sorted out and counted |
//! | `write` | DXF out |

mod chain;
mod drawing;
mod error;
mod marks;
mod pairs;
mod picture;
mod ring;
mod table;
mod write;

use std::borrow::Cow;

pub use error::{
    FileFormat, FormatFault, LeftOut, LineRule, NotText, OutlineError, OutlineRemark, ShapeRule,
};
pub use write::{Shape, write_dxf};

/// Larger files are refused, in bytes.
const LARGEST: usize = 20_000_000;

/// More outlines than this in one file are refused.
pub const MOST_OUTLINES: usize = 2_000;

/// More corners than this in one file are refused.
pub const MOST_POINTS: usize = 20_000;

/// A place in meters.
type Point = [f64; 2];

/// One closed outline.
#[derive(Debug, Clone, PartialEq)]
pub struct Outline {
    /// Its name in the file, its layer's, or the file's own; no two are alike.
    pub name: String,
    /// Its corners in meters with y upwards. The last is joined to the first, which is not repeated.
    pub ring: Vec<[f64; 2]>,
}

/// The unit of the lengths in a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileUnit {
    /// 1 mm.
    Millimeters,
    /// 1 cm.
    Centimeters,
    /// 1 m.
    Meters,
    /// 25.4 mm.
    Inches,
    /// 304.8 mm.
    Feet,
}

impl FileUnit {
    /// Meters in one of it.
    pub const fn meters(self) -> f64 {
        match self {
            Self::Millimeters => 0.001,
            Self::Centimeters => 0.01,
            Self::Meters => 1.0,
            Self::Inches => 0.0254,
            Self::Feet => 0.3048,
        }
    }

    /// Its id for messages: its sign.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Millimeters => "mm",
            Self::Centimeters => "cm",
            Self::Meters => "m",
            Self::Inches => "in",
            Self::Feet => "ft",
        }
    }

    /// The unit with this sign, such as `mm`.
    fn of_sign(sign: &str) -> Option<Self> {
        match sign.to_ascii_lowercase().as_str() {
            "mm" => Some(Self::Millimeters),
            "cm" => Some(Self::Centimeters),
            "m" => Some(Self::Meters),
            "in" => Some(Self::Inches),
            "ft" => Some(Self::Feet),
            _ => None,
        }
    }
}

/// What was read from a file.
#[derive(Debug, Clone, PartialEq)]
pub struct OutlinesRead {
    /// The outlines, at least one.
    pub outlines: Vec<Outline>,
    /// The unit its lengths were read in.
    pub unit: FileUnit,
    /// Whether the file says so itself.
    pub unit_from_file: bool,
    /// What was left out or taken for granted.
    pub remarks: Vec<OutlineRemark>,
}

/// Reads the closed outlines of a file called `name`, which says by its ending what it is: `.csv`,
/// `.dxf` or `.svg`.
///
/// Lengths are taken in `assume` where the file has no unit. An SVG without a size in mm, cm or in
/// is the exception: as the format has it, 96 of its units are an inch.
///
/// # Errors
/// If the file cannot be read, has no closed outline, or goes beyond what is read: 20 MB,
/// [`MOST_OUTLINES`] and [`MOST_POINTS`].
pub fn read_outlines(name: &str, bytes: &[u8], assume: FileUnit) -> Result<OutlinesRead, OutlineError> {
    let file = name.rsplit(['/', '\\']).next().unwrap_or(name);
    let (stem, ending) = file.rsplit_once('.').unwrap_or((file, ""));
    let read = match ending.to_ascii_lowercase().as_str() {
        "csv" => table::read,
        "dxf" => drawing::read,
        "svg" => picture::read,
        _ => return Err(OutlineError::Kind(file.to_owned())),
    };
    if bytes.len() > LARGEST {
        return Err(OutlineError::TooLarge(bytes.len().div_ceil(1_000_000)));
    }
    let text = text_of(bytes)?;
    // A name of blanks alone says nothing; the whole name has its ending at least.
    let stem = if ring::plain_name(stem).is_empty() { file } else { stem };
    read(&text, stem, assume)
}

/// The text of a file, without its byte order mark.
///
/// What is no UTF-8 is taken for Latin-1: the numbers are the same, and a name at worst gets a
/// wrong letter.
fn text_of(bytes: &[u8]) -> Result<Cow<'_, str>, OutlineError> {
    let not_text = |what| Err(OutlineError::NotText(what));
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    if bytes.starts_with(b"AC10") && bytes.contains(&0) {
        return not_text(NotText::Dwg);
    }
    if bytes.starts_with(b"AutoCAD Binary DXF") || bytes.starts_with(b"AutoCAD DXB") {
        return not_text(NotText::BinaryDxf);
    }
    if bytes.starts_with(b"\x1f\x8b") || bytes.starts_with(b"PK\x03\x04") {
        return not_text(NotText::Compressed);
    }
    if bytes.starts_with(b"\xff\xfe") || bytes.starts_with(b"\xfe\xff") {
        return not_text(NotText::Utf16);
    }
    if bytes.contains(&0) {
        return not_text(NotText::Binary);
    }
    if bytes.trim_ascii().is_empty() {
        return Err(OutlineError::Empty);
    }
    let text = match std::str::from_utf8(bytes) {
        Ok(text) => Cow::Borrowed(text),
        Err(_) => Cow::Owned(bytes.iter().map(|&b| char::from(b)).collect()),
    };
    // Old spreadsheets end lines with a carriage return alone.
    Ok(if text.contains('\n') { text } else { Cow::Owned(text.replace('\r', "\n")) })
}
