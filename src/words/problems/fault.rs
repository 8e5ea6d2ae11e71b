//! What is wrong with the entries of a job.

use super::{Part, book, drawing, item_name, part};
use crate::job::fields::{Field, Item};
use crate::job::{
    Catalog, DateFault, Dated, Fault, FileFault, LayoutFault, Listed, PlanFault, RangeFault, ReadingFault,
    SectionFault,
};
use crate::measure::{DayOrMonth, Quantity};
use crate::repair::PriceLine;
use crate::words::{Arg, Words};

/// A part of the message of a fault of a field.
pub(super) fn say(fault: &Fault, field: Option<&Field>, which: Part, words: &Words) -> String {
    match fault {
        Fault::File(fault) => file(fault, which, words),
        Fault::Range(fault) => range(fault, field, which, words),
        Fault::Drawing(kind) => drawing::say(kind, which, words),
        Fault::Layout(fault) => layout(fault, which, words),
        Fault::Reading(fault) => reading(fault, which, words),
        Fault::Date(fault) => date(fault, which, words),
        Fault::Plan(fault) => plan(fault, field, which, words),
        Fault::Book(fault) => book::say(fault, which, words),
        Fault::Section(fault) => section(fault, which, words),
        Fault::NotInCatalog { listed, name } => {
            let catalog = Catalog::built_in();
            let sold = match listed {
                Listed::Species => catalog.species_sold_as(name),
                _ => vec![],
            };
            let count = u64::try_from(sold.len()).unwrap_or(u64::MAX);
            let sold: Vec<_> = sold.iter().map(|species| words.called(&species.name)).collect();
            let sold = words.figures().list(&sold);
            part!(
                which,
                words,
                "problem-not-in-catalog",
                listed = Arg::Id(listed.key()),
                name = name,
                count = count,
                sold = &sold
            )
        }
        Fault::ClimateUnreadable { place } => {
            part!(which, words, "problem-climate-unreadable", place = place)
        }
        Fault::CoolsBelowHeat { cool, heat } => {
            part!(which, words, "problem-cools-below-heat", cool = *cool, heat = *heat)
        }
    }
}

/// A day, or the month alone where the day is not known.
fn day_or_month(install: DayOrMonth) -> Arg<'static> {
    match install.is_day_known() {
        true => Arg::Date(install.date()),
        false => Arg::Month(install.date()),
    }
}

/// The text of a job's file.
fn file(fault: &FileFault, which: Part, words: &Words) -> String {
    match fault {
        FileFault::LeftOut { reason, text } => part!(
            which,
            words,
            "problem-left-out",
            reason = Arg::Id(reason.key()),
            about = Arg::Name(reason.about()),
            text = text
        ),
        FileFault::UnknownEntry { name } => part!(which, words, "problem-unknown-entry", name = name),
    }
}

/// Figures that cannot be.
fn range(fault: &RangeFault, field: Option<&Field>, which: Part, words: &Words) -> String {
    match fault {
        RangeFault::OutOfRange { value, low, high, used } => {
            out_of_range(("field", 0, ""), [*value, *low, *high], *used, which, words)
        }
        RangeFault::ItemOutOfRange { item, value, low, high, used } => {
            let of = match item {
                Item::Number(number) => ("number", *number, ""),
                Item::Id(id) => ("name", 0, item_name(field, id)),
                Item::Line(line) => (line.key(), 0, ""),
            };
            out_of_range(of, [*value, *low, *high], *used, which, words)
        }
        RangeFault::TooMany { count, most } => {
            part!(which, words, "problem-too-many", count = *count, most = *most)
        }
    }
}

