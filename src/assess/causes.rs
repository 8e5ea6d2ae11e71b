//! Why the joints opened: the odds of the causes, the clues with their figures, the reading that would
//! settle most.

use statrs::statistics::Statistics as _;

use super::sections::{SectionState, visit_day};
use crate::cause::{
    Cause, Clue, ClueKind, GapEvidence, LaterGaps, Odds, OtherCause, Reading, SectionInputs, odds,
};
use crate::job::{Catalog, Job};
use crate::measure::{Length, Moisture};
use crate::surface::{JointKind, SurfaceLayout};
use crate::survey::{Failure, GapReading, LaterVisit, moisture_readings};
use crate::wood::shrinkage;

/// A clue argues for or against a cause if it changes its odds by at least this factor.
const TELLING: f64 = 1.25;

/// The boards are as the room makes them if they differ from it by less than this.
pub(super) const AS_THE_ROOM: Moisture = Moisture::pct(1.5);

/// A gap up to this width counts as closed.
const CLOSED: Length = Length::mm(0.1);

/// What a clue rests on.
#[derive(Debug, Clone, PartialEq)]
pub enum ClueEvidence {
    /// How wide the gaps are on the whole.
    MeanGap {
        /// Mean gap of the section with most readings.
        mean: Length,
        /// What boards installed at what the room keeps would show today.
        of_dry_boards: Length,
    },
    /// How they are spread over the joints.
    Pattern {
        /// Joints measured.
        measured: usize,
        /// How many of them are closed.
        closed: usize,
        /// The widest gap.
        widest: Length,
    },
    /// How wet the boards are, in the section that is farthest off.
    Moisture {
        /// Their moisture.
        now: Moisture,
        /// What the room makes them, where they differ from it by 1.5 % or more.
        room: Option<Moisture>,
    },
    /// How the beads failed: how many in each way, those that nobody saw left out.
    Failures(Vec<(Failure, usize)>),
}

/// A clue, with what it argues for.
#[derive(Debug, Clone, PartialEq)]
pub struct ClueFinding {
    /// What was seen.
    pub evidence: ClueEvidence,
    /// The cause it argues for most, and the factor by which it raises its odds, above 1.25; `None` if it
    /// argues for none.
    pub argues_for: Option<(Cause, f64)>,
    /// The cause it argues against most, and the factor by which it lowers its odds, above 1.25.
    pub argues_against: Option<(Cause, f64)>,
}

/// A reading that would settle the cause. Sections by indices of surface and section.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum InformativeReading {
    /// One more gap in this section.
    Gap {
        /// Index of the surface.
        surface: usize,
        /// Index of the section on it.
        section: usize,
    },
    /// A moisture reading of the boards in this section.
    Moisture {
        /// Index of the surface.
        surface: usize,
        /// Index of the section on it.
        section: usize,
    },
    /// How the beads failed at the joints that were measured.
    Failures,
}

/// What opened the joints.
#[derive(Debug, Clone, PartialEq)]
pub struct Diagnosis {
    /// The odds.
    pub odds: Odds,
    /// The clues.
    pub clues: Vec<ClueFinding>,
    /// The reading that would settle most; `None` where nothing is left to settle.
    pub most_informative: Option<InformativeReading>,
    /// Index in the assessment of the section that stands out, where a part was wetted.
    pub wetted_section: Option<usize>,
}

impl Diagnosis {
    /// The cause it is called by, with the probability that it plays a part.
    pub fn main(&self) -> (Cause, f64) {
        let main = self.odds.account.0.main();
        (main, self.of(main))
    }

    /// The probability that a cause plays a part, 0 to 1.
    pub fn of(&self, cause: Cause) -> f64 {
        let at = Cause::ALL.iter().position(|known| *known == cause).unwrap_or(0);
        self.odds.causes[at]
    }
}

