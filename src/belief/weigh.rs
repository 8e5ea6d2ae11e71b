//! How well each world, with each account of what happened on top, explains what was seen.
//!
//! What is cheap to vary is integrated out in every world: how much the lot of boards shrinks, by a
//! rule of equal steps; the meter's offset, likewise; joint-level scatter in the [`GapTable`]s before.

use super::cause::{CausePriors, Hypothesis};
use super::ensemble::{LANES, StepAir};
use super::evidence::{MeterEvidence, RoomEvidence, SectionEvidence, log_normal, log_sum, meter_shows};
use super::failures;
use super::gaps::{GapTable, LINE_MOVED, Node, WETTED};
use super::priors::Priors;
use super::room_weight::{hygrometer_term, logger_term};
use super::world::{Maker, Worlds};
use crate::survey::Failure;

/// Accounts of a world: without and with bonded groups, each with nothing on top, a weak sealant, a
/// moved line, a wetted part.
pub(super) const ACCOUNTS: usize = 8;
/// Steps of the lot's shrinkage.
pub(super) const LOTS: usize = 13;
/// Steps of the meter's offset. A meter that contradicts everything else may be off by far, and many readings
/// leave its offset known to a fraction of what is expected.
const OFFSETS: usize = 17;
/// They go this many standard deviations to either side.
const REACH: f64 = 4.0;
/// Moisture that a wetted part may have left, per cent.
pub(super) const SURPLUSES: [f64; 4] = [3.0, 6.0, 9.0, 13.0];

/// Which readings count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Counts {
    pub gaps: Gaps,
    pub meter: bool,
    pub failures: bool,
    pub room: bool,
}

/// What of the gaps counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Gaps {
    Nothing,
    /// How wide they are on average.
    Mean,
    All,
}

impl Counts {
    pub const ALL: Self = Self { gaps: Gaps::All, meter: true, failures: true, room: true };
}

/// Log weights of a world's accounts.
pub(super) type Accounts = [f64; ACCOUNTS];

/// What was seen, prepared for weighing.
pub(super) struct Scale<'a> {
    sections: &'a [SectionEvidence<'a>],
    rooms: &'a [RoomEvidence],
    maker: &'a Maker<'a>,
    gaps: Vec<GapTable>,
    means: Vec<GapTable>,
    meters: Vec<ReadingTable>,
    /// Log prior of each account given dry or wet boards, and log likelihood of the failures.
    expected: Accounts,
    failures: Accounts,
    /// Logarithm of the share of the job's joints in each section.
    log_shares: Vec<f64>,
    /// Factors on the lot's shrinkage, and their shares.
    pub lots: Vec<(f64, f64)>,
}

/// One meter reading: how likely it is by what the meter is shown, moisture and offset together.
struct ReadingTable {
    section: usize,
    day: i64,
    set_to_species: bool,
    /// How many readings were like it.
    count: f64,
    /// Log likelihoods.
    usual: Vec<f64>,
    wetted: Vec<f64>,
}

/// Steps of the reading tables, per cent moisture.
const FINE: f64 = 0.1;
const SHOWN: (f64, f64) = (-4.0, 45.0);
/// As many as reach from one end to the other.
const STEPS: usize = 492;

/// Points of equal steps with their shares of a standard normal.
pub(super) fn nodes<const COUNT: usize>() -> [(f64, f64); COUNT] {
    #[expect(clippy::cast_precision_loss, reason = "a score of nodes")]
    let z = |at: usize| REACH * (2.0 * at as f64 / (COUNT - 1) as f64 - 1.0);
    let all: f64 = (0..COUNT).map(|at| (-0.5 * z(at) * z(at)).exp()).sum();
    std::array::from_fn(|at| (z(at), (-0.5 * z(at) * z(at)).exp() / all))
}

/// Readings to the tenth of a per cent that meters show, each once with how often it came.
fn alike(readings: &[MeterEvidence]) -> Vec<(MeterEvidence, f64)> {
    let mut alike: Vec<(MeterEvidence, f64)> = Vec::new();
    for reading in readings {
        let shown = MeterEvidence { pct: (10.0 * reading.pct).round() / 10.0, ..*reading };
        match alike.iter_mut().find(|(known, _)| *known == shown) {
            Some((_, count)) => *count += 1.0,
            None => alike.push((shown, 1.0)),
        }
    }
    alike
}

