//! Running typst on a template with the job's data beside it.

use std::collections::HashMap;
use std::sync::LazyLock;

use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration, Smart};
use typst::layout::{Frame, FrameItem};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World, WorldExt as _};
use typst_layout::PagedDocument;

/// Why a paper could not be made.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{place}{reason}. Mend it, or go back to the built-in template", place = self.place())]
pub struct PaperError {
    /// Line of the template, from 1; 0 if the fault is not in it.
    pub line: usize,
    /// What typst said.
    pub reason: String,
}

impl PaperError {
    fn place(&self) -> String {
        if self.line == 0 {
            "the template: ".to_owned()
        } else {
            format!("line {} of the template: ", self.line)
        }
    }
}

/// A page as a picture.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PageImage {
    /// Pixels across.
    pub width: usize,
    /// Pixels down.
    pub height: usize,
    /// Colour values, four a pixel, premultiplied.
    pub rgba: Vec<u8>,
}

/// A typeset paper.
pub struct Typeset {
    document: PagedDocument,
}

impl Typeset {
    /// Typesets `template` with these files beside it.
    pub(super) fn new(template: &str, files: &Files) -> Result<Self, PaperError> {
        let desk = Desk { main: Source::new(file_id("main.typ"), template.to_owned()), files };
        let result = typst::compile::<PagedDocument>(&desk);
        // Caches of earlier papers are let go of after a few others.
        typst::comemo::evict(8);
        match result.output {
            Ok(document) => Ok(Self { document }),
            Err(errors) => Err(desk.error(errors.first())),
        }
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
        typst_pdf::pdf(&self.document, &options).map_err(|errors| PaperError {
            line: 0,
            reason: errors.first().map_or_else(String::new, |error| error.message.to_string()),
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
    fn error(&self, error: Option<&SourceDiagnostic>) -> PaperError {
        let Some(error) = error else { return PaperError { line: 0, reason: String::new() } };
        let start = self.range(error.span).map_or(0, |range| range.start);
        let line = self.main.lines().byte_to_line(start).map_or(0, |line| line + 1);
        PaperError { line, reason: error.message.to_string() }
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
        Ok(Source::new(id, text.to_owned()))
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
