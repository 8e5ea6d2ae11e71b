//! The languages of the window, of the owner's papers and of the crew's papers: three choices.

use eframe::egui::Ui;
use serde::{Deserialize, Serialize};

use super::command::Command;
use super::context::WindowContext;
use crate::job::Job;
use crate::papers::PaperWords;
use crate::words::{Language, Words, languages};

/// Who is spoken to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Audience {
    /// Who works in the window.
    Window,
    /// The homeowner, on paper.
    Owner,
    /// The crew, on paper.
    Crew,
}

impl Audience {
    const ALL: [(Self, &'static str); 3] =
        [(Self::Window, "language-window"), (Self::Owner, "language-owner"), (Self::Crew, "language-crew")];
}

/// The chosen languages.
#[derive(Clone, Copy)]
pub(super) struct Languages {
    window: &'static Language,
    owner: &'static Language,
    crew: &'static Language,
}

/// The tags of the chosen languages, as they are remembered between runs.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct LanguageTags {
    window: String,
    owner: String,
    crew: String,
}

impl Languages {
    /// The languages that were chosen; one that there is no more is US English.
    pub fn of(tags: &LanguageTags) -> Self {
        let of = |tag: &str| Language::of(tag).unwrap_or_else(Language::us_english);
        Self { window: of(&tags.window), owner: of(&tags.owner), crew: of(&tags.crew) }
    }

    /// One language for all.
    pub const fn all(language: &'static Language) -> Self {
        Self { window: language, owner: language, crew: language }
    }

    /// What is remembered of them.
    pub fn tags(&self) -> LanguageTags {
        let tag = |language: &Language| language.tag().to_owned();
        LanguageTags { window: tag(self.window), owner: tag(self.owner), crew: tag(self.crew) }
    }

    pub const fn set(&mut self, audience: Audience, language: &'static Language) {
        match audience {
            Audience::Window => self.window = language,
            Audience::Owner => self.owner = language,
            Audience::Crew => self.crew = language,
        }
    }

    const fn get(&self, audience: Audience) -> &'static Language {
        match audience {
            Audience::Window => self.window,
            Audience::Owner => self.owner,
            Audience::Crew => self.crew,
        }
    }

    /// The words of the window, in the units and the currency of the job.
    pub fn window_words(&self, job: &Job) -> Words {
        Words::new(self.window, job.units, &job.plan.prices.currency)
    }

    /// The words of the papers, likewise.
    pub fn paper_words(&self, job: &Job) -> PaperWords {
        let words = |language| Words::new(language, job.units, &job.plan.prices.currency);
        PaperWords { owner: words(self.owner), crew: words(self.crew) }
    }
}

/// A menu for each audience, where there is more than one language.
pub(super) fn menu(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if languages().len() < 2 {
        return;
    }
    ui.separator();
    for (audience, message) in Audience::ALL {
        ui.menu_button(context.words.text(message), |ui| {
            for language in languages() {
                let chosen = context.languages.get(audience).tag() == language.tag();
                if ui.radio(chosen, language.name()).clicked() {
                    context.push(Command::Language(audience, language));
                }
            }
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::demo_job;

    #[test]
    fn the_three_languages_are_chosen_apart_and_remembered() {
        let spanish = Language::of("es-US").expect("it is a language");
        for (audience, _) in Audience::ALL {
            let mut chosen = Languages::of(&LanguageTags::default());
            chosen.set(audience, spanish);
            let chosen = Languages::of(&chosen.tags());
            let job = demo_job();
            let (window, papers) = (chosen.window_words(&job), chosen.paper_words(&job));
            let tags = [&window, &papers.owner, &papers.crew].map(|words| words.language().tag().to_owned());
            let wanted = Audience::ALL.map(|(other, _)| if other == audience { "es-US" } else { "en-US" });
            assert_eq!(tags, wanted, "{audience:?}");
        }
        let gone = LanguageTags { window: "tlh".into(), ..LanguageTags::default() };
        assert_eq!(Languages::of(&gone).get(Audience::Window).tag(), "en-US");
    }
}
