//! The languages there are, each a folder of message catalogs under `assets/words`.

use std::borrow::Cow;
use std::collections::{HashMap, HashSet};
use std::sync::{Arc, LazyLock, OnceLock};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast::{Entry, Message, PatternElement};
use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use include_dir::{Dir, include_dir};
use intl_memoizer::Memoizable;
use unic_langid::LanguageIdentifier;

use super::figures::Formatters;

/// The catalogs are part of the program: adding a language is adding a folder.
static FOLDERS: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/assets/words");

/// The language that every other falls back on.
const US_ENGLISH: &str = "en-US";

/// A language with its messages.
///
/// A catalog is read when the first of its messages is asked for: a command that says three lines does not
/// wait for the texts of the whole window.
pub struct Language {
    tag: String,
    id: LanguageIdentifier,
    catalogs: Vec<Catalog>,
    /// Ids of all messages in the order of the catalogs, each with the catalog it is in.
    ids: Vec<(String, usize)>,
    /// Where in `ids` a message is.
    places: HashMap<String, usize>,
    formatters: OnceLock<Formatters>,
}

/// The messages of one subject.
struct Catalog {
    text: Cow<'static, str>,
    /// What was read of the text.
    read: OnceLock<Arc<FluentResource>>,
    /// Its messages together with those of other catalogs that they refer to.
    bundle: OnceLock<FluentBundle<Arc<FluentResource>>>,
}

static LANGUAGES: LazyLock<Vec<Language>> = LazyLock::new(|| {
    let mut all: Vec<Language> = FOLDERS
        .dirs()
        .map(|folder| {
            let tag = folder.path().to_string_lossy().into_owned();
            let texts = folder.files().filter_map(include_dir::File::contents_utf8);
            Language::unread(&tag, texts.map(Cow::Borrowed))
                .unwrap_or_else(|fault| panic!("assets/words/{tag}: {fault}"))
        })
        .collect();
    // US English first: it is the one to start with.
    all.sort_by_key(|language| (language.tag != US_ENGLISH, language.tag.clone()));
    all
});

/// All languages, US English first.
pub fn languages() -> &'static [Language] {
    &LANGUAGES
}

impl Language {
    /// A language by its tag, such as `en-US`, out of the texts of its catalogs, all of which are read.
    ///
    /// # Errors
    /// A text that is not in Fluent's format, or an id that stands twice, with what was met.
    pub fn new(tag: &str, texts: impl Iterator<Item = String>) -> Result<Self, String> {
        let language = Self::unread(tag, texts.map(Cow::Owned))?;
        let mut known = HashSet::new();
        for catalog in &language.catalogs {
            let read = catalog.read()?;
            catalog.read.get_or_init(|| read);
            for id in catalog.messages().map(|message| message.id.name) {
                // What the quick search for ids overlooks could never be said.
                if !language.places.contains_key(id) {
                    return Err(format!("{id} is not at the beginning of a line"));
                }
                if !known.insert(id) {
                    return Err(format!("{id} stands twice"));
                }
            }
        }
        Ok(language)
    }

    /// The same, its texts searched for ids but not read.
    fn unread(tag: &str, texts: impl Iterator<Item = Cow<'static, str>>) -> Result<Self, String> {
        let id: LanguageIdentifier = tag.parse().map_err(|error| format!("{tag}: {error}"))?;
        let catalogs: Vec<Catalog> =
            texts.map(|text| Catalog { text, read: OnceLock::new(), bundle: OnceLock::new() }).collect();
        let ids: Vec<(String, usize)> = catalogs
            .iter()
            .enumerate()
            .flat_map(|(at, catalog)| message_ids(&catalog.text).map(move |id| (id.to_owned(), at)))
            .collect();
        let places = ids.iter().enumerate().map(|(place, (id, _))| (id.clone(), place)).collect();
        Ok(Self { tag: tag.to_owned(), id, catalogs, ids, places, formatters: OnceLock::new() })
    }

    /// The bundle in which a message is, with what it refers to; `None` if there is no such message.
    fn bundle_of(&self, message: &str) -> Option<&FluentBundle<Arc<FluentResource>>> {
        let (_, catalog) = self.ids[*self.places.get(message)?];
        let catalog = &self.catalogs[catalog];
        Some(catalog.bundle.get_or_init(|| self.bundle(catalog)))
    }

