use std::collections::BTreeMap;

use super::*;

/// Numbers from 0 to 1 that only look random.
struct Numbers(u64);

impl Numbers {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        f64::from(u32::try_from(self.0 >> 32).unwrap()) / f64::from(u32::MAX)
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }
}

const RULES: CuttingRules = CuttingRules { kerf: 0.0032, end_trim: 0.02, defects: 0.05 };
const NO_LOSS: CuttingRules = CuttingRules { kerf: 0.0, end_trim: 0.0, defects: 0.0 };

fn feet(lengths: &[(f64, i64)]) -> Vec<StockLength> {
    lengths.iter().map(|&(feet, price)| StockLength { length: feet * 0.3048, price }).collect()
}

fn lumber() -> Vec<StockLength> {
    feet(&[(8.0, 1120), (10.0, 1430), (12.0, 1700), (14.0, 2030), (16.0, 2300)])
}

fn random_pieces(seed: u64, lengths: usize, most: f64, low: f64, high: f64) -> Vec<(f64, usize)> {
    let mut numbers = Numbers(seed);
    let piece = |_| (numbers.between(low, high), to_count(numbers.between(1.0, most)));
    (0..lengths).map(piece).collect()
}

fn millimeters(length: f64) -> usize {
    to_count((length * 1e3 - 1e-6).ceil())
}

fn check(pieces: &[(f64, usize)], stock: &[StockLength], rules: &CuttingRules) -> CuttingList {
    let list = cutting_list(pieces, stock, rules).unwrap();
    let mut wanted: BTreeMap<usize, usize> = BTreeMap::new();
    for &(length, count) in pieces {
        *wanted.entry(millimeters(length)).or_default() += count;
    }
    let mut cut: BTreeMap<usize, usize> = BTreeMap::new();
    let mut buy = vec![0; stock.len()];
    for pattern in &list.patterns {
        let number: usize = pattern.pieces.iter().map(|piece| piece.1).sum();
        let length: f64 = pattern.pieces.iter().map(|&(length, count)| length * to_number(count)).sum();
        let cuts = rules.kerf * to_number(number - 1);
        let usable = stock[pattern.stock].length * (1.0 - rules.defects) - rules.end_trim;
        assert!(length + cuts <= usable + 1e-7, "{pattern:?} overruns {usable}");
        assert!((usable - length - cuts - rules.kerf).max(0.0) - pattern.offcut < 1e-4, "{pattern:?}");
        assert!(pattern.pieces.is_sorted_by(|a, b| a.0 > b.0), "{pattern:?}");
        for &(length, count) in &pattern.pieces {
            *cut.entry(millimeters(length)).or_default() += count * pattern.times;
        }
        buy[pattern.stock] += pattern.times;
    }
    assert_eq!(cut, wanted);
    assert_eq!(buy, list.buy);
    let price: f64 =
        buy.iter().zip(stock).map(|(&count, one)| to_number(count) * from_cents(one.price)).sum();
    assert_eq!(to_cents(price), list.price);
    assert!(list.bound <= price && list.bound > 0.0, "{} over {price}", list.bound);
    assert!((0.0..1.0).contains(&list.waste));
    list
}

#[test]
fn every_piece_is_cut_and_no_board_overrun() {
    for seed in 0..40 {
        let lengths = [1, 3, 12, 40][to_count(Numbers(seed).between(0.0, 3.99))];
        for (low, high) in [(0.3, 4.6), (0.3, 1.2), (1.0, 2.4), (0.01, 0.3)] {
            check(&random_pieces(seed, lengths, 9.0, low, high), &lumber(), &RULES);
        }
    }
}

#[test]
fn prices_are_near_the_bound() {
    for seed in 0..10 {
        let pieces = random_pieces(seed, 30, 12.0, 0.3, 4.6);
        let list = check(&pieces, &lumber(), &RULES);
        assert!(from_cents(list.price) <= 1.02 * list.bound, "{} over {}", list.price, list.bound);
    }
}

#[test]
fn many_lengths_are_planned_in_groups() {
    let list = check(&random_pieces(7, 1500, 3.0, 0.3, 4.6), &lumber(), &RULES);
    assert!(from_cents(list.price) <= 1.03 * list.bound, "{} over {}", list.price, list.bound);
}

#[test]
fn the_same_input_gives_the_same_list() {
    let pieces = random_pieces(3, 60, 6.0, 0.3, 4.6);
    assert_eq!(check(&pieces, &lumber(), &RULES), check(&pieces, &lumber(), &RULES));
}

