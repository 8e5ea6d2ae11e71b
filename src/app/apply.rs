//! The one place where a command changes anything.

use std::sync::Arc;

use eframe::egui::{Context, Theme, ViewportCommand};

use super::background::BackgroundTask;
use super::command::Command;
use super::field_place::tab_of;
use super::lead::{self, Destination};
use super::pick::Purpose;
use super::toast::Toast;
use super::view::{Selected, Tab};
use super::{App, entry, joint_bar, time_line};
use crate::assess::EntryPlace;
use crate::export::DraftPapers;
use crate::job::fields::{self, At};
use crate::job::photo_folder;
use crate::words::{Arg, say};

impl App {
    /// Applies a command. The one place where anything changes.
    pub fn apply(&mut self, ctx: &Context, command: Command) {
        match command {
            Command::Edit(edit) => {
                if self.session.document.edit(edit.name, edit.change) {
                    self.reassess();
                }
            }
            Command::Undo => {
                self.session.document.undo();
                self.reassess();
            }
            Command::Redo => {
                self.session.document.redo();
                self.reassess();
            }
            Command::New => self.leave(ctx, Command::New),
            Command::PlanNextInstall => self.leave(ctx, Command::PlanNextInstall),
            Command::FollowUpInstall => self.leave(ctx, Command::FollowUpInstall),
            Command::WriteRecordTo(folder) => {
                let (job, words) =
                    (Arc::clone(self.session.job()), self.languages.paper_words(self.session.job()));
                let unread = self.session.document.unread.clone();
                self.send(BackgroundTask::WriteRecord(folder, job, unread, words));
            }
            // What is unsaved is asked about once there is something to open.
            Command::Pick(Purpose::Papers | Purpose::Record) if self.tells_of_refused(ctx) => {}
            Command::Pick(purpose) => self.ask_path(purpose),
            Command::OpenPath(path) => self.leave(ctx, Command::OpenPath(path)),
            Command::OpenDemo => self.leave(ctx, Command::OpenDemo),
            Command::Quit => ctx.send_viewport_cmd(ViewportCommand::Close),
            Command::Save => match self.session.document.path.clone() {
                Some(path) => self.save(ctx, &path),
                None => self.ask_path(Purpose::Save),
            },
            Command::SavePath(path) => self.save(ctx, &path),
            Command::TakeWeather(path) => self.send(BackgroundTask::ReadWeather(path)),
            Command::AskLogger(path) => self.send(BackgroundTask::GuessLogger(path)),
            Command::TakeLogger(import) => self.send(BackgroundTask::ReadLogger(import)),
            Command::ExportPricesTo(path) => self.export_prices(&path),
            Command::OfferPrices(path) => self.offer_prices(&path),
            Command::OfferMyPrices => self.offer_my_prices(),
            Command::KeepPrices => self.keep_prices(),
            Command::LearnFrom(folder) => self.send(BackgroundTask::Learn(folder)),
            Command::WritePapersTo(folder) => {
                let (job, templates) = (Arc::clone(self.session.job()), self.services.templates.clone());
                let words = self.languages.paper_words(&job);
                let drafts = if self.view.papers.drafts { DraftPapers::Write } else { DraftPapers::HoldBack };
                let unread = self.session.document.unread.clone();
                let photos = self.session.document.path.as_deref().map(photo_folder);
                self.send(BackgroundTask::WritePapers(folder, photos, job, unread, templates, words, drafts));
            }
            Command::Language(audience, language) => {
                self.languages.set(audience, language);
                self.settings.languages = self.languages.tags();
                self.services.previews.forget();
            }
            Command::SwitchTheme => {
                self.settings.dark = !self.settings.dark;
                ctx.set_theme(if self.settings.dark { Theme::Dark } else { Theme::Light });
            }
            Command::Units(units) => {
                self.settings.units = units;
                self.session.document.show_in(units);
                self.reassess();
            }
            Command::Tab(tab) => {
                self.view.tab = tab;
                self.settings.tab = tab;
                // What is measured is of the visit.
                if tab == Tab::Measure {
                    (self.view.time.day, self.view.time.playing) = (0, false);
                }
            }
            Command::Surface(surface) => {
                self.view.surface = surface;
                self.view.selection.joint = None;
                self.view.selection.more.clear();
                (self.view.canvas.drag, self.view.canvas.typed_edge) = (None, None);
            }
            Command::Select(selected) => {
                self.view.selection.focus_gap = selected.is_some();
                if let Some(selected) = &selected {
                    self.view.surface = selected.surface;
                }
                self.view.selection.joint = selected;
                self.view.selection.more.clear();
            }
            Command::SelectMore(joints) => self.multi_selection(joints),
            Command::SelectMarquee(joints) => {
                (self.view.selection.joint, self.view.selection.more) = (None, Vec::new());
                self.multi_selection(joints);
            }
            Command::NextJoint => {
                let next = joint_bar::next_to_measure(&self.session.assessed, self.session.job(), &self.view);
                self.apply(ctx, Command::Select(next));
            }
            Command::Tool(tool) => {
                self.view.canvas.tool = tool;
                (self.view.canvas.drag, self.view.canvas.typed_edge) = (None, None);
            }
            Command::Day(day) => self.view.time.day = day,
            Command::Show(page) => {
                if self.view.presentation.page.is_none() {
                    // As it was found, and without prices, however it was looked at before.
                    (self.view.time.day, self.view.time.playing, self.view.presentation.prices) =
                        (0, false, false);
                }
                self.view.presentation.page = page;
                // A joint at hand is the workshop's business.
                (self.view.selection.joint, self.view.selection.more) = (None, Vec::new());
            }
            Command::Copy(table) => self.copy(ctx, table),
            Command::CopyPicture(picture) => self.copy_picture(ctx, picture),
            Command::TakeOutlines(path) => self.take_outlines(ctx, &path),
            Command::ChoosePhoto(at) => {
                self.view.drafts.photo_at = Some(at);
                self.ask_path(Purpose::Photo);
            }
            Command::TakePhoto(path) => {
                let at = self.view.drafts.photo_at.take().unwrap_or_else(|| self.middle());
                self.take_photo(ctx, &path, self.view.surface, at);
            }
            Command::WantPhoto(path) => self.services.photos.want(path),
            Command::ScrollTo(place) => {
                if place == EntryPlace::Dates {
                    lead::seek(ctx, Destination::any(&fields::INSTALLED));
                }
                self.view.scroll_to.set(Some(place));
                // What is looked at is drawn in the next frame.
                ctx.request_repaint();
            }
            Command::GoToField(destination) => {
                self.apply(ctx, Command::Tab(tab_of(destination.field)));
                if let Some(At(surface, _)) =
                    destination.at.filter(|_| destination.field.each.is_of_surface())
                {
                    self.apply(ctx, Command::Surface(surface));
                }
                lead::seek(ctx, destination);
                ctx.request_repaint();
            }
            Command::Tell(text) => self.prompts.toast = Some(Toast::good(text)),
            Command::OwnTemplate(paper) => self.own_template(paper),
            Command::BuiltInTemplate(paper) => self.built_in_template(paper),
            Command::ReadTemplates => self.services.previews.forget(),
            Command::TakeLogo(path) => self.take_logo(ctx, &path),
            Command::About => self.view.about = true,
            Command::Search => self.view.search = Some((String::new(), 0)),
            Command::Play => self.view.time.playing = !self.view.time.playing,
            Command::ReferenceCurve => time_line::keep_reference_curve(ctx, self),
            Command::Fit => {
                self.view.canvas.cameras.remove(&self.view.surface);
            }
        }
    }

