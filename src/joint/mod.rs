//! How a joint moves through the year, and what that asks of the bead in it.
//!
//! [`BoardYears`] follows one build-up's moisture through the room's years; [`BoardMotion`] turns it
//! into movement, day by day from the visit; [`Row`] is a row of boards that are bonded together;
//! [`bead`] holds a joint's movement against what a bead takes as it is laid and [`mod@season`] does so for every
//! week in which it could be sealed.

pub mod bead;
mod build_up;
mod cut;
mod moisture;
mod motion;
mod row;
pub mod season;

pub use bead::{BeadForm, BeadLay, Demand, JointEdges, LaidBead, Pack, REVEAL, Sealant, demand};
pub use build_up::{Coating, Films, panel};
pub use cut::{BeadCut, BeadState, Cut, PlacedBead};
pub use moisture::{BoardYears, HORIZON};
pub use motion::{BoardMotion, JointMotion};
pub use row::{Bonding, Row, RowBoard, RowJoint, RowState};
pub use season::{SealedJoint, Season, Week, sealed_on, season};
