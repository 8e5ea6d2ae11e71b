//! What is wrong with a job in words: where, what, and the way out, each a whole sentence.

mod book;
mod drawing;
mod fault;
mod place;

use super::{Arg, Say, Words};
use crate::job::{Job, Problem, Severity};

/// Which part of a fault's message: what is wrong, or what to do about it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Part {
    What,
    Fix,
}

impl Part {
    fn say(self, words: &Words, id: &str, arguments: &[(&'static str, Arg<'_>)]) -> String {
        match self {
            Self::What => words.text_with(id, arguments),
            Self::Fix => words.text_with(&format!("{id}.fix"), arguments),
        }
    }
}

/// Says a part of a message: `part!(fix, words, "problem-no-stock", count = 3)`. The message has an
/// attribute `fix`.
macro_rules! part {
    ($part:expr, $words:expr, $id:literal $(, $name:ident = $value:expr)* $(,)?) => {
        $part.say($words, $id, &[$((stringify!($name), $crate::words::Arg::from($value))),*])
    };
}
use part;

impl Say for Severity {
    fn say(&self, words: &Words) -> String {
        super::say!(words, "problem-severity", severity = Arg::Id(self.key()))
    }
}

impl Problem {
    /// The value and the rule it breaks.
    pub fn what(&self, words: &Words) -> String {
        fault::say(&self.fault, Part::What, words)
    }

    /// The way out, and what is done until then.
    pub fn fix(&self, words: &Words) -> String {
        fault::say(&self.fault, Part::Fix, words)
    }

    /// Where it is, with the names the user gave. `job` is the job it was found in.
    pub fn place(&self, job: &Job, words: &Words) -> String {
        place::say(&self.place, job, words)
    }

    /// All of it in a line, for where its place is not in sight.
    pub fn line(&self, job: &Job, words: &Words) -> String {
        format!("{}: {}: {}", self.severity.say(words), self.place(job, words), self.say(words))
    }
}

/// What is wrong and what to do, for where its place is in sight.
impl Say for Problem {
    fn say(&self, words: &Words) -> String {
        format!("{} {}", self.what(words), self.fix(words))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::fields;
    use crate::job::{Place, RangeFault};
    use crate::measure::{Quantity, Units};

    #[test]
    fn a_figure_out_of_range_says_value_range_and_what_is_used() {
        let words = Words::us_english(Units::Inches, "$");
        let fault = RangeFault::OutOfRange {
            value: Quantity::Count(0),
            low: Quantity::Count(1),
            high: Quantity::Count(50),
            used: Some(Quantity::Count(1)),
        };
        let problem = Problem::new(Place::once(&fields::CREW_SIZE), fault);
        assert_eq!(
            problem.line(&Job::default(), &words),
            "error: Crew size: 0 is not between 1 and 50. Correct it. Until then, 1 is used."
        );
    }
}
