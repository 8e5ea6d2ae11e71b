//! The papers of one job: data and figures made once, templates built in or the user's own.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use typst::foundations::Bytes;

use super::typeset::{Files, PaperError, Typeset};
use super::{Paper, data, figure};
use crate::assess::Assessment;

/// A template that is larger than this is refused.
const LARGEST: u64 = 1 << 20;

/// What the built-in templates share.
const LOOK_NAME: &str = "look.typ";
const LOOK: &str = include_str!("../../assets/papers/look.typ");

/// Where templates are from: built in, and for each paper the user's own in a folder, if one is there.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Templates {
    /// The folder of the user's own.
    pub folder: Option<PathBuf>,
}

impl Templates {
    /// Built in, except for those in this folder.
    pub fn in_folder(folder: impl Into<PathBuf>) -> Self {
        Self { folder: Some(folder.into()) }
    }

    /// Where the user's own template of a paper is or would be.
    pub fn path(&self, paper: Paper) -> Option<PathBuf> {
        Some(self.folder.as_ref()?.join(paper.file_stem()).with_extension("typ"))
    }

    /// The user's own template of a paper, if there is one.
    pub fn own(&self, paper: Paper) -> Option<PathBuf> {
        self.path(paper).filter(|path| path.is_file())
    }

    /// Lays the built-in template into the folder, to be changed there. One that is there stays.
    ///
    /// # Errors
    /// If the folder or file cannot be written.
    pub fn make_own(&self, paper: Paper) -> io::Result<Option<PathBuf>> {
        let Some(path) = self.path(paper) else { return Ok(None) };
        if !path.exists() {
            path.parent().map_or(Ok(()), fs::create_dir_all)?;
            fs::write(&path, paper.template())?;
        }
        Ok(Some(path))
    }

    /// Goes back to the built-in template. The user's own is kept beside, with the ending `.old`.
    ///
    /// # Errors
    /// If the file cannot be renamed.
    pub fn put_away(&self, paper: Paper) -> io::Result<()> {
        self.own(paper).map_or(Ok(()), |path| fs::rename(&path, path.with_extension("typ.old")))
    }

    fn read(path: &Path) -> Result<String, PaperError> {
        let told = |reason: String| PaperError { line: 0, reason };
        let size = fs::metadata(path).map_err(|error| told(error.to_string()))?.len();
        if size > LARGEST {
            return Err(told(format!("it has {} kB; at most {} are read", size >> 10, LARGEST >> 10)));
        }
        fs::read_to_string(path).map_err(|error| told(error.to_string()))
    }
}

/// The papers of a job, ready to be typeset.
pub struct Papers {
    files: Files,
    templates: Templates,
}

impl Papers {
    /// The papers for `job`, whose assessment is `assessment`, by the built-in templates.
    pub fn new(assessment: &Assessment) -> Self {
        Self::with(assessment, Templates::default())
    }

    /// The papers by these templates.
    pub fn with(assessment: &Assessment, templates: Templates) -> Self {
        let job = &*assessment.job;
        let mut files = Files::default();
        files.add("data.json", Bytes::from_string(data::data(assessment).to_string()));
        let own_look = templates.folder.as_ref().map(|folder| folder.join(LOOK_NAME));
        let look = own_look.filter(|path| path.is_file()).and_then(|path| Templates::read(&path).ok());
        files.add(LOOK_NAME, Bytes::from_string(look.unwrap_or_else(|| LOOK.to_owned())));
        for (name, svg) in figure::figures(assessment) {
            files.add(&name, Bytes::from_string(svg));
        }
        if let Some(logo) = &job.contractor.logo {
            files.add(logo.file_name(), Bytes::new(logo.bytes().to_vec()));
        }
        Self { files, templates }
    }

    /// Typesets a paper.
    ///
    /// # Errors
    /// If its template cannot be read or does not compile: with line and reason.
    pub fn typeset(&self, paper: Paper) -> Result<Typeset, PaperError> {
        match self.templates.own(paper) {
            Some(path) => Typeset::new(&Templates::read(&path)?, &self.files),
            None => Typeset::new(paper.template(), &self.files),
        }
    }

    /// Typesets a paper; by the built-in template where the user's own has a fault, which is told.
    ///
    /// # Errors
    /// If the built-in template does not compile either.
    pub fn typeset_whatever(&self, paper: Paper) -> Result<(Typeset, Option<PaperError>), PaperError> {
        match self.typeset(paper) {
            Ok(typeset) => Ok((typeset, None)),
            Err(fault) => Ok((Typeset::new(paper.template(), &self.files)?, Some(fault))),
        }
    }
}
