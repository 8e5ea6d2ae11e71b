//! The work as a chain: pieces one after the other, with waits between.

use super::super::methods::{Step, Wait};
use super::super::task_kinds::TaskPer;
use super::super::tasks::TaskHours;
use super::{BarStep, ScheduleInputs};

/// What a piece waits for after the one before it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Lag {
    /// Nothing.
    None,
    /// So many hours for a place; other places may be worked on meanwhile.
    Hours(Wait, f64),
    /// The morning after so many hours.
    Morning(Wait, f64),
    /// The morning of the day that begins so many hours after the day the work might have begun.
    Until(Wait, f64),
}

impl Lag {
    /// Whether the crew stays away for it, for days or weeks.
    pub const fn is_between_visits(self) -> bool {
        matches!(self, Self::Morning(..) | Self::Until(..))
    }

    /// What is waited for.
    pub const fn of(self) -> Option<Wait> {
        match self {
            Self::None => None,
            Self::Hours(wait, _) | Self::Morning(wait, _) | Self::Until(wait, _) => Some(wait),
        }
    }

    /// The longer of two waits with nothing between them.
    fn longer(self, other: Self) -> Self {
        let hours = |lag: Self| match lag {
            Self::None => 0.0,
            Self::Hours(_, hours) | Self::Morning(_, hours) | Self::Until(_, hours) => hours,
        };
        if hours(other) > hours(self) { other } else { self }
    }
}

/// Parts of the room.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Parts {
    /// Sections.
    pub sections: usize,
    /// Joints, where that is what is worked on; else 1.
    pub joints: usize,
}

/// Work that is done in one go, over as many days as it takes.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Piece {
    /// What is done.
    pub does: BarStep,
    /// The same in a word or two; empty where the plan of a day does not name it.
    pub short: String,
    /// The method's step it is of.
    pub of_step: usize,
    /// Hours of one person.
    pub hours: f64,
    /// What is waited for first.
    pub lag: Lag,
    /// The method's step that the wait is of.
    pub lag_of_step: usize,
    /// Into how many parts of the room, alike and worked one after the other, it falls.
    pub parts: Parts,
    /// Hours of one person by which the wait is shorter, as one part dries while the next is worked on.
    pub overlap: f64,
    /// People it takes at once.
    pub people: u32,
    /// Whether it closes the room.
    pub closes: bool,
    /// Whether the room can be used again after it.
    pub opens: bool,
}

/// Where there is one section, its joints are worked in so many stretches. Judgment.
const STRETCHES: usize = 4;

/// The task with which the room is closed, and the one after which it can be used again.
const CLOSES: (&str, &str) = ("protect", "clean");

/// The method's pieces, and the wait after the last of them.
pub(super) struct Chain {
    /// The pieces.
    pub pieces: Vec<Piece>,
}

/// The chain of a method's steps. Steps that take no time are left out, with the waits that nothing
/// follows.
///
/// A wait holds for every part of the room: B may begin in a part once A ended there so long ago. Of n equal
/// parts, worked in the same order, the first or the last holds B up most: what is waited after all
/// of A is the wait less (n − 1)/n of the shorter of A and B. What follows B without another wait is done in each part
/// right after it, so B is all of that. Joints are worked one after the other, so A and B may go joint by joint; or
/// all that is done to the joints before the wait goes stretch by stretch, by sections or by [`STRETCHES`] of one, and
/// A is all of that. Whichever waits less.
pub(super) fn chain(inputs: &ScheduleInputs<'_>) -> Chain {
    let parts = Parts { sections: inputs.sections.max(1), joints: inputs.joints.max(1) };
    let mut chain = Builder { pieces: Vec::new(), lag: (Lag::None, 0), parts };
    let steps = &inputs.method.steps;
    let coats_follow = |number: usize| matches!(steps.get(number + 1), Some(Step::Coats(_)));
    let mut each_coat: Option<(usize, &TaskHours)> = None;
    for (number, step) in inputs.method.steps.iter().enumerate() {
        let task = inputs.tasks.iter().find(|(of_step, _)| *of_step == number).map(|(_, task)| task);
        match (step, task) {
            (Step::Wait(wait), _) => chain.wait(number, *wait, inputs.waits.of(*wait).to_h()),
            // What is set up for each coat is set up before each.
            (Step::Do(_), Some(task)) if task.batch.0 == TaskPer::Coat && coats_follow(number) => {
                each_coat = Some((number, task));
            }
            (Step::Do(_), Some(task)) => {
                chain.work(number, BarStep::Task(task.name.clone()), task.hours.mean.to_h(), task);
            }
            (Step::Coats(_), Some(task)) => {
                let coats = inputs.crew.coats;
                let hours = task.hours.mean.to_h() / f64::from(coats.max(1));
                let set_up = each_coat.take();
                for coat in 1..=coats {
                    if let Some((of_step, task)) = set_up {
                        let hours = task.hours.mean.to_h() / f64::from(coats);
                        chain.work(of_step, BarStep::Task(task.name.clone()), hours, task);
                    }
                    chain.work(number, BarStep::Coat(coat), hours, task);
                    // Masking is pulled while the last coat dries.
                    if coat < coats {
                        chain.wait(number, Wait::Recoat, inputs.waits.recoat.to_h());
                    }
                }
            }
            (_, None) => {}
        }
    }
    let mut pieces = chain.pieces;
    overlap(&mut pieces);
    Chain { pieces }
}

