//! The plan: what is not in the catalog, stock, payers, minutes.

use super::readings::has_section;
use super::{Checked, Problems};
use crate::job::fields::{self, Figures};
use crate::job::problem::{Fault, Listed, PlanFault};
use crate::job::sanitized::supplier_share;
use crate::measure::{Length, Minutes, Money, Percent, Quantity};
use crate::repair::{Charging, PriceLine, Shares, Trade};

pub(super) fn plan(job: &Checked<'_>, problems: &mut Problems) {
    let (plan, catalog) = (&job.entered.plan, job.catalog);
    for (field, listed, name, known) in [
        (&fields::SEALANT, Listed::Sealant, &plan.sealant, catalog.sealant(&plan.sealant).is_some()),
        (&fields::PRIMER, Listed::Primer, &plan.primer, catalog.paint(&plan.primer).is_some()),
        (&fields::PAINT, Listed::Paint, &plan.paint, catalog.paint(&plan.paint).is_some()),
    ] {
        if !known {
            problems.once(field, Fault::NotInCatalog { listed, name: name.clone() });
        }
    }
    payers(job, problems);
    stock(job, problems);
    own_minutes(job, problems);
    wages(job, problems);
    timed_section(job, problems);
}

fn payers(job: &Checked<'_>, problems: &mut Problems) {
    let payers = &job.entered.plan.payers;
    let whole = (&fields::SUPPLIER_SHARE, None, payers.overall());
    let line = |(line, shares): (&PriceLine, &Shares)| (&fields::LINE_SPLIT, Some(*line), *shares);
    for (field, line, shares) in std::iter::once(whole).chain(payers.lines.iter().map(line)) {
        // Shares that are out of their range are reported as that; of those held to it, what is left.
        let held = |share: Percent| share.max(Percent::ZERO).min(Percent::pct(100.0));
        let shares = Shares { contractor: held(shares.contractor), supplier: held(shares.supplier) };
        let used = supplier_share(shares);
        if used < shares.supplier {
            let Shares { contractor, supplier } = shares;
            problems.once(field, PlanFault::SharesOverWhole { line, contractor, supplier, used });
        }
    }
}

/// Boards to buy must be long enough for the longest course.
fn stock(job: &Checked<'_>, problems: &mut Problems) {
    let plan = &job.sanitized.plan;
    let boards = job.layouts.iter().flat_map(|laid| &laid.boards);
    let board = boards.map(|board| board.run).fold(Length::ZERO, Length::max);
    let Some(stock) = plan.stock.lengths.iter().copied().reduce(Length::max) else {
        problems.once(&fields::STOCK_LENGTHS, PlanFault::NoStock);
        return;
    };
    let good = stock - plan.stock.end_trim;
    if board > good + Length::mm(1.0) {
        problems.once(&fields::STOCK_LENGTHS, PlanFault::StockTooShort { board, stock, good });
    }
}

fn own_minutes(job: &Checked<'_>, problems: &mut Problems) {
    let figures: Option<&Figures> = fields::OWN_MINUTES.figures();
    for (task, &minutes) in &job.entered.plan.own_minutes {
        let points = [minutes.low, minutes.likely, minutes.high];
        let holds = |point: f64| figures.is_none_or(|f| f.holds(Quantity::Minutes(Minutes::of(point))));
        if !job.catalog.tasks.iter().any(|known| known.id == *task) {
            problems.once(&fields::OWN_MINUTES, PlanFault::NoSuchTask { task: task.clone() });
        }
        let in_order = minutes.is_in_order() && minutes.likely > 0.0;
        if points.into_iter().all(holds) && !in_order {
            let task = task.clone();
            problems.once(&fields::OWN_MINUTES, PlanFault::MinutesOutOfOrder { task, minutes });
        }
    }
}

/// From this wage on it is more likely what an hour is charged at: well above the mean of either trade.
/// Assumption.
const DEAR_WAGE: Money = Money::cents(4_500);

/// A wage that is surely a rate with everything in it would have burden, overhead and profit put on top.
fn wages(job: &Checked<'_>, problems: &mut Problems) {
    let prices = &job.entered.plan.prices;
    let builds_up = prices.charging == Charging::BuildUp && prices.burden > Percent::ZERO;
    for (field, trade) in [(&fields::WAGE, Trade::Painter), (&fields::CARPENTER_WAGE, Trade::Carpenter)] {
        let wage = prices.wage(trade);
        if builds_up && wage > DEAR_WAGE {
            let on_top = (1.0 + prices.overhead.to_fraction()) * (1.0 + prices.profit.to_fraction());
            let charged = prices.hour(trade).times(on_top);
            problems.once(field, PlanFault::WageLikeCharge { wage, charged });
        }
    }
}

fn timed_section(job: &Checked<'_>, problems: &mut Problems) {
    let Some(timed) = &job.entered.plan.trial else { return };
    if timed.minutes.is_none() {
        problems.once(&fields::TIMED_MINUTES, PlanFault::NoTimedMinutes);
    }
    if !has_section(&job.sanitized.surfaces, &timed.surface, &timed.section) {
        let (surface, section) = (timed.surface.clone(), timed.section.clone());
        problems.once(&fields::TIMED_SECTION, PlanFault::NoSuchTimedSection { surface, section });
    }
}
