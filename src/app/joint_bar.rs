//! The bar under the drawing: the selected joint, its gap to be typed, and where to go next.

use std::collections::HashSet;

use eframe::egui::{ComboBox, Id, Key, Label, RichText, Ui};

use super::command::Command;
use super::context::WindowContext;
use super::entry::{entry_for, select_all};
use super::view::{Selected, Tool, View};
use crate::assess::Assessment;
use crate::job::Job;
use crate::measure::{Length, Units, parse_length};
use crate::surface::{Joint, JointKind};
use crate::survey::{Failure, GapReading};
use crate::words::{Arg, Say as _, Words, say};

/// Room for the name of one joint.
const NAME_WIDTH: f32 = 74.0;

pub(super) fn joint_bar(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.horizontal(|ui| {
        ui.set_min_height(26.0);
        let hint = match context.view.canvas.tool {
            Tool::Measure => None,
            Tool::Shape => Some("joint-bar-shape"),
            Tool::Divider => Some("joint-bar-divider"),
            Tool::Opening => Some("joint-bar-opening"),
            Tool::Photo => Some("joint-bar-photo"),
        };
        if let Some(hint) = hint {
            ui.add(
                Label::new(RichText::new(context.words.text(hint)).color(context.palette.soft)).truncate(),
            );
            return;
        }
        let Some(selected) = context.view.selection.joint.clone() else {
            let drawn = context.assessment.layouts.iter().any(|laid| !laid.joints.is_empty());
            let words = if drawn { "joint-bar-click" } else { "joint-bar-none" };
            if drawn && ui.button(context.words.text("cmd-next-joint")).clicked() {
                context.push(Command::NextJoint);
            }
            ui.add(
                Label::new(RichText::new(context.words.text(words)).color(context.palette.soft)).truncate(),
            );
            return;
        };
        let name = match context.view.selection.more.len() {
            0 => say!(context.words, "joint-bar-joint", joint = Arg::Joint(&selected.joint)),
            more => {
                let known = all_selected(context, &selected);
                let surface = context.job.surfaces.get(selected.surface).map(|surface| surface.name.as_str());
                let measured = |joint: &&String| {
                    let here =
                        |gap: &GapReading| Some(gap.surface.as_str()) == surface && gap.joint == **joint;
                    context.job.survey.gaps.iter().any(here)
                };
                match known.iter().filter(measured).count() {
                    0 => say!(context.words, "joint-bar-joints", count = more + 1),
                    measured => say!(
                        context.words,
                        "joint-bar-joints-measured",
                        count = more + 1,
                        measured = measured
                    ),
                }
            }
        };
        joint_name(ui, name);
        gap_field(ui, context, &selected);
        failure(ui, context, &selected);
        if ui.button(context.words.text("cmd-next-joint")).clicked() {
            context.push(Command::NextJoint);
        }
        ui.add(
            eframe::egui::Label::new(RichText::new(story(context)).color(context.palette.soft)).truncate(),
        );
    });
}

/// Which joint it is. Names of joints differ in width; what stands beside them does not move for it.
fn joint_name(ui: &mut Ui, name: String) {
    let shown = ui.label(RichText::new(name).strong()).rect.width();
    ui.add_space((NAME_WIDTH - shown).max(0.0));
}

/// The last reading of a joint.
fn reading<'a>(context: &WindowContext<'a>, selected: &Selected) -> Option<&'a GapReading> {
    let surface = context.job.surfaces.get(selected.surface)?;
    context.job.survey.gaps.iter().rfind(|gap| gap.surface == surface.name && gap.joint == selected.joint)
}

/// The widest gap that is taken for one.
const WIDEST: Length = Length::inches(2.0);

/// Reads the width of a gap.
pub(super) fn read_gap(text: &str, units: Units, words: &Words) -> Result<Length, String> {
    let width = parse_length(text, units).map_err(|error| error.say(words))?;
    let typed = text.trim().to_owned();
    if width > WIDEST {
        return Err(say!(words, "entry-gap-too-wide", text = &typed, limit = WIDEST));
    }
    if width < Length::ZERO {
        return Err(say!(words, "entry-negative-gap", text = &typed));
    }
    Ok(width)
}

