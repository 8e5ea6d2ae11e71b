//! Garbage, damaged files and files made to do harm: each is read or refused, soon and in words.

use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use crate::outlines::{self, FILES};
use gapwright::surface::outlines::OutlinesRead;
use proptest::prelude::*;

/// Reads within seconds.
fn read(name: &str, bytes: &[u8]) -> Result<OutlinesRead, String> {
    let start = Instant::now();
    let read = outlines::read(name, bytes);
    assert!(start.elapsed() < Duration::from_secs(20), "{name} took {:?}", start.elapsed());
    read
}

proptest! {
    #[test]
    fn random_bytes(bytes in prop::collection::vec(any::<u8>(), 0..600), kind in 0..FILES.len()) {
        drop(read(FILES[kind].0, &bytes));
    }

    #[test]
    fn random_letters(text in "(0\n(LINE|ARC|CIRCLE|LWPOLYLINE|SECTION|ENDSEC|POLYLINE|VERTEX)\n|(1|2)[01]\n-?[0-9]{1,6}\n|[0-9]{1,3}\n[ -~]{0,9}\n|[ -~]{0,9}[,;\t\n]|<[a-z]{1,4} [dr]=\"[ -~]{0,20}\"/?>){0,60}", kind in 0..FILES.len()) {
        drop(read(FILES[kind].0, text.as_bytes()));
        drop(read("x.dxf", format!("0\nSECTION\n2\nENTITIES\n{text}").as_bytes()));
        drop(read("x.svg", format!("<svg>{text}</svg>").as_bytes()));
    }
}

/// Four megabytes of `piece` between two ends: enough to see what grows with the square of it.
fn filled(start: &str, piece: &str, end: &str) -> Vec<u8> {
    let count = (4_000_000 - start.len() - end.len()) / piece.len();
    [start, &piece.repeat(count), end].concat().into_bytes()
}

fn refusal(name: &str, bytes: &[u8], reason: &str) {
    let said = read(name, bytes).unwrap_err();
    assert!(said.contains(reason), "{said}");
}

#[test]
fn a_picture_opens_no_other_file() {
    let other = Path::new(env!("CARGO_TARGET_TMPDIR")).join("other.svg");
    fs::write(
        &other,
        "<svg xmlns='http://www.w3.org/2000/svg'><rect id='r' width='960' height='960'/></svg>",
    )
    .unwrap();
    let other = other.to_str().unwrap();
    let picture = format!(
        "<?xml-stylesheet href='{other}'?><svg xmlns='http://www.w3.org/2000/svg'>\
         <style>@import url('{other}');</style><image href='{other}' width='9' height='9'/>\
         <image href='file://{other}'/><use href='{other}#r'/><rect id='Own' width='96' height='96'/></svg>"
    );
    let read_there = read("a.svg", picture.as_bytes()).unwrap();
    assert_eq!(read_there.outlines.iter().map(|o| &o.name).collect::<Vec<_>>(), ["Own"]);
    let entity = format!("<!DOCTYPE svg [<!ENTITY x SYSTEM '{other}'>]>");
    let content = format!("{entity}<svg>&x;<rect id='Own' width='96' height='96'/></svg>");
    assert_eq!(read("a.svg", content.as_bytes()).unwrap().outlines.len(), 1);
    let name = format!("{entity}<svg><rect id='&x;' width='96' height='96'/></svg>");
    refusal("a.svg", name.as_bytes(), "line 1");
}

#[test]
fn abbreviations_of_abbreviations_are_not_unfolded() {
    let mut entities = "<!ENTITY a0 \"0 0 9 9 0 9 \">".to_owned();
    for i in 1..10 {
        entities.push_str(&format!("<!ENTITY a{i} \"{}\">", format!("&a{};", i - 1).repeat(10)));
    }
    let laughs = format!(
        "<!DOCTYPE svg [{entities}]><svg xmlns=\"http://www.w3.org/2000/svg\"><polygon points=\"&a9;\"/></svg>"
    );
    refusal("a.svg", laughs.as_bytes(), "line 1");
    // The library behind it would not unfold them either.
    assert!(usvg::Tree::from_str(&laughs, &usvg::Options::default()).is_err());
}

