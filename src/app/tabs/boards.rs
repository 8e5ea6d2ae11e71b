//! Surfaces, their outlines and openings, sections and boards.

use eframe::egui::{CollapsingHeader, ComboBox, Grid, RichText, Ui};

use super::outline::{corners, dividers, outline};
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::entry::{entry, text_entry};
use crate::app::pick::Purpose;
use crate::app::widgets::{remark, term};
use crate::job::Job;
use crate::job::fields::{At, Each};
use crate::measure::{Angle, Length, parse_length};
use crate::surface::Behind;
use crate::surface::{
    BoardSpec, Finish, Fixing, Profile, Section, Surface, SurfaceKind,
    pattern::{Pattern, raked, rectangle},
};
use crate::words::{Say as _, say};

/// A board that is sold is no shorter than this.
const SHORTEST_STOCK: Length = Length::inches(4.0);

pub(super) fn boards(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if context.job.surfaces.is_empty() {
        remark(ui, context.palette, "Begin here: the size of the ceiling or wall, and how its boards run.");
        add_surface(ui, context);
        return;
    }
    let shown = context.view.surface.min(context.job.surfaces.len() - 1);
    // Fields of one surface must not show what was typed for another.
    ui.push_id(shown, |ui| surface(ui, context, shown));
    CollapsingHeader::new("Add another surface").show(ui, |ui| add_surface(ui, context));
}

/// No room is larger.
pub(super) const LARGEST: Length = Length::m(100.0);

pub(super) const KINDS: [(SurfaceKind, &str); 3] =
    [(SurfaceKind::Ceiling, "Ceiling"), (SurfaceKind::Slope, "Sloped ceiling"), (SurfaceKind::Wall, "Wall")];

fn add_surface(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let mut draft = context.view.drafts.surface.clone();
    Grid::new("new surface").num_columns(2).show(ui, |ui| {
        ui.label("Kind");
        choose(ui, "Kind of the new surface", &KINDS, draft.kind, |kind| draft.kind = kind);
        ui.end_row();
        let least = Length::inches(2.0)..=LARGEST;
        let wall = draft.kind == SurfaceKind::Wall;
        ui.label(if wall { "Length" } else { "Width" });
        if let Some(width) = context.room_entry(ui, "Width of the new surface", draft.width, least.clone()) {
            draft.width = width;
        }
        ui.end_row();
        ui.label(if wall { "Height" } else { "Depth" });
        if let Some(height) = context.room_entry(ui, "Height of the new surface", draft.height, least) {
            draft.height = height;
        }
        ui.end_row();
        if draft.kind == SurfaceKind::Wall {
            term(
                ui,
                "Height at the right",
                "Only for a wall whose top edge rakes; leave it empty otherwise.",
            );
            let (units, words) = (context.units(), context.words);
            let shown = draft.right.map_or_else(String::new, |right| right.show(units));
            let right = entry(ui, "Height at the right end", &shown, 90.0, |text| match text.trim() {
                "" => Ok(None),
                text => parse_length(text, units).map(Some).map_err(|error| error.say(words)),
            });
            if let Some(right) = right {
                draft.right = right;
            }
            ui.end_row();
        }
        ui.label("Pattern");
        let names: Vec<(usize, &str)> =
            Pattern::USUAL.iter().map(|pattern| pattern.name()).enumerate().collect();
        choose(ui, "Pattern of the new surface", &names, draft.pattern, |pattern| draft.pattern = pattern);
        ui.end_row();
    });
    context.view.drafts.surface = draft.clone();
    let file = "Outlines from a file…";
    let hover = "A surface for each closed outline of a DXF, SVG or CSV file.";
    if ui.button(file).on_hover_text(hover).clicked() {
        context.push(Command::Pick(Purpose::Outlines));
    }
    if ui.button("Add surface").clicked() {
        let index = context.job.surfaces.len();
        context.edit("Add surface", move |job| {
            let board = job.surfaces.last().and_then(|s| s.sections.last()).map(|s| s.board.clone());
            let name = free_name(job, draft.kind);
            let outline = match draft.right {
                Some(right) if draft.kind == SurfaceKind::Wall => raked(draft.width, draft.height, right),
                _ => rectangle(draft.width, draft.height),
            };
            let pattern = Pattern::USUAL[draft.pattern.min(Pattern::USUAL.len() - 1)];
            let (sections, dividers) = pattern.fill(&outline, &board.unwrap_or_default());
            let kind = draft.kind;
            job.surfaces.push(Surface { name, kind, outline, sections, dividers, ..Surface::default() });
        });
        context.push(Command::Surface(index));
    }
}

