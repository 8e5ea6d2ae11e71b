//! The open job and what is known of it: the document, and the assessment of its newest state.

use std::sync::Arc;
use std::time::Instant;

use eframe::egui::Context;

use super::document::Document;
use super::worker::Worker;
use crate::assess::{Assessment, assess};
use crate::bead::BeadDesign;
use crate::job::{Catalog, Job};
use crate::measure::Length;
use crate::words::Words;

/// A state of the job and its assessment.
type Answered = (Arc<Job>, Arc<Assessment>);

/// So many states are kept with their assessments.
const KEPT: usize = 4;

/// The open job with the last assessment of it.
pub(super) struct Session {
    /// The job, its history and its file.
    pub document: Document,
    /// The last assessment, with the job it was made from: while a newer one is on its way, that job is
    /// an older state of the document's.
    pub assessed: Arc<Assessment>,
    /// Whether the first answer has come; before it nothing is drawn that would only jump.
    pub ready: bool,
    /// Counts the jobs opened, so that lists scroll from their top in each.
    pub opened: u64,
    assessing: Worker<Arc<Job>, Answered>,
    /// The last states that were answered, the newest last: what undo and redo come back to is there at once.
    answered: Vec<Answered>,
    /// Solves beads that no table holds.
    solving: Worker<Vec<(BeadDesign, Length)>, ()>,
}

impl Session {
    /// A session on `document`, assessed on a thread of its own, or at once for tests.
    pub fn new(document: Document, threads: bool, ctx: &Context) -> Self {
        Self {
            document,
            // The first answer is worked out while the window opens.
            assessed: assess_job(Arc::default()),
            ready: false,
            opened: 0,
            assessing: Worker::new(threads, "assess", ctx, |job: Arc<Job>| {
                (Arc::clone(&job), assess_job(job))
            }),
            answered: vec![],
            solving: Worker::new(threads, "beads", ctx, |beads: Vec<(BeadDesign, Length)>| {
                beads.iter().for_each(|(bead, widest)| bead.solve(*widest));
            }),
        }
    }

    /// The job as it is now.
    pub const fn job(&self) -> &Arc<Job> {
        self.document.job()
    }

    /// Has the job assessed as it is now, unless that was done a moment ago.
    pub fn reassess(&mut self) {
        let now = self.document.job();
        match self.answered.iter().find(|(job, _)| Arc::ptr_eq(job, now)) {
            Some((_, assessed)) => self.assessed = Arc::clone(assessed),
            None => self.assessing.ask(Arc::clone(now)),
        }
    }

    /// Takes an assessment that has come. Beads that it lacks are solved meanwhile, and then it is made anew.
    pub fn take_assessment(&mut self) {
        if let Some((job, assessed)) = self.assessing.latest() {
            if !assessed.unsolved.is_empty() {
                self.solving.ask(assessed.unsolved.clone());
            }
            self.ready = true;
            let job = self.follow(job, &assessed);
            // One that was under way when a known state came back is too late.
            let now = self.document.job();
            if Arc::ptr_eq(&job, now) || !self.answered.iter().any(|(of, _)| Arc::ptr_eq(of, now)) {
                self.assessed = Arc::clone(&assessed);
            }
            if assessed.unsolved.is_empty() {
                self.answered.retain(|(of, _)| !Arc::ptr_eq(of, &job));
                self.answered.push((job, assessed));
                let over = self.answered.len().saturating_sub(KEPT);
                self.answered.drain(..over);
            }
        }
        if self.solving.latest().is_some() {
            self.reassess();
        }
    }

    /// Has the document plan what an assessment of its newest state did where nobody chose an option; the state
    /// that was assessed.
    fn follow(&mut self, job: Arc<Job>, assessed: &Assessment) -> Arc<Job> {
        let planned = assessed.job.plan.chosen;
        if job.plan.chosen == planned || !Arc::ptr_eq(&job, self.document.job()) {
            return job;
        }
        self.document.follow(planned);
        Arc::clone(self.document.job())
    }

    /// Whether an assessment is still to come.
    pub fn is_busy(&self) -> bool {
        self.assessing.is_busy()
    }
}

/// Reads the tables and the words that the first frame needs.
pub(super) fn warm_up() {
    let empty = assess_job(Arc::default());
    Words::of_job(&empty.job).text("title-new-job");
}

/// Assesses a job; the worker's work.
pub(super) fn assess_job(job: Arc<Job>) -> Arc<Assessment> {
    let start = Instant::now();
    let assessment = Arc::new(assess(job, Catalog::built_in()));
    tracing::debug!("assessed in {:?}", start.elapsed());
    assessment
}
