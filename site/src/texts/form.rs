//! The form: parts of the project file, fields of the rules, problems.

use serde_json::{Map, Value, json};
use steadfoot::input::fault::{PROBLEM_TEXTS, PROBLEMS};
use steadfoot::input::field::{Absent, Field, FieldShape, FieldText};
use steadfoot::project::parts::{PARTS, Presence, Rules};
use steadfoot::rules::anchor::{ANCHOR_RULE_TEXTS, ANCHOR_RULES};
use steadfoot::rules::demand::{DEMAND_RULE_TEXTS, DEMAND_RULES};
use steadfoot::rules::place::{PlaceTable, PlaceValue, places_of};

use super::{folds, rows::trust};

/// What each problem says, by the word that stands in a fault.
pub fn problems() -> Value {
    let words = PROBLEMS.iter().map(|problem| serde_json::to_value(problem).unwrap_or_default());
    let all: Map<String, Value> =
        words.zip(PROBLEM_TEXTS).filter_map(|(word, text)| Some((word.as_str()?.to_string(), json!(text)))).collect();
    Value::Object(all)
}

/// The parts of the project file in the order of the form.
pub fn parts() -> Value {
    let parts = PARTS.iter().map(|part| {
        let (presence, max) = match part.presence {
            Presence::Required => ("required", None),
            Presence::Optional => ("optional", None),
            Presence::List { max } => ("list", Some(max)),
        };
        let rules = match part.rules {
            Rules::None => "none",
            Rules::Demand => "demand",
            Rules::Anchor => "anchor",
            Rules::AnchorOwn => "anchor-own",
        };
        json!({
            "id": part.id, "path": part.path, "presence": presence, "max": max, "rules": rules, "title": part.title,
            "noun": part.noun, "help": part.help, "fields": fields(part.fields, part.texts),
            "fresh": serde_json::from_str::<Value>(part.fresh).unwrap_or_default(),
        })
    });
    Value::Array(parts.collect())
}

/// The rules, and the fields of all of them, each once: a rule names its own by their places.
pub fn rules() -> (Value, Vec<Value>) {
    let mut all = Vec::new();
    let mut placed = |told: Value| {
        let Value::Array(fields) = told else { return Value::Null };
        let mut place = |field| {
            all.iter().position(|known| *known == field).unwrap_or_else(|| {
                all.push(field);
                all.len() - 1
            })
        };
        Value::Array(fields.into_iter().map(|field| json!(place(field))).collect())
    };
    let demand = DEMAND_RULES.iter().zip(DEMAND_RULE_TEXTS).map(|(rule, text)| {
        json!({
            "id": rule.id, "title": text.title, "document": text.document.title, "stops": text.stops,
            "fields": placed(fields(rule.fields, text.fields)), "places": places_of(rule.id).map(places).collect::<Vec<_>>(),
        })
    });
    let demand = demand.collect::<Vec<_>>();
    let anchor = ANCHOR_RULES.iter().zip(ANCHOR_RULE_TEXTS).map(|(rule, text)| {
        json!({
            "id": rule.id, "title": text.title, "document": text.document.title, "stops": text.stops,
            "fields": placed(fields(rule.fields, text.fields)), "anchor_fields": rule.anchor_fields, "folds": folds::of(rule.id, rule.fields),
        })
    });
    let anchor = anchor.collect::<Vec<_>>();
    (json!({ "demand": demand, "anchor": anchor }), all)
}

/// A table of places: each row is the name and a value for each field.
fn places(table: &PlaceTable) -> Value {
    let rows = table.rows.iter().map(|place| {
        let values = place.values.iter().map(|value| match value {
            PlaceValue::Number(number) => json!(number),
            PlaceValue::Word(word) => json!(word),
        });
        Value::Array([json!(place.name)].into_iter().chain(values).collect())
    });
    json!({
        "title": table.title, "fields": table.fields, "rows": rows.collect::<Vec<_>>(),
        "source": format!("{} {}", table.document.short, table.source).trim_end(), "trust": trust(table.trust),
    })
}

fn fields(fields: &[Field], texts: &[FieldText]) -> Value {
    let told = fields.iter().zip(texts).map(|(field, text)| {
        let mut told = Map::new();
        let mut put = |key: &str, value: Value| told.insert(key.to_string(), value);
        put("key", json!(field.key));
        put("label", json!(text.label));
        put("help", json!(text.help));
        put("clause", json!(text.clause));
        match field.shape {
            FieldShape::Number { kind, min, max } => {
                put("shape", json!("number"));
                put("kind", json!(kind.code()));
                put("min", json!(min));
                put("max", json!(max));
            }
            FieldShape::Numbers { kind, count, min, max } => {
                put("shape", json!("numbers"));
                put("kind", json!(kind.code()));
                put("count", json!(count));
                put("min", json!(min));
                put("max", json!(max));
            }
            FieldShape::NumbersOfContents { kind, min, max } => {
                put("shape", json!("numbers_of_contents"));
                put("kind", json!(kind.code()));
                put("min", json!(min));
                put("max", json!(max));
            }
            FieldShape::Choice(words) => {
                put("shape", json!("choice"));
                put("words", json!(words));
                put("labels", json!(text.words));
            }
            FieldShape::Flag => drop(put("shape", json!("flag"))),
            FieldShape::Text => drop(put("shape", json!("text"))),
            FieldShape::Name => drop(put("shape", json!("name"))),
            FieldShape::NamesOfContents => drop(put("shape", json!("names_of_contents"))),
        }
        match field.absent {
            Absent::Fault => drop(put("absent", json!("fault"))),
            Absent::Unknown => drop(put("absent", json!("unknown"))),
            Absent::Is(value) | Absent::Are(value) => {
                put("absent", json!("default"));
                put("default", json!(value));
            }
            Absent::Word(place) => {
                put("absent", json!("default"));
                if let FieldShape::Choice(words) = field.shape {
                    put("default", json!(words[place]));
                }
            }
            Absent::Set(value) => {
                put("absent", json!("default"));
                put("default", json!(value));
            }
        }
        Value::Object(told)
    });
    Value::Array(told.collect())
}
