//! The joint through the seasons: two boards cut through, their outlines, and what changes week by week.
//! Lengths are millimeters, x from the middle of the joint to the right, y from the face into the wood.

use geo::{BoundingRect as _, Polygon};
use jiff::ToSpan as _;
use jiff::civil::Date;
use serde_json::{Value, json};

use crate::assess::{Assessment, JointWeek, RepairedJoint, RepairedLook, TypicalJoint};
use crate::words::{Words, owner_page, say};

/// So much of the boards is seen to either side of the joint.
const SEEN: f64 = 33.0;
/// And in the still pictures, which are small.
const SEEN_STILL: f64 = 18.0;
/// Room above the face and below the back.
const ABOVE: f64 = 7.0;
const BELOW: f64 = 3.0;
/// Paint ends so far below the face where an edge is square.
const ROUND_THE_EDGE: f64 = 1.0;
/// Where, as a share of its thickness, a board without a tongue is filled from the face.
const FILLED: f64 = 0.5;

/// What the template places: outlines, stops, and the still pictures.
pub(super) fn places(assessment: &Assessment, joint: &TypicalJoint, words: &Words) -> Value {
    let v = joint.board.profile.v_leg().to_mm();
    let (turn, foot) = (v, if v > 0.0 { v } else { ROUND_THE_EDGE });
    let high = joint.board.thickness.to_mm() + ABOVE + BELOW;
    let sealed = |week: &JointWeek| week.repaired.as_ref().is_some_and(|repaired| repaired.bead().is_some());
    json!({
        "left": outline(&joint.cut.tongue),
        "right": outline(&joint.cut.groove),
        "left_paint": format!("M-60 0L{} 0L0 {}", -turn, mm(foot)),
        "right_paint": format!("M60 0L{} 0L0 {}", turn, mm(foot)),
        "box": format!("{} {} {} {}", -SEEN, -ABOVE, 2.0 * SEEN, mm(high)),
        "still_box": format!("{} {} {} {}", -SEEN_STILL, -ABOVE, 2.0 * SEEN_STILL, mm(high)),
        "v": mm(v),
        "tongue_from": mm(tongue_from(joint)),
        "repaired": joint.repaired_on.is_some(),
        "can_seal": joint.weeks.iter().any(sealed),
        "first": 0,
        "last": joint.weeks.len().saturating_sub(1),
        "today": joint.week(0),
        "stops": stops(assessment, joint, words),
        "stills": stills(assessment, joint, words),
    })
}

/// What the script draws, week by week.
pub(super) fn drawn(assessment: &Assessment, joint: &TypicalJoint, words: &Words) -> Value {
    let figures = words.figures();
    let dates = || joint.weeks.iter().map(|week| date(assessment, week.day));
    let against = advised_against(assessment);
    let after = |week: &JointWeek| {
        let joint_after = week.repaired.as_ref()?;
        Some(json!({
            "gap_mm": mm(joint_after.gap.to_mm()),
            "open_mm": mm(joint_after.open.to_mm()),
            "bead_mm": bead(joint_after),
            "cover_mm": cover(joint, joint_after),
            "painted": painted(joint_after),
            "says": if Some(week.day) == joint.repaired_on && joint_after.bead().is_some() {
                owner_page::just_sealed(joint_after, words)
            } else {
                owner_page::repaired(joint_after, against, words)
            },
        }))
    };
    json!({
        "face_width_mm": mm(joint.board.face_width.to_mm().max(1.0)),
        "v_mm": mm(joint.board.profile.v_leg().to_mm()),
        "tongue_from_mm": mm(tongue_from(joint)),
        "days_from_visit": joint.weeks.iter().map(|week| week.day).collect::<Vec<_>>(),
        "dates": dates().map(|date| figures.date(date)).collect::<Vec<_>>(),
        "months": dates().map(|date| figures.month(date)).collect::<Vec<_>>(),
        "gap_mm": joint.weeks.iter().map(|week| mm(week.gap.to_mm())).collect::<Vec<_>>(),
        "says": joint.weeks.iter().map(|week| owner_page::untouched(week, words)).collect::<Vec<_>>(),
        "after": joint.weeks.iter().map(after).collect::<Vec<_>>(),
    })
}

/// Whether the repair that is drawn is advised against.
fn advised_against(assessment: &Assessment) -> bool {
    assessment.chosen().is_some_and(|option| assessment.advises_against(option))
}

/// The dates worth going to.
fn stops(assessment: &Assessment, joint: &TypicalJoint, words: &Words) -> Vec<Value> {
    let sealed = assessment.lays_beads();
    let repaired = joint.repaired_on.map(|day| {
        let name = if sealed { say!(words, "owner-page-sealed") } else { say!(words, "owner-page-repaired") };
        (joint.week(day), name)
    });
    let all = [
        joint.from_install.then(|| (0, say!(words, "owner-page-installed"))),
        Some((joint.week(0), say!(words, "owner-page-today"))),
        repaired,
        // On the day of the repair nothing has moved yet.
        Some((joint.widest(), say!(words, "owner-page-widest")))
            .filter(|(at, _)| Some(joint.weeks[*at].day) != joint.repaired_on),
    ];
    let stop = |(at, name): (usize, String)| {
        let date = words.figures().date(date(assessment, joint.weeks[at].day));
        json!({ "at": at, "name": name, "date": date })
    };
    all.into_iter().flatten().map(stop).collect()
}

