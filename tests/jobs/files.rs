//! Files of earlier programs open, those of newer ones are refused, and what is not known is kept.

use gapwright::assess::assess;
use gapwright::job::{Catalog, Fault, FileFault, Severity, file};
use gapwright::words::{Words, answer};

/// A file of every form that was ever written; none is ever taken out.
pub(crate) const EARLIER: [(&str, &str); 2] = [
    ("version 1 before values could be missing", include_str!("files/version-1-first.ron")),
    ("version 1", include_str!("files/version-1.ron")),
];

#[test]
fn files_of_every_earlier_program_open_whole() {
    for (name, text) in EARLIER {
        let loaded = file::read(text).unwrap();
        assert_eq!(loaded.problems, vec![], "{name}");
        assert!(loaded.job.unknown.is_empty(), "{name}");
        let found = assess(loaded.job.clone(), Catalog::built_in());
        assert!(
            found.answer.is_complete(),
            "{name}: {}",
            answer::headline(&found, &Words::of_job(&found.job))
        );
        assert!(found.problems.iter().all(|problem| problem.severity != Severity::Error), "{name}");
        // What it says is what was written then.
        assert_eq!(loaded.job.survey.gaps.len(), 18, "{name}");
        assert_eq!(loaded.job.survey.moistures[0].reading.unwrap().to_pct(), 8.5, "{name}");
        assert_eq!(file::read(&file::write(&loaded.job).unwrap()).unwrap(), loaded, "{name}");
    }
}

#[test]
fn a_newer_file_is_refused() {
    let newer = EARLIER[1].1.replacen("version: 1", "version: 2", 1);
    assert_eq!(file::read(&newer), Err(2));
}

/// A field that a newer program or a hand has put into a job stays in it through loading, changing and
/// saving, whatever is in it, and is told of.
#[test]
fn what_is_not_known_is_kept() {
    let added = [
        "colour: \"a: (red), with [brackets] and // no comment\"",
        "later_idea: (list: [1, 2, (3)], map: {\"a\": 1}, more: Some(Thing(x: 1.5)))",
        "flag: true",
    ];
    let mut text = EARLIER[1].1.to_owned();
    for field in added {
        text = text.replacen("    title:", &format!("    {field},\n    title:"), 1);
    }
    let mut loaded = file::read(&text).unwrap();
    assert_eq!(loaded.problems, vec![]);
    assert_eq!(loaded.job.unknown.len(), 3, "{:?}", loaded.job.unknown);
    loaded.job.title = "Changed".to_owned();
    let written = file::write(&loaded.job).unwrap();
    for field in added {
        assert!(written.contains(field), "{written}");
    }
    let again = file::read(&written).unwrap();
    assert_eq!(again, loaded);
    let found = assess(again.job, Catalog::built_in());
    let notes = found
        .problems
        .iter()
        .filter(|problem| matches!(problem.fault, Fault::File(FileFault::UnknownEntry { .. })));
    assert_eq!(notes.count(), 3);
}

/// Deeper down there is no place to keep it: it is told of, and the file is not saved over unasked.
#[test]
fn what_is_not_known_deeper_down_is_told_of() {
    let text = EARLIER[1].1.replacen("wood: 18.0", "wood: 18.0, mood: Bright", 1);
    let loaded = file::read(&text).unwrap();
    assert_eq!(loaded.problems.len(), 1);
    let left_out = &loaded.problems[0].fault;
    let Fault::File(FileFault::LeftOut { text, .. }) = left_out else { panic!("{left_out:?}") };
    assert!(text.contains("mood: Bright"), "{text}");
}
