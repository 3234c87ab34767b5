//! The approval file: what an assessment or evaluation report says of one fastener, kept to be used again.
//!
//! ```json
//! { "format": "steadfoot approval 1", "rule": "en-1992-4-2018", "title": "...", "anchorage": { "gamma_inst": 1.2 } }
//! ```
//!
//! It holds only the fields that the rule names as those of such a document, read with the same table and the same limits
//! as the anchorage of a project.

use alloc::string::String;
use alloc::vec::Vec;

use serde::ser::{Serialize, SerializeStruct, Serializer};

use super::Project;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};
use crate::input::text::{self, Json};
use crate::input::{Absent, Fault, Field, FieldShape, LimitUnits, Others, Problem, Reader, Spot, Value, Values};
use crate::rules::anchor::{ANCHOR_RULES, AnchorRule};

/// What the file says it is.
pub const APPROVAL_FORMAT: &str = "steadfoot approval 1";

fields! {
    FORMAT "format" Choice(&[APPROVAL_FORMAT]), Fault,
        "Format", "Which kind of file this is.", "", ["Steadfoot approval data, first format"];
    TITLE "title" Text, Unknown,
        "Title", "Fastener, document and its date.", "", [];
}

/// The data of one fastener.
pub struct Approval {
    /// The rule that they are for.
    pub rule: &'static AnchorRule,
    /// Fastener and document in the reader's words; may be empty.
    pub title: String,
    /// What it gives.
    pub known: Known,
}

/// Values under the keys of their fields.
pub struct Known {
    fields: &'static [Field],
    /// In the order of the rule's fields; unknown where the file has none.
    pub values: Values,
}

impl Approval {
    /// Keys of the fields that such a document could give and this file does not.
    pub fn left_out(&self) -> Vec<&'static str> {
        let places = self.rule.report_fields.iter().filter(|&&place| self.known.values.0[place] == Value::Unknown);
        places.map(|&place| self.rule.fields[place].key).collect()
    }
}

/// Reads an approval file. Its faults tell what is allowed in the units of the file.
///
/// Errors: every fault with its path, as reading a project gives them.
///
/// ```
/// use steadfoot::project::approval;
/// let text = r#"{ "format": "steadfoot approval 1", "rule": "en-1992-4-2018",
///     "anchorage": { "fastener": "bonded", "bolt": "M12", "steel": "iso-8.8", "embedment_mm": 110, "gamma_inst": 1.5 } }"#;
/// let Err(faults) = approval::read(text) else { panic!() };
/// assert_eq!(faults[0].path, "anchorage.gamma_inst");
/// assert!(approval::read(&text.replace("1.5", "1.2")).is_ok());
/// ```
pub fn read(text: &str) -> Result<Approval, Vec<Fault>> {
    let mut reader = Reader::new(text, LimitUnits::File);
    let root = match text::read(text) {
        Ok(root) => root,
        Err(trouble) => {
            reader.trouble(trouble);
            return Err(reader.faults());
        }
    };
    let spot = Spot { path: String::new(), node: &root };
    if let Some(format) = spot.member(FIELDS[FORMAT].key)
        && format.node.json != Json::Text(APPROVAL_FORMAT.into())
    {
        // Whatever else stands in a file of another format would only be called wrong.
        reader.fault(&format, Problem::NotAFormat, "\"steadfoot approval 1\"");
        return Err(reader.faults());
    }
    let top = reader.object(&spot, FIELDS, Others::Only(&["rule", "anchorage"]));
    let rule = rule(&mut reader, &spot);
    let values = anchorage(&mut reader, &spot, rule);
    match (rule, values) {
        (Some(rule), Some(values)) if reader.count() == 0 => Ok(Approval {
            rule,
            title: top.text(TITLE).unwrap_or("").into(),
            known: Known { fields: rule.fields, values },
        }),
        _ => Err(reader.faults()),
    }
}

/// The approval data of a project's anchorage; none where it has none, or its rule asks for none.
pub fn of_project(project: &Project) -> Option<Approval> {
    let anchorage = project.anchorage.as_ref()?;
    let rule = anchorage.rule;
    let kept = |(place, value): (usize, &Value)| {
        if rule.report_fields.contains(&place) { value.clone() } else { Value::Unknown }
    };
    let values = Values(anchorage.values.0.iter().enumerate().map(kept).collect());
    let known = Known { fields: rule.fields, values };
    (!rule.report_fields.is_empty()).then(|| Approval { rule, title: project.title.clone(), known })
}

