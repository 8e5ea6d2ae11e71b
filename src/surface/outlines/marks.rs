//! An SVG cut down to the shapes that can outline a room.
//!
//! Only groups, shapes and the attributes that place them are written anew. Styles, pictures,
//! links, abbreviations (entities) and the like never reach the library that draws the shapes: it
//! would open the files they name, or unfold small drawings into endless ones.

use quick_xml::events::{BytesStart, Event};
use quick_xml::{Reader, XmlVersion, escape};

use super::{FileFormat, FileUnit, FormatFault, LineRule, MOST_POINTS, OutlineError};

/// Groups deeper in groups than this are refused.
const DEEPEST: usize = 64;

/// More groups than this are refused.
const MOST_GROUPS: usize = 20_000;

/// Larger numbers are refused.
const GREATEST: f64 = 1e9;

/// More numbers than this are refused. An arc has seven, and groups a few each.
const MOST_NUMBERS: usize = 10 * MOST_POINTS;

/// Attributes kept of shapes.
const OF_SHAPES: [&str; 16] = [
    "transform",
    "d",
    "points",
    "x",
    "y",
    "width",
    "height",
    "rx",
    "ry",
    "cx",
    "cy",
    "r",
    "x1",
    "y1",
    "x2",
    "y2",
];

/// Attributes kept of the drawing, and of drawings within it.
const OF_DRAWINGS: [&str; 7] = ["transform", "x", "y", "width", "height", "viewBox", "preserveAspectRatio"];

/// The drawing that is left.
#[derive(Default)]
pub(super) struct CutDown {
    /// Its text. The shapes are numbered: their `id` is their place in `names`.
    pub svg: String,
    /// The names of the shapes, empty where there is none.
    pub names: Vec<String>,
    /// The unit of its size, if it has a `viewBox` too.
    pub unit: Option<FileUnit>,
    /// How many shapes or groups are hidden.
    pub hidden: usize,
    /// How many copies of shapes there are.
    pub copies: usize,
    /// How many texts and pictures there are.
    pub others: usize,
    /// How many numbers there are.
    numbers: usize,
    /// How many groups there are.
    groups: usize,
    /// The groups that are open.
    open: Vec<Kind>,
}

/// What an element is to an outline.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Drawing,
    Group,
    Shape,
    Copy,
    Other,
    Nothing,
}

/// Cuts a drawing down.
pub(super) fn cut_down(text: &str) -> Result<CutDown, OutlineError> {
    let mut reader = Reader::from_str(text);
    let mut cut = CutDown::default();
    // Elements open within one that is left out.
    let mut within = 0_usize;
    loop {
        let event = reader.read_event().map_err(|error| unread(text, reader.error_position(), &error))?;
        let at = reader.buffer_position();
        match event {
            Event::Eof => break,
            Event::Start(_) if within > 0 => within += 1,
            Event::End(_) if within > 0 => within -= 1,
            Event::Start(start) => within = usize::from(!cut.take(&Element { start, text, at }, false)?),
            Event::Empty(start) if within == 0 => {
                cut.take(&Element { start, text, at }, true)?;
            }
            Event::End(_) => cut.close(),
            _ => {}
        }
    }
    if cut.svg.is_empty() {
        Err(fault(FormatFault::NoDrawing))
    } else if within + cut.open.len() > 0 {
        Err(fault(FormatFault::Truncated))
    } else {
        Ok(cut)
    }
}

/// An SVG with a fault.
pub(super) const fn fault(fault: FormatFault) -> OutlineError {
    OutlineError::Unread { format: FileFormat::Svg, fault }
}

impl CutDown {
    /// Writes an element, if it is kept. Says whether its children are to be looked at.
    fn take(&mut self, element: &Element<'_>, empty: bool) -> Result<bool, OutlineError> {
        let kind = self.kind(element);
        match kind {
            Kind::Nothing => {}
            Kind::Copy => self.copies += 1,
            Kind::Other => self.others += 1,
            _ if element.is_hidden()? && !self.open.is_empty() => self.hidden += 1,
            Kind::Shape => self.write_shape(element)?,
            Kind::Drawing | Kind::Group if empty && !self.open.is_empty() => {}
            Kind::Drawing | Kind::Group => {
                self.write_group(element, kind)?;
                if empty {
                    self.close();
                }
                return Ok(true);
            }
        }
        Ok(false)
    }

