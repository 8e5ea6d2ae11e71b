//! Nothing typed is lost: unsaved work is kept beside the settings and offered again after a crash,
//! and the window knows when a file is open in another one or was changed by someone else.

use std::fs::{self, File};
use std::hash::{DefaultHasher, Hash as _, Hasher as _};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::{Duration, Instant, SystemTime};

use eframe::egui::Context;
use serde::{Deserialize, Serialize};

use super::document::Document;
use super::entry::{Typing, typing};
use super::worker::Worker;
use crate::job::{Job, file};

/// After the last edit, unsaved work is kept this soon.
const AFTER_EDIT: Duration = Duration::from_millis(1500);
/// While edits go on, it is kept this often.
const AT_MOST: Duration = Duration::from_secs(4);

/// Unsaved work as it is kept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct Kept {
    /// The job's own file, if it has one.
    path: Option<PathBuf>,
    /// The job, as its file would have it.
    job: String,
    /// What was being typed.
    #[serde(default)]
    typing: Option<Typing>,
}

/// Unsaved work of a window that did not close.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Lost {
    file: PathBuf,
    /// The job's own file.
    pub path: Option<PathBuf>,
    /// The job.
    pub job: Job,
    /// What was being typed in it.
    pub typing: Option<Typing>,
    /// When it was kept last.
    pub when: Option<SystemTime>,
}

impl Lost {
    /// Forgets it.
    pub fn forget(&self) {
        fs::remove_file(&self.file).ok();
        fs::remove_file(self.file.with_extension("lock")).ok();
    }
}

/// What a file was like when it was read or written, to see whether someone else changed it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Stamp {
    changed: Option<SystemTime>,
    size: u64,
}

fn stamp(path: &Path) -> Option<Stamp> {
    let data = fs::metadata(path).ok()?;
    Some(Stamp { changed: data.modified().ok(), size: data.len() })
}

/// What is kept: a job and what is being typed into it.
#[derive(Debug, Clone)]
struct Work {
    job: Arc<Job>,
    typing: Option<Typing>,
}

impl PartialEq for Work {
    /// The document shares its job as long as it does not change.
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.job, &other.job) && self.typing == other.typing
    }
}

/// Keeps unsaved work, and knows who else has the job's file open.
pub(super) struct Autosave {
    folder: PathBuf,
    /// This window's file; its lock lasts as long as the window lives.
    file: PathBuf,
    _alive: Option<File>,
    writing: Worker<(PathBuf, Option<Kept>), Option<String>>,
    /// The job and the text that were kept last, and when they or nothing was.
    kept: Option<Work>,
    last: Instant,
    /// The job that waits to be kept, and since when it has not changed.
    waiting: Option<(Work, Instant)>,
    /// The lock on the open file, if this window is the first to open it.
    open: Option<File>,
    stamp: Option<Stamp>,
}

impl Autosave {
    /// A keeper in `folder`, made if it is not there.
    pub fn new(folder: PathBuf, ctx: Context) -> Self {
        fs::create_dir_all(&folder).ok();
        let started = SystemTime::UNIX_EPOCH.elapsed().map_or(0, |since| since.as_millis());
        let file = folder.join(format!("{}-{started}.ron", std::process::id()));
        let alive = locked(&file.with_extension("lock"));
        Self {
            writing: Worker::start("autosave", ctx, write),
            kept: None,
            last: Instant::now(),
            waiting: None,
            open: None,
            stamp: None,
            _alive: alive,
            folder,
            file,
        }
    }

    /// Unsaved work of windows that did not close, newest first.
    pub fn lost(&self) -> Vec<Lost> {
        let Ok(entries) = fs::read_dir(&self.folder) else { return vec![] };
        let files = entries.filter_map(|entry| Some(entry.ok()?.path()));
        let mut lost: Vec<Lost> = files
            .filter(|file| file.extension().is_some_and(|e| e == "ron") && *file != self.file)
            // A window that lives has locked it.
            .filter(|file| locked(&file.with_extension("lock")).is_some())
            .filter_map(|file| {
                let kept: Kept = ron::from_str(&fs::read_to_string(&file).ok()?).ok()?;
                let job = file::read(&kept.job).ok()?.job;
                let when = fs::metadata(&file).ok().and_then(|data| data.modified().ok());
                Some(Lost { file, path: kept.path, job, typing: kept.typing, when })
            })
            .collect();
        lost.sort_by_key(|lost| std::cmp::Reverse(lost.when));
        lost
    }

    /// Looks at the job once a frame: keeps it when it is time. Returns what went wrong last.
    pub fn look(&mut self, ctx: &Context, document: &Document) -> Option<String> {
        let work = Work { job: Arc::clone(document.job()), typing: typing(ctx) };
        self.keep(ctx, work, document.path.as_deref(), document.is_unsaved())
    }