pub(super) fn diagnosis(
    job: &Job,
    catalog: &Catalog,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
) -> Option<Diagnosis> {
    let told: Vec<usize> = (0..sections.len()).filter(|&at| sections[at].across > Length::ZERO).collect();
    let inputs: Vec<SectionInputs<'_>> =
        told.iter().filter_map(|&at| section_inputs(job, catalog, layouts, &sections[at])).collect();
    if inputs.len() < told.len() {
        return None;
    }
    let odds = odds(&inputs, &catalog.causes)?;
    let most_informative = odds.most_informative_reading.map(|(reading, _)| {
        let place = |at: usize| (sections[told[at]].surface, sections[told[at]].section);
        match reading {
            Reading::Gap(at) => {
                let (surface, section) = place(at);
                InformativeReading::Gap { surface, section }
            }
            Reading::Moisture(at) => {
                let (surface, section) = place(at);
                InformativeReading::Moisture { surface, section }
            }
            Reading::Failures => InformativeReading::Failures,
        }
    });
    let clues = odds.clues.iter().filter_map(|clue| finding(clue, job, catalog, sections, &inputs));
    let clues = clues.collect();
    let wetted_section =
        (odds.account.0.other_cause == OtherCause::Wetted).then(|| standing_out(sections, &told)).flatten();
    Some(Diagnosis { odds, clues, most_informative, wetted_section })
}

fn section_inputs<'a>(
    job: &Job,
    catalog: &'a Catalog,
    layouts: &[SurfaceLayout],
    state: &'a SectionState,
) -> Option<SectionInputs<'a>> {
    let surface = &job.surfaces[state.surface];
    let section = &surface.sections[state.section];
    let edges: Vec<&str> = layouts[state.surface]
        .joints
        .iter()
        .filter(|joint| joint.section == state.section && joint.kind == JointKind::BoardEdge)
        .map(|joint| joint.label.as_str())
        .collect();
    #[expect(clippy::cast_precision_loss, reason = "a count of joints")]
    let along = |at: usize| (at as f64 + 0.5) / edges.len() as f64;
    let gaps = edges.iter().enumerate().filter_map(|(at, label)| {
        // A joint that was read twice is still one joint.
        let own: Vec<&GapReading> = job
            .survey
            .gaps
            .iter()
            .filter(|gap| gap.surface == surface.name && gap.joint == *label && gap.width >= Length::ZERO)
            .collect();
        let widths: Vec<f64> = own.iter().map(|gap| gap.width.to_m()).collect();
        let noted = own.iter().map(|gap| gap.failed).rfind(|failed| *failed != Failure::NotNoted);
        (!own.is_empty()).then(|| GapEvidence {
            place: along(at),
            width: Length::m(widths.mean()),
            failed: noted.unwrap_or_default(),
        })
    });
    Some(SectionInputs {
        species: catalog.species(&section.board.species)?,
        ring: section.board.ring_angle,
        across: state.across,
        years: &state.settled,
        visit: visit_day(job),
        joints: edges.len(),
        gaps: gaps.collect(),
        moistures: moisture_readings(&job.survey, &surface.name, &section.name),
        later: job
            .later
            .iter()
            .filter_map(|visit| later_gaps(job, visit, &surface.name, &edges, state))
            .collect(),
    })
}

/// How the joints of a section that were measured at the visit had changed by a later one, before
/// anything was done to them.
fn later_gaps(
    job: &Job,
    visit: &LaterVisit,
    surface: &str,
    edges: &[&str],
    state: &SectionState,
) -> Option<LaterGaps> {
    let days = usize::try_from((visit.on - job.visited).get_days()).ok()?;
    if days == 0 || job.done.finished.is_some_and(|finished| visit.on > finished) {
        return None;
    }
    let mean = |widths: Vec<f64>| (!widths.is_empty()).then(|| widths.mean());
    let then = |label: &str| {
        let own = job.survey.gaps.iter().filter(|gap| gap.surface == surface && gap.joint == label);
        mean(own.map(|gap| gap.width.to_m()).collect())
    };
    let later = |label: &str| {
        let own = visit.gaps.iter().filter(|gap| gap.surface == surface && gap.joint == label);
        mean(own.filter_map(|gap| gap.width).map(Length::to_m).collect())
    };
    let changes: Vec<f64> = edges.iter().filter_map(|label| Some(later(label)? - then(label)?)).collect();
    let day = visit_day(job) + i64::try_from(days).ok()?;
    (!changes.is_empty()).then(|| LaterGaps {
        joints: changes.len(),
        change: Length::m(changes.iter().mean()),
        settled: state.settled.on(day),
        left: state.settled.left_after(days, Moisture::pct(1.0)),
    })
}

