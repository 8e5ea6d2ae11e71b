//! A figure as a picture of pixels.

use std::path::Path;

use typst::foundations::Bytes;

use crate::papers::PaperError;
use crate::papers::typeset::{Files, PageImage, Typeset};

/// A figure as a picture, 1600 pixels wide.
///
/// # Errors
/// If it cannot be drawn.
pub fn picture(name: &str, svg: &str) -> Result<PageImage, PaperError> {
    let page = format!("#set page(width: 400pt, height: auto, margin: 8pt)\n#image(\"{name}\", width: 100%)");
    let mut files = Files::default();
    files.add(name, Bytes::from_string(svg.to_owned()));
    let typeset = Typeset::new(&page, &files).map_err(|error| error.of(Path::new(name)))?;
    let mut pages = typeset.images(4.0).into_iter();
    pages.next().ok_or_else(|| PaperError::NoPage(name.into()))
}
