//! The next install for other programs.

use schemars::JsonSchema;
use serde::Serialize;

use super::{mm, pct, round};
use crate::assess::{Assessment, NextInstallFindings};
use crate::ready::{Change, Easier, Joints, Outlook, Ready, Remedy, Then, WatchDay};
use crate::surface::Finish;
use crate::words::{Words, next_install};

/// A next install as `gapwright ready JOB --json` prints it.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct NextInstallReport {
    /// `measure`, `meter_more`, `hang`, `wait`, `sort`, `send_back` or `change_plan`; null where the stack's air is not known.
    pub gate: Option<String>,
    /// The verdict in a line.
    pub headline: String,
    /// Chance asked for that all joints hold.
    pub asked_pct: f64,
    /// Widest that a joint may open.
    pub rule_mm: f64,
    /// Gap to leave at each joint of boards at `hang_best_pct`.
    pub leave_mm: f64,
    /// Least average moisture to hang boards at with that gap; null if no moisture will do.
    pub hang_low_pct: Option<f64>,
    /// Most.
    pub hang_high_pct: Option<f64>,
    /// The moisture with the best chance.
    pub hang_best_pct: f64,
    /// That chance.
    pub best_chance_pct: f64,
    /// How much half of the joints move over the years at most; null where the plan's sealant is not known.
    pub joint_usually_moves_mm: Option<f64>,
    /// `opens` or `closes`: the way that asks more of the bead.
    pub joint_way: Option<&'static str>,
    /// How much 19 in 20 move that way at most.
    pub joint_moves_mm: Option<f64>,
    /// How far the plan's bead can be moved that way at its worst place.
    pub sealant_takes_mm: Option<f64>,
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
    /// `caulk`, `open_joints`, `gap`, `width`, `back_primed`, `oil_paint`, `nailing`, `humidifier`, `summer_air` or
    /// `wider_rule`.
    pub change: &'static str,
    /// The gap to leave, if it is that.
    pub leave_mm: Option<f64>,
    /// The width, if it is that.
    pub face_width_mm: Option<f64>,
    /// How wide joints may open then, if it is that.
    pub rule_mm: Option<f64>,
    /// The moisture with the best chance.
    pub best_pct: f64,
    /// The day these boards can be hung on with it; null where nothing was measured, where others would be bought, and
    /// where they are not ready within the days followed.
    pub hang_on: Option<String>,
    /// The chance.
    pub chance_pct: f64,
}

/// What is said of a delivery.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct DeliveryReport {
    /// The day it came.
    pub delivered: String,
    /// The day the stack was put on stickers, or is to be; null where it lay so from the start, or still does not.
    pub opened: Option<String>,
    /// The day spoken of: that of the last reading.
    pub today: String,
    /// Boards measured on the first day.
    pub measured: u32,
    /// How to hang the boards: today, or on the day they are ready; null where neither is.
    pub hang: Option<HangReport>,
    /// Chance that all joints hold if the boards are hung today.
    pub hang_chance_pct: f64,
    /// Chance that some joint opens beyond the rule.
    pub opens_chance_pct: f64,
    /// Chance that the boards buckle.
    pub buckles_chance_pct: f64,
    /// Best chance on any day that is followed, as the boards lie.
    pub wait_chance_pct: f64,
    /// Best chance on any day, whatever is done to the stack, or at any moisture.
    pub best_chance_pct: f64,
    /// Whether they can be hung on the day they are wanted: `yes`, `close`, `no`, `unknown` or `past`; null where no day
    /// is named.
    pub wanted_answer: Option<&'static str>,
    /// Chance on the day the boards are wanted, if that is to come and something is known of it.
    pub wanted_chance_pct: Option<f64>,
    /// What the stack needs first: `stickers`, `into_room`, `dehumidifier` or `heat`; `ready` and `days` are
    /// with it.
    pub first: Option<&'static str>,
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
    /// Where the last day's readings would have averaged by those before, if they don't; null where they fit.
    pub unexpected: Option<UnexpectedReport>,
    /// What was promised at most.
    pub promised_pct: Option<f64>,
    /// Share of boards that are wetter.
    pub over_promise_share_pct: Option<f64>,
    /// Chance that more than one board in twenty is.
    pub promise_broken_chance_pct: Option<f64>,
    /// Chance that more than one board in four is.
    pub promise_clearly_broken_chance_pct: Option<f64>,
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

/// What the last day's readings would have averaged 99 times in 100, had they fitted those before.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct UnexpectedReport {
    /// From here.
    pub low_pct: f64,
    /// To here.
    pub high_pct: f64,
}

/// The gap that goes with an average.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct GapReport {
    /// What boards metered on the day average.
    pub average_pct: f64,
    /// The gap to leave at each joint then.
    pub leave_mm: f64,
}

/// How to hang boards on a day.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct HangReport {
    /// The day.
    pub on: String,
    /// What the boards are expected to average then.
    pub expected_pct: f64,
    /// The boards measured then may average from here.
    pub low_pct: f64,
    /// To here.
    pub high_pct: f64,
    /// The gap to leave at each joint.
    pub leave_mm: f64,
    /// The chance that all joints hold.
    pub chance_pct: f64,
    /// The gap to leave by what boards metered then average, from the low end to the high end.
    pub gaps: Vec<GapReport>,
}

