//! What was measured in the room, and what a few readings say of every joint.
//!
//! [`Survey`] is what a person writes down. [`joint_gaps`] carries gap readings over to the joints
//! nobody measured, with the uncertainty that comes of it; [`reading_order`] says which to read first; [`readings_behind`] puts meter readings
//! right and averages them. [`sampling_plan`] says how many boards of a delivery to measure.

mod doubted;
mod gaps;
mod hierarchy;
mod later;
mod moisture;
mod order;
mod readings;
mod sampling;

pub use doubted::DoubtedGap;
pub use gaps::{GapEstimate, GapSurvey, NextReading, OpeningRange, SectionGaps, joint_gaps};
pub use hierarchy::{GroupEstimate, Hierarchy, Share};
pub use later::{LaterGap, LaterVisit};
pub use moisture::{MoistureNow, moisture_readings, readings_behind};
pub use order::reading_order;
pub use readings::{Failure, GapReading, MeterSetting, MoistureReading, RoomReading, Survey};
pub use sampling::{SamplingPlan, SamplingRisks, accepts, sampling_plan};
