//! What work order, buying list, evidence sheet and follow-up card say besides the letter.

use serde_json::{Value, json};

use crate::assess::{Assessment, JointState, MissingEntry, RepairOption, SectionState, date_after};
use crate::cause::Cause;
use crate::measure::{Length, Moisture, show_date, show_number};
use crate::repair::{Outcome, TreatedJoint, wet_sealant};
use crate::survey::moisture_readings;
use crate::words::causes::{self, chance_as_odds, chance_as_percent};
use crate::words::{Say as _, Words, answer};

/// Sections in the order of the work, with what is to be done in each.
pub(super) fn groups(assessment: &Assessment) -> Vec<Value> {
    let beads = assessment.chosen().is_some_and(|option| matches!(option.outcome, Outcome::Bead { .. }));
    let groups =
        assessment.sections.iter().enumerate().map(|(at, state)| group(assessment, at, state, beads));
    groups.collect()
}

fn group(assessment: &Assessment, at: usize, state: &SectionState, beads: bool) -> Value {
    let job = &*assessment.job;
    let surface = &job.surfaces[state.surface];
    let treated: Vec<&JointState> =
        assessment.joints.iter().filter(|joint| joint.treated && joint.section == Some(at)).collect();
    let run: Length = treated.iter().map(|joint| laid(assessment, joint).length()).sum();
    let mut gaps: Vec<Length> = treated.iter().map(|joint| joint.at_sealing).collect();
    gaps.sort_by(|a, b| a.to_m().total_cmp(&b.to_m()));
    let typical = gaps.get(gaps.len() / 2).copied();
    let depth = typical.map(|gap| gap.max(job.plan.bead.least_depth));
    let profile = surface.sections[state.section].board.profile;
    let joints: Vec<TreatedJoint> = treated
        .iter()
        .map(|joint| TreatedJoint {
            length: laid(assessment, joint).length(),
            gap: joint.at_sealing,
            v_leg: profile.v_leg(),
        })
        .collect();
    let sealant = assessment.sealant.as_ref().filter(|_| beads);
    let narrow = treated.iter().filter(|joint| joint.at_sealing < job.plan.narrowest).count();
    json!({
        "number": at + 1,
        "surface": surface.name,
        "section": surface.sections[state.section].name,
        "joints": treated.len(),
        "run": run.show_run(job.units),
        "gap": typical.map(|gap| gap.show(job.units)),
        "gap_mm": typical.map(Length::to_mm),
        "depth": depth.map(|depth| depth.show(job.units)),
        "depth_mm": depth.map(Length::to_mm),
        "v_mm": profile.v_leg().to_mm(),
        "sealant": sealant.map(|s| wet_sealant(&joints, &job.plan.bead, s.solids).show(job.units)),
        "too_narrow": narrow,
        "boards": moisture_on(state, assessment.seal_day).show(),
        "wet": state.is_wetted(),
    })
}

fn laid<'a>(assessment: &'a Assessment, state: &JointState) -> &'a crate::surface::Joint {
    &assessment.layouts[state.surface].joints[state.joint]
}

fn moisture_on(state: &SectionState, day: usize) -> Moisture {
    state.motion.moisture[day.min(crate::joint::HORIZON - 1)]
}

/// The steps of the chosen way with their hours and days.
pub(super) fn steps(option: &RepairOption, said: &Words) -> Vec<Value> {
    let day = |at: f64| (at.floor() + 1.0).to_string();
    let hour = |at: f64| {
        let minutes = (at.fract() * 24.0 * 60.0).round();
        format!("{:02}:{:02}", (minutes / 60.0).floor(), minutes % 60.0)
    };
    let bars = option.schedule.bars.iter();
    bars.map(|bar| {
        json!({
            "name": bar.step.say(said), "waiting": bar.is_wait(), "day": day(bar.start), "from": hour(bar.start),
            "to_day": day(bar.end), "to": hour(bar.end),
        })
    })
    .collect()
}

/// The sealant's class and limits in words, if the chosen way lays a bead.
pub(super) fn sealant(assessment: &Assessment) -> Option<Value> {
    let job = &*assessment.job;
    let sealant = assessment.sealant.as_ref()?;
    let beads = matches!(assessment.chosen()?.outcome, Outcome::Bead { .. });
    beads.then(|| {
        json!({
            "name": sealant.name,
            "class": sealant.class,
            "stretch": sealant.stretch.show(),
            "squeeze": sealant.squeeze.show(),
            "cure": sealant.cure.show(),
            "narrowest": job.plan.narrowest.show(job.units),
            "v_filled": job.plan.bead.v_filled.show(),
        })
    })
}

