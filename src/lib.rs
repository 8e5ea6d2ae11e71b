//! x
pub mod air;
pub mod cause;
pub mod joint;
pub mod measure;
pub mod surface;
pub mod survey;
pub mod wood;
