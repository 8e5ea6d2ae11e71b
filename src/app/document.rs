//! The open job with its history and file.

use std::path::PathBuf;
use std::sync::Arc;

use crate::job::{Job, Problem};
use crate::measure::Units;
use crate::repair::MethodId;

/// Steps that can be taken back.
const MOST_STEPS: usize = 500;

/// A named step and the job before or after it.
#[derive(Debug, Clone)]
struct Step {
    name: String,
    job: Arc<Job>,
}

/// The open job.
#[derive(Debug, Clone)]
pub struct Document {
    job: Arc<Job>,
    undo: Vec<Step>,
    redo: Vec<Step>,
    saved: Arc<Job>,
    /// Its file, if it has one that may be overwritten.
    pub path: Option<PathBuf>,
    /// What could not be read of its file.
    pub unread: Vec<Problem>,
}

impl Document {
    /// A document that holds `job`, as saved.
    pub fn new(job: Job, path: Option<PathBuf>, unread: Vec<Problem>) -> Self {
        let job = Arc::new(job);
        // A file that could be read only in part must not be overwritten by that part.
        let path = path.filter(|_| unread.is_empty());
        Self { saved: Arc::clone(&job), job, undo: vec![], redo: vec![], path, unread }
    }

    /// A document that holds unsaved work; `saved` is what stands in its file.
    pub fn recovered(job: Job, path: Option<PathBuf>, saved: Job) -> Self {
        let mut document = Self::new(saved, path, vec![]);
        document.edit("undo-recover".to_owned(), move |now| *now = job);
        document
    }

    /// The job.
    pub const fn job(&self) -> &Arc<Job> {
        &self.job
    }

    /// Applies a named change as one step. One that changes nothing is no step. Returns whether it
    /// changed anything.
    pub fn edit(&mut self, name: String, change: impl FnOnce(&mut Job)) -> bool {
        let mut job = Job::clone(&self.job);
        change(&mut job);
        if job == *self.job {
            return false;
        }
        let before = std::mem::replace(&mut self.job, Arc::new(job));
        self.undo.push(Step { name, job: before });
        if self.undo.len() > MOST_STEPS {
            self.undo.remove(0);
        }
        self.redo.clear();
        true
    }

    /// Shows the job in other units. That changes nothing of it: it is no step, and nothing to save.
    pub fn show_in(&mut self, units: Units) {
        let alike = Arc::ptr_eq(&self.job, &self.saved);
        in_units(&mut self.job, units);
        if alike {
            self.saved = Arc::clone(&self.job);
        } else {
            in_units(&mut self.saved, units);
        }
    }

    /// Plans the option that is recommended, where nobody chose one. That is no step: nobody did anything.
    pub fn follow(&mut self, method: MethodId) {
        Arc::make_mut(&mut self.job).plan.chosen = method;
    }

    /// Takes the last step back.
    pub fn undo(&mut self) {
        if let Some(mut step) = self.undo.pop() {
            in_units(&mut step.job, self.job.units);
            let after = std::mem::replace(&mut self.job, step.job);
            self.redo.push(Step { name: step.name, job: after });
        }
    }

    /// Takes the last undone step again.
    pub fn redo(&mut self) {
        if let Some(mut step) = self.redo.pop() {
            in_units(&mut step.job, self.job.units);
            let before = std::mem::replace(&mut self.job, step.job);
            self.undo.push(Step { name: step.name, job: before });
        }
    }

    /// Name of the step that undo would take back.
    pub fn undo_name(&self) -> Option<&str> {
        self.undo.last().map(|step| step.name.as_str())
    }

    /// Name of the step that redo would take again.
    pub fn redo_name(&self) -> Option<&str> {
        self.redo.last().map(|step| step.name.as_str())
    }

    /// Whether there is anything to lose.
    pub fn is_unsaved(&self) -> bool {
        !Arc::ptr_eq(&self.job, &self.saved) && self.job != self.saved
    }

    /// Notes that `job` now stands in `path`.
    pub fn mark_saved(&mut self, job: Arc<Job>, path: PathBuf) {
        self.saved = job;
        in_units(&mut self.saved, self.job.units);
        self.path = Some(path);
        self.unread.clear();
    }
}

/// The same job in other units.
fn in_units(job: &mut Arc<Job>, units: Units) {
    if job.units != units {
        Arc::make_mut(job).units = units;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::FileFault;

    #[test]
    fn steps_are_named_undone_and_redone() {
        let mut document = Document::new(Job::default(), None, vec![]);
        assert!(document.edit("Title".into(), |job| job.title = "a".into()));
        assert!(!document.edit("Title".into(), |job| job.title = "a".into()));
        assert!(document.edit("Owner".into(), |job| job.owner = "b".into()));
        assert!(document.is_unsaved());
        assert_eq!(document.undo_name(), Some("Owner"));
        document.undo();
        assert_eq!((document.job().owner.as_str(), document.redo_name()), ("", Some("Owner")));
        document.undo();
        assert!(!document.is_unsaved());
        document.redo();
        document.redo();
        assert_eq!((document.job().title.as_str(), document.job().owner.as_str()), ("a", "b"));
    }

    #[test]
    fn other_units_are_no_step_and_nothing_to_save() {
        let mut document = Document::new(Job::default(), None, vec![]);
        document.show_in(Units::Millimeters);
        assert!(!document.is_unsaved() && document.undo_name().is_none());
        document.edit("Title".into(), |job| job.title = "a".into());
        document.show_in(Units::Inches);
        document.undo();
        assert_eq!(document.job().units, Units::Inches, "the units stay what was asked for");
        assert!(!document.is_unsaved());
        document.redo();
        let (written, path) = (Arc::clone(document.job()), PathBuf::from("x.ron"));
        document.show_in(Units::Millimeters);
        document.mark_saved(written, path);
        assert!(!document.is_unsaved());
    }

    #[test]
    fn a_partly_read_file_is_not_saved_over() {
        let problem =
            Problem::new(crate::job::Place::WholeFile, FileFault::UnknownEntry { name: "x".to_owned() });
        let document = Document::new(Job::default(), Some("x.ron".into()), vec![problem]);
        assert_eq!(document.path, None);
    }
}
