//! Pins of photos on the drawing, and the photo that is looked at.

use eframe::egui::{Id, Image, Rect, Role, Sense, Stroke, Ui, Vec2, WidgetInfo, vec2};

use super::Sheet;
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::dialog::modal;
use crate::app::entry::text_entry;
use crate::app::icon::Icon;
use crate::app::photos::path_of;
use crate::surface::Photo;
use crate::words::{Arg, say};

pub(super) fn pins(ui: &mut Ui, context: &mut WindowContext<'_>, sheet: &Sheet, on: usize) {
    let Some(surface) = context.job.surfaces.get(on) else { return };
    for (index, photo) in surface.photos.iter().enumerate() {
        let at = sheet.at(photo.at.coord());
        if !ui.clip_rect().contains(at) {
            continue;
        }
        let rect = Rect::from_center_size(at, Vec2::splat(22.0));
        let response = ui.interact(rect, Id::unique(("photo", on, index)), Sense::CLICK);
        let words = context.words;
        let name = match photo.note.as_str() {
            "" => say!(words, "photo-name", number = index + 1),
            note => say!(words, "photo-name-note", number = index + 1, note = Arg::Name(note)),
        };
        response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
        let edge = if response.hovered() || response.has_focus() { 2.4 } else { 1.4 };
        ui.painter().circle(at, 11.0, context.palette.raised, Stroke::new(edge, context.palette.accent));
        Icon::Photo.paint(
            ui.painter(),
            Rect::from_center_size(at, Vec2::splat(13.0)),
            Stroke::new(1.3, context.palette.ink),
        );
        if response.clicked() {
            context.view.canvas.photo = Some(index);
        }
        response.on_hover_text(name);
    }
    look(ui, context, on);
}

/// The photo that is looked at, with its note.
fn look(ui: &Ui, context: &mut WindowContext<'_>, on: usize) {
    let Some(index) = context.view.canvas.photo else { return };
    let Some(photo) = context.job.surfaces.get(on).and_then(|surface| surface.photos.get(index)) else {
        context.view.canvas.photo = None;
        return;
    };
    let window = modal("photo", ui.ctx()).show(ui.ctx(), |ui| {
        picture(ui, context, photo);
        let words = context.words;
        ui.horizontal(|ui| {
            ui.label(words.text("photo-note"));
            if let Some(note) = text_entry(ui, &words.text("photo-note-field"), &photo.note, 300.0) {
                context.edit("photo-note-field", move |job| {
                    if let Some(photo) = job.surfaces.get_mut(on).and_then(|s| s.photos.get_mut(index)) {
                        photo.note = note;
                    }
                });
            }
            if ui.button(words.text("photo-unpin")).on_hover_text(words.text("photo-unpin.hint")).clicked() {
                context.edit("photo-unpin", move |job| {
                    if let Some(surface) = job.surfaces.get_mut(on)
                        && index < surface.photos.len()
                    {
                        surface.photos.remove(index);
                    }
                });
                context.view.canvas.photo = None;
            }
            if ui.button(words.text("close")).clicked() {
                context.view.canvas.photo = None;
            }
        });
    });
    if window.should_close() {
        context.view.canvas.photo = None;
    }
}

fn picture(ui: &mut Ui, context: &mut WindowContext<'_>, photo: &Photo) {
    let path = context.session.document.path.as_deref().and_then(|job| path_of(job, &photo.file));
    let Some(path) = path else {
        ui.label(context.words.text("photo-unsaved-job"));
        return;
    };
    match context.services.photos.picture(&path) {
        Some(Ok(texture)) => {
            let room = ui.ctx().content_rect().size() * 0.75 - vec2(0.0, 60.0);
            ui.add(Image::new(texture).max_size(room).shrink_to_fit());
        }
        Some(Err(_)) => {
            ui.colored_label(
                context.palette.error,
                say!(context.words, "photo-unreadable", path = &path.display().to_string()),
            );
        }
        None => {
            ui.label(context.words.text("photo-loading"));
            if !context.services.photos.knows(&path) {
                context.push(Command::WantPhoto(path));
            }
        }
    }
}
