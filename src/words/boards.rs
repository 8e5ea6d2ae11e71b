//! What surfaces and boards are: kinds, patterns, edges, nailing; and names of what is new on a drawing.

use super::{Arg, Say, Words, say};
use crate::surface::pattern::Pattern;
use crate::surface::{Behind, DividerKind, Fixing, Profile, SurfaceKind};

impl Say for SurfaceKind {
    /// As a label, and as the name of a new surface.
    fn say(&self, words: &Words) -> String {
        say!(words, "boards-surface-kind", kind = Arg::Id(self.key()))
    }
}

impl Say for DividerKind {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "boards-divider-kind", kind = Arg::Id(self.key()))
    }
}

impl Say for Fixing {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "boards-nailing", place = Arg::Id(self.key()))
    }
}

impl Say for Behind {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "boards-backing", backing = Arg::Id(self.key()))
    }
}

impl Say for Profile {
    /// As a label, without its size.
    fn say(&self, words: &Words) -> String {
        say!(words, "boards-profile", profile = Arg::Id(self.key()))
    }
}

impl Say for Pattern {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "boards-pattern", pattern = Arg::Id(self.key()))
    }
}

/// The name of a new divider; `number` counts those of its surface from 0.
pub fn divider_name(words: &Words, number: usize) -> String {
    let letter = char::from(b'a' + u8::try_from(number % 26).unwrap_or(0));
    say!(words, "divider-new-name", letter = &letter.to_string())
}

/// The name of a new window or door; `number` counts those of its surface from 0.
pub fn opening_name(words: &Words, number: usize) -> String {
    say!(words, "opening-new-name", number = number + 1)
}
