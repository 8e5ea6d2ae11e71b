//! The beads that a repair lays between the boards of each section.

use super::sections::SectionState;
use crate::bead::BeadDesign;
use crate::job::{Catalog, Job};
use crate::joint::{BeadLay, JointEdges, LaidBead, Sealant};
use crate::measure::{Length, Percent};
use crate::repair::Outcome;
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

/// Beads of the plan's sealant that no table holds, with the widest slot they are likely laid in.
pub(super) fn unsolved(
    job: &Job,
    catalog: &Catalog,
    sections: &[SectionState],
    seal_day: usize,
) -> Vec<(BeadDesign, Length)> {
    let lays = catalog.methods.iter().filter_map(|method| match method.outcome {
        Outcome::Bead { lay, .. } => Some(lay),
        _ => None,
    });
    let mut found: Vec<(BeadDesign, Length)> = Vec::new();
    for lay in lays {
        let beads = LaidBeads::planned(job, catalog, sections, lay);
        for (bead, state) in beads.iter().flat_map(|beads| &beads.0).zip(sections) {
            let widest = lay.slot(state.mean_gap_on(seal_day) * WIDEST);
            if widest > Length::ZERO
                && !bead.design.is_known(widest)
                && !found.contains(&(bead.design, widest))
            {
                found.push((bead.design, widest));
            }
        }
    }
    found
}

/// The widest joint of a section over its mean one, or nearly.
const WIDEST: f64 = 2.0;

fn design(job: &Job, state: &SectionState, lay: BeadLay) -> BeadDesign {
    let board = &job.surfaces[state.surface].sections[state.section].board;
    lay.design(JointEdges::of(board), &job.plan.bead.form())
}

/// The stretch at which the plan's paint cracks.
fn paint_stretch(job: &Job, catalog: &Catalog) -> Percent {
    catalog.paint(&job.plan.paint).map_or(Percent::pct(100.0), |paint| paint.cracks_at)
}
