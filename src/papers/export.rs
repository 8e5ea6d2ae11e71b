//! Everything of a job for other programs: tables, pictures, the drawing as DXF, the whole as JSON.

use typst::foundations::Bytes;

use crate::assess::{Assessment, Report, joints_csv, materials_csv, tasks_csv, year_csv};
use crate::surface::outlines::{Shape, write_dxf};

use super::figure;
use super::typeset::{Files, PageImage, PaperError, Typeset};

/// Why something cannot be exported.
#[derive(Debug, thiserror::Error)]
pub enum ExportError {
    /// A table.
    #[error("a table cannot be written: {0}")]
    Table(#[from] csv::Error),
    /// The JSON.
    #[error("the JSON cannot be written: {0}")]
    Json(#[from] serde_json::Error),
    /// A picture.
    #[error("a picture cannot be made: {0}")]
    Picture(#[from] PaperError),
    /// The picture's file.
    #[error("a picture cannot be written: {0}")]
    Png(#[from] image::ImageError),
    /// The drawing.
    #[error("the drawing cannot be written: {0}")]
    Drawing(String),
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
        ("drawing.dxf".to_owned(), drawing(assessment)?),
    ];
    for (name, svg) in figure::figures(assessment) {
        files.push((name.replace(".svg", ".png"), png(&name, &svg)?));
        files.push((name, svg.into_bytes()));
    }
    Ok(files)
}

/// A figure as a picture, 1600 pixels wide.
///
/// # Errors
/// If it cannot be drawn.
pub fn picture(name: &str, svg: &str) -> Result<PageImage, PaperError> {
    let page = format!("#set page(width: 400pt, height: auto, margin: 8pt)\n#image(\"{name}\", width: 100%)");
    let mut files = Files::default();
    files.add(name, Bytes::from_string(svg.to_owned()));
    let typeset = Typeset::new(&page, &files)?;
    let mut pages = typeset.images(4.0).into_iter();
    pages.next().ok_or_else(|| PaperError { line: 0, reason: "the picture is empty".to_owned() })
}

/// A figure as PNG.
fn png(name: &str, svg: &str) -> Result<Vec<u8>, ExportError> {
    let picture = picture(name, svg)?;
    let size = |pixels: usize| u32::try_from(pixels).unwrap_or(0);
    // The page is opaque, so premultiplied colours are plain ones.
    let pixels = image::RgbaImage::from_raw(size(picture.width), size(picture.height), picture.rgba);
    let mut bytes = std::io::Cursor::new(Vec::new());
    pixels.unwrap_or_default().write_to(&mut bytes, image::ImageFormat::Png)?;
    Ok(bytes.into_inner())
}

/// Boards, joints and outlines, a layer for each kind and surface; surfaces stand side by side.
fn drawing(assessment: &Assessment) -> Result<Vec<u8>, ExportError> {
    let job = &*assessment.job;
    let mut layers: Vec<(String, Vec<Shape>)> = Vec::new();
    let mut right = 0.0;
    for (surface, laid) in job.surfaces.iter().zip(&assessment.layouts) {
        let outline: Vec<[f64; 2]> =
            surface.outline.iter().map(|corner| [corner.0.to_m(), corner.1.to_m()]).collect();
        let low = outline.iter().map(|[x, _]| *x).fold(f64::INFINITY, f64::min);
        let high = outline.iter().map(|[x, _]| *x).fold(f64::NEG_INFINITY, f64::max);
        let beside = |[x, y]: [f64; 2]| [x - low + right, y];
        let ring = |points: Vec<[f64; 2]>| Shape::Ring(points.into_iter().map(beside).collect());
        let boards = laid.boards.iter().map(|board| {
            let corners: Vec<[f64; 2]> = board.face.exterior().coords().map(|c| [c.x, c.y]).collect();
            ring(corners[..corners.len().saturating_sub(1)].to_vec())
        });
        let joints = laid
            .joints
            .iter()
            .map(|joint| Shape::Line(beside([joint.from.x, joint.from.y]), beside([joint.to.x, joint.to.y])));
        layers.push((format!("{} boards", surface.name), boards.collect()));
        layers.push((format!("{} joints", surface.name), joints.collect()));
        layers.push((surface.name.clone(), vec![ring(outline)]));
        right += (high - low).max(0.0) + 1.0;
    }
    let layers: Vec<(&str, Vec<Shape>)> =
        layers.iter().map(|(name, shapes)| (name.as_str(), shapes.clone())).collect();
    write_dxf(&layers).map_err(|error| ExportError::Drawing(error.to_string()))
}