/// Finds by how much waits are shorter, for each piece that waits.
#[expect(clippy::cast_precision_loss, reason = "a count of joints")]
fn overlap(pieces: &mut [Piece]) {
    for at in 1..pieces.len() {
        if !matches!(pieces[at].lag, Lag::Hours(..)) {
            continue;
        }
        let goes_on = pieces[at + 1..].iter().take_while(|next| next.lag == Lag::None);
        let after = pieces[at].hours + goes_on.map(|next| next.hours).sum::<f64>();
        let parts = |own: [usize; 2]| own[0].min(own[1]) as f64;
        let [before, this] = [at - 1, at].map(|piece| pieces[piece].parts);
        let by_joint = (1.0 - 1.0 / parts([before.joints, this.joints])) * pieces[at - 1].hours.min(after);
        // From the first of what is done to the joints before the wait.
        let run = (0..at).rev().take_while(|&piece| pieces[piece].parts.joints > 1);
        let begun = run.clone().find(|&piece| pieces[piece].lag != Lag::None).unwrap_or(0);
        let all: f64 = run.filter(|piece| *piece >= begun).map(|piece| pieces[piece].hours).sum();
        let stretches = |own: Parts| own.sections.max(own.joints.min(STRETCHES));
        let by_stretch = (1.0 - 1.0 / parts([stretches(before), stretches(this)]))
            * all.max(pieces[at - 1].hours).min(after);
        pieces[at].overlap = by_joint.max(by_stretch);
    }
}

struct Builder {
    pieces: Vec<Piece>,
    /// What the next piece waits for, and of which step that is.
    lag: (Lag, usize),
    parts: Parts,
}

impl Builder {
    fn wait(&mut self, of_step: usize, wait: Wait, hours: f64) {
        if hours <= 0.0 {
            return;
        }
        let lag = match wait {
            Wait::Season => Lag::Until(wait, hours),
            Wait::Acclimation => Lag::Morning(wait, hours),
            Wait::Primer | Wait::Sealant | Wait::Recoat => Lag::Hours(wait, hours),
        };
        let longer = self.lag.0.longer(lag);
        if longer != self.lag.0 {
            self.lag = (longer, of_step);
        }
    }

    fn work(&mut self, of_step: usize, does: BarStep, hours: f64, task: &TaskHours) {
        if hours <= 1e-9 {
            return;
        }
        let (lag, lag_of_step) = std::mem::replace(&mut self.lag, (Lag::None, 0));
        self.pieces.push(Piece {
            does,
            short: task.short.clone(),
            of_step,
            hours,
            lag,
            lag_of_step,
            parts: match task.batch.0 {
                TaskPer::JointRun | TaskPer::BeadRun | TaskPer::BackedRun => self.parts,
                _ => Parts { joints: 1, ..self.parts },
            },
            overlap: 0.0,
            people: task.people,
            closes: task.id == CLOSES.0,
            opens: task.id == CLOSES.1,
        });
    }
}
