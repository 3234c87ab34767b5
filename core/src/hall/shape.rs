//! What may stand at the end of a path, so that a cell without quotes becomes a number, a word or a text as it is meant.

use alloc::string::String;

use super::path::Step;
use super::tree::Tree;
use crate::cabinet::{self, anchor, foot, frame, lifting_point};
use crate::checks::{lifting, moving};
use crate::floor;
use crate::input::{Field, FieldShape};
use crate::load_out::{content, state};
use crate::project::{self, drilling, neighbour, row};
use crate::rules::anchor::ANCHOR_RULES;
use crate::rules::demand::DEMAND_RULES;
use crate::slab::{self, boundary, edge, opening};
use crate::{motion, shake_table};

/// The parts of a project with the fields that each has by itself.
static PARTS: [(&str, &[Field]); 24] = [
    ("", project::FIELDS),
    ("cabinet", cabinet::FIELDS),
    ("cabinet.frame", frame::FIELDS),
    ("cabinet.feet", foot::FIELDS),
    ("cabinet.anchors", anchor::FIELDS),
    ("cabinet.lifting_points", lifting_point::FIELDS),
    ("contents", content::FIELDS),
    ("states", state::FIELDS),
    ("slab", slab::FIELDS),
    ("slab.edges_mm", edge::FIELDS),
    ("slab.boundary_mm", boundary::FIELDS),
    ("slab.openings", opening::FIELDS),
    ("floor", floor::FIELDS),
    ("floor.raised", floor::raised::FIELDS),
    ("floor.casters", floor::casters::FIELDS),
    ("floor.standing", floor::standing::FIELDS),
    ("neighbours", neighbour::FIELDS),
    ("drilling", drilling::FIELDS),
    ("motion", motion::setting::FIELDS),
    ("row", row::FIELDS),
    ("structure", crate::frame::FIELDS),
    ("moving", moving::FIELDS),
    ("lifting", lifting::FIELDS),
    ("shake_table", shake_table::fields::FIELDS),
];

/// What may stand at the end of a path in this project; `None` where nothing has that path.
///
/// The fields of `site`, `anchorage` and single anchors are those of the rule that the project names; without a project,
/// those of any rule.
pub fn shape_at(path: &[Step], project: Option<&Tree>) -> Option<FieldShape> {
    let mut part = String::new();
    let mut keys = path.iter().filter_map(|step| if let Step::Key(key) = step { Some(key.as_str()) } else { None });
    let last = keys.next_back()?;
    for key in keys {
        if !part.is_empty() {
            part.push('.');
        }
        part.push_str(key);
    }
    let rule_of = |part: &str| project?.member(part)?.member("rule")?.text();
    let is_chosen = |id: &str, part: &str| project.is_none() || rule_of(part) == Some(id);
    let ruled = match part.as_str() {
        "site" | "anchorage" if last == "rule" => return Some(FieldShape::Text),
        "site" => in_rules(DEMAND_RULES.iter().filter(|rule| is_chosen(rule.id, "site")).map(|rule| rule.fields), last),
        "anchorage" | "cabinet.anchors" => {
            in_rules(ANCHOR_RULES.iter().filter(|rule| is_chosen(rule.id, "anchorage")).map(|rule| rule.fields), last)
        }
        _ => None,
    };
    let own = PARTS.iter().find(|(name, _)| *name == part).map(|(_, fields)| *fields);
    let shape = ruled.or_else(|| in_rules(own.into_iter(), last))?;
    Some(match (shape, path.last()) {
        (FieldShape::Numbers { kind, count, min, max }, Some(Step::Item(place))) => {
            return (*place < count).then_some(FieldShape::Number { kind, min, max });
        }
        (FieldShape::Numbers { kind, min, max, .. }, Some(Step::Every)) => FieldShape::Number { kind, min, max },
        (_, Some(Step::Key(_))) => shape,
        _ => return None,
    })
}

fn in_rules<'f>(mut tables: impl Iterator<Item = &'f [Field]>, key: &str) -> Option<FieldShape> {
    tables.find_map(|fields| fields.iter().find(|field| field.key == key)).map(|field| field.shape)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::calc::Kind;
    use crate::hall::path::steps;

    #[test]
    fn paths_of_every_depth_have_their_shape() {
        let shape = |path: &str| shape_at(&steps(path).unwrap(), None);
        assert!(matches!(shape("title"), Some(FieldShape::Text)));
        assert!(matches!(shape("slab.thickness_mm"), Some(FieldShape::Number { kind: Kind::Length, .. })));
        assert!(matches!(shape("contents[*].mass_kg"), Some(FieldShape::Number { kind: Kind::Mass, .. })));
        assert!(matches!(shape("cabinet.frame.centre_mm[2]"), Some(FieldShape::Number { .. })));
        assert!(matches!(shape("cabinet.frame.centre_mm"), Some(FieldShape::Numbers { .. })));
        assert!(matches!(shape("anchorage.bolt"), Some(FieldShape::Choice(_))));
        assert!(matches!(shape("site.rule"), Some(FieldShape::Text)));
        for path in ["slab.thicknes_mm", "cabinet.frame.centre_mm[3]", "slab", "cabinet.feet[0]", "nothing.here"] {
            assert!(shape(path).is_none(), "{path}");
        }
    }

    #[test]
    fn every_part_of_the_file_is_known_here() {
        for part in crate::project::parts::PARTS {
            let name = part.path.replace("[]", "");
            if part.fields.is_empty() {
                continue;
            }
            let known = PARTS.iter().find(|(known, _)| *known == name);
            let known = known.unwrap_or_else(|| panic!("{name} is missing"));
            assert!(known.1.iter().map(|field| field.key).eq(part.fields.iter().map(|field| field.key)), "{name}");
        }
    }
}
