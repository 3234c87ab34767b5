//! The parts of a block of floors that compute in other units or ask the solver: Army tables, base plates, rigid bases.

use serde_json::Value as Json;
use steadfoot::base_reactions::{Anchor, BaseLoad, Foot, Horizontal, Supports, pivots, shear_shares};
use steadfoot::calc::{Kind, Sheet, StepId, System};
use steadfoot::geometry::{Hull, Point, Rectangle, Size};
use steadfoot::rules::floor::army::ArmySlab;
use steadfoot::rules::floor::base_plate::{BasePlate, Column, Rods};

use super::floor_ask::Ask;
use super::quantity;

/// Stationary and wall loads of the Army manual.
pub fn army(ask: &Ask, sheet: &mut Sheet) -> Result<Result<(), StepId>, String> {
    let us = |name: &str, kind: Kind| ask.in_system(name, kind, System::Us);
    let slab = ArmySlab {
        flexural_psi: us("flexural", Kind::Stress)?,
        thickness_in: us("thickness", Kind::Length)?,
        subgrade_pci: us("subgrade", Kind::Subgrade)?,
    };
    match ask.word("table") {
        "stationary" => Ok(slab.stationary_psi(sheet).map(|_| ())),
        "wall" => Ok(slab.wall_by_table(sheet).map(|_| ())),
        _ => {
            slab.wall_by_formula(sheet);
            Ok(Ok(()))
        }
    }
}

/// Base plates, three ways and under compression alone.
pub fn base_plate(ask: &Ask, how: &str, system: System, sheet: &mut Sheet) -> Result<Result<(), StepId>, String> {
    let of = |name: &str, kind: Kind| ask.in_system(name, kind, system);
    let plate = BasePlate {
        load: of("load", Kind::Force)?,
        moment: of("moment", Kind::Moment)?,
        length: of("length", Kind::Length)?,
        width: of("width", Kind::Length)?,
    };
    let column = || -> Result<Column, String> {
        Ok(Column {
            depth: of("column_depth", Kind::Length)?,
            flange: of("column_flange", Kind::Length)?,
            yields: of("yield", Kind::Stress)?,
        })
    };
    match how {
        "plate-rectangular" => {
            let pressure = of("pressure", Kind::Stress)?;
            let block = match plate.rectangular(pressure, of("rods", Kind::Length)?, sheet) {
                Ok(block) => block,
                Err(reason) => return Ok(Err(reason)),
            };
            if ask.input["column_depth"] != Json::Null {
                plate.thickness(&column()?, &block, pressure, of("flange_to_rods", Kind::Length)?, sheet);
            }
            Ok(Ok(()))
        }
        "plate-concentric" => {
            plate.concentric(&column()?, of("strength", Kind::Stress)?, sheet);
            Ok(Ok(()))
        }
        "plate-triangular" => {
            let rods = [of("rods_to_edge", Kind::Length)?, of("rods_to_middle", Kind::Length)?];
            Ok(plate.triangular(of("pressure", Kind::Stress)?, rods, sheet).map(|_| ()))
        }
        _ => {
            let rods = Rods {
                modular_ratio: ask.of("modular_ratio", Kind::Number)?,
                area: of("rod_area", Kind::Area)?,
                from_middle: of("rods", Kind::Length)?,
            };
            Ok(plate.elastic(&rods, sheet).map(|_| ()))
        }
    }
}

/// The rigid rectangular base by the solver of base reactions: highest pressure over the mean, pressed part.
pub fn solved(x: f64, y: f64) -> Result<[f64; 2], String> {
    let side_mm = 1000.0;
    let half = Size::new(side_mm / 2.0, side_mm / 2.0);
    let foot = Foot { at: Point::default(), half, stiffness_n_per_mm: 1e6 };
    let load = BaseLoad { down_n: 1e6, moment_x_nmm: 1e6 * x * side_mm, moment_y_nmm: 1e6 * y * side_mm };
    let settled = Supports::new(&[foot], &[]).settle(&load).map_err(|why| format!("{why:?}"))?;
    let foot = &settled.feet[0];
    Ok([foot.peak_pressure_mpa / (1e6 / (side_mm * side_mm)), foot.contact_fraction])
}

/// A group of bolts in shear under an eccentric force along y: largest and smallest shear, sum of squared distances.
pub fn bolts_in_shear(ask: &Ask) -> Result<[f64; 3], String> {
    let bolts: Vec<(Point, f64)> = places(ask)?.into_iter().map(|at| (at, 1.0)).collect();
    let away = ask.of("away", Kind::Length)?;
    let force = Horizontal { x_n: 0.0, y_n: ask.of("load", Kind::Force)?, at: Point::new(away, 0.0) };
    let shares = shear_shares(&bolts, &force).ok_or("the bolts stand on one point")?;
    let sizes = shares.shares.iter().map(|share| share.size_n());
    let most = sizes.clone().fold(0.0, f64::max);
    Ok([most, sizes.fold(f64::INFINITY, f64::min), shares.polar])
}

/// The pull of the farthest bolt of a group that pivots about an edge, under a load beside that edge.
pub fn bolts_about_an_edge(ask: &Ask) -> Result<f64, String> {
    let anchors: Vec<Anchor> = places(ask)?.into_iter().map(|at| Anchor { at, stiffness_n_per_mm: 1e5 }).collect();
    let (edge, far) = (ask.of("edge", Kind::Length)?, 1e5);
    let plan = Rectangle { left_mm: -far, right_mm: edge, front_mm: -far, rear_mm: far };
    let (load_n, away) = (ask.of("load", Kind::Force)?, ask.of("away", Kind::Length)?);
    let load = BaseLoad { down_n: load_n, moment_x_nmm: load_n * away, moment_y_nmm: 0.0 };
    let pivots = pivots(&Hull::new(&plan.corners()), &anchors, &load);
    Ok(pivots.iter().map(|pivot| pivot.tension_max_n).fold(0.0, f64::max))
}

fn places(ask: &Ask) -> Result<Vec<Point>, String> {
    if let Some(count) = ask.input["on_circle"].as_u64() {
        let radius = ask.of("radius", Kind::Length)?;
        let at = |place: u64| core::f64::consts::TAU * place as f64 / count as f64;
        return Ok((0..count).map(|place| Point::new(radius * at(place).cos(), radius * at(place).sin())).collect());
    }
    let list = ask.input["bolts"].as_array().ok_or("bolts: a list of places")?;
    list.iter().map(|at| Ok(Point::new(quantity(&at[0], Kind::Length)?, quantity(&at[1], Kind::Length)?))).collect()
}
