//! How the joints that nobody measured may be: a few pictures of the room.
//!
//! Of a joint that nobody measured its section's mean is expected, but hardly any is as wide as the mean: some are too fine to
//! be filled, some open to their tongues, and where paint bonds boards, some move by several boards and most by none. That
//! decides whether the owner calls. So worlds that are alike share a picture (whether boards are bonded in them, and how far
//! they opened), and in each picture every such joint is drawn once, evenly over what its worlds make of it.

use std::sync::Arc;

use super::sections::{JointState, SectionState};
use crate::measure::{Estimate, Length};
use crate::survey::GapEstimate;

/// Pictures of a room: so many that worlds of one are much alike, and few enough to put all options to the trials in them.
const PICTURES: usize = 8;
/// Steps of the additive-recurrence sequence of Roberts (2018) in three dimensions.
const STEPS: [f64; 3] = [0.819_172_513_396_164_4, 0.671_043_606_703_789_2, 0.549_700_477_901_970_3];

/// The worlds, by the picture they share.
pub(super) struct Pictures {
    /// The picture of each world.
    pub of_world: Arc<[usize]>,
    worlds: Vec<Vec<usize>>,
}

/// A joint in a picture.
#[derive(Debug, Clone, Copy)]
pub(super) struct PicturedJoint {
    /// The joint as known but for its gap, which is the picture's.
    pub state: JointState,
    /// How many boards open at it, on average.
    pub boards: f64,
    /// Mean gap of its section's joints, in this picture.
    pub usual: Length,
}

impl PicturedJoint {
    /// What each of the boards that open at it opens it by, against the mean of its section: by that much more or
    /// less they move. How many they are is told beside.
    pub fn gap_of_one(&self) -> Option<GapEstimate> {
        let GapEstimate { gap, measured } = self.state.gap?;
        let of_one = |gap: Length| gap * (1.0 / self.boards.max(1.0));
        Some(GapEstimate { gap: Estimate { mean: of_one(gap.mean), sd: of_one(gap.sd) }, measured })
    }
}

impl Pictures {
    /// Of the worlds of these sections.
    pub fn new(sections: &[SectionState]) -> Self {
        let count = sections.first().map_or(0, |state| state.worlds.today().len());
        let kind = |world: &usize| {
            let each = sections.iter().map(|state| state.worlds.today()[*world].kind());
            each.fold((false, 0.0), |(bonded, opened), own| (bonded || own.0, opened + own.1))
        };
        let mut order: Vec<(usize, (bool, f64))> = (0..count).map(|world| (world, kind(&world))).collect();
        order.sort_by(|(_, a), (_, b)| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
        let mut of_world = vec![0; count];
        let mut worlds = vec![Vec::new(); PICTURES.min(count)];
        for (rank, (world, _)) in order.into_iter().enumerate() {
            let picture = rank * worlds.len() / count;
            of_world[world] = picture;
            worlds[picture].push(world);
        }
        Self { of_world: of_world.into(), worlds }
    }

    /// How many there are.
    pub const fn count(&self) -> usize {
        self.worlds.len()
    }

    /// A joint between boards in a picture; `number` is its own among all joints.
    pub fn joint(
        &self,
        picture: usize,
        (number, state): (usize, &JointState),
        sections: &[SectionState],
    ) -> PicturedJoint {
        let usual = state.section.map_or(Length::ZERO, |section| sections[section].gaps.mean);
        let alone = PicturedJoint { state: *state, boards: 1.0, usual };
        let (Some(section), Some(gap)) = (state.section, state.gap) else { return alone };
        let today = sections[section].worlds.today();
        let own = &self.worlds[picture];
        if gap.measured {
            let asked = own.iter().step_by((own.len() / MOST_ASKED).max(1));
            let boards: Vec<f64> = asked.map(|world| today[*world].boards_behind(gap.gap.mean)).collect();
            return PicturedJoint { boards: mean(&boards), ..alone };
        }
        let [which, kind, width] = STEPS.map(|step| place(number, picture, step));
        let Some(world) = own.get(pick(which, own.len())) else { return alone };
        let (width, boards) = today[*world].unseen_joint((kind, width));
        let drawn = Estimate { mean: width, sd: Length::ZERO };
        let state = JointState { gap: Some(GapEstimate { gap: drawn, measured: true }), ..*state };
        PicturedJoint { state, boards, usual: today[*world].mean }
    }
}

/// Worlds of a picture that are asked how many boards open at a measured joint.
const MOST_ASKED: usize = 8;

#[expect(clippy::cast_precision_loss, reason = "thousands of joints")]
fn place(number: usize, picture: usize, step: f64) -> f64 {
    (0.5 + (number * PICTURES + picture + 1) as f64 * step).fract()
}

#[expect(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "hundreds of worlds"
)]
fn pick(at: f64, count: usize) -> usize {
    ((at * count as f64) as usize).min(count.saturating_sub(1))
}

#[expect(clippy::cast_precision_loss, reason = "a few worlds")]
fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len().max(1) as f64
}