    fn kind(&self, element: &Element<'_>) -> Kind {
        if element.start.name().prefix().is_some_and(|prefix| prefix.as_ref() != "svg") {
            return Kind::Nothing;
        }
        match element.start.local_name().as_ref() {
            "svg" if !self.open.is_empty() || self.svg.is_empty() => Kind::Drawing,
            _ if self.open.is_empty() => Kind::Nothing,
            "g" | "a" | "switch" => Kind::Group,
            "path" | "rect" | "circle" | "ellipse" | "polygon" | "polyline" | "line" => Kind::Shape,
            "use" => Kind::Copy,
            "text" | "image" | "foreignObject" => Kind::Other,
            _ => Kind::Nothing,
        }
    }

    fn write_shape(&mut self, element: &Element<'_>) -> Result<(), OutlineError> {
        if self.names.len() == MOST_POINTS {
            return Err(OutlineError::TooManyPoints);
        }
        let shape = element.start.local_name();
        let number = self.names.len().to_string();
        self.svg.extend(["<", shape.as_ref(), " id=\"", &number, "\""]);
        self.write_attributes(element, &OF_SHAPES)?;
        self.svg.push_str("/>");
        let name = match element.value("inkscape:label")? {
            Some(label) => Some(label),
            None => element.value("id")?,
        };
        self.names.push(name.unwrap_or_default());
        Ok(())
    }

    fn write_group(&mut self, element: &Element<'_>, kind: Kind) -> Result<(), OutlineError> {
        self.groups += 1;
        if self.groups > MOST_GROUPS {
            return Err(fault(FormatFault::TooManyGroups(MOST_GROUPS)));
        }
        if self.open.len() == DEEPEST {
            return Err(fault(FormatFault::TooDeep(DEEPEST)));
        }
        if kind == Kind::Drawing {
            if self.open.is_empty() {
                self.unit = element.stated_unit()?;
            }
            self.svg.push_str("<svg xmlns=\"http://www.w3.org/2000/svg\"");
            self.write_attributes(element, &OF_DRAWINGS)?;
        } else {
            self.svg.push_str("<g");
            self.write_attributes(element, &["transform"])?;
        }
        self.svg.push('>');
        self.open.push(kind);
        Ok(())
    }

    fn write_attributes(&mut self, element: &Element<'_>, kept: &[&str]) -> Result<(), OutlineError> {
        for key in kept {
            if let Some(value) = element.value(key)? {
                self.check_numbers(element, &value)?;
                self.svg.extend([" ", key, "=\"", &escape::escape(value), "\""]);
            }
        }
        Ok(())
    }

    /// Refuses numbers that are no lengths, and more of them than the corners may have. An arc of
    /// unheard-of size would be drawn in unheard-of many pieces.
    fn check_numbers(&mut self, element: &Element<'_>, value: &str) -> Result<(), OutlineError> {
        let bytes = value.as_bytes();
        let mut at = 0;
        while at < bytes.len() {
            let length = number_length(&bytes[at..]);
            let number = value.get(at..at + length).unwrap_or_default();
            if number.parse::<f64>().is_ok_and(|size| size > GREATEST) {
                return Err(OutlineError::line(element.line(), number, LineRule::NumberTooLarge));
            }
            self.numbers += usize::from(length > 0);
            at += length.max(1);
        }
        if self.numbers > MOST_NUMBERS { Err(OutlineError::TooManyPoints) } else { Ok(()) }
    }

    fn close(&mut self) {
        match self.open.pop() {
            Some(Kind::Drawing) => self.svg.push_str("</svg>"),
            Some(_) => self.svg.push_str("</g>"),
            None => {}
        }
    }
}

/// An element, and where in the text it ends.
struct Element<'a> {
    start: BytesStart<'a>,
    text: &'a str,
    at: u64,
}

