//! A DXF cut down to the shapes that can outline a room.
//!
//! A DXF is pairs of lines: a code, and a value of the kind the code asks for. Everything but the
//! shapes and the unit is dropped, the values are checked, and what is left is written anew. The
//! library then reads a drawing in which nothing can surprise it.

use super::{LeftOut, LineRule, MOST_POINTS, OutlineError};

/// Numbers beyond this are no lengths in any unit.
const GREATEST: f64 = 1e12;

/// Every shape has a corner, and some polylines a shape to end them.
const MOST_SHAPES: usize = 2 * MOST_POINTS;

/// The drawing, and what was dropped from it.
#[derive(Debug, Default)]
pub(super) struct CutDown {
    /// The drawing that is left, all in ASCII.
    pub dxf: String,
    /// How many of each kind of shape are not read, in the order of [`UNREAD`].
    pub unread: [usize; UNREAD.len()],
}

/// Kinds of shapes that are not read.
pub(super) const UNREAD: [LeftOut; 6] =
    [LeftOut::Blocks, LeftOut::Curves, LeftOut::Texts, LeftOut::Hatchings, LeftOut::Faces, LeftOut::Others];

/// The place in [`UNREAD`] of a kind of shape.
fn unread_kind(kind: &str) -> usize {
    match kind {
        "INSERT" => 0,
        "SPLINE" | "ELLIPSE" | "HELIX" => 1,
        "TEXT" | "MTEXT" | "ATTDEF" | "ATTRIB" | "DIMENSION" | "LEADER" | "MULTILEADER" | "TOLERANCE" => 2,
        "HATCH" | "MPOLYGON" => 3,
        "SOLID" | "TRACE" | "3DFACE" | "3DSOLID" | "REGION" | "BODY" | "MESH" | "SURFACE" => 4,
        _ => 5,
    }
}

/// The codes kept of a kind of shape; nothing if it is not read.
fn codes(kind: &str) -> Option<&'static [u16]> {
    match kind {
        "LINE" => Some(&[8, 67, 10, 20, 11, 21]),
        "LWPOLYLINE" => Some(&[8, 67, 70, 10, 20, 42, 210, 220, 230]),
        "POLYLINE" => Some(&[8, 67, 70, 210, 220, 230]),
        "VERTEX" => Some(&[10, 20, 42, 70]),
        "SEQEND" => Some(&[]),
        "CIRCLE" => Some(&[8, 67, 10, 20, 40, 210, 220, 230]),
        "ARC" => Some(&[8, 67, 10, 20, 40, 50, 51, 210, 220, 230]),
        _ => None,
    }
}

/// One code, its value and the line of the code.
struct Pair<'a> {
    code: u16,
    value: &'a str,
    line: usize,
}

/// The pairs of a text.
fn pairs(text: &str) -> impl Iterator<Item = Result<Pair<'_>, OutlineError>> {
    let mut lines = (1_usize..).zip(text.lines());
    std::iter::from_fn(move || {
        let (line, code) = lines.next()?;
        if code.trim().is_empty() && lines.clone().all(|(_, rest)| rest.trim().is_empty()) {
            return None;
        }
        let Ok(number) = code.trim().parse::<i16>() else {
            return Some(Err(OutlineError::line(line, code, LineRule::Code)));
        };
        let value = lines.next().map_or("", |(_, value)| value.trim());
        // Codes below zero are of no file's shapes.
        Some(Ok(Pair { code: u16::try_from(number).unwrap_or(u16::MAX), value, line }))
    })
}

/// Cuts a drawing down.
pub(super) fn cut_down(text: &str) -> Result<CutDown, OutlineError> {
    let mut cutter = Cutter { unit: "0".to_owned(), ..Cutter::default() };
    for pair in pairs(text) {
        let pair = pair?;
        if pair.code == 0 && pair.value == "EOF" {
            break;
        }
        cutter.take(&pair)?;
    }
    let Cutter { unit, shapes, unread, .. } = cutter;
    let header =
        format!("0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n9\n$INSUNITS\n70\n{unit}\n0\nENDSEC\n");
    let dxf = format!("{header}0\nSECTION\n2\nENTITIES\n{shapes}0\nENDSEC\n0\nEOF\n");
    Ok(CutDown { dxf, unread })
}

/// Where in the drawing the cutting is, and what it has kept.
#[derive(Default)]
struct Cutter<'a> {
    section: &'a str,
    /// Whether the name of a section comes next.
    opening: bool,
    /// The variable of the header whose value comes next.
    variable: &'a str,
    /// The kind of the shape, and the codes kept of it.
    shape: (&'a str, &'static [u16]),
    /// Corners of this shape and of all.
    corners: (usize, usize),
    /// Shapes kept.
    count: usize,
    unit: String,
    shapes: String,
    unread: [usize; UNREAD.len()],
}

