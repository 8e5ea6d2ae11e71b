//! The papers of one job: data and figures made once, then typeset by the templates.

use std::path::{Path, PathBuf};

use typst::foundations::Bytes;

use super::page::{self, OwnerPage, PAGE_FILE, PageData};
use super::photos::{PinnedPhoto, add_photos};
use super::templates::{LOOK, LOOK_NAME, OwnTemplate, PARTS, PARTS_NAME};
use super::typeset::{Files, Typeset};
use super::{Paper, PaperError, PaperWords, Reader, Templates, data, figure, held_back};
use crate::assess::Assessment;
use crate::job::Problem;
use crate::words::Words;

/// The papers of a job, ready to be typeset.
pub struct Papers {
    owner: Files,
    crew: Files,
    page: PageData,
    templates: Templates,
    held: Vec<(Paper, Vec<String>)>,
    later_visits: bool,
    words: PaperWords,
    photos: Vec<PinnedPhoto>,
    photo_folder: Option<PathBuf>,
}

impl Papers {
    /// The papers of an assessment by the built-in templates, in US English.
    pub fn new(assessment: &Assessment) -> Self {
        Self::with(assessment, Templates::default(), &PaperWords::us_english(&assessment.job))
    }

    /// The papers of an assessment by these templates, in these words.
    pub fn with(assessment: &Assessment, templates: Templates, words: &PaperWords) -> Self {
        Self::of_file(assessment, &[], templates, words)
    }

    /// The same of a job whose file could not be read in full: `unread` is what is missing.
    pub fn of_file(
        assessment: &Assessment,
        unread: &[Problem],
        templates: Templates,
        words: &PaperWords,
    ) -> Self {
        let (given, page) = page::owner_data(assessment, unread, &words.owner);
        let owner = files(assessment, &given, &words.owner);
        let crew = if words.crew == words.owner {
            owner.clone()
        } else {
            files(assessment, &data::data(assessment, unread, &words.crew), &words.crew)
        };
        let held = |paper: Paper| {
            let held = held_back(paper, assessment, unread)?;
            Some((paper, held.reasons(assessment, &words.owner)))
        };
        let held = Paper::ALL.into_iter().filter_map(held).collect();
        let later_visits = assessment.follow_up.iter().any(|visit| !visit.readings.is_empty());
        let photos = data::photos(assessment, words.of(Paper::EvidenceSheet.reader()));
        let (words, photo_folder) = (words.clone(), None);
        Self { owner, crew, page, templates, held, later_visits, words, photos, photo_folder }
    }

    /// The same with the photos of the job, which lie in this folder; none where the job has no file yet.
    pub fn with_photos_in(self, folder: Option<PathBuf>) -> Self {
        Self { photo_folder: folder, ..self }
    }

    /// Whether any joint was looked at again.
    pub const fn has_later_visits(&self) -> bool {
        self.later_visits
    }

    /// Why a paper is held back, a line for each reason; nothing where it is not. It can be typeset still, and each
    /// page then says that it is a draft.
    pub fn held_back(&self, paper: Paper) -> &[String] {
        self.held.iter().find(|(held, _)| *held == paper).map_or(&[], |(_, reasons)| reasons)
    }

    /// The homeowner's page: by the user's own template if there is one, else, or where that cannot be used,
    /// by the built-in one.
    ///
    /// # Errors
    /// If the built-in template has a fault.
    pub fn owner_page(&self) -> Result<OwnerPage, PaperError> {
        let by = |file: PathBuf, template: &str| {
            page::render(template, &self.page).map_err(|(line, reason)| PaperError::Template {
                file,
                line,
                reason,
            })
        };
        let own = self
            .templates
            .read_own_page()
            .and_then(|own| own.map(|(file, template)| by(file, &template)).transpose());
        let fault = match own {
            Ok(Some(html)) => return Ok(OwnerPage { html, fault: None }),
            Ok(None) => None,
            Err(fault) => {
                tracing::warn!("{fault}: the built-in template is used");
                Some(fault)
            }
        };
        Ok(OwnerPage { html: by(PAGE_FILE.into(), page::TEMPLATE)?, fault })
    }

    /// Typesets a paper: by the user's own template and look where there are any, else by the built-in
    /// ones. Where the user's own cannot be used, the built-in ones are, and [`Typeset::fault`] says why.
    ///
    /// # Errors
    /// If the built-in template does not compile.
    pub fn typeset(&self, paper: Paper) -> Result<Typeset, PaperError> {
        let fault = match self.templates.read_own(paper) {
            Ok(None) => return self.built_in(paper),
            Ok(Some(own)) => match self.by_own(paper, own) {
                Ok(typeset) => return Ok(typeset),
                Err(fault) => fault,
            },
            Err(fault) => fault,
        };
        tracing::warn!("{fault}: the built-in template is used");
        Ok(self.built_in(paper)?.instead_of(fault))
    }

    fn by_own(&self, paper: Paper, own: OwnTemplate) -> Result<Typeset, PaperError> {
        let mut files = self.files(paper);
        if let Some((_, look)) = &own.look {
            files.add(LOOK_NAME, Bytes::from_string(look.clone()));
        }
        let template = own.template.as_ref().map_or_else(|| paper.template(), |(_, text)| text);
        Typeset::new(template, &files).map_err(|error| match (own.template, own.look) {
            // A built-in template that does not compile is the fault of the look it was given.
            (None, Some((look, _))) if !error.is_in(LOOK_NAME) => error.of(&look).without_line(),
            (_, Some((look, _))) if error.is_in(LOOK_NAME) => error.of(&look),
            (Some((template, _)), _) => error.of(&template),
            (None, _) => error.of(&built_in_name(paper)),
        })
    }

    fn built_in(&self, paper: Paper) -> Result<Typeset, PaperError> {
        let made = Typeset::new(paper.template(), &self.files(paper));
        made.map_err(|error| error.of(&built_in_name(paper)))
    }

    /// What lies beside the template of a paper. Photos are read for the sheet that shows them only.
    fn files(&self, paper: Paper) -> Files {
        let mut files = match paper.reader() {
            Reader::Owner => self.owner.clone(),
            Reader::Crew => self.crew.clone(),
        };
        if paper == Paper::EvidenceSheet {
            let words = self.words.of(paper.reader());
            add_photos(&mut files, &self.photos, self.photo_folder.as_deref(), words);
        }
        files
    }
}

/// What a built-in template is called.
fn built_in_name(paper: Paper) -> PathBuf {
    Path::new(paper.file_stem()).with_extension("typ")
}

/// What lies beside the templates: data, the built-in look, figures and the logo.
pub(super) fn files(assessment: &Assessment, given: &serde_json::Value, words: &Words) -> Files {
    let mut files = Files::default();
    files.add("data.json", Bytes::from_string(given.to_string()));
    files.add(LOOK_NAME, Bytes::from_string(LOOK.to_owned()));
    files.add(PARTS_NAME, Bytes::from_string(PARTS.to_owned()));
    for (name, svg) in figure::figures(assessment, words).into_iter().chain(figure::maps(assessment)) {
        files.add(&name, Bytes::from_string(svg));
    }
    if let Some(logo) = &assessment.job.contractor.logo {
        files.add(logo.file_name(), Bytes::new(logo.bytes().to_vec()));
    }
    files
}
