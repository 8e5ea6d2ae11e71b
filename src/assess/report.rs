//! The assessment for other programs: JSON with units in the key names.
//!
//! Keys are stable: new ones may be added, none changes its meaning. The README lists them.

use serde::Serialize;

use super::Assessment;
use super::answer::{date_after, window_words};
use super::causes::{ClueWords, Findings};
use super::follow_up::{LaterReading, VisitFound};
use super::options::RepairOption;
use crate::cause::Cause;
use crate::job::{Job, Problem};
use crate::measure::{Length, Moisture, Money, Units};
use crate::repair::{CutPattern, CuttingList, PriceLine};

/// The whole assessment as `gapwright assess JOB --json` prints it.
#[derive(Debug, Clone, Serialize)]
pub struct Report {
    /// Title of the job.
    pub title: String,
    /// Day of the visit.
    pub visited: String,
    /// The answer in one or two sentences.
    pub answer: String,
    /// Why it happened, in a sentence.
    pub cause: String,
    /// Whether there is an answer at all.
    pub complete: bool,
    /// What to enter or measure next.
    pub missing: Vec<String>,
    /// What is wrong with the entries.
    pub problems: Vec<ProblemReport>,
    /// Totals of the layout.
    pub layout: LayoutReport,
    /// What the readings say of all joints.
    pub opening: Option<OpeningReport>,
    /// Why they opened.
    pub causes: Option<CausesReport>,
    /// One for each section.
    pub sections: Vec<SectionReport>,
    /// The weeks to seal in.
    pub season: Option<SeasonReport>,
    /// The ways to mend it.
    pub options: Vec<OptionReport>,
    /// Which costs least with callbacks, and what would change that.
    pub choice: Option<ChoiceReport>,
    /// Later visits, held against what was forecast.
    pub later: Vec<VisitReport>,
}

/// Which way costs least.
#[derive(Debug, Clone, Serialize)]
pub struct ChoiceReport {
    /// Its key.
    pub best: String,
    /// Keys of the ways that no other beats in both price and chance, cheapest first.
    pub front: Vec<String>,
    /// Which and why.
    pub why: String,
    /// What would change it.
    pub changes: Vec<String>,
}

/// One thing wrong with the entries.
#[derive(Debug, Clone, Serialize)]
pub struct ProblemReport {
    /// `error`, `warning` or `note`.
    pub severity: &'static str,
    /// Where.
    pub place: String,
    /// The value and the rule it breaks.
    pub what: String,
    /// The way out.
    pub fix: String,
}

/// Totals of the layout.
#[derive(Debug, Clone, Serialize)]
pub struct LayoutReport {
    /// Number of boards and pieces of board.
    pub boards: usize,
    /// Number of joints.
    pub joints: usize,
    /// Plan area of all surfaces less openings.
    pub plan_area_m2: f64,
    /// Face to paint, grooves included.
    pub painted_area_m2: f64,
    /// Length of joint between boards' long edges.
    pub board_edge_m: f64,
    /// Length of joint at board ends.
    pub board_end_m: f64,
    /// Length of joint along dividers.
    pub divider_m: f64,
    /// Length of joint along trim, walls and openings.
    pub perimeter_m: f64,
    /// Length of joint to be sealed again.
    pub sealed_m: f64,
}

/// All board-to-board joints together.
#[derive(Debug, Clone, Serialize)]
pub struct OpeningReport {
    /// Gap times length.
    pub opening_m2: f64,
    /// Standard deviation of that.
    pub opening_sd_m2: f64,
    /// Surface of the joint to measure next.
    pub next_surface: Option<String>,
    /// Label of that joint.
    pub next_joint: Option<String>,
    /// How many more readings reach the precision asked for.
    pub more_readings: Option<usize>,
}

/// Why the joints opened.
#[derive(Debug, Clone, Serialize)]
pub struct CausesReport {
    /// The cause the likeliest account is called by.
    pub main: &'static str,
    /// Chance that each cause plays a part.
    pub odds: Vec<CauseReport>,
    /// What argues for which.
    pub clues: Vec<ClueReport>,
    /// The reading that would settle most.
    pub settling: Option<String>,
}

/// The odds of one cause.
#[derive(Debug, Clone, Serialize)]
pub struct CauseReport {
    /// Its key.
    pub cause: &'static str,
    /// Chance that it plays a part.
    pub chance_pct: f64,
}

/// One clue.
#[derive(Debug, Clone, Serialize)]
pub struct ClueReport {
    /// What was seen.
    pub seen: String,
    /// Key of the cause it argues for most.
    pub argues_for: Option<&'static str>,
    /// The factor by which it raises that cause's odds.
    pub odds_times: Option<f64>,
    /// Key of the cause it argues against most.
    pub argues_against: Option<&'static str>,
    /// The factor by which it lowers that cause's odds.
    pub odds_divided_by: Option<f64>,
}

