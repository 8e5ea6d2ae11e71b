//! A drawn logo without what its drawing program wrote beside the drawing: names, folders, comments, data of its own.
//!
//! The drawing is written anew, element by element. Scripts, links and files elsewhere stay out of it. Pictures in it
//! are read and written anew as well, because the file of a photo tells more than the photo shows.

use std::borrow::Cow;
use std::io::Read as _;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use quick_xml::events::{BytesEnd, BytesStart, BytesText, Event};
use quick_xml::{Reader, Writer, XmlVersion};

/// No logo has more text than this, in bytes.
const LONGEST: u64 = 20 << 20;
/// More shapes shown by reference than this are refused: each may show others, and so on without end.
const MOST_COPIES: usize = 12;
/// Elements deeper in each other than this are refused.
const DEEPEST: usize = 64;

/// What is left out with all that is in it.
const LEFT_OUT: [&str; 6] = ["metadata", "script", "foreignObject", "title", "desc", "handler"];

const SVG: &str = "http://www.w3.org/2000/svg";
const XLINK: &str = "http://www.w3.org/1999/xlink";

/// Writes a drawing anew; `None` if it can't be read or is no drawing. `picture` does the same with a picture in it.
pub(super) fn plain(bytes: &[u8], picture: impl Fn(&[u8]) -> Option<Vec<u8>>) -> Option<Vec<u8>> {
    let text = text_of(bytes)?;
    let mut reader = Reader::from_str(text.trim_start_matches('\u{feff}'));
    let mut made =
        Made { writer: Writer::new(Vec::new()), picture, open: 0, left_out: 0, copies: 0, style: None };
    loop {
        match reader.read_event().ok()? {
            Event::Eof => break,
            event => made.take(event)?,
        }
    }
    (made.open == 0 && made.left_out == 0).then(|| made.writer.into_inner()).filter(|svg| !svg.is_empty())
}

/// The text of a drawing, which may be compressed.
fn text_of(bytes: &[u8]) -> Option<Cow<'_, str>> {
    if !bytes.starts_with(&[0x1f, 0x8b]) {
        return std::str::from_utf8(bytes).ok().map(Cow::Borrowed);
    }
    let mut text = String::new();
    let read = flate2::read::GzDecoder::new(bytes).take(LONGEST).read_to_string(&mut text).ok()?;
    (u64::try_from(read).is_ok_and(|read| read < LONGEST)).then_some(Cow::Owned(text))
}

/// The drawing as far as it is written.
struct Made<P> {
    writer: Writer<Vec<u8>>,
    picture: P,
    /// Elements that are open.
    open: usize,
    /// Elements open within one that is left out, itself included.
    left_out: usize,
    /// Shapes shown by reference.
    copies: usize,
    /// The style sheet that is open.
    style: Option<String>,
}

impl<P: Fn(&[u8]) -> Option<Vec<u8>>> Made<P> {
    /// Writes what is kept of it; `None` if the drawing is refused.
    fn take(&mut self, event: Event<'_>) -> Option<()> {
        match event {
            Event::Start(_) if self.left_out > 0 => self.left_out += 1,
            Event::End(_) if self.left_out > 0 => self.left_out -= 1,
            _ if self.left_out > 0 => {}
            Event::Start(start) => match self.element(&start)? {
                Some(kept) => {
                    self.open += 1;
                    self.style = (kept.name().as_ref() == "style").then(String::new);
                    return (self.open <= DEEPEST).then(|| self.write(Event::Start(kept)))?;
                }
                None => self.left_out = 1,
            },
            Event::Empty(start) => {
                if let Some(kept) = self.element(&start)? {
                    return self.write(Event::Empty(kept));
                }
            }
            Event::End(end) => {
                self.open = self.open.checked_sub(1)?;
                if let Some(style) = self.style.take() {
                    self.write(Event::Text(BytesText::new(&local(&style))))?;
                }
                return self.write(Event::End(BytesEnd::new(end.local_name().as_ref())));
            }
            Event::Text(text) => return self.text(&text.xml10_content()),
            Event::CData(text) => return self.text(&text),
            // Abbreviations of its own could unfold without end.
            Event::GeneralRef(reference) => {
                let named = match &*reference {
                    "amp" => Some('&'),
                    "lt" => Some('<'),
                    "gt" => Some('>'),
                    "quot" => Some('"'),
                    "apos" => Some('\''),
                    _ => reference.resolve_char_ref().ok()?,
                };
                return self.text(named?.encode_utf8(&mut [0; 4]));
            }
            _ => {}
        }
        Some(())
    }

