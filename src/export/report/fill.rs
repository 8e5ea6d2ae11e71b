//! Filling the report from a job and its assessment.

use jiff::ToSpan as _;

use super::{
    BarReport, BeliefReport, CauseReport, CausesReport, ChoiceReport, ClueReport, CostReport, CutReport,
    DayReport, JointBeadsReport, LayoutReport, MarkReport, MaterialReport, NextInstallReport, OpeningReport,
    OptionReport, PriceReport, ProblemReport, PromiseReport, ProposalReport, ReadingReport, Report,
    SeasonReport, SectionReport, SwingReport, TaskReport, TypicalJointReport, VerdictReport, VisitReport,
};
use crate::assess::{
    Assessment, ClueFinding, Diagnosis, InformativeReading, LaterReading, MissingEntry, RepairOption,
    SealTime, SectionState, VisitOutcome, date_after,
};
use crate::belief::{Belief, Cause};
use crate::job::{Job, Problem};
use crate::measure::{Length, Moisture, Money};
use crate::repair::{CutPattern, CuttingList, Price, PriceLine, Trade, WorkDay};
use crate::words::{Say as _, Words, answer, causes as cause_words, options as option_words};

/// The format of the report.
const FORMAT: u32 = 4;

/// Rounds for print: a report has no more digits than the figures deserve.
pub(in crate::export) fn round(value: f64, decimals: i32) -> f64 {
    let scale = 10_f64.powi(decimals);
    let rounded = (value * scale).round() / scale;
    if rounded == 0.0 { 0.0 } else { rounded }
}

pub(in crate::export) fn mm(length: Length) -> f64 {
    round(length.to_mm(), 3)
}

pub(in crate::export) fn pct(moisture: Moisture) -> f64 {
    round(moisture.to_pct(), 2)
}

/// An amount without a currency: `1234.50`.
pub(in crate::export) fn plain(money: Money) -> String {
    money.plain()
}

impl Report {
    /// The report on an assessment. `unread` is what could not be read of the job's file.
    pub fn new(assessment: &Assessment, unread: &[Problem]) -> Self {
        let job = &*assessment.job;
        let words = &Words::of_job(&assessment.job);
        let problem = |problem: &Problem| ProblemReport {
            severity: problem.severity.key(),
            place: problem.place(job, words),
            what: problem.what(words),
            fix: problem.fix(words),
        };
        Self {
            format: FORMAT,
            version: env!("CARGO_PKG_VERSION"),
            title: job.title.clone(),
            visited: job.visited.to_string(),
            verdict: VerdictReport::new(assessment, words),
            answer: answer::headline(assessment, words),
            cause: answer::cause(assessment, words),
            complete: assessment.answer.is_complete(),
            missing: missing(assessment, words),
            problems: unread.iter().chain(&assessment.problems).map(problem).collect(),
            layout: LayoutReport::new(assessment),
            opening: OpeningReport::new(assessment),
            causes: assessment.causes.as_ref().map(|causes| CausesReport::new(assessment, causes, words)),
            belief: assessment.belief.as_deref().map(BeliefReport::new),
            sections: (0..assessment.sections.len())
                .map(|at| SectionReport::new(assessment, at, words))
                .collect(),
            typical_joint: TypicalJointReport::new(assessment),
            bead_designs: assessment
                .bead_designs
                .iter()
                .map(|beads| JointBeadsReport::new(assessment, beads))
                .collect(),
            season: assessment.season.as_ref().map(|season| SeasonReport {
                best: SealTime::best(job, season).say(words),
                best_from: date_after(job, season.best.low * 7).to_string(),
                best_to: date_after(job, season.best.high * 7 + 6).to_string(),
                sealed_on: date_after(job, assessment.seal_day).to_string(),
                best_holds_pct: round(100.0 * season.share(season.best_week()), 1),
                never_m: round(season.never.to_m(), 3),
            }),
            options: assessment.options.iter().map(|option| OptionReport::new(job, option, words)).collect(),
            promise: assessment.job.promise.as_ref().map(PromiseReport::new),
            later: assessment.follow_up.iter().map(|visit| VisitReport::new(visit, words)).collect(),
            next_install: NextInstallReport::new(assessment),
            proposal: ProposalReport::new(assessment),
            choice: assessment.choice.as_ref().map(|choice| ChoiceReport {
                best: choice.best.key(),
                front: choice.front.iter().map(|method| method.key()).collect(),
                why: option_words::best(assessment, choice, words),
                changes: option_words::changes(assessment, choice, words),
            }),
        }
    }
}

