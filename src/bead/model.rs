//! A meshed bead: what moves, what holds it, and the forces and stiffness of any state.

use super::contact::{Beyond, Contact};
use super::element::Element;
use super::mesh::{Extent, Fineness, Mesh};
use super::section::{Behind, Outline};
use super::sparse::{NONE, Singular, Sparse};

/// Width, in meters, of the strip at the moving board's corner in which a bead on a tongue slides on
/// it. The board's corner leaves the tongue it rests on, so a bond right up to it would be torn at
/// the first movement: force and strain there have no finite value without such a strip. Assumption:
/// an eased corner of 0.1 mm.
pub(super) const RELEASE: f64 = 0.1e-3;

/// How the right board has moved, in meters; the left one stays. In a half model both move by half.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Motion {
    /// Away from the left board.
    pub open: f64,
    /// Toward the room.
    pub lift: f64,
}

impl Motion {
    pub fn between(self, other: Self, share: f64) -> Self {
        let at = |a: f64, b: f64| a + share * (b - a);
        Self { open: at(self.open, other.open), lift: at(self.lift, other.lift) }
    }
}

/// A bead in equilibrium.
#[derive(Debug, Clone)]
pub(super) struct State {
    /// Where the right board is.
    pub motion: Motion,
    /// The nodes' places.
    pub places: Vec<[f64; 2]>,
    /// The elements' pressures over the shear modulus.
    pub pressures: Vec<[f64; 3]>,
    /// Force on the right board over the shear modulus, in meters (per unit length of bead): pulled
    /// back is negative in `open`'s direction, so its sign is that of the bead's pull.
    pub force: [f64; 2],
    /// Whether on the way here the form was not stable, so that another was taken.
    pub wrinkled: bool,
    /// Newton steps it took from the state before.
    pub iterations: usize,
}

/// No equilibrium was found beyond this state.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Stuck {
    /// The last motion that could be reached.
    pub reached: Motion,
}

/// The meshed bead.
pub(super) struct Model {
    pub outline: Outline,
    pub mesh: Mesh,
    pub elements: Vec<Element>,
    pub extent: Extent,
    pub behind: Behind,
    /// Equation of each node's two places, or none.
    pub equations: Vec<[usize; 2]>,
    /// How many equations there are.
    size: usize,
    pub system: Sparse,
    contacts: Vec<Contact>,
}

/// The forces of a state.
pub(super) struct Forces {
    /// What is out of balance in each equation.
    pub residual: Vec<f64>,
    /// The sealant's forces on all nodes.
    pub internal: Vec<[f64; 2]>,
}

impl Model {
    /// Meshes a bead whose joint will be pulled, or squeezed if `squeezed`.
    ///
    /// # Errors
    /// If the system cannot be set up: out of memory.
    pub fn new(
        outline: Outline,
        behind: Behind,
        beyond: Beyond,
        squeezed: bool,
        extent: Extent,
        fineness: Fineness,
    ) -> Result<Self, Singular> {
        // A board that closes over the tongue shears the bead off it: then the tongue only bears.
        let behind = if squeezed && behind == Behind::Tongue { Behind::Breaker } else { behind };
        let release = if behind == Behind::Tongue { RELEASE.min(0.2 * outline.half_gap) } else { 0.0 };
        let mesh = Mesh::new(&outline, extent, fineness, release);
        let elements = mesh.elements.iter().map(|nodes| Element::new(&nodes.map(|n| mesh.nodes[n])));
        let elements = elements.collect();
        let (equations, size) = number(&mesh, extent, behind);
        let blocks: Vec<[usize; 18]> = mesh
            .elements
            .iter()
            .map(|nodes| std::array::from_fn(|i| equations[nodes[i / 2]][i % 2]))
            .collect();
        let system = Sparse::new(size, &blocks)?;
        let contacts = Contact::all(&mesh, &outline, behind, beyond, squeezed);
        Ok(Self { outline, mesh, elements, extent, behind, equations, size, system, contacts })
    }

    /// The bead as laid, without stress.
    pub fn at_rest(&self) -> State {
        State {
            motion: Motion::default(),
            places: self.mesh.nodes.clone(),
            pressures: vec![[0.0; 3]; self.elements.len()],
            force: [0.0; 2],
            wrinkled: false,
            iterations: 0,
        }
    }

