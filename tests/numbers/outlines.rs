//! Drawings and tables of every kind, with areas worked by hand; what is written is read back.

use std::f64::consts::PI;
use std::fs;
use std::path::{Path, PathBuf};

use gapwright::measure::Units;
use gapwright::surface::outlines::{
    FileUnit, LeftOut, LineRule, MOST_OUTLINES, NotText, Outline, OutlineError, OutlineRemark, OutlinesRead,
    Shape, ShapeRule, read_outlines, write_dxf,
};
use gapwright::words::{Say as _, Words};

fn fixture(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/numbers/outlines").join(name)
}

fn read(name: &str, assume: FileUnit) -> OutlinesRead {
    read_outlines(name, &fs::read(fixture(name)).unwrap(), assume).unwrap()
}

fn left(what: LeftOut, count: usize) -> OutlineRemark {
    OutlineRemark::LeftOut { what, count }
}

/// What the user is told.
fn said(error: &OutlineError) -> String {
    error.say(&Words::us_english(Units::Inches, "$"))
}

fn area(ring: &[[f64; 2]]) -> f64 {
    let next = ring.iter().cycle().skip(1);
    ring.iter().zip(next).map(|(a, b)| (a[0] * b[1] - b[0] * a[1]) / 2.0).sum::<f64>().abs()
}

/// Names and areas as expected, in order. `curved` is how much of the border is curved, in metres:
/// pieces of it lie up to 1 mm inside.
fn assert_areas(read: &OutlinesRead, expected: &[(&str, f64, f64)]) {
    let names: Vec<&str> = read.outlines.iter().map(|o| o.name.as_str()).collect();
    assert_eq!(names, expected.iter().map(|(name, ..)| *name).collect::<Vec<_>>());
    for (Outline { name, ring }, (_, square, curved)) in read.outlines.iter().zip(expected) {
        let short = square - area(ring);
        assert!((-1e-5..=1e-5 + curved * 0.001).contains(&short), "{name}: {} for {square}", area(ring));
    }
}

#[test]
fn a_table_with_names() {
    let read = read("rooms.csv", FileUnit::Millimeters);
    // The larder is an angle: 3 m by 1 m, and 1 m by 1 m.
    assert_areas(&read, &[("Studio", 4.2505 * 3.0, 0.0), ("Larder", 4.0, 0.0)]);
    assert_eq!(read.outlines[0].ring, [[0.0, 0.0], [4.2505, 0.0], [4.2505, 3.0], [0.0, 3.0]]);
    assert_eq!((read.unit, read.unit_from_file), (FileUnit::Millimeters, false));
    assert_eq!(read.remarks, [left(LeftOut::SmallShapes, 1)]);
}

#[test]
fn a_table_of_bare_numbers() {
    assert_areas(&read("corner.csv", FileUnit::Meters), &[("corner", 6.0, 0.0)]);
    assert_areas(&read("corner.csv", FileUnit::Feet), &[("corner", 6.0 * 0.3048 * 0.3048, 0.0)]);
}

#[test]
fn a_drawing_of_every_shape() {
    let read = read("flat.dxf", FileUnit::Meters);
    let expected = [
        ("Chapel", 4.0 * 2.0 + PI / 2.0, PI),
        ("Turret", PI * 1.5 * 1.5, 3.0 * PI),
        ("Mirrored", 2.0 * 1.0 / 2.0, 0.0),
        ("Bay", 2.0 * 3.0 + PI / 2.0, PI),
        ("Hall", 5.0 * 2.5 + 2.0 * 1.5, 0.0),
    ];
    // One end of the bay lies 0.3 mm off, which takes 0.15 mm off 2 m.
    assert_areas(&read, &expected);
    assert_eq!(read.outlines[2].ring, [[1.0, -1.0], [3.0, -1.0], [3.0, -2.0]]);
    assert_eq!((read.unit, read.unit_from_file), (FileUnit::Millimeters, true));
    let remarks = [
        left(LeftOut::OnSheet, 1),
        left(LeftOut::OpenLines, 2),
        left(LeftOut::Blocks, 1),
        left(LeftOut::Curves, 1),
        left(LeftOut::Texts, 1),
    ];
    assert_eq!(read.remarks, remarks);
}

