//! Outlines out of other programs' files: what was left out, and why a file could not be used.

use super::{Arg, Say, Words, say};
use crate::surface::outlines::{
    FileFormat, FormatFault, LeftOut, LineRule, MOST_OUTLINES, MOST_POINTS, NotText, OutlineError,
    OutlineRemark, ShapeRule,
};

impl Say for OutlineError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Kind(name) => say!(words, "outline-kind", name = name),
            Self::Empty => say!(words, "outline-empty"),
            Self::TooLarge(megabytes) => say!(words, "outline-too-large", megabytes = *megabytes),
            Self::NotText(kind) => say!(words, "outline-not-text", kind = Arg::Id(not_text_id(*kind))),
            Self::Line { line, found, rule } => wrong_line(words, *line, found, *rule),
            Self::TooManyPoints => say!(words, "outline-too-many-corners", limit = MOST_POINTS),
            Self::TooManyOutlines => say!(words, "outline-too-many-outlines", limit = MOST_OUTLINES),
            Self::NoOutline(remarks) => {
                let remarks = remarks.iter().map(|remark| remark.say(words));
                let said = std::iter::once(say!(words, "outline-none")).chain(remarks);
                said.collect::<Vec<_>>().join(" ")
            }
            Self::Unread { format, fault } => broken(words, *format, fault),
            Self::NoShape { layer, rule: ShapeRule::Corners } => {
                say!(words, "outline-shape-corners", layer = layer)
            }
            Self::NoShape { layer, rule: ShapeRule::Measurable } => {
                say!(words, "outline-shape-measurable", layer = layer)
            }
            Self::Unwritten(reason) => say!(words, "outline-unwritten", reason = reason),
        }
    }
}

fn wrong_line(words: &Words, line: usize, found: &String, rule: LineRule) -> String {
    match rule {
        LineRule::RowTooLong => say!(words, "outline-row-too-long", line = line, found = found),
        LineRule::Columns => say!(words, "outline-columns", line = line, found = found),
        LineRule::SameColumns => say!(words, "outline-same-columns", line = line, found = found),
        LineRule::OneUnit => say!(words, "outline-one-unit", line = line, found = found),
        LineRule::Coordinate => say!(words, "outline-coordinate", line = line, found = found),
        LineRule::NumberTooLarge => say!(words, "outline-number-too-large", line = line, found = found),
        LineRule::Code => say!(words, "outline-code", line = line, found = found),
        LineRule::LengthOrAngle => say!(words, "outline-length-or-angle", line = line, found = found),
        LineRule::Whole => say!(words, "outline-whole", line = line, found = found),
    }
}

fn broken(words: &Words, format: FileFormat, fault: &FormatFault) -> String {
    let format = Arg::Id(match format {
        FileFormat::Csv => "csv",
        FileFormat::Dxf => "dxf",
        FileFormat::Svg => "svg",
    });
    match fault {
        FormatFault::Broken { line: Some(line), reason } => {
            say!(words, "outline-broken-line", format = format, line = *line, reason = reason)
        }
        FormatFault::Broken { line: None, reason } => {
            say!(words, "outline-broken", format = format, reason = reason)
        }
        FormatFault::NoDrawing => say!(words, "outline-no-drawing"),
        FormatFault::Truncated => say!(words, "outline-truncated"),
        FormatFault::TooManyGroups(limit) => say!(words, "outline-too-many-groups", limit = *limit),
        FormatFault::TooDeep(limit) => say!(words, "outline-too-deep", limit = *limit),
    }
}

const fn not_text_id(kind: NotText) -> &'static str {
    match kind {
        NotText::Dwg => "dwg",
        NotText::BinaryDxf => "binary-dxf",
        NotText::Compressed => "compressed",
        NotText::Utf16 => "utf16",
        NotText::Binary => "binary",
    }
}

impl Say for OutlineRemark {
    fn say(&self, words: &Words) -> String {
        match *self {
            Self::UnknownUnit(unit) => say!(words, "outline-unknown-unit", unit = Arg::Id(unit.key())),
            Self::NoSize => say!(words, "outline-no-size"),
            Self::LeftOut { what, count } => left_out(words, what, count),
        }
    }
}

fn left_out(words: &Words, what: LeftOut, count: usize) -> String {
    match what {
        LeftOut::OpenLines => say!(words, "outline-left-open-lines", count = count),
        LeftOut::BranchedLines => say!(words, "outline-left-branched-lines", count = count),
        LeftOut::SmallShapes => say!(words, "outline-left-small-shapes", count = count),
        LeftOut::FarShapes => say!(words, "outline-left-far-shapes", count = count),
        LeftOut::Blocks => say!(words, "outline-left-blocks", count = count),
        LeftOut::Curves => say!(words, "outline-left-curves", count = count),
        LeftOut::Texts => say!(words, "outline-left-texts", count = count),
        LeftOut::Hatchings => say!(words, "outline-left-hatchings", count = count),
        LeftOut::Faces => say!(words, "outline-left-faces", count = count),
        LeftOut::Meshes => say!(words, "outline-left-meshes", count = count),
        LeftOut::OnSheet => say!(words, "outline-left-on-sheet", count = count),
        LeftOut::Upright => say!(words, "outline-left-upright", count = count),
        LeftOut::Others => say!(words, "outline-left-others", count = count),
        LeftOut::Sizeless => say!(words, "outline-left-sizeless", count = count),
        LeftOut::Hidden => say!(words, "outline-left-hidden", count = count),
        LeftOut::Copies => say!(words, "outline-left-copies", count = count),
        LeftOut::TextsAndPictures => say!(words, "outline-left-texts-and-pictures", count = count),
    }
}