fn rule<'t>(reader: &mut Reader<'t>, spot: &Spot<'t>) -> Option<&'static AnchorRule> {
    let with_data = || ANCHOR_RULES.iter().copied().filter(|rule| !rule.report_fields.is_empty());
    let ids = || with_data().map(|rule| rule.id).collect::<Vec<_>>().join(", ");
    match spot.member("rule") {
        Some(named) => {
            let found = with_data().find(|rule| named.node.json == Json::Text(rule.id.into()));
            if found.is_none() {
                reader.fault(&named, Problem::NotAWord, &ids());
            }
            found
        }
        None => {
            if spot.is_object() {
                reader.missing(spot, "rule", &ids());
            }
            None
        }
    }
}

/// The values of the anchorage; those of other fields stay unknown.
fn anchorage<'t>(reader: &mut Reader<'t>, spot: &Spot<'t>, rule: Option<&AnchorRule>) -> Option<Values> {
    let Some(anchorage) = spot.member("anchorage") else {
        if spot.is_object() {
            reader.missing(spot, "anchorage", "an object in braces");
        }
        return None;
    };
    let Some(rule) = rule else {
        reader.object(&anchorage, &[], Others::Any);
        return None;
    };
    // A default is the project's matter: only what the file says may replace what stands there.
    let field = |&place: &usize| {
        let field = rule.fields[place];
        Field { absent: if matches!(field.absent, Absent::Fault) { Absent::Fault } else { Absent::Unknown }, ..field }
    };
    let fields: Vec<Field> = rule.report_fields.iter().map(field).collect();
    let before = reader.count();
    let read = reader.object(&anchorage, &fields, Others::Only(&[]));
    let mut values = Values(rule.fields.iter().map(|_| Value::Unknown).collect());
    for (&place, value) in rule.report_fields.iter().zip(read.0) {
        values.0[place] = value;
    }
    if reader.count() == before {
        faults(reader, &anchorage, (rule, &values));
    }
    Some(values)
}

/// What the rule finds wrong with the values together, where it is a matter of the file.
fn faults(reader: &mut Reader, anchorage: &Spot, (rule, values): (&AnchorRule, &Values)) {
    let filled = |(field, value): (&Field, &Value)| match (value, field.absent) {
        (Value::Unknown, Absent::Is(number)) => Value::Number(number),
        (Value::Unknown, Absent::Word(place)) => Value::Choice(place),
        (Value::Unknown, Absent::Set(flag)) => Value::Flag(flag),
        (known, _) => known.clone(),
    };
    let mut found = Vec::new();
    (rule.faults)(&Values(rule.fields.iter().zip(&values.0).map(filled).collect()), &mut found);
    for (place, problem, allowed) in found {
        if rule.report_fields.contains(&place) {
            reader.member_fault(anchorage, rule.fields[place].key, problem, allowed);
        }
    }
}

/// The file as it is written, format first.
impl Serialize for Approval {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut file = serializer.serialize_struct("approval", 4)?;
        file.serialize_field("format", APPROVAL_FORMAT)?;
        file.serialize_field("rule", self.rule.id)?;
        file.serialize_field("title", &self.title)?;
        file.serialize_field("anchorage", &self.known)?;
        file.end()
    }
}

impl Serialize for Known {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let known = self.values.0.iter().filter(|value| **value != Value::Unknown).count();
        let mut anchorage = serializer.serialize_struct("anchorage", known)?;
        for (field, value) in self.fields.iter().zip(&self.values.0) {
            match (value, field.shape) {
                (Value::Number(number), _) => anchorage.serialize_field(field.key, number)?,
                (Value::Flag(flag), _) => anchorage.serialize_field(field.key, flag)?,
                (Value::Text(text), _) => anchorage.serialize_field(field.key, text)?,
                (Value::Choice(place), FieldShape::Choice(words)) => {
                    anchorage.serialize_field(field.key, words[*place])?;
                }
                _ => {}
            }
        }
        anchorage.end()
    }
}
