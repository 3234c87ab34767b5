//! A place in the sweep as the page hands it back: the JSON text of an `at` of a report.
//!
//! Text, because the engine reads JSON anyway and a second way in would weigh more than the rest of these bindings.

use steadfoot::calc::CheckId;
use steadfoot::input::text::{Json, Node, read};
use steadfoot::report::outcome::{At, SubjectTold};

/// A place from a report, handed back by the page; none for `null` and for anything that is no place.
pub fn read_place(text: &str) -> Option<At> {
    let root = read(text).ok()?;
    let subject = member(&root, "subject")?;
    let kind = ["whole", "foot", "anchor", "group"].into_iter().find(|&kind| text_of(subject, "kind") == Some(kind))?;
    let check = text_of(&root, "check").and_then(CheckId::named);
    Some(At {
        state: number(&root, "state")? as usize,
        case: number(&root, "case").map(|case| case as usize),
        anchors: matches!(member(&root, "anchors")?.json, Json::Flag(true)),
        direction_rad: number(&root, "direction_rad")?,
        subject: SubjectTold { kind, number: number(subject, "number")? as u16 },
        stiffness: number(&root, "stiffness")?,
        check: check.map(|check| check.id()),
    })
}

fn member<'n, 't>(node: &'n Node<'t>, key: &str) -> Option<&'n Node<'t>> {
    let Json::Object(members) = &node.json else { return None };
    members.iter().find(|member| member.key == key).map(|member| &member.node)
}

fn number(node: &Node, key: &str) -> Option<f64> {
    match member(node, key)?.json {
        Json::Number(number) => Some(number),
        _ => None,
    }
}

fn text_of<'n>(node: &'n Node, key: &str) -> Option<&'n str> {
    match &member(node, key)?.json {
        Json::Text(text) => Some(text),
        _ => None,
    }
}
