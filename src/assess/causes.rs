//! Why the joints opened, in words: the odds of the causes, the clues, the reading that would settle
//! most.

use statrs::statistics::Statistics as _;

use super::EntryPlace;
use super::sections::{SectionState, visit_day};
use crate::cause::{
    Cause, Clue, ClueKind, GapEvidence, LaterGaps, Odds, OtherCause, Reading, SectionInputs, odds,
};
use crate::job::{Catalog, Job};
use crate::measure::{Length, Moisture};
use crate::surface::{JointKind, SurfaceLayout};
use crate::survey::{Failure, GapReading, LaterVisit, moisture_readings};
use crate::wood::shrinkage;

/// A factor by which a clue must change a cause's odds to be told.
const TELLING: f64 = 1.25;

/// A clue in words.
#[derive(Debug, Clone, PartialEq)]
pub struct ClueWords {
    /// What was seen.
    pub seen: String,
    /// The cause it argues for most, and by what factor it raises its odds.
    pub argues_for: Option<(Cause, f64)>,
    /// The cause it argues against most, and by what factor it lowers its odds.
    pub argues_against: Option<(Cause, f64)>,
}

/// What did it.
#[derive(Debug, Clone, PartialEq)]
pub struct Diagnosis {
    /// The odds.
    pub odds: Odds,
    /// The clues.
    pub clues: Vec<ClueWords>,
    /// The reading that would settle most, as the object of "measure" or "note".
    pub most_informative_reading: Option<(String, EntryPlace)>,
    /// Index in the assessment of the section that stands out, where a part was wetted.
    pub wetted_section: Option<usize>,
}

impl Diagnosis {
    /// The cause it is called by, with the probability that it plays a part.
    pub fn main(&self) -> (Cause, f64) {
        let main = self.odds.account.0.main();
        (main, self.of(main))
    }

    /// The probability that a cause plays a part.
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
    let name = |at: usize| {
        let state = &sections[told[at]];
        let surface = &job.surfaces[state.surface];
        format!("{}, section {}", surface.name, surface.sections[state.section].name)
    };
    let most_informative_reading = odds.most_informative_reading.map(|(reading, _)| match reading {
        Reading::Gap(at) => {
            let state = &sections[told[at]];
            let place = EntryPlace::Gaps(state.surface, state.section);
            (format!("measure one more gap in {}", name(at)), place)
        }
        Reading::Moisture(at) => {
            (format!("take a moisture reading of the boards in {}", name(at)), EntryPlace::Moisture)
        }
        Reading::Failures => {
            ("note how the bead failed at the joints you measured".to_owned(), EntryPlace::Failures)
        }
    });
    let clues = odds.clues.iter().map(|clue| in_words(clue, job, catalog, sections, &inputs)).collect();
    let wetted_section =
        (odds.account.0.other_cause == OtherCause::Wetted).then(|| standing_out(sections, &told)).flatten();
    Some(Diagnosis { odds, clues, most_informative_reading, wetted_section })
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

fn in_words(
    clue: &Clue,
    job: &Job,
    catalog: &Catalog,
    sections: &[SectionState],
    inputs: &[SectionInputs<'_>],
) -> ClueWords {
    let ranked = |better: fn(f64, f64) -> bool| {
        let causes = Cause::ALL.into_iter().zip(clue.factors);
        causes.reduce(|best, next| if better(next.1, best.1) { next } else { best })
    };
    ClueWords {
        seen: match clue.kind {
            ClueKind::MeanGap => mean_gap(job, catalog, sections),
            ClueKind::Pattern => pattern(job, inputs),
            ClueKind::Moisture => moisture(sections),
            ClueKind::Failures => failures(inputs),
        },
        argues_for: ranked(|a, b| a > b).filter(|(_, factor)| *factor > TELLING),
        argues_against: ranked(|a, b| a < b)
            .filter(|(_, factor)| *factor < 1.0 / TELLING)
            .map(|(cause, factor)| (cause, 1.0 / factor)),
    }
}

/// The section with most readings, held against what boards laid right would show today.
fn mean_gap(job: &Job, catalog: &Catalog, sections: &[SectionState]) -> String {
    let Some(state) = sections.iter().max_by_key(|state| state.gaps.measured) else { return String::new() };
    let board = &job.surfaces[state.surface].sections[state.section].board;
    let right = catalog.species(&board.species).map_or(Length::ZERO, |species| {
        let now = state.now.moisture.mean;
        state.across * shrinkage(species, board.ring_angle, state.settled.mean(), now)
    });
    format!(
        "The mean gap is {}; boards that went up at what the room keeps would show {} today",
        state.gaps.mean.show(job.units),
        right.max(Length::ZERO).show(job.units)
    )
}

fn pattern(job: &Job, inputs: &[SectionInputs<'_>]) -> String {
    let widths: Vec<Length> = inputs.iter().flat_map(|section| &section.gaps).map(|gap| gap.width).collect();
    let closed = widths.iter().filter(|width| **width <= Length::mm(0.1)).count();
    let widest = widths.iter().copied().fold(Length::ZERO, Length::max);
    let closed = match closed {
        0 => "none is closed".to_owned(),
        1 => "1 is closed".to_owned(),
        count => format!("{count} are closed"),
    };
    format!("Of {} joints measured {closed}; the widest is {}", widths.len(), widest.show(job.units))
}

fn moisture(sections: &[SectionState]) -> String {
    let read = sections.iter().filter(|state| state.now.readings > 0);
    let off = |state: &&SectionState| (state.now.moisture.mean - state.expected_now).to_pct().abs();
    let Some(state) = read.max_by(|a, b| off(a).total_cmp(&off(b))) else { return String::new() };
    let differ = state.now.moisture.mean - state.expected_now;
    let words = if differ.to_pct().abs() < 1.5 {
        "as the room makes them".to_owned()
    } else {
        format!("the room makes them {}", state.expected_now.max(Moisture::ZERO).show())
    };
    format!("The boards are at {}, {words}", state.now.moisture.mean.show())
}

fn failures(inputs: &[SectionInputs<'_>]) -> String {
    let noted: Vec<Failure> = inputs.iter().flat_map(|section| &section.gaps).map(|gap| gap.failed).collect();
    let counted = Failure::ALL.into_iter().filter(|kind| *kind != Failure::NotNoted).filter_map(|kind| {
        let count = noted.iter().filter(|seen| **seen == kind).count();
        (count > 0).then(|| format!("{} {count}", kind.words()))
    });
    format!("Beads: {}", counted.collect::<Vec<_>>().join(", "))
}
