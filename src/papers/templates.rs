//! Templates: built in, or the user's own in a folder.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use super::page::{PAGE_FILE, TEMPLATE};
use super::{Paper, PaperError};

/// A template that is larger than this is refused, bytes.
const LARGEST: u64 = 1 << 20;

/// What the built-in templates share.
pub(super) const LOOK_NAME: &str = "look.typ";
pub(super) const LOOK: &str = include_str!("../../assets/papers/look.typ");

/// Parts of built-in templates that do not come from a look: an old look of the user's own goes with new templates.
pub(super) const PARTS_NAME: &str = "parts.typ";
pub(super) const PARTS: &str = include_str!("../../assets/papers/parts.typ");

/// Where templates are from: built in, and for each paper the user's own in a folder, if one is there.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Templates {
    folder: Option<PathBuf>,
}

/// What is used instead of the built-in template or look: files of the user's own with their texts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct OwnTemplate {
    /// The template.
    pub template: Option<(PathBuf, String)>,
    /// The look, which all templates share.
    pub look: Option<(PathBuf, String)>,
}

impl Templates {
    /// Built in, except for those in this folder, which need not be there yet.
    pub fn in_folder(folder: impl Into<PathBuf>) -> Self {
        Self { folder: Some(folder.into()) }
    }

    /// Built in, except for those in this folder that a person named.
    ///
    /// # Errors
    /// If there is no such folder.
    pub fn in_existing_folder(folder: impl Into<PathBuf>) -> Result<Self, PaperError> {
        let folder = folder.into();
        if folder.is_dir() { Ok(Self::in_folder(folder)) } else { Err(PaperError::NoFolder(folder)) }
    }

    /// Where the user's own template of a paper is or would be.
    pub fn path(&self, paper: Paper) -> Option<PathBuf> {
        Some(self.folder.as_ref()?.join(paper.file_stem()).with_extension("typ"))
    }

    /// The user's own template of a paper, if there is one.
    pub fn own(&self, paper: Paper) -> Option<PathBuf> {
        self.path(paper).filter(|path| path.is_file())
    }

    /// Where the user's own look is, if there is one.
    fn own_look(&self) -> Option<PathBuf> {
        Some(self.folder.as_ref()?.join(LOOK_NAME)).filter(|path| path.is_file())
    }

    /// Reads what is the user's own of a paper; `None` if nothing is.
    ///
    /// # Errors
    /// If a file is too large, or no text.
    pub(super) fn read_own(&self, paper: Paper) -> Result<Option<OwnTemplate>, PaperError> {
        let template = self.own(paper).map(read).transpose()?;
        let look = self.own_look().map(read).transpose()?;
        Ok((template.is_some() || look.is_some()).then_some(OwnTemplate { template, look }))
    }

    /// Reads the user's own template of the homeowner's page, with where it is; `None` if there is none.
    ///
    /// # Errors
    /// If it is too large, or no text.
    pub(super) fn read_own_page(&self) -> Result<Option<(PathBuf, String)>, PaperError> {
        let path = self.folder.as_ref().map(|folder| folder.join(PAGE_FILE)).filter(|path| path.is_file());
        path.map(read).transpose()
    }

    /// Writes the built-in template into the folder, to be changed there. One that is there stays.
    /// `None` if there is no folder for templates.
    ///
    /// # Errors
    /// If the folder or file cannot be written.
    pub fn make_own(&self, paper: Paper) -> Result<Option<PathBuf>, PaperError> {
        self.path(paper).map(|path| write_new(path, paper.template())).transpose()
    }

    /// Writes all built-in templates, that of the homeowner's page among them, and the look they share, into a folder, to be changed there. Those
    /// that are there stay.
    ///
    /// # Errors
    /// If the folder or a file cannot be written.
    pub fn write_all(folder: &Path) -> Result<Vec<PathBuf>, PaperError> {
        let papers = Paper::ALL.map(|paper| (format!("{}.typ", paper.file_stem()), paper.template()));
        let others = [(LOOK_NAME.to_owned(), LOOK), (PAGE_FILE.to_owned(), TEMPLATE)];
        let all = papers.into_iter().chain(others);
        all.map(|(name, text)| write_new(folder.join(name), text)).collect()
    }

    /// Goes back to the built-in template. The user's own is kept beside, with the ending `.old`.
    ///
    /// # Errors
    /// If the file cannot be renamed.
    pub fn put_away(&self, paper: Paper) -> Result<(), PaperError> {
        let Some(path) = self.own(paper) else { return Ok(()) };
        fs::rename(&path, path.with_extension("typ.old")).map_err(|error| unwritable(path, error))
    }
}

/// Writes a file unless it is there, with the folders above it.
fn write_new(path: PathBuf, text: &str) -> Result<PathBuf, PaperError> {
    if !path.exists() {
        let made = path.parent().map_or(Ok(()), fs::create_dir_all);
        let written = made.and_then(|()| fs::write(&path, text));
        written.map_err(|error| unwritable(path.clone(), error))?;
    }
    Ok(path)
}

/// The error of a file that cannot be written.
fn unwritable(path: PathBuf, error: io::Error) -> PaperError {
    PaperError::Unwritable { path, error }
}

/// Reads a template's file; gives it back with its text.
fn read(path: PathBuf) -> Result<(PathBuf, String), PaperError> {
    let unreadable = |error: io::Error| PaperError::TemplateUnreadable { file: path.clone(), error };
    let size = fs::metadata(&path).map_err(unreadable)?.len();
    if size > LARGEST {
        return Err(PaperError::TemplateTooLarge { file: path, size: size >> 10, most: LARGEST >> 10 });
    }
    let text = fs::read_to_string(&path).map_err(unreadable)?;
    Ok((path, text))
}
