//! What is bought, by aisle.

use serde_json::{Value, json};

use crate::assess::{Assessment, RepairOption};
use crate::measure::Money;
use crate::named::Named;
use crate::repair::{MaterialLine, Need, Paint, PieceSize};
use crate::words::{Arg, Say as _, Words, say};

/// From this volume on something is solid stuff by the load, not a liquid by the can, liters.
const LOAD: f64 = 100.0;

/// Where in the shop something is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Aisle {
    Sealant,
    Paint,
    Lumber,
    Supplies,
    Other,
}

impl Aisle {
    /// All of them, in the order of the list.
    const ALL: [Self; 5] = [Self::Sealant, Self::Paint, Self::Lumber, Self::Supplies, Self::Other];

    /// Where a line of the take-off is. Cans and boards show by their size;
    /// sealants go by the id that begins theirs; the rest by the ids of the catalog.
    fn of(line: &MaterialLine, sealant: Option<&str>) -> Self {
        match line.size {
            PieceSize::Can(_) => return Self::Paint,
            PieceSize::Board(_) => return Self::Lumber,
            PieceSize::One | PieceSize::Load(_) | PieceSize::Run(_) | PieceSize::Strip { .. } => {}
        }
        match line.id.as_str() {
            "strip" | "spline" | "filler" | "spare_boards" => Self::Lumber,
            "nails" | "film" | "tape" | "abrasive" | "blades" | "breaker" | "sundries" | "fill_set" => {
                Self::Supplies
            }
            id if sealant.is_some_and(|sealant| id.starts_with(sealant)) => Self::Sealant,
            _ => Self::Other,
        }
    }

    const fn key(self) -> &'static str {
        match self {
            Self::Sealant => "sealant",
            Self::Paint => "paint",
            Self::Lumber => "lumber",
            Self::Supplies => "supplies",
            Self::Other => "other",
        }
    }

    /// What may be bought instead.
    fn instead(self, class: &str, paint: Option<&Paint>, words: &Words) -> String {
        match self {
            Self::Sealant => say!(words, "paper-instead-sealant", class = Arg::Called(class)),
            Self::Paint => match paint {
                Some(paint) => say!(words, "paper-instead-paint-solids", solids = paint.solids),
                None => say!(words, "paper-instead-paint"),
            },
            Self::Lumber => say!(words, "paper-instead-lumber"),
            Self::Supplies | Self::Other => String::new(),
        }
    }
}

/// The buying list, aisle by aisle.
pub(super) fn shopping(assessment: &Assessment, option: &RepairOption, words: &Words) -> Value {
    let sealant = assessment.sealant.as_ref();
    let class = sealant.map_or("", |sealant| sealant.class.as_str());
    let key = sealant.map(Named::key);
    let lines = |aisle: Aisle| -> Vec<Value> {
        let all = option.materials.iter().enumerate();
        let here = all.filter(|(_, line)| line.pieces > 0 && Aisle::of(line, key) == aisle);
        here.map(|(at, line)| {
            // A can stands behind the comma.
            let paint = line.id.split(", ").next().and_then(|id| assessment.catalog.paint(id));
            json!([
                line.pieces,
                line.say(words),
                needed(&option.materials, at, words),
                aisle.instead(class, paint, words),
                words.figures().money(line.price.times(f64::from(line.pieces))),
            ])
        })
        .collect()
    };
    let aisles = Aisle::ALL.into_iter().map(|aisle| (aisle, lines(aisle)));
    aisles
        .filter(|(_, lines)| !lines.is_empty())
        .map(|(aisle, lines)| {
            json!({ "name": say!(words, "paper-aisle", aisle = Arg::Id(aisle.key())), "lines": lines })
        })
        .collect()
}

/// What all of the list costs.
pub(super) fn total(option: &RepairOption, words: &Words) -> String {
    let lines = option.materials.iter().filter(|line| line.pieces > 0);
    let all: Money = lines.map(|line| line.price.times(f64::from(line.pieces))).sum();
    words.figures().money(all)
}

/// How much of a line is needed. Packs, cans and boards of several sizes share what is needed: it is given
/// once.
pub(crate) fn needed(lines: &[MaterialLine], at: usize, words: &Words) -> String {
    let line = &lines[at];
    let before = at.checked_sub(1).map(|before| &lines[before]);
    // A pack, a can or a length stands behind the comma.
    let entry = |line: &MaterialLine| line.id.split(", ").next().map(str::to_owned);
    if before.is_some_and(|before| entry(before) == entry(line) && before.need == line.need) {
        return say!(words, "paper-with-line-above");
    }
    let figures = words.figures();
    match line.need {
        Need::Volume(volume) if volume.to_litres() >= LOAD => figures.bulk(volume),
        Need::Volume(volume) => figures.volume(volume),
        Need::Area(area) => figures.area(area),
        Need::Run(run) => figures.run(run),
        Need::Count(number) => figures.number(number, 1),
    }
}
