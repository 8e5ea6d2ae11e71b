//! The parts of a job that fields stand in, and how many of them there are.

use super::{At, Each};
use crate::air::{Air, IndoorAir};
use crate::job::document::Job;
use crate::surface::Point;

/// A part of a job, to read and to change, as a module with a function for each.
macro_rules! part {
    ($part:ident -> $type:ty: |$job:ident, $at:pat_param| $get:expr, $get_mut:expr) => {
        pub(super) mod $part {
            use super::*;

            pub fn read($job: &Job, $at: At) -> Option<&$type> {
                $get
            }

            pub fn write($job: &mut Job, $at: At) -> Option<&mut $type> {
                $get_mut
            }
        }
    };
}

part!(job -> Job: |job, _| Some(job), Some(job));
part!(house -> crate::air::HouseModel: |job, _| job.air.house(), job.air.house_mut());
part!(site -> crate::air::places::Site: |job, _| job.air.site(), job.air.site_mut());
part!(surface -> crate::surface::Surface: |job, at| job.surfaces.get(at.0), job.surfaces.get_mut(at.0));
part!(divider -> crate::surface::Divider: |job, at| job.surfaces.get(at.0)?.dividers.get(at.1),
    job.surfaces.get_mut(at.0)?.dividers.get_mut(at.1));
part!(section -> crate::surface::Section: |job, at| job.surfaces.get(at.0)?.sections.get(at.1),
    job.surfaces.get_mut(at.0)?.sections.get_mut(at.1));
part!(board -> crate::surface::BoardSpec: |job, at| section::read(job, at).map(|section| &section.board),
    section::write(job, at).map(|section| &mut section.board));
part!(gap -> crate::survey::GapReading: |job, at| job.survey.gaps.get(at.0), job.survey.gaps.get_mut(at.0));
part!(meter -> crate::survey::MoistureReading: |job, at| job.survey.moistures.get(at.0),
    job.survey.moistures.get_mut(at.0));
part!(room -> crate::survey::RoomReading: |job, at| job.survey.rooms.get(at.0), job.survey.rooms.get_mut(at.0));
part!(later -> crate::survey::LaterGap: |job, at| job.later.get(at.0)?.gaps.get(at.1),
    job.later.get_mut(at.0)?.gaps.get_mut(at.1));
part!(trial -> crate::repair::Trial: |job, _| job.plan.trial.as_ref(), job.plan.trial.as_mut());
part!(next -> crate::ready::NextInstall: |job, _| job.next_install.as_ref(), job.next_install.as_mut());
part!(stacked -> crate::ready::BoardReading: |job, at| job.next_install.as_ref()?.readings.get(at.0),
    job.next_install.as_mut()?.readings.get_mut(at.0));
part!(month -> Air: |job, at| months(job)?.get(at.0), months_mut(job)?.get_mut(at.0));
part!(outline -> Vec<Point>: |job, at| surface::read(job, at).map(|surface| &surface.outline),
    surface::write(job, at).map(|surface| &mut surface.outline));
part!(opening -> Vec<Point>: |job, at| job.surfaces.get(at.0)?.openings.get(at.1).map(|opening| &opening.corners),
    job.surfaces.get_mut(at.0)?.openings.get_mut(at.1).map(|opening| &mut opening.corners));
part!(region -> Vec<Point>: |job, at| section::read(job, at)?.region.as_ref(),
    section::write(job, at)?.region.as_mut());

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
            Self::Stacked => list(job.next_install.as_ref().map_or(0, |next| next.readings.len())),
            Self::LaterGap => nested(job.later.iter().map(|visit| visit.gaps.len()).collect()),
        }
    }
}