#[test]
fn pictures_that_fill_the_limit() {
    let rect = "<rect width='96' height='96'/>";
    refusal("a.svg", &filled("<svg>", "<g>", ""), "more than 64 deep");
    refusal("a.svg", &filled("<svg>", rect, "</svg>"), "corners");
    refusal("a.svg", &filled("<svg><path d='M0 0", " 1", "'/></svg>"), "corners");
    let far = "<svg><polygon transform='scale(1e8)' points='0 0 7e8 0 7e8 7e8'/></svg>";
    refusal("a.svg", far.as_bytes(), "too far from the origin");
    refusal("a.svg", b"<svg><path d='M0 0A9-1e119 1 1 0 0 0z'/></svg>", "too large");
    refusal("a.svg", &filled("<svg><path d='M0 0", "A999999999 1 1 0 0 9 9", "'/></svg>"), "corners");
    let circles = "<circle r='1e9in'/><rect rx='1e9%' ry='1' width='1e9' height='1e9'/>".repeat(9_999);
    refusal("a.svg", format!("<svg>{circles}</svg>").as_bytes(), "corners");
    refusal("a.svg", &filled("<svg><g transform='", "scale(1)", "'></g></svg>"), "corners");
    refusal("a.svg", &filled("<svg><path d='", "M0 0C1e9 9 9 1e9 9 9", "'/></svg>"), "corners");
    let huge =
        "<svg width='1mm' height='1mm' viewBox='0 0 .00001 .00001'><path d='M0 0C1e5 9 9 1e5 9 9z'/></svg>";
    refusal("a.svg", huge.as_bytes(), "corners");
    let with = |start: &str, piece: &str, end: &str| {
        let read = read("a.svg", &filled(start, piece, &format!("{end}{rect}</svg>"))).unwrap();
        assert_eq!(read.outlines.len(), 1);
    };
    with("<svg>", "<g/>", "");
    let (down, up) = ("<svg><g transform='scale(1)'>".repeat(32), "</g></svg>".repeat(32));
    assert!(read("a.svg", format!("{down}{rect}{up}").as_bytes()).is_ok());
    refusal("a.svg", &filled("<svg>", "<g></g>", "</svg>"), "20,000 groups");
    let nested = "<svg width='9' height='9'><g transform='rotate(1)'></g></svg>".repeat(9_999);
    assert!(read("a.svg", format!("<svg>{nested}{rect}</svg>").as_bytes()).is_ok());
    with("<svg ", "a='' ", ">");
    with("<svg><g style='", "a:b;", "'></g>");
    with("<svg><style>", "*{marker:url(#a)}", "</style>");
    with("<svg><defs>", "<g></g>", "</defs>");
    with("<svg><rect id='", "x", "' width='96' height='0'/>");
}

#[test]
fn drawings_that_fill_the_limit() {
    let start = "0\nSECTION\n2\nENTITIES\n";
    let ring = "0\nCIRCLE\n40\n500\n0\nENDSEC\n0\nEOF\n";
    refusal("a.dxf", &filled(start, "0\nCIRCLE\n10\n0\n40\n9\n", ""), "corners");
    refusal("a.dxf", &filled(start, "0\nLINE\n", ""), "corners");
    refusal("a.dxf", &filled("", "0\nSECTION\n", ""), "no closed outline");
    refusal("a.dxf", &filled("", "\n", "x"), "Line 1");
    refusal("a.dxf", &filled(start, "1", ""), "is not a group code");
    let arcs = "10\n0\n20\n0\n42\n0.9\n10\n900000\n20\n0\n42\n0.9\n".repeat(9_000);
    refusal("a.dxf", format!("{start}0\nLWPOLYLINE\n70\n1\n{arcs}{ring}").as_bytes(), "corners");
    let with = |start: &str, piece: &str, end: &str| {
        assert_eq!(read("a.dxf", &filled(start, piece, &format!("{end}{ring}"))).unwrap().outlines.len(), 1);
    };
    with(&format!("{start}0\nLINE\n1001\nX\n"), "1002\n{\n", "");
    with(&format!("{start}0\nLWPOLYLINE\n"), "42\n1\n", "");
    with(start, "0\nHATCH\n", "");
    with("0\nSECTION\n2\nTHUMBNAILIMAGE\n90\n9\n", "310\nFFFFFFFF\n", &format!("0\nENDSEC\n{start}"));
    with("0\nSECTION\n2\nHEADER\n", "9\n$TDCREATE\n40\n1e300\n", &format!("0\nENDSEC\n{start}"));
    with("0\nSECTION\n2\nBLOCKS\n", "0\nBLOCK\n2\nX\n", &format!("0\nENDSEC\n{start}"));
}

#[test]
fn tables_that_fill_the_limit() {
    refusal("a.csv", &filled("", ",", ""), "no closed outline");
    refusal("a.csv", &filled("", ";\"", ""), "no closed outline");
    refusal("a.csv", &filled("x,y\n", "1,", ""), "too long");
    refusal("a.csv", &filled("", "1", ""), "too long");
    refusal("a.csv", &filled("\"", "1,2\n", ""), "has neither the two columns");
    refusal("a.csv", &filled("x,y\n1,1", "0", ""), "too long");
    refusal("a.csv", &filled("x,y\n0,0\n", "\n", "1,z"), "is not a coordinate");
    refusal("a.csv", &filled("sep=,\n", "\nsep=;", ""), "no closed outline");
}

#[test]
fn tangles_of_lines() {
    let line = |a: [usize; 2], b: [usize; 2]| {
        format!("0\nLINE\n8\nL{}\n10\n{}\n20\n{}\n11\n{}\n21\n{}\n", a[0] % 2, a[0], a[1], b[0], b[1])
    };
    let star: String = (1..10_000).map(|i| line([0, 0], [i, 10_000 - i])).collect();
    let wheel: String =
        (1..5_000).map(|i| line([2, 2], [i * 2, 9]) + &line([i * 2, 9], [i * 2 + 2, 9])).collect();
    let layers: String =
        (0..10_000).map(|i| format!("0\nLINE\n8\nlayer number {i}\n10\n0\n11\n{i}\n")).collect();
    for lines in [star, wheel, layers] {
        refusal(
            "a.dxf",
            format!("0\nSECTION\n2\nENTITIES\n{lines}0\nENDSEC\n").as_bytes(),
            "no closed outline",
        );
    }
}
