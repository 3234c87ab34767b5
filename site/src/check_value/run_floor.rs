//! Runs a block of floors: slabs on the ground, punching, plates, panels, wheels.
//!
//! Input: `ask` names the function, the rest are its quantities. Answers: the steps by their symbols, in SI base units of
//! their kinds, and `reason` with the value 0 where the function does not reach the case.

use serde_json::Value as Json;
use steadfoot::calc::{Kind, Part, Sheet, StepId, Subject, System};
use steadfoot::report::text_tables::text;
use steadfoot::rules::floor::bearing::LoadedArea;
use steadfoot::rules::floor::flexible_base::FlexibleBase;
use steadfoot::rules::floor::foot_plate::{FootPlate, PlateFormat, PlateShape, Spread, Stem};
use steadfoot::rules::floor::punching_aci::{SizeEffect, in_system};
use steadfoot::rules::floor::punching_en::{self, Carried};
use steadfoot::rules::floor::wheel::{Elastic, Wheel};
use steadfoot::rules::floor::{kelvin, load_factor, rectangle_base, rolling, slab_on_ground, subgrade, uneven, wheel};

use super::floor_ask::Ask;
use super::{Answers, Found, Ran, floor_plate, quantity};

/// The answers for an input with their working.
pub fn told(input: &Json) -> Result<Ran, String> {
    let ask = Ask { input };
    let system = if input["system"] == "us" { System::Us } else { System::Si };
    let mut sheet = Sheet::told();
    sheet.open(Part::Floor, Subject::Whole, None, system);
    let mut extra = Vec::new();
    if let Err(reason) = ask.run(system, &mut sheet, &mut extra)? {
        let words = text(reason).map(|row| row.what).unwrap_or_default();
        extra.push(("reason", 0.0, Kind::Number));
        if !input["reason"].as_str().is_some_and(|part| words.contains(part)) {
            return Err(format!("not covered: {words}"));
        }
    }
    let mut answers = Answers::new();
    for section in &sheet.sections {
        for step in &section.steps {
            let row = text(step.id).ok_or("a step without a text")?;
            let value = section.system.to_si(step.value, row.kind);
            answers.entry(row.symbol.to_string()).or_insert(Found { value, kind: row.kind });
        }
    }
    for (name, value, kind) in extra {
        answers.insert(name.to_string(), Found { value, kind });
    }
    Ok(Ran { answers, sections: sheet.sections })
}