#[test]
fn a_drawing_by_another_library() {
    let read = read("made.dxf", FileUnit::Meters);
    let expected = [
        // 3 m by 3 m with half a circle of 1.5 m on one side.
        ("Größe", 9.0 + PI * 1.5 * 1.5 / 2.0, 1.5 * PI),
        ("Stair", 2.0 * 1.5 / 2.0, 0.0),
        // 6.2 m by 4.8 m less a corner of 2.2 m by 2.3 m.
        ("Hall", 6.2 * 4.8 - 2.2 * 2.3, 0.0),
    ];
    assert_areas(&read, &expected);
    assert_eq!((read.unit, read.unit_from_file), (FileUnit::Centimeters, true));
}

#[test]
fn a_picture_with_a_size() {
    let read = read("plan.svg", FileUnit::Meters);
    let expected = [
        ("Parlour", 4.0 * 3.0, 0.0),
        // Doubled both ways.
        ("Gable", 4.0 * 1.5 * 1.0 / 2.0, 0.0),
        ("Apse", 2.0 * 1.5 + PI / 2.0, PI),
        ("Well", PI * 0.5 * 0.5, PI),
        ("Ring", 3.0 * 2.0, 0.0),
        ("Ring 2", 1.0, 0.0),
        ("Nook", 1.0, 0.0),
    ];
    assert_areas(&read, &expected);
    // From the foot of the page, 8 m high, the parlour reaches from 4.5 m to 7.5 m.
    let ys: Vec<f64> = read.outlines[0].ring.iter().map(|p| p[1]).collect();
    assert!(ys.iter().all(|y| (y - 4.5).abs() < 1e-5 || (y - 7.5).abs() < 1e-5), "{ys:?}");
    assert_eq!((read.unit, read.unit_from_file), (FileUnit::Centimeters, true));
    let remarks = [
        left(LeftOut::OpenLines, 1),
        left(LeftOut::Hidden, 1),
        left(LeftOut::Copies, 1),
        left(LeftOut::TextsAndPictures, 2),
    ];
    assert_eq!(read.remarks, remarks);
}

#[test]
fn a_picture_without_a_size_is_in_ninety_sixths_of_an_inch() {
    let read = read("pixels.svg", FileUnit::Meters);
    assert_areas(&read, &[("pixels", 0.254 * 0.127, 0.0)]);
    assert!(!read.unit_from_file);
    assert_eq!(read.remarks, [OutlineRemark::NoSize]);
}

fn to_be_written() -> Vec<(&'static str, Vec<Shape>)> {
    let kitchen = vec![[0.0, 0.0], [4.0, 0.0], [4.0, 3.0], [0.0, 3.0]];
    let gable = vec![[5.0, 0.0], [8.0, 0.0], [5.0, 2.0]];
    let loft = vec![[-1.0, -1.0], [-0.5, -1.0], [-0.5, -0.5], [-1.0, -0.5]];
    vec![
        ("Küche", vec![Shape::Ring(kitchen)]),
        ("Gable <1>", vec![Shape::Ring(gable), Shape::Ring(loft)]),
        ("Joints", vec![Shape::Line([0.0, 0.0], [4.0, 3.0]), Shape::Line([1.0, 1.0], [1.0, 2.0])]),
    ]
}

#[test]
fn what_is_written_is_read_back() {
    let bytes = write_dxf(&to_be_written()).unwrap();
    let read = read_outlines("x.DXF", &bytes, FileUnit::Feet).unwrap();
    assert_areas(&read, &[("Küche", 12.0, 0.0), ("Gable _1_", 3.0, 0.0), ("Gable _1_ 2", 0.25, 0.0)]);
    assert_eq!((read.unit, read.unit_from_file), (FileUnit::Millimeters, true));
    assert_eq!(read.outlines[1].ring, [[5.0, 0.0], [8.0, 0.0], [5.0, 2.0]]);
    assert_eq!(read.remarks, [left(LeftOut::OpenLines, 2)]);
    // What the other library checked says the same.
    let kept = read_outlines("written.dxf", &fs::read(fixture("written.dxf")).unwrap(), FileUnit::Feet);
    assert_eq!(kept.unwrap(), read);
}

