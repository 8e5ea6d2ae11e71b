//! The languages there are, each a folder of message catalogs under `assets/words`.

use std::borrow::Cow;
use std::sync::{LazyLock, OnceLock};

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
pub struct Language {
    tag: String,
    bundle: FluentBundle<FluentResource>,
    ids: Vec<String>,
    /// Ids of the messages without arguments, in the order of the catalogs.
    plain: Vec<String>,
    formatters: OnceLock<Formatters>,
}

static LANGUAGES: LazyLock<Vec<Language>> = LazyLock::new(|| {
    let mut all: Vec<Language> = FOLDERS
        .dirs()
        .map(|folder| {
            let tag = folder.path().to_string_lossy().into_owned();
            let texts = folder.files().filter_map(include_dir::File::contents_utf8);
            Language::new(&tag, texts.map(str::to_owned))
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
    /// A language by its tag, such as `en-US`, out of the texts of its catalogs.
    ///
    /// # Errors
    /// A text that is not in Fluent's format, or an id that stands twice, with what was met.
    pub fn new(tag: &str, texts: impl Iterator<Item = String>) -> Result<Self, String> {
        let id: LanguageIdentifier = tag.parse().map_err(|error| format!("{tag}: {error}"))?;
        let mut bundle = FluentBundle::new_concurrent(vec![id]);
        // Marks that isolate directions of writing show as boxes in fonts without them.
        bundle.set_use_isolating(false);
        bundle.set_formatter(Some(|value, memoizer| {
            let FluentValue::Number(number) = value else { return None };
            let shown = memoizer.with_try_get::<Grouped, _, _>((), |grouped| {
                grouped.show(number.value, number.options.maximum_fraction_digits.unwrap_or(0))
            });
            shown.ok()
        }));
        let (mut ids, mut plain) = (Vec::new(), Vec::new());
        for text in texts {
            let resource = FluentResource::try_new(text).map_err(|(_, errors)| format!("{errors:?}"))?;
            for entry in resource.entries() {
                let Entry::Message(message) = entry else { continue };
                ids.push(message.id.name.to_owned());
                plain.extend(is_plain(message).then(|| message.id.name.to_owned()));
            }
            bundle.add_resource(resource).map_err(|errors| format!("{errors:?}"))?;
        }
        Ok(Self { tag: tag.to_owned(), bundle, ids, plain, formatters: OnceLock::new() })
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
        self.ids.iter().map(String::as_str)
    }

    /// Whether it has this message, or attribute of a message.
    pub fn has(&self, id: &str) -> bool {
        let (message, attribute) = parts(id);
        self.bundle.get_message(message).is_some_and(|message| match attribute {
            Some(attribute) => message.get_attribute(attribute).is_some(),
            None => message.value().is_some(),
        })
    }

    /// The ids of its messages without arguments.
    pub(super) fn plain_ids(&self) -> impl Iterator<Item = &str> {
        self.plain.iter().map(String::as_str)
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
        let pattern = self.bundle.get_message(message).and_then(|message| match attribute {
            Some(attribute) => message.get_attribute(attribute).map(|attribute| attribute.value()),
            None => message.value(),
        });
        let Some(pattern) = pattern else {
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
            None => self.bundle.format_pattern(pattern, None, &mut faults),
            Some(_) => Cow::Owned(self.bundle.format_pattern(pattern, arguments, &mut faults).into_owned()),
        };
        if !faults.is_empty() {
            tracing::error!("message {id}: {faults:?}");
        }
        text
    }
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
    let text = format!("{value:.decimals$}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    let text = if text == "-0" { "0" } else { text };
    text.parse().ok()
}
