//! A file with other values in some of its places.

use serde_json::{Value, json};
use steadfoot::explore::Edit;

/// Puts edits into a file as the page does.
pub fn edited(value: &Value, edits: &[Edit]) -> Value {
    let mut value = value.clone();
    for edit in edits {
        let mut place = &mut value;
        for key in edit.path.replace('[', ".").replace(']', "").split('.') {
            place = match key.parse::<usize>() {
                Ok(number) => &mut place[number],
                Err(_) => &mut place[key],
            };
        }
        *place = edit.word.map_or(json!(edit.value), |word| json!(word));
    }
    value
}
