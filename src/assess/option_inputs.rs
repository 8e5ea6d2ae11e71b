//! What the repair options, their chances and the later visits follow from.

use super::sections::{JointState, SectionState};
use crate::job::{Catalog, Job};
use crate::surface::SurfaceLayout;

/// What the options, their chances and the later visits follow from.
#[derive(Clone, Copy)]
pub(super) struct OptionInputs<'a> {
    pub job: &'a Job,
    pub catalog: &'a Catalog,
    pub layouts: &'a [SurfaceLayout],
    pub sections: &'a [SectionState],
    pub joints: &'a [JointState],
    /// Days from the visit to the first day of sealing.
    pub seal_day: usize,
    /// Share of the boards' movement that is left where the room's humidity is held in a band.
    pub held: f64,
}
