//! Sealing: the best weeks, what beads are asked, how many tear.

use super::answer::days;
use super::{Arg, Words, say};
use crate::assess::{Assessment, JointState, SealingOutlook};
use crate::bead::{Finding, Place, Reason};
use crate::job::Catalog;
use crate::measure::Length;

/// The best weeks and what a bead is then asked, a sentence each.
pub fn outlook(outlook: &SealingOutlook, words: &Words) -> Vec<String> {
    let (when, from, to) = days(outlook.best);
    let best = say!(words, "sealing-best", when = Arg::Id(when), from = from, to = to, holds = outlook.holds);
    let mut sentences = vec![best, say!(words, "sealing-planned", day = outlook.planned)];
    sentences.extend(
        outlook
            .typical
            .map(|asked| say!(words, "sealing-typical", opens = asked.opens(), closes = asked.closes())),
    );
    if outlook.never > Length::ZERO {
        sentences.push(say!(words, "sealing-never", run = Arg::Run(outlook.never)));
    }
    sentences
}

/// What a joint asks of a bead, and the lowest class of the catalog that takes it; `None` where nothing
/// is known of the joint.
pub fn joint(label: &str, state: &JointState, catalog: &Catalog, words: &Words) -> Option<String> {
    let asked = state.demand?;
    let slides = asked.slides();
    let slid = Arg::Id(if slides > Length::ZERO { "yes" } else { "no" });
    let (gap, opens, closes) = (asked.sealed, asked.opens(), asked.closes());
    let joint = Arg::Joint(label);
    let moves = say!(
        words,
        "sealing-joint",
        joint = joint,
        gap = gap,
        opens = opens,
        closes = closes,
        slid = slid,
        slides = slides
    );
    let takes = match state.smallest_class.and_then(|at| catalog.sealants.get(at)).zip(state.bead_width) {
        Some((sealant, bead)) => {
            say!(words, "sealing-joint-takes", bead = bead, sealant = Arg::Called(&sealant.name))
        }
        None => say!(words, "sealing-joint-none"),
    };
    Some(moves + " " + &takes)
}

/// How many sealed joints of each section are expected to tear, a sentence each.
pub fn rows(assessment: &Assessment, words: &Words) -> Vec<String> {
    let rows = assessment.sections.iter().zip(&assessment.rows);
    let sentence = |(state, row): (&crate::assess::SectionState, &Option<crate::assess::RowForecast>)| {
        let row = (*row)?;
        let section = assessment.job.surfaces.get(state.surface)?.sections.get(state.section)?;
        let torn = row.expected_torn().round();
        let (section, shown) = (&section.name, Arg::Number(torn, 0));
        Some(match torn < 1.0 {
            true => say!(words, "sealing-row", section = section, joints = row.joints),
            false => say!(
                words,
                "sealing-row-widest",
                section = section,
                torn = shown,
                joints = row.joints,
                widest = row.widest
            ),
        })
    };
    rows.filter_map(sentence).collect()
}

/// What speaks against laying a bead so, a sentence each. That it is below what guides cover is said elsewhere.
pub fn findings(findings: &[Finding], words: &Words) -> Vec<String> {
    findings.iter().filter_map(|finding| finding_text(finding, words)).collect()
}

/// A place of a bead as people see it, as an id to select by.
pub const fn place_key(place: Place) -> &'static str {
    match place {
        Place::FaceMiddle => "face",
        Place::VisibleEdge => "edge",
        Place::SlotCorner | Place::Bond => "side",
        Place::BackMiddle | Place::BackEdge | Place::TongueCorner => "back",
        Place::Core => "inside",
    }
}

fn finding_text(finding: &Finding, words: &Words) -> Option<String> {
    let of = |length: Option<Length>| length.unwrap_or_default();
    let (value, least, most) = (of(finding.value), of(finding.least), of(finding.most));
    Some(match finding.reason {
        Reason::TapeNeedsWidth => say!(words, "bead-finding-tape", value = value, least = least),
        Reason::RodNeedsWidth => say!(words, "bead-finding-rod", value = value, least = least),
        Reason::RodNeedsDepth => say!(words, "bead-finding-rod-depth", value = value, least = least),
        Reason::SinksThrough => say!(words, "bead-finding-sinks", value = value),
        Reason::FeatherEdge => words.text("bead-finding-feather").into_owned(),
        Reason::BeyondNozzle => say!(words, "bead-finding-nozzle", value = value, most = most),
        Reason::BeyondFinger => say!(words, "bead-finding-finger", value = value, most = most),
        Reason::HidesV => words.text("bead-finding-hides-v").into_owned(),
        Reason::NoGap
        | Reason::OutOfRange
        | Reason::NoBead
        | Reason::ThirdSide
        | Reason::BelowGuideThickness
        | Reason::BelowGuideBond
        | Reason::BelowGuideWidth => return None,
    })
}
