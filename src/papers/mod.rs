//! What is handed over: the homeowner's letter and proposal, the price sheet, the crew's papers, the evidence.
//! What cannot be stood for is held back: see [`held_back`].
//!
//! A paper is a typst template in `assets/papers`, or one of the user's own, filled from `data`, with
//! drawings from [`figure`]. Nothing is computed here: every figure comes from the assessment, every
//! heading, label and sentence from the catalogs of [`crate::words`]. Papers for the owner and papers for
//! the crew may be in different languages: see [`PaperWords`]. The homeowner's page is HTML in place of
//! typst: see [`OwnerPage`].

mod data;
mod fault;
pub mod figure;
mod held_back;
mod maker;
mod page;
mod paper;
mod photos;
mod record;
mod templates;
mod typeset;

pub use data::compared_options;
pub(crate) use data::needed;
pub use fault::PaperError;
pub use figure::picture;
pub use held_back::{HeldBack, held_back};
pub use maker::Papers;
pub use page::{OwnerPage, PAGE_FILE};
pub use paper::{Folder, Paper, PaperWords, Reader};
pub use record::record;
pub use templates::Templates;
pub use typeset::{PageImage, Typeset};
