//! Outlines out of an SVG.

use kurbo::{PathEl, Point as Place};
use usvg::tiny_skia_path::PathSegment;
use usvg::{Group, ImageHrefResolver, Node, Options, Path, Transform, Tree};

use super::marks::{self, CutDown};
use super::ring::{CHORD_ERROR, Draft, ENDS_MEET, distance, in_reach};
use super::{FileUnit, FormatFault, LeftOut, OutlineError, OutlineRemark, OutlinesRead, Point};

/// Meters in one unit of an SVG, 96 of which are an inch.
const PIXEL: f64 = 0.0254 / 96.0;

/// Reads the outlines of a drawing. Shapes without a name are called `stem`.
pub(super) fn read(text: &str, stem: &str, _assume: FileUnit) -> Result<OutlinesRead, OutlineError> {
    let cut = marks::cut_down(text)?;
    let broken =
        |error: usvg::Error| marks::fault(FormatFault::Broken { line: None, reason: error.to_string() });
    let tree = Tree::from_str(&cut.svg, &options()).map_err(broken)?;
    let mut draft = Draft::new(stem);
    if cut.unit.is_none() {
        draft.remark(OutlineRemark::NoSize);
    }
    let height = f64::from(tree.size().height());
    let mut sheet = Sheet { stem, names: &cut.names, height, draft, seen: 0 };
    sheet.take(tree.root())?;
    let (seen, mut draft) = (sheet.seen, sheet.draft);
    let CutDown { names, unit, hidden, copies, others, .. } = &cut;
    draft.leave_out(LeftOut::Sizeless, names.len().saturating_sub(seen));
    draft.leave_out(LeftOut::Hidden, *hidden);
    draft.leave_out(LeftOut::Copies, *copies);
    draft.leave_out(LeftOut::TextsAndPictures, *others);
    draft.finish(unit.unwrap_or(FileUnit::Inches), unit.is_some())
}

/// How the library is to read: no file but this one.
fn options() -> Options<'static> {
    Options {
        image_href_resolver: ImageHrefResolver {
            resolve_data: Box::new(|_, _, _| None),
            resolve_string: Box::new(|_, _| None),
        },
        ..Options::default()
    }
}

/// A drawing as it is read, shape by shape.
struct Sheet<'a> {
    stem: &'a str,
    names: &'a [String],
    /// Of the drawing, in its units.
    height: f64,
    draft: Draft<'a>,
    /// How many shapes there were.
    seen: usize,
}

impl Sheet<'_> {
    fn take(&mut self, group: &Group) -> Result<(), OutlineError> {
        for node in group.children() {
            match node {
                Node::Group(group) => self.take(group)?,
                Node::Path(path) => self.add_path(path)?,
                _ => {}
            }
        }
        Ok(())
    }

    fn add_path(&mut self, path: &Path) -> Result<(), OutlineError> {
        self.seen += 1;
        let named = path.id().parse().ok().and_then(|number: usize| self.names.get(number));
        let name = named.filter(|name| !name.trim().is_empty()).map_or(self.stem, |name| name);
        let place = Placement { turn: path.abs_transform(), height: self.height };
        // A curve that goes on for ever would be drawn for ever.
        if !path.data().points().iter().all(|p| in_reach(place.meters(*p))) {
            self.draft.leave_out(LeftOut::FarShapes, 1);
            return Ok(());
        }
        let mut points: Vec<Point> = Vec::new();
        for segment in path.data().segments() {
            if let PathSegment::MoveTo(_) | PathSegment::Close = segment {
                self.finish_part(name, &mut points, segment == PathSegment::Close)?;
            }
            let before = points.len();
            place.follow(segment, &mut points);
            self.draft.count_points(points.len() - before)?;
        }
        self.finish_part(name, &mut points, false)
    }

    /// Takes in one line of a path, if it closes.
    fn finish_part(&mut self, name: &str, points: &mut Vec<Point>, closed: bool) -> Result<(), OutlineError> {
        let part = std::mem::take(points);
        match part[..] {
            [] | [_] => Ok(()),
            [first, .., last] if closed || distance(first, last) <= ENDS_MEET => self.draft.add(name, &part),
            _ => {
                self.draft.leave_out(LeftOut::OpenLines, 1);
                Ok(())
            }
        }
    }
}

/// Where a shape lies on the drawing.
struct Placement {
    turn: Transform,
    height: f64,
}

impl Placement {
    /// A place in meters, with y upwards.
    fn meters(&self, place: usvg::tiny_skia_path::Point) -> Point {
        let (x, y) = (f64::from(place.x), f64::from(place.y));
        let [sx, kx, tx] = [self.turn.sx, self.turn.kx, self.turn.tx].map(f64::from);
        let [ky, sy, ty] = [self.turn.ky, self.turn.sy, self.turn.ty].map(f64::from);
        [sx * x + kx * y + tx, self.height - (ky * x + sy * y + ty)].map(|c| c * PIXEL)
    }

    /// Adds the points of one piece of a path.
    fn follow(&self, segment: PathSegment, points: &mut Vec<Point>) {
        let at = |place| Place::from(<(f64, f64)>::from(self.meters(place)));
        let piece = match segment {
            PathSegment::MoveTo(to) | PathSegment::LineTo(to) => return points.push(self.meters(to)),
            PathSegment::QuadTo(a, to) => PathEl::QuadTo(at(a), at(to)),
            PathSegment::CubicTo(a, b, to) => PathEl::CurveTo(at(a), at(b), at(to)),
            PathSegment::Close => return,
        };
        let Some(&from) = points.last() else { return };
        let start = PathEl::MoveTo(<(f64, f64)>::from(from).into());
        kurbo::flatten([start, piece], CHORD_ERROR, |straight| {
            if let PathEl::LineTo(to) = straight {
                points.push([to.x, to.y]);
            }
        });
    }
}
