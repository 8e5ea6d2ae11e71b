//! The next install: how wet boards may be when they go up, whether a delivery is, and when it will be.
//!
//! Pure data in, data out. [`RoomWorlds`](crate::belief::RoomWorlds) are the room's plausible worlds; to
//! each of them belongs one plausible delivery ([`Lot`]), one lot's shrinkage and one pace of the stack.
//! Whatever is said (the window, the verdict at the gate, the day the stack is ready) is counted over the
//! same worlds. Read [`window`] first, then [`Lot`], [`look`].

mod boards;
mod easier;
mod entered;
mod gate;
mod known;
mod later;
mod lot;
mod movement;
mod outlook;
mod piled;
mod stack;
mod stacked;
mod unknowns;
mod wanted;
mod window;

pub use boards::{Chances, Joints, PlannedBoards};
pub use easier::{Caulking, Change, Easier, Lived, Then, Way, caulking, easier};
pub use entered::{BoardReading, NextInstall};
pub use gate::{Enough, Gate, Lever, Promise, Ready, Verdict, good_enough};
pub use known::{DryShell, HangDay, Known, LastRead, LotNow, USUAL_READINGS, WatchDay};
pub use later::Surprise;
pub use lot::{Lot, LotReading};
pub use movement::{Movement, movement};
pub use outlook::{HORIZON, Outlook, Remedy, hung_on, look};
pub use stack::{Kept, Piling, Stack, StackFigures, moisture_after};
pub use wanted::{Can, Wanted};
pub use window::{Aim, DRIEST, Window, aim_at, window};
