//! Lines of the buying list that files name by the words they had.
//!
//! A price of the user's own and the pieces that were used go by the id of their line: the sealant's or the
//! paint's id, a comma, and the pack. Before sealants and paints had ids, their names stood there.

use std::collections::BTreeMap;

use super::catalog::Catalog;
use super::document::Job;
use crate::named::Named;

/// What stands between the entry and its pack.
const COMMA: &str = ", ";

/// Puts the present ids of lines in place of those made of names. A line that has its id already stays as it
/// is; the same line under a name is then left where it is, of no effect.
pub(super) fn renew(job: &mut Job, catalog: &Catalog) {
    renew_keys(&mut job.plan.own_prices, catalog);
    renew_keys(&mut job.done.pieces, catalog);
}

fn renew_keys<T>(lines: &mut BTreeMap<String, T>, catalog: &Catalog) {
    let renewed: Vec<(String, String)> =
        lines.keys().filter_map(|line| Some((line.clone(), present(line, catalog)?))).collect();
    for (old, new) in renewed {
        if !lines.contains_key(&new)
            && let Some(value) = lines.remove(&old)
        {
            lines.insert(new, value);
        }
    }
}

/// The id of a line that is named by a name its entry has or had; `None` if it is not.
fn present(line: &str, catalog: &Catalog) -> Option<String> {
    let sealants = catalog.sealants.iter().filter_map(|sealant| of_entry(line, sealant));
    let paints = catalog.paints.iter().filter_map(|paint| of_entry(line, paint));
    // Names have commas too: the longest that fits is meant.
    let (_, id) = sealants.chain(paints).max_by_key(|(length, _)| *length)?;
    (id != line).then_some(id)
}

/// How much of a line is a name of this entry, and the line's present id.
fn of_entry<T: Named>(line: &str, entry: &T) -> Option<(usize, String)> {
    let pack = |name: &str| line.strip_prefix(name)?.strip_prefix(COMMA);
    let (length, pack) = entry.calls().filter_map(|name| Some((name.len(), pack(name)?))).max()?;
    Some((length, format!("{}{COMMA}{pack}", entry.key())))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::Money;

    #[test]
    fn lines_by_name_get_their_id_and_others_stay() {
        let mut catalog = Catalog::clone(Catalog::built_in());
        let mut job = Job::default();
        for line in [
            "Hybrid, paintable, class 50, cartridge",
            "Interior acrylic satin, sprayed, 3.785 l",
            "interior-primer, 0.946 l",
            "My own, tube",
            "pine, 3658 mm",
        ] {
            job.plan.own_prices.insert(line.into(), Money::cents(100));
            job.done.pieces.insert(line.into(), 3);
        }
        // Reworded once more, the names of today still count.
        for sealant in &mut catalog.sealants {
            sealant.name = format!("New words for {}", sealant.id);
        }
        renew(&mut job, &catalog);
        let expected = [
            "My own, tube",
            "hybrid-50, cartridge",
            "interior-primer, 0.946 l",
            "interior-satin-sprayed, 3.785 l",
            "pine, 3658 mm",
        ];
        assert_eq!(job.plan.own_prices.keys().collect::<Vec<_>>(), expected);
        assert_eq!(job.done.pieces.keys().collect::<Vec<_>>(), expected);
    }

    #[test]
    fn a_price_under_the_id_goes_before_one_under_the_name() {
        let mut job = Job::default();
        let (old, new) = ("Hybrid, paintable, class 50, cartridge", "hybrid-50, cartridge");
        job.plan.own_prices.insert(old.into(), Money::cents(100));
        job.plan.own_prices.insert(new.into(), Money::cents(200));
        renew(&mut job, Catalog::built_in());
        assert_eq!(job.plan.own_prices[new], Money::cents(200));
    }
}
