//! The photos of a job: files in a folder beside the job's own.

use std::fs::{self, File};
use std::io::{self, Read as _};
use std::path::{Path, PathBuf};

use image::DynamicImage;

use super::picture::upright;
use crate::surface::Photo;

/// A larger file is no photo of a joint.
const LARGEST: u64 = 30 << 20;

/// Why a photo can't be had. The sentences for people are made in `words`.
#[derive(Debug, thiserror::Error)]
pub enum PhotoFault {
    /// Its name would lead out of the folder of the photos.
    #[error("not the name of a photo")]
    Name,
    /// The system would not read it.
    #[error("unreadable: {0}")]
    Unreadable(#[from] io::Error),
    /// It is too large.
    #[error("{megabytes} MB are more than {limit}")]
    TooLarge {
        /// Its size.
        megabytes: u64,
        /// The largest that is taken.
        limit: u64,
    },
    /// It has too many pixels.
    #[error("too many pixels")]
    Pixels,
    /// It is no picture, or a damaged one.
    #[error("not a JPEG or PNG")]
    Kind,
}

/// The folder of a job's photos.
pub fn photo_folder(job: &Path) -> PathBuf {
    job.with_extension("photos")
}

/// Where a photo lies in the folder of a job's photos.
///
/// # Errors
/// For a name that would lead out of that folder.
pub fn photo_in(folder: &Path, file: &str) -> Result<PathBuf, PhotoFault> {
    if Photo::is_bare_name(file) { Ok(folder.join(file)) } else { Err(PhotoFault::Name) }
}

/// Reads a photo: upright, no more than `side` pixels wide or high, and nothing but its pixels.
///
/// # Errors
/// If it can't be read, is too large, or no picture.
pub fn read_photo(path: &Path, side: u32) -> Result<DynamicImage, PhotoFault> {
    let about = fs::metadata(path)?;
    // A pipe or a device is never done.
    if !about.is_file() {
        return Err(PhotoFault::Kind);
    }
    if about.len() > LARGEST {
        let megabytes = about.len().div_ceil(1 << 20);
        return Err(PhotoFault::TooLarge { megabytes, limit: LARGEST >> 20 });
    }
    let mut bytes = Vec::new();
    File::open(path)?.take(LARGEST).read_to_end(&mut bytes)?;
    upright(&bytes, side).map_err(|error| match error {
        image::ImageError::Limits(_) => PhotoFault::Pixels,
        _ => PhotoFault::Kind,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_name_leads_out_of_the_folder() {
        let folder = photo_folder(Path::new("jobs/tea room.ron"));
        assert_eq!(photo_in(&folder, "001.png").expect("a name"), Path::new("jobs/tea room.photos/001.png"));
        for name in ["../../secret.png", "/etc/secret.png", "..", "a\\b.png", "C:secret.png", "", "a\0.png"] {
            assert!(matches!(photo_in(&folder, name), Err(PhotoFault::Name)), "{name:?}");
        }
    }

    #[test]
    fn what_is_no_photo_is_told_apart() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("a.jpg");
        let missing = read_photo(&path, 100).expect_err("not there");
        assert!(
            matches!(&missing, PhotoFault::Unreadable(error) if error.kind() == io::ErrorKind::NotFound),
            "{missing}"
        );
        std::fs::write(&path, "no picture").expect("written");
        assert!(matches!(read_photo(&path, 100), Err(PhotoFault::Kind)));
        File::create(&path).and_then(|file| file.set_len(LARGEST + 1)).expect("written");
        assert!(matches!(read_photo(&path, 100), Err(PhotoFault::TooLarge { megabytes: 31, limit: 30 })));
        assert!(matches!(read_photo(folder.path(), 100), Err(PhotoFault::Kind | PhotoFault::Unreadable(_))));
    }
}
