//! Beads as they are to be laid, and which lasts longest.

use super::answer::days;
use super::{Arg, Words, say};
use crate::assess::{Assessment, JointBeads, SealTime, SealantBeads, TriedBead, date_after};
use crate::joint::{BeadForm, BeadLay, JointEdges};
use crate::measure::{Length, Percent};

/// Weeks of a year, less a few, from which on any time will do.
const ANY_TIME: usize = 50 * 7;

/// How a bead is to be shaped, a sentence.
pub fn shape(lay: BeadLay, form: &BeadForm, edges: JointEdges, words: &Words) -> String {
    let tooled = Arg::Id(if form.hollow > Percent::ZERO { "hollow" } else { "flush" });
    if lay == BeadLay::Reveal || edges.v_leg <= Length::ZERO {
        return say!(words, "bead-shape-square", depth = form.least_depth, tooled = tooled);
    }
    let to_tongue = lay == BeadLay::OnTongue || form.in_slot >= edges.slot_to_tongue();
    let into = match (to_tongue, form.in_slot > Length::ZERO) {
        (true, _) => "tongue",
        (false, true) => "slot",
        (false, false) => "v",
    };
    let (fill, depth) = (form.v_filled, form.in_slot);
    let below = edges.v_leg * (1.0 - fill.to_fraction());
    let level = Arg::Id(if below < Length::inches(1.0 / 128.0) { "full" } else { "below" });
    let into = Arg::Id(into);
    say!(
        words,
        "bead-shape-v",
        fill = fill,
        level = level,
        below = below,
        tooled = tooled,
        into = into,
        depth = depth
    )
}

/// Which joints are spoken of.
pub fn joints(beads: &JointBeads, words: &Words) -> String {
    let kind = Arg::Id(if beads.slides { "trim" } else { "boards" });
    say!(words, "bead-design-joints", kind = kind, run = Arg::Run(beads.run), gap = beads.gap)
}

/// The best bead of a sealant, and how far it is from the usual one, a sentence each.
pub fn advice(assessment: &Assessment, beads: &JointBeads, of: &SealantBeads, words: &Words) -> Vec<String> {
    let (best, usual) = (&of.best, &of.usual);
    let (when, from, to) = days(weeks(assessment, best));
    let mut sentences = vec![shape(best.lay, &best.form, beads.edges, words)];
    if best.backed {
        sentences.push(words.text("bead-design-backed").into_owned());
    }
    let lasts = best.lasts;
    sentences.push(say!(
        words,
        "bead-design-lasts",
        when = Arg::Id(when),
        from = from,
        to = to,
        lasts = whole(lasts),
        paint = whole(best.paint_lasts)
    ));
    sentences.push(say!(words, "bead-design-usual", lasts = whole(usual.lasts)));
    let (takes, instead) = (best.sealant, usual.sealant);
    let (minutes, cost) = (best.minutes, best.cost);
    sentences.push(say!(
        words,
        "bead-design-takes",
        sealant = takes,
        cost = cost,
        minutes = minutes,
        usual = instead
    ));
    sentences
}

/// What the crew is told of a bead that goes wrong without thinking, where that makes a difference.
pub fn warning(beads: &JointBeads, of: &SealantBeads, words: &Words) -> Option<String> {
    let worse = of.usual.lasts.to_pct() + 10.0 < of.best.lasts.to_pct();
    (worse && beads.edges.v_leg > Length::ZERO).then(|| {
        say!(words, "bead-design-warning", usual = whole(of.usual.lasts), best = whole(of.best.lasts))
    })
}

/// The weeks in which a bead lasts longest.
fn weeks(assessment: &Assessment, bead: &TriedBead) -> SealTime {
    let date = |day| date_after(&assessment.job, day);
    match bead.days.high - bead.days.low >= ANY_TIME {
        true => SealTime::AnyTime,
        false => SealTime::Between(date(bead.days.low), date(bead.days.high + 6)),
    }
}

/// In whole per cents.
fn whole(share: Percent) -> Percent {
    Percent::pct(share.to_pct().round())
}
