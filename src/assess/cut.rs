//! The cut through a joint on a day, with the bead as the chosen option lays it.

use super::{Assessment, JointState, SectionState};
use crate::job::{Catalog, Job};
use crate::joint::{Cut, PlacedBead, Sealant};
use crate::measure::Length;
use crate::repair::Outcome;

/// The bead of the chosen option.
#[derive(Debug, Clone, PartialEq)]
pub struct PlannedBead {
    /// The sealant, as it takes movement laid like this.
    pub sealant: Sealant,
    /// Whether a backer or bond breaker lies behind it.
    pub breaker: bool,
}

pub(super) fn planned_bead(job: &Job, catalog: &Catalog) -> Option<PlannedBead> {
    let Outcome::Bead { breaker, .. } = catalog.method(job.plan.chosen)?.outcome else { return None };
    Some(PlannedBead { sealant: catalog.bead(&job.plan)?, breaker })
}

impl Assessment {
    /// The cut through a joint of a section, else through its mean one, `day` days after the visit,
    /// with the gap then. Boards are drawn `reach` to either side. `None` if no gap is known.
    pub fn cut(
        &self,
        job: &Job,
        state: &SectionState,
        joint: Option<&JointState>,
        day: usize,
        reach: Length,
    ) -> Option<(Cut, Length)> {
        let spec = &job.surfaces.get(state.surface)?.sections.get(state.section)?.board;
        let on = |day| match joint {
            Some(joint) => self.gap_on(joint, day),
            None => Some(state.mean_gap_on(day)),
        };
        let gap = on(day)?;
        let width = on(self.seal_day).filter(|gap| day >= self.seal_day && *gap >= job.plan.narrowest);
        let laid = width.zip(self.bead.as_ref()).map(|(width, bead)| PlacedBead {
            sealant: &bead.sealant,
            width,
            depth: width.max(job.plan.bead.least_depth),
            breaker: bead.breaker,
        });
        Some((Cut::new(spec, gap, reach, laid), gap))
    }
}
