//! What blocks of floors ask of a slab on the ground: a leg in the middle, at an edge, at a corner, beside others.

use steadfoot::calc::{Kind, Sheet, StepId};
use steadfoot::rules::floor::neighbours::{Neighbour, PlateOnSprings};
use steadfoot::rules::floor::slab_on_ground::{LoadedSlab, Position};
use steadfoot::rules::floor::westergaard::EdgeForm;
use steadfoot::rules::floor::yield_line::{Pattern, Residual};
use steadfoot::rules::floor::{ioannides, meyerhof, westergaard, yield_line};

use super::floor_ask::Ask;
use super::quantity;

impl Ask<'_> {
    pub(super) fn on_ground(
        &self,
        ask: &str,
        loaded: &LoadedSlab,
        sheet: &mut Sheet,
    ) -> Result<Result<(), StepId>, String> {
        let load = || self.of("load", Kind::Force);
        match ask {
            "westergaard" => match self.word("position") {
                "corner" => westergaard::corner(loaded, load()?, sheet),
                "edge" => {
                    let form = match self.word("form") {
                        "early" => EdgeForm::Early,
                        "semicircle" => EdgeForm::Semicircle,
                        _ => EdgeForm::Circle,
                    };
                    return Ok(westergaard::edge(loaded, form, load()?, sheet).map(|_| ()));
                }
                _ => westergaard::interior(loaded, load()?, sheet),
            },
            "ioannides" => ioannides::corner(loaded, load()?, sheet),
            "stiffness" => {
                loaded.stiffness_n_per_mm(self.position(), sheet);
                return Ok(Ok(()));
            }
            "meyerhof" => {
                meyerhof::collapse_n(loaded, self.of("flexural", Kind::Stress)?, self.position(), sheet);
                return Ok(Ok(()));
            }
            _ => {
                let residual = if self.has("steel") {
                    Residual::Fabric {
                        area_mm: self.of("steel", Kind::Length)?,
                        strength_mpa: self.of("yield", Kind::Stress)?,
                        depth_mm: self.of("depth", Kind::Length)?,
                    }
                } else {
                    Residual::Fibre { moment_n: self.of("residual", Kind::Force)? }
                };
                let moments = yield_line::moments(&loaded.slab, self.of("tensile", Kind::Stress)?, &residual, sheet);
                let pattern = match self.position() {
                    Position::Interior => Pattern::Interior,
                    Position::Edge => Pattern::Edge,
                    Position::Corner => Pattern::Corner,
                };
                if ask == "yield-line-group" {
                    let spacing = [self.of("x", Kind::Length)?, self.of("y", Kind::Length)?];
                    return Ok(yield_line::group_n(loaded, &moments, spacing, sheet).map(|_| ()));
                }
                if ask == "line-load" {
                    yield_line::line_and_strip(&loaded.slab, &moments, sheet);
                    return Ok(Ok(()));
                }
                yield_line::collapse_n(loaded, &moments, pattern, sheet);
                return Ok(Ok(()));
            }
        };
        Ok(Ok(()))
    }

    pub(super) fn neighbours(&self, sheet: &mut Sheet) -> Result<Result<(), StepId>, String> {
        let slab = self.slab()?;
        let loaded = match slab.loaded(self.area_mm2()?, sheet) {
            Ok(loaded) => loaded,
            Err(reason) => return Ok(Err(reason)),
        };
        let plate =
            PlateOnSprings { radius_mm: loaded.radius_mm, poisson: slab.poisson, thickness_mm: slab.thickness_mm };
        let mut list = Vec::new();
        for away in self.input["away"].as_array().ok_or("away: a list of places")? {
            let away_mm = [quantity(&away[0], Kind::Length)?, quantity(&away[1], Kind::Length)?];
            let edge = match self.has("from_edge") {
                true => Some(plate.beside_edge(self.of("from_edge", Kind::Length)?, away_mm)),
                false => None,
            };
            list.push(Neighbour { load_n: self.of("load", Kind::Force)?, away_mm, edge });
        }
        plate.stress_mpa(&list, sheet);
        westergaard::interior(&loaded, self.of("load", Kind::Force)?, sheet);
        Ok(Ok(()))
    }
}