/// One section.
#[derive(Debug, Clone, Serialize)]
pub struct SectionReport {
    /// Name of its surface.
    pub surface: String,
    /// Its name.
    pub section: String,
    /// Joints between boards that were measured.
    pub gaps_measured: usize,
    /// Mean gap.
    pub mean_gap_mm: f64,
    /// Standard error of that mean.
    pub mean_gap_error_mm: f64,
    /// Moisture now.
    pub moisture_now_pct: f64,
    /// Standard deviation of that.
    pub moisture_now_sd_pct: f64,
    /// Mean moisture once settled.
    pub settled_mean_pct: f64,
    /// Driest of the settled year.
    pub settled_driest_pct: f64,
    /// Wettest of the settled year.
    pub settled_wettest_pct: f64,
    /// Moisture that the room's model expects today.
    pub expected_now_pct: f64,
    /// Days until nine tenths of a surplus of moisture are gone; null if over three years.
    pub settles_in_days: Option<usize>,
    /// Days by which the boards' yearly wave is behind that of the air.
    pub lag_days: Option<f64>,
    /// Moisture at install, worked back.
    pub installed_at_pct: Option<f64>,
    /// Lower end of its 90 % interval.
    pub installed_at_low_pct: Option<f64>,
    /// Upper end of its 90 % interval.
    pub installed_at_high_pct: Option<f64>,
    /// That moisture against the lumber marks.
    pub installed_words: String,
    /// Share of the gap that the coming year closes by itself.
    pub closes_by_itself_pct: f64,
    /// Narrowest mean gap of the coming year.
    pub narrowest_gap_mm: f64,
    /// Widest mean gap of the coming year.
    pub widest_gap_mm: f64,
    /// Share of its sealed joints that tears again when the row moves as far as it will.
    pub torn_again_pct: Option<f64>,
    /// Standard deviation of that.
    pub torn_again_sd_pct: Option<f64>,
    /// Opening of the widest of them.
    pub torn_widest_mm: Option<f64>,
    /// Moisture that boards for the next install should have.
    pub target_pct: f64,
    /// Least moisture allowed then.
    pub target_low_pct: Option<f64>,
    /// Most moisture allowed then.
    pub target_high_pct: Option<f64>,
    /// Gap to leave then.
    pub leave_mm: f64,
    /// Days that boards delivered as planned must lie in the room; null if over a year.
    pub acclimation_days: Option<u32>,
}

/// The weeks to seal in.
#[derive(Debug, Clone, Serialize)]
pub struct SeasonReport {
    /// The best weeks in words.
    pub best: String,
    /// First day of the best weeks.
    pub best_from: String,
    /// Last day of the best weeks.
    pub best_to: String,
    /// The day that quantities are worked out for.
    pub sealed_on: String,
    /// Share of the joint length that holds if sealed in the best week.
    pub best_holds_pct: f64,
    /// Length of joint too narrow to seal in any week.
    pub never_m: f64,
}

/// One way to mend it.
#[derive(Debug, Clone, Serialize)]
pub struct OptionReport {
    /// Its key.
    pub method: String,
    /// Its name.
    pub name: String,
    /// Whether the papers speak of it.
    pub chosen: bool,
    /// Why it cannot be done, if it cannot.
    pub not_possible: Option<String>,
    /// Hours of all people together.
    pub labour_hours: f64,
    /// Days on which the crew works.
    pub crew_days: u32,
    /// Days from first to last.
    pub calendar_days: u32,
    /// Days on which the room cannot be used.
    pub room_out_days: u32,
    /// Share of the sealed length that stays inside its class.
    pub holds_pct: Option<f64>,
    /// Widest joint after it.
    pub opens_to_mm: f64,
    /// Chance of another callback within the warranty.
    pub callback_pct: Option<f64>,
    /// Lower end of the 95 % interval that the number of trials leaves.
    pub callback_low_pct: Option<f64>,
    /// Upper end of that interval.
    pub callback_high_pct: Option<f64>,
    /// The same chance after a quarter and after half of the trials.
    pub callback_converged_pct: Option<[f64; 2]>,
    /// Length of joint that opens again, on average.
    pub opens_again_m: Option<f64>,
    /// The price with callbacks over the warranty included, at present value.
    pub expected_cost: Option<String>,
    /// How it looks afterwards.
    pub look: String,
    /// The price and its build-up.
    pub price: PriceReport,
    /// Tasks.
    pub tasks: Vec<TaskReport>,
    /// Buying list.
    pub materials: Vec<MaterialReport>,
    /// Cost of labour and materials that is not passed in 10, 50, 80 and 90 % of the trials.
    pub cost_percentiles: CostReport,
    /// What drives that cost, most first.
    pub swings: Vec<SwingReport>,
    /// How new boards are cut.
    pub cutting: Vec<CutReport>,
    /// What is done and waited for, in order.
    pub schedule: Vec<BarReport>,
}

