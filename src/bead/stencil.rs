//! Interpolation along one axis of a table.

/// Nodes to interpolate between, with their weights.
pub(super) type Stencil = [(usize, f64); 4];

/// The four nodes around `x` (or all, of fewer) and the weights of the polynomial through them, in the
/// measure `scale` of the axis. `None` outside of the nodes.
pub(super) fn stencil(nodes: &[f64], x: f64, scale: impl Fn(f64) -> f64) -> Option<Stencil> {
    let (first, last) = (nodes.first()?, nodes.last()?);
    let slack = 1e-9 * last;
    if x < first - slack || x > last + slack {
        return None;
    }
    let after = nodes.partition_point(|node| *node < x);
    let count = nodes.len().min(4);
    let start = after.saturating_sub(2).min(nodes.len() - count);
    let at: Vec<f64> = nodes[start..start + count].iter().map(|node| scale(*node)).collect();
    Some(weights(start, &at, scale(x.clamp(*first, *last))))
}

/// [`stencil`] between the nodes that are kept, as places among these; beyond them, the nearest.
pub(super) fn picked(nodes: &[f64], kept: &[usize], x: f64, scale: impl Fn(f64) -> f64) -> Stencil {
    let kept: Vec<f64> = kept.iter().map(|at| nodes[*at]).collect();
    let within = |first: f64, last: f64| stencil(&kept, x.clamp(first, last), scale);
    let found = kept.first().zip(kept.last()).and_then(|(first, last)| within(*first, *last));
    found.unwrap_or([(0, 0.0); 4])
}

fn weights(start: usize, at: &[f64], x: f64) -> Stencil {
    std::array::from_fn(|i| {
        if i >= at.len() {
            return (start, 0.0);
        }
        let others = (0..at.len()).filter(|&j| j != i);
        (start + i, others.map(|j| (x - at[j]) / (at[i] - at[j])).product())
    })
}
