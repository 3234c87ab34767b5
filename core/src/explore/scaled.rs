//! A project with more or less load, or shaken harder or less.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use crate::input::field::{FieldShape, Value};
use crate::project::Project;
use crate::rules::demand::Strength;

/// The same project with the mass of every content multiplied; the frame stays.
pub fn scaled_load(project: &Project, factor: f64) -> Project {
    let mut scaled = project.clone();
    for content in &mut scaled.contents {
        content.mass_kg *= factor;
    }
    scaled
}

/// The same project with the field that its rule names as its strength set to a value; none without a rule, or where
/// the rule has zones.
pub fn scaled_strength(project: &Project, value: f64) -> Option<Project> {
    let mut scaled = project.clone();
    let site = scaled.site.as_mut()?;
    let Strength::Field(field) = (site.rule.strength)(&site.values) else { return None };
    site.values.0[field] = Value::Number(value);
    Some(scaled)
}

/// A field to set, so that a number in the answer becomes what the reader turned it to.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Edit {
    /// Where: `contents[0].mass_kg`.
    pub path: String,
    /// The new number in SI, absent where a word is set.
    pub value: Option<f64>,
    /// The new word.
    pub word: Option<&'static str>,
}

/// Which fields to set so that the load aboard in kg (`"load"`) or the push over the weight (`"strength"`) comes near a
/// value. Masses are set to a tenth of a kilogram, a strength to three decimals, a zone to the nearest one.
pub fn turned(project: &Project, live: &str, value: f64) -> Vec<Edit> {
    if !value.is_finite() || value < 0.0 {
        return Vec::new();
    }
    match live {
        "load" => turned_load(project, value),
        "strength" => turned_strength(project, value),
        _ => Vec::new(),
    }
}

fn turned_load(project: &Project, aboard_kg: f64) -> Vec<Edit> {
    let now_kg: f64 = project.contents.iter().map(|content| content.mass_kg).sum();
    let even_kg = aboard_kg / project.contents.len().max(1) as f64;
    let contents = project.contents.iter().enumerate();
    contents
        .map(|(place, content)| {
            let mass_kg = if now_kg > 0.0 { content.mass_kg * aboard_kg / now_kg } else { even_kg };
            let value = crate::calc::number::round(mass_kg * 10.0) / 10.0;
            Edit { path: format!("contents[{place}].mass_kg"), value: Some(value), word: None }
        })
        .collect()
}

fn turned_strength(project: &Project, push: f64) -> Vec<Edit> {
    let Some(site) = &project.site else { return Vec::new() };
    let push_of = |project: &Project| {
        let site = project.site.as_ref()?;
        let demand = (site.rule.demand)(&site.values, 1.0, &mut crate::calc::Sheet::quiet());
        demand.ok().map(|demand| demand.push)
    };
    match (site.rule.strength)(&site.values) {
        Strength::Field(field) => {
            let (Some(now), Some(number)) = (push_of(project), site.values.number(field)) else { return Vec::new() };
            if now <= 0.0 {
                return Vec::new();
            }
            let mut value = crate::calc::number::round(number * push / now * 1000.0) / 1000.0;
            if let FieldShape::Number { min, max, .. } = site.rule.fields[field].shape {
                value = value.max(min).min(max);
            }
            alloc::vec![Edit { path: format!("site.{}", site.rule.fields[field].key), value: Some(value), word: None }]
        }
        Strength::Zones(field) => {
            let FieldShape::Choice(words) = site.rule.fields[field].shape else { return Vec::new() };
            let mut nearest: Option<(f64, &'static str)> = None;
            for (place, word) in words.iter().enumerate() {
                let mut other = project.clone();
                if let Some(site) = other.site.as_mut() {
                    site.values.0[field] = Value::Choice(place);
                }
                if let Some(there) = push_of(&other) {
                    let distance = (there - push).abs();
                    if nearest.is_none_or(|(known, _)| distance < known) {
                        nearest = Some((distance, word));
                    }
                }
            }
            let path = format!("site.{}", site.rule.fields[field].key);
            nearest.map(|(_, word)| Edit { path, value: None, word: Some(word) }).into_iter().collect()
        }
    }
}
