//! The cut through a joint on a day, with the bead as the chosen option lays it.

use super::laid::LaidBeads;
use super::{Assessment, JointState, SectionState};
use crate::job::{Catalog, Job};
use crate::joint::{BeadState, Cut, LaidBead, PlacedBead};
use crate::measure::Length;
use crate::repair::Outcome;

/// The bead of the chosen option in each section, in the order of [`Assessment::sections`].
pub(super) fn planned_beads(job: &Job, catalog: &Catalog, sections: &[SectionState]) -> Option<LaidBeads> {
    let Outcome::Bead { lay, .. } = catalog.method(job.plan.chosen)?.outcome else { return None };
    LaidBeads::planned(job, catalog, sections, lay)
}

impl Assessment {
    /// Whether the chosen option lays beads.
    pub const fn lays_beads(&self) -> bool {
        self.beads.is_some()
    }

    /// The bead of the chosen option in a section; `None` where it lays none.
    pub fn bead(&self, state: &SectionState) -> Option<&LaidBead> {
        let same = |of: &&SectionState| (of.surface, of.section) == (state.surface, state.section);
        self.beads.as_ref()?.of(self.sections.iter().position(|of| same(&of))?)
    }

    /// The cut through a joint of a section, else through its mean one, `day` days from the visit, with the
    /// gap then. Boards are drawn `reach` to either side. `None` if no gap is known.
    pub fn cut(
        &self,
        job: &Job,
        state: &SectionState,
        joint: Option<&JointState>,
        day: i64,
        reach: Length,
    ) -> Option<(Cut, Length)> {
        let spec = &job.surfaces.get(state.surface)?.sections.get(state.section)?.board;
        let on = |day| self.gap_at(state, joint, day);
        let gap = on(day)?;
        let seal_day = i64::try_from(self.seal_day).ok()?;
        let sealed = on(seal_day).filter(|gap| day >= seal_day && *gap >= job.plan.narrowest);
        let laid = sealed.zip(self.bead(state)).and_then(|(gap, bead)| {
            Some(PlacedBead { bead, gap, been: self.gaps_between(state, joint, (seal_day, day))? })
        });
        Some((Cut::new(spec, gap, reach, laid), gap))
    }

    /// How the bead of a joint of a section, else of its mean one, fares `day` days from the visit, and whether the
    /// paint over it is cracked. `None` where there is no bead.
    pub fn bead_on(
        &self,
        state: &SectionState,
        joint: Option<&JointState>,
        day: i64,
    ) -> Option<(BeadState, bool)> {
        let seal_day = i64::try_from(self.seal_day).ok().filter(|sealed| day >= *sealed)?;
        let sealed = self.gap_at(state, joint, seal_day).filter(|gap| *gap >= self.job.plan.narrowest)?;
        let been = self.gaps_between(state, joint, (seal_day, day))?;
        let spec = &self.job.surfaces.get(state.surface)?.sections.get(state.section)?.board;
        let laid = PlacedBead { bead: self.bead(state)?, gap: sealed, been };
        Some(laid.fares(self.gap_at(state, joint, day)?, spec.tongue()))
    }
}
