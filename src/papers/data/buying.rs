//! What is bought, by aisle.

use serde_json::{Value, json};

use super::work::hang_at;
use crate::assess::{Assessment, RepairOption};
use crate::measure::{Length, Money};
use crate::named::{Named, name_of};
use crate::ready::USUAL_READINGS;
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
            Self::Lumber | Self::Supplies | Self::Other => String::new(),
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
            let said = [
                aisle.instead(class, paint, words),
                color(assessment, line, words).unwrap_or_default(),
                if aisle == Aisle::Lumber {
                    boards(assessment, line, dry(assessment, &option.materials, at, words), words)
                } else {
                    String::new()
                },
            ];
            let said = said.into_iter().filter(|said| !said.is_empty()).collect::<Vec<_>>().join(" ");
            json!([
                quantity(line, words),
                by_the_length(line, words).unwrap_or_else(|| line.say(words)),
                needed(&option.materials, at, words),
                said,
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

/// How many pieces to ask for; of what is sold by the length, the length.
fn quantity(line: &MaterialLine, words: &Words) -> Value {
    match line.size {
        PieceSize::Run(run) | PieceSize::Strip { run, .. } => {
            words.figures().run(run * f64::from(line.pieces)).into()
        }
        _ => line.pieces.into(),
    }
}

/// What is sold by the length, without the length that is priced.
fn by_the_length(line: &MaterialLine, words: &Words) -> Option<String> {
    match line.size {
        PieceSize::Run(_) => Some(words.called(&line.name).into_owned()),
        PieceSize::Strip { section: (thick, wide), .. } => {
            Some(say!(words, "paper-strip", name = Arg::Called(&line.name), thick = thick, wide = wide))
        }
        _ => None,
    }
}

/// The color of the paint, or a blank for it.
fn color(assessment: &Assessment, line: &MaterialLine, words: &Words) -> Option<String> {
    let plan = &assessment.job.plan;
    let paint = assessment.catalog.paint(&plan.paint)?;
    (line.id.split(", ").next() == Some(paint.key())).then(|| match plan.color.trim() {
        "" => say!(words, "paper-color-blank"),
        color => say!(words, "paper-color-is", color = Arg::Name(color)),
    })
}

/// How dry new boards must be, with the first of their lines.
fn dry(assessment: &Assessment, lines: &[MaterialLine], at: usize, words: &Words) -> Option<String> {
    let is_board = |line: &&MaterialLine| matches!(line.size, PieceSize::Board(_));
    let first = lines.iter().position(|line| is_board(&line) && line.pieces > 0);
    let all: u32 = lines.iter().filter(is_board).map(|line| line.pieces).sum();
    let most = hang_at(assessment).filter(|_| first == Some(at))?;
    let count = Arg::Id(if all < USUAL_READINGS { "all" } else { "eight" });
    Some(say!(words, "paper-lumber-dry", most = most, count = count))
}

/// What boards or strips are asked for: species, profile, size, how dry, and how long they must be.
fn boards(assessment: &Assessment, line: &MaterialLine, dry: Option<String>, words: &Words) -> String {
    let job = &assessment.job;
    let mut told: Vec<String> = Vec::new();
    for (surface, of) in job.surfaces.iter().enumerate() {
        for (at, section) in of.sections.iter().enumerate() {
            if !assessment.works_in(surface, at) {
                continue;
            }
            let board = &section.board;
            let species = Arg::Called(name_of(&assessment.catalog.species, &board.species));
            let here = assessment.layouts[surface].boards.iter().filter(|board| board.section == at);
            let longest = here.map(|board| board.run).fold(Length::ZERO, Length::max);
            let said = match line.size {
                PieceSize::Strip { .. } | PieceSize::Run(_) => {
                    say!(words, "paper-lumber-strip", species = species, longest = Arg::Run(longest))
                }
                _ => {
                    let length = if matches!(line.size, PieceSize::Board(_)) { "told" } else { "longest" };
                    say!(
                        words,
                        "paper-lumber-board",
                        species = species,
                        profile = &board.profile.say(words),
                        tongued = Arg::Id(if board.tongue().is_some() { "yes" } else { "no" }),
                        size = board.profile.size().unwrap_or(Length::ZERO),
                        sized = Arg::Id(if board.profile.size().is_some() { "yes" } else { "no" }),
                        thickness = board.thickness,
                        width = board.overall_width.max(board.face_width),
                        face = board.face_width,
                        length = Arg::Id(length),
                        longest = Arg::Run(longest)
                    )
                }
            };
            if !told.contains(&said) {
                told.push(said);
            }
        }
    }
    told.extend(dry);
    told.join(" ")
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
        // Spare boards are bought by the boards that are handled.
        Need::Count(_) if line.id == "spare_boards" => figures.number(f64::from(line.pieces), 0),
        Need::Count(number) => figures.number(number, 1),
    }
}