/// The measured section whose mean gap stands out above the others', if one clearly does.
fn standing_out(sections: &[SectionState], told: &[usize]) -> Option<usize> {
    let mean = |at: usize| sections[at].gaps.mean.to_m();
    let mut measured: Vec<usize> =
        told.iter().copied().filter(|&at| sections[at].gaps.measured > 0).collect();
    measured.sort_by(|&a, &b| mean(b).total_cmp(&mean(a)));
    let (&top, next) = (measured.first()?, *measured.get(1)?);
    let doubt = sections[top].gaps.error_of_mean.to_m().hypot(sections[next].gaps.error_of_mean.to_m());
    (mean(top) - mean(next) > doubt).then_some(top)
}

/// What a clue rests on, and what it argues for and against most.
fn finding(
    clue: &Clue,
    job: &Job,
    catalog: &Catalog,
    sections: &[SectionState],
    inputs: &[SectionInputs<'_>],
) -> Option<ClueFinding> {
    let ranked = |better: fn(f64, f64) -> bool| {
        let causes = Cause::ALL.into_iter().zip(clue.factors);
        causes.reduce(|best, next| if better(next.1, best.1) { next } else { best })
    };
    Some(ClueFinding {
        evidence: match clue.kind {
            ClueKind::MeanGap => mean_gap(job, catalog, sections)?,
            ClueKind::Pattern => pattern(inputs),
            ClueKind::Moisture => moisture(sections)?,
            ClueKind::Failures => failures(inputs),
        },
        argues_for: ranked(|a, b| a > b).filter(|(_, factor)| *factor > TELLING),
        argues_against: ranked(|a, b| a < b)
            .filter(|(_, factor)| *factor < 1.0 / TELLING)
            .map(|(cause, factor)| (cause, 1.0 / factor)),
    })
}

/// The section with most readings, held against what boards laid right would show today.
fn mean_gap(job: &Job, catalog: &Catalog, sections: &[SectionState]) -> Option<ClueEvidence> {
    let state = sections.iter().max_by_key(|state| state.gaps.measured)?;
    let board = &job.surfaces[state.surface].sections[state.section].board;
    let of_dry_boards = catalog.species(&board.species).map_or(Length::ZERO, |species| {
        let now = state.now.moisture.mean;
        state.across * shrinkage(species, board.ring_angle, state.settled.mean(), now)
    });
    let of_dry_boards = of_dry_boards.max(Length::ZERO);
    Some(ClueEvidence::MeanGap { mean: state.gaps.mean, of_dry_boards })
}

fn pattern(inputs: &[SectionInputs<'_>]) -> ClueEvidence {
    let widths: Vec<Length> = inputs.iter().flat_map(|section| &section.gaps).map(|gap| gap.width).collect();
    ClueEvidence::Pattern {
        measured: widths.len(),
        closed: widths.iter().filter(|width| **width <= CLOSED).count(),
        widest: widths.iter().copied().fold(Length::ZERO, Length::max),
    }
}

/// The section whose boards are farthest from what the room makes them.
fn moisture(sections: &[SectionState]) -> Option<ClueEvidence> {
    let read = sections.iter().filter(|state| state.now.readings > 0);
    let off = |state: &SectionState| (state.now.moisture.mean - state.expected_now).to_pct().abs();
    let state = read.max_by(|a, b| off(a).total_cmp(&off(b)))?;
    let differs = off(state) >= AS_THE_ROOM.to_pct();
    Some(ClueEvidence::Moisture {
        now: state.now.moisture.mean,
        room: differs.then(|| state.expected_now.max(Moisture::ZERO)),
    })
}

fn failures(inputs: &[SectionInputs<'_>]) -> ClueEvidence {
    let noted: Vec<Failure> = inputs.iter().flat_map(|section| &section.gaps).map(|gap| gap.failed).collect();
    let counted = Failure::ALL.into_iter().filter(|kind| *kind != Failure::NotNoted);
    let counted = counted.map(|kind| (kind, noted.iter().filter(|seen| **seen == kind).count()));
    ClueEvidence::Failures(counted.filter(|(_, count)| *count > 0).collect())
}
