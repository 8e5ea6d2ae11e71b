//! How likely a section's gaps are, as a function of how far its boards have opened.
//!
//! In every world a section's joints have an opening of their own on average. How single joints differ
//! from it is not followed world by world: the scatter from board to board, what was left when the
//! boards were laid, how many boards are bonded into one and which joints somebody chose to measure are
//! integrated here, once for each opening of a grid, by a low-discrepancy sequence. The worlds then
//! look their opening up. A gap reads as it is, give or take the gauge, and nothing where the boards
//! touch; so a closed joint is as good a reading as an open one, and nothing jumps between them.

use rayon::prelude::*;

use super::evidence::{GapEvidence, chosen, log_mean, log_normal, log_sum};
use super::priors::Priors;
use super::scatter::{Density, Moments, Opening, POINTS, Picks, Set, opening_of, place_of};

/// A moved line opens by something between these more than its neighbors, mm. Assumption.
pub(super) const MOVED: (f64, f64) = (1.0, 20.0);
/// One reading in a thousand is a slip: anything up to two inches. Assumption.
const SLIP: f64 = 0.001;
const SLIPS_TO: f64 = 50.0;
/// What happened to a section on top of drying: nothing, one of its lines moved, or it was wetted or a
/// part of it.
const ON_TOP: usize = 3;
pub(super) const LINE_MOVED: usize = 1;
pub(super) const WETTED: usize = 2;

/// Log likelihoods at one opening: without and with bonded groups, by what happened [`ON_TOP`].
pub(super) type Node = [[f64; ON_TOP]; 2];

/// The log likelihood of a section's gaps by its mean opening.
#[derive(Debug, Clone)]
pub(super) struct GapTable {
    nodes: Vec<Node>,
    /// The same for each set, before a section's own part; empty if nothing was measured.
    by_set: Vec<Vec<Node>>,
    sets: Vec<Set>,
    /// How well the gauge reads, mm.
    gauge: f64,
}

/// A section's joints in one world.
#[derive(Debug, Clone, Copy)]
pub(super) struct Drawn {
    /// Gaps of those that were measured, all together: mean and variance, mm and mm². A gauge is a little off, so
    /// a joint that reads closed may stand open by a hair.
    pub measured: (f64, f64),
    /// What single ones are like that nobody measured.
    pub unseen: Moments,
    /// How their mean goes on with the opening.
    pub opening: Opening,
    /// Where a line moved: the chance that it is one of those that nobody measured.
    pub moved_unseen: f64,
}

/// How far a section's opening is from that of its boards' build-up, beside the lot: one side of a room
/// is drier than another, and a bundle wetter than the next. A part in proportion, and one in mm.
/// Assumption.
const OWN: (f64, f64) = (0.06, 0.1);
/// Points of a section's own part in standard deviations, with their shares.
const OWN_POINTS: [(f64, f64); 5] = [(-2.0, 0.06), (-1.0, 0.24), (0.0, 0.4), (1.0, 0.24), (2.0, 0.06)];

/// A section's opening where its boards' build-up has opened by this, at so many standard deviations.
pub(super) fn own_opening(opening: f64, z: f64) -> f64 {
    opening + z * (OWN.0 * opening).hypot(OWN.1)
}

/// What a reading is worth that may be a slip.
fn or_slip(density: f64) -> f64 {
    (1.0 - SLIP) * density + SLIP / SLIPS_TO
}

impl GapTable {
    /// Of a section with `joints` joints.
    #[expect(clippy::cast_precision_loss, reason = "counts of joints")]
    pub fn new(gaps: &[GapEvidence], joints: usize, priors: &Priors) -> Self {
        let mut sorted = gaps.to_vec();
        sorted.sort_by(|a, b| a.width.to_mm().total_cmp(&b.width.to_mm()));
        let gaps = &sorted[..];
        let mut sets = Set::all();
        if gaps.len() >= joints {
            // Nobody picked who measured them all.
            sets.iter_mut().for_each(|set| set.picked = 0);
        }
        let gauge = priors.gap_gauge.sd;
        if gaps.is_empty() {
            return Self { nodes: vec![[[0.0; ON_TOP]; 2]; POINTS], by_set: Vec::new(), sets, gauge };
        }
        let unseen = 1.0 - gaps.len() as f64 / joints.max(gaps.len()) as f64;
        let by_set: Vec<Vec<Node>> = (0..POINTS)
            .into_par_iter()
            .map(|point| {
                let of = |set: &Set| {
                    [false, true].map(|bonded| {
                        of_set(gaps, set, &Density::new(set, opening_of(point), gauge, bonded), unseen)
                    })
                };
                sets.iter().map(of).collect()
            })
            .collect();
        let mean_of_sets = |own: &Vec<Node>| each_of_node(|b, t| log_mean(own.iter().map(|n| n[b][t])));
        let table = Self { nodes: by_set.iter().map(mean_of_sets).collect(), by_set, sets, gauge };
        let nodes = (0..POINTS).map(|point| table.with_own_part(opening_of(point))).collect();
        Self { nodes, ..table }
    }