    /// The element with the attributes that are kept; nothing if it is left out.
    fn element(&mut self, start: &BytesStart<'_>) -> Option<Option<BytesStart<'static>>> {
        let name = start.name();
        let foreign = name.prefix().is_some_and(|prefix| prefix.as_ref() != "svg");
        let name = start.local_name().as_ref().to_owned();
        if foreign || LEFT_OUT.contains(&&*name) {
            return Some(None);
        }
        if self.open == 0 && name != "svg" {
            return None;
        }
        self.copies += usize::from(name == "use");
        if self.copies > MOST_COPIES {
            return None;
        }
        let mut kept = BytesStart::new(name);
        if self.open == 0 {
            kept.push_attribute(("xmlns", SVG));
            kept.push_attribute(("xmlns:xlink", XLINK));
        }
        for attribute in start.attributes() {
            let attribute = attribute.ok()?;
            let key = attribute.key.as_ref();
            if !is_kept(key) {
                continue;
            }
            let value = attribute.normalized_value(XmlVersion::Implicit1_0).ok()?;
            let value = if key.ends_with("href") { self.link(&value) } else { Some(local(&value)) };
            if let Some(value) = value {
                kept.push_attribute((key, &*value));
            }
        }
        Some(Some(kept))
    }

    /// What a link is written as: one within the drawing as it is, a picture anew, any other not at all.
    fn link(&self, link: &str) -> Option<String> {
        let link = link.trim();
        if link.starts_with('#') {
            return Some(link.to_owned());
        }
        let (_, encoded) = link.strip_prefix("data:image/")?.split_once(";base64,")?;
        let encoded: String = encoded.chars().filter(|c| !c.is_whitespace()).collect();
        let png = (self.picture)(&BASE64_STANDARD.decode(encoded).ok()?)?;
        Some(format!("data:image/png;base64,{}", BASE64_STANDARD.encode(png)))
    }

    fn text(&mut self, text: &str) -> Option<()> {
        match &mut self.style {
            // It is looked through as a whole, however it was cut up.
            Some(style) => style.push_str(text),
            None if self.open > 0 => return self.write(Event::Text(BytesText::new(text))),
            None => {}
        }
        Some(())
    }

    fn write(&mut self, event: Event<'_>) -> Option<()> {
        self.writer.write_event(event).ok()
    }
}

/// Whether an attribute belongs to the drawing: no handler of a script, and none of another program's.
fn is_kept(key: &str) -> bool {
    match key.split_once(':') {
        Some(("xlink", key)) => key == "href",
        Some(("xml", key)) => key == "space",
        Some(_) => false,
        None => !key.starts_with("on") && !key.starts_with("data-") && key != "xmlns",
    }
}

/// A style or another value without what it would fetch from elsewhere, and without comments.
fn local(value: &str) -> String {
    // No drawing program hides letters of a style; who does has a reason.
    if value.contains('\\') && value.contains(['(', '@']) {
        return String::new();
    }
    let value = without(&without(value, "/*", "*/"), "@import", ";");
    let lower = value.to_ascii_lowercase();
    let mut made = String::with_capacity(value.len());
    let mut from = 0;
    for (at, _) in lower.match_indices("url(") {
        let end = value[at..].find(')').map_or(value.len(), |end| at + end + 1);
        let target = value[at + 4..end].trim_start_matches([' ', '"', '\'']);
        if at >= from && !target.starts_with('#') {
            made.push_str(&value[from..at]);
            made.push_str("none");
            from = end;
        }
    }
    made.push_str(&value[from..]);
    made
}

/// A text without what stands between these two, themselves included.
fn without(text: &str, start: &str, end: &str) -> String {
    let lower = text.to_ascii_lowercase();
    let (mut kept, mut from) = (String::with_capacity(text.len()), 0);
    while let Some(at) = lower[from..].find(start).map(|at| from + at) {
        kept.push_str(&text[from..at]);
        let after = at + start.len();
        from = lower[after..].find(end).map_or(text.len(), |at| after + at + end.len());
    }
    kept.push_str(&text[from..]);
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    fn made(svg: &str) -> Option<String> {
        let plain = plain(svg.as_bytes(), |picture| Some(picture.to_ascii_uppercase()))?;
        Some(String::from_utf8(plain).expect("text"))
    }

    #[test]
    fn what_is_drawn_stays_and_all_else_goes() {
        let svg = made(
            r##"<?xml version="1.0"?><!-- made at home --><!DOCTYPE svg>
            <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"
                 xmlns:draw="http://example.org/draw" draw:file="/home/me/logo.svg" viewBox="0 0 9 9" onload="go()">
            <metadata><draw:who>me</draw:who></metadata><title>mine</title><draw:grid units="mm"/>
            <style>.a { fill: red; background: url(http://example.org/a.png) } @import "b.css"; /* mine */ .b{fill:url(#g)}</style>
            <a xlink:href="http://example.org"><path class="a" d="M0 0h9v9z" data-from="here" style="fill:url('#g')"/></a>
            <script>go()</script><text>R &amp; D &#169;</text><use xlink:href="#g"/>
            <image href="file:///etc/a.png"/><image xlink:href="data:image/png;base64,YWJj"/></svg>"##,
        )
        .expect("a drawing");
        for gone in ["home", "me<", "mine", "example.org", "go()", "here", "grid", "file:", "css", "DOCTYPE"]
        {
            assert!(!svg.contains(gone), "{gone}: {svg}");
        }
        for kept in ["M0 0h9v9z", "viewBox=\"0 0 9 9\"", "fill: red", "R &amp; D ©", "#g", ".b{fill:url(#g)}"]
        {
            assert!(svg.contains(kept), "{kept}: {svg}");
        }
        assert!(svg.contains("data:image/png;base64,QUJD"), "the picture is made anew: {svg}");
        assert!(usvg::Tree::from_str(&svg, &usvg::Options::default()).is_ok(), "{svg}");
    }

    #[test]
    fn a_drawing_that_unfolds_without_end_is_refused() {
        let level =
            |n: usize| format!("<g id=\"l{}\">{}</g>", n + 1, format!("<use href=\"#l{n}\"/>").repeat(9));
        let levels: String = (0..9).map(level).collect();
        assert_eq!(made(&format!("<svg xmlns=\"{SVG}\"><path id=\"l0\" d=\"M0 0h1\"/>{levels}</svg>")), None);
        assert_eq!(made(&format!("<svg>{}</svg>", "<g>".repeat(5000) + &"</g>".repeat(5000))), None);
        let bomb = "<!DOCTYPE svg [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]><svg><text>&b;</text></svg>";
        assert_eq!(made(bomb), None);
        assert_eq!(made("<svg><g></svg>"), None);
        assert_eq!(made("<html/>"), None);
    }

    #[test]
    fn nothing_is_fetched_by_a_style() {
        assert_eq!(local("fill:URL( 'http://a' );x:url(#b)"), "fill:none;x:url(#b)");
        assert_eq!(local("a{}@IMPORT url(//b);c{}"), "a{}c{}");
        assert_eq!(local(r"fill:u\72l(http://a) url"), "");
        assert_eq!(local("fill:url(http://a"), "fill:none");
        let cut = "<svg><style>a{b:ur<!-- -->l(http://a)} c{d:&#117;rl(//e)}</style></svg>";
        assert!(made(cut).expect("a drawing").contains("<style>a{b:none} c{d:none}</style>"));
        assert_eq!(local("é url(é)/* url( */"), "é none");
    }
}