/// `Ceiling`, or `Ceiling 2` if that is taken.
fn free_name(job: &Job, kind: SurfaceKind) -> String {
    let base = KINDS.iter().find(|(known, _)| *known == kind).map_or("Surface", |(_, name)| name);
    let taken = |name: &str| job.surfaces.iter().any(|surface| surface.name == name);
    let numbered = (2..).map(|number| format!("{base} {number}"));
    std::iter::once(base.to_owned()).chain(numbered).find(|name| !taken(name)).unwrap_or_default()
}

/// A drop-down list. `set` is called with what was chosen.
pub(super) fn choose<T: Copy + PartialEq>(
    ui: &mut Ui,
    name: &str,
    choices: &[(T, &str)],
    now: T,
    set: impl FnOnce(T),
) {
    let shown = choices.iter().find(|(choice, _)| *choice == now).map_or("", |(_, words)| words);
    let mut chosen = None;
    let combo = ComboBox::from_id_salt(name).selected_text(shown).width(200.0);
    let response = combo.show_ui(ui, |ui| {
        for (choice, words) in choices {
            if ui.selectable_label(*choice == now, *words).clicked() {
                chosen = Some(*choice);
            }
        }
    });
    response.response.accessible_name(name);
    if let Some(choice) = chosen.filter(|choice| *choice != now) {
        set(choice);
    }
}

fn surface(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize) {
    let surface = &context.job.surfaces[index];
    ui.horizontal(|ui| {
        ui.heading(&surface.name);
        if let Some(laid) = context.assessment.layouts.get(index) {
            let run: Length = laid.joints.iter().map(crate::surface::Joint::length).sum();
            let words = format!(
                "{} boards, {} of joints, {}",
                laid.boards.len(),
                run.show_run(context.units()),
                laid.plan_area.show(context.units())
            );
            ui.label(RichText::new(words).small().color(context.palette.soft));
        }
    });
    context.entry_problems(ui, Each::Surface, At::index(index));
    pattern(ui, context, index);
    if let Some(first) = surface.sections.first() {
        let same = surface.sections.iter().all(|section| section.board == first.board);
        if same {
            let title = if surface.sections.len() > 1 { "Boards of all sections" } else { "Boards" };
            CollapsingHeader::new(title).default_open(true).show(ui, |ui| {
                board(ui, context, index, None, &first.board);
            });
        }
    }
    for number in 0..surface.sections.len() {
        context.entry_problems(ui, Each::Section, At(index, number));
    }
    CollapsingHeader::new("Sections").show(ui, |ui| sections(ui, context, index));
    CollapsingHeader::new("Outline, trim and openings").show(ui, |ui| outline(ui, context, index));
    CollapsingHeader::new("Dividers and ridge").show(ui, |ui| dividers(ui, context, index));
}

fn pattern(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize) {
    ui.horizontal(|ui| {
        ui.label("Pattern");
        let names: Vec<&str> = Pattern::USUAL.iter().map(|pattern| pattern.name()).collect();
        let mut chosen = None;
        let combo = ComboBox::from_id_salt("apply pattern").selected_text("fill again with…").width(190.0);
        let response = combo.show_ui(ui, |ui| {
            for (number, name) in names.iter().enumerate() {
                if ui.selectable_label(false, *name).clicked() {
                    chosen = Some(number);
                }
            }
        });
        response.response.accessible_name("Fill with a pattern");
        if let Some(number) = chosen {
            context.edit(format!("Pattern: {}", names[number]), move |job| {
                let Some(surface) = job.surfaces.get_mut(index) else { return };
                let board = surface.sections.first().map(|s| s.board.clone()).unwrap_or_default();
                (surface.sections, surface.dividers) = Pattern::USUAL[number].fill(&surface.outline, &board);
            });
        }
        if ui.button("Remove surface").clicked() {
            context.edit("Remove surface", move |job| {
                if index < job.surfaces.len() {
                    job.surfaces.remove(index);
                }
            });
            context.push(Command::Surface(0));
        }
    });
}

/// Changes the boards of one section, or of all.
fn edit_board(
    context: &mut WindowContext<'_>,
    on: usize,
    section: Option<usize>,
    name: &str,
    change: impl Fn(&mut BoardSpec) + 'static,
) {
    context.edit(name, move |job| {
        let Some(surface) = job.surfaces.get_mut(on) else { return };
        for (index, assessment) in surface.sections.iter_mut().enumerate() {
            if section.is_none_or(|section| section == index) {
                change(&mut assessment.board);
            }
        }
    });
}

