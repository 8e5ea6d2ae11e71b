//! Work off the window's thread: the latest input only.

use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Condvar, Mutex, PoisonError};

use eframe::egui::Context;

type Slot<I> = Arc<(Mutex<Option<I>>, Condvar)>;

/// Computes outputs from inputs on a named thread. An input that has not been started when the
/// next one comes is dropped, so the window never waits and never queues.
pub struct Worker<I, O> {
    way: Way<I, O>,
    results: Receiver<O>,
    pending: usize,
}

enum Way<I, O> {
    Thread(Slot<I>),
    /// At once, for tests.
    Inline(Box<dyn Fn(I) -> O>, Sender<O>),
}

impl<I: Send + 'static, O: Send + 'static> Worker<I, O> {
    /// A worker on a thread of this name, or one that computes at once, for tests.
    pub fn new(threads: bool, name: &str, ctx: &Context, work: impl Fn(I) -> O + Send + 'static) -> Self {
        if threads { Self::start(name, ctx.clone(), work) } else { Self::inline(work) }
    }

    /// A worker on a thread of this name. `ctx` is woken for every result.
    pub fn start(name: &str, ctx: Context, work: impl Fn(I) -> O + Send + 'static) -> Self {
        let slot: Slot<I> = Arc::default();
        let (sender, results) = channel();
        let thread_slot = Arc::clone(&slot);
        let run = move || {
            loop {
                let input = take(&thread_slot);
                if sender.send(work(input)).is_err() {
                    return;
                }
                ctx.request_repaint();
            }
        };
        let spawned = std::thread::Builder::new().name(name.to_owned()).spawn(run);
        if let Err(error) = spawned {
            tracing::error!("no thread for {name}: {error}");
        }
        Self { way: Way::Thread(slot), results, pending: 0 }
    }

    /// A worker that computes at once, so that tests need not wait.
    pub fn inline(work: impl Fn(I) -> O + 'static) -> Self {
        let (sender, results) = channel();
        Self { way: Way::Inline(Box::new(work), sender), results, pending: 0 }
    }

    /// Asks for the output of `input`.
    pub fn ask(&mut self, input: I) {
        match &self.way {
            Way::Thread(slot) => {
                let (lock, signal) = &**slot;
                let dropped = lock.lock().unwrap_or_else(PoisonError::into_inner).replace(input);
                self.pending += usize::from(dropped.is_none());
                signal.notify_one();
            }
            Way::Inline(work, sender) => {
                self.pending += usize::from(sender.send(work(input)).is_ok());
            }
        }
    }

    /// The newest output that has come since last asked.
    pub fn latest(&mut self) -> Option<O> {
        let mut newest = None;
        while let Ok(output) = self.results.try_recv() {
            self.pending = self.pending.saturating_sub(1);
            newest = Some(output);
        }
        newest
    }

    /// Whether an answer is still to come.
    pub fn is_busy(&self) -> bool {
        self.pending > 0
    }
}

/// Waits for an input and takes it.
fn take<I>(slot: &Slot<I>) -> I {
    let (lock, signal) = &**slot;
    let mut guard = lock.lock().unwrap_or_else(PoisonError::into_inner);
    loop {
        if let Some(input) = guard.take() {
            return input;
        }
        guard = signal.wait(guard).unwrap_or_else(PoisonError::into_inner);
    }
}
