//! A job for other programs: the assessment as JSON, tables as CSV, pictures, the drawing as DXF, and the
//! one writer of files to a folder, which command line and window share; and the schema of job files.
//!
//! Keys of the JSON and columns of the tables are stable. What stands there in words is US English,
//! whatever the language of the window or the papers.

mod calendar;
mod drawing;
mod folder;
mod job_schema;
mod papers;
mod report;
mod tables;

pub use calendar::{job_calendar, next_reading_calendar};
pub use folder::{OutFolder, WriteError};
pub use job_schema::job_schema;
pub use papers::{DraftPapers, Handed, PapersError, PapersWritten, WrittenPaper, write_papers, write_record};
pub use report::{NextInstallReport, Report, report_schema};
pub use tables::{joints_csv, materials_csv, plain_text, tasks_csv, year_csv};

use crate::assess::Assessment;
use crate::papers::{PaperError, figure, picture};
use crate::words::{Say, Words, say};

/// Why something cannot be exported.
#[derive(Debug, thiserror::Error)]
pub enum ExportError {
    /// A table.
    #[error("a table can't be made: {0}")]
    Table(#[from] csv::Error),
    /// The JSON.
    #[error("the JSON can't be made: {0}")]
    Json(#[from] serde_json::Error),
    /// A picture.
    #[error("a picture can't be made: {0}")]
    Picture(#[from] PaperError),
    /// The picture's file.
    #[error("a picture can't be made: {0}")]
    Png(#[from] image::ImageError),
    /// The drawing.
    #[error("the drawing can't be made: {0}")]
    Drawing(String),
}

impl Say for ExportError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Table(error) => say!(words, "export-table-failed", reason = &error.to_string()),
            Self::Json(error) => say!(words, "export-json-failed", reason = &error.to_string()),
            Self::Picture(error) => say!(words, "export-picture-failed", reason = &error.to_string()),
            Self::Png(error) => say!(words, "export-picture-failed", reason = &error.to_string()),
            Self::Drawing(error) => say!(words, "export-drawing-failed", reason = error),
        }
    }
}

/// The files with their names: JSON, tables, each surface and the year as SVG and PNG, the boards and
/// joints of all surfaces as DXF.
///
/// # Errors
/// If one of them cannot be made.
pub fn export(assessment: &Assessment) -> Result<Vec<(String, Vec<u8>)>, ExportError> {
    let json = serde_json::to_string_pretty(&Report::new(assessment, &[]))? + "\n";
    let mut files = vec![
        ("assessment.json".to_owned(), json.into_bytes()),
        ("joints.csv".to_owned(), joints_csv(assessment)?.into_bytes()),
        ("year.csv".to_owned(), year_csv(assessment)?.into_bytes()),
        ("tasks.csv".to_owned(), tasks_csv(assessment)?.into_bytes()),
        ("materials.csv".to_owned(), materials_csv(assessment)?.into_bytes()),
        ("drawing.dxf".to_owned(), drawing::drawing(assessment)?),
    ];
    // Labels in pictures for other programs are US English, too.
    for (name, svg) in figure::figures(assessment, &Words::of_job(&assessment.job)) {
        files.push((name.replace(".svg", ".png"), png(&name, &svg)?));
        files.push((name, svg.into_bytes()));
    }
    Ok(files)
}

/// A figure as PNG.
fn png(name: &str, svg: &str) -> Result<Vec<u8>, ExportError> {
    let picture = picture(name, svg)?;
    let size = |pixels: usize| u32::try_from(pixels).unwrap_or(0);
    // The page is opaque, so premultiplied colors are plain ones.
    let pixels = image::RgbaImage::from_raw(size(picture.width), size(picture.height), picture.rgba);
    let mut bytes = std::io::Cursor::new(Vec::new());
    pixels.unwrap_or_default().write_to(&mut bytes, image::ImageFormat::Png)?;
    Ok(bytes.into_inner())
}