    /// A catalog's messages, and those of the catalogs that they refer to, directly or through others.
    fn bundle(&self, catalog: &Catalog) -> FluentBundle<Arc<FluentResource>> {
        let mut bundle = FluentBundle::new_concurrent(vec![self.id.clone()]);
        // Marks that isolate directions of writing show as boxes in fonts without them.
        bundle.set_use_isolating(false);
        bundle.set_formatter(Some(|value, memoizer| {
            let FluentValue::Number(number) = value else { return None };
            let shown = memoizer.with_try_get::<Grouped, _, _>((), |grouped| {
                grouped.show(number.value, number.options.maximum_fraction_digits.unwrap_or(0))
            });
            shown.ok()
        }));
        let mut wanted = vec![catalog];
        let mut next = 0;
        while let Some(catalog) = wanted.get(next).copied() {
            next += 1;
            let others = references(&catalog.text).filter_map(|id| self.places.get(id));
            for &place in others {
                let other = &self.catalogs[self.ids[place].1];
                if !wanted.iter().any(|known| std::ptr::eq(*known, other)) {
                    wanted.push(other);
                }
            }
            if let Err(errors) = bundle.add_resource(Arc::clone(catalog.resource())) {
                tracing::error!("words of {}: {errors:?}", self.tag);
            }
        }
        bundle
    }

    /// US English.
    ///
    /// # Panics
    /// Never: its catalogs are part of the program and read in every test.
    pub fn us_english() -> &'static Self {
        &LANGUAGES[0]
    }

    /// The language of this tag, if there is one.
    pub fn of(tag: &str) -> Option<&'static Self> {
        LANGUAGES.iter().find(|language| language.tag == tag)
    }

    /// Its tag, such as `en-US`.
    pub fn tag(&self) -> &str {
        &self.tag
    }

    /// What it calls itself.
    pub fn name(&'static self) -> Cow<'static, str> {
        self.text("language-name", None)
    }

    /// The ids of its messages, in the order of its catalogs.
    pub fn ids(&self) -> impl Iterator<Item = &str> {
        self.ids.iter().map(|(id, _)| id.as_str())
    }

    /// Whether it has this message, or attribute of a message.
    pub fn has(&self, id: &str) -> bool {
        let (message, attribute) = parts(id);
        let found = self.bundle_of(message).and_then(|bundle| bundle.get_message(message));
        found.is_some_and(|message| match attribute {
            Some(attribute) => message.get_attribute(attribute).is_some(),
            None => message.value().is_some(),
        })
    }

    /// The ids of its messages without arguments that begin with `prefix`.
    pub(super) fn plain_ids<'a>(&'a self, prefix: &'a str) -> impl Iterator<Item = &'a str> {
        let here = move |catalog: usize| {
            let in_it = self.ids.iter().filter(move |(_, at)| *at == catalog);
            in_it.map(|(id, _)| id).any(|id| id.starts_with(prefix))
        };
        let catalogs = self.catalogs.iter().enumerate().filter(move |(at, _)| here(*at));
        let messages = catalogs.flat_map(|(_, catalog)| catalog.messages());
        messages
            .filter(move |message| message.id.name.starts_with(prefix) && is_plain(message))
            .map(|message| message.id.name)
    }

    /// How it writes numbers, lists and dates.
    pub(super) fn formatters(&self) -> &Formatters {
        self.formatters.get_or_init(|| Formatters::new(&self.tag))
    }

    /// A pattern of a figure with its parts set in.
    pub(super) fn pattern(&'static self, id: &str, parts: &[(&'static str, FluentValue<'_>)]) -> String {
        let mut arguments = FluentArgs::with_capacity(parts.len());
        for (name, part) in parts {
            arguments.set(*name, part.clone());
        }
        self.text(id, Some(&arguments)).into_owned()
    }

    /// The message of this id with its arguments filled in.
    pub(super) fn text(&'static self, id: &str, arguments: Option<&FluentArgs<'_>>) -> Cow<'static, str> {
        let (message, attribute) = parts(id);
        let bundle = self.bundle_of(message);
        let found =
            bundle.and_then(|bundle| bundle.get_message(message)).and_then(|message| match attribute {
                Some(attribute) => message.get_attribute(attribute).map(|attribute| attribute.value()),
                None => message.value(),
            });
        let Some((bundle, pattern)) = bundle.zip(found) else {
            let fallback = Self::us_english();
            if !std::ptr::eq(self, fallback) {
                return fallback.text(id, arguments);
            }
            tracing::error!("no message {id}");
            return Cow::Owned(id.to_owned());
        };
        let mut faults = Vec::new();
        let text = match arguments {
            // What has no arguments lasts as long as the catalogs: it need not be copied.
            None => bundle.format_pattern(pattern, None, &mut faults),
            Some(_) => Cow::Owned(bundle.format_pattern(pattern, arguments, &mut faults).into_owned()),
        };
        if !faults.is_empty() {
            tracing::error!("message {id}: {faults:?}");
        }
        text
    }
}

impl Catalog {
    /// Reads the text.
    fn read(&self) -> Result<Arc<FluentResource>, String> {
        let read = FluentResource::try_new(self.text.clone().into_owned());
        read.map(Arc::new).map_err(|(_, errors)| format!("{errors:?}"))
    }