    /// Where the right board's nodes are moved to.
    pub fn moved(&self, motion: Motion) -> [f64; 2] {
        match self.extent {
            Extent::RightHalf => [0.5 * motion.open, 0.0],
            Extent::Whole => [motion.open, motion.lift],
        }
    }

    pub fn places_of(&self, element: usize, places: &[[f64; 2]]) -> [[f64; 2]; 9] {
        self.mesh.elements[element].map(|node| places[node])
    }

    /// Assembles the stiffness into the system, with this much more of it against any movement, and
    /// the forces; `carried` are prescribed moves, whose effect goes into the residual.
    pub fn assemble(
        &mut self,
        state: &State,
        moved: [f64; 2],
        carried: Option<&Vec<[f64; 2]>>,
        stiffening: f64,
    ) -> Forces {
        let mut residual = vec![0.0; self.size];
        let mut internal = vec![[0.0; 2]; self.mesh.nodes.len()];
        self.system.clear();
        for (e, element) in self.elements.iter().enumerate() {
            let nodes = &self.mesh.elements[e];
            let places = nodes.map(|node| state.places[node]);
            let mut out = element.condensed(&places, &state.pressures[e]);
            for contact in self.contacts.iter().filter(|contact| contact.element == e) {
                contact.add(&places, moved, &mut out.force, &mut out.stiffness);
            }
            if let Some(carried) = carried {
                let carried = nodes.map(|node| carried[node]);
                for (force, row) in out.force.iter_mut().zip(&out.stiffness) {
                    *force += row.iter().zip(carried.as_flattened()).map(|(k, u)| k * u).sum::<f64>();
                }
            }
            for i in 0..18 {
                let (node, c) = (nodes[i / 2], i % 2);
                internal[node][c] += out.internal[i];
                let equation = self.equations[node][c];
                if equation != NONE {
                    residual[equation] += out.force[i];
                }
            }
            if stiffening > 0.0 {
                for (i, row) in out.stiffness.iter_mut().enumerate() {
                    for (j, entry) in row.iter_mut().enumerate().filter(|(j, _)| i % 2 == j % 2) {
                        *entry += stiffening * element.laplace[i / 2][j / 2];
                    }
                }
            }
            self.system.add(e, &out.stiffness);
        }
        Forces { residual, internal }
    }

    pub fn force_on_board(&self, internal: &[[f64; 2]], state: &State, moved: [f64; 2]) -> [f64; 2] {
        let mut force = [0.0; 2];
        for node in self.mesh.right() {
            force[0] += internal[node][0];
            force[1] += internal[node][1];
        }
        for contact in &self.contacts {
            let places = self.places_of(contact.element, &state.places);
            let on_board = contact.add(&places, moved, &mut [0.0; 18], &mut [[0.0; 18]; 18]);
            force[0] += on_board[0];
            force[1] += on_board[1];
        }
        force
    }

    /// Energy stored in the meshed part, over the shear modulus, per unit length of bead.
    #[cfg(test)]
    pub fn energy(&self, state: &State) -> f64 {
        let of = |(e, element): (usize, &Element)| {
            element.energy(&self.places_of(e, &state.places), &state.pressures[e])
        };
        let moved = self.moved(state.motion);
        let pressed = self
            .contacts
            .iter()
            .map(|contact| contact.energy(&self.places_of(contact.element, &state.places), moved));
        self.elements.iter().enumerate().map(of).sum::<f64>() + pressed.sum::<f64>()
    }
}

/// Numbers the equations: bonded nodes have none, nodes in the plane of symmetry only that of their
/// height.
fn number(mesh: &Mesh, extent: Extent, behind: Behind) -> (Vec<[usize; 2]>, usize) {
    let mut free = vec![[true; 2]; mesh.nodes.len()];
    for node in mesh.left() {
        free[node] = [false, extent == Extent::RightHalf];
    }
    for node in mesh.right() {
        free[node] = [false; 2];
    }
    if behind == Behind::Tongue {
        for node in mesh.bonded_back() {
            free[node] = [false; 2];
        }
    }
    let mut size = 0;
    let equations = free.iter().map(|free| {
        free.map(|free| {
            let equation = if free { size } else { NONE };
            size += usize::from(free);
            equation
        })
    });
    (equations.collect(), size)
}
