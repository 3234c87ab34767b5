//! Runs a block of bearing under a foot.
//!
//! Input: `size` of the foot, `strength` of the concrete, `thickness` of the slab, `edges` (left, right, front, rear, from
//! the middle of the foot; null is far), `force`, `system` ("si" or "us"). The whole foot is pressed evenly.
//!
//! Answers: the steps of bearing by their symbols, and `phi * B_n`.

use serde_json::Value as Json;
use steadfoot::calc::{Kind, Outcome, Sheet, System};
use steadfoot::checks::feet::{FootForce, FootOnSlab, Surroundings, spread};
use steadfoot::geometry::{Point, Size};
use steadfoot::report::text_tables::text;

use super::{Answers, Found, Ran, quantity};

/// The answers for an input with their working.
pub fn told(input: &Json) -> Result<Ran, String> {
    let length = |json: &Json| quantity(json, Kind::Length);
    let size = Size::new(length(&input["size"][0])?, length(&input["size"][1])?);
    let half = Size::new(size.x_mm / 2.0, size.y_mm / 2.0);
    let mut edges_mm = [f64::INFINITY; 4];
    for (place, edge) in edges_mm.iter_mut().enumerate() {
        if !input["edges"][place].is_null() {
            *edge = length(&input["edges"][place])?;
        }
    }
    let feet = [(Point::new(0.0, 0.0), half)];
    let around = Surroundings { edges_mm, thickness_mm: length(&input["thickness"])?, feet: &feet };
    let foot = FootOnSlab {
        number: 0,
        half,
        beyond: spread(0, &around),
        strength_mpa: quantity(&input["strength"], Kind::Stress)?,
        is_plain: input["plain"] == true,
        system: if input["system"] == "us" { System::Us } else { System::Si },
    };
    let force_n = quantity(&input["force"], Kind::Force)?;
    let area_mm2 = size.area_mm2();
    let mut sheet = Sheet::told();
    let [bearing, _] =
        foot.check(&FootForce { force_n, bearing_half: half, area_mm2, peak_mpa: force_n / area_mm2 }, &mut sheet);
    let mut answers = Answers::new();
    for section in &sheet.sections {
        for step in &section.steps {
            let row = text(step.id).ok_or("a step without a text")?;
            let value = section.system.to_si(step.value, row.kind);
            answers.entry(row.symbol.to_string()).or_insert(Found { value, kind: row.kind });
        }
    }
    if let Outcome::Compared { limit, .. } = bearing {
        answers.insert("phi * B_n".to_string(), Found { value: limit, kind: Kind::Force });
    }
    Ok(Ran { answers, sections: sheet.sections })
}
