//! What is wrong with the entries of a job.

use super::{Part, book, drawing, part};
use crate::job::fields::Item;
use crate::job::{
    DateFault, Dated, Fault, FileFault, LayoutFault, PlanFault, RangeFault, ReadingFault, SectionFault,
};
use crate::measure::{DayOrMonth, Quantity};
use crate::repair::PriceLine;
use crate::words::{Arg, Words};

/// A part of the message of a fault.
pub(super) fn say(fault: &Fault, which: Part, words: &Words) -> String {
    match fault {
        Fault::File(fault) => file(fault, which, words),
        Fault::Range(fault) => range(fault, which, words),
        Fault::Drawing(kind) => drawing::say(kind, which, words),
        Fault::Layout(fault) => layout(fault, which, words),
        Fault::Reading(fault) => reading(fault, which, words),
        Fault::Date(fault) => date(fault, which, words),
        Fault::Plan(fault) => plan(fault, which, words),
        Fault::Book(fault) => book::say(fault, which, words),
        Fault::Section(fault) => section(fault, which, words),
        Fault::NotInCatalog { listed, name } => {
            part!(which, words, "problem-not-in-catalog", listed = Arg::Id(listed.key()), name = name)
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
fn range(fault: &RangeFault, which: Part, words: &Words) -> String {
    match fault {
        RangeFault::OutOfRange { value, low, high, used } => match used {
            Some(used) => part!(
                which,
                words,
                "problem-out-of-range",
                value = *value,
                low = *low,
                high = *high,
                used = *used
            ),
            None => {
                part!(which, words, "problem-out-of-range-left-out", value = *value, low = *low, high = *high)
            }
        },
        RangeFault::ItemOutOfRange { item, value, low, high, used } => {
            of_item(item, [*value, *low, *high], *used, which, words)
        }
        RangeFault::TooMany { count, most } => {
            part!(which, words, "problem-too-many", count = *count, most = *most)
        }
    }
}

/// A figure of a list that is out of its range.
fn of_item(
    item: &Item,
    [value, low, high]: [Quantity; 3],
    used: Option<Quantity>,
    which: Part,
    words: &Words,
) -> String {
    match (item, used) {
        (Item::Number(number), Some(used)) => part!(
            which,
            words,
            "problem-numbered-out-of-range",
            number = *number,
            value = value,
            low = low,
            high = high,
            used = used
        ),
        (Item::Number(number), None) => part!(
            which,
            words,
            "problem-numbered-out-of-range-left-out",
            number = *number,
            value = value,
            low = low,
            high = high
        ),
        (Item::Id(id), Some(used)) => part!(
            which,
            words,
            "problem-item-out-of-range",
            item = id,
            value = value,
            low = low,
            high = high,
            used = used
        ),
        (Item::Id(id), None) => part!(
            which,
            words,
            "problem-item-out-of-range-left-out",
            item = id,
            value = value,
            low = low,
            high = high
        ),
        // Shares are mended, never left out.
        (Item::Line(line), used) => part!(
            which,
            words,
            "problem-line-out-of-range",
            line = Arg::Id(line.key()),
            value = value,
            low = low,
            high = high,
            used = used.unwrap_or(value)
        ),
    }
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
            part!(which, words, "problem-no-such-joint", surface = surface, joint = joint)
        }
        ReadingFault::NoSuchSection { surface, section } => {
            part!(which, words, "problem-no-such-section", surface = surface, section = section)
        }
        ReadingFault::NearTongue { width, tongue } => {
            part!(which, words, "problem-near-tongue", width = *width, tongue = *tongue)
        }
        ReadingFault::GapsDiffer { joint, earlier, later } => {
            part!(which, words, "problem-gaps-differ", joint = joint, earlier = *earlier, later = *later)
        }
        ReadingFault::MoisturesDiffer { earlier, later } => {
            part!(which, words, "problem-moistures-differ", earlier = *earlier, later = *later)
        }
        ReadingFault::NoReading => part!(which, words, "problem-no-reading"),
        ReadingFault::MeterUnsure { reading, low, high } => {
            part!(which, words, "problem-meter-unsure", reading = *reading, low = *low, high = *high)
        }
        ReadingFault::NotThisRoom { reading, low, high } => {
            part!(which, words, "problem-not-this-room", reading = *reading, low = *low, high = *high)
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
    }
}

/// The plan.
fn plan(fault: &PlanFault, which: Part, words: &Words) -> String {
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
            task = task,
            least = Arg::Number(minutes.low, 2),
            likely = Arg::Number(minutes.likely, 2),
            most = Arg::Number(minutes.high, 2)
        ),
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
