//! The work: what a batch of a task is, and the section that was timed.

use jiff::ToSpan as _;
use jiff::civil::{Date, Time};

use super::price_book::{second_rate, task_unit};
use super::{Arg, Say, Words, say};
use crate::assess::TimedWork;
use crate::measure::{Area, Dimension, Hours, Length, Minutes};
use crate::repair::{DayStep, RateBasis, TaskHours, WorkDay};

/// What a batch of a task is, in a sentence.
pub fn batch(task: &TaskHours, words: &Words) -> String {
    let (per, amount) = task.batch;
    let (run, area) = match per.dimension() {
        Dimension::Length => (Length::m(amount), Area::ZERO),
        Dimension::Area => (Length::ZERO, Area::m2(amount)),
        Dimension::Number | Dimension::Volume => (Length::ZERO, Area::ZERO),
    };
    // A plural form is chosen by a count. Sections of a batch are a few.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held to what fits")]
    let sections = amount.round().clamp(1.0, 1e6) as u32;
    let (per, run) = (Arg::Id(per.key()), Arg::Run(run));
    say!(words, "price-task-batch", per = per, run = run, area = area, sections = sections)
}

/// A task's name; of what was done against the clock, with the section that it was done on.
pub fn name(task: &TaskHours, words: &Words) -> String {
    match &task.basis {
        RateBasis::Done { section } => {
            say!(words, "price-task-done", task = Arg::Called(&task.name), section = section)
        }
        _ => words.called(&task.name).into_owned(),
    }
}

/// How much there is of a task: batches, and what a batch is.
pub fn quantity(task: &TaskHours, words: &Words) -> String {
    let (per, amount) = task.batch;
    let shown = amount / per.dimension().si_of_unit(words.units());
    let batches = Arg::Number(task.batches, 1);
    match per.dimension() {
        Dimension::Number => {
            let count = task.batches * amount;
            say!(
                words,
                "price-task-count",
                count = Arg::Number(count, 1),
                unit = &task_unit(per, count, words)
            )
        }
        _ => say!(
            words,
            "price-task-quantity",
            batches = batches,
            amount = Arg::Number(shown, 0),
            unit = &task_unit(per, shown, words)
        ),
    }
}

/// The same with the minutes that it takes besides, whatever they go with.
pub fn quantity_and_besides(task: &TaskHours, words: &Words) -> String {
    let (quantity, minutes) = (quantity(task, words), task.besides.minutes());
    if minutes < 0.5 {
        return quantity;
    }
    say!(words, "price-task-and-besides", quantity = &quantity, minutes = Arg::Number(minutes, 0))
}

/// What a task takes besides its rate, in a sentence or two; empty where that is nothing.
pub fn besides(task: &TaskHours, words: &Words) -> String {
    let besides = &task.besides;
    let fixed = (besides.fixed > Minutes::ZERO)
        .then(|| say!(words, "price-task-fixed", minutes = Arg::Number(besides.fixed.to_minutes(), 0)));
    let also = besides.also.filter(|also| also.batches > 0.0).map(|also| {
        let rate = second_rate(also.batch, also.minutes, words);
        let total = Minutes::of(also.batches * also.minutes.to_minutes());
        say!(
            words,
            "price-task-also",
            rate = &rate,
            batches = Arg::Number(also.batches, 1),
            total = Arg::Number(total.to_minutes(), 0)
        )
    });
    fixed.into_iter().chain(also).collect::<Vec<_>>().join(" ")
}

/// Where a task's time is from: what it takes besides its rate, and the rate.
pub fn basis(task: &TaskHours, words: &Words) -> String {
    let besides = besides(task, words);
    let rate = task.basis.say(words);
    if besides.is_empty() { rate } else { besides + " " + &rate }
}

impl Say for TimedWork<'_> {
    /// In two sentences.
    fn say(&self, words: &Words) -> String {
        let all = self.task.hours.mean;
        let (low, high) = ((all - self.within).max(Hours::ZERO), all + self.within);
        say!(
            words,
            "price-timed-work",
            task = Arg::Called(&self.task.name),
            all = all,
            taken = self.taken,
            charged = Arg::Id(if self.charged { "yes" } else { "no" }),
            low = low,
            high = high
        )
    }
}

impl Say for DayStep {
    /// In a word or two.
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Task(short) => words.called(short).into_owned(),
            Self::Coat(coat) => say!(words, "price-day-coat", coat = *coat),
        }
    }
}

/// When a day of work is and who comes, where the work starts on `first`: to the half hour.
pub fn day_and_people(first: Date, day: &WorkDay, words: &Words) -> String {
    let date = first.checked_add(i64::from(day.day).days()).unwrap_or(first);
    let date = words.figures().weekday(date);
    let [from, to] = [day.from, day.to].map(|hour| words.figures().time(half_hour(hour)));
    say!(words, "price-day", date = &date, from = &from, to = &to, people = day.people)
}

/// The same in a row of a table: the day, from when to when, and how many.
pub fn day_columns(first: Date, day: &WorkDay, words: &Words) -> [String; 3] {
    let date = first.checked_add(i64::from(day.day).days()).unwrap_or(first);
    let [from, to] = [day.from, day.to].map(|hour| words.figures().time(half_hour(hour)));
    [
        words.figures().weekday(date),
        say!(words, "paper-from-to", from = &from, to = &to),
        words.figures().number(f64::from(day.people), 0),
    ]
}

/// What is done on a day, in order.
pub fn day_work(day: &WorkDay, words: &Words) -> String {
    let does: Vec<String> = day.does.iter().map(|step| step.say(words)).collect();
    let does = does.join(", ");
    if day.standby.to_h() < 0.1 {
        return does;
    }
    say!(words, "price-day-standby", does = &does, standby = day.standby)
}

/// A time of day to the minute, as hours after midnight.
#[expect(clippy::cast_possible_truncation, reason = "minutes of a day")]
pub fn time_of_day(hours: Hours) -> Time {
    let minutes = (hours.to_h() * 60.0).round().clamp(0.0, 1439.0) as i16;
    Time::new((minutes / 60) as i8, (minutes % 60) as i8, 0, 0).unwrap_or(Time::midnight())
}

/// A time of day, rounded up to the half hour.
#[expect(clippy::cast_possible_truncation, reason = "half hours of a day")]
fn half_hour(hour: f64) -> Time {
    let halves = ((hour - 1.0 / 60.0) * 2.0).ceil().clamp(0.0, 47.0) as i8;
    Time::new(halves / 2, 30 * (halves % 2), 0, 0).unwrap_or(Time::midnight())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::Units;

    #[test]
    fn a_day_is_told_to_the_half_hour() {
        let day = WorkDay {
            day: 2,
            people: 2,
            from: 8.0,
            to: 15.21,
            paid: Hours::h(7.0),
            standby: Hours::ZERO,
            does: vec![DayStep::Task("scrape".into()), DayStep::Coat(1)],
        };
        let first = jiff::civil::date(2026, 2, 16);
        let said = |units| day_and_people(first, &day, &Words::us_english(units, "$"));
        // Between the time and AM stands a narrow space that does not break.
        let inches = said(Units::Inches).replace('\u{202f}', " ");
        assert_eq!(inches, "Wed, Feb 18, 8:00 AM to 3:30 PM, 2 people");
        assert_eq!(said(Units::Millimeters), "Wed Feb 18, 8:00\u{202f}AM to 3:30\u{202f}PM, 2 people");
        assert_eq!(day_work(&day, &Words::us_english(Units::Inches, "$")), "scrape, first coat");
    }
}
