//! What is wrong with the price book.

use super::{Part, part};
use crate::job::{BookFault, EntryFault, EntryFigure};
use crate::measure::{Hours, Money, Percent, Volume};
use crate::words::{Arg, Words};

/// A part of the message of a fault of the price book.
pub(super) fn say(fault: &BookFault, which: Part, words: &Words) -> String {
    match fault {
        BookFault::BookEntry { entry, fault } => of_entry(entry, fault, which, words),
        BookFault::UnknownStep { method, step } => {
            part!(
                which,
                words,
                "problem-unknown-step",
                method = Arg::Called(method),
                step = Arg::Called(step)
            )
        }
        BookFault::FormerRates { tasks } => {
            let tasks: Vec<_> = tasks.iter().map(|task| words.called(task)).collect();
            let tasks = tasks.iter().map(AsRef::as_ref).collect();
            part!(which, words, "problem-former-rates", tasks = Arg::Names(tasks))
        }
        BookFault::OldPrices { names } => {
            let names: Vec<_> = names.iter().map(|name| words.called(name)).collect();
            let names = names.iter().map(AsRef::as_ref).collect();
            part!(which, words, "problem-old-prices", names = Arg::Names(names))
        }
    }
}

/// A part of the message of a fault of the entry of this name.
fn of_entry(entry: &str, fault: &EntryFault, which: Part, words: &Words) -> String {
    match *fault {
        EntryFault::OutOfRange { figure, value, low, high } => part!(
            which,
            words,
            "problem-book-figure",
            entry = Arg::Called(entry),
            figure = Arg::Id(figure.key()),
            value = quantity(figure, value),
            low = quantity(figure, low),
            high = quantity(figure, high)
        ),
        EntryFault::NoPack => part!(which, words, "problem-book-no-pack", entry = Arg::Called(entry)),
        EntryFault::MinutesOutOfOrder(minutes) => part!(
            which,
            words,
            "problem-book-minutes",
            entry = Arg::Called(entry),
            least = Arg::Number(minutes.low, 2),
            likely = Arg::Number(minutes.likely, 2),
            most = Arg::Number(minutes.high, 2)
        ),
        EntryFault::NoTask => part!(which, words, "problem-book-no-task", entry = Arg::Called(entry)),
        EntryFault::TooFewTasks => {
            part!(which, words, "problem-book-too-few-tasks", entry = Arg::Called(entry))
        }
    }
}

/// A figure of an entry in its unit.
fn quantity(figure: EntryFigure, value: f64) -> Arg<'static> {
    match figure {
        EntryFigure::Stretch | EntryFigure::Squeeze | EntryFigure::Solids | EntryFigure::Transfer => {
            Percent::pct(value).into()
        }
        EntryFigure::Cure | EntryFigure::Recoat => Hours::h(value).into(),
        EntryFigure::Pack => Volume::litres(value).into(),
        // A price of the price book is within a million: its cents are exact.
        #[expect(clippy::cast_possible_truncation, reason = "shown only")]
        EntryFigure::Price => Money::cents((value * 100.0).round() as i64).into(),
        EntryFigure::Film => Arg::Film(value),
        EntryFigure::Coverage(dimension) | EntryFigure::Batch(dimension) => Arg::Amount(dimension, value),
    }
}
