//! Runs a block of anchor values: an anchorage, its slab and simultaneous forces.
//!
//! Input: `{ "rule": id, fields of the rule ..., "slab": { "strength", "thickness", "cracking": "cracked" | "uncracked",
//! "left", "right", "front", "rear" }, "anchors": [ { "at": [x, y], fields of its own ..., "tension", "shear": [x, y] } ] }`.
//! Edges are positions in the plan, absent where far; `"boundary"` and each of `"openings"` of the slab have the same four
//! sides. `"own"` counts the cabinet's own anchors, which come first; without it all are. `"ratios": [tension, shear]` scales the forces of a lone anchor until
//! its ratios are these, of the check that `"ratios_of"` names. `"whole": { "weight", "upward", "push",
//! "at": [x, y], "height", "direction_deg" }` asks only for what the rule finds by statics of its own.
//!
//! Answers: every step by `check/symbol` (the first section of that check) and by `group-1/check/symbol`; of each check
//! `check/utilisation`, the largest.

use serde_json::Value as Json;
use steadfoot::calc::{Kind, Outcome, Sheet, StepText, Subject};
use steadfoot::geometry::{Point, Rectangle};
use steadfoot::rules::anchor::{
    ANCHOR_RULE_TEXTS, AnchorForce, AnchorPlace, AnchorRule, AnchorSite, AnchorSlab, Cracking, Finding, WholeLoad,
    anchor_rule,
};

use super::{Answers, Found, Ran, field_values, quantity};

/// What is put to a rule.
pub struct Case {
    pub rule: &'static AnchorRule,
    pub values: steadfoot::input::Values,
    pub anchors: Vec<AnchorPlace>,
    pub slab: AnchorSlab,
    pub forces: Vec<AnchorForce>,
    /// How many of the anchors are the cabinet's own.
    pub own: usize,
}

/// The answers for an input.
pub fn run(input: &Json) -> Result<Answers, String> {
    told(input).map(|ran| ran.answers)
}

/// The answers with their working.
pub fn told(input: &Json) -> Result<Ran, String> {
    let mut case = read(input)?;
    if let Some(ratios) = input.get("ratios") {
        let of = input["ratios_of"].as_str().unwrap_or("interaction");
        case.scale_to(of, [ratios[0].as_f64().unwrap(), ratios[1].as_f64().unwrap()]);
    }
    let (sheet, findings) = match input.get("whole") {
        Some(load) => case.told_whole(&whole_load(load)?),
        None => case.told(),
    };
    Ok(Ran { answers: case.answers_of(&sheet, &findings), sections: sheet.sections })
}

/// The case that an input speaks of.
pub fn read(input: &Json) -> Result<Case, String> {
    let id = input["rule"].as_str().ok_or("no rule")?;
    let rule = anchor_rule(id).ok_or_else(|| format!("no rule {id}"))?;
    only_known(rule, input, &["rule", "slab", "anchors", "ratios", "ratios_of", "own", "whole"])?;
    let values = field_values(rule.fields, input)?;
    let mut anchors = Vec::new();
    let mut forces = Vec::new();
    for anchor in input["anchors"].as_array().ok_or("no anchors")? {
        only_known(rule, anchor, &["at", "tension", "shear"])?;
        let mut merged = input.clone();
        for field in rule.fields.iter().filter(|field| !anchor[field.key].is_null()) {
            merged[field.key] = anchor[field.key].clone();
        }
        let at = pair(&anchor["at"], Kind::Length)?;
        let values = field_values(rule.fields, &merged)?;
        let mut faults = Vec::new();
        (rule.faults)(&values, &mut faults);
        if let Some((place, problem, allowed)) = faults.first() {
            return Err(format!("{}: {problem:?}, allowed {allowed}", rule.fields[*place].key));
        }
        anchors.push(AnchorPlace { at: Point::new(at[0], at[1]), values });
        let shear = pair(&anchor["shear"], Kind::Force)?;
        let tension_n = optional(&anchor["tension"], Kind::Force)?.unwrap_or(0.0);
        forces.push(AnchorForce { tension_n, shear_x_n: shear[0], shear_y_n: shear[1] });
    }
    let slab = &input["slab"];
    let outline = outline_of(slab, Rectangle::EVERYWHERE)?;
    let mut openings = Vec::new();
    for opening in slab["openings"].as_array().unwrap_or(&Vec::new()) {
        openings.push(outline_of(opening, Rectangle::EVERYWHERE)?);
    }
    let cracking = if slab["cracking"] == "uncracked" { Cracking::Uncracked } else { Cracking::Cracked };
    let slab = AnchorSlab {
        strength_mpa: quantity(&slab["strength"], Kind::Stress)?,
        thickness_mm: quantity(&slab["thickness"], Kind::Length)?,
        cracking,
        outline,
        boundary: outline_of(&slab["boundary"], Rectangle::EVERYWHERE)?,
        openings,
    };
    let own = input["own"].as_u64().map_or(anchors.len(), |own| own as usize);
    Ok(Case { rule, values, anchors, slab, forces, own })
}

