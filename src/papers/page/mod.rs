//! The homeowner's page: one HTML file that needs nothing else, made by a template like the papers.

mod living_joint;
mod render;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use serde_json::{Value, json};

use super::compared_options;
use super::data::data;
use crate::assess::{Assessment, RepairOption};
use crate::job::{Logo, Problem};
use crate::words::{Say as _, Words, owner_page, say, work};

pub(super) use render::render;

/// The built-in template.
pub(super) const TEMPLATE: &str = include_str!("../../../assets/papers/owner-page.html");

/// The name of the page and of its template.
pub const PAGE_FILE: &str = "owner-page.html";

/// The page with what is wrong with the user's own template, if the built-in one was used instead.
#[derive(Debug)]
pub struct OwnerPage {
    /// The file.
    pub html: String,
    /// What is wrong with the user's own template.
    pub fault: Option<super::PaperError>,
}

/// What the template is handed, without the data of the script.
#[derive(Debug, Clone)]
pub(super) struct PageData {
    /// What the template places, all of which is escaped.
    pub places: Value,
    /// What the script draws.
    pub drawn: Value,
}

/// Everything that stands on the page; `given` is what the owner's papers are handed.
pub(super) fn page_data(assessment: &Assessment, given: &Value, words: &Words) -> PageData {
    let chosen = assessment.chosen();
    let against = chosen.filter(|option| assessment.advises_against(option));
    let against = against.map(|option| match option.not_possible {
        Some(reason) => crate::words::options::not_here(option, reason, words),
        None => say!(words, "letter-advised-against"),
    });
    let joint = assessment.typical_joint();
    let texts: serde_json::Map<String, Value> = ["paper-", "homeowner-", "owner-page-"]
        .into_iter()
        .flat_map(|prefix| words.plain_texts(prefix))
        .map(|(id, text)| (id.to_owned(), text.into()))
        .collect();
    let mut places = given.clone();
    let own = json!({
        "t": texts,
        "against": against,
        "plan": plan(&given["plan"], against.as_deref()),
        "logo": assessment.job.contractor.logo.as_ref().map(data_uri),
        "facts": chosen.map_or_else(Vec::new, |option| facts(assessment, option, words)),
        "options": options(assessment, words),
        "days": chosen.filter(|option| option.price.is_some()).map_or_else(Vec::new, |option| days(option, words)),
        "joint": joint.as_ref().map(|joint| living_joint::places(assessment, joint, words)),
    });
    if let (Value::Object(places), Value::Object(own)) = (&mut places, own) {
        places.extend(own);
    }
    let drawn = json!({
        "figures": chosen.map(|option| figures(assessment, option)),
        "joint": joint.as_ref().map(|joint| living_joint::drawn(assessment, joint, words)),
        "pause": say!(words, "owner-page-pause"),
    });
    PageData { places, drawn }
}

/// The sentences of the plan, without the one that the page says above everything else.
fn plan(sentences: &Value, against: Option<&str>) -> Vec<Value> {
    let all = sentences.as_array().into_iter().flatten();
    all.filter(|line| against.is_none() || line.as_str() != against).cloned().collect()
}

/// The figures of the chosen repair for programs, as the assessment's JSON has them.
fn figures(assessment: &Assessment, option: &RepairOption) -> Value {
    json!({
        "visited": assessment.job.visited.to_string(),
        "method": option.method.key(),
        "currency": assessment.job.plan.prices.currency,
        "total": option.price.as_ref().map(|price| price.total.plain()),
        "owner": option.price.as_ref().map(|price| price.owner.plain()),
        "callback_pct": option.callback.as_ref().map(|risk| 100.0 * risk.chance),
    })
}

fn facts(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<Value> {
    let facts = owner_page::facts(assessment, option, words).into_iter();
    facts.map(|[label, value, note]| json!({ "label": label, "value": value, "note": note })).collect()
}

fn options(assessment: &Assessment, words: &Words) -> Vec<Value> {
    let option = |option: &RepairOption| {
        json!({
            "name": words.called(&option.name),
            "chosen": option.method == assessment.job.plan.chosen,
            "against": match option.not_possible {
                Some(reason) => Some(reason.say(words)),
                None => assessment.advises_against(option).then(|| say!(words, "homeowner-against")),
            },
            "price": match option.price.as_ref() {
                Some(price) if price.owner != price.total => {
                    say!(words, "owner-page-you-pay", owner = price.owner, total = price.total)
                }
                Some(price) => words.figures().money(price.total),
                None => say!(words, "paper-none"),
            },
            "lines": owner_page::what_it_means(assessment, option, words),
        })
    };
    compared_options(assessment).into_iter().map(option).collect()
}

fn days(option: &RepairOption, words: &Words) -> Vec<Value> {
    let day = |day| json!({ "when": work::day_and_people(option.starts, day, words), "what": work::day_work(day, words) });
    option.schedule.days.iter().map(day).collect()
}

/// A logo within the page: nothing is to be fetched.
fn data_uri(logo: &Logo) -> String {
    let kind = if logo.file_name() == "logo.svg" { "svg+xml" } else { "png" };
    format!("data:image/{kind};base64,{}", BASE64_STANDARD.encode(logo.bytes()))
}

/// What the owner's papers are handed, and the page: both out of one assessment.
pub(super) fn owner_data(assessment: &Assessment, unread: &[Problem], words: &Words) -> (Value, PageData) {
    let given = data(assessment, unread, words);
    let page = page_data(assessment, &given, words);
    (given, page)
}