/// When a stack is ready.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct ReadyReport {
    /// The first day with even odds.
    pub even: String,
    /// The first workday with the chance asked for.
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
            headline: next_install::headline(found, next, &words),
            asked_pct: round(next.chance.to_pct(), 1),
            rule_mm: mm(found.rule),
            leave_mm: mm(window.best.gap),
            hang_low_pct: window.range.map(|range| pct(range.low)),
            hang_high_pct: window.range.map(|range| pct(range.high)),
            hang_best_pct: pct(window.best.moisture),
            best_chance_pct: chance(window.chance),
            joint_usually_moves_mm: found.caulking.map(|caulking| mm(caulking.usual)),
            joint_way: found.caulking.map(|caulking| caulking.way.key()),
            joint_moves_mm: found.caulking.map(|caulking| mm(caulking.moves)),
            sealant_takes_mm: found.caulking.map(|caulking| mm(caulking.takes)),
            can_caulk: found.caulking.map(|caulking| caulking.possible),
            easier: found.easier.iter().map(|easier| EasierReport::new(found, easier)).collect(),
            delivery: found.outlook.as_ref().map(|outlook| DeliveryReport::new(found, outlook)),
        })
    }
}

impl EasierReport {
    fn new(found: &NextInstallFindings, easier: &Easier) -> Self {
        let change = match easier.change {
            Change::Joints(Joints::Sealed) => "caulk",
            Change::Joints(Joints::Open) => "open_joints",
            Change::Gap(_) | Change::WiderGap(_) => "gap",
            Change::Width(_) => "width",
            Change::Finish(Finish::OilFace) => "oil_paint",
            Change::Finish(_) => "back_primed",
            Change::Fixing(_) => "nailing",
            Change::Humidifier(_) => "humidifier",
            Change::SummerAir(_) => "summer_air",
            Change::Rule(_) => "wider_rule",
        };
        let leave_mm = match easier.change {
            Change::Gap(gap) | Change::WiderGap(gap) => Some(mm(gap)),
            _ => None,
        };
        let face_width_mm = if let Change::Width(width) = easier.change { Some(mm(width)) } else { None };
        let rule_mm = if let Change::Rule(rule) = easier.change { Some(mm(rule)) } else { None };
        let hang_on = match easier.then {
            Then::Hung(day, _) => Some(found.date(day).to_string()),
            Then::Unknown | Then::Never => None,
        };
        Self {
            change,
            leave_mm,
            face_width_mm,
            rule_mm,
            best_pct: pct(easier.window.best.moisture),
            hang_on,
            chance_pct: chance(easier.chance()),
        }
    }
}

impl DeliveryReport {
    fn new(found: &NextInstallFindings, outlook: &Outlook) -> Self {
        let date = |day: i64| found.date(day).to_string();
        let (gate, lot) = (&outlook.gate, outlook.lot.as_ref());
        let ready = |ready: &Ready| ReadyReport { even: date(ready.even), sure: date(ready.sure) };
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
        let lever = |remedy: &Remedy| LeverReport {
            lever: remedy.lever.key(),
            ready: remedy.ready.as_ref().map(ready),
        };
        Self {
            delivered: date(0),
            opened: found.opened.map(date),
            today: date(found.today),
            measured: found.sampling.map_or(0, |sampling| sampling.measured),
            hang: outlook.hang.as_ref().map(|hang| HangReport {
                on: date(hang.day),
                expected_pct: pct(hang.moisture),
                low_pct: pct(hang.range.low),
                high_pct: pct(hang.range.high),
                leave_mm: mm(hang.gap),
                chance_pct: chance(hang.chance),
                gaps: hang
                    .by_average()
                    .map(|(average, gap)| GapReport { average_pct: pct(average), leave_mm: mm(gap) })
                    .collect(),
            }),
            hang_chance_pct: chance(gate.now.holds),
            opens_chance_pct: chance(gate.now.opens),
            buckles_chance_pct: chance(gate.now.buckles),
            wait_chance_pct: chance(gate.waiting),
            best_chance_pct: chance(gate.best),
            wanted_answer: outlook.wanted.map(|wanted| wanted.can.key()),
            wanted_chance_pct: outlook.wanted.and_then(|wanted| wanted.chance).map(chance),
            first: gate.first.map(|lever| lever.key()),
            moisture_pct: lot.map(|lot| pct(lot.moisture.mean)),
            moisture_sd_pct: lot.map(|lot| pct(lot.moisture.sd)),
            spread_pct: lot.map(|lot| pct(lot.spread)),
            shell_pct: lot.map(|lot| pct(lot.shell)),
            core_pct: lot.map(|lot| pct(lot.core)),
            dry_shell_chance_pct: outlook.dry_shell.map(|dry| chance(dry.chance)),
            unexpected: outlook.surprise.map(|surprise| UnexpectedReport {
                low_pct: pct(surprise.expected.low),
                high_pct: pct(surprise.expected.high),
            }),
            promised_pct: outlook.promise.map(|promise| pct(promise.most)),
            over_promise_share_pct: outlook.promise.map(|promise| chance(promise.wetter)),
            promise_broken_chance_pct: outlook.promise.map(|promise| chance(promise.broken)),
            promise_clearly_broken_chance_pct: outlook.promise.map(|promise| chance(promise.clearly)),
            missed_pct: found.sampling.map(|sampling| chance(sampling.missed)),
            ready: outlook.ready.as_ref().map(ready),
            late: gate.late,
            measure_next: date(outlook.next_reading),
            levers: outlook.levers.iter().map(lever).collect(),
            days: outlook.days.iter().map(day).collect(),
        }
    }
}