impl Element<'_> {
    /// The value of the first attribute with this key.
    fn value(&self, key: &str) -> Result<Option<String>, OutlineError> {
        let told = |error: quick_xml::Error| unread(self.text, self.at, &error);
        for attribute in self.start.attributes().with_checks(false) {
            let attribute = attribute.map_err(|error| told(error.into()))?;
            if attribute.key.as_ref() == key {
                let value = attribute.normalized_value(XmlVersion::Implicit1_0).map_err(told)?;
                return Ok(Some(value.into_owned()));
            }
        }
        Ok(None)
    }

    fn line(&self) -> usize {
        line(self.text, self.at)
    }

    /// Whether it is not to be seen, as layers that are switched off.
    fn is_hidden(&self) -> Result<bool, OutlineError> {
        let style = self.value("style")?.unwrap_or_default();
        let styled = style.split(';').filter_map(|entry| entry.split_once(':'));
        let display = self.value("display")?.unwrap_or_default();
        let visibility = self.value("visibility")?.unwrap_or_default();
        let plain = [("display", &display[..]), ("visibility", &visibility[..])];
        Ok(styled.chain(plain).any(|(key, value)| {
            matches!((key.trim(), value.trim()), ("display", "none") | ("visibility", "hidden"))
        }))
    }

    /// The unit of the size, if width and height have one and there is a `viewBox` to measure by.
    fn stated_unit(&self) -> Result<Option<FileUnit>, OutlineError> {
        let (width, height) = (self.value("width")?, self.value("height")?);
        let (Some(width), Some(height), Some(_)) = (width, height, self.value("viewBox")?) else {
            return Ok(None);
        };
        Ok(length_unit(&height).and(length_unit(&width)))
    }
}

/// How many bytes of an unsigned number `text` starts with, none if it starts with something else.
fn number_length(text: &[u8]) -> usize {
    let digits = |from: usize| text[from..].iter().take_while(|b| b.is_ascii_digit()).count();
    let whole = digits(0);
    let fraction = if text.get(whole) == Some(&b'.') { 1 + digits(whole + 1) } else { 0 };
    let end = whole + fraction;
    // The e of 1em is of no exponent.
    let sign = usize::from(matches!(text.get(end + 1), Some(b'+' | b'-')));
    match text.get(end) {
        Some(b'e' | b'E') if end > 0 && text.len() > end + 1 + sign => match digits(end + 1 + sign) {
            0 => end,
            exponent => end + 1 + sign + exponent,
        },
        _ => end,
    }
}

/// The unit of a length such as `120mm`.
fn length_unit(length: &str) -> Option<FileUnit> {
    let length = length.trim();
    let sign = length.trim_start_matches(|c: char| !c.is_ascii_alphabetic());
    // A number with an exponent has letters too, but no unit after them is one of these.
    match sign {
        "mm" => Some(FileUnit::Millimeters),
        "cm" => Some(FileUnit::Centimeters),
        "in" | "pt" | "pc" => Some(FileUnit::Inches),
        _ => None,
    }
}

/// The line of a place in the text, from 1.
fn line(text: &str, at: u64) -> usize {
    let before = usize::try_from(at).ok().and_then(|at| text.as_bytes().get(..at)).unwrap_or_default();
    before.iter().filter(|&&b| b == b'\n').count() + 1
}

fn unread(text: &str, at: u64, error: &quick_xml::Error) -> OutlineError {
    let line = line(text, at);
    let reason = error.to_string().chars().filter(|c| !c.is_control()).take(200).collect();
    fault(FormatFault::Broken { line: Some(line), reason })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_found_as_they_are_written() {
        let found = |mut text: &str| {
            let mut numbers = Vec::new();
            while !text.is_empty() {
                let length = number_length(text.as_bytes());
                numbers.extend((length > 0).then(|| text[..length].to_owned()));
                text = &text[length.max(1)..];
            }
            numbers
        };
        assert_eq!(found("M1-2.5.5e3,1e-4L1e+9z"), ["1", "2.5", ".5e3", "1e-4", "1e+9"]);
        assert_eq!(found("1em 1e 2E- 3.mm ."), ["1", "1", "2", "3.", "."]);
    }

    #[test]
    fn numbers_beyond_measure_are_refused() {
        let refusal = |shape: &str| cut_down(&format!("<svg>\n{shape}\n</svg>")).err();
        let found = "1e119".to_owned();
        let large = OutlineError::Line { line: 2, found, rule: LineRule::NumberTooLarge };
        assert_eq!(refusal("<path d='M0 0A9-1e119 1 1 0 0 0z'/>"), Some(large));
        assert!(refusal("<circle r='9999999999'/>").is_some());
        assert!(refusal("<circle r='1e8'/>").is_none());
    }
}
