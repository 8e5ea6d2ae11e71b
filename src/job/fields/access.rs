//! The parts of a job that fields stand in, and how many of them there are.

use super::{At, Each};
use crate::air::{Air, HouseModel, IndoorAir};
use crate::job::document::Job;
use crate::repair::Trial;
use crate::surface::{BoardSpec, Divider, Section, Surface};
use crate::survey::{GapReading, LaterGap, MoistureReading, RoomReading};

/// A part of a job to read, and the same to change.
macro_rules! part {
    ($read:ident, $write:ident -> $type:ty: |$job:ident, $at:ident| $get:expr, $get_mut:expr) => {
        #[expect(clippy::allow_attributes, reason = "not every part looks at both indices")]
        pub(super) fn $read(
            $job: &Job,
            #[allow(unused_variables, reason = "likewise")] $at: At,
        ) -> Option<&$type> {
            $get
        }
        #[expect(clippy::allow_attributes, reason = "not every part looks at both indices")]
        pub(super) fn $write(
            $job: &mut Job,
            #[allow(unused_variables, reason = "likewise")] $at: At,
        ) -> Option<&mut $type> {
            $get_mut
        }
    };
}

part!(job, job_mut -> Job: |job, at| Some(job), Some(job));
part!(house, house_mut -> HouseModel: |job, at| job.air.house(), job.air.house_mut());
part!(surface, surface_mut -> Surface: |job, at| job.surfaces.get(at.0), job.surfaces.get_mut(at.0));
part!(divider, divider_mut -> Divider: |job, at| job.surfaces.get(at.0)?.dividers.get(at.1),
    job.surfaces.get_mut(at.0)?.dividers.get_mut(at.1));
part!(section, section_mut -> Section: |job, at| job.surfaces.get(at.0)?.sections.get(at.1),
    job.surfaces.get_mut(at.0)?.sections.get_mut(at.1));
part!(board, board_mut -> BoardSpec: |job, at| section(job, at).map(|section| &section.board),
    section_mut(job, at).map(|section| &mut section.board));
part!(gap, gap_mut -> GapReading: |job, at| job.survey.gaps.get(at.0), job.survey.gaps.get_mut(at.0));
part!(meter, meter_mut -> MoistureReading: |job, at| job.survey.moistures.get(at.0),
    job.survey.moistures.get_mut(at.0));
part!(room, room_mut -> RoomReading: |job, at| job.survey.rooms.get(at.0), job.survey.rooms.get_mut(at.0));
part!(later, later_mut -> LaterGap: |job, at| job.later.get(at.0)?.gaps.get(at.1),
    job.later.get_mut(at.0)?.gaps.get_mut(at.1));
part!(trial, trial_mut -> Trial: |job, at| job.plan.trial.as_ref(), job.plan.trial.as_mut());
part!(month, month_mut -> Air: |job, at| months(job)?.get(at.0), months_mut(job)?.get_mut(at.0));

const fn months(job: &Job) -> Option<&[Air; 12]> {
    match &job.air {
        IndoorAir::Monthly(months) => Some(months),
        _ => None,
    }
}

const fn months_mut(job: &mut Job) -> Option<&mut [Air; 12]> {
    match &mut job.air {
        IndoorAir::Monthly(months) => Some(months),
        _ => None,
    }
}

impl Each {
    /// All entries of such a field in a job.
    pub fn entries(self, job: &Job) -> Vec<At> {
        let list = |length: usize| (0..length).map(At::index).collect();
        let nested = |lengths: Vec<usize>| {
            let all = lengths.into_iter().enumerate();
            all.flat_map(|(outer, length)| (0..length).map(move |inner| At(outer, inner))).collect()
        };
        let surfaces = job.surfaces.iter();
        match self {
            Self::Job => vec![At::ONCE],
            Self::Surface => list(job.surfaces.len()),
            Self::Opening => nested(surfaces.map(|surface| surface.openings.len()).collect()),
            Self::Divider => nested(surfaces.map(|surface| surface.dividers.len()).collect()),
            Self::Section => nested(surfaces.map(|surface| surface.sections.len()).collect()),
            Self::Gap => list(job.survey.gaps.len()),
            Self::Moisture => list(job.survey.moistures.len()),
            Self::Room => list(job.survey.rooms.len()),
            Self::Month => list(months(job).map_or(0, |months| months.len())),
            Self::Visit => list(job.later.len()),
            Self::LaterGap => nested(job.later.iter().map(|visit| visit.gaps.len()).collect()),
        }
    }
}
