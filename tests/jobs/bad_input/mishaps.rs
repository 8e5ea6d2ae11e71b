//! Anything at all done to a file: read or refused without a panic, and nothing goes untold.

use gapwright::job::{Job, file};
use proptest::prelude::*;

use super::{EXAMPLES, assessed, headline};

/// What befalls a slice of a file.
#[derive(Debug, Clone)]
enum Mishap {
    Replaced(String),
    Deleted,
    Doubled,
}

fn mishap() -> impl Strategy<Value = Mishap> {
    prop_oneof![
        2 => "[ -~]{0,12}".prop_map(Mishap::Replaced),
        1 => "[-0-9.]{1,6}|1e308|NaN|None|\"900 m\"|[(){}\\[\\],\"]".prop_map(Mishap::Replaced),
        1 => Just(Mishap::Deleted),
        1 => Just(Mishap::Doubled),
    ]
}

/// `text` after a mishap to `length` characters at the part `at` of it.
fn mutated(text: &str, at: f64, length: usize, mishap: &Mishap) -> String {
    let characters: Vec<char> = text.chars().collect();
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        clippy::cast_precision_loss,
        reason = "an index into a short text"
    )]
    let from = (at * characters.len() as f64) as usize;
    let to = (from + length).min(characters.len());
    let slice: String = characters[from..to].iter().collect();
    let put = match mishap {
        Mishap::Replaced(with) => with.clone(),
        Mishap::Deleted => String::new(),
        Mishap::Doubled => slice.repeat(2),
    };
    let part = |range: &[char]| range.iter().collect::<String>();
    part(&characters[..from]) + &put + &part(&characters[to..])
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 150, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_mishap_panics_or_goes_untold(
        example in 0..3_usize,
        at in 0.0..1.0_f64,
        length in prop_oneof![0..4_usize, 0..60_usize],
        mishap in mishap(),
    ) {
        let text = mutated(EXAMPLES[example].1, at, length, &mishap);
        let Ok(loaded) = file::read(&text) else { return Ok(()) };
        let lenient =
            ron::Options::default().with_default_extension(ron::extensions::Extensions::IMPLICIT_SOME);
        let plainly_read = lenient.from_str::<Job>(&text);
        let untold = loaded.problems.is_empty() && loaded.job.unknown.is_empty();
        prop_assert_eq!(untold, plainly_read.is_ok(), "{}", text);
        let found = assessed(&loaded.job);
        prop_assert_eq!(found.layouts.len(), loaded.job.surfaces.len());
        prop_assert!(!headline(&found).is_empty());
    }
}