/// What is bought, by the part of the shop it stands in.
pub(super) fn shopping(assessment: &Assessment, option: &RepairOption, said: &Words) -> Vec<Value> {
    let job = &*assessment.job;
    let sealant = assessment.sealant.as_ref().map(|sealant| sealant.name.as_str()).unwrap_or_default();
    let part = |id: &str| match id {
        id if id.starts_with(sealant) && !sealant.is_empty() => "Sealants",
        id if id.starts_with(&job.plan.paint) || id.starts_with(&job.plan.primer) => "Paint",
        id if id.starts_with("boards") || id.starts_with("fibreboards") => "Timber and boards",
        "strip" | "spline" | "filler" | "nails" => "Timber and boards",
        "film" | "tape" | "abrasive" | "blades" | "breaker" | "sundries" => "Masking, tools, sundries",
        _ => "Other",
    };
    let instead = |id: &str| match part(id) {
        "Sealants" => assessment.sealant.as_ref().map_or_else(String::new, |sealant| {
            format!("any paintable sealant of {} or a higher class", sealant.class)
        }),
        "Paint" => "any of the same kind and at least these solids".to_owned(),
        "Timber and boards" => "the same profile and species, dried to the room".to_owned(),
        _ => String::new(),
    };
    let parts = ["Sealants", "Paint", "Timber and boards", "Masking, tools, sundries", "Other"];
    let money = |amount: crate::measure::Money| amount.show(&job.plan.prices.currency);
    parts
        .into_iter()
        .filter_map(|name| {
            let lines: Vec<Value> = option
                .materials
                .iter()
                .enumerate()
                .filter(|(_, line)| part(&line.id) == name)
                .map(|(at, line)| {
                    json!([
                        line.pieces,
                        line.say(said),
                        super::needed(&option.materials, at, job.units),
                        instead(&line.id),
                        money(line.amount)
                    ])
                })
                .collect();
            (!lines.is_empty()).then(|| json!({ "name": name, "lines": lines }))
        })
        .collect()
}

/// Everything that was read in the room.
pub(super) fn readings(assessment: &Assessment, said: &Words) -> Value {
    let job = &*assessment.job;
    let gaps = job.survey.gaps.iter().map(|gap| {
        let date = gap.date.unwrap_or(job.visited);
        json!([gap.surface, gap.joint, gap.width.show(job.units), gap.failed.say(said), show_date(date)])
    });
    let moistures = job.survey.moistures.iter().filter_map(|reading| {
        Some(json!([
            reading.surface,
            reading.section,
            reading.board,
            format!("{} %", show_number(reading.reading?.to_pct(), 1)),
            reading.wood.show(job.units),
        ]))
    });
    let rooms = job.survey.rooms.iter().map(|room| {
        json!([room.temperature.show(job.units), format!("{} %", show_number(room.humidity.to_pct(), 0))])
    });
    let sections = assessment.sections.iter().map(|state| section(assessment, state, said));
    json!({
        "gaps": gaps.collect::<Vec<_>>(),
        "moistures": moistures.collect::<Vec<_>>(),
        "rooms": rooms.collect::<Vec<_>>(),
        "sections": sections.collect::<Vec<_>>(),
    })
}

/// What the readings of a section come to.
fn section(assessment: &Assessment, state: &SectionState, said: &Words) -> Value {
    let job = &assessment.job;
    let surface = &job.surfaces[state.surface];
    let section = &surface.sections[state.section];
    let origin = state.origin.filter(|origin| !origin.beyond_drying).map(|origin| {
        let pct = |moisture: Moisture| show_number(moisture.to_pct(), 0);
        format!("{} ({} to {})", origin.moisture.show(), pct(origin.interval.low), pct(origin.interval.high))
    });
    json!([
        surface.name,
        section.name,
        format!("{} ± {}", state.gaps.mean.show(job.units), state.gaps.error_of_mean.show(job.units)),
        format!("{} of {}", state.gaps.measured, state.gaps.joints),
        format!(
            "{} ({})",
            state.now.moisture.mean.show(),
            moisture_readings(&job.survey, &surface.name, &section.name).len()
        ),
        origin.unwrap_or_else(|| "–".to_owned()),
        state.settled.mean().show(),
        state.against_marks.map(|against| causes::marks(against, &assessment.catalog.marks, said)),
    ])
}

/// The odds of the causes and what argues for which.
pub(super) fn odds(assessment: &Assessment, said: &Words) -> Option<Value> {
    let found = assessment.causes.as_ref()?;
    let odds: Vec<Value> = Cause::ALL
        .into_iter()
        .map(|cause| {
            json!([
                cause.say(said),
                chance_as_odds(found.of(cause), said),
                chance_as_percent(found.of(cause), said)
            ])
        })
        .collect();
    let clues: Vec<Value> = found
        .clues
        .iter()
        .map(|clue| {
            let told = |side: Option<(Cause, f64)>| {
                side.map_or_else(
                    || "–".to_owned(),
                    |(cause, factor)| match factor {
                        f if f > 1000.0 => format!("{} × over 1000", cause.say(said)),
                        f => format!("{} × {}", cause.say(said), show_number(f, 1)),
                    },
                )
            };
            json!([clue.evidence.say(said), told(clue.argues_for), told(clue.argues_against)])
        })
        .collect();
    let settling = found
        .most_informative
        .map(|reading| answer::missing(assessment, MissingEntry::ForTheCause(reading), said));
    Some(json!({ "odds": odds, "clues": clues, "settling": settling }))
}

/// The joints to measure again, with what is forecast for the dampest and the driest weeks.
pub(super) fn again(assessment: &Assessment) -> Value {
    let job = &*assessment.job;
    let joints = assessment.joints.iter().filter(|joint| joint.gap.is_some_and(|gap| gap.measured)).take(24);
    let days = assessment.typical_section().map(SectionState::look_again);
    let Some((damp, dry)) = days else { return json!({ "joints": [] }) };
    let forecast = |state: &JointState, day: usize| {
        assessment.gap_on(state, day).map_or_else(|| "–".to_owned(), |gap| gap.show(job.units))
    };
    let rows = joints.map(|state| {
        json!([
            job.surfaces[state.surface].name,
            laid(assessment, state).label,
            state.gap.map(|gap| gap.gap.mean.show(job.units)),
            forecast(state, damp),
            forecast(state, dry),
        ])
    });
    json!({
        "joints": rows.collect::<Vec<_>>(),
        "damp": show_date(date_after(job, damp)),
        "dry": show_date(date_after(job, dry)),
        "finished": job.done.finished.map(show_date),
    })
}
