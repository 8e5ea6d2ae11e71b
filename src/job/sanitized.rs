//! The job as results are worked out from it: values that cannot be are mended or left out.
//!
//! [`super::check`] reports every such value; the document itself keeps what was entered. Ranges come from
//! the table of fields, and what no range can say stands here. Surfaces, sections and the like keep their
//! indices, so that results fit the document; of readings, those that cannot be are gone.

use jiff::ToSpan as _;
use jiff::civil::Date;

use super::document::Job;
use super::fields::{At, Each, FIELDS, Figure, Figures, Kind};
use crate::measure::{Length, Percent};
use crate::repair::{Payers, Shares};
use crate::surface::{BoardSpec, Profile};

/// A copy of `job` in which every value can be.
pub fn sanitized(job: &Job) -> Job {
    let mut job = job.clone();
    for field in FIELDS.iter() {
        match &field.kind {
            Kind::Figure(figure) => mend_figure(&mut job, field.each, figure),
            Kind::Figures(figures) => mend_figures(&mut job, field.each, figures),
            _ => {}
        }
    }
    for section in job.surfaces.iter_mut().flat_map(|surface| &mut surface.sections) {
        let limit = widest_profile(&section.board);
        if let Profile::VGroove(size) | Profile::Bead(size) = &mut section.board.profile {
            *size = size.min(limit);
        }
    }
    mend_shares(&mut job.plan.payers);
    job.plan.own_minutes.retain(|_, minutes| minutes.is_in_order() && minutes.likely > 0.0);
    let visited = job.visited;
    job.plan.seal_on = job.plan.seal_on.filter(|date| (visited..=last_sealing(visited)).contains(date));
    job.installed = job.installed.filter(|installed| installed.earliest() <= visited);
    job.built = job.built.filter(|built| *built <= visited.year());
    job
}

fn mend_figure(job: &mut Job, each: Each, figure: &Figure) {
    let mut left_out = Vec::new();
    for at in each.entries(job) {
        let Some(value) = (figure.read)(job, at).filter(|value| !figure.holds(*value)) else { continue };
        match figure.mended(value) {
            None if !figure.optional => left_out.push(at),
            mended => (figure.write)(job, at, mended),
        }
    }
    leave_out(job, each, &left_out);
}

fn mend_figures(job: &mut Job, each: Each, figures: &Figures) {
    for at in each.entries(job) {
        (figures.mend)(job, at, figures.most, &|value| figures.mended(value));
    }
}

/// Takes readings out of their list: only readings have figures that leave nothing in their place.
fn leave_out(job: &mut Job, each: Each, entries: &[At]) {
    fn without<T>(list: &mut Vec<T>, entries: &[At]) {
        let mut index = 0;
        list.retain(|_| {
            index += 1;
            !entries.contains(&At::index(index - 1))
        });
    }
    if entries.is_empty() {
        return;
    }
    match each {
        Each::Gap => without(&mut job.survey.gaps, entries),
        Each::Moisture => without(&mut job.survey.moistures, entries),
        Each::Room => without(&mut job.survey.rooms, entries),
        _ => {}
    }
}

/// The widest edge profile of a board: past half its face, both edges would meet.
pub(super) fn widest_profile(board: &BoardSpec) -> Length {
    board.face_width / 2.0
}

/// The last day on which sealing is worked out: a full year after it must still be known.
pub(super) fn last_sealing(visited: Date) -> Date {
    visited.checked_add(730.days()).unwrap_or(visited)
}

/// Of shares that are more than the whole, the supplier's gives way.
pub(super) fn supplier_share(shares: Shares) -> Percent {
    shares.supplier.min(Percent::pct(100.0) - shares.contractor)
}

fn mend_shares(payers: &mut Payers) {
    payers.supplier = supplier_share(payers.overall());
    for shares in payers.lines.values_mut() {
        shares.supplier = supplier_share(*shares);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::fields::Mending;

    #[test]
    fn what_is_left_out_leaves_an_empty_entry_or_takes_its_reading() {
        for field in FIELDS.iter() {
            if let Some(figure) = field.figure().filter(|figure| figure.mending == Mending::LeaveOut) {
                let reading = matches!(field.each, Each::Gap | Each::Moisture | Each::Room);
                assert!(figure.optional || reading, "{}", field.id);
            }
        }
    }
}
