//! What a block of floors asks: its quantities, read by their names.

use serde_json::Value as Json;
use steadfoot::calc::{Kind, System};
use steadfoot::rules::floor::perimeter::LoadedRectangle;
use steadfoot::rules::floor::slab_on_ground::{Position, SlabOnGround};

use super::quantity;

/// The input of a block.
pub(super) struct Ask<'a> {
    pub(super) input: &'a Json,
}

impl Ask<'_> {
    pub(super) fn of(&self, name: &str, kind: Kind) -> Result<f64, String> {
        quantity(&self.input[name], kind).map_err(|problem| format!("{name}: {problem}"))
    }

    /// The same in base units of the system.
    pub(super) fn in_system(&self, name: &str, kind: Kind, system: System) -> Result<f64, String> {
        Ok(system.from_si(self.of(name, kind)?, kind))
    }

    pub(super) fn word(&self, name: &str) -> &str {
        self.input[name].as_str().unwrap_or("")
    }

    pub(super) fn has(&self, name: &str) -> bool {
        !self.input[name].is_null()
    }

    pub(super) fn slab(&self) -> Result<SlabOnGround, String> {
        Ok(SlabOnGround {
            modulus_mpa: self.of("modulus", Kind::Stress)?,
            poisson: self.of("poisson", Kind::Number)?,
            thickness_mm: self.of("thickness", Kind::Length)?,
            subgrade_n_per_mm3: self.of("subgrade", Kind::Subgrade)?,
        })
    }

    pub(super) fn area_mm2(&self) -> Result<f64, String> {
        if self.has("contact_radius") {
            let radius = self.of("contact_radius", Kind::Length)?;
            return Ok(core::f64::consts::PI * radius * radius);
        }
        self.of("area", Kind::Area)
    }

    pub(super) fn position(&self) -> Position {
        match self.word("position") {
            "edge" => Position::Edge,
            "corner" => Position::Corner,
            _ => Position::Interior,
        }
    }

    pub(super) fn rectangle(&self) -> Result<LoadedRectangle, String> {
        let side = |place: usize| quantity(&self.input["size"][place], Kind::Length);
        let mut to_edges = [f64::INFINITY; 4];
        for (place, edge) in to_edges.iter_mut().enumerate() {
            if !self.input["edges"][place].is_null() {
                *edge = quantity(&self.input["edges"][place], Kind::Length)?;
            }
        }
        Ok(LoadedRectangle { sides: [side(0)?, side(1)?], to_edges })
    }
}