#[test]
#[ignore = "writes the drawing that outlines.py checks"]
fn write_for_the_script() {
    fs::write(fixture("written.dxf"), write_dxf(&to_be_written()).unwrap()).unwrap();
}

#[test]
fn what_cannot_be_written_is_told() {
    let refusal = |shape| write_dxf(&[("Loft", vec![shape])]).unwrap_err();
    let broken = |rule| OutlineError::NoShape { layer: "Loft".to_owned(), rule };
    let two = refusal(Shape::Ring(vec![[0.0, 0.0], [1.0, 0.0]]));
    assert_eq!(two, broken(ShapeRule::Corners));
    assert!(said(&two).contains("layer “Loft” can’t be written because an outline needs three corners"));
    let endless = refusal(Shape::Line([0.0, 0.0], [f64::NAN, 0.0]));
    assert_eq!(endless, broken(ShapeRule::Measurable));
}

#[test]
fn limits_are_told() {
    let refusal =
        |name: &str, text: &str| read_outlines(name, text.as_bytes(), FileUnit::Meters).unwrap_err();
    assert_eq!(refusal("plan.dwg", "AC1032"), OutlineError::Kind("plan.dwg".to_owned()));
    assert_eq!(refusal("plan.dxf", "AC1032\0"), OutlineError::NotText(NotText::Dwg));
    assert_eq!(refusal("a.csv", "\u{feff} \n"), OutlineError::Empty);
    assert_eq!(refusal("a.csv", "x\0y"), OutlineError::NotText(NotText::Binary));
    let large = refusal("a.csv", &" ".repeat(20_000_001));
    assert_eq!(large, OutlineError::TooLarge(21));
    assert!(said(&large).contains("21 MB; the limit is 20 MB"));
    let many = OutlineError::TooManyPoints;
    assert_eq!(refusal("a.csv", &"1,2\n".repeat(20_001)), many);
    assert!(said(&many).contains("more than 20,000 corners"));
    let rooms: String = (0..=MOST_OUTLINES).map(|i| format!("r{i},0,0\nr{i},1,0\nr{i},0,1\n")).collect();
    assert_eq!(refusal("a.csv", &rooms), OutlineError::TooManyOutlines);
    let lines = "0\nLINE\n10\n0\n20\n0\n11\n1\n21\n1\n".repeat(10_001);
    let drawing = format!("0\nSECTION\n2\nENTITIES\n{lines}0\nENDSEC\n0\nEOF\n");
    assert_eq!(refusal("a.dxf", &drawing), many);
    let picture = format!("<svg><path d=\"M0 0{}\"/></svg>", " 1 1 2 2".repeat(10_001));
    assert_eq!(refusal("a.svg", &picture), many);
    let open = refusal("a.svg", "<svg><line x2=\"9\"/></svg>");
    assert!(said(&open).contains("no closed outline in the file"), "{}", said(&open));
    assert!(said(&open).contains("1 open line was left out"), "{}", said(&open));
}

#[test]
fn errors_say_where_and_what() {
    let error = read_outlines("a.csv", b"x,y\n1,2\n3,4m\n", FileUnit::Meters).unwrap_err();
    let rule = LineRule::Coordinate;
    assert_eq!(error, OutlineError::Line { line: 3, found: "4m".to_owned(), rule });
    let expected = "Line 3: “4m” is not a coordinate. Type digits only, like 3200 or 12.5, without a unit.";
    assert_eq!(said(&error), expected);
    let broken = read_outlines("a.svg", b"<svg>\n<g>\n</svg>", FileUnit::Meters).unwrap_err();
    assert!(said(&broken).contains("at line 3"), "{broken}");
}
