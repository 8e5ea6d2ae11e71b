//! The catalog: everything a job draws on that is not the job's own, each value with its source.

use std::sync::{Arc, LazyLock};

use schemars::JsonSchema;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};

use crate::air::{Household, Station};
use crate::belief::{CausePriors, Mark, Priors};
use crate::joint::{BeadLay, Bonding, Coating, Films, Sealant};
use crate::named::{Named, find, is_trade_name};
use crate::ready::StackFigures;
use crate::repair::{
    Capability, Caution, Condition, Material, MethodId, Outcome, Paint, Plan, RepairMethod, Task,
};
use crate::surface::{BoardSize, BoardSpec, Finish};
use crate::wood::Species;

/// Boards under a name.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename = "ShelfBoard")]
pub struct CatalogBoard {
    /// The name.
    pub name: String,
    /// The boards.
    pub board: BoardSpec,
}

/// Boards go by their name.
impl Named for CatalogBoard {
    fn id(&self) -> &str {
        ""
    }
    fn name(&self) -> &str {
        &self.name
    }
    fn aliases(&self) -> &[String] {
        &[]
    }
}

/// Species, climates, sealants, paints, tasks, methods, materials, marks and cautions.
#[derive(Debug, Clone, PartialEq)]
pub struct Catalog {
    /// Species of wood.
    pub species: Vec<Species>,
    /// Boards under a name; none come with the program.
    pub boards: Vec<CatalogBoard>,
    /// Common sizes of boards.
    pub sizes: Vec<BoardSize>,
    /// Places with their typical year.
    pub stations: Vec<Station>,
    /// What stands for what people know of a room.
    pub household: Household,
    /// How far each coating lets moisture through.
    pub finishes: Vec<Coating>,
    /// The air films on face and back.
    pub films: Films,
    /// Sealants.
    pub sealants: Vec<Sealant>,
    /// What a bead takes beyond its class.
    pub capability: Capability,
    /// Primers and paints.
    pub paints: Vec<Paint>,
    /// Tasks.
    pub tasks: Vec<Task>,
    /// Methods.
    pub methods: Vec<RepairMethod>,
    /// What changes the tasks' times.
    pub conditions: Vec<Condition>,
    /// Other materials.
    pub materials: Vec<Material>,
    /// Moisture marks on lumber, driest first.
    pub marks: Vec<Mark>,
    /// How often each cause is expected before anything is measured.
    pub causes: CausePriors,
    /// What is expected of everything else that nobody measured.
    pub priors: Priors,
    /// What is expected of stacks and deliveries.
    pub stacks: StackFigures,
    /// What holds boards to the framing and to each other.
    pub bonding: Bonding,
    /// Cautions.
    pub cautions: Vec<Caution>,
    /// Trials of every way's failures over the warranty, and of its cost. 10 000 tell a chance to one
    /// per cent.
    pub trials: u32,
}

/// Reads one asset. The assets are part of the program and read in every test, so a broken one
/// cannot ship.
fn asset<T: DeserializeOwned>(name: &str, text: &str) -> T {
    ron::from_str(text).unwrap_or_else(|error| panic!("assets/{name}: {error}"))
}

