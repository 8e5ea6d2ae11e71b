//! The next install for other programs.

use schemars::JsonSchema;
use serde::Serialize;

use super::{mm, pct, round};
use crate::assess::{Assessment, NextInstallFindings};
use crate::ready::{Change, Easier, Lever, Outlook, Ready, WatchDay};
use crate::surface::Finish;
use crate::words::{Words, next_install};

/// A next install as `gapwright ready JOB --json` prints it.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct NextInstallReport {
    /// `measure`, `hang`, `wait`, `send_back` or `change_plan`; null where the stack's air is not known.
    pub gate: Option<String>,
    /// The verdict in a line.
    pub headline: String,
    /// Chance asked for that all joints hold.
    pub asked_pct: f64,
    /// Widest that a joint may open.
    pub rule_mm: f64,
    /// Gap to leave at each joint of boards at `hang_best_pct`.
    pub leave_mm: f64,
    /// Gap to leave at the least moisture.
    pub leave_low_mm: Option<f64>,
    /// Gap to leave at the most.
    pub leave_high_mm: Option<f64>,
    /// Least average moisture to hang the boards at; null if no moisture will do.
    pub hang_low_pct: Option<f64>,
    /// Most.
    pub hang_high_pct: Option<f64>,
    /// The moisture with the best chance.
    pub hang_best_pct: f64,
    /// That chance.
    pub best_chance_pct: f64,
    /// How much a joint moves over the years; null where the plan's sealant is not known.
    pub joint_moves_mm: Option<f64>,
    /// Joint width that the plan's sealant needs for that.
    pub sealant_needs_mm: Option<f64>,
    /// Whether the joints can be caulked.
    pub can_caulk: Option<bool>,
    /// What makes it easier, best first.
    pub easier: Vec<EasierReport>,
    /// The delivery; null where the stack's air is not known.
    pub delivery: Option<DeliveryReport>,
}

/// A change and the chance it brings.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct EasierReport {
    /// `width`, `back_primed`, `oil_paint` or `nailing`.
    pub change: &'static str,
    /// The width, if it is that.
    pub face_width_mm: Option<f64>,
    /// The chance.
    pub chance_pct: f64,
}

/// What is said of a delivery.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct DeliveryReport {
    /// The day it came.
    pub delivered: String,
    /// The day spoken of: that of the last reading.
    pub today: String,
    /// Boards measured on the first day.
    pub measured: u32,
    /// Gap to leave if they are.
    pub leave_mm: f64,
    /// Chance that all joints hold if the boards are hung today.
    pub hang_chance_pct: f64,
    /// Chance that some joint opens beyond the rule.
    pub opens_chance_pct: f64,
    /// Chance that the boards buckle.
    pub buckles_chance_pct: f64,
    /// Best chance on a later day.
    pub wait_chance_pct: f64,
    /// Average moisture; null before anything was measured.
    pub moisture_pct: Option<f64>,
    /// Its standard deviation.
    pub moisture_sd_pct: Option<f64>,
    /// How boards differ, one standard deviation.
    pub spread_pct: Option<f64>,
    /// The outer fifths.
    pub shell_pct: Option<f64>,
    /// The middle fifth.
    pub core_pct: Option<f64>,
    /// Chance that the core is wetter than the shell by 1.5 points or more.
    pub dry_shell_chance_pct: Option<f64>,
    /// What was promised at most.
    pub promised_pct: Option<f64>,
    /// Share of boards that are wetter.
    pub over_promise_share_pct: Option<f64>,
    /// Chance that more than one board in twenty is.
    pub promise_broken_chance_pct: Option<f64>,
    /// Chance that a bad load shows no wet board among those measured.
    pub missed_pct: Option<f64>,
    /// When the stack is ready; null if not within the days followed.
    pub ready: Option<ReadyReport>,
    /// Whether that is later than wanted.
    pub late: bool,
    /// When to measure next.
    pub measure_next: String,
    /// What can be done.
    pub levers: Vec<LeverReport>,
    /// The stack from the delivery on.
    pub days: Vec<WatchDayReport>,
}

/// When a stack is ready.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct ReadyReport {
    /// One time in ten it is by this day.
    pub early: String,
    /// Half of the time it is by this one.
    pub likely: String,
    /// The first day with the chance asked for, or nearly the best there is.
    pub sure: String,
}

/// Something that can be done to a stack.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct LeverReport {
    /// `stickers`, `into_room`, `dehumidifier` or `heat`.
    pub lever: &'static str,
    /// When the stack is ready then.
    pub ready: Option<ReadyReport>,
}

