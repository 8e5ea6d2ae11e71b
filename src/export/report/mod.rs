//! The assessment for other programs: JSON with units in the key names.
//!
//! Keys are stable: new ones may be added, none changes its meaning. What comes in words is US English
//! and may change. The README lists the keys, and `assets/assessment.schema.json` is their JSON Schema,
//! made from the types here.

mod bead_designs;
mod fill;
mod next_install;
mod promise;
mod proposal;
mod typical_joint;
mod verdict;

use schemars::JsonSchema;
use serde::Serialize;

pub use bead_designs::JointBeadsReport;
pub(super) use fill::{mm, pct, plain, round};
pub use next_install::NextInstallReport;
pub use promise::PromiseReport;
pub use proposal::ProposalReport;
pub use typical_joint::TypicalJointReport;
pub use verdict::VerdictReport;

/// The whole assessment as `gapwright assess JOB --json` prints it.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Report {
    /// Number of this form of the report; it goes up when a key changes its meaning or goes away.
    pub format: u32,
    /// Version of the program that wrote it.
    pub version: &'static str,
    /// Title of the job.
    pub title: String,
    /// Day of the visit.
    pub visited: String,
    /// The answer in three lines.
    pub verdict: VerdictReport,
    /// The answer in a few sentences.
    pub answer: String,
    /// Why it happened, in a few sentences; empty while unknown.
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
    /// The plausible worlds that causes, install, forecasts and chances are read off.
    pub belief: Option<BeliefReport>,
    /// One for each section.
    pub sections: Vec<SectionReport>,
    /// The typical joint by week, from the install to three years after the visit.
    pub typical_joint: Option<TypicalJointReport>,
    /// The weeks to seal in.
    pub season: Option<SeasonReport>,
    /// The bead that lasts longest in each kind of joint to be sealed.
    pub bead_designs: Vec<JointBeadsReport>,
    /// The repair options.
    pub options: Vec<OptionReport>,
    /// Which costs least with callbacks, and what would change that.
    pub choice: Option<ChoiceReport>,
    /// The proposal of the selected option.
    pub proposal: Option<ProposalReport>,
    /// What the papers told, kept with the job; null before they were written from it.
    pub promise: Option<PromiseReport>,
    /// Later visits, held against what was forecast.
    pub later: Vec<VisitReport>,
    /// Boards that are to go up next.
    pub next_install: Option<NextInstallReport>,
}

/// The plausible worlds.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct BeliefReport {
    /// How many worlds were tried.
    pub worlds_tried: usize,
    /// How many of them count in effect: the square of the sum of their weights over the sum of squares.
    pub effective_worlds: f64,
    /// What the meter reads too much.
    pub meter_offset_pct: f64,
    /// Standard deviation of that.
    pub meter_offset_sd_pct: f64,
    /// Number of readings that contradict the rest; `problems` says which.
    pub conflicts: usize,
}

/// Which option costs least.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct ChoiceReport {
    /// Its key.
    pub best: String,
    /// Keys of the options that no other beats in both price and chance, cheapest first.
    pub front: Vec<String>,
    /// Which and why.
    pub why: String,
    /// What would change it.
    pub changes: Vec<String>,
}

/// One thing wrong with the entries.
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct CauseReport {
    /// Its key.
    pub cause: &'static str,
    /// Chance that it plays a part.
    pub chance_pct: f64,
}

/// One clue.
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
    /// Moisture at install, the mean over the worlds.
    pub installed_at_pct: Option<f64>,
    /// Lower end of its 90 % interval.
    pub installed_at_low_pct: Option<f64>,
    /// Upper end of its 90 % interval.
    pub installed_at_high_pct: Option<f64>,
    /// That moisture against the lumber marks, in a sentence; empty where it is not known.
    pub installed_words: String,
    /// The chance that the boards were above each lumber mark at install; empty where it is not known.
    pub over_marks: Vec<MarkReport>,
    /// Share of the gap that the coming year closes by itself.
    pub closes_by_itself_pct: f64,
    /// Narrowest mean gap of the coming year.
    pub narrowest_gap_mm: f64,
    /// Widest mean gap of the coming year.
    pub widest_gap_mm: f64,
    /// Day of that narrowest gap.
    pub narrowest_on: String,
    /// Day to look again, when the boards are widest.
    pub look_again_damp: String,
    /// Day to look again, when they are narrowest.
    pub look_again_dry: String,
    /// Share of its sealed joints that tears again when the row moves as far as it will.
    pub torn_again_pct: Option<f64>,
    /// Standard deviation of that.
    pub torn_again_sd_pct: Option<f64>,
    /// Opening of the widest of them.
    pub torn_widest_mm: Option<f64>,
}

