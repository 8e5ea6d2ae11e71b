//! The next install: how wet boards may be when they go up, whether a delivery is, and when it will be.
//!
//! Pure data in, data out. [`RoomWorlds`](crate::belief::RoomWorlds) are the room's plausible worlds; to
//! each of them belongs one plausible delivery ([`Lot`]), one lot's shrinkage and one pace of the stack.
//! Whatever is said (the window, the verdict at the gate, the day the stack is ready) is counted over the
//! same worlds. Read [`window`] first, then [`Lot`], [`look`].

mod boards;
mod easier;
mod entered;
mod lot;
mod movement;
mod outlook;
mod stack;
mod window;

pub use boards::{Chances, Joints, PlannedBoards};
pub use easier::{Caulking, Change, Easier, caulking, easier};
pub use entered::{BoardReading, FinishOrder, NextInstall};
pub use lot::{Lot, LotReading};
pub use movement::{Movement, movement};
pub use outlook::{
    DryShell, Gate, HORIZON, Known, Lever, LotNow, Outlook, Promise, Ready, Verdict, WatchDay, look,
};
pub use stack::{Kept, Piling, Stack, StackFigures, moisture_after};
pub use window::{Aim, Window, window};