/// The joint in the January and the August that come next, or come next after the repair: if nothing is done,
/// and with the repair.
fn stills(assessment: &Assessment, joint: &TypicalJoint, words: &Words) -> Vec<Value> {
    let from = joint.repaired_on.unwrap_or(0);
    let mut weeks: Vec<&JointWeek> = [1, 8]
        .into_iter()
        .filter_map(|month| {
            joint.weeks.iter().find(|week| {
                let date = date(assessment, week.day);
                week.day >= from && date.month() == month && date.day() > 10
            })
        })
        .collect();
    weeks.sort_by_key(|week| week.day);
    let still = |week: &JointWeek, after: Option<&RepairedJoint>| {
        let month = crate::words::Arg::Month(date(assessment, week.day));
        let gap = after.map_or(week.gap, |after| after.gap).to_mm();
        let (caption, says) = match after {
            None => {
                (say!(words, "owner-page-still-before", month = month), owner_page::untouched(week, words))
            }
            Some(after) => (
                say!(words, "owner-page-still-after", month = month),
                owner_page::repaired(after, advised_against(assessment), words),
            ),
        };
        json!({
            "caption": caption,
            "says": says,
            "gap": mm(gap),
            "half": mm(gap / 2.0),
            "open": mm(after.map_or(gap, |after| after.open.to_mm())),
            "bead": after.and_then(bead),
            "cover": after.and_then(|after| cover(joint, after)),
            "painted": after.is_some_and(painted),
        })
    };
    let both = weeks.into_iter().flat_map(|week| {
        let before = still(week, None);
        std::iter::once(before).chain(week.repaired.as_ref().map(|after| still(week, Some(after))))
    });
    both.collect()
}

/// Whether what is open of it is painted, so that no bare wood shows.
const fn painted(joint: &RepairedJoint) -> bool {
    matches!(joint.look, RepairedLook::Line | RepairedLook::TooNarrow | RepairedLook::NewBoards)
}

/// The bead in the joint: its corners, face first, and those of the crack beside it.
fn bead(joint: &RepairedJoint) -> Option<Value> {
    let RepairedLook::Bead(bead) = &joint.look else { return None };
    let face: Vec<[f64; 2]> = bead.face().map(in_mm).collect();
    let crack = bead.crack.as_ref().map(corners);
    Some(json!({ "body": corners(&bead.section), "face": face, "crack": crack }))
}

fn corners(shape: &Polygon) -> Vec<[f64; 2]> {
    let corners = shape.exterior().coords();
    corners.take(shape.exterior().0.len() - 1).map(|corner| in_mm(corner.x_y())).collect()
}

fn in_mm((x, y): (f64, f64)) -> [f64; 2] {
    [mm(1e3 * x), mm(1e3 * y)]
}

/// What lies over the joint or fills it with wood.
fn cover(joint: &TypicalJoint, after: &RepairedJoint) -> Option<Value> {
    let at = after.cover(&joint.board)?;
    Some(rectangle(1e3 * at.min().x, 1e3 * at.min().y, 1e3 * at.width(), 1e3 * at.height()))
}

fn rectangle(x: f64, y: f64, width: f64, height: f64) -> Value {
    json!({ "x": mm(x), "y": mm(y), "width": mm(width), "height": mm(height) })
}

/// How deep a gap is seen from the room: to the tongue, where there is one.
fn tongue_from(joint: &TypicalJoint) -> f64 {
    let (thick, v) = (joint.board.thickness.to_mm(), joint.board.profile.v_leg().to_mm());
    let seen = if joint.board.tongue().is_some() {
        // The corners that reach farthest to the right are those of the tongue's end.
        let right = joint.cut.tongue.bounding_rect().map_or(0.0, |bounds| bounds.max().x);
        let corners = joint.cut.tongue.exterior().coords();
        let end = corners.filter(|corner| corner.x >= right - 1e-9).map(|corner| 1e3 * corner.y);
        end.fold(thick, f64::min)
    } else {
        FILLED * thick
    };
    seen.max(v)
}

/// An outline as the data of an SVG path.
fn outline(shape: &Polygon) -> String {
    let corner = |(at, corner): (usize, &geo::Coord)| {
        let command = if at == 0 { 'M' } else { 'L' };
        format!("{command}{} {}", mm(1e3 * corner.x), mm(1e3 * corner.y))
    };
    shape.exterior().coords().enumerate().map(corner).chain(["Z".to_owned()]).collect()
}

/// Millimeters to the thousandth; what is no number is nothing.
fn mm(value: f64) -> f64 {
    let rounded = (value * 1e3).round() / 1e3;
    if rounded.is_finite() && rounded != 0.0 { rounded } else { 0.0 }
}

/// The date so many days from the visit.
fn date(assessment: &Assessment, day: i64) -> Date {
    let visited = assessment.job.visited;
    visited.checked_add(day.days()).unwrap_or(visited)
}