    /// The log likelihoods at an opening of the build-up, the section's own part integrated out.
    fn with_own_part(&self, opening: f64) -> Node {
        let each = OWN_POINTS.map(|(z, share)| (self.at(own_opening(opening, z)), share.ln()));
        each_of_node(|b, t| log_sum(&each.map(|(node, share)| node[b][t] + share)))
    }

    /// The log likelihoods at this opening, mm: without and with bonded groups, each by what happened [`ON_TOP`].
    pub fn at(&self, opening: f64) -> Node {
        let (below, share) = place_of(opening);
        let (a, b) = (&self.nodes[below], &self.nodes[below + 1]);
        each_of_node(|bonded, on_top| a[bonded][on_top] + (b[bonded][on_top] - a[bonded][on_top]) * share)
    }

    /// Draws a section's joints in a world in which its boards have opened by `opening` mm. `seen` is the share
    /// of its joints that was measured, in `gaps`; `at` a number from 0 to 1.
    #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
    pub fn draw(
        &self,
        opening: f64,
        (bonded, on_top): (bool, usize),
        (gaps, seen): (&[GapEvidence], f64),
        at: f64,
    ) -> Drawn {
        let (today, set) = self.draw_set(opening, (bonded, on_top), at);
        let wet = if on_top == WETTED { set.wet_share() } else { 0.0 };
        let density = Density::new(set, today, self.gauge, bonded);
        // A slip counts as read, and so does the line that moved, which may be any of the section's.
        let moved =
            if on_top == LINE_MOVED { seen / gaps.len().max(1) as f64 / (MOVED.1 - MOVED.0) } else { 0.0 };
        let as_read = SLIP / SLIPS_TO + moved;
        let mut measured = (0.0, 0.0);
        for gap in gaps {
            let is_wet = on_top == WETTED && (set.wetted.0..=set.wetted.1).contains(&gap.place);
            let own = density.given(gap.width.to_mm(), is_wet, as_read);
            measured = (measured.0 + own.mean, measured.1 + own.sd().powi(2));
        }
        let opening = Opening { set: set.index, bonded, wet, today };
        let line = MovedLine::new(gaps, &density, &density.picks(0.0, seen), seen);
        Drawn { measured, unseen: density.unseen(wet, seen), opening, moved_unseen: line.unseen() }
    }

    /// Draws a section's own opening and a set by how well they explain what was measured.
    fn draw_set(&self, opening: f64, (bonded, on_top): (bool, usize), at: f64) -> (f64, &Set) {
        let bonded = usize::from(bonded);
        let log = |own: f64, index: usize| {
            let (below, into) = place_of(own);
            let at = |point: usize| self.by_set[point][index][bonded][on_top];
            if self.by_set.is_empty() { 0.0 } else { at(below) + (at(below + 1) - at(below)) * into }
        };
        let openings = OWN_POINTS.map(|(z, share)| (own_opening(opening, z), share.ln()));
        let own_parts = openings.iter();
        let logs: Vec<f64> = own_parts
            .flat_map(|&(own, share)| (0..self.sets.len()).map(move |index| (own, share, index)))
            .map(|(own, share, index)| share + log(own, index))
            .collect();
        let place = chosen(&logs, at);
        (openings[place / self.sets.len()].0, &self.sets[place % self.sets.len()])
    }
}

/// A node's figures, each by whether boards are bonded and what happened.
fn each_of_node(figure: impl Fn(usize, usize) -> f64) -> Node {
    std::array::from_fn(|bonded| std::array::from_fn(|on_top| figure(bonded, on_top)))
}