fn board(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize, section: Option<usize>, spec: &BoardSpec) {
    let sizes = Length::mm(1.0)..=Length::m(2.0);
    Grid::new(("board", section)).num_columns(2).show(ui, |ui| {
        term(ui, "Species", "How much the wood moves. The names are those of the Wood Handbook.");
        species(ui, context, on, section, spec);
        ui.end_row();
        term(ui, "Face width", "The width that shows, without the tongue.");
        if let Some(width) = context.length_entry(ui, "Face width", spec.face_width, sizes.clone(), 90.0) {
            edit_board(context, on, section, "Face width", move |board| board.face_width = width);
        }
        ui.end_row();
        term(ui, "Width over the tongue", "Face width plus the tongue; a gap near the tongue's length is past caulking.");
        if let Some(width) = context.length_entry(ui, "Width over the tongue", spec.overall_width, sizes.clone(), 90.0) {
            edit_board(context, on, section, "Overall width", move |board| board.overall_width = width);
        }
        ui.end_row();
        ui.label("Thickness");
        if let Some(thickness) = context.length_entry(ui, "Thickness", spec.thickness, sizes, 90.0) {
            edit_board(context, on, section, "Thickness", move |board| board.thickness = thickness);
        }
        ui.end_row();
        profile(ui, context, on, section, spec);
        term(ui, "Nailed at", "Where each board is held decides at which joint its movement shows.");
        let fixings = [
            (Fixing::Tongue, "tongue (blind-nailed)"),
            (Fixing::Middle, "middle of the face"),
            (Fixing::Groove, "groove"),
            (Fixing::BothEdges, "both edges"),
        ];
        choose(ui, "Nailed at", &fixings, spec.fixing, |fixing| {
            edit_board(context, on, section, "Fixing", move |board| board.fixing = fixing);
        });
        ui.end_row();
        term(ui, "Behind them", "Air lets the backs dry too; gypsum or plaster that the boards lie tight against does not.");
        let behinds = [(Behind::Cavity, "air: strapping, joists, attic"), (Behind::Tight, "tight to gypsum or plaster")];
        choose(ui, "Behind them", &behinds, spec.behind, |behind| {
            edit_board(context, on, section, "Behind the boards", move |board| board.behind = behind);
        });
        ui.end_row();
        term(ui, "Coating", "How much moisture the paint lets through. The permeances are assumptions of the shelf.");
        let catalog = &context.assessment.catalog;
        let finishes: Vec<(Finish, &str)> = catalog.finishes.iter().map(|coating| (coating.finish, coating.name.as_str())).collect();
        choose(ui, "Coating", &finishes, spec.finish, |finish| {
            edit_board(context, on, section, "Coating", move |board| board.finish = finish);
        });
        ui.end_row();
        term(ui, "Growth rings, °", "Angle of the growth rings to the face: 0° flat-sawn moves most, 90° quarter-sawn least. About 25° for mixed boards.");
        if let Some(degrees) = context.number_entry(ui, "Growth rings", spec.ring_angle.to_degrees(), 0, 0.0..=90.0, 60.0) {
            edit_board(context, on, section, "Growth rings", move |board| board.ring_angle = Angle::degrees(degrees));
        }
        ui.end_row();
        term(ui, "Longest board", "Courses longer than this have butt joints. Leave empty if every course is one board.");
        let (units, words) = (context.units(), context.words);
        let shown = spec.longest.map_or_else(String::new, |longest| longest.show(units));
        let longest = entry(ui, "Longest board", &shown, 90.0, |text| match text.trim() {
            "" => Ok(None),
            text => match parse_length(text, units) {
                Ok(length) if length < SHORTEST_STOCK => {
                    Err(say!(words, "entry-board-too-short", text = &text.to_owned(), limit = SHORTEST_STOCK))
                }
                read => read.map(Some).map_err(|error| error.say(words)),
            },
        });
        if let Some(longest) = longest {
            edit_board(context, on, section, "Longest board", move |board| board.longest = longest);
        }
        ui.end_row();
    });
    if let Some(species) = context.assessment.catalog.species(&spec.species) {
        remark(
            ui,
            context.palette,
            format!(
                "{}: {:.2} % of its width for each per cent of moisture; {}.",
                species.name,
                100.0 * species.coefficient(spec.ring_angle),
                species.source().map_or_else(String::new, |source| source.say(context.words))
            ),
        );
    }
}

fn species(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    on: usize,
    section: Option<usize>,
    spec: &BoardSpec,
) {
    let catalog = &context.assessment.catalog;
    let mut chosen = None;
    let combo =
        ComboBox::from_id_salt(("species", section)).selected_text(&spec.species).width(200.0).height(320.0);
    let response = combo.show_ui(ui, |ui| {
        for species in &catalog.species {
            if ui.selectable_label(species.name == spec.species, &species.name).clicked() {
                chosen = Some(species.name.clone());
            }
        }
    });
    response.response.accessible_name("Species");
    if let Some(name) = chosen {
        edit_board(context, on, section, "Species", move |board| board.species.clone_from(&name));
    }
}

