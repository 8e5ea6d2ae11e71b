//! Why the joints opened.
//!
//! The boards cannot be asked how wet they were, but the gap remembers: from the mean gap, the
//! width that shrank and the present moisture follows the moisture they went up with
//! ([`install_moisture`]), to be held against what the lumber stamps allow ([`Mark`]).

mod marks;
mod origin;

pub use marks::{Mark, against_marks};
pub use origin::{Origin, OriginInputs, install_moisture};
