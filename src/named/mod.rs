//! What entries of the catalog are called.
//!
//! A job names a species, a sealant, a paint or a place by the entry's id, which never changes. Its name
//! is what people read and may be reworded: the names it had stay with it as aliases, so that files that
//! were written with them still mean the same entry. An entry of the user's own has no id and goes by its
//! name.

mod fold;

pub use fold::{fold, spellings};

/// An entry of the catalog that jobs refer to.
pub trait Named {
    /// Its id; empty for an entry of the user's own.
    fn id(&self) -> &str;

    /// What people read.
    fn name(&self) -> &str;

    /// Names it has or had in files.
    fn aliases(&self) -> &[String];

    /// Trade names, which other entries may share: it is searched by them, but no file refers to it so.
    fn sold_as(&self) -> &[String] {
        &[]
    }

    /// How much it moves, where that tells those apart that are sold under one name.
    fn moves(&self) -> f64 {
        0.0
    }

    /// By what a job refers to it: its id, or its name where it has none.
    fn key(&self) -> &str {
        if self.id().is_empty() { self.name() } else { self.id() }
    }

    /// Everything a job may call it, what is written today first.
    fn calls(&self) -> impl Iterator<Item = &str> {
        [self.key(), self.name()].into_iter().chain(self.aliases().iter().map(String::as_str))
    }
}

/// The place in a list of the entry that a job calls so: by its key, else by its name, else by one of the
/// names it had. A name that one entry has now goes before the same name that another had.
pub fn position<T: Named>(entries: &[T], called: &str) -> Option<usize> {
    let by = |is: fn(&T, &str) -> bool| entries.iter().position(|entry| is(entry, called));
    by(|entry, called| entry.key() == called)
        .or_else(|| by(|entry, called| entry.name() == called))
        .or_else(|| by(|entry, called| entry.aliases().iter().any(|alias| alias == called)))
}

/// The entry that a job calls so, found as by [`position`].
pub fn find<'a, T: Named>(entries: &'a [T], called: &str) -> Option<&'a T> {
    entries.get(position(entries, called)?)
}

/// Of some trade names the first that may be meant by what was typed: each word of it begins a word of the
/// name, or it begins as the name does where neither has spaces or hyphens.
pub fn trade_name<'a>(names: &'a [String], typed: &str) -> Option<&'a str> {
    let typed = fold(typed);
    if typed.is_empty() {
        return None;
    }
    let close = |text: &str| text.replace(' ', "");
    let fits = |name: &&String| {
        let name = fold(name);
        let begins = |word: &str| name.split(' ').any(|own| own.starts_with(word));
        typed.split(' ').all(begins) || close(&name).starts_with(&close(&typed))
    };
    names.iter().find(fits).map(String::as_str)
}

/// Whether one of some trade names is just what was typed, however it is spaced and whatever its case.
pub fn is_trade_name(names: &[String], typed: &str) -> bool {
    let close = |text: &str| fold(text).replace(' ', "");
    names.iter().any(|name| close(name) == close(typed))
}

/// What people read for an entry that a job calls so: its name, or what the job says where there is none.
pub fn name_of<'a, T: Named>(entries: &'a [T], called: &'a str) -> &'a str {
    find(entries, called).map_or(called, Named::name)
}

/// The place in a list of the entry that another list has too, whichever of its names either knows.
pub fn place_of<T: Named>(entries: &[T], entry: &T) -> Option<usize> {
    entry.calls().find_map(|called| position(entries, called))
}

/// Implements [`Named`] for types whose fields `id`, `name` and, unless they have none, `aliases` say it.
macro_rules! named {
    ($type:ty) => {
        $crate::named::named! { $type, |entry| &entry.aliases }
    };
    ($type:ty, no aliases) => {
        $crate::named::named! { $type, |_entry| &[] }
    };
    ($type:ty, |$entry:ident| $aliases:expr) => {
        impl $crate::named::Named for $type {
            fn id(&self) -> &str {
                &self.id
            }
            fn name(&self) -> &str {
                &self.name
            }
            fn aliases(&self) -> &[String] {
                let $entry = self;
                $aliases
            }
        }
    };
}
pub(crate) use named;

#[cfg(test)]
mod tests {
    use super::*;

    struct Thing {
        id: String,
        name: String,
        aliases: Vec<String>,
    }
    named! { Thing }

    fn thing(id: &str, name: &str, aliases: &[&str]) -> Thing {
        let aliases = aliases.iter().map(|&alias| alias.to_owned()).collect();
        Thing { id: id.to_owned(), name: name.to_owned(), aliases }
    }

    #[test]
    fn a_trade_name_is_found_however_it_is_written() {
        let names = ["hem-fir", "SPF", "knotty pine"].map(str::to_owned);
        for (typed, found) in [
            ("hemfir", Some("hem-fir")),
            ("Hem Fir", Some("hem-fir")),
            ("spf", Some("SPF")),
            ("knot", Some("knotty pine")),
            ("pine, knotty", Some("knotty pine")),
            ("oak", None),
            ("", None),
        ] {
            assert_eq!(trade_name(&names, typed), found, "{typed}");
        }
        assert!(is_trade_name(&names, "HemFir") && is_trade_name(&names, "knotty-pine"));
        assert!(!is_trade_name(&names, "knotty"));
    }

    #[test]
    fn an_id_goes_before_a_name_and_a_name_before_one_of_old() {
        let things = [thing("a", "Oak", &["Ash", "b"]), thing("b", "Ash", &["Oak"]), thing("", "Mine", &[])];
        let found = |called| position(&things, called);
        assert_eq!(["a", "b", "Oak", "Ash", "Mine"].map(found), [0, 1, 0, 1, 2].map(Some));
        assert_eq!((found("Elm"), found("")), (None, None));
        let reworded = [thing("a", "White oak", &["Oak"])];
        assert_eq!(find(&reworded, "Oak").map(Named::name), Some("White oak"));
        assert_eq!(things[0].calls().collect::<Vec<_>>(), ["a", "Oak", "Ash", "b"]);
        assert_eq!(things[2].key(), "Mine");
    }
}
