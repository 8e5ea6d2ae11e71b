//! Joints and year as tables for other programs: CSV with units in the column names.

use std::borrow::Cow;

use serde::Serialize;

use super::report::{mm, pct, plain, round};
use crate::assess::{Assessment, JointState, date_after, visit_day};
use crate::surface::JointKind;
use crate::words::{Say as _, Words, work};

/// Text that somebody typed, so that a spreadsheet takes it for text: what begins like a formula gets an apostrophe.
/// Some take wide forms of the signs for formulas, too.
pub fn plain_text(typed: &str) -> Cow<'_, str> {
    if typed.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']) {
        Cow::Owned(format!("'{typed}"))
    } else {
        Cow::Borrowed(typed)
    }
}

#[derive(Serialize)]
struct JointRow<'a> {
    surface: Cow<'a, str>,
    section: Cow<'a, str>,
    joint: Cow<'a, str>,
    kind: &'static str,
    length_mm: f64,
    gap_mm: Option<f64>,
    gap_sd_mm: Option<f64>,
    measured: bool,
    narrowest_mm: Option<f64>,
    widest_mm: Option<f64>,
    sealed: bool,
    gap_at_sealing_mm: f64,
    stretch_pct: Option<f64>,
    squeeze_pct: Option<f64>,
    shear_pct: Option<f64>,
    holds: bool,
}

impl<'a> JointRow<'a> {
    fn new(assessment: &'a Assessment, state: &JointState) -> Self {
        let job = &*assessment.job;
        let joint = &assessment.layouts[state.surface].joints[state.joint];
        let surface = &job.surfaces[state.surface];
        Self {
            surface: plain_text(&surface.name),
            section: plain_text(&surface.sections[joint.section].name),
            joint: plain_text(&joint.label),
            kind: kind(joint.kind),
            length_mm: mm(joint.length()),
            gap_mm: state.gap.map(|g| mm(g.gap.mean)),
            gap_sd_mm: state.gap.map(|g| mm(g.gap.sd)),
            measured: state.gap.is_some_and(|g| g.measured),
            narrowest_mm: state.extremes.map(|(low, _)| mm(low)),
            widest_mm: state.extremes.map(|(_, high)| mm(high)),
            sealed: state.treated,
            gap_at_sealing_mm: mm(state.at_sealing),
            stretch_pct: state.demand.map(|d| round(d.stretch.to_pct(), 1)),
            squeeze_pct: state.demand.map(|d| round(d.squeeze.to_pct(), 1)),
            shear_pct: state.demand.map(|d| round(d.shear.to_pct(), 1)),
            holds: state.holds,
        }
    }
}

/// The kind of a joint as the table has it: a key, although it reads like words.
const fn kind(kind: JointKind) -> &'static str {
    match kind {
        JointKind::BoardEdge => "board to board",
        JointKind::BoardEnd => "board end",
        JointKind::Divider => "board to divider",
        JointKind::Perimeter => "perimeter",
    }
}

/// The joints as CSV, a line each, with a header line.
///
/// # Errors
/// If a row cannot be written, which writing to memory does not bring about.
pub fn joints_csv(assessment: &Assessment) -> Result<String, csv::Error> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    for state in &assessment.joints {
        writer.serialize(JointRow::new(assessment, state))?;
    }
    finish(writer)
}

/// The year from the visit on as CSV, a line a day: the room's air and, for each section, the
/// boards' moisture and the mean gap, with the range that holds it nine times in ten.
///
/// # Errors
/// If a row cannot be written, which writing to memory does not bring about.
pub fn year_csv(assessment: &Assessment) -> Result<String, csv::Error> {
    let job = &assessment.job;
    let mut writer = csv::Writer::from_writer(Vec::new());
    let mut header: Vec<String> =
        ["date", "indoor_c", "indoor_rh_pct", "emc_pct"].map(str::to_owned).to_vec();
    for state in &assessment.sections {
        let surface = &job.surfaces[state.surface];
        let name = format!("{}/{}", surface.name, surface.sections[state.section].name);
        header.push(format!("{name} moisture_pct"));
        header.push(format!("{name} mean_gap_mm"));
        header.push(format!("{name} gap_low_mm"));
        header.push(format!("{name} gap_high_mm"));
    }
    writer.write_record(header.iter().map(|name| plain_text(name).into_owned()))?;
    let Some(year) = &assessment.year else { return finish(writer) };
    let visit = usize::try_from(visit_day(job)).unwrap_or(0);
    for day in 0..year.days.len() {
        let air = &year.days[(visit + day) % year.days.len()];
        let mut row = vec![
            date_after(job, day).to_string(),
            round(air.temperature.to_celsius(), 2).to_string(),
            round(air.humidity.to_pct(), 2).to_string(),
            pct(air.emc()).to_string(),
        ];
        for state in &assessment.sections {
            row.push(pct(state.motion.moisture[day]).to_string());
            row.push(mm(state.mean_gap_on(day)).to_string());
            let band = state.mean_gap_band(day);
            row.extend([band.low, band.high].map(|gap| mm(gap).to_string()));
        }
        writer.write_record(&row)?;
    }
    finish(writer)
}

fn finish(writer: csv::Writer<Vec<u8>>) -> Result<String, csv::Error> {
    let bytes = writer.into_inner().map_err(|error| csv::Error::from(error.into_error()))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

/// The tasks of the chosen option as CSV.
///
/// # Errors
/// If the table cannot be written.
pub fn tasks_csv(assessment: &Assessment) -> Result<String, csv::Error> {
    let words = Words::of_job(&assessment.job);
    let mut table = csv::Writer::from_writer(vec![]);
    table.write_record([
        "task",
        "name",
        "batches",
        "minutes_low",
        "minutes_likely",
        "minutes_high",
        "minutes_besides",
        "hours",
        "hours_sd",
        "basis",
    ])?;
    for task in assessment.chosen().iter().flat_map(|option| &option.tasks) {
        let minutes = task.minutes;
        let numbers = [
            task.batches,
            minutes.low,
            minutes.likely,
            minutes.high,
            task.besides.minutes(),
            task.hours.mean.to_h(),
            task.hours.sd.to_h(),
        ];
        let numbers = numbers.map(|number| round(number, 3).to_string());
        let names = [&task.id, &task.name].map(|name| plain_text(name).into_owned()).into_iter();
        table.write_record(names.chain(numbers).chain([work::basis(task, &words)]))?;
    }
    finish(table)
}

/// The buying list of the chosen option as CSV, amounts in the job's currency.
///
/// # Errors
/// If the table cannot be written.
pub fn materials_csv(assessment: &Assessment) -> Result<String, csv::Error> {
    let (job, words) = (&assessment.job, Words::of_job(&assessment.job));
    let mut table = csv::Writer::from_writer(vec![]);
    table.write_record(["name", "pieces", "on_hand", "price", "amount", "currency", "basis"])?;
    for line in assessment.chosen().iter().flat_map(|option| &option.materials) {
        table.write_record([
            plain_text(&line.say(&words)).into_owned(),
            line.pieces.to_string(),
            line.on_hand.to_string(),
            plain(line.price),
            plain(line.amount),
            job.plan.prices.currency.clone(),
            line.basis.say(&words),
        ])?;
    }
    finish(table)
}
