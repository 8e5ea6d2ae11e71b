//! Running typst on a template with the job's data beside it.

use std::collections::HashMap;
use std::path::Path;
use std::sync::{LazyLock, Mutex, PoisonError};

use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration, Smart};
use typst::layout::{Frame, FrameItem};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World, WorldExt as _};
use typst_layout::PagedDocument;

use super::PaperError;

/// Why a template does not compile.
#[derive(Debug)]
pub(super) struct CompileError {
    /// The file at fault by its name on the desk; `None` for the template itself.
    file: Option<String>,
    /// Line of the file, from 1; `None` if the fault has no place.
    line: Option<usize>,
    /// What typst says.
    reason: String,
}

impl CompileError {
    /// Whether the fault is in the file of this name that lies beside the template.
    pub fn is_in(&self, name: &str) -> bool {
        self.file.as_deref() == Some(name)
    }

    /// The error of a template in this file.
    pub fn of(self, file: &Path) -> PaperError {
        PaperError::Template { file: file.to_owned(), line: self.line, reason: self.reason }
    }
}

/// A page as a picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PageImage {
    /// Pixels across.
    pub width: usize,
    /// Pixels down.
    pub height: usize,
    /// Color values, four a pixel, premultiplied.
    pub rgba: Vec<u8>,
}

/// A typeset paper.
pub struct Typeset {
    document: PagedDocument,
    fault: Option<PaperError>,
}

impl Typeset {
    /// Typesets `template` with these files beside it.
    ///
    /// # Errors
    /// If the template does not compile.
    pub(super) fn new(template: &str, files: &Files) -> Result<Self, CompileError> {
        let desk = Desk { main: parsed(file_id("main.typ"), template), files };
        let result = typst::compile::<PagedDocument>(&desk);
        // Caches of earlier papers are let go of after a few others.
        typst::comemo::evict(8);
        match result.output {
            Ok(document) => Ok(Self { document, fault: None }),
            Err(errors) => Err(desk.error(errors.first())),
        }
    }

    /// The same, made instead of one by the user's own template, which has this fault.
    pub(super) fn instead_of(self, fault: PaperError) -> Self {
        Self { fault: Some(fault), ..self }
    }

    /// What is wrong with the user's own template, if the built-in one had to be used for it.
    pub const fn fault(&self) -> Option<&PaperError> {
        self.fault.as_ref()
    }

    /// The same, handed over.
    pub fn into_fault(self) -> Option<PaperError> {
        self.fault
    }

    /// The paper as PDF: tagged, searchable, the same bytes for the same job.
    ///
    /// # Errors
    /// If typst cannot write it.
    pub fn pdf(&self) -> Result<Vec<u8>, PaperError> {
        let options = typst_pdf::PdfOptions {
            creator: Smart::Custom(Some("Gapwright".to_owned())),
            ..typst_pdf::PdfOptions::default()
        };
        typst_pdf::pdf(&self.document, &options).map_err(|errors| {
            PaperError::Pdf(errors.first().map_or_else(String::new, |error| error.message.to_string()))
        })
    }

    /// Number of pages.
    pub fn pages(&self) -> usize {
        self.document.pages().len()
    }

    /// All that is written on it, piece by piece in the order it is laid down, parted by blanks.
    pub fn text(&self) -> String {
        let mut words = String::new();
        for page in self.document.pages() {
            collect_text(&page.frame, &mut words);
        }
        words
    }

    /// The pages as pictures with `scale` pixels a point.
    pub fn images(&self, scale: f64) -> Vec<PageImage> {
        let options = typst_render::RenderOptions {
            pixel_per_pt: scale.into(),
            ..typst_render::RenderOptions::default()
        };
        let one = |page| {
            let pixels = typst_render::render(page, &options);
            PageImage {
                width: pixels.width() as usize,
                height: pixels.height() as usize,
                rgba: pixels.take(),
            }
        };
        self.document.pages().iter().map(one).collect()
    }
}

