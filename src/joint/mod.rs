//! How a joint moves through the year, and what that asks of the bead in it.
//!
//! [`SettledYear`] is the moisture a board swings through when it has been in the room for long;
//! [`BoardMotion`] adds what it still has to lose and turns moisture into movement, day by day
//! from the visit; [`bead`] holds a joint's movement against a sealant's class and [`mod@season`]
//! does so for every week in which it could be sealed.

pub mod bead;
mod moisture;
mod motion;
pub mod season;

pub use bead::{Demand, Sealant, demand, required_width};
pub use moisture::SettledYear;
pub use motion::{BoardMotion, HORIZON, JointMotion};
pub use season::{SealedJoint, Season, Week, season};
