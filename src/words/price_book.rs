//! The figures of a price book, as they stand side by side when prices are compared.

use super::{Arg, Say, Words, say};
use crate::job::{BookField, BookValue};
use crate::joint::{BeadLay, Pack};
use crate::measure::{Minutes, Money, Volume};
use crate::repair::{MaterialPer, Outcome, TaskPer};

impl Say for BookField {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "offer-field", field = Arg::Id(self.key()))
    }
}

impl Say for BookValue {
    fn say(&self, words: &Words) -> String {
        let figures = words.figures();
        match self {
            Self::Text(text) => words.called(text).into_owned(),
            Self::Percent(percent) => figures.percent(percent.to_pct(), 1),
            Self::Hours(hours) => figures.hours(*hours),
            Self::Film(microns) => figures.film(*microns),
            Self::Packs(packs) => figures.list(&packs.iter().map(|one| pack(one, words)).collect::<Vec<_>>()),
            Self::Cans(cans) => figures.list(&cans.iter().map(|one| can(*one, words)).collect::<Vec<_>>()),
            // Only the unit that it goes with matters: the form for many.
            Self::TaskPer(per) => task_unit(*per, 2.0, words),
            Self::MaterialPer(per) => material_unit(*per, 2.0, words),
            Self::Amount(dimension, amount) => figures.amount(*dimension, *amount),
            Self::Minutes(minutes) => say!(
                words,
                "offer-minutes",
                least = Arg::Number(minutes.low, 1),
                likely = Arg::Number(minutes.likely, 1),
                most = Arg::Number(minutes.high, 1)
            ),
            Self::Took(minutes) => figures.minutes(*minutes),
            Self::Also(also) => second_rate((also.per, also.batch), also.minutes, words),
            Self::Money(money) => figures.money(*money),
            Self::Date(date) => figures.date(*date),
            Self::Kind(kind) => kind.say(words),
            Self::Length(length) => figures.length(*length),
            Self::Boards(_) => say!(words, "offer-differs"),
            Self::Outcome(outcome) => outcome.say(words),
            Self::Names(names) => figures.list(names),
            Self::Steps(steps) => figures.list(&steps.iter().map(|step| step.say(words)).collect::<Vec<_>>()),
        }
    }
}

fn pack(pack: &Pack, words: &Words) -> String {
    say!(words, "offer-pack", pack = Arg::Called(&pack.name), holds = pack.holds, price = pack.price)
}

fn can((liters, price): (f64, Money), words: &Words) -> String {
    say!(words, "offer-can", holds = Volume::litres(liters), price = price)
}

/// The unit that the batches of a task are in, in the form for `count` of them.
pub fn task_unit(per: TaskPer, count: f64, words: &Words) -> String {
    let (per, count) = (Arg::Id(per.key()), Arg::Number(count, 2));
    say!(words, "option-task-unit", per = per, units = Arg::units(words.units()), count = count)
}

/// A second rate of a task: minutes for so much.
pub(super) fn second_rate((per, batch): (TaskPer, f64), minutes: Minutes, words: &Words) -> String {
    let shown = batch / per.dimension().si_of_unit(words.units());
    say!(
        words,
        "offer-also",
        minutes = Arg::Number(minutes.to_minutes(), 1),
        amount = Arg::Number(shown, 0),
        unit = &task_unit(per, shown, words)
    )
}

/// The unit of what a piece of a material is for, in the form for `count` of them.
pub fn material_unit(per: MaterialPer, count: f64, words: &Words) -> String {
    let (per, count) = (Arg::Id(per.key()), Arg::Number(count, 2));
    say!(words, "option-material-unit", per = per, units = Arg::units(words.units()), count = count)
}

impl Say for Outcome {
    /// What a repair leaves at the joints.
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Bead { held: true, .. } => say!(words, "own-outcome-held"),
            Self::Bead { lay: BeadLay::Bridge, .. } => say!(words, "own-outcome-bridge"),
            Self::Bead { lay: BeadLay::OnTongue, .. } => say!(words, "own-outcome-tongue"),
            Self::Bead { lay: BeadLay::Reveal, .. } => say!(words, "own-outcome-reveal"),
            Self::Line => say!(words, "own-outcome-line"),
            Self::Covered => say!(words, "own-outcome-covered"),
            Self::Glued => say!(words, "own-outcome-glued"),
            Self::Boards { moves } if *moves < 1.0 => say!(words, "own-outcome-less"),
            Self::Boards { .. } => say!(words, "own-outcome-boards"),
            Self::Unchanged => say!(words, "own-outcome-unchanged"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Dimension, Units};

    #[test]
    fn units_are_those_of_the_job_and_of_the_number() {
        let say = |units, per, count| task_unit(per, count, &Words::us_english(units, "$"));
        assert_eq!(say(Units::Inches, TaskPer::JointRun, 100.0), "ft of joint");
        assert_eq!(say(Units::Millimeters, TaskPer::JointRun, 30.0), "m of joint");
        assert_eq!(say(Units::Inches, TaskPer::CoatedArea, 100.0), "sq ft painted, each coat");
        let visits = [1.0, 2.0].map(|count| say(Units::Inches, TaskPer::Visit, count));
        assert_eq!(visits, ["visit", "visits"]);
        let inches = Words::us_english(Units::Inches, "$");
        for per in MaterialPer::ALL {
            let said = material_unit(per, 3.0, &inches);
            assert!(!said.starts_with("m ") && !said.contains(['²', '³']), "{said}");
            let metric = material_unit(per, 3.0, &Words::us_english(Units::Millimeters, "$"));
            assert_eq!(said == metric, per.dimension() == Dimension::Number, "{said}");
        }
    }

    #[test]
    fn figures_stand_in_the_units_of_the_job() {
        let said = |value: BookValue| {
            [Units::Inches, Units::Millimeters].map(|units| value.say(&Words::us_english(units, "$")))
        };
        assert_eq!(said(BookValue::Film(38.1)), ["1.5 mils", "38.1 µm"]);
        assert_eq!(said(BookValue::Amount(Dimension::Length, 30.48)), ["100 ft", "30.48 m"]);
        let cans = vec![(0.946, Money::cents(2_800)), (3.785, Money::cents(8_000))];
        assert_eq!(
            said(BookValue::Cans(cans)),
            ["1 qt for $28.00 and 1 gal for $80.00", "946 mL for $28.00 and 3.8 L for $80.00"]
        );
    }
}
