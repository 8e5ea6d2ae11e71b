//! Figures that are out of their range, all by one rule.

use super::{Checked, Problems};
use crate::job::fields::{FIELDS, Field, Figure, Figures, Kind, Mending};
use crate::job::problem::RangeFault;

pub(super) fn ranges(job: &Checked<'_>, problems: &mut Problems) {
    for &field in FIELDS.iter() {
        match &field.kind {
            Kind::Figure(figure) => one(job, field, figure, problems),
            Kind::Figures(figures) => list(job, field, figures, problems),
            _ => {}
        }
    }
}

fn one(job: &Checked<'_>, field: &'static Field, figure: &Figure, problems: &mut Problems) {
    for at in field.each.entries(job.entered) {
        let Some(value) = (figure.read)(job.entered, at).filter(|value| !figure.holds(*value)) else {
            continue;
        };
        // Entries that are mended keep their indices; only readings that are left out do not.
        let used = match figure.mending {
            Mending::Nearest => (figure.read)(job.sanitized, at),
            Mending::LeaveOut => None,
        };
        problems.at(field, at, RangeFault::OutOfRange { value, low: figure.low, high: figure.high, used });
    }
}

fn list(job: &Checked<'_>, field: &'static Field, figures: &Figures, problems: &mut Problems) {
    let (low, high, most) = (figures.low, figures.high, figures.most);
    for at in field.each.entries(job.entered) {
        let all = (figures.read)(job.entered, at);
        let count = all.iter().filter(|(_, value)| figures.holds(*value)).count();
        for (item, value) in all.into_iter().filter(|(_, value)| !figures.holds(*value)) {
            let used = figures.mended(value);
            problems.at(field, at, RangeFault::ItemOutOfRange { item, value, low, high, used });
        }
        if count > most {
            problems.at(field, at, RangeFault::TooMany { count, most });
        }
    }
}