fn collect_text(frame: &Frame, words: &mut String) {
    for (_, item) in frame.items() {
        match item {
            FrameItem::Group(group) => collect_text(&group.frame, words),
            FrameItem::Text(text) => {
                words.push_str(&text.text);
                words.push(' ');
            }
            _ => {}
        }
    }
}

/// The program's own fonts, with letters for names in Hebrew and Arabic; papers look the same on every machine.
static FONTS: LazyLock<(LazyHash<FontBook>, Vec<Font>)> = LazyLock::new(|| {
    let files: [&'static [u8]; 5] = [
        include_bytes!("../../assets/fonts/Inter-Regular.otf"),
        include_bytes!("../../assets/fonts/Inter-SemiBold.otf"),
        include_bytes!("../../assets/fonts/Inter-Italic.otf"),
        include_bytes!("../../assets/fonts/NotoSansHebrew-Regular.ttf"),
        include_bytes!("../../assets/fonts/NotoNaskhArabic-Regular.ttf"),
    ];
    let fonts: Vec<Font> = files.into_iter().flat_map(|file| Font::iter(Bytes::new(file))).collect();
    (LazyHash::new(FontBook::from_fonts(&fonts)), fonts)
});

static LIBRARY: LazyLock<LazyHash<Library>> =
    LazyLock::new(|| LazyHash::new(<Library as LibraryExt>::default()));

/// A file's text with its syntax. The one that was parsed last under a name is kept: after an edit of the job
/// the templates are what they were.
fn parsed(id: FileId, text: &str) -> Source {
    static LAST: LazyLock<Mutex<HashMap<FileId, Source>>> = LazyLock::new(Mutex::default);
    // A thread that panicked while it held the lock left whole entries.
    let mut last = LAST.lock().unwrap_or_else(PoisonError::into_inner);
    match last.get(&id) {
        Some(source) if source.text() == text => source.clone(),
        _ => {
            let source = Source::new(id, text.to_owned());
            last.insert(id, source.clone());
            source
        }
    }
}

/// What lies beside a template: data and pictures, by their names.
#[derive(Debug, Clone, Default)]
pub(super) struct Files(HashMap<FileId, Bytes>);

impl Files {
    /// Adds a file. Names are our own and plain.
    pub fn add(&mut self, name: &str, bytes: Bytes) {
        self.0.insert(file_id(name), bytes);
    }
}

/// Everything a template can reach: itself and the files beside it, and nothing of the machine.
struct Desk<'a> {
    main: Source,
    files: &'a Files,
}

impl Desk<'_> {
    fn error(&self, error: Option<&SourceDiagnostic>) -> CompileError {
        let Some(error) = error else {
            return CompileError { file: None, line: None, reason: String::new() };
        };
        let source = error.span.id().and_then(|id| self.source(id).ok());
        let place = source.zip(self.range(error.span));
        let line = place.and_then(|(source, range)| source.lines().byte_to_line(range.start));
        let beside = error.span.id().filter(|id| *id != self.main.id());
        CompileError {
            file: beside.map(|id| id.vpath().get_without_slash().to_owned()),
            line: line.map(|line| line + 1),
            reason: error.message.to_string(),
        }
    }
}

/// The id of a file at the root of the desk. The names are our own and always valid.
fn file_id(name: &str) -> FileId {
    let path = VirtualPath::new(name).unwrap_or_else(|_bad| unreachable!("{name} is a plain name"));
    RootedPath::new(VirtualRoot::Project, path).intern()
}

impl World for Desk<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &FONTS.0
    }

    fn main(&self) -> FileId {
        self.main.id()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        if id == self.main.id() {
            return Ok(self.main.clone());
        }
        let bytes = self.file(id)?;
        let text = std::str::from_utf8(&bytes).map_err(|_binary| FileError::InvalidUtf8)?;
        Ok(parsed(id, text))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        self.files.0.get(&id).cloned().ok_or_else(|| not_found(id))
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.1.get(index).cloned()
    }

    fn today(&self, _offset: Option<Duration>) -> Option<Datetime> {
        // Papers carry the date of the visit, so that the same job gives the same bytes.
        None
    }
}

fn not_found(id: FileId) -> FileError {
    FileError::NotFound(id.vpath().get_without_slash().into())
}