/// A bar of the schedule.
#[derive(Debug, Clone, Serialize)]
pub struct BarReport {
    /// What is done or waited for.
    pub step: String,
    /// Whether nobody works.
    pub waiting: bool,
    /// Start, counted from the midnight before the first day of work.
    pub start_days: f64,
    /// End.
    pub end_days: f64,
}

/// A later visit.
#[derive(Debug, Clone, Serialize)]
pub struct VisitReport {
    /// The day.
    pub on: String,
    /// Whether the work was done by then.
    pub after_work: bool,
    /// What it comes to.
    pub words: String,
    /// Its readings.
    pub readings: Vec<ReadingReport>,
}

/// One reading of a later visit.
#[derive(Debug, Clone, Serialize)]
pub struct ReadingReport {
    /// Surface and joint.
    pub joint: String,
    /// What was measured.
    pub measured_mm: f64,
    /// What was forecast.
    pub forecast_mm: Option<f64>,
    /// Nine in ten should be at least this.
    pub forecast_low_mm: Option<f64>,
    /// And at most this.
    pub forecast_high_mm: Option<f64>,
    /// Whether it lies there.
    pub inside: Option<bool>,
    /// After the work: the chance with which it was expected to open.
    pub opens_pct: Option<f64>,
}

/// Percentiles of the cost of labour and materials.
#[derive(Debug, Clone, Serialize)]
pub struct CostReport {
    /// Not passed in a tenth of the trials.
    pub p10: String,
    /// In half.
    pub p50: String,
    /// In eight tenths.
    pub p80: String,
    /// In nine tenths.
    pub p90: String,
}

/// What one thing does to the cost.
#[derive(Debug, Clone, Serialize)]
pub struct SwingReport {
    /// The task or what else it is.
    pub of: String,
    /// By how much the cost goes up from its 10th to its 90th percentile.
    pub swing: String,
}

/// Boards cut alike.
#[derive(Debug, Clone, Serialize)]
pub struct CutReport {
    /// Length of the stock.
    pub stock_m: f64,
    /// How many boards are cut so.
    pub boards: usize,
    /// Lengths cut from each, one entry a piece.
    pub cut_m: Vec<f64>,
    /// What is left over of each.
    pub offcut_m: f64,
}

/// A price in the job's currency.
#[derive(Debug, Clone, Serialize)]
pub struct PriceReport {
    /// The currency.
    pub currency: String,
    /// Labour.
    pub labour: String,
    /// Materials.
    pub materials: String,
    /// Equipment.
    pub equipment: String,
    /// Overhead.
    pub overhead: String,
    /// What covers a worse turn than expected.
    pub contingency: String,
    /// Profit.
    pub profit: String,
    /// What is missing to the least charge.
    pub minimum: String,
    /// Tax.
    pub tax: String,
    /// Rounding of the total.
    pub rounding: String,
    /// Total.
    pub total: String,
    /// Profit as a share of the price before tax.
    pub margin_pct: f64,
    /// To be paid before work starts.
    pub deposit: String,
    /// Lower end of the likely range (10th percentile).
    pub total_low: String,
    /// Upper end of the likely range (90th percentile).
    pub total_high: String,
    /// The contractor's share.
    pub contractor: String,
    /// The supplier's share.
    pub supplier: String,
    /// The owner's share.
    pub owner: String,
}

/// A task.
#[derive(Debug, Clone, Serialize)]
pub struct TaskReport {
    /// Its id on the shelf.
    pub task: String,
    /// What is done.
    pub name: String,
    /// Hours of one person.
    pub hours: f64,
    /// Standard deviation of that.
    pub hours_sd: f64,
    /// Where the rate is from.
    pub basis: String,
}

/// A line of the buying list.
#[derive(Debug, Clone, Serialize)]
pub struct MaterialReport {
    /// What it is.
    pub name: String,
    /// Whole pieces.
    pub pieces: u32,
    /// Price of one.
    pub price: String,
    /// Price of all.
    pub amount: String,
}

/// Rounds for print: a report has no more digits than the figures deserve.
pub(super) fn round(value: f64, decimals: i32) -> f64 {
    let scale = 10_f64.powi(decimals);
    let rounded = (value * scale).round() / scale;
    if rounded == 0.0 { 0.0 } else { rounded }
}