/// How sure it is that a section's boards were above each mark.
fn over_marks(assessment: &Assessment, state: &SectionState) -> Vec<MarkReport> {
    let marks = assessment.catalog.marks.iter().zip(&state.over_marks);
    marks
        .map(|(mark, chance)| MarkReport {
            mark: mark.name.clone(),
            allows_pct: pct(mark.most),
            chance_pct: round(100.0 * chance, 1),
        })
        .collect()
}

/// What is missing, an order each.
fn missing(assessment: &Assessment, words: &Words) -> Vec<String> {
    let entries = assessment.answer.missing.iter();
    entries.map(|entry| answer::missing(assessment, *entry, words)).collect()
}

/// The reading that would settle the cause.
fn settling(assessment: &Assessment, reading: InformativeReading, words: &Words) -> String {
    answer::missing(assessment, MissingEntry::ForTheCause(reading), words)
}

impl BeliefReport {
    fn new(belief: &Belief) -> Self {
        Self {
            worlds_tried: belief.tried,
            effective_worlds: round(belief.effective, 0),
            meter_offset_pct: pct(belief.meter_offset.mean),
            meter_offset_sd_pct: pct(belief.meter_offset.sd),
            conflicts: belief.conflicts.len(),
        }
    }
}

impl LayoutReport {
    fn new(assessment: &Assessment) -> Self {
        use crate::surface::JointKind;
        let joints = || assessment.layouts.iter().flat_map(|laid| &laid.joints);
        let run =
            |kind: JointKind| round(joints().filter(|j| j.kind == kind).map(|j| j.length().to_m()).sum(), 6);
        let sum = |area: fn(&crate::surface::SurfaceLayout) -> f64| {
            round(assessment.layouts.iter().map(area).sum(), 6)
        };
        Self {
            boards: assessment.layouts.iter().map(|laid| laid.boards.len()).sum(),
            joints: joints().count(),
            plan_area_m2: sum(|laid| laid.plan_area.to_m2()),
            painted_area_m2: sum(|laid| laid.painted_area.to_m2()),
            board_edge_m: run(JointKind::BoardEdge),
            board_end_m: run(JointKind::BoardEnd),
            divider_m: run(JointKind::Divider),
            perimeter_m: run(JointKind::Perimeter),
            sealed_m: round(assessment.treated_run().to_m(), 6),
        }
    }
}

impl OpeningReport {
    fn new(assessment: &Assessment) -> Option<Self> {
        let job = &*assessment.job;
        let opening = assessment.gaps.opening?;
        let next = assessment.gaps.next;
        Some(Self {
            opening_m2: round(opening.mean.to_m2(), 6),
            opening_sd_m2: round(opening.sd.to_m2(), 6),
            next_surface: next.map(|next| job.surfaces[next.surface].name.clone()),
            next_joint: next.map(|next| assessment.layouts[next.surface].joints[next.joint].label.clone()),
            more_readings: next.map_or(Some(0), |next| next.more),
        })
    }
}

impl CausesReport {
    fn new(assessment: &Assessment, causes: &Diagnosis, words: &Words) -> Self {
        let one =
            |cause: Cause| CauseReport { cause: cause.key(), chance_pct: round(100.0 * causes.of(cause), 1) };
        let clue = |clue: &ClueFinding| ClueReport {
            seen: clue.evidence.say(words),
            argues_for: clue.argues_for.map(|(cause, _)| cause.key()),
            odds_times: clue.argues_for.map(|(_, factor)| round(factor, 2)),
            argues_against: clue.argues_against.map(|(cause, _)| cause.key()),
            odds_divided_by: clue.argues_against.map(|(_, factor)| round(factor, 2)),
        };
        Self {
            main: causes.main().0.key(),
            odds: Cause::ALL.into_iter().map(one).collect(),
            clues: causes.clues.iter().map(clue).collect(),
            settling: causes.most_informative.map(|reading| settling(assessment, reading, words)),
        }
    }
}