#[test]
fn the_last_cut_may_fall_on_the_end() {
    let rules = CuttingRules { kerf: 0.003, ..NO_LOSS };
    let stock = |length| [StockLength { length, price: 100 }];
    assert_eq!(check(&[(0.5, 4)], &stock(2.009), &rules).buy, [1]);
    assert_eq!(check(&[(0.5, 4)], &stock(2.0089), &rules).buy, [2]);
    assert!((check(&[(0.5, 3)], &stock(2.0), &rules).patterns[0].offcut - 0.491).abs() < 1e-9);
}

#[test]
fn lengths_are_rounded_up_to_millimeters() {
    let stock = [StockLength { length: 3.0, price: 100 }];
    let list = check(&[(0.9991, 1), (0.9999, 1), (1.0, 1)], &stock, &NO_LOSS);
    assert_eq!(list.patterns[0].pieces, [(1.0, 3)]);
    assert!(list.waste.abs() < 1e-12);
    assert_eq!(check(&[(1.0001, 3)], &stock, &NO_LOSS).buy, [2]);
}

#[test]
fn the_cheapest_boards_are_bought() {
    let stock = feet(&[(8.0, 1000), (16.0, 2100), (12.0, 1400)]);
    assert_eq!(check(&[(2.4, 2)], &stock, &NO_LOSS).buy, [2, 0, 0]);
    assert_eq!(check(&[(2.4, 1), (1.2, 1)], &stock, &NO_LOSS).buy, [0, 0, 1]);
    // One price, less length.
    assert_eq!(check(&[(2.0, 1)], &feet(&[(16.0, 900), (8.0, 900)]), &NO_LOSS).buy, [0, 1]);
}

#[test]
fn a_small_list_is_known_to_be_the_cheapest() {
    let pieces = [(3.55, 1), (4.28, 1), (0.93, 1), (0.36, 1), (2.89, 1), (2.84, 1), (1.73, 1)];
    let list = check(&pieces, &feet(&[(10.0, 1381), (16.0, 2311)]), &RULES);
    assert!((list.bound - from_cents(list.price)).abs() < 1e-6, "{list:?}");
}

#[test]
fn a_piece_that_fits_no_board_is_reported() {
    let error = cutting_list(&[(1.0, 1), (4.7, 2)], &lumber(), &RULES).unwrap_err();
    let CannotCut::TooLong { piece, usable } = error else { panic!("{error}") };
    assert!((piece - 4.7).abs() < 1e-9 && (usable - (4.8768 * 0.95 - 0.02)).abs() < 1e-6);
    assert_eq!(error.to_string(), "a 4.700 m piece is longer than the 4.613 m usable of the longest board");
}

#[test]
fn stock_without_length_or_price_is_none() {
    let none = [(f64::NAN, 100), (0.0, 100), (-1.0, 100), (f64::INFINITY, 100), (3.0, 0), (3.0, -5)];
    let none = none.map(|(length, price)| StockLength { length, price });
    assert_eq!(cutting_list(&[(1.0, 1)], &[], &RULES), Err(CannotCut::NoStock));
    assert_eq!(cutting_list(&[(1.0, 1)], &none, &RULES), Err(CannotCut::NoStock));
    let some = [&none[..], &lumber()].concat();
    assert_eq!(check(&[(4.5, 1)], &some, &RULES).patterns[0].stock, 10);
}

#[test]
fn pieces_without_length_or_number_are_ignored() {
    let none = [(0.0, 3), (-1.0, 1), (f64::NAN, 2), (f64::INFINITY, 1), (2.0, 0)];
    let list = cutting_list(&none, &lumber(), &RULES).unwrap();
    assert_eq!((list.patterns.len(), list.price, list.buy), (0, 0, vec![0; 5]));
    let some = [&none[..], &[(1.0, 2)]].concat();
    assert_eq!(cutting_list(&some, &lumber(), &RULES), cutting_list(&[(1.0, 2)], &lumber(), &RULES));
}

#[test]
fn extreme_input_ends() {
    let stock = [StockLength { length: 1000.0, price: 1 }, StockLength { length: 3.0, price: i64::MAX }];
    check(&[(0.001, 1_000_000_007), (0.5, 12_345), (999.0, 3)], &stock, &NO_LOSS);
    check(&random_pieces(1, 3000, 1e6, 0.001, 3.0), &lumber(), &NO_LOSS);
    let odd = CuttingRules { kerf: f64::NAN, end_trim: -1.0, defects: f64::INFINITY };
    assert_eq!(cutting_list(&[(1.0, 5)], &lumber(), &odd), cutting_list(&[(1.0, 5)], &lumber(), &NO_LOSS));
    let all_lost = CuttingRules { defects: 2.0, ..RULES };
    assert!(matches!(cutting_list(&[(1.0, 5)], &lumber(), &all_lost), Err(CannotCut::TooLong { .. })));
}
