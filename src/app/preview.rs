//! Papers typeset for the window, always from the newest assessment.

use std::path::PathBuf;
use std::sync::Arc;

use eframe::egui::{ColorImage, Context, TextureHandle, TextureOptions};

use super::worker::Worker;
use crate::assess::Assessment;
use crate::job::Problem;
use crate::papers::{PageImage, Paper, PaperError, PaperWords, Papers, Templates};
use crate::words::{Say as _, say};

/// Points of the screen for a point of paper: pages are read on screens of twice the density, too.
const SCALE: f64 = 1.5;

/// What a preview is made from, and what comes out.
type Input = (Paper, Arc<Assessment>, Vec<Problem>, Option<PathBuf>, Templates, PaperWords);
type Output = (Paper, Arc<Assessment>, Result<Pages, String>);

/// The pages of a paper as pictures, and what is wrong with the user's own template, if it is.
struct Pages {
    images: Vec<PageImage>,
    fault: Option<String>,
}

/// The paper that was typeset last, as textures.
pub(super) struct Previews {
    asked: Option<(Paper, Arc<Assessment>)>,
    worker: Worker<Input, Output>,
    /// The paper that is shown.
    pub shown: Option<Paper>,
    /// Its pages.
    pub pages: Vec<TextureHandle>,
    /// Why it could not be typeset, or what is wrong with the user's own template.
    pub error: Option<String>,
}

impl Previews {
    /// Typeset on a thread of their own, or at once for tests.
    pub fn new(threads: bool, ctx: &Context) -> Self {
        let worker = Worker::new(threads, "preview", ctx, typeset);
        Self { asked: None, worker, shown: None, pages: Vec::new(), error: None }
    }

    /// Asks for a paper, unless it is the one asked for last. `unread` is what could not be read of the job's file,
    /// `photos` the folder of its photos.
    pub fn want(
        &mut self,
        paper: Paper,
        assessment: &Arc<Assessment>,
        unread: &[Problem],
        photos: Option<PathBuf>,
        templates: &Templates,
        words: &PaperWords,
    ) {
        if !self.is_asked(paper, assessment) {
            self.asked = Some((paper, Arc::clone(assessment)));
            let (assessment, unread) = (Arc::clone(assessment), unread.to_vec());
            self.worker.ask((paper, assessment, unread, photos, templates.clone(), words.clone()));
        }
    }

    fn is_asked(&self, paper: Paper, assessment: &Arc<Assessment>) -> bool {
        self.asked.as_ref().is_some_and(|(known, of)| *known == paper && Arc::ptr_eq(of, assessment))
    }

    /// Has the paper typeset anew.
    pub fn forget(&mut self) {
        self.asked = None;
    }

    /// Takes a paper that was typeset. One that is not the one asked for last came too late.
    pub fn take(&mut self, ctx: &Context) {
        let Some((paper, assessment, pages)) = self.worker.latest() else { return };
        if !self.is_asked(paper, &assessment) {
            return;
        }
        match pages {
            Ok(pages) => {
                let texture = |(index, page): (usize, PageImage)| {
                    let image = ColorImage::from_rgba_premultiplied([page.width, page.height], &page.rgba);
                    ctx.load_texture(format!("page {index}"), image, TextureOptions::LINEAR)
                };
                self.pages = pages.images.into_iter().enumerate().map(texture).collect();
                self.error = pages.fault;
            }
            Err(error) => self.error = Some(error),
        }
        self.shown = Some(paper);
    }
}

/// Typesets a paper and makes pictures of it; the worker's work.
fn typeset((paper, assessment, unread, photos, templates, words): Input) -> Output {
    let text = |fault: &PaperError| {
        let (paper, fault) = (paper.say(&words.owner), fault.say(&words.owner));
        say!(words.owner, "paper-fault-built-in-used", paper = &paper, fault = &fault)
    };
    let papers = Papers::of_file(&assessment, &unread, templates, &words).with_photos_in(photos);
    let typeset = papers.typeset(paper);
    let pages = typeset
        .map(|typeset| Pages { images: typeset.images(SCALE), fault: typeset.fault().map(text) })
        .map_err(|error| error.say(&words.owner));
    (paper, assessment, pages)
}