impl<'a> Cutter<'a> {
    fn take(&mut self, pair: &Pair<'a>) -> Result<(), OutlineError> {
        match (self.section, pair.code) {
            (_, 0) if pair.value == "SECTION" => self.opening = true,
            (_, 0) if pair.value == "ENDSEC" => self.section = "",
            (_, 2) if self.opening => (self.section, self.opening) = (pair.value, false),
            ("HEADER", 9) => self.variable = pair.value,
            ("HEADER", 70) if self.variable == "$INSUNITS" => self.unit = whole(pair)?,
            ("ENTITIES", 0) => self.start(pair.value)?,
            ("ENTITIES", code) if self.shape.1.contains(&code) => self.keep(pair)?,
            _ => {}
        }
        Ok(())
    }

    fn start(&mut self, kind: &'a str) -> Result<(), OutlineError> {
        self.shape = (kind, codes(kind).unwrap_or_default());
        self.corners.0 = 0;
        if codes(kind).is_none() {
            self.unread[unread_kind(kind)] += 1;
            return Ok(());
        }
        self.put(0, kind);
        self.count += 1;
        if self.count > MOST_SHAPES { Err(OutlineError::TooManyPoints) } else { Ok(()) }
    }

    fn keep(&mut self, pair: &Pair<'a>) -> Result<(), OutlineError> {
        if let 10 | 11 = pair.code {
            self.corners = (self.corners.0 + 1, self.corners.1 + 1);
        }
        if self.corners.1 > MOST_POINTS {
            return Err(OutlineError::TooManyPoints);
        }
        // What belongs to a corner has no place before the first.
        if self.shape.0 == "LWPOLYLINE" && [20, 42].contains(&pair.code) && self.corners.0 == 0 {
            return Ok(());
        }
        let value = match pair.code {
            8 => in_ascii(pair.value),
            67 | 70 => whole(pair)?,
            _ => number(pair)?,
        };
        self.put(pair.code, &value);
        Ok(())
    }

    fn put(&mut self, code: u16, value: &str) {
        self.shapes.extend([code.to_string().as_str(), "\n", value, "\n"]);
    }
}

fn number(pair: &Pair<'_>) -> Result<String, OutlineError> {
    match pair.value.parse::<f64>() {
        Ok(value) if value.abs() <= GREATEST => Ok(format!("{value:e}")),
        _ => Err(OutlineError::line(pair.line + 1, pair.value, LineRule::LengthOrAngle)),
    }
}

/// A whole number. Some programs write it with a decimal point.
fn whole(pair: &Pair<'_>) -> Result<String, OutlineError> {
    match pair.value.parse::<f64>() {
        Ok(value) if value.abs() <= f64::from(i16::MAX) => Ok(format!("{value:.0}")),
        _ => Err(OutlineError::line(pair.line + 1, pair.value, LineRule::Whole)),
    }
}

/// A name in ASCII, other letters as DXF has them there.
fn in_ascii(name: &str) -> String {
    let mut ascii = String::new();
    for c in name.chars().filter(|c| !c.is_control()) {
        match u32::from(c) {
            0..0x80 => ascii.push(c),
            code @ 0x80..=0xffff => ascii.push_str(&format!("\\U+{code:04X}")),
            _ => ascii.push('_'),
        }
    }
    ascii
}

#[cfg(test)]
mod tests {
    use super::*;

    fn drawing(entities: &str) -> String {
        format!("  0\r\nSECTION\r\n  2\r\nENTITIES\r\n{entities}0\nENDSEC\n0\nEOF\n")
    }

    #[test]
    fn only_shapes_and_their_codes_are_kept() {
        let text = drawing("0\nLINE\n5\nA1\n8\nWände\n10\n1.5\n20\n2\n1001\nX\n1002\n{\n0\nSPLINE\n10\n7\n");
        let cut = cut_down(&text).unwrap();
        assert!(cut.dxf.contains("0\nLINE\n8\nW\\U+00E4nde\n10\n1.5e0\n20\n2e0\n0\nENDSEC"), "{}", cut.dxf);
        assert_eq!(cut.unread, [0, 1, 0, 0, 0, 0]);
    }

    #[test]
    fn what_is_wrong_is_told_with_its_line() {
        let refusal = |text: &str| cut_down(text).unwrap_err();
        let wrong = |line, found: &str, rule| OutlineError::Line { line, found: found.to_owned(), rule };
        let letters = refusal(&drawing("0\nLINE\n10\nabc\n"));
        assert_eq!(letters, wrong(8, "abc", LineRule::LengthOrAngle));
        let endless = refusal(&drawing("0\nCIRCLE\n40\n1e300\n"));
        assert_eq!(endless, wrong(8, "1e300", LineRule::LengthOrAngle));
        assert_eq!(refusal("<svg>\n</svg>\n"), wrong(1, "<svg>", LineRule::Code));
    }
}
