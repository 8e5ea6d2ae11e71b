//! What the crew does where, in which order.

use jiff::civil::Time;
use serde_json::{Map, Value, json};

use super::unit_id;
use crate::assess::{Assessment, JointState, RepairOption, SectionState, date_after};
use crate::bead::LEAST_TAPE;
use crate::joint::{BeadLay, JointEdges};
use crate::measure::{Area, Hours, Length, Minutes, Moisture, Percent};
use crate::named::{Named as _, name_of, position};
use crate::repair::{Bar, Outcome, RateBasis, WorkDay};
use crate::surface::{Joint, SectionLayout};
use crate::words::{Arg, Say as _, Words, bead_designs, say, work};

/// Gaps that are off by more than this on the day of sealing are not those that were forecast.
const GAP_OFF: Length = Length::inches(1.0 / 32.0);
/// Nor are boards that read so much more, in percent moisture.
const MOISTURE_OFF: f64 = 2.0;

/// Minutes of a day.
const DAY_MINUTES: f64 = 24.0 * 60.0;

/// What the work order says besides the letter.
pub(super) fn data(assessment: &Assessment, words: &Words) -> Map<String, Value> {
    let (job, chosen) = (&*assessment.job, assessment.chosen());
    let groups: Vec<Value> = assessment
        .sections
        .iter()
        .enumerate()
        .filter(|(_, state)| assessment.works_in(state.surface, state.section))
        .map(|(at, state)| group(assessment, at, state, words))
        .collect();
    let on = date_after(job, day_of_work(assessment));
    let where_note = if bead(assessment).is_some() {
        say!(words, "paper-where-note", date = on)
    } else {
        say!(words, "paper-where-note-boards", date = on)
    };
    super::object(json!({
        "groups": groups,
        "where_note": where_note,
        "sealant": sealant(assessment, words),
        "narrow": narrow(assessment, words),
        "workdays": chosen.map_or_else(Vec::new, |option| workdays(option, words)),
        "hours_note": chosen.map(|_| hours_note(assessment, words)),
        "steps": chosen.map_or_else(Vec::new, |option| steps(option, words)),
        "map_legend": map_legend(assessment, words),
        "seal_today": seal_today(assessment, words),
        "products": chosen.map_or_else(Vec::new, |option| products(assessment, option, words)),
        "taken": chosen.map_or_else(Vec::new, |option| tasks_taken(option, words)),
        "taken_note": taken_note(chosen, words),
        "used": chosen.map_or_else(Vec::new, |option| pieces_used(option, words)),
        "do_not": do_not(assessment, words),
        "phone": job.phone,
        "getting_in": job.getting_in,
        "office": office(assessment),
        "wood": wood(assessment, words),
        "how": how(assessment, words),
        "unwanted": chosen
            .filter(|option| assessment.advises_against(option))
            .map(|_| words.text("paper-unwanted")),
    }))
}

/// Whom to call: the contractor, line by line.
fn office(assessment: &Assessment) -> Vec<String> {
    let contractor = &assessment.job.contractor;
    let details = contractor.details.lines().map(str::trim);
    let all = std::iter::once(contractor.name.trim()).chain(details).filter(|line| !line.is_empty());
    all.map(str::to_owned).collect()
}

/// The species of the boards, for the meter: each once.
pub(super) fn wood(assessment: &Assessment, words: &Words) -> String {
    let sections = assessment.job.surfaces.iter().flat_map(|surface| &surface.sections);
    let mut names: Vec<String> = Vec::new();
    for section in sections {
        let name = words.called(name_of(&assessment.catalog.species, &section.board.species)).into_owned();
        if !names.contains(&name) {
            names.push(name);
        }
    }
    names.join("; ")
}

