//! Worlds handed to another solver: what boards do in them is worked out there anew.

use std::time::Instant;

use serde::Deserialize;
use serde_json::json;

use super::air::RoomAir;
use super::draws::Draws;
use super::ensemble::{Boards, LANES};
use super::priors::Priors;
use super::world::{BuildUp, Maker, Span};
use crate::air::{HouseModel, IndoorAir, Station};
use crate::joint::{Coating, Films};
use crate::measure::Length;
use crate::surface::{Behind, Finish};

#[derive(Deserialize)]
struct Finishes {
    films: Films,
    finishes: Vec<Coating>,
}

#[derive(Deserialize)]
struct Stations {
    stations: Vec<Station>,
}

/// Days from the install.
const DAYS: i64 = 182;

/// A few hundred worlds of painted pine with the air of their rooms, and the time that many take, for
/// `tests/numbers/belief/lsoda.py`, which follows the same boards by scipy's LSODA in the same run.
#[test]
#[ignore = "measures time; run by a script"]
fn worlds_and_their_time_for_the_peer() {
    let priors: Priors = ron::from_str(include_str!("../../assets/belief.ron")).unwrap();
    let Finishes { films, finishes } = ron::from_str(include_str!("../../assets/finishes.ron")).unwrap();
    let Stations { stations } = ron::from_str(include_str!("../../assets/stations.ron")).unwrap();
    let air = IndoorAir::FromClimate { station: "chicago-il".to_owned(), house: HouseModel::default() };
    let room = RoomAir::new(&air, None, &stations, &priors).unwrap();
    for coating in &finishes {
        let build_up = BuildUp {
            thickness: Length::inches(0.75),
            density: 380.0,
            coating: coating.clone(),
            films: films.clone(),
            behind: Behind::Cavity,
        };
        // Installed in fall, when rooms change most.
        let span = Span { visit: 270 + DAYS, age: DAYS, last: 0 };
        let maker = Maker { room: &room, build_ups: &[build_up], span, priors: &priors };
        let few = worlds(&maker, if coating.finish == Finish::LatexFace { 256 } else { 64 });
        println!("WORLDS {few}");
        let draws = Draws::expected(maker.dims(), 4096, 0.5, 7);
        let times = (0..5).map(|_| {
            let start = Instant::now();
            maker.follow(&draws, 0);
            start.elapsed().as_secs_f64()
        });
        let fastest = times.fold(f64::INFINITY, f64::min);
        println!("TIME {}", json!({ "coating": coating.name, "worlds": 4096, "seconds": fastest }));
    }
}

/// So many worlds: what their boards are and the air they were in, and their moisture after the last step.
fn worlds(maker: &Maker<'_>, count: usize) -> serde_json::Value {
    let draws = Draws::expected(maker.dims(), count, 0.5, 7);
    let worlds = maker.follow(&draws, 0);
    let followed = &worlds.build_ups[0];
    let day_of_year = |day: i64| usize::try_from((maker.span.visit + day).rem_euclid(365)).unwrap();
    let steps: Vec<_> = (-DAYS..0).map(|day| (day_of_year(day), maker.step_on(day))).collect();
    let last = steps.last().unwrap().1;
    let each = (0..count).map(|world| {
        let (boards, lane): (&Boards, usize) = (&followed.boards[world / LANES], world % LANES);
        let vapor = steps.iter().map(|(_, step)| step.vapor_in(&worlds.air[world / LANES], lane));
        json!({
            "installed": followed.installed[world] / 100.0,
            "transfer": boards.transfer.map(|side| side[lane]),
            "diffusivity": boards.diffusivity[lane],
            "vapor_pa": vapor.collect::<Vec<_>>(),
            "mean": boards.mean()[lane],
            "cells": boards.profile(lane),
            "surface_humidity": boards.surface_humidity(lane),
        })
    });
    json!({
        "coating": maker.build_ups[0].coating.name,
        "thickness_m": maker.build_ups[0].thickness.to_m(),
        "density": maker.build_ups[0].density,
        "seconds": last.seconds,
        "celsius": steps.iter().map(|(day, _)| maker.room.celsius(*day)).collect::<Vec<_>>(),
        "worlds": each.collect::<Vec<_>>(),
    })
}