    /// The middle of the selected joint, else of the surface shown.
    fn middle(&self) -> crate::surface::Point {
        use geo::BoundingRect as _;
        let laid = self.session.assessed.layouts.get(self.view.surface);
        let selected = self.view.selection.joint.as_ref().and_then(|selected| {
            laid?.joints.iter().find(|joint| joint.label == selected.joint).map(crate::surface::Joint::middle)
        });
        let bounds = laid.and_then(|laid| laid.face.bounding_rect());
        let middle = selected.or_else(|| bounds.map(|bounds| bounds.center())).unwrap_or_default();
        crate::surface::Point::m(middle.x, middle.y)
    }

    /// Takes joints in with the selected one, or lets a single one go.
    fn multi_selection(&mut self, joints: Vec<String>) {
        let view = &mut self.view;
        let single = joints.len() == 1;
        for joint in joints {
            let selected = view.selection.joint.as_ref().is_some_and(|selected| selected.joint == joint);
            if view.selection.joint.is_none() {
                view.selection.joint = Some(Selected { surface: view.surface, joint });
            } else if let (true, Some(at)) =
                (single, view.selection.more.iter().position(|known| *known == joint))
            {
                view.selection.more.remove(at);
            } else if !selected && !view.selection.more.contains(&joint) {
                view.selection.more.push(joint);
            }
        }
        view.selection.focus_gap = view.selection.joint.is_some();
    }

    /// Tells once which entries papers would leave out; asked for again, they are written without.
    fn tells_of_refused(&mut self, ctx: &Context) -> bool {
        let refused = entry::refused(ctx);
        // Told once, it may be done once.
        let told = std::mem::take(&mut self.view.told_of);
        if refused.is_empty() || told == refused {
            return false;
        }
        let words = self.words();
        let fields = refused.iter().map(String::as_str).collect();
        let text = say!(words, "papers-leave-out", count = refused.len(), fields = Arg::Names(fields));
        self.fault(text);
        self.view.told_of = refused;
        true
    }
}