fn profile(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    on: usize,
    section: Option<usize>,
    spec: &BoardSpec,
) {
    term(ui, "Edge", "The edge profile: a V where two chamfers meet, a bead, or square.");
    ui.horizontal(|ui| {
        let (kind, size) = match spec.profile {
            Profile::Square => (0, Length::inches(0.125)),
            Profile::VGroove(leg) => (1, leg),
            Profile::Bead(width) => (2, width),
        };
        let make = |kind: usize, size: Length| match kind {
            0 => Profile::Square,
            1 => Profile::VGroove(size),
            _ => Profile::Bead(size),
        };
        let kinds = [(1, "V-groove"), (2, "bead"), (0, "square")];
        choose(ui, "Edge", &kinds, kind, |kind| {
            edit_board(context, on, section, "Edge profile", move |board| board.profile = make(kind, size));
        });
        if kind != 0
            && let Some(size) = context.length_entry(
                ui,
                "Size of the edge profile",
                size,
                Length::ZERO..=Length::m(0.1),
                74.0,
            )
        {
            edit_board(context, on, section, "Edge profile", move |board| board.profile = make(kind, size));
        }
    });
    ui.end_row();
}

fn sections(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize) {
    let job = context.job;
    for (index, section) in job.surfaces[on].sections.iter().enumerate() {
        let id = ("section", on, index);
        CollapsingHeader::new(format!("Section {}", section.name)).id_salt(id).show(ui, |ui| {
            ui.push_id(id, |ui| one_section(ui, context, on, index, section));
        });
    }
    if ui.button("Add section").clicked() {
        context.edit("Add section", move |job| {
            let Some(surface) = job.surfaces.get_mut(on) else { return };
            let taken = |name: &String| surface.sections.iter().any(|section| section.name == *name);
            let name = (0..).map(crate::surface::pattern::section_name).find(|name| !taken(name));
            let board = surface.sections.last().map(|section| section.board.clone()).unwrap_or_default();
            let region = Some(surface.outline.clone());
            surface.sections.push(Section {
                name: name.unwrap_or_default(),
                region,
                board,
                ..Section::default()
            });
        });
    }
}

fn one_section(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize, index: usize, section: &Section) {
    Grid::new("section").num_columns(2).show(ui, |ui| {
        ui.label("Name");
        if let Some(name) = text_entry(ui, "Section name", &section.name, 90.0) {
            context.edit("Section name", move |job| job.rename_section(on, index, &name));
        }
        ui.end_row();
        term(ui, "Direction, °", "The way the boards run: 0° to the right, 90° up.");
        if let Some(degrees) =
            context.number_entry(ui, "Direction", section.direction.to_degrees(), 2, -360.0..=360.0, 60.0)
        {
            edit_section(context, on, index, "Direction", move |section| {
                section.direction = Angle::degrees(degrees);
            });
        }
        ui.end_row();
        term(ui, "Starter width", "Width of the ripped first course; 0 to start with a full board.");
        if let Some(start) =
            context.length_entry(ui, "Starter width", section.start, Length::ZERO..=Length::m(2.0), 90.0)
        {
            edit_section(context, on, index, "Starter width", move |section| section.start = start);
        }
        ui.end_row();
    });
    if let Some(region) = &section.region {
        corners(ui, context, "Region", region, move |job| {
            job.surfaces.get_mut(on)?.sections.get_mut(index)?.region.as_mut()
        });
    }
    let same = context.job.surfaces[on].sections.iter().all(|other| other.board == section.board);
    CollapsingHeader::new(if same { "Other boards here" } else { "Boards" }).show(ui, |ui| {
        board(ui, context, on, Some(index), &section.board);
    });
    if ui.button("Remove section").clicked() {
        context.edit("Remove section", move |job| {
            if let Some(surface) = job.surfaces.get_mut(on)
                && index < surface.sections.len()
            {
                surface.sections.remove(index);
            }
        });
    }
}

fn edit_section(
    context: &mut WindowContext<'_>,
    on: usize,
    index: usize,
    name: &str,
    change: impl FnOnce(&mut Section) + 'static,
) {
    context.edit(name, move |job| {
        if let Some(section) = job.surfaces.get_mut(on).and_then(|surface| surface.sections.get_mut(index)) {
            change(section);
        }
    });
}
