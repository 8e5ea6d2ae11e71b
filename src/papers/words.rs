//! The sentences of the letter, for someone who never heard of moisture content.

use crate::assess::{Assessment, RepairOption, SectionState, date_after};
use crate::cause::{Cause, InstallMoisture};
use crate::job::{Job, LetterPart};
use crate::measure::{Length, Moisture, show_date, show_number};
use crate::repair::MethodId;

/// The sentences for someone who never heard of moisture content.
#[derive(Debug, Clone, PartialEq)]
pub struct Words {
    /// What was seen in the room.
    pub saw: Vec<String>,
    /// Why it happened.
    pub why: Vec<String>,
    /// How the joints go on moving.
    pub moves: Vec<String>,
    /// What will be done, when, and why then; empty where nothing is chosen.
    pub plan: Vec<String>,
    /// What is asked of the homeowner.
    pub asks: Vec<String>,
    /// Anything else; empty in the draft.
    pub more: Vec<String>,
}

impl Words {
    /// The sentences on `assessment`, which is the assessment of `job`, in the user's own words where there
    /// are any.
    pub fn new(assessment: &Assessment) -> Self {
        let job = &*assessment.job;
        let mut words = Self::drafts(assessment);
        for own in &job.wording {
            *words.part_mut(own.part) = own.text.lines().map(str::to_owned).collect();
        }
        words
    }

    /// The sentences as drafted.
    pub fn drafts(assessment: &Assessment) -> Self {
        let job = &*assessment.job;
        Self {
            saw: saw(assessment),
            why: why(assessment),
            moves: moves(assessment),
            plan: assessment.chosen().map_or_else(Vec::new, |option| plan(assessment, option)),
            asks: asks(job),
            more: Vec::new(),
        }
    }

    /// A part of the letter, a line for each sentence.
    pub fn text(&self, part: LetterPart) -> String {
        self.part(part).join("\n")
    }

    const fn part(&self, part: LetterPart) -> &Vec<String> {
        match part {
            LetterPart::Saw => &self.saw,
            LetterPart::Why => &self.why,
            LetterPart::Moves => &self.moves,
            LetterPart::Plan => &self.plan,
            LetterPart::Asks => &self.asks,
            LetterPart::More => &self.more,
        }
    }

    const fn part_mut(&mut self, part: LetterPart) -> &mut Vec<String> {
        match part {
            LetterPart::Saw => &mut self.saw,
            LetterPart::Why => &mut self.why,
            LetterPart::Moves => &mut self.moves,
            LetterPart::Plan => &mut self.plan,
            LetterPart::Asks => &mut self.asks,
            LetterPart::More => &mut self.more,
        }
    }
}

fn count(number: usize, one: &str, many: &str) -> String {
    format!("{number} {}", if number == 1 { one } else { many })
}

/// What was seen in the room.
fn saw(assessment: &Assessment) -> Vec<String> {
    let job = &*assessment.job;
    let measured: Vec<Length> = assessment
        .joints
        .iter()
        .filter_map(|joint| joint.gap.filter(|gap| gap.measured).map(|gap| gap.gap.mean))
        .collect();
    if measured.is_empty() {
        return vec!["No gap has been measured yet.".to_owned()];
    }
    let widest = measured.iter().copied().fold(Length::ZERO, Length::max);
    let open = measured.iter().filter(|gap| **gap >= job.plan.open_from).count();
    let mut said = vec![format!(
        "On {} we measured {}. {} of them {} open, the widest by {}.",
        show_date(job.visited),
        count(measured.len(), "joint", "joints"),
        open,
        if open == 1 { "stands" } else { "stand" },
        widest.show(job.units),
    )];
    let readings = job.survey.moistures.iter().filter(|reading| reading.reading.is_some()).count();
    if readings > 0 {
        let now: Vec<f64> = assessment.sections.iter().map(|s| s.now.moisture.mean.to_pct()).collect();
        let low = now.iter().copied().fold(f64::INFINITY, f64::min);
        let high = now.iter().copied().fold(0.0, f64::max);
        said.push(format!(
            "The boards hold {} of water by weight today, by {}.",
            if high - low < 0.5 {
                format!("{} %", show_number(high, 0))
            } else {
                format!("{} to {} %", show_number(low, 0), show_number(high, 0))
            },
            count(readings, "reading of the meter", "readings of the meter"),
        ));
    }
    said
}

/// Why it happened, for someone who never heard of moisture content.
fn why(assessment: &Assessment) -> Vec<String> {
    let job = &*assessment.job;
    let mut said = Vec::new();
    let main = assessment.causes.as_ref().map(|causes| causes.main().0);
    if let Some(cause) = main.and_then(besides_the_wood) {
        said.push(cause.to_owned());
    }
    if let Some(state) = assessment.speaking_section()
        && let Some(origin) = state.origin
    {
        said.extend(how_wet(state, &origin));
    }
    let wet: Vec<&str> =
        assessment.sections.iter().filter(|s| s.is_wetted()).map(|s| section_name(job, s)).collect();
    if !wet.is_empty() {
        said.push(format!(
            "The boards of section {} are wetter than the air of the room can make them. Water gets to them; the place it comes from must be found and mended before anything is sealed.",
            wet.join(", ")
        ));
    }
    said
}

/// What happened besides drying and the seasons.
const fn besides_the_wood(cause: Cause) -> Option<&'static str> {
    match cause {
        Cause::WettedAndDried => Some(
            "Part of your boards got wet. Wet boards swell and crush each other's edges, and when they dry the gaps are wider than before.",
        ),
        Cause::FramingMoved => Some(
            "One line stands open far more than the rest, so what carries the boards has probably moved there; we look at that first.",
        ),
        Cause::WeakSealant => Some(
            "The movement is what a good sealant takes, but the one in your joints let go at small openings.",
        ),
        Cause::WetAtInstall | Cause::Seasonal | Cause::BondedGroups => None,
    }
}