/// How the joints are worked, where no bead says it, a step each.
fn how(assessment: &Assessment, words: &Words) -> Vec<String> {
    let steps: &[&str] = match assessment.chosen().map(|option| option.outcome) {
        Some(Outcome::Line) => &["line-cut", "line-edges", "line-paint"],
        Some(Outcome::Covered) => &["strip-nail", "strip-paint"],
        Some(Outcome::Boards { .. }) if assessment.chosen().is_some_and(|option| option.buys_boards) => {
            &["new-paint", "new-hang", "new-last"]
        }
        Some(Outcome::Boards { .. }) => &["relay-number", "relay-hang", "relay-fill"],
        _ => &[],
    };
    steps.iter().map(|step| say!(words, "paper-how-step", step = Arg::Id(step))).collect()
}

/// What not to do: of beads only where some are laid.
fn do_not(assessment: &Assessment, words: &Words) -> Vec<String> {
    let mut lines = Vec::new();
    if bead(assessment).is_some() {
        lines.push(say!(words, "paper-do-not-seal", units = unit_id(words.units())));
        lines.extend(wettest(assessment).map(|most| say!(words, "paper-do-not-seal-wet", most = most)));
        lines.push(say!(words, "paper-do-not-paint"));
    } else if assessment.chosen().is_some_and(|option| option.buys_boards) {
        lines.extend(hang_at(assessment).map(|most| say!(words, "paper-do-not-hang-wet", most = most)));
        lines.push(say!(words, "paper-do-not-fill"));
    } else if assessment.chosen().is_some() {
        lines.push(say!(words, "paper-do-not-fill"));
    }
    lines
}

/// Whether an option works on the joints themselves; one that takes the boards down does not.
pub(super) const fn works_on_joints(option: &RepairOption) -> bool {
    matches!(option.outcome, Outcome::Bead { .. } | Outcome::Line | Outcome::Covered | Outcome::Glued)
}

/// Whether an option takes boards down.
pub(super) const fn handles_boards(option: &RepairOption) -> bool {
    matches!(option.outcome, Outcome::Boards { .. })
}

/// The boards of a section and the area they cover, in words.
pub(super) fn boards(assessment: &Assessment, surface: usize, section: usize, words: &Words) -> String {
    let laid = &assessment.layouts[surface];
    let count = laid.boards.iter().filter(|board| board.section == section).count();
    let area = laid.sections.get(section).map_or(Area::ZERO, SectionLayout::area);
    say!(words, "paper-boards-and-area", boards = count, area = Arg::Area(area))
}

/// What the colors of the map mean.
fn map_legend(assessment: &Assessment, words: &Words) -> String {
    match assessment.chosen() {
        Some(option) if matches!(option.outcome, Outcome::Bead { .. }) => {
            say!(words, "paper-map-seal", narrowest = assessment.job.plan.narrowest)
        }
        Some(option) if works_on_joints(option) => say!(words, "paper-map-work"),
        Some(option) if handles_boards(option) => say!(words, "paper-map-boards"),
        _ => say!(words, "paper-map-open"),
    }
}

/// When to start, lunch, and what the hours hold.
fn hours_note(assessment: &Assessment, words: &Words) -> String {
    let plan = &assessment.job.plan;
    let (starts, lunch) = (work::time_of_day(plan.starts), plan.lunch);
    let starts = words.figures().time(starts);
    let note = if lunch > Minutes::ZERO {
        say!(words, "paper-hours-note", starts = &starts, lunch = lunch)
    } else {
        say!(words, "paper-hours-note-no-lunch", starts = &starts)
    };
    let evenings = assessment.chosen().map_or(0, |option| option.schedule.evenings);
    if evenings == 0 { note } else { note + " " + &words.text("paper-hand-back") }
}

/// The rule by which to seal on a day or leave it, a condition each: gaps, boards, room.
fn seal_today(assessment: &Assessment, words: &Words) -> Vec<String> {
    if bead(assessment).is_none() {
        return Vec::new();
    }
    let mut lines = gaps_today(assessment, words);
    lines.extend(wettest(assessment).map(|most| say!(words, "paper-seal-today-boards", most = most)));
    if assessment.sections.iter().any(SectionState::is_wetted) {
        lines.push(say!(words, "paper-seal-today-wet"));
    }
    lines.push(say!(words, "paper-seal-today-edges", units = unit_id(words.units())));
    lines.extend(room_today(assessment, words));
    lines
}

