//! Filling the report from a job and its assessment.

use super::super::Assessment;
use super::super::answer::{date_after, window_words};
use super::super::causes::{ClueWords, Diagnosis};
use super::super::follow_up::{LaterReading, VisitOutcome};
use super::super::options::RepairOption;
use super::{
    BarReport, CauseReport, CausesReport, ChoiceReport, ClueReport, CostReport, CutReport, LayoutReport,
    MaterialReport, OpeningReport, OptionReport, PriceReport, ProblemReport, ReadingReport, Report,
    SeasonReport, SectionReport, SwingReport, TaskReport, VisitReport,
};
use crate::cause::Cause;
use crate::job::{Job, Problem};
use crate::measure::{Length, Moisture, Money, Units};
use crate::repair::{CutPattern, CuttingList, PriceLine};

/// Rounds for print: a report has no more digits than the figures deserve.
pub(in crate::assess) fn round(value: f64, decimals: i32) -> f64 {
    let scale = 10_f64.powi(decimals);
    let rounded = (value * scale).round() / scale;
    if rounded == 0.0 { 0.0 } else { rounded }
}

pub(in crate::assess) fn mm(length: Length) -> f64 {
    round(length.to_mm(), 3)
}

pub(in crate::assess) fn pct(moisture: Moisture) -> f64 {
    round(moisture.to_pct(), 2)
}

fn amount(money: Money) -> String {
    money.show("").replace(',', "").replace('−', "-")
}

