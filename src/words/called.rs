//! What the built-in catalog calls its entries and says of them, in languages other than US English.
//!
//! US English stands in the catalog's own files. Another language has a message for each of these texts in
//! its `catalog-names.ftl`, named by the entry's id, which never changes. Jobs, price books and findings
//! hold the texts themselves, so a text is known by the wording that the built-in catalog has: what a
//! person worded otherwise is theirs, and stays as it is in every language.

use std::borrow::Cow;
use std::collections::{HashMap, HashSet};
use std::sync::LazyLock;

use super::figures::Figures;
use super::{Language, Words};
use crate::job::Catalog;
use crate::joint::REVEAL;
use crate::named::Named;
use crate::repair::RepairMethod;

/// Where a text of the catalog names the width of a reveal.
const REVEAL_PLACE: &str = "[reveal]";
/// What stands between a sealant and the pack it is bought in.
const BEFORE_PACK: &str = ", ";

/// The message of each text of the built-in catalog.
static MESSAGES: LazyLock<HashMap<&'static str, String>> = LazyLock::new(|| {
    let mut messages = HashMap::new();
    for (message, text) in texts(Catalog::built_in()) {
        messages.entry(text).or_insert(message);
    }
    messages
});

/// What the packs are called that sealant is sold in.
static PACKS: LazyLock<HashSet<&'static str>> = LazyLock::new(|| packs(Catalog::built_in()).collect());

/// The texts of an entry, each with its message: the name, and attributes of it.
fn of_entry<'a>(kind: &str, id: &str, parts: &[(&str, &'a str)]) -> Vec<(String, &'a str)> {
    let message = |part: &str| match part {
        "" => format!("name-{kind}-{id}"),
        part => format!("name-{kind}-{id}.{part}"),
    };
    parts.iter().map(|(part, text)| (message(part), *text)).collect()
}

/// The texts of a catalog that people read, each with the message that says it in other languages. Where
/// several entries have the same text, the message of the first is the one.
fn texts(catalog: &Catalog) -> Vec<(String, &str)> {
    let mut all = Vec::new();
    for species in &catalog.species {
        let moves = species.coefficients.as_ref().map_or("", |moves| &moves.source);
        let shrinks = species.shrinkage.as_ref().map_or("", |shrinks| &shrinks.source);
        all.extend(of_entry(
            "species",
            &species.id,
            &[("", &species.name), ("moves", moves), ("shrinks", shrinks)],
        ));
    }
    for coating in &catalog.finishes {
        all.extend(of_entry("finish", coating.finish.key(), &[("", &coating.name)]));
    }
    for sealant in &catalog.sealants {
        let parts = [("", &*sealant.name), ("class", &sealant.class), ("source", &sealant.source)];
        all.extend(of_entry("sealant", &sealant.id, &parts));
    }
    for pack in packs(catalog) {
        all.extend(of_entry("pack", pack, &[("", pack)]));
    }
    for paint in &catalog.paints {
        all.extend(of_entry("paint", &paint.id, &[("", &paint.name), ("source", &paint.source)]));
    }
    for material in &catalog.materials {
        all.extend(of_entry("material", &material.id, &[("", &material.name), ("source", &material.source)]));
    }
    for task in &catalog.tasks {
        let short = task.short.as_deref().unwrap_or_default();
        let parts = [("", &*task.name), ("short", short), ("source", &task.source)];
        all.extend(of_entry("task", &task.id, &parts));
    }
    for condition in &catalog.conditions {
        all.extend(of_entry("condition", condition.when.key(), &[("", &condition.name)]));
    }
    for method in &catalog.methods {
        let RepairMethod { id, name, look, upset, says, .. } = method;
        let parts = [("", &**name), ("look", look), ("during", upset), ("letter", says)];
        all.extend(of_entry("method", &id.key(), &parts));
    }
    for mark in &catalog.marks {
        all.extend(of_entry("mark", &format!("{:.0}", mark.most.to_pct()), &[("source", &mark.source)]));
    }
    for caution in &catalog.cautions {
        let parts = [
            ("", &*caution.title),
            ("text", &caution.text),
            ("metric", &caution.metric),
            ("source", &caution.source),
        ];
        all.extend(of_entry("caution", &caution.id, &parts));
    }
    let mut known = HashSet::new();
    all.retain(|(_, text)| !text.is_empty() && known.insert(*text));
    all
}

