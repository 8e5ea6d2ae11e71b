//! What is wrong with a job in words: where, what, and the way out, each a whole sentence.

mod book;
mod drawing;
mod fault;
mod place;

use super::{Arg, Say, Words};
use crate::job::fields::{self, Field};
use crate::job::{Catalog, Job, Problem, Severity};
use crate::named::{Named, find};

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
    /// The field it is about.
    fn field(&self) -> Option<&'static Field> {
        self.place.field().map(|(field, _)| field)
    }

    /// The value and the rule it breaks.
    pub fn what(&self, words: &Words) -> String {
        fault::say(&self.fault, self.field(), Part::What, words)
    }

    /// The way out, and what is done until then.
    pub fn fix(&self, words: &Words) -> String {
        fault::say(&self.fault, self.field(), Part::Fix, words)
    }

    /// Where it is, with the names the user gave. `job` is the job it was found in.
    pub fn place(&self, job: &Job, words: &Words) -> String {
        place::say(&self.place, job, words)
    }

    /// All of it in a line on a paper, where nobody sees the window's fields.
    pub fn line_on_paper(&self, job: &Job, words: &Words) -> String {
        match place::on_paper(&self.place, job, words) {
            Some(place) => format!("{place}: {}", self.say(words)),
            None => self.say(words),
        }
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

/// What people read for an item of a field's list that goes by an id: the name of a task or a material. What
/// the user made up goes by its name as it is.
fn item_name<'a>(field: Option<&Field>, id: &'a str) -> &'a str {
    let catalog = Catalog::built_in();
    // A line of the buying list is an entry with its pack, its can or its length.
    let entry = id.split_once(", ").map_or(id, |(entry, _)| entry);
    let named = match field {
        Some(field) if [&fields::OWN_MINUTES, &fields::ACTUAL_HOURS].contains(&field) => {
            find(&catalog.tasks, id).map(Named::name)
        }
        Some(field) if [&fields::OWN_PRICES, &fields::PIECES_USED].contains(&field) => {
            let materials = find(&catalog.materials, id).or_else(|| find(&catalog.materials, entry));
            materials
                .map(Named::name)
                .or_else(|| find(&catalog.sealants, entry).map(Named::name))
                .or_else(|| find(&catalog.paints, entry).map(Named::name))
        }
        _ => None,
    };
    named.unwrap_or(id)
}

#[cfg(test)]
mod tests {
    use super::*;
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

    #[test]
    fn items_go_by_their_names_and_never_by_their_ids() {
        assert_eq!(item_name(Some(&fields::OWN_MINUTES), "scrape"), "Scrape out the old caulk");
        // Tasks and materials may share an id.
        assert_eq!(item_name(Some(&fields::ACTUAL_HOURS), "breaker"), "Lay backer or bond-breaker tape");
        assert_eq!(item_name(Some(&fields::PIECES_USED), "breaker"), "Bond-breaker tape or backer rod, roll");
        assert_eq!(
            item_name(Some(&fields::OWN_PRICES), "hybrid-50, cartridge"),
            "Paintable hybrid sealant, class 50"
        );
        assert_eq!(item_name(Some(&fields::OWN_PRICES), "boards, 3658 mm"), "Board, dried");
        assert_eq!(item_name(Some(&fields::OWN_MINUTES), "Mine, own"), "Mine, own");
    }
}