impl ReadingTable {
    #[expect(clippy::cast_precision_loss, reason = "five hundred steps")]
    fn new(section: usize, reading: &MeterEvidence, count: f64, priors: &Priors) -> Self {
        let at = |step: usize, surplus: f64| {
            meter_shows(reading.pct, SHOWN.0 + FINE * step as f64 + surplus, 0.0, priors)
        };
        let usual: Vec<f64> = (0..STEPS).map(|step| at(step, 0.0)).collect();
        let wetted = (0..STEPS)
            .map(|step| {
                let damp: f64 = SURPLUSES.iter().map(|surplus| at(step, *surplus)).sum();
                (0.5 * usual[step] + 0.5 * damp / SURPLUSES.len() as f64).ln()
            })
            .collect();
        let usual = usual.into_iter().map(f64::ln).collect();
        let (day, set_to_species) = (reading.day, reading.set_to_species);
        Self { section, day, set_to_species, count, usual, wetted }
    }

    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held to the table")]
    fn look(table: &[f64], shown: f64) -> f64 {
        let at = (shown.clamp(SHOWN.0, SHOWN.1 - FINE) - SHOWN.0) / FINE;
        let (below, share) = (at as usize, at.fract());
        table[below] + (table[below + 1] - table[below]) * share
    }
}

/// A world made ready for weighing.
pub(super) struct Prepared {
    fixed: Lot,
    /// By section: opening since the install in mm, and how that has changed by later visits.
    opened: Vec<(f64, Vec<f64>)>,
}

/// Parts of a world's weight that do not depend on the lot.
struct Lot {
    /// Meter readings, with nothing on top, and with each section wetted.
    meter: f64,
    wetted: Vec<f64>,
    room: f64,
}

