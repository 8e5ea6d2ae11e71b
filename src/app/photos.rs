//! Photos pinned to places of the drawing. They lie in a folder beside the job's file and are read off
//! the window's thread.

use std::collections::HashMap;
use std::io;
use std::path::{Path, PathBuf};

use eframe::egui::{ColorImage, Context, TextureHandle, TextureOptions};

use super::App;
use super::command::Command;
use super::worker::Worker;
use crate::job::{PhotoFault, photo_folder, photo_in, read_photo};
use crate::surface::{Photo, Point};
use crate::words::{Say, Words, photo_fault, say, unwritable_file};

/// Pictures are shown no larger than this many pixels a side.
const SHOWN: u32 = 1400;

/// A photo as it was read.
pub(super) type Read = (PathBuf, Result<ColorImage, String>);

/// The photos of the open job that were looked at.
#[derive(Default)]
pub(super) struct Photos {
    reading: Option<Worker<PathBuf, Read>>,
    textures: HashMap<PathBuf, Result<TextureHandle, String>>,
    /// Photos to read, one after the other.
    wanted: Vec<PathBuf>,
    asked: Option<PathBuf>,
}

impl Photos {
    /// The photos of a window: read by a thread of their own.
    pub fn start(ctx: Context) -> Self {
        Self { reading: Some(Worker::start("photos", ctx, read)), ..Self::default() }
    }

    /// The picture, once it has been read; asks for it if it has not.
    pub fn picture(&self, path: &Path) -> Option<&Result<TextureHandle, String>> {
        self.textures.get(path)
    }

    /// Whether a picture was read or asked for.
    pub fn knows(&self, path: &PathBuf) -> bool {
        self.textures.contains_key(path) || self.wanted.contains(path)
    }

    /// Asks for a picture.
    pub fn want(&mut self, path: PathBuf) {
        if !self.knows(&path) {
            self.wanted.push(path);
        }
    }

    /// Takes what was read and goes on with what is wanted.
    pub fn look(&mut self, ctx: &Context) {
        let Some(reading) = &mut self.reading else { return };
        if let Some((path, picture)) = reading.latest() {
            let name = path.display().to_string();
            let texture = picture.map(|picture| ctx.load_texture(name, picture, TextureOptions::LINEAR));
            self.wanted.retain(|wanted| *wanted != path);
            self.textures.insert(path, texture);
            self.asked = None;
        }
        if self.asked.is_none()
            && let Some(next) = self.wanted.first()
        {
            self.asked = Some(next.clone());
            reading.ask(next.clone());
        }
    }
}

fn read(path: PathBuf) -> Read {
    let picture = read_photo(&path, SHOWN).map_err(|fault| fault.to_string());
    let picture = picture.map(|picture| {
        let pixels = picture.to_rgba8();
        let size = [pixels.width() as usize, pixels.height() as usize];
        ColorImage::from_rgba_unmultiplied(size, pixels.as_raw())
    });
    (path, picture)
}

/// Where a job's photo lies; `None` for a name that would lead out of its folder.
pub(super) fn path_of(job: &Path, file: &str) -> Option<PathBuf> {
    photo_in(&photo_folder(job), file).ok()
}

impl App {
    /// Copies a photo beside the job and pins it.
    pub(super) fn take_photo(&mut self, ctx: &Context, source: &Path, surface: usize, at: Point) {
        let Some(job) = self.session.document.path.clone() else {
            self.fault(self.words().text("photo-save-first").into_owned());
            return;
        };
        match copy(source, &photo_folder(&job)) {
            Ok(file) => {
                let change = move |job: &mut crate::job::Job| {
                    if let Some(surface) = job.surfaces.get_mut(surface) {
                        surface.photos.push(Photo { file, at, note: String::new() });
                    }
                };
                let edit = super::Edit { name: "undo-pin-photo".to_owned(), change: Box::new(change) };
                self.apply(ctx, Command::Edit(edit));
            }
            Err(error) => {
                // Another file goes to the same place.
                self.view.drafts.photo_at = Some(at);
                self.file_fault(error.say(&self.words()));
            }
        }
    }
}

/// Why a photo could not be copied.
#[derive(Debug)]
enum PhotoError {
    /// It can't be had itself.
    Fault(PathBuf, PhotoFault),
    /// The system would not write into the folder.
    Unwritable(PathBuf, io::Error),
    /// The folder has no free name left.
    TooMany(PathBuf),
}

impl Say for PhotoError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Fault(path, fault) => photo_fault(words, path, fault),
            Self::Unwritable(path, error) => unwritable_file(words, path, error),
            Self::TooMany(path) => say!(words, "file-photos-too-many", path = &path.display().to_string()),
        }
    }
}

/// Copies a photo into a folder under a free name, which is returned.
fn copy(source: &Path, folder: &Path) -> Result<String, PhotoError> {
    let unwritable = |error| PhotoError::Unwritable(folder.to_owned(), error);
    read_photo(source, SHOWN).map_err(|fault| PhotoError::Fault(source.to_owned(), fault))?;
    std::fs::create_dir_all(folder).map_err(unwritable)?;
    let extension = source.extension().map_or_else(|| "jpg".into(), |e| e.to_string_lossy().to_lowercase());
    let free = (1..10_000).map(|n| format!("{n:03}.{extension}")).find(|name| !folder.join(name).exists());
    let name = free.ok_or_else(|| PhotoError::TooMany(folder.to_owned()))?;
    std::fs::copy(source, folder.join(&name)).map_err(unwritable)?;
    Ok(name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_photo_is_copied_under_a_free_name_and_what_is_none_is_refused() {
        let folder = tempfile::tempdir().expect("a folder");
        let source = folder.path().join("wall.png");
        image::RgbaImage::from_pixel(4, 3, image::Rgba([9, 9, 9, 255])).save(&source).expect("written");
        let photos = photo_folder(&folder.path().join("job.ron"));
        assert_eq!(copy(&source, &photos).expect("copied"), "001.png");
        assert_eq!(copy(&source, &photos).expect("copied"), "002.png");
        std::fs::write(&source, "no picture").expect("written");
        assert!(
            copy(&source, &photos)
                .is_err_and(|error| matches!(error, PhotoError::Fault(_, PhotoFault::Kind)))
        );
        assert!(path_of(Path::new("a/job.ron"), "../../secret.png").is_none());
        assert_eq!(path_of(Path::new("a/job.ron"), "001.png"), Some(PathBuf::from("a/job.photos/001.png")));
    }
}
