//! What the boards are: species, sizes, edges, nailing. Entered for one section, or for all sections of a
//! surface at once while their boards are alike.

use eframe::egui::{ComboBox, Grid, Ui};

use crate::app::context::WindowContext;
use crate::app::lead;
use crate::app::widgets::{choose, closes, names, remark, term};
use crate::job::Job;
use crate::job::fields::{self, At, Each, Field};
use crate::measure::{Percent, Quantity};
use crate::named::{Named as _, position};
use crate::surface::{Behind, BoardSpec, Finish, Fixing};
use crate::words::{Arg, Say as _, Words, say};

/// Whose boards an entry is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub(super) enum BoardsOf {
    /// Those of one section.
    Section(At),
    /// Those of all sections of a surface, which are alike.
    Surface(usize),
}

impl BoardsOf {
    /// A section that has these boards.
    const fn first(self) -> At {
        match self {
            Self::Section(at) => at,
            Self::Surface(surface) => At(surface, 0),
        }
    }

    fn includes(self, section: At) -> bool {
        match self {
            Self::Section(at) => at == section,
            Self::Surface(surface) => surface == section.0,
        }
    }

    /// Writes a field to every section that has these boards.
    fn write(self, context: &mut WindowContext<'_>, field: &Field, write: impl Fn(&mut Job, At) + 'static) {
        context.edit(format!("field-{}", field.id), move |job| {
            for at in Each::Section.entries(job).into_iter().filter(|at| self.includes(*at)) {
                write(job, at);
            }
        });
    }

    /// [`Self::write`] to the boards themselves.
    fn write_board(
        self,
        context: &mut WindowContext<'_>,
        field: &Field,
        write: impl Fn(&mut BoardSpec) + 'static,
    ) {
        self.write(context, field, move |job, At(surface, section)| {
            let surface = job.surfaces.get_mut(surface);
            if let Some(section) = surface.and_then(|surface| surface.sections.get_mut(section)) {
                write(&mut section.board);
            }
        });
    }

    /// A row with what `add` draws.
    fn row(
        self,
        ui: &mut Ui,
        context: &mut WindowContext<'_>,
        field: &'static Field,
        add: impl FnOnce(&mut WindowContext<'_>, &mut Ui, &str),
    ) {
        let here = |(of, at): (&Field, At)| of == field && self.includes(at);
        context.row_where(ui, field, |place| place.field().is_some_and(here), add);
    }

    /// A row with a figure.
    fn figure(self, ui: &mut Ui, context: &mut WindowContext<'_>, field: &'static Field) {
        let Some(figure) = field.figure() else { return };
        self.row(ui, context, field, |context, ui, label| {
            ui.horizontal(|ui| {
                if let Some(value) = context.typed_figure(ui, field, self.first(), label) {
                    self.write(context, field, move |job, at| (figure.write)(job, at, value));
                }
                ui.label(context.words.figures().unit(figure.high));
            });
        });
    }

    /// A row with a choice of a few.
    fn choice<T: Copy + PartialEq + 'static>(
        self,
        ui: &mut Ui,
        context: &mut WindowContext<'_>,
        field: &'static Field,
        now: T,
        choices: &[(T, String)],
        set: fn(&mut BoardSpec, T),
    ) {
        self.row(ui, context, field, |context, ui, label| {
            if let Some(choice) = choose(ui, label, now, choices) {
                self.write_board(context, field, move |board| set(board, choice));
            }
        });
    }
}

