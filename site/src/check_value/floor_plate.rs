//! The parts of a block of floors that compute in other units or ask the solver: Army tables, base plates, rigid bases.

use serde_json::Value as Json;
use steadfoot::base_reactions::{BaseLoad, Foot, Supports};
use steadfoot::calc::{Kind, Sheet, StepId, System};
use steadfoot::geometry::{Point, Size};
use steadfoot::rules::floor::army::ArmySlab;
use steadfoot::rules::floor::base_plate::{BasePlate, Column, Rods};

use super::run_floor::Ask;

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