/// Log likelihoods by what happened [`ON_TOP`], for one set. `unseen` is the share of joints that were
/// not measured.
fn of_set(gaps: &[GapEvidence], set: &Set, density: &Density<'_>, unseen: f64) -> [f64; ON_TOP] {
    let (from, to, _) = set.wetted;
    let seen = 1.0 - unseen;
    let (picks, picks_with_wet) = (density.picks(0.0, seen), density.picks(set.wet_share(), seen));
    let (mut nothing, mut wetted) = (0.0, 0.0);
    // Gauges have steps: most readings are like the one before, once they are sorted.
    let mut last = (f64::NAN, 0.0, 0.0, 0.0);
    for gap in gaps {
        let y = gap.width.to_mm();
        #[expect(clippy::float_cmp, reason = "the same reading")]
        if y != last.0 {
            let (usual, takes, with_wet) = (density.of(y, false), picks.takes(y), picks_with_wet.takes(y));
            let plain = or_slip(usual * takes);
            let wet = or_slip(density.of(y, true) * with_wet).ln();
            last = (y, plain.ln(), wet, or_slip(usual * with_wet).ln());
        }
        let (_, usual, wet, dry) = last;
        nothing += usual;
        wetted += if from <= gap.place && gap.place <= to { wet } else { dry };
    }
    [nothing, nothing + MovedLine::new(gaps, density, &picks, seen).weight().ln(), wetted]
}

/// A line of a section that moved: which of its joints that may be.
struct MovedLine {
    /// What it weighs against nothing that it is one of the joints that were measured, and that it is none of them.
    measured: f64,
    passed_over: f64,
}

impl MovedLine {
    #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
    fn new(gaps: &[GapEvidence], density: &Density<'_>, picks: &Picks, seen: f64) -> Self {
        let still = density.opening.max(0.0);
        // How much likelier a reading is of a line that moved than of another.
        let likelier = |gap: &GapEvidence| {
            let y = gap.width.to_mm();
            if !(MOVED.0..MOVED.1).contains(&(y - still)) {
                return 0.0;
            }
            let takes = picks.takes(y);
            takes / (MOVED.1 - MOVED.0) / or_slip(density.of(y, false) * takes)
        };
        let measured = seen * gaps.iter().map(likelier).sum::<f64>() / gaps.len().max(1) as f64;
        // It is passed over more seldom than others where wide joints were picked.
        Self { measured, passed_over: picks.passes(still + (MOVED.0 + MOVED.1) / 3.0) }
    }

    fn weight(&self) -> f64 {
        (self.measured + self.passed_over).max(1e-12)
    }

    /// The chance that nobody measured it.
    fn unseen(&self) -> f64 {
        self.passed_over / self.weight()
    }
}

impl GapTable {
    /// Of how wide a section's gaps are on average, alone.
    #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
    pub fn of_mean(gaps: &[GapEvidence], priors: &Priors) -> Self {
        let (sets, by_set) = (Set::all(), Vec::new());
        let gauge = priors.gap_gauge.sd;
        if gaps.is_empty() {
            return Self { nodes: vec![[[0.0; ON_TOP]; 2]; POINTS], by_set, sets, gauge };
        }
        let count = gaps.len() as f64;
        let mean = gaps.iter().map(|gap| gap.width.to_mm()).sum::<f64>() / count;
        let log = |opening: f64, bonded: bool, on_top: usize| {
            log_mean(sets.iter().map(|set: &Set| {
                let group = if bonded { set.group } else { 1.0 };
                let usual = opening.max(0.0) + set.laid;
                let more = if on_top == WETTED { set.wetted.2 * 0.5 } else { 0.0 };
                let scatter = (set.relative * opening).hypot(set.fixed).hypot(more);
                // Where few joints of a group open, the mean of some joints scatters more.
                let groups = usual * (group - 1.0).max(0.0).sqrt();
                let moved = if on_top == LINE_MOVED { MOVED.1 / 3.0 / count } else { 0.0 };
                let sd = (scatter.hypot(groups).hypot(gauge) / count.sqrt()).hypot(moved);
                log_normal(mean, usual + more + moved, sd)
            }))
        };
        let node = |point: usize| -> Node {
            let opening = opening_of(point);
            [false, true].map(|bonded| [0, 1, 2].map(|on_top| log(opening, bonded, on_top)))
        };
        Self { nodes: (0..POINTS).map(node).collect(), by_set, sets, gauge }
    }
}
