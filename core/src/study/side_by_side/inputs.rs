//! The inputs with which a rule is asked: the reader's own where the rule asks for the same, else the sample's.

use alloc::string::String;
use alloc::vec::Vec;

use super::samples::{HEIGHTS_M, STOREY_M, sample};
use crate::calc::number::{ceil, floor};
use crate::calc::show::field_text;
use crate::calc::{Kind, System};
use crate::input::field::{Absent, Field, FieldShape, Value, Values};
use crate::input::{LimitUnits, Others, Problem, Reader, Spot, text};
use crate::project::Site;
use crate::rules::demand::DemandRule;

/// A rule with what it is asked with.
pub struct Filled {
    /// The rule.
    pub rule: &'static DemandRule,
    /// Its inputs.
    pub values: Values,
    /// Places of the fields whose values are the reader's own.
    pub own: Vec<usize>,
    /// Places of fields that are still needed.
    pub needed: Vec<usize>,
}

/// Fields that mean the same in every rule that has them, so that the reader's own value can be asked of another rule.
///
/// A choice is taken where the other rule has the same word; zones and soils are not here, since their words mean other things.
const SAME_EVERYWHERE: [&str; 7] = [
    "attachment_height_m",
    "roof_height_m",
    "s_ds",
    "importance_factor",
    "component_importance",
    "component",
    "building_period_s",
];

/// In GB 50011 the field of this name is the factor of the element's class, not the importance of a component.
const NOT_THE_SAME: (&str, &str) = ("gb-50011", "importance_factor");

/// The inputs of a rule for a project's site.
pub fn fill(rule: &'static DemandRule, site: Option<&Site>) -> Filled {
    if let Some(site) = site.filter(|site| core::ptr::eq(site.rule, rule)) {
        let own = (0..rule.fields.len()).filter(|&field| site.values.0[field] != Value::Unknown).collect();
        return Filled { rule, values: site.values.clone(), own, needed: Vec::new() };
    }
    let mut values = sample_values(rule);
    let mut own = take_own(rule, site, &mut values);
    fill_heights(rule, heights_m(site), &mut values);
    give_back(rule, &mut own, &mut values);
    let needed = needed(rule, &values);
    Filled { rule, values, own, needed }
}

fn place(fields: &[Field], key: &str) -> Option<usize> {
    fields.iter().position(|field| field.key == key)
}

fn sample_values(rule: &DemandRule) -> Values {
    let inputs = sample(rule.id).map_or("{}", |sample| sample.inputs);
    let Ok(root) = text::read(inputs) else { panic!("the sample of {} is no JSON", rule.id) };
    let spot = Spot { path: String::new(), node: &root };
    Reader::new(inputs, LimitUnits::File).object(&spot, rule.fields, Others::Only(&[]))
}

/// Puts the reader's own values in, and says where.
fn take_own(rule: &DemandRule, site: Option<&Site>, values: &mut Values) -> Vec<usize> {
    let mut own = Vec::new();
    let Some(site) = site else { return own };
    for key in SAME_EVERYWHERE {
        let (Some(to), Some(from)) = (place(rule.fields, key), place(site.rule.fields, key)) else { continue };
        if [rule.id, site.rule.id].iter().any(|id| NOT_THE_SAME == (*id, key)) {
            continue;
        }
        let taken = match (rule.fields[to].shape, site.rule.fields[from].shape) {
            (FieldShape::Number { min, max, .. }, FieldShape::Number { .. }) => {
                site.values.number(from).filter(|number| (min..=max).contains(number)).map(Value::Number)
            }
            (FieldShape::Choice(words), FieldShape::Choice(of)) => site
                .values
                .choice(from)
                .map(|chosen| of[chosen])
                .filter(|word| *word != "given")
                .and_then(|word| words.iter().position(|known| *known == word))
                .map(Value::Choice),
            _ => None,
        };
        if let Some(value) = taken {
            values.0[to] = value;
            own.push(to);
        }
    }
    own
}

/// Takes out what the rule has no use for beside the sample's words, such as the period of a building that these call unknown.
fn give_back(rule: &DemandRule, own: &mut Vec<usize>, values: &mut Values) {
    let mut faults = Vec::new();
    (rule.faults)(values, &mut faults);
    for (field, problem, _) in faults {
        if problem == Problem::Excludes && own.contains(&field) {
            values.0[field] = Value::Unknown;
            own.retain(|&taken| taken != field);
        }
    }
}

