//! Why a file of outlines cannot be read or written, and what was found odd about one that was. The
//! sentences are made in `words`.

use super::FileUnit;

/// Why the outlines of a file cannot be read or written.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum OutlineError {
    /// The file's name, whose ending is none of those known.
    #[error("{0:?} is no kind of outline file")]
    Kind(String),
    /// Nothing in it but blanks.
    #[error("an empty outline file")]
    Empty,
    /// Megabytes, more than are read.
    #[error("an outline file of {0} MB")]
    TooLarge(usize),
    /// It is no text that can be read.
    #[error("not readable as text: {0:?}")]
    NotText(NotText),
    /// Something in one line is not as it must be.
    #[error("line {line}: {found:?}: {rule:?}")]
    Line {
        /// The line, from 1.
        line: usize,
        /// What is there, at most 40 characters of it.
        found: String,
        /// The rule it breaks.
        rule: LineRule,
    },
    /// More corners than [`MOST_POINTS`](super::MOST_POINTS).
    #[error("too many corners")]
    TooManyPoints,
    /// More outlines than [`MOST_OUTLINES`](super::MOST_OUTLINES).
    #[error("too many outlines")]
    TooManyOutlines,
    /// Nothing is left that could be a room. The remarks say what there was instead.
    #[error("no closed outline: {0:?}")]
    NoOutline(Vec<OutlineRemark>),
    /// The file is broken, or built in a way that is not read.
    #[error("unreadable {format:?}: {fault:?}")]
    Unread {
        /// What its name says it is.
        format: FileFormat,
        /// What is the matter.
        fault: FormatFault,
    },
    /// A shape cannot be written.
    #[error("a shape on layer {layer:?}: {rule:?}")]
    NoShape {
        /// Its layer.
        layer: String,
        /// The rule it breaks.
        rule: ShapeRule,
    },
    /// The library for the format would not write; what it said.
    #[error("unwritable DXF: {0}")]
    Unwritten(String),
}

impl OutlineError {
    /// An error in one line, with no more of what was found there than fits a message.
    pub(super) fn line(line: usize, found: &str, rule: LineRule) -> Self {
        let mut short: String = found.trim().chars().take(40).filter(|c| !c.is_control()).collect();
        if found.trim().chars().count() > 40 {
            short.push('…');
        }
        Self::Line { line, found: short, rule }
    }
}

/// What a file is instead of text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotText {
    /// A DWG drawing.
    Dwg,
    /// A DXF in its binary form.
    BinaryDxf,
    /// An archive, or a drawing that is compressed.
    Compressed,
    /// Text in UTF-16.
    Utf16,
    /// Something else with bytes that no text has.
    Binary,
}

/// A rule that a line of a file can break.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LineRule {
    /// CSV: a row is far longer than one with a corner can be.
    RowTooLong,
    /// CSV: the first row has two columns, x and y, or three, outline, x and y.
    Columns,
    /// CSV: every row has the columns of the first.
    SameColumns,
    /// CSV: x and y have one unit.
    OneUnit,
    /// CSV: a coordinate is a bare number.
    Coordinate,
    /// SVG: a number is below a thousand million.
    NumberTooLarge,
    /// DXF: every other line is a code, a whole number.
    Code,
    /// DXF: this code's value is a length or an angle.
    LengthOrAngle,
    /// DXF: this code's value is a whole number.
    Whole,
}

/// A format of files with outlines.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileFormat {
    /// A table of corners.
    Csv,
    /// A drawing in the exchange format of drafting programs.
    Dxf,
    /// A vector picture.
    Svg,
}

/// What is the matter with a file of one of the formats.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum FormatFault {
    /// It is broken.
    Broken {
        /// The line, from 1, if it is known.
        line: Option<usize>,
        /// What the library for the format says of it, in its own technical English.
        reason: String,
    },
    /// There is no drawing of the format in it.
    NoDrawing,
    /// It ends in the middle.
    Truncated,
    /// More groups than this.
    TooManyGroups(usize),
    /// Groups in groups, deeper than this.
    TooDeep(usize),
}

/// A rule that a shape to be written can break.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ShapeRule {
    /// A ring has three corners or more.
    Corners,
    /// Every coordinate is a number within a million kilometers.
    Measurable,
}

/// What was taken for granted or left out when a file was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OutlineRemark {
    /// The drawing is in a unit that is not read; its lengths were taken in this one.
    UnknownUnit(FileUnit),
    /// An SVG without a size in mm, cm or in: 96 of its units were taken as an inch.
    NoSize,
    /// Things that were left out.
    LeftOut {
        /// What they are.
        what: LeftOut,
        /// How many, at least one.
        count: usize,
    },
}

/// What can be in a drawing that is no outline of a room.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LeftOut {
    /// Lines that do not close.
    OpenLines,
    /// Lines more than two of which meet at a corner, so that it is not clear what they outline.
    BranchedLines,
    /// Shapes with fewer than three corners, or of less than a square centimeter.
    SmallShapes,
    /// Shapes beyond 100 000 km from the origin.
    FarShapes,
    /// DXF: blocks.
    Blocks,
    /// DXF: splines and ellipses.
    Curves,
    /// DXF: texts and dimensions.
    Texts,
    /// DXF: hatchings.
    Hatchings,
    /// DXF: solids and faces.
    Faces,
    /// DXF: meshes.
    Meshes,
    /// DXF: shapes on the sheet around the drawing.
    OnSheet,
    /// DXF: shapes that do not lie flat in the plane of the drawing.
    Upright,
    /// DXF: anything else.
    Others,
    /// SVG: shapes without a size.
    Sizeless,
    /// SVG: shapes and groups that are switched off.
    Hidden,
    /// SVG: copies that refer to another shape.
    Copies,
    /// SVG: texts and pictures.
    TextsAndPictures,
}
