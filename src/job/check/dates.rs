//! Dates that do not follow one another.

use super::{Checked, Problems};
use crate::job::fields;
use crate::job::problem::DateFault;
use crate::job::sanitized::last_sealing;

pub(super) fn dates(job: &Checked<'_>, problems: &mut Problems) {
    let visited = job.entered.visited;
    if let Some(installed) = job.entered.installed.filter(|installed| installed.earliest() > visited) {
        problems.once(&fields::INSTALLED, DateFault::InstalledAfterVisit { installed, visited });
    }
    let last = last_sealing(visited);
    match job.entered.plan.seal_on {
        Some(date) if date < visited => {
            problems.once(&fields::SEALING_DATE, DateFault::SealsBeforeVisit { date, visited });
        }
        Some(date) if date > last => {
            problems.once(&fields::SEALING_DATE, DateFault::SealsTooLate { date, last });
        }
        _ => {}
    }
    let next = job.entered.next_install.as_ref();
    if let Some((wanted, delivered)) = next.and_then(|next| next.wanted.zip(next.delivered))
        && wanted < delivered
    {
        problems.once(&fields::NEXT_WANTED, DateFault::WantedBeforeDelivery { wanted, delivered });
    }
    for (index, reading) in next.iter().flat_map(|next| next.readings.iter().enumerate()) {
        let Some((next, date)) = next.zip(reading.date.filter(|_| reading.reading.is_some())) else {
            continue;
        };
        let (delivered, last) = (next.came(visited), next.last_day(visited));
        let place = fields::At::index(index);
        if date < delivered {
            problems.at(&fields::STACK_DATE, place, DateFault::ReadBeforeDelivery { date, delivered });
        } else if date > last {
            problems.at(&fields::STACK_DATE, place, DateFault::ReadTooLate { date, delivered });
        }
    }
    let built = fields::YEAR_BUILT.figure().zip(job.entered.built);
    if let Some((figure, built)) = built
        && figure.holds(crate::measure::Quantity::Year(built))
        && built > visited.year()
    {
        problems.once(&fields::YEAR_BUILT, DateFault::BuiltAfterVisit { built, visited });
    }
}