type Extra = Vec<(&'static str, f64, Kind)>;

impl Ask<'_> {
    fn run(&self, system: System, sheet: &mut Sheet, extra: &mut Extra) -> Result<Result<(), StepId>, String> {
        let ask = self.word("ask");
        match ask {
            "westergaard" | "ioannides" | "stiffness" | "yield-line" | "yield-line-group" | "meyerhof"
            | "line-load" => {
                let loaded = match self.slab()?.loaded(self.area_mm2()?, sheet) {
                    Ok(loaded) => loaded,
                    Err(reason) => return Ok(Err(reason)),
                };
                self.on_ground(ask, &loaded, sheet)
            }
            "neighbours" => self.neighbours(sheet),
            "kelvin" => {
                let at = kelvin::kelvin(self.of("x", Kind::Number)?);
                extra.extend([("ker", at.ker, Kind::Number), ("kei", at.kei, Kind::Number)]);
                extra.push(("kei'", at.kei_slope, Kind::Number));
                Ok(Ok(()))
            }
            "modulus" => {
                slab_on_ground::modulus_mpa(self.of("strength", Kind::Stress)?, sheet);
                Ok(Ok(()))
            }
            "bearing-ratio" => Ok(subgrade::by_bearing_ratio(self.of("percent", Kind::Number)?, sheet).map(|_| ())),
            "soil" => {
                subgrade::by_soil(self.of("class", Kind::Number)? as usize, sheet);
                Ok(Ok(()))
            }
            "army" => floor_plate::army(self, sheet),
            "punching-aci" | "punching-plain" => {
                let slab = in_system(&self.rectangle()?, self.of("strength", Kind::Stress)?, system);
                let length = |name: &str| self.in_system(name, Kind::Length, system);
                Ok(if ask == "punching-aci" {
                    let effect = if self.has("size_effect") { SizeEffect::LeftOut } else { SizeEffect::Counted };
                    slab.reinforced(length("depth")?, effect, sheet).map(|_| ())
                } else {
                    slab.plain(length("thickness")?, sheet).map(|_| ())
                })
            }
            "punching-en" => {
                let carried = if self.has("ratio") {
                    Carried::Bars { depth_mm: self.of("depth", Kind::Length)?, ratio: self.of("ratio", Kind::Number)? }
                } else {
                    Carried::Fibres { thickness_mm: self.of("thickness", Kind::Length)? }
                };
                let strength = self.of("strength", Kind::Stress)?;
                let alpha_cc = if self.has("alpha_cc") { self.of("alpha_cc", Kind::Number)? } else { 1.0 };
                Ok(punching_en::strength_n(&self.rectangle()?, [strength, alpha_cc], carried, sheet).map(|_| ()))
            }
            "bearing-aisc" | "bearing-en" => self.bearing(ask, system, sheet),
            "foot-plate" => self.foot_plate(sheet),
            "spreader" => {
                let spread = Spread {
                    load_n: self.of("load", Kind::Force)?,
                    wanted_mpa: self.of("wanted", Kind::Pressure)?,
                    foot_mm: self.of("foot", Kind::Length)?,
                    yield_mpa: self.of("yield", Kind::Stress)?,
                };
                Ok(spread.plate_mm(self.format(), sheet).map(|_| ()))
            }
            "area" | "span" | "dispersed" | "vendor" => self.suspended(ask, sheet),
            "panel" | "rolled" | "three-legs" | "panel-uniform" => self.raised(ask, sheet),
            "wheel" | "ball" => self.wheel(ask, sheet),
            "wheel-allowed" => {
                wheel::allowed_mpa(self.of("strength", Kind::Stress)?, sheet);
                Ok(Ok(()))
            }
            "level" => {
                let weight = self.of("load", Kind::Force)?;
                rolling::level_n(weight, self.of("radius", Kind::Length)?, self.of("lever", Kind::Length)?, sheet);
                Ok(Ok(()))
            }
            "ramp" => {
                let resistance = self.of("resistance", Kind::Number)?;
                rolling::ramp_n(self.of("load", Kind::Force)?, resistance, self.of("slope", Kind::Number)?, sheet);
                Ok(Ok(()))
            }
            "plate-rectangular" | "plate-concentric" | "plate-triangular" | "plate-elastic" => {
                floor_plate::base_plate(self, ask, system, sheet)
            }
            "flexible-base" => self.flexible_base(sheet),
            "load-factor" => {
                let frame = match self.word("frame") {
                    "en-1990" => load_factor::Frame::En1990,
                    "tr-34" => load_factor::Frame::Tr34,
                    _ => load_factor::Frame::Asce7,
                };
                let class = match self.word("class") {
                    "permanent" => load_factor::LoadClass::Permanent,
                    _ => load_factor::LoadClass::Live,
                };
                let when =
                    if self.word("when") == "moving" { load_factor::When::Moving } else { load_factor::When::AtRest };
                load_factor::told(frame, class, when, sheet);
                load_factor::safety(when, sheet);
                Ok(Ok(()))
            }
            "rectangle" => {
                let at = [self.of("x", Kind::Number)?, self.of("y", Kind::Number)?];
                Ok(rectangle_base::pressed(at, sheet).map(|_| ()))
            }
            "rectangle-solved" => {
                let [peak, contact] = floor_plate::solved(self.of("x", Kind::Number)?, self.of("y", Kind::Number)?)?;
                extra.extend([("K", peak, Kind::Number), ("A_c", contact, Kind::Number)]);
                Ok(Ok(()))
            }
            "bolt-shear" => {
                let [most, least, polar] = floor_plate::bolts_in_shear(self)?;
                extra.extend([("V_max", most, Kind::Force), ("V_min", least, Kind::Force), ("J", polar, Kind::Area)]);
                Ok(Ok(()))
            }
            "bolt-pivot" => {
                extra.push(("T_far", floor_plate::bolts_about_an_edge(self)?, Kind::Force));
                Ok(Ok(()))
            }
            "four-feet" => {
                let weight = self.of("load", Kind::Force)?;
                let (xi, eta) = (self.of("xi", Kind::Number)?, self.of("eta", Kind::Number)?);
                Ok(uneven::even_n(weight, xi, eta, sheet).map(|_| ()))
            }
            "hollow" => {
                let (weight, hollow) = (self.of("load", Kind::Force)?, self.of("hollow", Kind::Length)?);
                uneven::hollow_n(weight, self.of("stiffness", Kind::Stiffness)?, hollow, sheet);
                Ok(Ok(()))
            }
            other => Err(format!("nothing of floors is called \"{other}\"")),
        }
    }

    fn bearing(&self, ask: &str, system: System, sheet: &mut Sheet) -> Result<Result<(), StepId>, String> {
        let side = |name: &str, place: usize| -> Result<f64, String> {
            let given = &self.input[name][place];
            let far = given.is_null() && name == "beyond";
            Ok(if far { f64::INFINITY } else { system.from_si(quantity(given, Kind::Length)?, Kind::Length) })
        };
        let area = LoadedArea {
            sides: [side("size", 0)?, side("size", 1)?],
            beyond: [side("beyond", 0)?, side("beyond", 1)?],
            thickness: self.in_system("thickness", Kind::Length, system)?,
            strength: self.in_system("strength", Kind::Stress, system)?,
        };
        if ask == "bearing-aisc" {
            area.aisc(sheet);
        } else {
            area.en(self.of("alpha", Kind::Number)?, sheet);
        }
        Ok(Ok(()))
    }

    fn format(&self) -> PlateFormat {
        match self.word("format") {
            "limit-states" => PlateFormat::LimitStates,
            "allowable-stress" => PlateFormat::AllowableStress,
            _ => PlateFormat::Strength,
        }
    }

    fn foot_plate(&self, sheet: &mut Sheet) -> Result<Result<(), StepId>, String> {
        let plate = FootPlate {
            side_mm: self.of("side", Kind::Length)?,
            shape: if self.word("shape") == "round" { PlateShape::Round } else { PlateShape::Square },
            stem_mm: self.of("stem", Kind::Length)?,
            stem: if self.word("held") == "swivel" { Stem::Swivel } else { Stem::Fixed },
            yield_mpa: self.of("yield", Kind::Stress)?,
        };
        Ok(plate.thickness_mm(self.of("pressure", Kind::Pressure)?, self.format(), sheet).map(|_| ()))
    }

    fn wheel(&self, ask: &str, sheet: &mut Sheet) -> Result<Result<(), StepId>, String> {
        let elastic = |modulus: &str, poisson: &str| -> Result<Elastic, String> {
            Ok(Elastic { modulus_mpa: self.of(modulus, Kind::Stress)?, poisson: self.of(poisson, Kind::Number)? })
        };
        let wheel = Wheel {
            radius_mm: self.of("radius", Kind::Length)?,
            width_mm: self.of("width", Kind::Length)?,
            tread: elastic("tread_modulus", "tread_poisson")?,
            floor: elastic("floor_modulus", "floor_poisson")?,
        };
        let load = self.of("load", Kind::Force)?;
        if ask == "ball" {
            wheel.ball(load, sheet);
            return Ok(Ok(()));
        }
        Ok(wheel.line(load, sheet).peak_mpa.map(|_| ()))
    }

    fn flexible_base(&self, sheet: &mut Sheet) -> Result<Result<(), StepId>, String> {
        let base = FlexibleBase {
            modulus_mpa: self.of("modulus", Kind::Stress)?,
            second_moment_mm4: self.of("second_moment", Kind::SecondMoment)?,
            ground_mpa: self.of("ground", Kind::Stress)?,
            fibre_mm: self.of("fibre", Kind::Length)?,
        };
        let mut loads = Vec::new();
        for load in self.input["loads"].as_array().ok_or("loads: a list of force and distance")? {
            loads.push((quantity(&load[0], Kind::Force)?, quantity(&load[1], Kind::Length)?));
        }
        base.bent(&loads, sheet);
        Ok(Ok(()))
    }
}