/// How sure it is that boards were wetter than a lumber mark allows.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct MarkReport {
    /// The mark as stamped.
    pub mark: String,
    /// The most moisture it allows.
    pub allows_pct: f64,
    /// The chance that the boards were above that at install.
    pub chance_pct: f64,
}

/// The weeks to seal in.
#[derive(Debug, Clone, Serialize, JsonSchema)]
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

/// One repair option.
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
    /// Days on which anyone is there.
    pub crew_days: u32,
    /// The same, for each of the people.
    pub person_days: u32,
    /// Hours that people wait in the room for something to dry, of all together.
    pub standby_hours: f64,
    /// The days on site.
    pub days: Vec<DayReport>,
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
    /// The same without paint that cracks over a sound bead.
    pub callback_without_paint_pct: Option<f64>,
    /// Where that lies nine times in ten by what is not known of the house and its boards.
    pub callback_without_paint_low_pct: Option<f64>,
    /// See `callback_without_paint_low_pct`.
    pub callback_without_paint_high_pct: Option<f64>,
    /// The same where tears that begin behind the beads stay out of sight.
    pub callback_tears_hidden_pct: Option<f64>,
    /// The same where all of them come through to the face.
    pub callback_tears_show_pct: Option<f64>,
    /// The same chance after a quarter and after half of the trials.
    pub callback_converged_pct: Option<[f64; 2]>,
    /// Length of joint that opens again, on average.
    pub opens_again_m: Option<f64>,
    /// The price with callbacks over the warranty included, at present value.
    pub expected_cost: Option<String>,
    /// How it looks afterwards.
    pub look: String,
    /// The price and its build-up; none where it cannot be done.
    pub price: Option<PriceReport>,
    /// Tasks.
    pub tasks: Vec<TaskReport>,
    /// Buying list.
    pub materials: Vec<MaterialReport>,
    /// Cost of labor and materials that is not passed in 10, 50, 80 and 90 % of the trials.
    pub cost_percentiles: CostReport,
    /// What drives that cost, most first.
    pub swings: Vec<SwingReport>,
    /// How new boards are cut.
    pub cutting: Vec<CutReport>,
    /// What is done and waited for, in order.
    pub schedule: Vec<BarReport>,
}

/// A day on site.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct DayReport {
    /// The day.
    pub on: String,
    /// People who come.
    pub people: u32,
    /// When they are there, as hours since midnight.
    pub from_hours: f64,
    /// When they leave.
    pub to_hours: f64,
    /// Hours of each that are paid, the drive included.
    pub paid_hours: f64,
    /// Of these, hours of waiting for something to dry.
    pub standby_hours: f64,
}

/// A bar of the schedule.
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
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

/// Percentiles of the cost of labor and materials.
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct SwingReport {
    /// The task, or material prices.
    pub of: String,
    /// By how much the cost rises when that goes from its 10th to its 90th percentile.
    pub swing: String,
}

/// Boards cut alike.
#[derive(Debug, Clone, Serialize, JsonSchema)]
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct PriceReport {
    /// The currency.
    pub currency: String,
    /// How an hour is charged: `build_up` from the wage, or `charge_out` at one figure.
    pub charging: &'static str,
    /// A painter's wage of an hour.
    pub wage: String,
    /// A carpenter's.
    pub carpenter_wage: String,
    /// A painter's hour with what comes on top of the wage, or the hour that holds everything.
    pub labour_rate: String,
    /// A carpenter's.
    pub carpenter_rate: String,
    /// Labor.
    pub labour: String,
    /// Materials.
    pub materials: String,
    /// Equipment.
    pub equipment: String,
    /// Overhead.
    pub overhead: String,
    /// What covers work that turns out to cost more than expected.
    pub contingency: String,
    /// Profit.
    pub profit: String,
    /// Callbacks to be expected within the warranty, where the price holds them.
    pub callbacks: String,
    /// What is missing to the minimum charge.
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct TaskReport {
    /// Its id in the catalog.
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
#[derive(Debug, Clone, Serialize, JsonSchema)]
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

/// The JSON Schema (draft 2020-12) of [`Report`], indented, with a line feed at its end.
///
/// # Errors
/// Never in practice: a schema is plain JSON.
pub fn report_schema() -> serde_json::Result<String> {
    Ok(serde_json::to_string_pretty(&schemars::schema_for!(Report))? + "\n")
}
