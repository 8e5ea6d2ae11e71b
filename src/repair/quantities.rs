//! How much there is of everything that tasks and materials go with.

use super::methods::RepairMethod;
use super::supplies::MaterialPer;
use super::task_kinds::TaskPer;
use crate::bead::LEAST_TAPE;
use crate::joint::{BeadLay, JointEdges};
use crate::measure::{Area, Hours, Length, Volume};

/// A joint to be sealed: what the bead's volume needs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TreatedJoint {
    /// Its length.
    pub length: Length,
    /// Its gap on the day of sealing.
    pub gap: Length,
    /// The boards' edges at it.
    pub edges: JointEdges,
}

/// The measure of the job.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Quantities {
    /// Sections with boards.
    pub sections: usize,
    /// Joints to be worked on.
    pub treated: Vec<TreatedJoint>,
    /// The least gap that gets a bead; narrower ones are cleaned and painted.
    pub narrowest: Length,
    /// Face to paint, V included.
    pub painted: Area,
    /// V grooves and beads in that face, which a brush is drawn along with each coat.
    pub grooves: Length,
    /// Face of the boards in plan.
    pub boarded: Area,
    /// Volume of the boards.
    pub board_volume: Volume,
    /// Length of board, waste not included.
    pub board_run: Length,
    /// The boards' pieces by length, in whole millimetres, and how many of each.
    pub pieces: Vec<(f64, usize)>,
    /// Ends of those pieces that are cut at an angle.
    pub angled_ends: usize,
    /// Free edge around the surfaces.
    pub outline: Length,
    /// Trim around the surfaces and along the boards that part them.
    pub trim: Length,
    /// The longest board overhead.
    pub longest_overhead: Length,
    /// Holes in the surfaces that boards are fitted around.
    pub openings: usize,
    /// Windows and doors of the room that are masked.
    pub windows: usize,
    /// Lights, vents and the like.
    pub fixtures: usize,
}

/// What there is of the days, once they are laid out.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct OnSite {
    /// Days on which anyone is there.
    pub days: u32,
    /// The same, for each of the people.
    pub person_days: u32,
    /// Evenings on which the room is handed back.
    pub evenings: u32,
    /// Hours that people wait in the room, of all together.
    pub standby: Hours,
}

impl Quantities {
    /// Length of joint to be sealed.
    pub fn joint_run(&self) -> Length {
        self.treated.iter().map(|joint| joint.length).sum()
    }

    /// The joints that are wide enough to get a bead.
    pub fn beaded(&self) -> impl Iterator<Item = &TreatedJoint> {
        self.treated.iter().filter(|joint| joint.gap >= self.narrowest)
    }

    /// Their length.
    pub fn bead_run(&self) -> Length {
        self.beaded().map(|joint| joint.length).sum()
    }

    /// The same of the joints whose slot is wide enough for tape or backer.
    pub fn backed_run(&self) -> Length {
        self.treated.iter().filter(|joint| joint.gap >= LEAST_TAPE).map(|joint| joint.length).sum()
    }

    /// The measure once the joints are cut as wide as a bead wants them.
    #[must_use]
    pub fn cut_for(&self, lay: BeadLay) -> Self {
        let mut cut = self.clone();
        for joint in &mut cut.treated {
            joint.gap = lay.slot(joint.gap);
        }
        cut
    }

    /// The measure where paint is brushed over the joints that are sealed alone: nothing else is masked.
    #[must_use]
    pub fn painted_at_joints(&self) -> Self {
        /// Width of paint along a joint: the V and a little beside it. Common practice, no source.
        const BAND: Length = Length::inches(1.5);
        let run = self.joint_run();
        let painted = Area::m2(run.to_m() * BAND.to_m());
        Self { painted, grooves: run, outline: Length::ZERO, windows: 0, fixtures: 0, ..self.clone() }
    }

    /// Boards.
    pub fn boards(&self) -> usize {
        self.pieces.iter().map(|(_, count)| count).sum()
    }

    /// Mean face width of the boards.
    pub fn face(&self) -> Length {
        Length::m(self.boarded.to_m2() / self.board_run.to_m().max(1e-9))
    }

    /// Length of all boards' pieces, metres.
    #[expect(clippy::cast_precision_loss, reason = "a count of boards")]
    fn handled_run(&self) -> f64 {
        self.pieces.iter().map(|(length, count)| length * *count as f64).sum()
    }

    /// How much of `per` there is, in its unit; `on_site` counts for what goes with the days.
    #[expect(clippy::cast_precision_loss, reason = "counts of sections, boards and windows")]
    pub fn of_task(&self, per: TaskPer, coats: u32, on_site: &OnSite) -> f64 {
        match per {
            // What is done once a visit stands in the steps once for each.
            TaskPer::Visit => 1.0,
            TaskPer::Board => self.boards() as f64,
            TaskPer::Opening => self.openings as f64,
            TaskPer::Window => self.windows as f64,
            TaskPer::Fixture => self.fixtures as f64,
            TaskPer::Coat => coats.into(),
            TaskPer::Day => on_site.days.into(),
            TaskPer::PersonDay => on_site.person_days.into(),
            TaskPer::Evening => on_site.evenings.into(),
            TaskPer::Standby => on_site.standby.to_h(),
            TaskPer::Section => self.sections as f64,
            TaskPer::JointRun => self.joint_run().to_m(),
            TaskPer::BeadRun => self.bead_run().to_m(),
            TaskPer::BackedRun => self.backed_run().to_m(),
            TaskPer::PaintedArea => self.painted.to_m2(),
            TaskPer::CoatedArea => self.painted.to_m2() * f64::from(coats),
            TaskPer::CoatedGrooves => self.grooves.to_m() * f64::from(coats),
            TaskPer::AngledEnd => self.angled_ends as f64,
            TaskPer::BoardedArea => self.boarded.to_m2(),
            TaskPer::OutlineRun => self.outline.to_m(),
            TaskPer::TrimRun => self.trim.to_m(),
            TaskPer::BoardRun => self.handled_run(),
        }
    }

    /// How much of `per` there is, in its unit; the crew is on the job in so many weeks.
    #[expect(clippy::cast_precision_loss, reason = "counts of visits, sections and boards")]
    pub fn of_material(&self, per: MaterialPer, method: &RepairMethod, weeks: u32) -> f64 {
        let maskings = method.maskings().max(1) as f64;
        match per {
            MaterialPer::Job => 1.0,
            MaterialPer::Visit => method.visits() as f64,
            MaterialPer::PaintedArea => self.painted.to_m2(),
            // Paint that is sprayed drifts onto the walls too.
            MaterialPer::CoveredArea if method.sprays() => self.painted.to_m2() * 2.0 * maskings,
            MaterialPer::CoveredArea => self.painted.to_m2() * maskings,
            MaterialPer::BoardedArea => self.boarded.to_m2(),
            MaterialPer::OutlineRun => self.outline.to_m() * maskings,
            MaterialPer::BoardRun => self.board_run.to_m(),
            // Old boards lie loose in the bin: twice their volume.
            MaterialPer::BoardVolume => self.board_volume.to_m3() * 2.0,
            MaterialPer::Section => self.sections as f64,
            MaterialPer::JointRun => self.joint_run().to_m(),
            MaterialPer::BackedRun => self.backed_run().to_m(),
            MaterialPer::Board => self.boards() as f64,
            MaterialPer::Week => weeks.into(),
        }
    }
}
