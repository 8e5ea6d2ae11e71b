//! Templates of the user's own: what they can reach, how their faults are told, and that old ones work on.

use std::fs;
use std::path::Path;

use gapwright::assess::{Assessment, assess};
use gapwright::export::{DraftPapers, Handed, write_papers};
use gapwright::job::{Catalog, Job, file};
use gapwright::measure::{Percent, Units};
use gapwright::papers::{Paper, PaperError, PaperWords, Papers, Templates};
use gapwright::words::{Say as _, Words};

fn tea_room() -> Job {
    file::read(include_str!("../../examples/tea_room.ron")).unwrap().job
}

fn assessed(job: Job) -> Assessment {
    assess(job, Catalog::built_in())
}

/// The papers by templates in this folder.
fn papers(assessment: &Assessment, folder: &Path) -> Papers {
    Papers::with(assessment, Templates::in_folder(folder), &PaperWords::us_english(&assessment.job))
}

/// The line, counted from 1, and the file of a template's fault.
fn place(fault: Option<&PaperError>) -> (String, Option<usize>) {
    match fault {
        Some(PaperError::Template { file, line, .. }) => {
            (file.file_name().unwrap().to_string_lossy().into_owned(), *line)
        }
        other => panic!("no fault of a template: {other:?}"),
    }
}

/// A template can reach its data and pictures, and no file of the machine.
#[test]
fn a_template_reads_no_files_and_says_where_it_is_wrong() {
    let folder = tempfile::tempdir().unwrap();
    let secret = folder.path().join("secret.txt");
    fs::write(&secret, "not for templates").unwrap();
    let found = assessed(tea_room());
    let template = folder.path().join("letter.typ");
    for path in [secret.to_str().unwrap(), "secret.txt", "../secret.txt", "/etc/hostname"] {
        fs::write(&template, format!("Fine\n\n#read(\"{path}\")")).unwrap();
        let made = papers(&found, folder.path()).typeset(Paper::Letter).unwrap();
        assert_eq!(place(made.fault()), ("letter.typ".to_owned(), Some(3)), "{path}");
        let said = made.fault().unwrap().say(&Words::of_job(&found.job));
        assert!(said.contains("letter.typ, line 3: "), "{said}");
        assert!(made.text().contains("What we saw"), "the built-in template was not used");
    }
    fs::write(&template, "#while true {}").unwrap();
    assert!(papers(&found, folder.path()).typeset(Paper::Letter).unwrap().fault().is_some());
    fs::write(&template, [0xff, 0xfe, 0x00]).unwrap();
    let made = papers(&found, folder.path()).typeset(Paper::Letter).unwrap();
    assert!(matches!(made.fault(), Some(PaperError::TemplateUnreadable { .. })), "{:?}", made.fault());
    fs::write(&template, " ".repeat(3 << 20)).unwrap();
    let made = papers(&found, folder.path()).typeset(Paper::Letter).unwrap();
    assert!(matches!(made.fault(), Some(PaperError::TemplateTooLarge { .. })), "{:?}", made.fault());
}

/// A look of the user's own is used for all papers; one with a fault is named, and the built-in look used.
#[test]
fn a_look_of_ones_own_is_used_and_its_faults_are_its_own() {
    let folder = tempfile::tempdir().unwrap();
    let found = assessed(tea_room());
    let look = folder.path().join("look.typ");
    fs::write(folder.path().join("letter.typ"), "#import \"look.typ\": mine\n#mine").unwrap();
    fs::write(&look, "#let mine = [by my own look]").unwrap();
    let made = papers(&found, folder.path()).typeset(Paper::Letter).unwrap();
    assert_eq!(made.text().trim(), "by my own look");
    // Without what the built-in templates need of it.
    let made = papers(&found, folder.path()).typeset(Paper::WorkOrder).unwrap();
    assert_eq!(place(made.fault()), ("look.typ".to_owned(), None));
    assert!(made.text().contains("Sections, in this order"));
    fs::write(&look, "#let d = json(\"data.json\")\n#let a = 1 +\n").unwrap();
    for paper in Paper::ALL {
        let made = papers(&found, folder.path()).typeset(paper).unwrap();
        assert_eq!(place(made.fault()), ("look.typ".to_owned(), Some(2)), "{paper:?}");
    }
}

/// All built-in templates are written with the look they import, and make the same papers from there.
#[test]
fn all_templates_are_written_and_work_from_there() {
    let folder = tempfile::tempdir().unwrap();
    let into = folder.path().join("new").join("templates");
    let written = Templates::write_all(&into).unwrap();
    assert_eq!(written.len(), Paper::ALL.len() + 2);
    assert!(written.iter().all(|path| path.is_file()) && into.join("look.typ").is_file());
    let found = assessed(tea_room());
    for paper in Paper::ALL {
        let made = papers(&found, &into).typeset(paper).unwrap();
        assert!(made.fault().is_none(), "{paper:?}: {:?}", made.fault());
        assert_eq!(made.text(), Papers::new(&found).typeset(paper).unwrap().text(), "{paper:?}");
    }
    // What is there already stays as it is.
    fs::write(into.join("letter.typ"), "mine").unwrap();
    Templates::write_all(&into).unwrap();
    assert_eq!(fs::read_to_string(into.join("letter.typ")).unwrap(), "mine");
}