    /// What was read of the text; what cannot be read of it is left out, and logged.
    fn resource(&self) -> &Arc<FluentResource> {
        self.read.get_or_init(|| {
            Arc::new(FluentResource::try_new(self.text.clone().into_owned()).unwrap_or_else(
                |(rest, errors)| {
                    tracing::error!("words: {errors:?}");
                    rest
                },
            ))
        })
    }

    fn messages(&self) -> impl Iterator<Item = &Message<&str>> {
        self.resource().entries().filter_map(|entry| match entry {
            Entry::Message(message) => Some(message),
            _ => None,
        })
    }
}

/// The ids of the messages of a catalog: what stands before an equals sign at the beginning of a line.
fn message_ids(text: &str) -> impl Iterator<Item = &str> {
    text.lines().filter_map(|line| {
        let (id, _) = line.split_once('=')?;
        let id = id.trim_end();
        (is_id(id)).then_some(id)
    })
}

/// What the messages of a catalog may refer to: what stands behind an opening brace, if it could be an id.
fn references(text: &str) -> impl Iterator<Item = &str> {
    text.split('{').skip(1).filter_map(|rest| {
        let rest = rest.trim_start();
        let end = rest.find(|c: char| !(c.is_ascii_alphanumeric() || c == '-' || c == '_'));
        let id = &rest[..end.unwrap_or(rest.len())];
        is_id(id).then_some(id)
    })
}

/// Whether a text is a message's id.
fn is_id(text: &str) -> bool {
    let in_id = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_';
    text.starts_with(|c: char| c.is_ascii_alphabetic()) && text.chars().all(in_id)
}

/// Whether a message is text alone.
fn is_plain(message: &Message<&str>) -> bool {
    let text = |element: &PatternElement<&str>| matches!(element, PatternElement::TextElement { .. });
    message.value.as_ref().is_some_and(|value| value.elements.iter().all(text))
}

/// A message's id and the attribute after the point.
fn parts(id: &str) -> (&str, Option<&str>) {
    id.split_once('.').map_or((id, None), |(message, attribute)| (message, Some(attribute)))
}

/// Numbers with the grouping of the language.
struct Grouped(DecimalFormatter);

impl Memoizable for Grouped {
    type Args = ();
    type Error = String;

    fn construct(language: LanguageIdentifier, (): ()) -> Result<Self, String> {
        decimal_formatter(&language.to_string()).map(Self)
    }
}

impl Grouped {
    fn show(&self, value: f64, decimals: usize) -> String {
        decimal(value, decimals)
            .map_or_else(|| value.to_string(), |decimal| self.0.format(&decimal).to_string())
    }
}

/// A formatter of decimal numbers for a language.
///
/// # Errors
/// If the tag is none of a language.
pub(super) fn decimal_formatter(tag: &str) -> Result<DecimalFormatter, String> {
    let locale: icu_locale_core::Locale = tag.parse().map_err(|error| format!("{tag}: {error:?}"))?;
    DecimalFormatter::try_new(locale.into(), icu_decimal::options::DecimalFormatterOptions::default())
        .map_err(|error| error.to_string())
}

/// A number as ICU takes it, rounded to so many decimals, without trailing zeros.
pub(super) fn decimal(value: f64, decimals: usize) -> Option<Decimal> {
    // A half goes up, also where its last bits fell a little short of it.
    let value = value + 1e-9_f64.copysign(value);
    let text = format!("{value:.decimals$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    let text = if text == "-0" { "0" } else { text };
    text.parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_catalog_of_the_program_can_be_read() {
        for folder in FOLDERS.dirs() {
            let texts = folder.files().filter_map(include_dir::File::contents_utf8).map(str::to_owned);
            let tag = folder.path().to_string_lossy();
            let read = Language::new(&tag, texts);
            assert!(read.is_ok(), "{tag}: {:?}", read.err());
        }
    }

    #[test]
    fn a_message_may_refer_to_one_of_another_catalog_through_a_third() {
        let catalogs = [
            "c = { b }, twice\n",
            "a = once\nunread = \n    { $x ->\n       *[y] z\n    }\n",
            "b = { a } more\n",
        ];
        let language = Language::new("en-US", catalogs.into_iter().map(str::to_owned)).expect("it is sound");
        let language: &'static Language = Box::leak(Box::new(language));
        assert_eq!(language.text("c", None), "once more, twice");
        assert_eq!(language.ids().collect::<Vec<_>>(), ["c", "a", "unread", "b"]);
        assert_eq!(language.plain_ids("").collect::<Vec<_>>(), ["a"]);
        assert!(language.has("a") && !language.has("a.hint") && !language.has("z"));
    }

    #[test]
    fn a_catalog_with_a_fault_or_an_id_twice_is_refused() {
        for faulty in [["a = once\n", "a = again\n"], ["a = once\n", "b = { \n"], ["a = once\n", "?\n"]] {
            assert!(Language::new("en-US", faulty.into_iter().map(str::to_owned)).is_err(), "{faulty:?}");
        }
    }
}