/// The gaps between which to seal, by section: where its sealed joints are forecast to be on the day, and what a
/// forecast may be off. Sections that come to the same are told in one line.
fn gaps_today(assessment: &Assessment, words: &Words) -> Vec<String> {
    let narrowest = assessment.job.plan.narrowest;
    let range = |at: usize| {
        let gaps = assessment.gaps_to_seal_at(at)?;
        let [low, high] = [(gaps.low - GAP_OFF).max(narrowest), gaps.high + GAP_OFF];
        Some([low, high].map(|gap| words.figures().length(gap)))
    };
    let sections = assessment.sections.iter().enumerate();
    let ranges: Vec<(&SectionState, [String; 2])> =
        sections.filter_map(|(at, state)| Some((state, range(at)?))).collect();
    let all_alike = ranges.windows(2).all(|two| two[0].1 == two[1].1);
    let one = |(state, [low, high]): &(&SectionState, [String; 2])| {
        let surface = &assessment.job.surfaces[state.surface];
        let section = &surface.sections[state.section].name;
        let surface = &surface.name;
        say!(
            words,
            "paper-seal-today-gaps-section",
            surface = surface,
            section = section,
            low = low,
            high = high
        )
    };
    match ranges.first() {
        Some((_, [low, high])) if all_alike => {
            vec![say!(words, "paper-seal-today-gaps", low = low, high = high)]
        }
        _ => ranges.iter().map(one).collect(),
    }
}

/// The wettest that boards may read on the day they are worked on; of those that got wet that is no guide.
fn wettest(assessment: &Assessment) -> Option<Percent> {
    let day = day_of_work(assessment);
    let dry = assessment.sections.iter().filter(|state| !state.is_wetted());
    let most = dry.map(|state| moisture_on(state, day).to_pct()).reduce(f64::max)?;
    Some(Percent::pct((most + MOISTURE_OFF).round()))
}

/// The wettest that new boards may be hung: a point over what the chance told takes them to be.
pub(super) fn hang_at(assessment: &Assessment) -> Option<Percent> {
    let here = assessment.sections.iter().filter(|state| assessment.works_in(state.surface, state.section));
    let least = here.map(|state| state.before_install.hung_at.to_pct()).reduce(f64::min)?;
    Some(Percent::pct((least + 1.0).round()))
}

/// The room's humidity to be expected on the day.
fn room_today(assessment: &Assessment, words: &Words) -> Option<String> {
    let date = date_after(&assessment.job, assessment.seal_day);
    let day = usize::try_from(date.day_of_year()).ok()?.saturating_sub(1).min(crate::air::DAYS - 1);
    let range = assessment.year.as_ref()?.range.get(day)?;
    Some(say!(words, "paper-seal-today-room", low = range.low, high = range.high))
}