pub(super) fn mm(length: Length) -> f64 {
    round(length.to_mm(), 3)
}

pub(super) fn pct(moisture: Moisture) -> f64 {
    round(moisture.to_pct(), 2)
}

fn amount(money: Money) -> String {
    money.show("").replace(',', "").replace('−', "-")
}

impl Report {
    /// The report on `found`, which is the assessment of `job`. `unread` is what could not be read of
    /// its file.
    pub fn new(job: &Job, found: &Assessment, unread: &[Problem]) -> Self {
        let problem = |problem: &Problem| ProblemReport {
            severity: problem.severity.words(),
            place: problem.place.words(job),
            what: problem.what.clone(),
            fix: problem.fix.clone(),
        };
        Self {
            title: job.title.clone(),
            visited: job.visited.to_string(),
            answer: found.answer.headline.clone(),
            cause: found.answer.cause.clone(),
            complete: found.answer.complete,
            missing: found.answer.missing.iter().map(ToString::to_string).collect(),
            problems: unread.iter().chain(&found.problems).map(problem).collect(),
            layout: LayoutReport::new(found),
            opening: OpeningReport::new(job, found),
            causes: found.causes.as_ref().map(CausesReport::new),
            sections: (0..found.sections.len()).map(|at| SectionReport::new(job, found, at)).collect(),
            season: found.season.as_ref().map(|season| SeasonReport {
                best: window_words(job, season.best, season.weeks.len()),
                best_from: date_after(job, season.best.low * 7).to_string(),
                best_to: date_after(job, season.best.high * 7 + 6).to_string(),
                sealed_on: date_after(job, found.seal_day).to_string(),
                best_holds_pct: round(100.0 * season.share(season.best_week()), 1),
                never_m: round(season.never.to_m(), 3),
            }),
            options: found.options.iter().map(|option| OptionReport::new(job, option)).collect(),
            later: found.follow_up.iter().map(VisitReport::new).collect(),
            choice: found.choice.as_ref().map(|choice| ChoiceReport {
                best: choice.best.key(),
                front: choice.front.iter().map(|method| method.key()).collect(),
                why: choice.why.clone(),
                changes: choice.changes.clone(),
            }),
        }
    }
}

impl LayoutReport {
    fn new(found: &Assessment) -> Self {
        use crate::surface::JointKind;
        let joints = || found.layouts.iter().flat_map(|laid| &laid.joints);
        let run =
            |kind: JointKind| round(joints().filter(|j| j.kind == kind).map(|j| j.length().to_m()).sum(), 6);
        let sum =
            |area: fn(&crate::surface::SurfaceLayout) -> f64| round(found.layouts.iter().map(area).sum(), 6);
        Self {
            boards: found.layouts.iter().map(|laid| laid.boards.len()).sum(),
            joints: joints().count(),
            plan_area_m2: sum(|laid| laid.plan_area.to_m2()),
            painted_area_m2: sum(|laid| laid.painted_area.to_m2()),
            board_edge_m: run(JointKind::BoardEdge),
            board_end_m: run(JointKind::BoardEnd),
            divider_m: run(JointKind::Divider),
            perimeter_m: run(JointKind::Perimeter),
            sealed_m: round(found.treated_run().to_m(), 6),
        }
    }
}

impl OpeningReport {
    fn new(job: &Job, found: &Assessment) -> Option<Self> {
        let opening = found.gaps.opening?;
        let next = found.gaps.next;
        Some(Self {
            opening_m2: round(opening.mean.to_m2(), 6),
            opening_sd_m2: round(opening.sd.to_m2(), 6),
            next_surface: next.map(|next| job.surfaces[next.surface].name.clone()),
            next_joint: next.map(|next| found.layouts[next.surface].joints[next.joint].label.clone()),
            more_readings: next.map_or(Some(0), |next| next.more),
        })
    }
}

impl CausesReport {
    fn new(causes: &Findings) -> Self {
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
            settling: causes.settling.clone(),
        }
    }
}

impl SectionReport {
    fn new(job: &Job, found: &Assessment, at: usize) -> Self {
        let (state, row) = (&found.sections[at], found.rows[at]);
        let surface = &job.surfaces[state.surface];
        let (driest, wettest) = state.settled.extremes();
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
    fn new(found: &VisitFound) -> Self {
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
            on: found.on.to_string(),
            after_work: found.after_work,
            words: found.words.clone(),
            readings: found.readings.iter().map(one).collect(),
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
                    name: line.label(Units::Millimetres),
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