/// The names of the packs, each once.
fn packs(catalog: &Catalog) -> impl Iterator<Item = &str> {
    let mut known = HashSet::new();
    let all = catalog.sealants.iter().flat_map(|sealant| &sealant.packs);
    all.map(|pack| pack.name.as_str()).filter(move |name| known.insert(*name))
}

impl Language {
    /// A text of the catalog in this language; one that is not the built-in catalog's as it is.
    pub(super) fn called<'a>(&'static self, text: &'a str) -> Cow<'a, str> {
        if std::ptr::eq(self, Self::us_english()) {
            return Cow::Borrowed(text);
        }
        if let Some(message) = MESSAGES.get(text).filter(|message| self.has(message)) {
            return self.text(message, None);
        }
        match text.rsplit_once(BEFORE_PACK).filter(|(_, pack)| PACKS.contains(pack)) {
            Some((sealant, pack)) => Cow::Owned([self.called(sealant), self.called(pack)].join(BEFORE_PACK)),
            None => Cow::Borrowed(text),
        }
    }
}

/// A text of the catalog with the width of a reveal, where it names one.
pub(super) fn filled<'a>(text: Cow<'a, str>, figures: &Figures) -> Cow<'a, str> {
    match text.contains(REVEAL_PLACE) {
        true => Cow::Owned(text.replace(REVEAL_PLACE, &figures.length(REVEAL))),
        false => text,
    }
}

impl Words {
    /// What the catalog calls something or says of it, such as a task's name or a caution, in these words.
    /// What a person worded stays as it is.
    pub fn called<'a>(&self, text: &'a str) -> Cow<'a, str> {
        filled(self.language.called(text), self.figures())
    }

    /// The name of an entry of the catalog in these words; what the job calls it where there is none.
    pub fn name_of<'a, T: Named>(&self, entries: &'a [T], called: &'a str) -> Cow<'a, str> {
        self.called(crate::named::name_of(entries, called))
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::measure::Units;
    use crate::words::languages;

    #[test]
    fn every_language_says_the_whole_catalog_and_nothing_else() {
        let wanted: BTreeSet<String> =
            texts(Catalog::built_in()).into_iter().map(|(message, _)| message).collect();
        assert!(wanted.len() > 300, "{}", wanted.len());
        let plain = |id: &str| id.split('.').next().unwrap_or_default().to_owned();
        let entries: BTreeSet<String> = wanted.iter().map(|id| plain(id)).collect();
        for language in languages().iter().skip(1) {
            let missing: Vec<&String> = wanted.iter().filter(|id| !language.has(id)).collect();
            assert!(missing.is_empty(), "{} lacks {missing:#?}", language.tag());
            let named = language.ids().filter(|id| id.starts_with("name-"));
            let strange: Vec<&str> = named.filter(|id| !entries.contains(*id)).collect();
            assert!(strange.is_empty(), "{} has {strange:?}", language.tag());
        }
        assert!(!Language::us_english().ids().any(|id| id.starts_with("name-")));
    }

    #[test]
    fn what_a_person_worded_stays_in_every_language() {
        let catalog = Catalog::built_in();
        let scrape = &catalog.tasks.iter().find(|task| task.id == "scrape").expect("it is a task").name;
        for language in languages() {
            let words = Words::new(language, Units::Inches, "$");
            let own = language.tag() == "en-US";
            assert_eq!(words.called(scrape) == scrape.as_str(), own, "{}", language.tag());
            assert_eq!(words.called("Scrape it my way"), "Scrape it my way");
            // A sealant of one's own in a pack that the catalog knows.
            let packed = format!("My caulk, {}", catalog.sealants[0].packs[0].name);
            let called = words.called(&packed);
            assert!(called.starts_with("My caulk, "), "{called}");
            assert_eq!(called == packed, own, "{called}");
        }
    }
}
