//! What the proposal says besides the letter.

use serde_json::{Value, json};

use super::work::{boards, handles_boards, laid};
use crate::assess::{Assessment, RepairOption};
use crate::measure::Length;
use crate::surface::Surface;
use crate::words::{Words, proposal, say};

/// The proposal of the chosen option; `None` where nothing is chosen, or nothing that can be done.
pub(super) fn data(assessment: &Assessment, warrants: bool, words: &Words) -> Option<Value> {
    let (job, figures) = (&*assessment.job, words.figures());
    let option = assessment.chosen()?;
    let price = option.price.as_ref()?;
    let terms = &job.proposal;
    let against = assessment.advises_against(option);
    let notices = proposal::notices(job, words).into_iter();
    Some(json!({
        "number": terms.number,
        "dated": figures.date(job.visited),
        "valid_until": terms.valid_until(job.visited).map(|date| figures.date(date)),
        "license": job.contractor.license,
        "insurance": job.contractor.insurance,
        "no_work": proposal::is_no_work(option),
        "warning": against.then(|| say!(words, "letter-advised-against")),
        "conditions": proposal::conditions(assessment, words),
        "scope": proposal::scope(assessment, option, words),
        "where": places(assessment, option, words),
        "excluded": proposal::exclusions(assessment, words),
        "warranted": proposal::warranted(assessment, option, warrants, words),
        "not_warranted": if warrants && job.plan.warranty_years > 0 {
            proposal::not_warranted(assessment, words)
        } else {
            Vec::new()
        },
        "payment": proposal::payment(job, price, words),
        "supplier": proposal::supplier(option, words),
        "notices": notices.map(|[title, text]| json!({ "title": title, "text": text })).collect::<Vec<_>>(),
        "pamphlet": proposal::lead_pamphlet(job),
    }))
}

/// The surfaces with the sections in which something is done, and how many joints of which length are worked on
/// there; of boards that are taken down, a row for each section with its boards.
fn places(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<Value> {
    let surfaces = assessment.job.surfaces.iter().enumerate();
    surfaces.flat_map(|(index, surface)| place(assessment, option, (index, surface), words)).collect()
}

fn place(
    assessment: &Assessment,
    option: &RepairOption,
    (index, surface): (usize, &Surface),
    words: &Words,
) -> Vec<Value> {
    let sections = surface.sections.iter().enumerate();
    let worked_in: Vec<(usize, &str)> = sections
        .filter(|(section, _)| assessment.works_in(index, *section))
        .map(|(section, told)| (section, told.name.as_str()))
        .collect();
    if handles_boards(option) {
        let row = |(section, name): (usize, &str)| {
            json!([surface.name, name, boards(assessment, index, section, words)])
        };
        return worked_in.into_iter().map(row).collect();
    }
    // Too narrow for a bead, a joint is no part of what is sealed.
    let seals = assessment.lays_beads();
    let here: Vec<_> = assessment
        .worked_on()
        .filter(|joint| joint.surface == index && (!seals || assessment.gets_bead(joint)))
        .collect();
    let run: Length = here.iter().map(|joint| laid(assessment, joint).length()).sum();
    let names: Vec<&str> = worked_in.iter().map(|(_, name)| *name).collect();
    let joints = (!here.is_empty())
        .then(|| say!(words, "paper-joints-and-run", joints = here.len(), run = crate::words::Arg::Run(run)));
    vec![json!([surface.name, words.figures().list(&names), joints])]
}
