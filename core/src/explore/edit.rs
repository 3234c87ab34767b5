//! Which fields of a file to set, so that it says what a search made of its project.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::scaled::Edit;
use crate::geometry::Rectangle;
use crate::input::field::{Field, FieldShape, Value, Values};
use crate::project::Project;

/// The fields in which a turned project differs from the one in the file. Written there and read again they give the
/// turned project.
///
/// Scope: what a [`Knob`](super::Knob) turns.
pub fn edits(before: &Project, after: &Project) -> Vec<Edit> {
    let mut edits = Edits { all: Vec::new() };
    let (old, new) = (&before.cabinet, &after.cabinet);
    for (place, (old, new)) in before.contents.iter().zip(&after.contents).enumerate() {
        edits.number(|| format!("contents[{place}].mass_kg"), old.mass_kg, new.mass_kg);
        edits.number(|| format!("contents[{place}].bottom_mm"), old.bottom_mm, new.bottom_mm);
    }
    edits.number(|| "cabinet.frame.centre_mm[2]".into(), old.frame.centre_mm[2], new.frame.centre_mm[2]);
    let feet = old.feet.iter().zip(&new.feet).map(|(old, new)| ("feet", old.at, new.at)).enumerate();
    let anchors = old.anchors.iter().zip(&new.anchors).map(|(old, new)| ("anchors", old.at, new.at)).enumerate();
    for (place, (list, old, new)) in feet.chain(anchors) {
        edits.number(|| format!("cabinet.{list}[{place}].at_mm[0]"), old.x_mm, new.x_mm);
        edits.number(|| format!("cabinet.{list}[{place}].at_mm[1]"), old.y_mm, new.y_mm);
    }
    for (place, (old, new)) in old.anchors.iter().zip(&new.anchors).enumerate() {
        if let (old, Some(new)) = (old.stiffness_n_per_mm, new.stiffness_n_per_mm) {
            let path = || format!("cabinet.anchors[{place}].stiffness_n_per_mm");
            edits.number(path, old.unwrap_or(f64::NAN), new);
        }
    }
    if let (Some(old), Some(new)) = (&before.slab, &after.slab) {
        edits.number(|| "slab.strength_mpa".into(), old.strength_mpa, new.strength_mpa);
        edits.number(|| "slab.thickness_mm".into(), old.thickness_mm, new.thickness_mm);
        edits.number(|| "slab.friction".into(), old.friction, new.friction);
        edits.outline("slab.edges_mm", &old.outline, &new.outline);
        edits.outline("slab.boundary_mm", &old.boundary, &new.boundary);
        for (place, (old, new)) in old.openings.iter().zip(&new.openings).enumerate() {
            let middle = |low: f64, high: f64| (low + high) / 2.0;
            let [old, new] =
                [old, new].map(|one| [middle(one.left_mm, one.right_mm), middle(one.front_mm, one.rear_mm)]);
            for axis in 0..2 {
                edits.number(|| format!("slab.openings[{place}].at_mm[{axis}]"), old[axis], new[axis]);
            }
        }
    }
    if let (Some(old), Some(new)) = (&before.site, &after.site) {
        edits.values("site", new.rule.fields, &old.values, &new.values);
    }
    if let (Some(old), Some(new)) = (&before.anchorage, &after.anchorage) {
        edits.values("anchorage", new.rule.fields, &old.values, &new.values);
    }
    edits.all
}

struct Edits {
    all: Vec<Edit>,
}

impl Edits {
    fn number(&mut self, path: impl FnOnce() -> String, old: f64, new: f64) {
        if old.to_bits() != new.to_bits() {
            self.all.push(Edit { path: path(), value: Some(new), word: None });
        }
    }

    /// Distances to the sides of an outline; a side that is far stays so.
    fn outline(&mut self, path: &str, old: &Rectangle, new: &Rectangle) {
        let sides = |one: &Rectangle| [-one.left_mm, one.right_mm, -one.front_mm, one.rear_mm];
        for ((side, old), new) in ["left", "right", "front", "rear"].iter().zip(sides(old)).zip(sides(new)) {
            self.number(|| format!("{path}.{side}"), old, new);
        }
    }

    fn values(&mut self, path: &str, fields: &[Field], old: &Values, new: &Values) {
        for ((field, old), new) in fields.iter().zip(&old.0).zip(&new.0) {
            match (new, field.shape) {
                _ if old == new => {}
                (Value::Number(new), _) => {
                    self.all.push(Edit { path: format!("{path}.{}", field.key), value: Some(*new), word: None });
                }
                (Value::Choice(place), FieldShape::Choice(words)) => {
                    let word = words.get(*place).copied();
                    self.all.push(Edit { path: format!("{path}.{}", field.key), value: None, word });
                }
                _ => {}
            }
        }
    }
}