/// What is used, each with the class it must meet, and what to note: the color.
fn products(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<Value> {
    let (plan, catalog) = (&assessment.job.plan, &assessment.catalog);
    let mut rows = Vec::new();
    if let Some(sealant) = assessment.sealant.as_ref().filter(|_| bead(assessment).is_some()) {
        rows.push(json!([
            words.text("paper-product-sealant"),
            words.called(&sealant.name),
            words.called(&sealant.class),
            ""
        ]));
    }
    // The catalog's paints are bought by the can: what the option buys none of, it does not use.
    for (id, label, colored) in
        [(&plan.primer, "paper-product-primer", false), (&plan.paint, "paper-product-paint", true)]
    {
        let Some(paint) = catalog.paint(id) else { continue };
        let bought = option.materials.iter().any(|line| line.id.split(", ").next() == Some(paint.key()));
        if bought {
            let solids = say!(words, "paper-product-solids", solids = paint.solids);
            let color = if colored { plan.color.as_str() } else { "" };
            rows.push(json!([words.text(label), words.called(&paint.name), solids, color]));
        }
    }
    rows
}

/// The tasks with the hours planned, and a blank for those taken.
fn tasks_taken(option: &RepairOption, words: &Words) -> Vec<Value> {
    // What is done in two goes is one task to whoever writes the hours down.
    let mut all: Vec<(&str, &str, Hours)> = Vec::new();
    for task in option.tasks.iter().filter(|task| task.hours.mean > Hours::ZERO) {
        match all.iter_mut().find(|(id, ..)| *id == task.id) {
            Some((.., hours)) => *hours = *hours + task.hours.mean,
            None => all.push((&task.id, &task.name, task.hours.mean)),
        }
    }
    let row = |(_, name, hours): (&str, &str, Hours)| {
        json!([words.called(name), words.figures().number(hours.to_h(), 1)])
    };
    all.into_iter().map(row).collect()
}

/// What the hours hold; those of a section that was timed are done before the days begin.
fn taken_note(chosen: Option<&RepairOption>, words: &Words) -> String {
    let note = words.text("paper-hours-and-pieces-note").into_owned();
    let timed = chosen.into_iter().flat_map(|option| &option.tasks).find_map(|task| match &task.basis {
        RateBasis::Done { section } => Some(section),
        _ => None,
    });
    match timed {
        Some(section) => note + " " + &say!(words, "paper-hours-and-pieces-timed", section = section),
        None => note,
    }
}

/// What is bought with the pieces planned, and a blank for those used.
fn pieces_used(option: &RepairOption, words: &Words) -> Vec<Value> {
    let lines = option.materials.iter().filter(|line| line.pieces + line.on_hand > 0);
    lines.map(|line| json!([line.say(words), line.pieces + line.on_hand])).collect()
}

/// How the chosen option lays its beads, if it does.
fn bead(assessment: &Assessment) -> Option<BeadLay> {
    match assessment.chosen()?.outcome {
        Outcome::Bead { lay, .. } => Some(lay),
        _ => None,
    }
}

/// A section with what is to be done in it.
fn group(assessment: &Assessment, at: usize, state: &SectionState, words: &Words) -> Value {
    let (job, figures) = (&*assessment.job, words.figures());
    let surface = &job.surfaces[state.surface];
    let section = &surface.sections[state.section];
    let here: Vec<&JointState> = assessment.worked_on().filter(|joint| joint.section == Some(at)).collect();
    // What is too narrow for a bead is told apart.
    let own = here.iter().filter(|joint| bead(assessment).is_none() || assessment.gets_bead(joint));
    let run: Length = own.clone().map(|joint| laid(assessment, joint).length()).sum();
    let typical = typical_gap(assessment, at);
    let lay = assessment.catalog.lay(&job.plan);
    let typical = typical.map(|gap| lay.slot(gap));
    let edges = JointEdges::of(&section.board);
    let design = lay.design(edges, &job.plan.bead.form());
    let laid = |slot| design.section(slot).middle_thickness();
    let depth = typical.map(laid);
    let sealant = assessment.wet_sealant(at).filter(|_| bead(assessment).is_some());
    let place = if state.is_wetted() {
        say!(words, "paper-place-wet", surface = &surface.name, section = &section.name)
    } else {
        say!(words, "paper-place", surface = &surface.name, section = &section.name)
    };
    json!({
        "number": at + 1,
        "surface": surface.name,
        "section": section.name,
        "place": place,
        "boards_down": assessment.chosen().is_some_and(handles_boards)
            .then(|| boards(assessment, state.surface, state.section, words)),
        "joints": own.count(),
        "run": figures.run(run),
        "gap": typical.map(|gap| figures.length(gap)),
        "gap_mm": typical.map(Length::to_mm),
        "depth": depth.map(|depth| figures.length(depth)),
        "depth_mm": depth.map(Length::to_mm),
        "bead": typical.zip(depth).map(|(gap, depth)| {
            let shape = say!(words, "paper-bead-shape", gap = gap, depth = depth, lay = Arg::Id(lay.key()));
            shape + " " + &words.text("paper-bead-first")
        }),
        "v_mm": section.board.profile.v_leg().to_mm(),
        "sealant": sealant.map(|volume| figures.volume(volume)),
        "sealed": bead(assessment).is_some() && !assessment.sealed_joints(at).is_empty(),
        "figure": crate::papers::figure::bead_name(at),
        "too_narrow": here.iter().filter(|joint| !assessment.gets_bead(joint)).count(),
        "boards": figures.percent(moisture_on(state, day_of_work(assessment)).to_pct(), 1),
        "wet": state.is_wetted(),
    })
}

/// Days from the visit to the day that gaps and moisture are told for: of the sealing, or on which the work starts.
fn day_of_work(assessment: &Assessment) -> usize {
    let starts = || {
        let first = assessment.chosen()?.starts;
        usize::try_from(assessment.job.visited.until(first).ok()?.get_days()).ok()
    };
    match bead(assessment) {
        Some(_) => assessment.seal_day,
        None => starts().unwrap_or_default(),
    }
}

/// The middle one of the gaps that are worked on in a section, on that day.
fn typical_gap(assessment: &Assessment, at: usize) -> Option<Length> {
    let beads = bead(assessment).is_some();
    let here = assessment.worked_on().filter(|joint| joint.section == Some(at));
    let here = here.filter(|joint| !beads || assessment.gets_bead(joint));
    let day = day_of_work(assessment);
    let gap = |joint: &JointState| match bead(assessment) {
        Some(_) => Some(joint.at_sealing),
        None => assessment.gap_on(joint, day),
    };
    let mut gaps: Vec<Length> = here.filter_map(gap).collect();
    gaps.sort_by(|a, b| a.to_m().total_cmp(&b.to_m()));
    gaps.get(gaps.len() / 2).copied()
}

/// A joint as it lies in the layout.
pub(super) fn laid<'a>(assessment: &'a Assessment, state: &JointState) -> &'a Joint {
    &assessment.layouts[state.surface].joints[state.joint]
}

