//! Files that are not read at all: refused in words that name them, and left as they are.

use std::fs;
use std::time::{Duration, Instant};

use gapwright::job::file::LoadError;
use gapwright::job::{VERSION, file};
use tempfile::TempDir;

use super::{TEA_ROOM, file_with, said};

/// Why loading was refused, in words that name the file and leave it as it is.
fn refused(bytes: &[u8]) -> (LoadError, String) {
    let (_folder, path) = file_with(bytes);
    let error = file::load(&path).unwrap_err();
    let words = said(&error);
    assert!(words.contains(&path.display().to_string()), "{words}");
    assert_eq!(fs::read(&path).unwrap(), bytes, "the file was touched");
    (error, words)
}

#[test]
fn a_newer_version_is_refused_with_both_versions() {
    let newer = VERSION + 1;
    let whole = TEA_ROOM.replacen("version: 1,", &format!("version: {newer},"), 1);
    let half = whole[..whole.len() / 2].to_owned();
    let foreign = format!("Job(version: {newer}, seasons: {{1: Wet}}, surfaces: Torus(3))");
    for text in [whole, half, foreign] {
        let (error, words) = refused(text.as_bytes());
        assert!(matches!(error, LoadError::Newer { found, .. } if found == newer), "{words}");
        assert!(words.contains(&format!("file version {newer}")), "{words}");
        assert!(words.contains(&format!("up to version {VERSION}")), "{words}");
    }
    assert_eq!(file::read("Job(version: 4294967295)"), Err(u32::MAX));
}

#[test]
fn a_price_book_is_no_job_and_says_where_it_belongs() {
    let (error, words) = refused(include_bytes!("../files/shelf.ron"));
    assert!(matches!(error, LoadError::PriceBook { .. }) && words.contains("Import"), "{words}");
}

#[test]
fn what_is_too_large_or_no_text_is_refused() {
    let (error, words) = refused(&[0xff, 0xfe, 0x00, 0x80, 0x1b]);
    assert!(matches!(error, LoadError::NotText { .. }), "{words}");
    let (_folder, path) = file_with(b"Job()");
    fs::OpenOptions::new().write(true).open(&path).unwrap().set_len(40_000_000).unwrap();
    let start = Instant::now();
    let error = file::load(&path).unwrap_err();
    assert!(matches!(error, LoadError::TooLarge { megabytes: 40, .. }), "{error}");
    assert!(said(&error).contains("40 MB"), "{error}");
    assert!(start.elapsed() < Duration::from_secs(1), "it was read first");
    assert_eq!(fs::metadata(&path).unwrap().len(), 40_000_000);
}

#[test]
fn what_is_not_there_or_a_folder_is_refused() {
    let folder = TempDir::new().unwrap();
    for path in [folder.path().join("none.ron"), folder.path().to_owned()] {
        let error = file::load(&path).unwrap_err();
        assert!(matches!(error, LoadError::Unreadable { .. }), "{error}");
        assert!(said(&error).contains(&path.display().to_string()), "{error}");
    }
}