    fn keep(&mut self, ctx: &Context, work: Work, path: Option<&Path>, unsaved: bool) -> Option<String> {
        let fault = self.writing.latest().flatten();
        if !unsaved && work.typing.is_none() {
            if self.kept.take().is_some() {
                self.writing.ask((self.file.clone(), None));
            }
            self.waiting = None;
            return fault;
        }
        if self.kept.as_ref() == Some(&work) {
            return fault;
        }
        let now = Instant::now();
        let since = match &self.waiting {
            Some((waiting, since)) if *waiting == work => *since,
            _ => {
                self.waiting = Some((work.clone(), now));
                now
            }
        };
        if now - since >= AFTER_EDIT || now - self.last >= AT_MOST {
            if let Ok(text) = file::write(&work.job) {
                let kept = Kept { path: path.map(Path::to_owned), job: text, typing: work.typing.clone() };
                self.writing.ask((self.file.clone(), Some(kept)));
            }
            (self.kept, self.waiting, self.last) = (Some(work), None, now);
        } else {
            ctx.request_repaint_after(AFTER_EDIT);
        }
        fault
    }

    /// Notes that the job's file was just read or written; tells whether another window has it open.
    pub fn opened(&mut self, path: &Path) -> bool {
        self.stamp = stamp(path);
        let name = fs::canonicalize(path).unwrap_or_else(|_gone| path.to_owned());
        let mut hasher = DefaultHasher::new();
        name.hash(&mut hasher);
        self.open = None;
        self.open = locked(&self.folder.join(format!("open-{:016x}.lock", hasher.finish())));
        self.open.is_none()
    }

    /// Notes that no file is open.
    pub fn closed(&mut self) {
        (self.open, self.stamp) = (None, None);
    }

    /// Whether someone else changed the file since it was read or written here.
    pub fn changed_meanwhile(&self, path: &Path) -> bool {
        self.stamp.is_some_and(|known| stamp(path).is_some_and(|now| now != known))
    }

    /// Lets go of what was kept: the window closes as it should.
    pub fn done(&self) {
        fs::remove_file(&self.file).ok();
        fs::remove_file(self.file.with_extension("lock")).ok();
    }
}

/// Writes or removes what is kept; says what went wrong.
fn write((file, kept): (PathBuf, Option<Kept>)) -> Option<String> {
    let done = match kept {
        Some(kept) => match ron::to_string(&kept) {
            Ok(text) => file::write_whole(text.as_bytes(), &file, false),
            Err(error) => return Some(error.to_string()),
        },
        None => fs::remove_file(&file).or_else(|error| match error.kind() {
            std::io::ErrorKind::NotFound => Ok(()),
            _ => Err(error),
        }),
    };
    done.err().map(|error| error.to_string())
}

/// The file, locked; `None` if another process has locked it. Where locks cannot be had it counts as
/// free.
fn locked(path: &Path) -> Option<File> {
    let file = File::options().create(true).append(true).open(path).ok()?;
    match file.try_lock() {
        Err(fs::TryLockError::WouldBlock) => None,
        _ => Some(file),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn autosave(folder: &Path) -> Autosave {
        Autosave::new(folder.to_owned(), Context::default())
    }

    /// Waits until the thread has written.
    fn wait(until: impl Fn() -> bool) {
        let start = Instant::now();
        while !until() && start.elapsed() < Duration::from_secs(10) {
            std::thread::sleep(Duration::from_millis(10));
        }
        assert!(until());
    }

    #[test]
    fn unsaved_work_is_found_after_a_crash_and_gone_after_saving() {
        let folder = tempfile::tempdir().expect("a folder");
        let ctx = Context::default();
        let job = Arc::new(Job { title: "Lost and found".into(), ..Job::default() });
        let mut first = autosave(folder.path());
        first.last = Instant::now().checked_sub(AT_MOST).expect("a clock that runs");
        let typing = Some(Typing { field: "Title".to_owned(), text: "Half a ti".to_owned() });
        let work = Work { job: Arc::clone(&job), typing: typing.clone() };
        first.keep(&ctx, work, Some(Path::new("a.ron")), true);
        wait(|| first.file.exists());
        // While the first window lives, its work is not lost.
        let second = Autosave { file: folder.path().join("other.ron"), ..autosave(folder.path()) };
        assert!(second.lost().is_empty());
        let file = first.file.clone();
        drop(first);
        let lost = second.lost();
        assert_eq!(lost.len(), 1);
        assert_eq!((&lost[0].job, lost[0].path.as_deref()), (&*job, Some(Path::new("a.ron"))));
        assert_eq!(lost[0].typing, typing);
        lost[0].forget();
        assert!(!file.exists() && second.lost().is_empty());
    }

    #[test]
    fn saved_work_is_not_kept() {
        let folder = tempfile::tempdir().expect("a folder");
        let ctx = Context::default();
        let job = Arc::new(Job::default());
        let mut autosave = autosave(folder.path());
        autosave.last = Instant::now().checked_sub(AT_MOST).expect("a clock that runs");
        autosave.keep(&ctx, Work { job: Arc::clone(&job), typing: None }, None, true);
        wait(|| autosave.file.exists());
        autosave.keep(&ctx, Work { job, typing: None }, None, false);
        wait(|| !autosave.file.exists());
    }

    #[test]
    fn two_windows_on_a_file_and_a_change_by_someone_else_are_found_out() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("job.ron");
        fs::write(&path, "one").expect("written");
        let (mut first, mut second) = (autosave(folder.path()), autosave(folder.path()));
        assert!(!first.opened(&path) && second.opened(&path));
        assert!(!first.changed_meanwhile(&path));
        fs::write(&path, "another").expect("written");
        assert!(first.changed_meanwhile(&path));
        first.closed();
        assert!(!second.opened(&path));
    }
}
