//! Why the joints opened: the odds of the causes, the clues with their figures, the reading that would
//! settle most.

use super::beliefs::Beliefs;
use super::sections::SectionState;
use crate::belief::{Cause, Clue, ClueKind, Hypothesis, OtherCause, Reading};
use crate::job::{Catalog, Job};
use crate::measure::{Humidity, Length, Moisture};
use crate::survey::{Failure, moisture_readings};
use crate::wood::shrinkage;

/// A clue argues for or against a cause if it changes its odds by at least this factor.
const TELLING: f64 = 1.25;

/// The boards are as the room makes them if they differ from it by less than this.
const AS_THE_ROOM: Moisture = Moisture::pct(1.5);

/// A gap up to this width counts as closed.
const CLOSED: Length = Length::mm(0.1);

/// What a clue rests on.
#[derive(Debug, Clone, PartialEq)]
pub enum ClueEvidence {
    /// How wide the gaps are on the whole.
    MeanGap {
        /// The section with most readings, where there are several; else empty.
        section: String,
        /// Its mean gap.
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
    /// What the meter says, in the section in which it is farthest off.
    Moisture {
        /// That section, where there are several; else empty.
        section: String,
        /// Mean of the meter's readings.
        now: Moisture,
        /// What the room makes of boards, where they differ from it by 1.5 % or more.
        room: Option<Moisture>,
    },
    /// How the beads failed: how many in each way, those that nobody saw left out.
    Failures(Vec<(Failure, usize)>),
    /// The room's air, as it was read.
    Room {
        /// Humidity in the mean of the readings.
        humidity: Humidity,
    },
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
    /// The room's humidity.
    Room,
}

/// What opened the joints.
#[derive(Debug, Clone, PartialEq)]
pub struct Diagnosis {
    /// The probability that each cause plays a part, in the order of [`Cause::ALL`].
    pub odds: [f64; 6],
    /// The likeliest account, and its probability.
    pub account: (Hypothesis, f64),
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
        let main = self.account.0.main();
        (main, self.of(main))
    }

    /// The probability that a cause plays a part, 0 to 1.
    pub fn of(&self, cause: Cause) -> f64 {
        let at = Cause::ALL.iter().position(|known| *known == cause).unwrap_or(0);
        self.odds[at]
    }
}

/// `None` while no gap is known.
pub(super) fn diagnosis(
    job: &Job,
    catalog: &Catalog,
    beliefs: &Beliefs,
    sections: &[SectionState],
) -> Option<Diagnosis> {
    let belief = &beliefs.belief;
    let told: Vec<usize> = (0..sections.len()).filter(|&at| sections[at].across > Length::ZERO).collect();
    if told.iter().all(|&at| sections[at].gaps.measured == 0) {
        return None;
    }
    let most_informative = belief.most_informative.map(|(reading, _)| {
        let place = |at: usize| (sections[at].surface, sections[at].section);
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
            Reading::Room => InformativeReading::Room,
        }
    });
    let clues = belief.clues.iter().filter_map(|clue| finding(clue, job, catalog, beliefs, sections));
    let wetted_section =
        (belief.account.0.other_cause == OtherCause::Wetted).then(|| standing_out(sections, &told)).flatten();
    Some(Diagnosis {
        odds: belief.causes,
        account: belief.account,
        clues: clues.collect(),
        most_informative,
        wetted_section,
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
    beliefs: &Beliefs,
    sections: &[SectionState],
) -> Option<ClueFinding> {
    let ranked = |better: fn(f64, f64) -> bool| {
        let causes = Cause::ALL.into_iter().zip(clue.factors);
        causes.reduce(|best, next| if better(next.1, best.1) { next } else { best })
    };
    Some(ClueFinding {
        evidence: match clue.kind {
            ClueKind::MeanGap => mean_gap(job, catalog, sections)?,
            ClueKind::Pattern => pattern(&beliefs.widths),
            ClueKind::Moisture => moisture(job, sections)?,
            ClueKind::Failures => failures(job),
            ClueKind::Room => room(job)?,
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
    let section = name_among(job, sections, state);
    Some(ClueEvidence::MeanGap { section, mean: state.gaps.mean, of_dry_boards })
}

/// The name of a section, where there are several.
fn name_among(job: &Job, sections: &[SectionState], state: &SectionState) -> String {
    if sections.len() < 2 {
        return String::new();
    }
    job.surfaces[state.surface].sections[state.section].name.clone()
}

fn pattern(widths: &[Length]) -> ClueEvidence {
    ClueEvidence::Pattern {
        measured: widths.len(),
        closed: widths.iter().filter(|width| **width <= CLOSED).count(),
        widest: widths.iter().copied().fold(Length::ZERO, Length::max),
    }
}

/// The hygrometer's readings, else the logger's.
fn room(job: &Job) -> Option<ClueEvidence> {
    let rooms = job.survey.rooms.iter().map(|reading| reading.humidity.to_pct());
    let logged = job.logged.iter().flat_map(|logged| &logged.days).map(|day| day.air.humidity.to_pct());
    let read: Vec<f64> = if job.survey.rooms.is_empty() { logged.collect() } else { rooms.collect() };
    #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
    let mean = read.iter().sum::<f64>() / read.len() as f64;
    (!read.is_empty()).then(|| ClueEvidence::Room { humidity: Humidity::pct(mean) })
}

/// The section in which the meter is farthest from what the room makes of boards.
fn moisture(job: &Job, sections: &[SectionState]) -> Option<ClueEvidence> {
    let read = |state: &SectionState| -> Option<Moisture> {
        let surface = job.surfaces.get(state.surface)?;
        let section = surface.sections.get(state.section)?;
        let own = moisture_readings(&job.survey, &surface.name, &section.name);
        #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
        let mean = own.iter().map(|(pct, _)| pct).sum::<f64>() / own.len() as f64;
        (!own.is_empty()).then(|| Moisture::pct(mean))
    };
    let each = sections.iter().filter_map(|state| Some((read(state)?, state.expected_now, state)));
    let off = |(read, room, _): &(Moisture, Moisture, &SectionState)| (*read - *room).to_pct().abs();
    let farthest = each.max_by(|a, b| off(a).total_cmp(&off(b)))?;
    let differs = off(&farthest) >= AS_THE_ROOM.to_pct();
    let section = name_among(job, sections, farthest.2);
    Some(ClueEvidence::Moisture {
        section,
        now: farthest.0,
        room: differs.then(|| farthest.1.max(Moisture::ZERO)),
    })
}

fn failures(job: &Job) -> ClueEvidence {
    let noted: Vec<Failure> = job.survey.gaps.iter().map(|gap| gap.failed).collect();
    let counted = Failure::ALL.into_iter().filter(|kind| *kind != Failure::NotNoted);
    let counted = counted.map(|kind| (kind, noted.iter().filter(|seen| **seen == kind).count()));
    ClueEvidence::Failures(counted.filter(|(_, count)| *count > 0).collect())
}