fn moisture_on(state: &SectionState, day: usize) -> Moisture {
    state.motion.moisture[day.min(crate::joint::HORIZON - 1)]
}

/// The joints too narrow to seal on the day, in a sentence.
fn narrow(assessment: &Assessment, words: &Words) -> Option<String> {
    let narrowest = assessment.job.plan.narrowest;
    let sections = assessment.worked_on().filter(|joint| joint.section.is_some());
    let count = sections.filter(|joint| !assessment.gets_bead(joint)).count();
    (count > 0).then(|| say!(words, "paper-narrow-joints", count = count, narrowest = narrowest))
}

/// The sealant's class and limits, if the chosen option lays a bead.
fn sealant(assessment: &Assessment, words: &Words) -> Option<Value> {
    let (plan, figures) = (&assessment.job.plan, words.figures());
    let sealant = assessment.sealant.as_ref()?;
    let lay = bead(assessment)?;
    let percent = |share: Percent| figures.percent(share.to_pct(), 1);
    Some(json!({
        "name": words.called(&sealant.name),
        "class": words.called(&sealant.class),
        "stretch": percent(sealant.stretch),
        "squeeze": percent(sealant.squeeze),
        "cure": figures.hours(sealant.cure),
        "narrowest": figures.length(plan.narrowest),
        "v_filled": percent(plan.bead.v_filled),
        "v_open": say!(words, "paper-bead-v", share = plan.bead.v_filled),
        "shape": planned_shape(assessment, lay, words),
        "limits": say!(
            words,
            "paper-bead-limits",
            stretch = sealant.stretch,
            squeeze = sealant.squeeze,
            cure = sealant.cure
        ),
        "breaker": lay != BeadLay::OnTongue,
        "backed": (lay == BeadLay::Bridge && any_wide(assessment)).then(|| say!(words, "paper-bead-backed", least = LEAST_TAPE)),
    }))
}

