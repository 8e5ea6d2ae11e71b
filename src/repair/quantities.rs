//! How much there is of everything that tasks and materials go with.

use super::methods::{MaterialPer, RepairMethod, TaskPer};
use crate::measure::{Area, Length, Volume};

/// A joint to be sealed: what the bead's volume needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TreatedJoint {
    /// Its length.
    pub length: Length,
    /// Its gap on the day of sealing.
    pub gap: Length,
    /// Leg of the V's chamfer.
    pub v_leg: Length,
}

/// The measure of the job.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Quantities {
    /// Sections with boards.
    pub sections: usize,
    /// Joints to be sealed.
    pub treated: Vec<TreatedJoint>,
    /// Face to paint, V included.
    pub painted: Area,
    /// Face of the boards in plan.
    pub boarded: Area,
    /// Volume of the boards.
    pub board_volume: Volume,
    /// Length of board, waste not included.
    pub board_run: Length,
    /// The boards' pieces by length, in whole millimetres, and how many of each.
    pub pieces: Vec<(f64, usize)>,
    /// Around the surfaces.
    pub outline: Length,
}

impl Quantities {
    /// Length of joint to be sealed.
    pub fn joint_run(&self) -> Length {
        self.treated.iter().map(|joint| joint.length).sum()
    }

    /// How much of `per` there is, in its unit.
    #[expect(clippy::cast_precision_loss, reason = "counts of sections and visits")]
    pub fn of_task(&self, per: TaskPer, visits: usize, coats: u32) -> f64 {
        match per {
            // A travel or clean-up task stands in the steps once for each visit.
            TaskPer::Visit => (visits > 0).into(),
            TaskPer::Section => self.sections as f64,
            TaskPer::JointRun => self.joint_run().to_m(),
            TaskPer::PaintedArea => self.painted.to_m2(),
            TaskPer::CoatedArea => self.painted.to_m2() * f64::from(coats),
            TaskPer::BoardedArea => self.boarded.to_m2(),
            TaskPer::OutlineRun => self.outline.to_m(),
        }
    }

    /// How much of `per` there is, in its unit.
    #[expect(clippy::cast_precision_loss, reason = "counts of visits and sections")]
    pub fn of_material(&self, per: MaterialPer, method: &RepairMethod) -> f64 {
        let maskings = method.maskings().max(1) as f64;
        match per {
            MaterialPer::Job => 1.0,
            MaterialPer::Visit => method.visits() as f64,
            MaterialPer::PaintedArea => self.painted.to_m2(),
            MaterialPer::CoveredArea => self.painted.to_m2() * 2.0 * maskings,
            MaterialPer::BoardedArea => self.boarded.to_m2(),
            MaterialPer::OutlineRun => self.outline.to_m() * maskings,
            MaterialPer::BoardRun => self.board_run.to_m(),
            // Old boards lie loose in the bin: twice their volume.
            MaterialPer::BoardVolume => self.board_volume.to_m3() * 2.0,
            MaterialPer::Section => self.sections as f64,
            MaterialPer::JointRun => self.joint_run().to_m(),
        }
    }
}
