//! What blocks of floors ask of suspended slabs and of raised floors.

use steadfoot::calc::{Kind, Sheet, StepId, System};
use steadfoot::rules::floor::raised::{PanelLoad, Rating, Rolled, three_legs_n, uniform};
use steadfoot::rules::floor::suspended::{AreaLoad, Span};

use super::floor_ask::Ask;

impl Ask<'_> {
    pub(super) fn suspended(&self, ask: &str, sheet: &mut Sheet) -> Result<Result<(), StepId>, String> {
        let weight = self.of("load", Kind::Force)?;
        let length = |name: &str| self.of(name, Kind::Length);
        let load = |footprint_mm| AreaLoad { weight_n: weight, footprint_mm };
        match ask {
            "area" => {
                let load = load([length("width")?, length("depth")?]);
                load.over_footprint_mpa(sheet);
                let pitch = [length("pitch_x")?, length("pitch_y")?];
                Ok(load.over_pitch_mpa(pitch, self.of("aisle", Kind::Pressure)?, sheet).map(|_| ()))
            }
            "span" => {
                let half_mm = length("legs")? / 2.0;
                let legs = [[-half_mm, weight / 2.0], [half_mm, weight / 2.0]];
                let span = Span {
                    span_mm: length("span")?,
                    middle_mm: length("middle")?,
                    legs: &legs,
                    across_mm: length("across")?,
                    edge_mm: if self.has("edge") { Some(length("edge")?) } else { None },
                };
                Ok(span.equivalent_mpa(sheet).map(|_| ()))
            }
            "dispersed" => {
                AreaLoad::dispersed_mpa(weight, [length("foot")?; 2], length("thickness")?, sheet);
                Ok(Ok(()))
            }
            _ => {
                let us = |name: &str| self.in_system(name, Kind::Area, System::Us);
                let weight = System::Us.from_si(weight, Kind::Force);
                AreaLoad::vendor_psi(weight, us("footprint")?, us("total")?, sheet);
                Ok(Ok(()))
            }
        }
    }

    pub(super) fn raised(&self, ask: &str, sheet: &mut Sheet) -> Result<Result<(), StepId>, String> {
        let rating = || -> Result<Rating, String> {
            Ok(if self.has("class") {
                Rating::Class {
                    class: self.of("class", Kind::Number)? as usize,
                    safety: self.of("safety", Kind::Number)?,
                }
            } else if self.has("grade") {
                Rating::Grade(self.of("grade", Kind::Number)? as usize)
            } else if self.has("ultimate") {
                Rating::Ultimate(self.of("ultimate", Kind::Force)?)
            } else {
                Rating::Given(self.of("working", Kind::Force)?)
            })
        };
        let load = || self.of("load", Kind::Force);
        match ask {
            "panel" => {
                let panel = PanelLoad { leg_n: load()?, legs: self.of("legs", Kind::Number)? };
                panel.on_panel(&rating()?, sheet);
                let given = if self.has("pedestal") { Some(self.of("pedestal", Kind::Force)?) } else { None };
                panel.on_pedestal(given, &rating()?, sheet);
            }
            "rolled" => {
                let rolled = Rolled {
                    weight_n: load()?,
                    wheels: self.of("wheels", Kind::Number)?,
                    dynamic: self.of("dynamic", Kind::Number)?,
                };
                rolled.on_panel(self.of("rolling", Kind::Force)?, sheet);
            }
            "three-legs" => {
                three_legs_n(load()?, sheet);
            }
            _ => {
                let footprint = [self.of("width", Kind::Length)?, self.of("depth", Kind::Length)?];
                let row = steadfoot::rules::floor::raised::Q_GIVEN;
                uniform(load()?, footprint, (row, self.of("uniform", Kind::Pressure)?), sheet);
            }
        }
        Ok(Ok(()))
    }
}