fn gap_field(ui: &mut Ui, context: &mut WindowContext<'_>, selected: &Selected) {
    let (units, words) = (context.units(), context.words);
    let shown = shown_gap(context, selected);
    ui.label(words.text("joint-bar-gap"));
    // One field for all joints, so that it keeps the keyboard while joints change.
    let id = Id::unique("gap field");
    let slot = id.with((selected.surface, &selected.joint, context.view.selection.more.len()));
    let field = entry_for(ui, (id, slot), &words.text("joint-bar-gap-field"), (&shown, ""), 74.0, |text| {
        if text.trim().is_empty() {
            return Ok(None);
        }
        read_gap(text, units, words).map(Some)
    });
    let entered = field.response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    // What Enter could not take is put right there; by Tab the field can be left all the same.
    if std::mem::take(&mut context.view.selection.focus_gap) || (field.refused && entered) {
        field.response.request_focus();
        // What was refused is typed over as well; what was typed since is not.
        if !field.begun {
            select_all(ui, id, &" ".repeat(64));
        }
    }
    if let Some(width) = field.value {
        set_gap(context, selected, width);
    }
    if entered && !field.refused && context.view.selection.more.is_empty() {
        // What is typed on at once belongs to the next joint: the field never loses the keyboard.
        field.response.request_focus();
        // The next key replaces what the next joint shows.
        select_all(ui, id, &" ".repeat(64));
        context.push(Command::NextJoint);
    }
}

/// The reading that is shown: that of the joint, or of all selected ones if they are alike.
fn shown_gap(context: &WindowContext<'_>, selected: &Selected) -> String {
    let show = |joint: &String| {
        let selected = Selected { surface: selected.surface, joint: joint.clone() };
        reading(context, &selected).map_or_else(String::new, |reading| reading.width.show(context.units()))
    };
    let first = show(&selected.joint);
    if context.view.selection.more.iter().all(|joint| show(joint) == first) { first } else { String::new() }
}

/// The selected joint and those taken in with it.
fn all_selected(context: &WindowContext<'_>, selected: &Selected) -> Vec<String> {
    std::iter::once(&selected.joint).chain(&context.view.selection.more).cloned().collect()
}

fn set_gap(context: &mut WindowContext<'_>, selected: &Selected, width: Option<Length>) {
    let (surface, joints) = (selected.surface, all_selected(context, selected));
    context.edit("undo-gap", move |job| {
        let Some(surface) = job.surfaces.get(surface).map(|surface| surface.name.clone()) else { return };
        let gaps = &mut job.survey.gaps;
        for joint in joints {
            let here = |gap: &GapReading| gap.surface == surface && gap.joint == joint;
            match width {
                None => gaps.retain(|gap| !here(gap)),
                Some(width) => match gaps.iter_mut().rfind(|gap| here(gap)) {
                    Some(reading) => reading.width = width,
                    None => {
                        let surface = surface.clone();
                        gaps.push(GapReading { surface, joint, width, ..GapReading::default() });
                    }
                },
            }
        }
    });
}

fn failure(ui: &mut Ui, context: &mut WindowContext<'_>, selected: &Selected) {
    // There before there is a reading, too, so that nothing beside it moves when one is typed.
    let noted = reading(context, selected).map(|reading| reading.failed);
    let shown = noted.unwrap_or_default().say(context.words);
    let response = ui.add_enabled_ui(noted.is_some(), |ui| {
        let combo = ComboBox::from_id_salt("failed how").selected_text(shown).width(130.0).truncate();
        combo.show_ui(ui, |ui| {
            for choice in Failure::ALL {
                if ui.selectable_label(noted == Some(choice), choice.say(context.words)).clicked() {
                    set_failure(context, selected, choice);
                }
            }
        })
    });
    response
        .inner
        .response
        .on_hover_text(context.words.text("field-gap-failure.hint"))
        .accessible_name(context.words.text("field-gap-failure"));
}

