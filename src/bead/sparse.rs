//! A symmetric sparse system whose pattern stays while its values change: ordered and analyzed once,
//! then factored as L D Lᵀ again and again.

use faer::dyn_stack::{MemBuffer, MemStack, StackReq};
use faer::linalg::cholesky::ldlt::factor::LdltRegularization;
use faer::sparse::linalg::SupernodalThreshold;
use faer::sparse::linalg::cholesky::{
    CholeskySymbolicParams, SymbolicCholesky, SymbolicCholeskyRaw, SymmetricOrdering,
    factorize_symbolic_cholesky, simplicial, supernodal,
};
use faer::sparse::{SparseColMatRef, SymbolicSparseColMat};
use faer::{Conj, MatMut, Par, Side};

/// Marks an unknown that is prescribed and so has no equation, and a pair with such an unknown.
pub(super) const NONE: usize = usize::MAX;

/// Why a system could not be solved.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Singular;

/// The system: pattern, values, factors.
pub(super) struct Sparse {
    pattern: SymbolicSparseColMat<usize>,
    symbolic: SymbolicCholesky<usize>,
    values: Vec<f64>,
    factors: Vec<f64>,
    memory: MemBuffer,
    /// For each block, where the pairs of its upper triangle go, row by row.
    places: Vec<Vec<usize>>,
}

impl Sparse {
    /// Sets up a system of `size` equations out of square blocks. A block lists the equation of each
    /// of its unknowns, or [`NONE`].
    ///
    /// # Errors
    /// If the pattern cannot be analyzed, which means that memory has run out.
    pub fn new<const N: usize>(size: usize, blocks: &[[usize; N]]) -> Result<Self, Singular> {
        let mut columns: Vec<Vec<usize>> = vec![Vec::new(); size];
        for block in blocks {
            for (a, &one) in block.iter().enumerate() {
                for &other in &block[a..] {
                    if one != NONE && other != NONE {
                        columns[one.max(other)].push(one.min(other));
                    }
                }
            }
        }
        let mut starts = vec![0];
        let mut row_indices = Vec::new();
        for column in &mut columns {
            column.sort_unstable();
            column.dedup();
            row_indices.extend_from_slice(column);
            starts.push(row_indices.len());
        }
        let place = |one: usize, other: usize| {
            if one == NONE || other == NONE {
                return NONE;
            }
            let (row, column) = (one.min(other), one.max(other));
            let found = columns[column].binary_search(&row);
            found.map_or(NONE, |at| starts[column] + at)
        };
        let places = blocks.iter().map(|block| {
            let pairs = (0..N).flat_map(|a| (a..N).map(move |b| (a, b)));
            pairs.map(|(a, b)| place(block[a], block[b])).collect()
        });
        let places = places.collect();
        let values = vec![0.0; row_indices.len()];
        let pattern = SymbolicSparseColMat::new_checked(size, size, starts, None, row_indices);
        let symbolic = factorize_symbolic_cholesky(
            pattern.as_ref(),
            Side::Upper,
            SymmetricOrdering::Amd,
            // Blocks of columns are the faster way from some hundred equations on.
            CholeskySymbolicParams {
                supernodal_flop_ratio_threshold: SupernodalThreshold::FORCE_SUPERNODAL,
                ..Default::default()
            },
        );
        let symbolic = symbolic.map_err(|_error| Singular)?;
        let needed = StackReq::any_of(&[
            symbolic.factorize_numeric_ldlt_scratch::<f64>(Par::Seq, faer::Spec::default()),
            symbolic.solve_in_place_scratch::<f64>(1, Par::Seq),
        ]);
        let memory = MemBuffer::try_new(needed).map_err(|_error| Singular)?;
        let factors = vec![0.0; symbolic.len_val()];
        Ok(Self { pattern, symbolic, values, factors, memory, places })
    }

    /// Sets all values to zero.
    pub fn clear(&mut self) {
        self.values.fill(0.0);
    }

    /// Adds a block's values; only its upper triangle is read.
    pub fn add<const N: usize>(&mut self, block: usize, entries: &[[f64; N]; N]) {
        let mut places = self.places[block].iter();
        for (a, row) in entries.iter().enumerate() {
            for (entry, &place) in row[a..].iter().zip(&mut places) {
                if place != NONE {
                    self.values[place] += entry;
                }
            }
        }
    }

    /// Solves for the right-hand side in place. Returns how many pivots are negative: how many
    /// directions there are in which the matrix is not positive.
    ///
    /// # Errors
    /// If a pivot is zero or the solution is not finite.
    pub fn solve(&mut self, right: &mut [f64]) -> Result<usize, Singular> {
        let stack = MemStack::new(&mut self.memory);
        let matrix = SparseColMatRef::new(self.pattern.as_ref(), &self.values);
        let factors = self.symbolic.factorize_numeric_ldlt(
            &mut self.factors,
            matrix,
            Side::Upper,
            LdltRegularization::default(),
            Par::Seq,
            stack,
            faer::Spec::default(),
        );
        let factors = factors.map_err(|_error| Singular)?;
        let rows = right.len();
        let rhs = MatMut::from_column_major_slice_mut(right, rows, 1);
        factors.solve_in_place_with_conj(Conj::No, rhs, Par::Seq, stack);
        let negative = negative_pivots(&self.symbolic, &self.factors);
        if right.iter().all(|value| value.is_finite()) { Ok(negative) } else { Err(Singular) }
    }
}

fn negative_pivots(symbolic: &SymbolicCholesky<usize>, values: &[f64]) -> usize {
    match symbolic.raw() {
        SymbolicCholeskyRaw::Simplicial(symbolic) => {
            let factors = simplicial::SimplicialLdltRef::new(symbolic, values);
            // The pivot stands first in its column.
            let starts = &symbolic.col_ptr()[..symbolic.ncols()];
            starts.iter().filter(|&&start| factors.values()[start] < 0.0).count()
        }
        SymbolicCholeskyRaw::Supernodal(symbolic) => {
            let factors = supernodal::SupernodalLdltRef::new(symbolic, values);
            let of = |node: usize| {
                let block = factors.supernode(node).val();
                (0..block.ncols()).filter(|&at| block[(at, at)] < 0.0).count()
            };
            (0..symbolic.n_supernodes()).map(of).sum()
        }
    }
}