impl Report {
    /// The report on `assessment`, which is the assessment of `job`. `unread` is what could not be read of
    /// its file.
    pub fn new(assessment: &Assessment, unread: &[Problem]) -> Self {
        let job = &*assessment.job;
        let words = crate::words::Words::us_english(job.units, &job.plan.prices.currency);
        let problem = |problem: &Problem| ProblemReport {
            severity: problem.severity.key(),
            place: problem.place(job, &words),
            what: problem.what(&words),
            fix: problem.fix(&words),
        };
        Self {
            title: job.title.clone(),
            visited: job.visited.to_string(),
            answer: assessment.answer.headline.clone(),
            cause: assessment.answer.cause.clone(),
            complete: assessment.answer.complete,
            missing: assessment.answer.missing.iter().map(ToString::to_string).collect(),
            problems: unread.iter().chain(&assessment.problems).map(problem).collect(),
            layout: LayoutReport::new(assessment),
            opening: OpeningReport::new(assessment),
            causes: assessment.causes.as_ref().map(CausesReport::new),
            sections: (0..assessment.sections.len()).map(|at| SectionReport::new(assessment, at)).collect(),
            season: assessment.season.as_ref().map(|season| SeasonReport {
                best: window_words(job, season.best, season.weeks.len()),
                best_from: date_after(job, season.best.low * 7).to_string(),
                best_to: date_after(job, season.best.high * 7 + 6).to_string(),
                sealed_on: date_after(job, assessment.seal_day).to_string(),
                best_holds_pct: round(100.0 * season.share(season.best_week()), 1),
                never_m: round(season.never.to_m(), 3),
            }),
            options: assessment.options.iter().map(|option| OptionReport::new(job, option)).collect(),
            later: assessment.follow_up.iter().map(VisitReport::new).collect(),
            choice: assessment.choice.as_ref().map(|choice| ChoiceReport {
                best: choice.best.key(),
                front: choice.front.iter().map(|method| method.key()).collect(),
                why: choice.why.clone(),
                changes: choice.changes.clone(),
            }),
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
    fn new(causes: &Diagnosis) -> Self {
        let one =
            |cause: Cause| CauseReport { cause: cause.key(), chance_pct: round(100.0 * causes.of(cause), 1) };
        let clue = |clue: &ClueWords| ClueReport {
            seen: clue.seen.clone(),
            argues_for: clue.argues_for.map(|(cause, _)| cause.key()),
            odds_times: clue.argues_for.map(|(_, factor)| round(factor, 2)),
            argues_against: clue.argues_against.map(|(cause, _)| cause.key()),
            odds_divided_by: clue.argues_against.map(|(_, factor)| round(factor, 2)),
        };
        Self {
            main: causes.main().0.key(),
            odds: Cause::ALL.into_iter().map(one).collect(),
            clues: causes.clues.iter().map(clue).collect(),
            settling: causes.most_informative_reading.as_ref().map(|(words, _)| words.clone()),
        }
    }
}

impl SectionReport {
    fn new(assessment: &Assessment, at: usize) -> Self {
        let job = &*assessment.job;
        let (state, row) = (&assessment.sections[at], assessment.rows[at]);
        let surface = &job.surfaces[state.surface];
        let (driest, wettest) = state.settled.extremes();
        let (damp, dry) = state.look_again();
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
            installed_words: state.origin_words.clone(),
            closes_by_itself_pct: round(100.0 * state.closes_by_itself(), 1),
            narrowest_gap_mm: mm(state.year_gap.0),
            widest_gap_mm: mm(state.year_gap.1),
            narrowest_on: on(state.narrowest_day),
            look_again_damp: on(damp),
            look_again_dry: on(dry),
            torn_again_pct: row.map(|row| round(row.torn.to_pct(), 1)),
            torn_again_sd_pct: row.map(|row| round(row.torn_sd.to_pct(), 1)),
            torn_widest_mm: row.map(|row| mm(row.widest)),
            target_pct: pct(state.before_install.target.moisture),
            target_low_pct: state.before_install.target.allowed.map(|allowed| pct(allowed.low)),
            target_high_pct: state.before_install.target.allowed.map(|allowed| pct(allowed.high)),
            leave_mm: mm(state.before_install.target.gap),
            acclimation_days: state.before_install.acclimation,
        }
    }
}

impl VisitReport {
    fn new(assessment: &VisitOutcome) -> Self {
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
            on: assessment.on.to_string(),
            after_work: assessment.after_work,
            words: assessment.words.clone(),
            readings: assessment.readings.iter().map(one).collect(),
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

impl OptionReport {
    fn new(job: &Job, option: &RepairOption) -> Self {
        let price = &option.price;
        let risk = option.callback.as_ref();
        let percent = |share: f64| round(100.0 * share, 2);
        Self {
            method: option.method.key(),
            name: option.name.clone(),
            chosen: option.method == job.plan.chosen,
            not_possible: option.not_possible.clone(),
            labour_hours: round(option.hours.to_h(), 2),
            crew_days: option.schedule.crew_days,
            calendar_days: option.schedule.calendar_days,
            room_out_days: option.schedule.room_out,
            holds_pct: option.holds.map(|share| round(100.0 * share, 1)),
            opens_to_mm: mm(option.opens_to),
            callback_pct: risk.map(|risk| percent(risk.chance)),
            callback_low_pct: risk.map(|risk| percent(risk.interval.low)),
            callback_high_pct: risk.map(|risk| percent(risk.interval.high)),
            callback_converged_pct: risk.map(|r| [percent(r.converged[0]), percent(r.converged[1])]),
            opens_again_m: risk.map(|risk| round(risk.opens.to_m(), 2)),
            expected_cost: option.expected.map(amount),
            look: option.look.clone(),
            price: PriceReport {
                currency: job.plan.prices.currency.clone(),
                wage: amount(job.plan.prices.labor),
                labour_rate: amount(job.plan.prices.hour()),
                labour: amount(price.of(PriceLine::Labour)),
                materials: amount(price.of(PriceLine::Materials)),
                equipment: amount(price.of(PriceLine::Equipment)),
                overhead: amount(price.of(PriceLine::Overhead)),
                contingency: amount(price.of(PriceLine::Contingency)),
                profit: amount(price.of(PriceLine::Profit)),
                minimum: amount(price.of(PriceLine::Minimum)),
                tax: amount(price.of(PriceLine::Tax)),
                rounding: amount(price.of(PriceLine::Rounding)),
                total: amount(price.total),
                margin_pct: round(price.margin.to_pct(), 2),
                deposit: amount(price.deposit),
                total_low: amount(price.spread.low),
                total_high: amount(price.spread.high),
                contractor: amount(price.contractor),
                supplier: amount(price.supplier),
                owner: amount(price.owner),
            },
            tasks: option
                .tasks
                .iter()
                .map(|task| TaskReport {
                    task: task.id.clone(),
                    name: task.name.clone(),
                    hours: round(task.hours.mean.to_h(), 3),
                    hours_sd: round(task.hours.sd.to_h(), 3),
                    basis: task.basis.clone(),
                })
                .collect(),
            materials: option
                .materials
                .iter()
                .map(|line| MaterialReport {
                    name: line.label(Units::Millimeters),
                    pieces: line.pieces,
                    price: amount(line.price),
                    amount: amount(line.amount),
                })
                .collect(),
            cost_percentiles: CostReport {
                p10: amount(option.cost.at(0.1)),
                p50: amount(option.cost.at(0.5)),
                p80: amount(option.cost.at(0.8)),
                p90: amount(option.cost.at(0.9)),
            },
            swings: option
                .cost
                .swings
                .iter()
                .map(|(of, swing)| SwingReport { of: of.clone(), swing: amount(*swing) })
                .collect(),
            schedule: option
                .schedule
                .bars
                .iter()
                .map(|bar| BarReport {
                    step: bar.name.clone(),
                    waiting: bar.waiting,
                    start_days: round(bar.start, 3),
                    end_days: round(bar.end, 3),
                })
                .collect(),
            cutting: option.cutting.iter().flat_map(|list| cuts(job, list)).collect(),
        }
    }
}
