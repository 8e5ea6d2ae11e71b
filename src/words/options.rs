//! Repair options: why one is out of the question, which is best, where rates and prices are from.

use super::{Arg, Say, Words, say};
use crate::assess::{Assessment, Choice, NotPossible, OtherWarranty, PriceMargin, RepairOption};
use crate::measure::{Length, Minutes, Money, Percent};
use crate::repair::{BarStep, CatalogRate, MaterialLine, MethodId, OfferBasis, PieceSize, RateBasis};

impl Say for NotPossible {
    /// In a sentence.
    fn say(&self, words: &Words) -> String {
        let (reason, widest) = match *self {
            Self::NoOpenJoints => ("no_open_joints", Length::ZERO),
            Self::PastTongue { widest } => ("past_tongue", widest),
            Self::TooFineForSpline { widest } => ("too_fine_for_spline", widest),
            Self::WideEnough => ("wide_enough", Length::ZERO),
            Self::GluedWet => ("glued_wet", Length::ZERO),
            Self::RelaidWet => ("relaid_wet", Length::ZERO),
            Self::StockTooShort { board } => ("stock_too_short", board),
            Self::StripsTooClose { apart } => ("strips_too_close", apart),
        };
        say!(words, "option-not-possible", reason = Arg::Id(reason), widest = widest)
    }
}

/// That an option can't be done here, and why.
pub fn not_here(option: &RepairOption, reason: NotPossible, words: &Words) -> String {
    say!(words, "letter-not-possible", option = Arg::Called(&option.name), reason = &reason.say(words))
}

/// That an option handles the boards of some sections only, and of which; `None` where it handles all or none.
pub fn only_sections(assessment: &Assessment, option: &RepairOption, words: &Words) -> Option<String> {
    let name = |&(surface, section): &(usize, usize)| {
        Some(assessment.job.surfaces.get(surface)?.sections.get(section)?.name.clone())
    };
    let names: Vec<String> = option.only.as_ref()?.iter().filter_map(name).collect();
    let (count, names) = (names.len(), words.figures().list(&names));
    Some(say!(words, "option-only-sections", count = count, sections = Arg::Name(&names)))
}

/// Which option to choose, in a sentence or two: the one that costs least with callbacks, or of those that cost
/// about the same the surest or the one that disrupts least, with what it costs more.
pub fn best(assessment: &Assessment, choice: &Choice, words: &Words) -> String {
    let cost = |method: MethodId| {
        let expected = assessment.option(method).and_then(|option| option.expected);
        Arg::RoughMoney(expected.unwrap_or_default())
    };
    let others: Vec<String> =
        choice.equal.iter().map(|method| words.called(name(assessment, *method)).into_owned()).collect();
    if !others.is_empty() {
        let (best, others) = (name(assessment, choice.best), words.figures().list(&others));
        let why = || Arg::Id(if choice.surer { "surer" } else { "calmer" });
        if choice.costs_more > Money::ZERO {
            return say!(
                words,
                "option-equal-and-more",
                best = Arg::Called(best),
                why = why(),
                cost = cost(choice.best),
                more = Arg::RoughMoney(choice.costs_more),
                others = Arg::Name(&others)
            );
        }
        return say!(
            words,
            "option-equal",
            best = Arg::Called(best),
            why = why(),
            cost = cost(choice.best),
            others = Arg::Name(&others)
        );
    }
    let best = Arg::Called(name(assessment, choice.best));
    match choice.next {
        None => say!(words, "option-best", best = best, cost = cost(choice.best)),
        Some(next) => say!(
            words,
            "option-best-and-next",
            best = best,
            cost = cost(choice.best),
            next = Arg::Called(name(assessment, next)),
            next_cost = cost(next)
        ),
    }
}

/// From this share of the price on, a change of it is worth a sentence; and from so many times as long on, a
/// slower task is.
const LEAST_TOLD: Percent = Percent::pct(3.0);
const LEAST_SLOWER: f64 = 1.1;

/// What would change the choice, a sentence each.
pub fn changes(assessment: &Assessment, choice: &Choice, words: &Words) -> Vec<String> {
    let margin = choice.next.zip(choice.margin.as_ref());
    // What is within the doubt of any estimate says nothing.
    let told = margin.filter(|(_, margin)| margin.share >= LEAST_TOLD);
    let margin = told.map(|(next, margin)| margin_sentence(name(assessment, next), margin, words));
    let warranty = choice.other_warranty.map(|other| warranty_sentence(assessment, other, words));
    margin.into_iter().chain(warranty).collect()
}

fn margin_sentence(next: &str, margin: &PriceMargin, words: &Words) -> String {
    let (next, amount) = (Arg::Called(next), Arg::RoughMoney(margin.amount));
    let share = Percent::pct(margin.share.to_pct().round());
    match margin.slower.as_ref().filter(|(_, times)| *times >= LEAST_SLOWER) {
        None => say!(words, "option-margin", next = next, amount = amount, share = share),
        Some((task, times)) => say!(
            words,
            "option-margin-or-slower",
            next = next,
            amount = amount,
            share = share,
            task = Arg::Called(task),
            times = Arg::Number(*times, 1)
        ),
    }
}

fn warranty_sentence(assessment: &Assessment, other: OtherWarranty, words: &Words) -> String {
    let span = Arg::Id(if other.longer { "longer" } else { "shorter" });
    let option = Arg::Called(name(assessment, other.method));
    say!(words, "option-other-warranty", span = span, years = other.years, option = option)
}

