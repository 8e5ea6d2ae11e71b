//! A next install with one thing done otherwise, as it was told that it would help.

use super::Job;
use crate::air::{HouseModel, Household, SummerAir};
use crate::ready::{Change, NextInstall};

/// Has a house lived in otherwise, if that is the change.
pub fn live_otherwise(house: &mut HouseModel, change: Change, household: &Household) {
    match change {
        Change::Humidifier(_) => household.set_humidifier(house, true),
        Change::SummerAir(_) => household.set_summer(house, SummerAir::Dehumidified),
        Change::Joints(_)
        | Change::Gap(_)
        | Change::WiderGap(_)
        | Change::Width(_)
        | Change::Finish(_)
        | Change::Fixing(_)
        | Change::Rule(_) => {}
    }
}

impl Job {
    /// Begins a next install of boards that came on the day of the visit, if there is none: nobody has said yet what
    /// they are, nor where.
    pub fn begin_next_install(&mut self) {
        if self.next_install.is_none() {
            self.next_install = Some(NextInstall::begun_on(self.visited));
        }
    }

    /// Plans the next install with this change; nothing happens without one.
    pub fn plan_otherwise(&mut self, change: Change, household: &Household) {
        let Some(next) = &mut self.next_install else { return };
        match change {
            Change::Joints(joints) => next.joints = joints,
            // A gap that is not settled is what is worth leaving.
            Change::Gap(_) | Change::WiderGap(_) => next.gap = change.gap(next.gap),
            Change::Width(width) => {
                let tongue = next.boards.overall_width - next.boards.face_width;
                next.boards.face_width = width;
                next.boards.overall_width = width + tongue;
            }
            Change::Finish(finish) => next.boards.finish = finish,
            Change::Fixing(fixing) => next.boards.fixing = fixing,
            Change::Rule(widest) => self.plan.callback.widest = widest,
            Change::Humidifier(_) | Change::SummerAir(_) => {
                if let Some(house) = self.air.house_mut() {
                    live_otherwise(house, change, household);
                }
            }
        }
    }
}
