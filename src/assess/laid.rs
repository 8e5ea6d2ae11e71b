//! The beads that a repair lays between the boards of each section.

use super::sections::SectionState;
use crate::bead::BeadDesign;
use crate::job::{Catalog, Job};
use crate::joint::{BeadLay, JointEdges, LaidBead, Sealant};
use crate::measure::Percent;
use crate::surface::BoardSpec;

/// The bead of every section, as one way of laying it makes it of one sealant.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct LaidBeads(Vec<LaidBead>);

impl LaidBeads {
    /// Beads of `sealant`, laid so.
    pub fn new(
        job: &Job,
        catalog: &Catalog,
        sections: &[SectionState],
        lay: BeadLay,
        sealant: &Sealant,
    ) -> Self {
        let mut beads: Vec<(BeadDesign, LaidBead)> = Vec::with_capacity(sections.len());
        for state in sections {
            let design = design(job, state, lay);
            // Sections of like boards have the same bead.
            let same = beads.iter().find(|(laid, _)| *laid == design).map(|(_, bead)| bead.clone());
            let bead =
                same.unwrap_or_else(|| LaidBead::new(lay, design, sealant, paint_stretch(job, catalog)));
            beads.push((design, bead));
        }
        Self(beads.into_iter().map(|(_, bead)| bead).collect())
    }

    /// Beads of the plan's sealant, laid so; `None` where the catalog does not have it.
    pub fn planned(job: &Job, catalog: &Catalog, sections: &[SectionState], lay: BeadLay) -> Option<Self> {
        Some(Self::new(job, catalog, sections, lay, catalog.sealant(&job.plan.sealant)?))
    }

    /// The bead of a section, by its index.
    pub fn of(&self, section: usize) -> Option<&LaidBead> {
        self.0.get(section)
    }
}

/// The bead of the plan's sealant between these boards, laid so; `None` where the catalog does not have it.
pub(super) fn laid_bead(job: &Job, catalog: &Catalog, board: &BoardSpec, lay: BeadLay) -> Option<LaidBead> {
    let sealant = catalog.sealant(&job.plan.sealant)?;
    let design = lay.design(JointEdges::of(board), &job.plan.bead.form());
    Some(LaidBead::new(lay, design, sealant, paint_stretch(job, catalog)))
}

fn design(job: &Job, state: &SectionState, lay: BeadLay) -> BeadDesign {
    let board = &job.surfaces[state.surface].sections[state.section].board;
    lay.design(JointEdges::of(board), &job.plan.bead.form())
}

/// The stretch at which the plan's paint cracks.
fn paint_stretch(job: &Job, catalog: &Catalog) -> Percent {
    catalog.paint(&job.plan.paint).map_or(Percent::pct(100.0), |paint| paint.cracks_at)
}