fn name(assessment: &Assessment, method: MethodId) -> &str {
    assessment.option(method).map(|option| option.name.as_str()).unwrap_or_default()
}

impl Say for RateBasis {
    /// In a few sentences.
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Own => say!(words, "option-rate-own"),
            Self::Done { section } => say!(words, "option-rate-done", section = section),
            Self::Catalog(rate) => catalog_rate(rate, words),
            Self::Timed { section, minutes, weight, start } => {
                let share = |share: f64| Percent::pct((100.0 * share).round());
                let timed = say!(
                    words,
                    "option-rate-timed",
                    section = section,
                    minutes = Minutes::of(minutes.round()),
                    weight = share(*weight),
                    start = Minutes::of(start.minutes.mean().round()),
                    rest = share(1.0 - weight)
                );
                timed + " " + &catalog_rate(start, words)
            }
        }
    }
}

fn catalog_rate(rate: &CatalogRate, words: &Words) -> String {
    let kind = Arg::Id(rate.kind.key());
    let source = match rate.source.as_str() {
        "" => say!(words, "option-rate-no-source", kind = kind),
        _ => say!(words, "option-rate-source", source = Arg::Called(&rate.source), kind = kind),
    };
    let conditions = rate.conditions.iter().map(|(condition, factor)| {
        say!(
            words,
            "option-rate-condition",
            condition = Arg::Called(condition),
            factor = Arg::Number(*factor, 2)
        )
    });
    let conditions: Vec<String> = conditions.collect();
    if conditions.is_empty() {
        return source;
    }
    say!(words, "option-rate-here", source = &source, conditions = &conditions.join("; "))
}

impl Say for BarStep {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Task(name) => words.called(name).into_owned(),
            Self::Coat(number) => say!(words, "option-step-coat", number = *number),
            Self::Wait(wait) => say!(words, "option-step-wait", wait = Arg::Id(wait.key())),
        }
    }
}

impl Say for MaterialLine {
    /// Its name with what a piece holds.
    fn say(&self, words: &Words) -> String {
        match self.size {
            PieceSize::One => words.called(&self.name).into_owned(),
            PieceSize::Can(size) => {
                say!(words, "option-material-can", name = Arg::Called(&self.name), size = size)
            }
            PieceSize::Board(length) => {
                say!(
                    words,
                    "option-material-board",
                    name = Arg::Called(&self.name),
                    length = &words.figures().stock(length)
                )
            }
            PieceSize::Load(size) => {
                let size = words.figures().bulk(size);
                say!(words, "option-material-load", name = Arg::Called(&self.name), size = &size)
            }
            PieceSize::Run(run) => {
                say!(words, "option-material-run", name = Arg::Called(&self.name), length = Arg::Run(run))
            }
            PieceSize::Strip { section: (thick, wide), run } => say!(
                words,
                "option-material-strip",
                name = Arg::Called(&self.name),
                thick = thick,
                wide = wide,
                length = Arg::Run(run)
            ),
        }
    }
}

impl Say for OfferBasis {
    /// In a sentence or two.
    fn say(&self, words: &Words) -> String {
        let Self::Catalog { source, kind, priced } = self else { return say!(words, "option-offer-own") };
        let from = match kind {
            Some(kind) => {
                say!(words, "option-offer-source", source = Arg::Called(source), kind = Arg::Id(kind.key()))
            }
            None => say!(words, "option-offer-class", source = Arg::Called(source)),
        };
        let dated = match priced {
            Some(day) => say!(words, "option-offer-date", date = *day),
            None => say!(words, "option-offer-no-date"),
        };
        from + " " + &dated
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::assess;
    use crate::job::{Catalog, Job, PriceBook, demo_job};
    use crate::measure::Units;

    /// What is bought for an option: the line of this material, as it is said in these units.
    fn bought(job: &Job, units: Units, method: MethodId, id: &str) -> String {
        let found = assess(Job { units, ..job.clone() }, Catalog::built_in());
        let option = found.option(method).expect("it is weighed");
        let line = option.materials.iter().find(|line| line.id == id).expect("it is bought");
        line.say(&Words::us_english(units, "$"))
    }

    #[test]
    fn strips_are_told_in_the_units_of_the_job() {
        // A price book that was kept when names had the sizes in them says the same.
        let mut old = demo_job();
        let mut book = PriceBook::of(Catalog::built_in(), old.visited);
        for material in &mut book.materials {
            if material.id == "strip" {
                "Strip, 1/4 x 1-1/4 in, by the foot of run".clone_into(&mut material.name);
                (material.section, material.aliases) = (None, Vec::new());
            }
        }
        old.price_book = Some(book);
        for job in [demo_job(), old] {
            let said = [Units::Inches, Units::Millimeters]
                .map(|units| bought(&job, units, MethodId::CoverStrips, "strip"));
            // 6.35 mm lies between two tenths.
            assert_eq!(said, ["Strip, 1/4\" × 1-1/4\", per 1 ft", "Strip, 6.4 mm × 31.8 mm, per 0.3 m"]);
        }
        let spline = bought(&demo_job(), Units::Millimeters, MethodId::Splines, "spline");
        assert_eq!(spline, "Spline stock with glue, per 0.3 m");
    }
}