/// A figure that is out of its range: what it is of, as an id to select by, with the number or the name where
/// it has one.
fn out_of_range(
    (of, number, name): (&'static str, usize, &str),
    [value, low, high]: [Quantity; 3],
    used: Option<Quantity>,
    which: Part,
    words: &Words,
) -> String {
    part!(
        which,
        words,
        "problem-out-of-range",
        of = Arg::Id(of),
        number = number,
        name = Arg::Called(name),
        value = value,
        low = low,
        high = high,
        mended = Arg::Id(if used.is_some() { "used" } else { "left-out" }),
        used = used.unwrap_or(value)
    )
}

/// Surfaces and their boards.
fn layout(fault: &LayoutFault, which: Part, words: &Words) -> String {
    match fault {
        LayoutFault::NoBoards { surface } => part!(which, words, "problem-no-boards", surface = surface),
        LayoutFault::SameSurface { name } => part!(which, words, "problem-same-surface", name = name),
        LayoutFault::SameSection { name } => part!(which, words, "problem-same-section", name = name),
        LayoutFault::ProfileTooWide { size, used } => {
            part!(which, words, "problem-profile-too-wide", size = *size, used = *used)
        }
    }
}

/// Readings.
fn reading(fault: &ReadingFault, which: Part, words: &Words) -> String {
    match fault {
        ReadingFault::NoSuchJoint { surface, joint } => {
            part!(which, words, "problem-no-such-joint", surface = surface, joint = Arg::Joint(joint))
        }
        ReadingFault::NoSuchSection { surface, section } => {
            part!(which, words, "problem-no-such-section", surface = surface, section = section)
        }
        ReadingFault::NearTongue { width, tongue } => {
            part!(which, words, "problem-near-tongue", width = *width, tongue = *tongue)
        }
        ReadingFault::GapsDiffer { joint, earlier, later } => {
            part!(
                which,
                words,
                "problem-gaps-differ",
                joint = Arg::Joint(joint),
                earlier = *earlier,
                later = *later
            )
        }
        ReadingFault::MoisturesDiffer { earlier, later } => {
            part!(which, words, "problem-moistures-differ", earlier = *earlier, later = *later)
        }
        ReadingFault::NoReading => part!(which, words, "problem-no-reading"),
        ReadingFault::MeterUnsure { reading, low, high } => {
            part!(which, words, "problem-meter-unsure", reading = *reading, low = *low, high = *high)
        }
        ReadingFault::OpenBetweenFixed { joint, width } => {
            part!(which, words, "problem-open-between-fixed", joint = Arg::Joint(joint), width = *width)
        }
        ReadingFault::AllClosed { count } => part!(which, words, "problem-all-closed", count = *count),
        ReadingFault::NotThisRoom { reading, low, high } => {
            part!(which, words, "problem-not-this-room", reading = *reading, low = *low, high = *high)
        }
        ReadingFault::MeterUnlikeRest { says, low, high } => {
            part!(which, words, "problem-meter-unlike-rest", says = *says, low = *low, high = *high)
        }
        ReadingFault::ReadingDated { dated, date } => match *dated {
            Dated::AfterVisit(visited) => {
                part!(which, words, "problem-dated-after-visit", date = *date, visited = visited)
            }
            Dated::BeforeInstall(installed) => {
                part!(
                    which,
                    words,
                    "problem-dated-before-install",
                    date = *date,
                    installed = day_or_month(installed)
                )
            }
            Dated::DaysBefore(days) => {
                part!(which, words, "problem-dated-long-before", date = *date, days = days)
            }
        },
    }
}

/// Dates.
fn date(fault: &DateFault, which: Part, words: &Words) -> String {
    match fault {
        DateFault::InstalledAfterVisit { installed, visited } => {
            part!(
                which,
                words,
                "problem-installed-after-visit",
                installed = day_or_month(*installed),
                visited = *visited
            )
        }
        DateFault::BuiltAfterVisit { built, visited } => part!(
            which,
            words,
            "problem-built-after-visit",
            built = Quantity::Year(*built),
            visited = *visited
        ),
        DateFault::SealsBeforeVisit { date, visited } => {
            part!(which, words, "problem-seals-before-visit", date = *date, visited = *visited)
        }
        DateFault::SealsTooLate { date, last } => {
            part!(which, words, "problem-seals-too-late", date = *date, last = *last)
        }
        DateFault::WantedBeforeDelivery { wanted, delivered } => {
            part!(which, words, "problem-wanted-before-delivery", wanted = *wanted, delivered = *delivered)
        }
        DateFault::ReadBeforeDelivery { date, delivered } => {
            part!(which, words, "problem-read-before-delivery", date = *date, delivered = *delivered)
        }
        DateFault::ReadTooLate { date, delivered } => {
            part!(which, words, "problem-read-too-late", date = *date, delivered = *delivered)
        }
    }
}

/// The plan.
fn plan(fault: &PlanFault, field: Option<&Field>, which: Part, words: &Words) -> String {
    match fault {
        PlanFault::SharesOverWhole { line, contractor, supplier, used } => part!(
            which,
            words,
            "problem-shares-over-whole",
            line = Arg::Id(line.map_or("none", PriceLine::key)),
            contractor = *contractor,
            supplier = *supplier,
            used = *used
        ),
        PlanFault::StockTooShort { board, stock, good } => {
            part!(which, words, "problem-stock-too-short", board = *board, stock = *stock, good = *good)
        }
        PlanFault::NoStock => part!(which, words, "problem-no-stock"),
        PlanFault::MinutesOutOfOrder { task, minutes } => part!(
            which,
            words,
            "problem-minutes-out-of-order",
            task = Arg::Called(item_name(field, task)),
            least = Arg::Number(minutes.low, 2),
            likely = Arg::Number(minutes.likely, 2),
            most = Arg::Number(minutes.high, 2)
        ),
        PlanFault::NoSuchTask { task } => {
            part!(which, words, "problem-no-such-task", task = Arg::Called(task))
        }
        PlanFault::WageLikeCharge { wage, charged } => {
            part!(which, words, "problem-wage-like-charge", wage = *wage, charged = *charged)
        }
        PlanFault::NoTimedMinutes => part!(which, words, "problem-no-timed-minutes"),
        PlanFault::NoSuchTimedSection { surface, section } => {
            part!(which, words, "problem-no-such-timed-section", surface = surface, section = section)
        }
    }
}

/// The state of a section.
fn section(fault: &SectionFault, which: Part, words: &Words) -> String {
    match fault {
        SectionFault::BeyondDrying { gap } => part!(which, words, "problem-beyond-drying", gap = *gap),
        SectionFault::SealedOff => part!(which, words, "problem-sealed-off"),
        SectionFault::OpensPastTongue { gap, tongue } => {
            part!(which, words, "problem-opens-past-tongue", gap = *gap, tongue = *tongue)
        }
        SectionFault::Wetted { moisture, wettest } => {
            part!(which, words, "problem-wetted", moisture = *moisture, wettest = *wettest)
        }
        SectionFault::Pushes { joints, most, push } => {
            part!(which, words, "problem-pushes", joints = *joints, most = most, push = *push)
        }
    }
}
