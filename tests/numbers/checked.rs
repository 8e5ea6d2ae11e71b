//! Checks against published values, each with a line on the page `tests/NUMBERS.md`: it is made by the
//! tests that hold them.

#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_possible_wrap,
    clippy::cast_sign_loss,
    reason = "small numbers"
)]

use std::fmt::Write as _;
use std::path::Path;
use std::sync::{Mutex, PoisonError};

/// The values of a table held against ours; the one that is farthest off speaks for all.
#[derive(Debug, Clone)]
pub struct Checked {
    what: &'static str,
    source: &'static str,
    /// Values held.
    count: usize,
    /// Which of them is farthest off.
    at: String,
    published: f64,
    ours: f64,
    /// How far it may be off.
    within: f64,
    /// Whether that is a share of the value.
    share: bool,
}

impl Checked {
    /// Values by name, as published and as ours, which may be `within` of each other.
    pub fn new(
        what: &'static str,
        source: &'static str,
        within: f64,
        values: impl IntoIterator<Item = (String, f64, f64)>,
    ) -> Self {
        Self::farthest(what, source, within, false, values)
    }

    /// The same, `within` being a share of the published value.
    pub fn by_share(
        what: &'static str,
        source: &'static str,
        within: f64,
        values: impl IntoIterator<Item = (String, f64, f64)>,
    ) -> Self {
        Self::farthest(what, source, within, true, values)
    }

    fn farthest(
        what: &'static str,
        source: &'static str,
        within: f64,
        share: bool,
        values: impl IntoIterator<Item = (String, f64, f64)>,
    ) -> Self {
        let values: Vec<(String, f64, f64)> = values.into_iter().collect();
        let (count, off) = (values.len(), |of: &(String, f64, f64)| difference(of.1, of.2, share));
        let worst = values.into_iter().max_by(|a, b| off(a).total_cmp(&off(b)));
        let (at, published, ours) = worst.expect("there are values");
        Self { what, source, count, at, published, ours, within, share }
    }

    /// How far the farthest is off.
    pub fn difference(&self) -> f64 {
        difference(self.published, self.ours, self.share)
    }

    /// Holds that `count` values were checked and none is too far off.
    #[track_caller]
    pub fn hold(&self, count: usize) {
        assert_eq!(self.count, count, "{}: rows went missing", self.what);
        assert!(self.difference() <= self.within, "{self:?}");
    }

    fn line(&self) -> String {
        let share = if self.share { " of it" } else { "" };
        format!(
            "| {} | {} | {} | {} | {} | {} | {}{share} | {}{share} |\n",
            self.what,
            self.source,
            self.count,
            self.at,
            figures(self.published),
            figures(self.ours),
            small(self.difference()),
            small(self.within),
        )
    }
}

fn difference(published: f64, ours: f64, share: bool) -> f64 {
    let off = (ours - published).abs();
    if share { off / published.abs() } else { off }
}

/// Five figures.
fn figures(value: f64) -> String {
    if value == 0.0 {
        return "0".to_owned();
    }
    let digits = (4 - value.abs().log10().floor() as i32).clamp(0, 9);
    let text = format!("{value:.*}", digits as usize);
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

/// A small number in one or two figures; what is rounding differs from machine to machine.
fn small(value: f64) -> String {
    if value < 1e-9 { "under 1e-9".to_owned() } else { format!("{value:.1e}") }
}

/// Holds the section of the page that this test file makes; `UPDATE_NUMBERS=1` writes it.
pub fn page(section: &str, checks: &[Checked]) {
    // Sections are written and held side by side, each by a test of its own.
    static PAGE: Mutex<()> = Mutex::new(());
    let _one_at_a_time = PAGE.lock().unwrap_or_else(PoisonError::into_inner);
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/NUMBERS.md");
    let mut lines = String::from(
        "| what | source | values | farthest off at | published | ours | difference | allowed |\n|---|---|---|---|---|---|---|---|\n",
    );
    for check in checks {
        write!(lines, "{}", check.line()).expect("text can be written to");
    }
    let heading = format!("## {section}\n\n");
    let page = std::fs::read_to_string(&path).expect("the page is there");
    let start = page.find(&heading).map_or(page.len(), |at| at + heading.len());
    let end = page[start..].find("\n## ").map_or(page.len(), |at| start + at);
    if std::env::var_os("UPDATE_NUMBERS").is_some() {
        let front =
            if page.contains(&heading) { page[..start].to_owned() } else { format!("{page}\n{heading}") };
        std::fs::write(&path, format!("{front}{lines}{}", &page[end..])).expect("the page can be written");
    } else {
        assert_eq!(&page[start..end], lines, "write it anew: UPDATE_NUMBERS=1 cargo test");
    }
}
