//! Boards that slide along each other, along the joint.
//!
//! In an incompressible neo-Hookean solid a displacement along the joint changes neither the volume
//! nor the forces across it: it obeys Laplace's equation over the section as laid, whatever the
//! opening, and only adds its gradient to the strain.

use super::mesh::Extent;
use super::model::Model;
use super::section::Behind;
use super::sparse::{NONE, Singular, Sparse};

/// The displacement along the joint at each node for a unit slide of the right board; and the force
/// along the joint for it, over the shear modulus, per unit length of bead.
#[derive(Debug, Clone)]
pub(super) struct Slide {
    pub along: Vec<f64>,
    pub force: f64,
}

/// Solves for a unit slide.
///
/// # Errors
/// If the system cannot be set up or solved.
pub(super) fn unit_slide(model: &Model) -> Result<Slide, Singular> {
    let mesh = &model.mesh;
    let mut given: Vec<Option<f64>> = vec![None; mesh.nodes.len()];
    let (left, right) = match model.extent {
        // In the middle plane of a half model the slide is none, by antisymmetry.
        Extent::RightHalf => (0.0, 0.5),
        Extent::Whole => (0.0, 1.0),
    };
    if model.behind == Behind::Tongue {
        mesh.bonded_back().for_each(|node| given[node] = Some(0.0));
    }
    mesh.left().for_each(|node| given[node] = Some(left));
    mesh.right().for_each(|node| given[node] = Some(right));
    let mut size = 0;
    let equations: Vec<usize> = given
        .iter()
        .map(|given| {
            let equation = if given.is_some() { NONE } else { size };
            size += usize::from(given.is_none());
            equation
        })
        .collect();
    let blocks: Vec<[usize; 9]> = mesh.elements.iter().map(|nodes| nodes.map(|n| equations[n])).collect();
    let mut system = Sparse::new(size, &blocks)?;
    let mut load = vec![0.0; size];
    for (e, element) in model.elements.iter().enumerate() {
        system.add(e, &element.laplace);
        for (a, &equation) in blocks[e].iter().enumerate() {
            if equation != NONE {
                let of = |b: usize| element.laplace[a][b] * given[mesh.elements[e][b]].unwrap_or(0.0);
                load[equation] -= (0..9).map(of).sum::<f64>();
            }
        }
    }
    system.solve(&mut load)?;
    let value = |(&equation, given): (&usize, &Option<f64>)| given.unwrap_or_else(|| load[equation]);
    let along: Vec<f64> = equations.iter().zip(&given).map(value).collect();
    // Twice the energy is the work of the force at the right board.
    let mut work = 0.0;
    for (element, nodes) in model.elements.iter().zip(&mesh.elements) {
        for (a, row) in element.laplace.iter().enumerate() {
            work += row.iter().zip(nodes).map(|(l, &b)| along[nodes[a]] * l * along[b]).sum::<f64>();
        }
    }
    Ok(Slide { along, force: work / right })
}