impl<'a> Scale<'a> {
    pub fn new(
        sections: &'a [SectionEvidence<'a>],
        rooms: &'a [RoomEvidence],
        maker: &'a Maker<'a>,
        causes: &CausePriors,
    ) -> Self {
        use rayon::prelude::*;
        let priors = maker.priors;
        let table = |section: &SectionEvidence<'_>| GapTable::new(&section.gaps, section.joints, priors);
        let mean = |section: &SectionEvidence<'_>| GapTable::of_mean(&section.gaps, priors);
        let meters = sections.iter().enumerate().flat_map(|(at, section)| {
            let alike = alike(&section.meter);
            alike.into_iter().map(move |(reading, count)| ReadingTable::new(at, &reading, count, priors))
        });
        #[expect(clippy::cast_precision_loss, reason = "counts of joints")]
        let joints: Vec<f64> = sections.iter().map(|section| section.joints as f64).collect();
        let all: f64 = joints.iter().sum::<f64>().max(1.0);
        let accounts = accounts();
        let lot = priors.lot_shrinkage.sd.hypot(priors.ring_shrinkage.sd);
        Self {
            sections,
            rooms,
            maker,
            gaps: sections.par_iter().map(table).collect(),
            means: sections.iter().map(mean).collect(),
            meters: meters.collect(),
            expected: accounts.map(|account| causes.on_top(&account).max(1e-9).ln()),
            failures: {
                let term = |weak| failures::log_likelihood(weak, sections);
                let (sound, weak) = (term(false), term(true));
                accounts.map(|account| if account.has(super::Cause::WeakSealant) { weak } else { sound })
            },
            log_shares: joints.iter().map(|joints| (joints / all).max(1e-12).ln()).collect(),
            lots: nodes::<LOTS>().map(|(z, share)| ((lot * z).exp(), share)).to_vec(),
        }
    }

    /// What was seen, by section.
    pub const fn sections(&self) -> &'a [SectionEvidence<'a>] {
        self.sections
    }

    /// What is expected before anything is measured.
    pub const fn priors(&self) -> &'a Priors {
        self.maker.priors
    }

    /// Whether a meter was read.
    pub const fn has_meter(&self) -> bool {
        !self.meters.is_empty()
    }

    /// Whether the room's hygrometer was read.
    pub const fn has_room(&self) -> bool {
        !self.rooms.is_empty()
    }

    /// Whether the room's air was seen at all, by hygrometer or logger.
    pub fn knows_room(&self) -> bool {
        self.has_room() || !self.maker.room.seen.is_empty()
    }

    /// Whether it was noted how a bead failed.
    pub fn has_failures(&self) -> bool {
        let mut gaps = self.sections.iter().flat_map(|section| &section.gaps);
        gaps.any(|gap| gap.failed != Failure::NotNoted)
    }

    /// Mean widths in mm of the sections in which nobody noted how beads failed.
    pub fn widths_without_failures(&self) -> Vec<f64> {
        let unnoted = |section: &&SectionEvidence<'_>| {
            !section.gaps.is_empty() && section.gaps.iter().all(|gap| gap.failed == Failure::NotNoted)
        };
        #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
        let mean = |section: &SectionEvidence<'_>| {
            section.gaps.iter().map(|gap| gap.width.to_mm()).sum::<f64>() / section.gaps.len() as f64
        };
        self.sections.iter().filter(unnoted).map(mean).collect()
    }

    /// The air of a day counted from the visit.
    pub fn step_on(&self, day: i64) -> StepAir {
        self.maker.step_on(day)
    }

    /// The air of the visit.
    pub fn step_on_visit(&self) -> StepAir {
        self.maker.step_on(0)
    }

    /// What of a world does not depend on which readings count.
    pub fn prepare(&self, worlds: &Worlds, world: usize) -> Prepared {
        let visit = worlds.day(0);
        let opened = self
            .sections
            .iter()
            .map(|section| {
                let build_up = &worlds.build_ups[section.build_up];
                let came = build_up.installed[world];
                let now = section.opening(came, build_up.at(world, visit));
                let later = section
                    .later
                    .iter()
                    .map(|later| section.opening(came, build_up.at(world, worlds.day(later.day))) - now);
                (now, later.collect())
            })
            .collect();
        Prepared { fixed: self.without_lot(worlds, world), opened }
    }

    /// Log weights of a world's accounts, by what counts.
    pub fn weigh(&self, world: &Prepared, counts: Counts) -> Accounts {
        let by_lot = self.by_lot(world, counts);
        std::array::from_fn(|account| {
            let logs: [f64; LOTS] = std::array::from_fn(|lot| by_lot[lot][account]);
            log_sum(&logs)
        })
    }

    /// The same for each factor on the lot's shrinkage, not summed.
    pub fn by_lot(&self, world: &Prepared, counts: Counts) -> [Accounts; LOTS] {
        let mut room = (Vec::with_capacity(self.sections.len()), Vec::with_capacity(self.sections.len()));
        std::array::from_fn(|lot| {
            let (factor, share) = self.lots[lot];
            let each = self.sections.iter().zip(&world.opened);
            let later: f64 = each.map(|(section, opened)| later_term(section, &opened.1, factor)).sum();
            self.of_lot(world, factor, counts, &mut room).map(|log| log + share.ln() + later)
        })
    }

    /// Log weights of the accounts if the lot shrinks by `factor` of its species. In `logs` and `parts` there is
    /// room for a figure of each section: it is asked for a hundred thousand times.
    fn of_lot(
        &self,
        world: &Prepared,
        factor: f64,
        counts: Counts,
        (logs, parts): &mut (Vec<Node>, Vec<f64>),
    ) -> Accounts {
        let Prepared { fixed, opened } = world;
        let room = if counts.room { fixed.room } else { 0.0 };
        let meter = |at: Option<usize>| match (counts.meter, at) {
            (false, _) => 0.0,
            (true, None) => fixed.meter,
            (true, Some(section)) => fixed.wetted[section],
        };
        let tables = match counts.gaps {
            Gaps::Nothing => None,
            Gaps::Mean => Some(&self.means),
            Gaps::All => Some(&self.gaps),
        };
        logs.clear();
        match tables {
            Some(tables) => {
                logs.extend(tables.iter().zip(opened).map(|(table, (now, _))| table.at(factor * now)));
            }
            None => logs.resize(opened.len(), Node::default()),
        }
        let mut found = [0.0; ACCOUNTS];
        for bonded in [0, 1] {
            let plain: f64 = logs.iter().map(|log| log[bonded][0]).sum();
            let mut instead =
                |on_top: usize, meter: &dyn Fn(usize) -> f64| {
                    let by_section = self.log_shares.iter().zip(&*logs).enumerate();
                    parts.clear();
                    parts.extend(by_section.map(|(at, (share, log))| {
                        share + plain + instead_of(log, bonded, on_top) + meter(at)
                    }));
                    log_sum(parts)
                };
            let usual = plain + meter(None);
            let all =
                [usual, usual, instead(LINE_MOVED, &|_| meter(None)), instead(WETTED, &|at| meter(Some(at)))];
            for (on_top, log) in all.into_iter().enumerate() {
                let account = 4 * bonded + on_top;
                let failures = if counts.failures { self.failures[account] } else { 0.0 };
                found[account] = log + room + self.expected[account] + failures;
            }
        }
        found
    }

    /// How far a section's boards have opened in a world whose lot shrinks by `factor` of its species, mm.
    pub fn opened(&self, world: &Prepared, section: usize, factor: f64) -> f64 {
        factor * world.opened[section].0
    }

    /// The readings of a section's gaps.
    pub fn gap_table(&self, section: usize) -> &GapTable {
        &self.gaps[section]
    }

    /// Log weights of the sections as the place of what happened on top in a world: the line that moved,
    /// or the part that was wetted.
    pub fn places_of(&self, world: &Prepared, factor: f64, (bonded, on_top): (bool, usize)) -> Vec<f64> {
        let each = self.gaps.iter().zip(&world.opened).zip(&self.log_shares).enumerate();
        each.map(|(at, ((table, (now, _)), share))| {
            let meter = if on_top == WETTED { world.fixed.wetted[at] } else { 0.0 };
            share + instead_of(&table.at(factor * now), usize::from(bonded), on_top) + meter
        })
        .collect()
    }

    fn without_lot(&self, worlds: &Worlds, world: usize) -> Lot {
        let room = self.room_term(worlds, world);
        if self.meters.is_empty() {
            return Lot { meter: 0.0, wetted: vec![0.0; self.sections.len()], room };
        }
        // By whether the meter was set to the species: each setting has an offset of its own.
        let mut terms = Lot { meter: 0.0, wetted: vec![0.0; self.sections.len()], room };
        for set in [true, false] {
            let logs = self.meter_by_offset(worlds, world, set);
            let sum = |at: usize| log_sum(&logs.iter().map(|log| log[at]).collect::<Vec<_>>());
            terms.meter += sum(0);
            for section in 0..self.sections.len() {
                terms.wetted[section] += sum(1 + section);
            }
        }
        terms
    }

    /// Log likelihood of the meter readings by offset: with nothing wet, then with each section wet.
    fn meter_by_offset(&self, worlds: &Worlds, world: usize, set: bool) -> Vec<Vec<f64>> {
        let priors = self.maker.priors;
        let prior = if set { &priors.meter_offset } else { &priors.loose_meter_offset };
        let own: Vec<(&ReadingTable, f64)> = self
            .meters
            .iter()
            .filter(|reading| reading.set_to_species == set)
            .map(|reading| {
                let build_up = self.sections[reading.section].build_up;
                (reading, worlds.build_ups[build_up].at(world, worlds.day(reading.day)))
            })
            .collect();
        nodes::<OFFSETS>()
            .into_iter()
            .map(|(z, share)| {
                let mut logs = vec![share.ln(); 1 + self.sections.len()];
                for (reading, moisture) in &own {
                    let shown = moisture + prior.middle + prior.sd * z;
                    let usual = reading.count * ReadingTable::look(&reading.usual, shown);
                    let wetted = reading.count * ReadingTable::look(&reading.wetted, shown);
                    for (at, log) in logs.iter_mut().enumerate() {
                        *log += if at == reading.section + 1 { wetted } else { usual };
                    }
                }
                logs
            })
            .collect()
    }

    /// Mean and mean square of the meter's offset in a world, by the readings.
    pub fn offset(&self, worlds: &Worlds, world: usize) -> (f64, f64) {
        let prior = &self.maker.priors.meter_offset;
        let logs: Vec<f64> = self.meter_by_offset(worlds, world, true).iter().map(|log| log[0]).collect();
        let all = log_sum(&logs);
        let each = logs
            .iter()
            .zip(nodes::<OFFSETS>())
            .map(|(log, (z, _))| ((log - all).exp(), prior.middle + prior.sd * z));
        each.fold((0.0, 0.0), |(mean, square), (share, offset)| {
            (mean + share * offset, square + share * offset * offset)
        })
    }

    fn room_term(&self, worlds: &Worlds, world: usize) -> f64 {
        let air = &worlds.air[world / LANES];
        let one = |reading: &RoomEvidence| {
            let step = self.maker.step_on(reading.day);
            hygrometer_term(&step, air, world % LANES, reading.humidity, self.maker.priors)
        };
        self.rooms.iter().map(one).sum::<f64>() + logger_term(self.maker.room, air, world % LANES)
    }
}

/// What a section's gaps weigh if this happened there, against nothing.
fn instead_of(log: &Node, bonded: usize, on_top: usize) -> f64 {
    log[bonded][on_top] - log[bonded][0]
}

/// Log likelihood of how the gaps changed until later visits.
fn later_term(section: &SectionEvidence<'_>, expected: &[f64], factor: f64) -> f64 {
    const GAUGE: f64 = 0.2;
    let one = |(later, change): (&super::LaterGaps, &f64)| {
        let change = factor * change;
        #[expect(clippy::cast_precision_loss, reason = "a count of joints")]
        let gauge = GAUGE * (2.0 / later.joints.max(1) as f64).sqrt();
        let sd = gauge.hypot(0.2 * change).hypot(0.1);
        (0.98 * log_normal(later.change.to_mm(), change, sd).exp() + 0.02 / 20.0).ln()
    };
    section.later.iter().zip(expected).map(one).sum()
}

/// The accounts in their order, without what the boards were at install.
pub(super) fn accounts() -> [Hypothesis; ACCOUNTS] {
    let mut right = Hypothesis::all().into_iter().filter(|account| !account.wet);
    std::array::from_fn(|_| right.next().unwrap_or(Hypothesis::PLAIN))
}