/// Window and command line write papers alike: a template with a fault costs no paper and is told.
#[test]
fn papers_are_written_whatever_a_template_says() {
    let folder = tempfile::tempdir().unwrap();
    let found = assessed(tea_room());
    fs::write(folder.path().join("price-sheet.typ"), "#nonsense").unwrap();
    let out = folder.path().join("out");
    let held_back = DraftPapers::HoldBack;
    let all = write_papers(&papers(&found, folder.path()), None, &out, held_back, || false).unwrap();
    assert!(all.held.is_empty(), "{:?}", all.held);
    let written = all.written;
    let faulty: Vec<Handed> = written.iter().filter(|w| w.fault.is_some()).map(|w| w.paper).collect();
    // All but the report of later visits, and the homeowner’s page.
    assert_eq!((written.len(), faulty), (Paper::ALL.len(), vec![Handed::Paper(Paper::PriceSheet)]));
    for written in &written {
        let begins: &[u8] = if written.paper == Handed::OwnerPage { b"<!DOCTYPE html>" } else { b"%PDF" };
        assert!(fs::read(&written.path).unwrap().starts_with(begins), "{written:?}");
    }
    let cancelled = folder.path().join("cancelled");
    let none = write_papers(&papers(&found, folder.path()), None, &cancelled, held_back, || true).unwrap();
    assert!(none.written.is_empty());
    assert!(!cancelled.exists());
}

#[test]
fn a_folder_of_templates_that_is_not_there_is_told() {
    let folder = tempfile::tempdir().unwrap();
    let missing = folder.path().join("nowhere");
    let error = Templates::in_existing_folder(&missing).unwrap_err();
    assert!(matches!(&error, PaperError::NoFolder(path) if *path == missing));
    let said = error.say(&Words::us_english(Units::Inches, "$"));
    assert!(said.contains(missing.to_str().unwrap()), "{said}");
    assert!(Templates::in_existing_folder(folder.path()).is_ok());
}

/// Templates as they were handed out by earlier versions, kept by a user, in `tests/handover/templates`.
#[test]
fn old_templates_make_papers_still() {
    let old = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/handover/templates");
    for units in [Units::Inches, Units::Millimeters] {
        for share in [0.0, 25.0] {
            let mut job = tea_room();
            job.units = units;
            job.plan.payers.lines.clear();
            job.plan.payers.contractor = Percent::pct(share);
            job.plan.payers.supplier = Percent::ZERO;
            let found = assessed(job);
            let made = Paper::ALL.map(|paper| papers(&found, &old).typeset(paper).unwrap());
            for (paper, made) in Paper::ALL.iter().zip(&made) {
                assert!(made.fault().is_none(), "{paper:?}: {:?}", made.fault());
            }
            // Their labels are their own, and they find by themselves that a share is nothing.
            let letter = made[0].text();
            assert!(letter.contains("How it goes on"), "{letter}");
            assert_eq!(letter.contains("We bear, as our goodwill"), share > 0.0, "{letter}");
            let new = Papers::new(&found).typeset(Paper::Letter).unwrap().text();
            assert_eq!(new.contains("We cover, as a courtesy"), share > 0.0, "{new}");
            assert!(!new.contains("Requested from the supplier"), "{new}");
        }
    }
    // An old look with new templates.
    let folder = tempfile::tempdir().unwrap();
    fs::copy(old.join("look.typ"), folder.path().join("look.typ")).unwrap();
    let found = assessed(tea_room());
    for paper in Paper::ALL {
        let made = papers(&found, folder.path()).typeset(paper).unwrap();
        assert!(made.fault().is_none(), "{paper:?}: {:?}", made.fault());
    }
}

/// Owner and crew may have words of their own: here other units.
#[test]
fn owner_and_crew_have_words_of_their_own() {
    let found = assessed(tea_room());
    let words = PaperWords {
        owner: Words::us_english(Units::Inches, "$"),
        crew: Words::us_english(Units::Millimeters, "$"),
    };
    let papers = Papers::with(&found, Templates::default(), &words);
    let text = |paper: Paper| papers.typeset(paper).unwrap().text();
    let (letter, order) = (text(Paper::Letter), text(Paper::WorkOrder));
    assert!(letter.contains("Feb 14, 2026") && !letter.contains("14 Feb 2026"), "{letter}");
    assert!(order.contains("14 Feb 2026") && order.contains(" mm"), "{order}");
}
