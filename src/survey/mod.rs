//! What was measured in the room, and what a few readings say of every joint.
//!
//! [`Survey`] is what a person writes down. [`joint_gaps`] carries gap readings over to the joints
//! nobody measured, with the uncertainty that comes of it; [`board_moisture`] puts meter readings
//! right and averages them.

mod gaps;
mod moisture;
mod readings;

pub use gaps::{GapEstimate, SectionGaps, joint_gaps};
pub use moisture::{MoistureNow, board_moisture};
pub use readings::{Failure, GapReading, MeterSetting, MoistureReading, RoomReading, Survey};
