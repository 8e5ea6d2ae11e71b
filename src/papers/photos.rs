//! The job's photos as they are printed: pixels alone, upright and no larger than a sheet of paper shows. What the
//! camera wrote into its file beside them, such as where and when it was taken and with what, stays in the file.

use std::collections::HashMap;
use std::fs;
use std::io::Cursor;
use std::path::{Path, PathBuf};
use std::sync::{LazyLock, Mutex, PoisonError};
use std::time::SystemTime;

use image::codecs::jpeg::JpegEncoder;
use serde_json::{Value, json};
use typst::foundations::Bytes;

use super::typeset::Files;
use crate::job::{PhotoFault, photo_in, read_photo};
use crate::words::{Arg, Words, photo_not_printed, say};

/// The longest side of a printed photo, in pixels: twice what a printer shows in half a page's width.
const SIDE: u32 = 1600;
/// Of 100; lower ones blur what a joint looks like.
const QUALITY: u8 = 85;
/// All photos of a sheet take no more than this, so that it can be mailed.
const SHEET: usize = 24 << 20;
/// Photos that are kept, made ready, for the next time they are printed.
const KEPT: usize = 48 << 20;

/// The name under which a template finds what to print.
const LIST: &str = "photos.json";

/// A pinned photo, and what a template is told of it.
#[derive(Debug, Clone)]
pub(crate) struct PinnedPhoto {
    /// Its file.
    pub file: String,
    /// What the template is told.
    pub told: Value,
}

/// A photo made ready, or why it can't be.
type Printed = Result<Bytes, PhotoFault>;

/// Adds the photos to what lies beside a template, and the list of them: what is known of each, the name of its
/// picture (`figure`) or why there is none (`fault`); neither where nobody said in which folder they lie.
pub(super) fn add_photos(files: &mut Files, photos: &[PinnedPhoto], folder: Option<&Path>, words: &Words) {
    let mut taken = 0;
    let list: Vec<Value> = photos
        .iter()
        .enumerate()
        .map(|(at, photo)| {
            let name = format!("photo-{}.jpg", at + 1);
            let (figure, fault) = match folder.map(|folder| printed(folder, &photo.file)) {
                None => (None, None),
                Some(Err(fault)) => (None, Some(photo_not_printed(words, &photo.file, &fault))),
                Some(Ok(bytes)) if taken + bytes.len() > SHEET => {
                    (None, Some(say!(words, "paper-photo-fault-full", file = Arg::Name(&photo.file))))
                }
                Some(Ok(bytes)) => {
                    taken += bytes.len();
                    files.add(&name, bytes);
                    (Some(name), None)
                }
            };
            let mut told = photo.told.clone();
            told["figure"] = json!(figure);
            told["fault"] = json!(fault);
            told
        })
        .collect();
    files.add(LIST, Bytes::from_string(Value::from(list).to_string()));
}

/// A file as it was when it was read.
type Version = (PathBuf, u64, Option<SystemTime>);

/// Photos made ready. While someone edits the job its sheet is typeset again and again.
static READY: LazyLock<Mutex<HashMap<Version, Bytes>>> = LazyLock::new(Mutex::default);

/// A photo of a folder as it is printed.
fn printed(folder: &Path, file: &str) -> Printed {
    let path = photo_in(folder, file)?;
    let about = fs::metadata(&path)?;
    let version = (path, about.len(), about.modified().ok());
    if let Some(known) = ready().get(&version) {
        return Ok(known.clone());
    }
    let made = jpeg(&version.0)?;
    let mut ready = ready();
    if ready.values().map(|bytes| bytes.len()).sum::<usize>() + made.len() > KEPT {
        ready.clear();
    }
    ready.insert(version, made.clone());
    Ok(made)
}

fn ready() -> std::sync::MutexGuard<'static, HashMap<Version, Bytes>> {
    // A thread that panicked while it held the lock left whole entries.
    READY.lock().unwrap_or_else(PoisonError::into_inner)
}

/// The pixels of a photo, written anew.
fn jpeg(path: &Path) -> Printed {
    let pixels = read_photo(path, SIDE)?.into_rgb8();
    let mut made = Cursor::new(Vec::new());
    let written = JpegEncoder::new_with_quality(&mut made, QUALITY).encode_image(&pixels);
    written.map_err(|_unwritten| PhotoFault::Kind)?;
    Ok(Bytes::new(made.into_inner()))
}