fn set_failure(context: &mut WindowContext<'_>, selected: &Selected, choice: Failure) {
    let (surface, joints) = (selected.surface, all_selected(context, selected));
    context.edit("undo-failure", move |job| {
        let surface = job.surfaces.get(surface).map(|s| s.name.clone());
        let of_surface = |gap: &&mut GapReading| Some(&gap.surface) == surface.as_ref();
        for gap in job.survey.gaps.iter_mut().filter(of_surface) {
            if joints.contains(&gap.joint) {
                gap.failed = choice;
            }
        }
    });
}

fn story(context: &WindowContext<'_>) -> String {
    let Some((index, state)) = context.selected() else {
        return context.words.text("joint-bar-gone").into_owned();
    };
    let joint = &context.assessment.layouts[state.surface].joints[index];
    let (kind, length) = (Arg::Id(joint.kind.key()), joint.length());
    let kind = say!(context.words, "drawing-joint-kind", kind = kind, length = length);
    match state.extremes {
        Some((low, high)) => {
            let range = say!(context.words, "drawing-joint-range", low = low, high = high);
            format!("{kind}  ·  {range}")
        }
        None => kind,
    }
}

/// The joint to go to next: the one that the assessment finds most worth measuring, unless it was
/// measured since; when the readings are enough, the next to spread them evenly: in the section with the fewest readings, the
/// one farthest from those measured. The layout is that of the last assessment, the readings are
/// those of `now`, the job as it is: a reading typed a moment ago counts.
pub(super) fn next_to_measure(assessment: &Assessment, now: &Job, view: &View) -> Option<Selected> {
    let job = &assessment.job;
    let measured: HashSet<(&str, &str)> =
        now.survey.gaps.iter().map(|gap| (gap.surface.as_str(), gap.joint.as_str())).collect();
    if let Some(next) = assessment.gaps.next {
        let joint = &assessment.layouts[next.surface].joints[next.joint].label;
        if !measured.contains(&(job.surfaces[next.surface].name.as_str(), joint.as_str())) {
            return Some(Selected { surface: next.surface, joint: joint.clone() });
        }
    }
    // Readings so far, whether on another surface, and the joint: the least is the best.
    let mut best: Option<(usize, bool, Selected)> = None;
    for surface in 0..job.surfaces.len() {
        for section in 0..job.surfaces[surface].sections.len() {
            let laid = &assessment.layouts[surface];
            let longest = laid.joints.iter().map(Joint::length).fold(Length::ZERO, Length::max);
            let joints: Vec<(usize, bool)> = laid
                .joints
                .iter()
                .enumerate()
                .filter(|(_, joint)| joint.section == section && joint.kind == JointKind::BoardEdge)
                // A sliver in a corner tells little and is hard to get at.
                .filter(|(_, joint)| joint.length() >= longest / 4.0)
                .map(|(index, joint)| {
                    (index, measured.contains(&(job.surfaces[surface].name.as_str(), joint.label.as_str())))
                })
                .collect();
            let Some(place) = farthest(&joints) else { continue };
            let readings = joints.iter().filter(|(_, measured)| *measured).count();
            let elsewhere = surface != view.surface;
            let better = best.as_ref().is_none_or(|known| (readings, elsewhere) < (known.0, known.1));
            if better {
                let joint = laid.joints[joints[place].0].label.clone();
                best = Some((readings, elsewhere, Selected { surface, joint }));
            }
        }
    }
    best.map(|(_, _, selected)| selected)
}

/// Place of the unmeasured joint farthest from any measured one; the middle if none is measured.
fn farthest(joints: &[(usize, bool)]) -> Option<usize> {
    let measured: Vec<usize> = (0..joints.len()).filter(|&place| joints[place].1).collect();
    if measured.is_empty() {
        return (!joints.is_empty()).then_some(joints.len() / 2);
    }
    let distance = |place: usize| measured.iter().map(|&known| known.abs_diff(place)).min().unwrap_or(0);
    (0..joints.len()).filter(|&place| !joints[place].1).max_by_key(|&place| distance(place))
}
