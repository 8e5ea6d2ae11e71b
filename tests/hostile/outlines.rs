//! Files with outlines, and what must hold of whatever is read of a file.

use std::collections::BTreeSet;

use gapwright::measure::Units;
use gapwright::surface::outlines::{
    FileUnit, MOST_OUTLINES, MOST_POINTS, OutlineError, OutlinesRead, read_outlines,
};
use gapwright::words::{Say as _, Words};

pub const FILES: [(&str, &[u8]); 8] = [
    ("a.csv", include_bytes!("../numbers/outlines/rooms.csv")),
    ("b.csv", include_bytes!("../numbers/outlines/corner.csv")),
    ("c.dxf", include_bytes!("../numbers/outlines/flat.dxf")),
    ("d.dxf", include_bytes!("../numbers/outlines/made.dxf")),
    ("e.dxf", include_bytes!("../numbers/outlines/written.dxf")),
    ("f.svg", include_bytes!("../numbers/outlines/plan.svg")),
    ("g.svg", include_bytes!("../numbers/outlines/pixels.svg")),
    ("h.svg", b"<svg><path d=\"M0 0C9 9 90-90 900 0S9 90 9 9Q1 1 1e3 1e3A9 9 1 1 0 0 0z\"/></svg>"),
];

/// Reads, and checks what must hold of whatever was read.
pub fn read(name: &str, bytes: &[u8]) -> Result<OutlinesRead, String> {
    let read = read_outlines(name, bytes, FileUnit::Millimeters);
    match &read {
        Ok(read) => {
            let names: BTreeSet<&str> = read.outlines.iter().map(|o| o.name.as_str()).collect();
            assert_eq!(names.len(), read.outlines.len());
            assert!((1..=MOST_OUTLINES).contains(&names.len()) && !names.contains(""));
            assert!(read.outlines.iter().map(|o| o.ring.len()).sum::<usize>() <= MOST_POINTS);
            for outline in &read.outlines {
                assert!(outline.ring.len() >= 3);
                assert!(outline.ring.iter().flatten().all(|c| c.abs() <= 1e8));
                assert!(area(&outline.ring) > 0.99e-4, "{outline:?}");
            }
        }
        Err(error) => assert!((20..3000).contains(&said(error).len()), "{error}"),
    }
    read.map_err(|error| said(&error))
}

/// What the user is told.
pub fn said(error: &OutlineError) -> String {
    error.say(&Words::us_english(Units::Inches, "$"))
}

fn area(ring: &[[f64; 2]]) -> f64 {
    let from = |p: [f64; 2]| [p[0] - ring[0][0], p[1] - ring[0][1]];
    let cross = |a: [f64; 2], b: [f64; 2]| a[0] * b[1] - b[0] * a[1];
    ring.windows(2).map(|pair| cross(from(pair[0]), from(pair[1])) / 2.0).sum::<f64>().abs()
}