fn whole_load(load: &Json) -> Result<WholeLoad, String> {
    let [x_mm, y_mm] = pair(&load["at"], Kind::Length)?;
    Ok(WholeLoad {
        weight_n: quantity(&load["weight"], Kind::Force)?,
        upward_n: quantity(&load["upward"], Kind::Force)?,
        horizontal_n: quantity(&load["push"], Kind::Force)?,
        at: Point::new(x_mm, y_mm),
        height_mm: quantity(&load["height"], Kind::Length)?,
        direction_rad: load["direction_deg"].as_f64().unwrap_or(0.0).to_radians(),
    })
}

fn only_known(rule: &AnchorRule, object: &Json, others: &[&str]) -> Result<(), String> {
    for key in object.as_object().ok_or("an object belongs here")?.keys() {
        if !others.contains(&key.as_str()) && rule.fields.iter().all(|field| field.key != key) {
            return Err(format!("{} has no field {key}", rule.id));
        }
    }
    Ok(())
}

/// The sides that an object gives; the others where they were.
fn outline_of(sides: &Json, far: Rectangle) -> Result<Rectangle, String> {
    let side = |key: &str, far| Ok::<f64, String>(optional(&sides[key], Kind::Length)?.unwrap_or(far));
    Ok(Rectangle {
        left_mm: side("left", far.left_mm)?,
        right_mm: side("right", far.right_mm)?,
        front_mm: side("front", far.front_mm)?,
        rear_mm: side("rear", far.rear_mm)?,
    })
}

fn optional(json: &Json, kind: Kind) -> Result<Option<f64>, String> {
    if json.is_null() { Ok(None) } else { quantity(json, kind).map(Some) }
}

fn pair(json: &Json, kind: Kind) -> Result<[f64; 2], String> {
    match json.as_array() {
        None => Ok([0.0, 0.0]),
        Some(list) => Ok([quantity(&list[0], kind)?, quantity(&list[1], kind)?]),
    }
}

impl Case {
    /// All findings, with the sheet they were told on.
    pub fn told(&self) -> (Sheet, Vec<Finding>) {
        self.checked(Sheet::told())
    }

    /// All findings, quietly.
    pub fn quiet(&self) -> Vec<Finding> {
        self.checked(Sheet::quiet()).1
    }

    /// What the rule finds by statics of its own.
    pub fn told_whole(&self, load: &WholeLoad) -> (Sheet, Vec<Finding>) {
        let site = AnchorSite { values: &self.values, anchors: &self.anchors, own: self.own, slab: &self.slab };
        let mut sheet = Sheet::told();
        let mut findings: Vec<Finding> = Vec::new();
        (self.rule.prepare)(&site).check_whole(load, &mut sheet, &mut findings);
        (sheet, findings)
    }

    fn checked(&self, mut sheet: Sheet) -> (Sheet, Vec<Finding>) {
        let site = AnchorSite { values: &self.values, anchors: &self.anchors, own: self.own, slab: &self.slab };
        let mut prepared = (self.rule.prepare)(&site);
        let mut findings: Vec<Finding> = Vec::new();
        prepared.place(&mut sheet, &mut findings);
        let level = (self.rule.amplification)(&self.values);
        prepared.check(&self.forces, level, &mut sheet, &mut findings);
        (sheet, findings)
    }