/// Heights where none are known, and storeys counted from heights.
fn fill_heights(rule: &DemandRule, known_m: [f64; 2], values: &mut Values) {
    for (key, height_m) in ["attachment_height_m", "roof_height_m"].into_iter().zip(known_m) {
        if let Some(field) = place(rule.fields, key).filter(|&field| values.number(field).is_none()) {
            values.set_number(field, height_m);
        }
    }
    let storeys = [place(rule.fields, "storey"), place(rule.fields, "storeys")];
    if let [Some(storey), Some(storeys)] = storeys
        && values.number(storey).is_none()
    {
        let [at, of] = storeys_of(known_m);
        values.set_number(storey, at);
        values.set_number(storeys, of);
    }
}

/// Where the project's cabinet stands and how high its building is, m; the sample's where its rule does not ask.
pub fn heights_m(site: Option<&Site>) -> [f64; 2] {
    let number = |key: &str| {
        let site = site?;
        site.values.number(place(site.rule.fields, key)?)
    };
    match (number("attachment_height_m"), number("roof_height_m")) {
        (Some(at), Some(roof)) => [at, roof],
        (Some(at), None) => [at, f64::max(HEIGHTS_M[1], at)],
        _ => HEIGHTS_M,
    }
}

/// The storey of a height, and how many there are to the roof. No storey is numbered 0: under the first is -1.
pub fn storeys_of([attachment_m, roof_m]: [f64; 2]) -> [f64; 2] {
    let of = f64::max(1.0, ceil(roof_m / STOREY_M - 1e-9));
    let below = floor(attachment_m / STOREY_M + 1e-9);
    [if below < 0.0 { below } else { f64::min(of, below + 1.0) }, of]
}

/// Fields that are required and unknown, or that the rule finds fault with.
fn needed(rule: &DemandRule, values: &Values) -> Vec<usize> {
    let is_missing =
        |&field: &usize| matches!(rule.fields[field].absent, Absent::Fault) && values.0[field] == Value::Unknown;
    let mut needed: Vec<usize> = (0..rule.fields.len()).filter(is_missing).collect();
    if needed.is_empty() {
        let mut faults = Vec::new();
        (rule.faults)(values, &mut faults);
        needed.extend(faults.into_iter().map(|(field, ..)| field));
    }
    needed
}

impl Filled {
    /// What the reader gave, in the words of the file.
    pub fn own_text(&self) -> String {
        self.text(|field| self.own.contains(&field))
    }

    /// What was taken for the comparison.
    pub fn taken_text(&self) -> String {
        self.text(|field| !self.own.contains(&field))
    }

    /// Keys of what is still needed.
    pub fn needed_text(&self) -> String {
        let mut text = String::from("needs ");
        for (place, &field) in self.needed.iter().enumerate() {
            text.push_str(if place > 0 { ", " } else { "" });
            text.push_str(&spoken(self.rule.fields[field].key).0);
        }
        text
    }

    /// Those of its inputs that are asked for, in the words of the file.
    pub fn text(&self, is_told: impl Fn(usize) -> bool) -> String {
        let mut text = String::new();
        for (place, (field, value)) in self.rule.fields.iter().zip(&self.values.0).enumerate() {
            let written = match (value, field.shape) {
                (Value::Number(number), FieldShape::Number { kind, .. }) => written(*number, kind),
                (Value::Choice(chosen), FieldShape::Choice(words)) => String::from(words[*chosen]),
                _ => continue,
            };
            if is_told(place) {
                text.push_str(if text.is_empty() { "" } else { "; " });
                let (name, unit) = spoken(field.key);
                text.push_str(&name);
                text.push(' ');
                text.push_str(&written);
                text.push_str(unit);
            }
        }
        text
    }
}

/// A key in plain words, with the unit that is its last word.
pub fn spoken(key: &str) -> (String, &'static str) {
    const UNITS: [(&str, &str); 4] = [("_mm", " mm"), ("_km", " km"), ("_m", " m"), ("_s", " s")];
    // Two accelerations are known by their symbols alone.
    if let Some(symbol) = [("s_ds", "S_DS"), ("s_s", "S_S")].iter().find(|(known, _)| *known == key) {
        return (String::from(symbol.1), "");
    }
    let short = UNITS.iter().find_map(|&(ending, unit)| Some((key.strip_suffix(ending)?, unit)));
    let (name, unit) = short.unwrap_or((key, ""));
    (name.replace('_', " "), unit)
}

fn written(number: f64, kind: Kind) -> String {
    field_text(number, kind, System::Si)
}
