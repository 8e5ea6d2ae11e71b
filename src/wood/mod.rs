//! Wood and water: what moisture a board comes to in given air and how fast, how its width follows,
//! and how a pin meter's reading is put right.
//!
//! Moisture is per cent of oven-dry mass throughout. Methods and tables are those of the USDA
//! Forest Products Laboratory's *Wood Handbook* (FPL-GTR-190, 2010).

pub mod drying;
mod emc;
mod meter;
mod shrinkage;
mod species;

pub use emc::{Isotherm, emc, equilibrium_humidity};
pub use meter::{MeterCheck, correct_pin_meter};
pub use shrinkage::{LENGTHWISE_PER_PCT, moisture_before, shrinkage, width_change};
pub use species::{CoefficientSource, Coefficients, Kind, Species, TotalShrinkage};