    fn scale_to(&mut self, of: &str, ratios: [f64; 2]) {
        self.forces[0] = AnchorForce { tension_n: 1000.0, shear_x_n: 1000.0, shear_y_n: 0.0 };
        let answers = self.answers();
        let ratio = |symbols: [&str; 2]| {
            symbols
                .into_iter()
                .find_map(|symbol| answers.get(&format!("{of}/{symbol}")))
                .expect("a ratio is told")
                .value
        };
        self.forces[0].tension_n *= ratios[0] / ratio(["r_N", "beta_N"]);
        self.forces[0].shear_x_n *= ratios[1] / ratio(["r_V", "beta_V"]);
    }

    /// Steps and utilisations by their addresses.
    pub fn answers(&self) -> Answers {
        let (sheet, findings) = self.told();
        self.answers_of(&sheet, &findings)
    }

    fn answers_of(&self, sheet: &Sheet, findings: &[Finding]) -> Answers {
        let mut answers = Answers::new();
        for section in &sheet.sections {
            let Some(check) = section.check else { continue };
            let subject = match section.subject {
                Subject::Group(number) => format!("group-{number}"),
                Subject::Anchor(place) => format!("anchor-{}", place + 1),
                other => format!("{other:?}"),
            };
            for step in &section.steps {
                let text = self.text(step.id);
                let found = Found { value: section.system.to_si(step.value, text.kind), kind: text.kind };
                let at = format!("{}/{}", check.section(), text.symbol);
                answers.entry(format!("{subject}/{at}")).or_insert(found);
                answers.entry(at).or_insert(found);
            }
        }
        for finding in findings {
            let Outcome::Compared { utilisation, .. } = finding.outcome else { continue };
            let at = format!("{}/utilisation", finding.check.section());
            let known = answers.get(&at).map_or(f64::NEG_INFINITY, |found| found.value);
            answers.insert(at, Found { value: known.max(utilisation), kind: Kind::Utilisation });
        }
        answers
    }

    fn text(&self, id: steadfoot::calc::StepId) -> &'static StepText {
        let texts = ANCHOR_RULE_TEXTS.iter().find(|text| text.id == self.rule.id).expect("a rule without texts");
        let table = texts.steps.iter().find(|table| table.number == id.table()).expect("a step without a table");
        &table.rows[id.row()]
    }
}

/// The answers for `{ "rule": id, "bolt": size }`: `A_se`, for every head `own/A_brg`, for every steel `f1554-36/N_sa` and
/// its design strength `f1554-36/N_d`, by way of one pulled anchor of each.
pub fn run_bolts(input: &Json) -> Result<Answers, String> {
    let mut answers = Answers::new();
    let with = |key: &str, word: &str| {
        let mut anchorage = input.clone();
        anchorage["steel"] = "a36".into();
        anchorage["embedment_mm"] = 300.0.into();
        anchorage["seismic_category"] = "A-B".into();
        anchorage[key] = word.into();
        anchorage["slab"] = serde_json::json!({ "strength": "28 MPa", "thickness": "500 mm" });
        anchorage["anchors"] = serde_json::json!([{ "at": [0, 0], "tension": "1 kN" }]);
        run(&anchorage)
    };
    for word in steadfoot::rules::bolts::STEEL_WORDS.iter().filter(|word| **word != "given") {
        let found = with("steel", word)?;
        answers.insert("A_se".into(), found["tension-steel/A_se"]);
        for symbol in ["N_sa", "N_d"] {
            answers.insert(format!("{word}/{symbol}"), found[&format!("tension-steel/{symbol}")]);
        }
    }
    for word in ["own", "heavy-hex"] {
        // Small and metric sizes have no heavy head, which is a fault of the input.
        if let Ok(found) = with("head", word) {
            answers.insert(format!("{word}/A_brg"), found["tension-pullout/A_brg"]);
        }
    }
    Ok(answers)
}