/// Whether some joint that is sealed is so wide that backer goes behind the bead.
fn any_wide(assessment: &Assessment) -> bool {
    let mut sections = 0..assessment.sections.len();
    sections.any(|at| assessment.sealed_joints(at).last().is_some_and(|joint| joint.at_sealing >= LEAST_TAPE))
}

/// How the planned bead is shaped in most of the joints, and what becomes of one laid without thinking.
fn planned_shape(assessment: &Assessment, lay: BeadLay, words: &Words) -> Option<String> {
    let plan = &assessment.job.plan;
    let most = assessment.bead_designs.first()?;
    let planned = position(&assessment.catalog.sealants, &plan.sealant);
    let of = most.sealants.iter().find(|of| Some(of.sealant) == planned);
    let form = plan.bead.form();
    let shape = bead_designs::shape(lay, &form, most.edges, words);
    // What is told of the best bead holds for the planned one if that is it.
    let is_best = of.filter(|of| (of.best.lay, of.best.form) == (lay, form));
    let warning = is_best.and_then(|of| bead_designs::warning(most, of, words));
    Some([shape].into_iter().chain(warning).collect::<Vec<_>>().join(" "))
}

/// The days of the chosen option: when and who, what, hours of each.
fn workdays(option: &RepairOption, words: &Words) -> Vec<Value> {
    let day = |day: &WorkDay| {
        json!({
            "when": work::day_and_people(option.starts, day, words),
            "columns": work::day_columns(option.starts, day, words),
            "what": work::day_work(day, words),
            "hours": words.figures().number(day.paid.to_h(), 1),
        })
    };
    option.schedule.days.iter().map(day).collect()
}

/// The steps of the chosen option with their days and times.
fn steps(option: &RepairOption, words: &Words) -> Vec<Value> {
    let step = |bar: &Bar| {
        let ((day, from), (to_day, to)) = (day_and_time(bar.start), day_and_time(bar.end));
        let [start, end] = [from, to].map(|time| words.figures().time(time));
        let end = if to_day == day {
            say!(words, "paper-step-end", time = &end)
        } else {
            say!(words, "paper-step-end-later", day = Arg::Number(to_day, 0), time = &end)
        };
        json!({
            "name": bar.step.say(words),
            "waiting": bar.is_wait(),
            "day": format!("{day:.0}"),
            "from": from.strftime("%H:%M").to_string(),
            "to_day": format!("{to_day:.0}"),
            "to": to.strftime("%H:%M").to_string(),
            "start": say!(words, "paper-step-start", day = Arg::Number(day, 0), time = &start),
            "end": end,
        })
    };
    option.schedule.bars.iter().map(step).collect()
}

/// The day, from 1, and the time of day to the minute, of a time in days since the first midnight.
fn day_and_time(days: f64) -> (f64, Time) {
    let minutes = (days.max(0.0) * DAY_MINUTES).round();
    let of_day = minutes % DAY_MINUTES;
    #[expect(clippy::cast_possible_truncation, reason = "below 24 and below 60")]
    let (hour, minute) = ((of_day / 60.0).floor() as i8, (of_day % 60.0) as i8);
    ((minutes / DAY_MINUTES).floor() + 1.0, Time::new(hour, minute, 0, 0).unwrap_or(Time::midnight()))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: 2.5 days after midnight is noon of the third day; half a minute before midnight is
    /// midnight, of the day after.
    #[test]
    fn times_of_the_schedule_are_days_and_clock_times() {
        let time = |hour, minute| Time::constant(hour, minute, 0, 0);
        assert_eq!(day_and_time(2.5), (3.0, time(12, 0)));
        assert_eq!(day_and_time(8.0 / 24.0), (1.0, time(8, 0)));
        assert_eq!(day_and_time(1.0 - 0.2 / DAY_MINUTES), (2.0, time(0, 0)));
        assert_eq!(day_and_time(0.75 + 5.0 / DAY_MINUTES), (1.0, time(18, 5)));
    }
}