/// How wet the boards of a section were when they went up, and what came of it.
fn how_wet(state: &SectionState, origin: &InstallMoisture) -> Vec<String> {
    let pct = |moisture: Moisture| show_number(moisture.to_pct(), 0);
    let dried_much = (origin.moisture - state.settled.mean()).to_pct() > 4.0;
    vec![
        "Wood gives off and takes up water with the air around it, and a board gets narrower as it dries."
            .to_owned(),
        format!(
            "Going by the gaps, the boards went up holding about {} % water (between {} and {} %). Your room keeps wood near {} %.",
            pct(origin.moisture),
            pct(origin.interval.low),
            pct(origin.interval.high),
            pct(state.settled.mean()),
        ),
        if dried_much {
            "They were too wet for the room when they were fitted. As they dried, each one narrowed a little, and all of it shows at the joints. The sealant could not stretch that far.".to_owned()
        } else {
            "They were about as dry as they should be. What you see is the ordinary movement between seasons: the joints open in the heating season and close again by themselves.".to_owned()
        },
    ]
}

fn section_name<'a>(job: &'a Job, state: &SectionState) -> &'a str {
    &job.surfaces[state.surface].sections[state.section].name
}

/// How the joints go on moving.
fn moves(assessment: &Assessment) -> Vec<String> {
    let job = &*assessment.job;
    let Some(state) = assessment.typical_section().filter(|state| state.gaps.measured > 0) else {
        return vec![];
    };
    let units = job.units;
    if state.narrowest_day == 0 {
        return vec![format!(
            "Left alone, a typical joint, {} wide today, goes on opening, to {} in the driest weeks.",
            state.gaps.mean.show(units),
            state.year_gap.1.show(units),
        )];
    }
    vec![format!(
        "Left alone, a typical joint, {} wide today, will be about {} in the dampest weeks (around {}) and {} in the driest.",
        state.gaps.mean.show(units),
        if state.year_gap.0 <= Length::ZERO { "closed".to_owned() } else { state.year_gap.0.show(units) },
        show_date(date_after(job, state.narrowest_day)),
        state.year_gap.1.show(units),
    )]
}

/// What will be done, when, and why then.
fn plan(assessment: &Assessment, option: &RepairOption) -> Vec<String> {
    let job = &*assessment.job;
    let days = count(option.schedule.crew_days as usize, "day", "days");
    match option.method {
        _ if !option.says.is_empty() => vec![option.says.clone(), format!("We are in the room on {days}.")],
        MethodId::Replace => vec![
            "We take the boards down and fit new ones that have dried to your room first: they lie there, stacked to the air, until the meter says so. They are painted all round before they go up, tongues too, so that no bare wood shows when they move.".to_owned(),
            format!(
                "We are in the room on {days}, over {} in all. In the driest weeks the new joints will open to about {}.",
                count(option.schedule.calendar_days as usize, "day", "days"),
                option.opens_to.show(job.units)
            ),
        ],
        _ => {
            let run = assessment.treated_run().show_run(job.units);
            let holds = option.holds.unwrap_or(0.0) * 100.0;
            if assessment.most_too_narrow() {
                return vec![format!(
                    "Most of the open joints are finer than {} even when they are best to seal: sealant has nothing to hold to and would tear again. We advise to leave them, with the V cleaned and painted. If you want them sealed all the same, they must be opened first; the price below is for that work without the opening.",
                    job.plan.narrowest.show(job.units)
                )];
            }
            let words = &crate::words::Words::of_job(job);
            let mut said = vec![format!(
                "We scrape out the old sealant, prime the bare edges, seal {run} of joint with a {} sealant and give the whole surface {}. The V between the boards stays visible.",
                job.plan.sealant.to_lowercase(),
                count(crate::job::sanitized(job).plan.coats as usize, "coat of paint", "coats of paint"),
            )];
            let day = show_date(date_after(job, assessment.seal_day));
            said.push(match (&assessment.season, job.plan.seal_on) {
                (_, Some(_)) => format!("The sealing is planned for {day}."),
                (Some(season), None) if season.best.high - season.best.low < 50 => format!(
                    "The best time is between {} and {}: sealed then, the new bead is asked least through the year.",
                    show_date(date_after(job, season.best.low * 7)),
                    show_date(date_after(job, season.best.high * 7 + 6)),
                ),
                _ => "Any time of the year will do.".to_owned(),
            });
            said.push(format!(
                "By our reckoning the new bead {} on {} % of that length{} We are in the room on {days}.",
                if holds < 90.0 { "would stay within its limits only" } else { "stays within its limits" },
                show_number(holds.floor(), 0),
                option.callback.as_ref().map_or_else(
                    || ".".to_owned(),
                    |risk| format!(", and the chance that joints open again within the warranty is {}.", crate::words::causes::chance_as_odds(risk.chance, words)),
                ),
            ));
            said
        }
    }
}

fn asks(job: &Job) -> Vec<String> {
    vec![
        "Keep the room between about 35 and 55 % humidity the year round; a small hygrometer shows it.".to_owned(),
        "A hair line at a joint in the driest weeks is ordinary. Call us if one opens wider than a credit card is thick, or if a patch looks damp.".to_owned(),
        format!("Let us look again after the first full year, and any time within {}.", count(job.plan.warranty_years as usize, "year", "years")),
    ]
}