/// The fields of these boards, a row each, and how much their wood moves.
pub(super) fn spec(ui: &mut Ui, context: &mut WindowContext<'_>, of: BoardsOf, board: &BoardSpec) {
    let words = context.words;
    Grid::new(("board", of)).num_columns(2).show(ui, |ui| {
        species(ui, context, of, board);
        size(ui, context, of, board);
        for field in [&fields::FACE_WIDTH, &fields::OVERALL_WIDTH, &fields::THICKNESS] {
            of.figure(ui, context, field);
        }
        let profiles = board.profile.alternatives().map(|profile| (profile, profile.say(words)));
        of.choice(ui, context, &fields::PROFILE, board.profile, &profiles, |board, profile| {
            board.profile = profile;
        });
        if board.profile.size().is_some() {
            of.figure(ui, context, &fields::PROFILE_SIZE);
        }
        let fixings = Fixing::ALL.map(|fixing| (fixing, fixing.say(words)));
        of.choice(ui, context, &fields::NAILING, board.fixing, &fixings, |board, fixing| {
            board.fixing = fixing;
        });
        let behinds = Behind::ALL.map(|behind| (behind, behind.say(words)));
        of.choice(ui, context, &fields::BACKING, board.behind, &behinds, |board, behind| {
            board.behind = behind;
        });
        let finishes = finishes(context);
        of.choice(ui, context, &fields::FINISH, board.finish, &finishes, |board, finish| {
            board.finish = finish;
        });
        of.figure(ui, context, &fields::GRAIN);
        of.figure(ui, context, &fields::MAX_LENGTH);
    });
    for line in movement(context, board, words) {
        remark(ui, context.palette, line);
    }
}

/// The size by the name the yard sells it by; it sets the three widths below.
fn size(ui: &mut Ui, context: &mut WindowContext<'_>, of: BoardsOf, board: &BoardSpec) {
    let words = context.words;
    let label = words.text("boards-size");
    term(ui, &label, &words.text("boards-size.hint"));
    let sizes = &context.assessment.catalog.sizes;
    let now = sizes.iter().position(|size| size.is_of(board));
    let mut choices: Vec<(Option<usize>, String)> =
        sizes.iter().enumerate().map(|(at, size)| (Some(at), size.name.clone())).collect();
    if now.is_none() {
        choices.push((None, words.text("boards-size-other").into_owned()));
    }
    if let Some(size) = choose(ui, &label, now, &choices).flatten().and_then(|at| sizes.get(at).cloned()) {
        of.write_board(context, &fields::FACE_WIDTH, move |board| size.set(board));
    }
    ui.end_row();
}

/// The finishes of the catalog.
fn finishes(context: &WindowContext<'_>) -> Vec<(Finish, String)> {
    let finishes = context.assessment.catalog.finishes.iter();
    finishes.map(|coating| (coating.finish, context.words.called(&coating.name).into_owned())).collect()
}

/// How much the boards' wood moves, and where that is from.
fn movement(context: &WindowContext<'_>, board: &BoardSpec, words: &Words) -> Vec<String> {
    let Some(species) = context.assessment.catalog.species(&board.species) else { return vec![] };
    let share = Quantity::Percent(Percent::pct(100.0 * species.coefficient(board.ring_angle)));
    let moves = say!(words, "boards-species-movement", species = Arg::Called(&species.name), share = share);
    std::iter::once(moves).chain(species.source().map(|source| source.say(words))).collect()
}

/// The species of the boards.
fn species(ui: &mut Ui, context: &mut WindowContext<'_>, of: BoardsOf, board: &BoardSpec) {
    of.row(ui, context, &fields::SPECIES, |context, ui, label| {
        let catalog = &context.assessment.catalog;
        let mut chosen = None;
        let combo = ComboBox::from_id_salt("species")
            .selected_text(context.words.name_of(&catalog.species, &board.species));
        let combo = combo.width(200.0).height(320.0).close_behavior(closes(catalog.species.len()));
        let response = combo.show_ui(ui, |ui| {
            let present = position(&catalog.species, &board.species);
            let found = names(ui, context.words, &catalog.species, present);
            chosen = found.map(|found| catalog.species[found.place].key().to_owned());
        });
        lead::take_focus(&response.response.accessible_name(label));
        if let Some(name) = chosen {
            of.write_board(context, &fields::SPECIES, move |board| board.species.clone_from(&name));
        }
    });
}