impl SectionReport {
    fn new(assessment: &Assessment, at: usize, words: &Words) -> Self {
        let job = &*assessment.job;
        let (state, row) = (&assessment.sections[at], assessment.rows[at]);
        let surface = &job.surfaces[state.surface];
        let (driest, wettest) = state.settled.extremes();
        let (damp, dry) = state.look_again(assessment.look_again_from());
        let on = |day| date_after(job, day).to_string();
        Self {
            surface: surface.name.clone(),
            section: surface.sections[state.section].name.clone(),
            gaps_measured: state.gaps.measured,
            mean_gap_mm: mm(state.gaps.mean),
            mean_gap_error_mm: mm(state.gaps.error_of_mean),
            moisture_now_pct: pct(state.now.moisture.mean),
            moisture_now_sd_pct: pct(state.now.moisture.sd),
            settled_mean_pct: pct(state.settled.mean()),
            settled_driest_pct: pct(driest),
            settled_wettest_pct: pct(wettest),
            expected_now_pct: pct(state.expected_now),
            settles_in_days: state.settled.days_to_settle(),
            lag_days: state.settled.lag().map(|days| round(days, 1)),
            installed_at_pct: state.origin.map(|o| pct(o.moisture)),
            installed_at_low_pct: state.origin.map(|o| pct(o.interval.low)),
            installed_at_high_pct: state.origin.map(|o| pct(o.interval.high)),
            installed_words: state.against_marks.map_or_else(String::new, |against| {
                cause_words::marks(against, &assessment.catalog.marks, words)
            }),
            over_marks: over_marks(assessment, state),
            closes_by_itself_pct: round(100.0 * state.closes_by_itself(), 1),
            narrowest_gap_mm: mm(state.year_gap.0),
            widest_gap_mm: mm(state.year_gap.1),
            narrowest_on: on(state.narrowest_day),
            look_again_damp: on(damp),
            look_again_dry: on(dry),
            torn_again_pct: row.map(|row| round(row.torn.to_pct(), 1)),
            torn_again_sd_pct: row.map(|row| round(row.torn_sd.to_pct(), 1)),
            torn_widest_mm: row.map(|row| mm(row.widest)),
        }
    }
}

impl VisitReport {
    fn new(visit: &VisitOutcome, words: &Words) -> Self {
        let one = |reading: &LaterReading| ReadingReport {
            joint: format!("{} {}", reading.surface, reading.joint),
            measured_mm: mm(reading.width),
            forecast_mm: reading.forecast.map(|(expected, _)| mm(expected)),
            forecast_low_mm: reading.forecast.map(|(_, band)| mm(band.low)),
            forecast_high_mm: reading.forecast.map(|(_, band)| mm(band.high)),
            inside: reading.inside(),
            opens_pct: reading.chance.map(|chance| round(100.0 * chance, 2)),
        };
        Self {
            on: visit.on.to_string(),
            after_work: visit.after_work,
            words: visit.verdict.say(words),
            readings: visit.readings.iter().map(one).collect(),
        }
    }
}

/// The patterns of a cutting list.
fn cuts(job: &Job, list: &CuttingList) -> Vec<CutReport> {
    let one = |cut: &CutPattern| CutReport {
        stock_m: round(job.plan.stock.lengths.get(cut.stock).map_or(0.0, |length| length.to_m()), 3),
        boards: cut.times,
        cut_m: cut.pieces.iter().flat_map(|&(length, count)| vec![round(length, 3); count]).collect(),
        offcut_m: round(cut.offcut, 3),
    };
    list.patterns.iter().map(one).collect()
}

impl DayReport {
    fn new(option: &RepairOption, day: &WorkDay) -> Self {
        let date = option.starts.checked_add(i64::from(day.day).days()).unwrap_or(option.starts);
        Self {
            on: date.to_string(),
            people: day.people,
            from_hours: round(day.from, 2),
            to_hours: round(day.to, 2),
            paid_hours: round(day.paid.to_h(), 2),
            standby_hours: round(day.standby.to_h(), 2),
        }
    }
}

