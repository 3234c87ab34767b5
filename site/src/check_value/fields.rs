//! Fields of a rule from an object of a block.

use serde_json::Value as Json;
use steadfoot::input::{Absent, Field, FieldShape, Value, Values};

use super::unit::quantity;

/// Values of a table of fields from an object of a block; keys that no field has are left to the runner.
pub fn field_values(fields: &[Field], object: &Json) -> Result<Values, String> {
    let mut values = Vec::new();
    for field in fields {
        values.push(match &object[field.key] {
            Json::Null => absent(field)?,
            json => given(field, json).map_err(|problem| format!("{}: {problem}", field.key))?,
        });
    }
    Ok(Values(values))
}

fn given(field: &Field, json: &Json) -> Result<Value, String> {
    match field.shape {
        FieldShape::Number { kind, .. } => Ok(Value::Number(quantity(json, kind)?)),
        FieldShape::Numbers { kind, count, .. } => {
            let list =
                json.as_array().filter(|list| list.len() == count).ok_or(format!("a list of {count} belongs here"))?;
            let mut numbers = [0.0; 3];
            for (number, json) in numbers.iter_mut().zip(list) {
                *number = quantity(json, kind)?;
            }
            Ok(Value::Numbers(numbers))
        }
        FieldShape::Choice(words) => {
            let place = words.iter().position(|word| json == word).ok_or(format!("{json} is none of {words:?}"))?;
            Ok(Value::Choice(place))
        }
        FieldShape::Flag => json.as_bool().map(Value::Flag).ok_or("a flag belongs here".into()),
        _ => Ok(Value::Text(json.as_str().ok_or("a text belongs here")?.into())),
    }
}

fn absent(field: &Field) -> Result<Value, String> {
    match field.absent {
        Absent::Fault => Err(format!("{} is missing", field.key)),
        Absent::Unknown => Ok(Value::Unknown),
        Absent::Is(number) => Ok(Value::Number(number)),
        Absent::Are(number) => Ok(Value::Numbers([number; 3])),
        Absent::Word(place) => Ok(Value::Choice(place)),
        Absent::Set(flag) => Ok(Value::Flag(flag)),
    }
}