/// A day of the watch.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct WatchDayReport {
    /// The day.
    pub date: String,
    /// Average moisture.
    pub moisture_pct: f64,
    /// It lies from here.
    pub low_pct: f64,
    /// To here, nine times in ten.
    pub high_pct: f64,
    /// The outer fifths.
    pub shell_pct: f64,
    /// The middle fifth.
    pub core_pct: f64,
    /// The gap to leave if the boards are hung on that day.
    pub leave_mm: f64,
    /// The chance that all joints hold then.
    pub chance_pct: f64,
}

fn chance(of: f64) -> f64 {
    round(100.0 * of, 1)
}

impl NextInstallReport {
    /// Of an assessment whose job has a next install that could be worked out.
    pub fn new(assessment: &Assessment) -> Option<Self> {
        let found = assessment.next_install.as_deref()?;
        let next = assessment.job.next_install.as_ref()?;
        let words = Words::of_job(&assessment.job);
        let window = &found.window;
        Some(Self {
            gate: found.outlook.as_ref().map(|outlook| outlook.gate.verdict.key().to_owned()),
            headline: next_install::headline(found, &words),
            asked_pct: round(next.chance.to_pct(), 1),
            rule_mm: mm(found.rule),
            leave_mm: mm(window.best.gap),
            leave_low_mm: window.range.map(|range| mm(range.low.gap)),
            leave_high_mm: window.range.map(|range| mm(range.high.gap)),
            hang_low_pct: window.range.map(|range| pct(range.low.moisture)),
            hang_high_pct: window.range.map(|range| pct(range.high.moisture)),
            hang_best_pct: pct(window.best.moisture),
            best_chance_pct: chance(window.chance),
            joint_moves_mm: found.caulking.map(|caulking| mm(caulking.moves)),
            sealant_needs_mm: found.caulking.map(|caulking| mm(caulking.needs)),
            can_caulk: found.caulking.map(|caulking| caulking.possible),
            easier: found.easier.iter().map(EasierReport::new).collect(),
            delivery: found.outlook.as_ref().map(|outlook| DeliveryReport::new(found, outlook)),
        })
    }
}

impl EasierReport {
    fn new(easier: &Easier) -> Self {
        let (change, face_width_mm) = match easier.change {
            Change::Width(width) => ("width", Some(mm(width))),
            Change::Finish(Finish::OilFace) => ("oil_paint", None),
            Change::Finish(_) => ("back_primed", None),
            Change::Fixing(_) => ("nailing", None),
        };
        Self { change, face_width_mm, chance_pct: chance(easier.window.chance) }
    }
}

impl DeliveryReport {
    fn new(found: &NextInstallFindings, outlook: &Outlook) -> Self {
        let date = |day: i64| found.date(day).to_string();
        let (gate, lot) = (&outlook.gate, outlook.lot.as_ref());
        let ready = |ready: &Ready| ReadyReport {
            early: date(ready.early),
            likely: date(ready.likely),
            sure: date(ready.sure),
        };
        let day = |day: &WatchDay| WatchDayReport {
            date: date(day.day),
            moisture_pct: pct(day.moisture[0]),
            low_pct: pct(day.moisture[1]),
            high_pct: pct(day.moisture[2]),
            shell_pct: pct(day.shell),
            core_pct: pct(day.core),
            leave_mm: mm(day.gap),
            chance_pct: chance(day.chance),
        };
        let lever = |(lever, then): &(Lever, Option<Ready>)| LeverReport {
            lever: lever.key(),
            ready: then.as_ref().map(ready),
        };
        Self {
            delivered: date(0),
            today: date(found.today),
            measured: found.sampling.map_or(0, |sampling| sampling.measured),
            leave_mm: mm(gate.gap),
            hang_chance_pct: chance(gate.now.holds),
            opens_chance_pct: chance(gate.now.opens),
            buckles_chance_pct: chance(gate.now.buckles),
            wait_chance_pct: chance(gate.waiting),
            moisture_pct: lot.map(|lot| pct(lot.moisture.mean)),
            moisture_sd_pct: lot.map(|lot| pct(lot.moisture.sd)),
            spread_pct: lot.map(|lot| pct(lot.spread)),
            shell_pct: lot.map(|lot| pct(lot.shell)),
            core_pct: lot.map(|lot| pct(lot.core)),
            dry_shell_chance_pct: outlook.dry_shell.map(|dry| chance(dry.chance)),
            promised_pct: outlook.promise.map(|promise| pct(promise.most)),
            over_promise_share_pct: outlook.promise.map(|promise| chance(promise.wetter)),
            promise_broken_chance_pct: outlook.promise.map(|promise| chance(promise.broken)),
            missed_pct: found.sampling.map(|sampling| chance(sampling.missed)),
            ready: outlook.ready.as_ref().map(ready),
            late: gate.late,
            measure_next: date(outlook.next_reading),
            levers: outlook.levers.iter().map(lever).collect(),
            days: outlook.days.iter().map(day).collect(),
        }
    }
}