impl PriceReport {
    fn new(job: &Job, price: &Price) -> Self {
        Self {
            currency: job.plan.prices.currency.clone(),
            charging: job.plan.prices.charging.key(),
            wage: plain(job.plan.prices.labor),
            carpenter_wage: plain(job.plan.prices.carpenter),
            labour_rate: plain(job.plan.prices.hour(Trade::Painter)),
            carpenter_rate: plain(job.plan.prices.hour(Trade::Carpenter)),
            labour: plain(price.of(PriceLine::Labor)),
            materials: plain(price.of(PriceLine::Materials)),
            equipment: plain(price.of(PriceLine::Equipment)),
            overhead: plain(price.of(PriceLine::Overhead)),
            contingency: plain(price.of(PriceLine::Contingency)),
            profit: plain(price.of(PriceLine::Profit)),
            callbacks: plain(price.of(PriceLine::Callbacks)),
            minimum: plain(price.of(PriceLine::Minimum)),
            tax: plain(price.of(PriceLine::Tax)),
            rounding: plain(price.of(PriceLine::Rounding)),
            total: plain(price.total),
            margin_pct: round(price.margin.to_pct(), 2),
            deposit: plain(price.deposit),
            total_low: plain(price.spread.low),
            total_high: plain(price.spread.high),
            contractor: plain(price.contractor),
            supplier: plain(price.supplier),
            owner: plain(price.owner),
        }
    }
}

impl OptionReport {
    fn new(job: &Job, option: &RepairOption, words: &Words) -> Self {
        let risk = option.callback.as_ref();
        let percent = |share: f64| round(100.0 * share, 2);
        Self {
            method: option.method.key(),
            name: option.name.clone(),
            chosen: option.method == job.plan.chosen,
            not_possible: option.not_possible.map(|reason| reason.say(words)),
            labour_hours: round(option.hours.to_h(), 2),
            crew_days: option.schedule.crew_days,
            person_days: option.schedule.person_days,
            standby_hours: round(option.schedule.standby.to_h(), 2),
            days: option.schedule.days.iter().map(|day| DayReport::new(option, day)).collect(),
            calendar_days: option.schedule.calendar_days,
            room_out_days: option.schedule.room_out,
            holds_pct: option.holds.map(|share| round(100.0 * share, 1)),
            opens_to_mm: mm(option.opens_to),
            callback_pct: risk.map(|risk| percent(risk.chance)),
            callback_low_pct: risk.map(|risk| percent(risk.interval.low)),
            callback_high_pct: risk.map(|risk| percent(risk.interval.high)),
            callback_without_paint_pct: risk.map(|risk| percent(risk.without_paint)),
            callback_without_paint_low_pct: risk.map(|risk| percent(risk.without_paint_interval.low)),
            callback_without_paint_high_pct: risk.map(|risk| percent(risk.without_paint_interval.high)),
            callback_tears_hidden_pct: option.tears.map(|tears| percent(tears.low)),
            callback_tears_show_pct: option.tears.map(|tears| percent(tears.high)),
            callback_converged_pct: risk.map(|r| [percent(r.converged[0]), percent(r.converged[1])]),
            opens_again_m: risk.map(|risk| round(risk.opens.to_m(), 2)),
            expected_cost: option.expected.map(plain),
            look: words.called(&option.look).into_owned(),
            price: option.price.as_ref().map(|price| PriceReport::new(job, price)),
            tasks: option
                .tasks
                .iter()
                .map(|task| TaskReport {
                    task: task.id.clone(),
                    name: task.name.clone(),
                    hours: round(task.hours.mean.to_h(), 3),
                    hours_sd: round(task.hours.sd.to_h(), 3),
                    basis: task.basis.say(words),
                })
                .collect(),
            materials: option
                .materials
                .iter()
                .map(|line| MaterialReport {
                    name: line.say(words),
                    pieces: line.pieces,
                    price: plain(line.price),
                    amount: plain(line.amount),
                })
                .collect(),
            cost_percentiles: CostReport {
                p10: plain(option.cost.at(0.1)),
                p50: plain(option.cost.at(0.5)),
                p80: plain(option.cost.at(0.8)),
                p90: plain(option.cost.at(0.9)),
            },
            swings: option
                .cost
                .drivers
                .iter()
                .map(|(driver, swing)| SwingReport { of: driver.say(words), swing: plain(*swing) })
                .collect(),
            schedule: option
                .schedule
                .bars
                .iter()
                .map(|bar| BarReport {
                    step: bar.step.say(words),
                    waiting: bar.is_wait(),
                    start_days: round(bar.start, 3),
                    end_days: round(bar.end, 3),
                })
                .collect(),
            cutting: option.cutting.iter().flat_map(|list| cuts(job, list)).collect(),
        }
    }
}
