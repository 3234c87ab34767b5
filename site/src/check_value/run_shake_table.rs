//! Runs a block of a required response spectrum or of what a rig must carry.
//!
//! Input: the fields of the part `shake_table`; with `frequency_hz`, and `axis` where it is vertical, the spectrum is read
//! there; with `mass_kg`, `centre_mm` and `height_mm` of a cabinet, what a rig must carry for it. Answers: every step by its
//! symbol, the last where it was told several times.

use serde_json::{Value as Json, json};
use steadfoot::calc::{Kind, Sheet};
use steadfoot::report::text_tables::text;
use steadfoot::shake_table::{Axis, Basis, ShakeTable, Specimen, fields, rig, spectrum};

use super::{Answers, Found, Ran, field_values, quantity};

/// What a block may name beside the fields of the part.
const OTHERS: [&str; 5] = ["frequency_hz", "axis", "mass_kg", "centre_mm", "height_mm"];

/// The answers with their working.
pub fn told(input: &Json) -> Result<Ran, String> {
    for key in input.as_object().ok_or("an object belongs here")?.keys() {
        if !OTHERS.contains(&key.as_str()) && fields::FIELDS.iter().all(|field| field.key != key) {
            return Err(format!("a shake table has no field {key}"));
        }
    }
    let mut input = input.clone();
    if input["fixture_mass_kg"].is_null() {
        input["fixture_mass_kg"] = json!(0);
    }
    let values = field_values(fields::FIELDS, &input)?;
    let mut faults = Vec::new();
    fields::faults(&values, &mut faults);
    if let Some((place, problem, allowed)) = faults.first() {
        return Err(format!("{}: {problem:?}, allowed {allowed}", fields::FIELDS[*place].key));
    }
    let table = ShakeTable { values };
    let mut sheet = Sheet::told();
    let reason = |id| text(id).map_or("a reason without a text", |row| row.what).to_string();
    let asked = spectrum(table.test(), &Basis::of(&table.values), &mut sheet).map_err(reason)?;
    if !input["frequency_hz"].is_null() {
        let axis = if input["axis"] == "vertical" { Axis::Vertical } else { Axis::Horizontal };
        let frequency_hz = quantity(&input["frequency_hz"], Kind::Frequency)?;
        asked.at(axis, frequency_hz, &mut sheet).map_err(reason)?;
    }
    if !input["mass_kg"].is_null() {
        let centre = |place: usize| quantity(&input["centre_mm"][place], Kind::Length);
        let specimen = Specimen {
            mass_kg: quantity(&input["mass_kg"], Kind::Mass)?,
            centre_mm: [centre(0)?, centre(1)?, centre(2)?],
            height_mm: quantity(&input["height_mm"], Kind::Length)?,
            lowest_hz: table.lowest_hz(),
        };
        let motion = rig::motion(&asked, table.lowest_hz(), table.agreed_hz(), &mut sheet).map_err(reason)?;
        rig::carried(&motion, &specimen, &table.fixture(), &table.rig(), &mut sheet);
    }
    let mut answers = Answers::new();
    for step in sheet.sections.iter().flat_map(|section| &section.steps) {
        let row = text(step.id).ok_or("a step without a text")?;
        answers.insert(row.symbol.into(), Found { value: step.value, kind: row.kind });
    }
    Ok(Ran { answers, sections: sheet.sections })
}