static BUILT_IN: LazyLock<Arc<Catalog>> = LazyLock::new(|| {
    #[derive(Deserialize)]
    struct SpeciesFile {
        species: Vec<Species>,
    }
    #[derive(Deserialize)]
    struct StationFile {
        stations: Vec<Station>,
    }
    #[derive(Deserialize)]
    struct FinishFile {
        films: Films,
        finishes: Vec<Coating>,
    }
    #[derive(Deserialize)]
    struct SealantFile {
        capability: Capability,
        sealants: Vec<Sealant>,
    }
    #[derive(Deserialize)]
    struct PaintFile {
        paints: Vec<Paint>,
    }
    #[derive(Deserialize)]
    struct TaskFile {
        tasks: Vec<Task>,
        conditions: Vec<Condition>,
        methods: Vec<RepairMethod>,
    }
    #[derive(Deserialize)]
    struct MaterialFile {
        materials: Vec<Material>,
    }
    #[derive(Deserialize)]
    struct MarkFile {
        marks: Vec<Mark>,
    }
    #[derive(Deserialize)]
    struct SizeFile {
        sizes: Vec<BoardSize>,
    }
    #[derive(Deserialize)]
    struct CautionFile {
        cautions: Vec<Caution>,
    }
    macro_rules! read {
        ($file:literal) => {
            asset($file, include_str!(concat!("../../assets/", $file)))
        };
    }
    let species: SpeciesFile = read!("species.ron");
    let stations: StationFile = read!("stations.ron");
    let finishes: FinishFile = read!("finishes.ron");
    let sealants: SealantFile = read!("sealants.ron");
    let paints: PaintFile = read!("paints.ron");
    let work: TaskFile = read!("tasks.ron");
    let materials: MaterialFile = read!("materials.ron");
    let marks: MarkFile = read!("marks.ron");
    let sizes: SizeFile = read!("sizes.ron");
    let cautions: CautionFile = read!("cautions.ron");
    Arc::new(Catalog {
        species: species.species,
        boards: Vec::new(),
        sizes: sizes.sizes,
        stations: stations.stations,
        household: read!("household.ron"),
        finishes: finishes.finishes,
        films: finishes.films,
        sealants: sealants.sealants,
        capability: sealants.capability,
        paints: paints.paints,
        tasks: work.tasks,
        conditions: work.conditions,
        methods: work.methods,
        materials: materials.materials,
        marks: marks.marks,
        causes: read!("causes.ron"),
        priors: read!("belief.ron"),
        stacks: read!("stacks.ron"),
        bonding: read!("bonding.ron"),
        cautions: cautions.cautions,
        trials: 10_000,
    })
});

impl Catalog {
    /// The shelf that comes with the program.
    pub fn built_in() -> &'static Arc<Self> {
        &BUILT_IN
    }

    /// The species that a job calls so: by its id, its name, or a name it had.
    pub fn species(&self, called: &str) -> Option<&Species> {
        find(&self.species, called)
    }

    /// The species that are sold under a trade name.
    pub fn species_sold_as(&self, name: &str) -> Vec<&Species> {
        self.species.iter().filter(|species| is_trade_name(&species.sold_as, name)).collect()
    }

    /// The place that a job calls so.
    pub fn station(&self, called: &str) -> Option<&Station> {
        find(&self.stations, called)
    }

    /// The sealant that a job calls so.
    pub fn sealant(&self, called: &str) -> Option<&Sealant> {
        find(&self.sealants, called)
    }

    /// How the plan's method lays its bead; one that lays none is taken as if it bridged the joints.
    pub fn lay(&self, plan: &Plan) -> BeadLay {
        match self.method(plan.chosen).map(|method| method.outcome) {
            Some(Outcome::Bead { lay, .. }) => lay,
            _ => BeadLay::Bridge,
        }
    }

    /// The primer or paint that a job calls so.
    pub fn paint(&self, called: &str) -> Option<&Paint> {
        find(&self.paints, called)
    }

    /// What this finish lets through.
    pub fn coating(&self, finish: Finish) -> Option<&Coating> {
        self.finishes.iter().find(|coating| coating.finish == finish)
    }

    /// The method of this id.
    pub fn method(&self, id: MethodId) -> Option<&RepairMethod> {
        self.methods.iter().find(|method| method.id == id)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::repair::Step;

    #[test]
    fn every_step_has_its_task_and_every_finish_its_coating() {
        let catalog = Catalog::built_in();
        for method in &catalog.methods {
            for step in &method.steps {
                if let Step::Do(id) | Step::Coats(id) = step {
                    assert!(catalog.tasks.iter().any(|task| task.id == *id), "{id}");
                }
            }
        }
        for id in MethodId::ALL {
            assert!(catalog.method(id).is_some());
        }
        for finish in [Finish::Bare, Finish::LatexFace, Finish::LatexBackPrimed, Finish::OilFace] {
            assert!(catalog.coating(finish).is_some());
        }
        assert!(catalog.tasks.iter().all(|task| task.minutes.is_in_order() && task.batch > 0.0));
    }

    #[test]
    fn every_species_moves_and_says_why() {
        let flat = crate::measure::Angle::ZERO;
        for species in &Catalog::built_in().species {
            assert!((0.0005..0.006).contains(&species.coefficient(flat)), "{}", species.name);
            assert!((2.0..15.0).contains(&species.total_shrinkage(flat)), "{}", species.name);
            assert!(
                species.source().is_some_and(|from| from.source.contains("Handbook")),
                "{}",
                species.name
            );
        }
    }
}
