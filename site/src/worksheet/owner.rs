//! What to ask the owner of the floor, as it stands without scripts: the same rows as the page's.

use anyhow::Context;
use serde_json::Value;
use steadfoot::calc::System;
use steadfoot::calc::show::{field_reading, field_text, unit_text};
use steadfoot::input::field::{Absent, Field, FieldShape, FieldText};
use steadfoot::project::asked::{ASKED, Asked, Put, asked_of_site, part_of};
use steadfoot::project::parts::Part;
use steadfoot::rules::demand::{DEMAND_RULE_TEXTS, DEMAND_RULES};

use super::assessed::Assessed;
use super::math::with_symbols;
use crate::document::escaped;
use crate::texts::waiting;

/// Heads of the table: what is asked, what may stand there, what waits for it, what the file says, room for the answer.
pub const HEADS: [&str; 5] = ["What to ask", "Allowed", "What waits for it", "In the file", "Answer"];
/// What waits for a field of the site.
pub const PUSH: &str = "how hard it is pushed";
/// What stands where the file says nothing.
pub const TO_ASK: &str = "to be asked";
/// What closes the page.
pub const IN_WRITING: &str =
    "Ask for answers in writing and with their source. A limit on this page belongs to whoever gives it.";

/// The table of questions for a project.
pub fn questions(assessed: &Assessed) -> anyhow::Result<String> {
    let tree: Value = serde_json::from_str(&assessed.text)?;
    let mut html = String::from(
        "<section class=\"owner-questions\"><div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"Questions\"><table><thead><tr>",
    );
    html.extend(HEADS.iter().map(|head| format!("<th scope=\"col\">{head}</th>")));
    html += "</tr></thead>\n";
    let kind = tree["floor"]["kind"].as_str();
    let is_put = |asked: &Asked| match asked.put {
        Put::Always => true,
        Put::OnGround => kind != Some("suspended"),
        Put::Suspended => kind != Some("on-ground"),
    };
    let put: Vec<&Asked> = ASKED.iter().filter(|asked| is_put(asked)).collect();
    for group in put.chunk_by(|one, next| head_of(one) == head_of(next)) {
        html += &opened(part_of(head_of(group[0])).context("a question names its part")?.title);
        for run in group.chunk_by(|_, next| next.is_instead) {
            let is_given = run.iter().any(|asked| in_file(asked, &tree).is_some());
            for asked in run {
                html += &row(asked, &tree, is_given)?;
            }
        }
        html += "</tbody>\n";
    }
    Ok(html + &of_site(&tree) + "</table></div>\n" + &format!("<p class=\"note\">{IN_WRITING}</p></section>\n"))
}

/// Edges, boundaries and openings stand with their slab.
fn head_of(asked: &Asked) -> &'static str {
    if matches!(asked.part, "edges" | "boundary" | "opening") { "slab" } else { asked.part }
}

fn opened(title: &str) -> String {
    format!("<tbody><tr><th colspan=\"5\" scope=\"rowgroup\">{}</th></tr>\n", escaped(title))
}

fn row(asked: &Asked, tree: &Value, is_given: bool) -> anyhow::Result<String> {
    let part = part_of(asked.part).context("a question names its part")?;
    let given = in_file(asked, tree);
    let (label, allowed, assumed) = match field_of(part, asked.key) {
        Some((field, text)) => (text.label.to_string(), allowed(field, text), assumed(field, text)),
        None => (part.title.to_string(), of_whole(part), None),
    };
    let label = if asked.is_instead { format!("or: {label}") } else { label };
    let says = match (given, assumed) {
        (Some(given), _) => Says::Given(given),
        _ if is_given => Says::Given("–".into()),
        (None, Some(assumed)) if at(tree, part.path).is_object() => Says::Given(format!("assumed: {assumed}")),
        _ => Says::ToAsk,
    };
    Ok(cells(&label, &allowed, &waiting(asked.checks), &says))
}

enum Says {
    Given(String),
    ToAsk,
}

fn cells(label: &str, allowed: &str, why: &str, says: &Says) -> String {
    let (class, says) = match says {
        Says::Given(text) if text.starts_with(TO_ASK) => (" class=\"marked\"", text.as_str()),
        Says::Given(text) => ("", text.as_str()),
        Says::ToAsk => (" class=\"marked\"", TO_ASK),
    };
    format!(
        "<tr{class}><td data-label=\"{}\">{}</td><td data-label=\"{}\">{}</td><td data-label=\"{}\">{}</td><td data-label=\"{}\">{}</td><td class=\"room\" data-label=\"{}\"></td></tr>\n",
        HEADS[0],
        with_symbols(label),
        HEADS[1],
        escaped(allowed),
        HEADS[2],
        escaped(why),
        HEADS[3],
        escaped(says),
        HEADS[4],
    )
}

/// The fields of the site by its rule; without one, that a rule is to be chosen.
fn of_site(tree: &Value) -> String {
    let title = part_of("site").map_or("", |part| part.title);
    let rule = DEMAND_RULES.iter().position(|rule| tree["site"]["rule"].as_str() == Some(rule.id));
    let Some(rule) = rule else {
        return opened(title) + &cells("Rule", "the seismic rule that holds there", PUSH, &Says::ToAsk) + "</tbody>\n";
    };
    let (fields, texts) = (DEMAND_RULES[rule].fields, DEMAND_RULE_TEXTS[rule].fields);
    let mut html = opened(&format!("{title}: {}", DEMAND_RULE_TEXTS[rule].title));
    for field in asked_of_site(fields) {
        let Some(text) = fields.iter().position(|known| known.key == field.key).map(|place| &texts[place]) else {
            continue;
        };
        let says = match (shown(&tree["site"][field.key], field, text), assumed(field, text)) {
            (Some(given), _) => Says::Given(given),
            (None, Some(assumed)) => Says::Given(format!("assumed: {assumed}")),
            (None, None) => Says::ToAsk,
        };
        html += &cells(text.label, &allowed(field, text), PUSH, &says);
    }
    html + "</tbody>\n"
}

fn field_of(part: &Part, key: &str) -> Option<(&'static Field, &'static FieldText)> {
    let place = part.fields.iter().position(|field| field.key == key)?;
    Some((&part.fields[place], &part.texts[place]))
}

fn at<'t>(tree: &'t Value, path: &str) -> &'t Value {
    path.trim_end_matches("[]").split('.').fold(tree, |tree, key| &tree[key])
}

fn in_file(asked: &Asked, tree: &Value) -> Option<String> {
    let part = part_of(asked.part)?;
    let found = at(tree, part.path);
    match field_of(part, asked.key) {
        Some((field, text)) => shown(&found[asked.key], field, text),
        None => whole(part, found),
    }
}

/// A part asked for as a whole: how many of a list, or its numbers with their labels. An edge that nobody gave counts as
/// far, which the owner is told, because it is only right where it is so.
fn whole(part: &Part, found: &Value) -> Option<String> {
    if let Some(list) = found.as_array() {
        return Some(list.len().to_string());
    }
    let found = found.as_object()?;
    let (mut told, mut far) = (Vec::new(), Vec::new());
    for (field, text) in part.fields.iter().zip(part.texts) {
        match found.get(field.key).and_then(|value| shown(value, field, text)) {
            Some(value) => told.push(format!("{} {value}", field.key)),
            None => far.push(field.key),
        }
    }
    if !far.is_empty() {
        told.push(format!("assumed far: {}", far.join(", ")));
    }
    Some(told.join("; "))
}

fn of_whole(part: &Part) -> String {
    match part.fields.first().map(|field| field.shape) {
        Some(FieldShape::Number { kind, .. }) => {
            format!("each in {}", unit_text(kind, System::Si, field_reading(kind)))
        }
        _ => "each with its place and size".into(),
    }
}

fn shown(value: &Value, field: &Field, text: &FieldText) -> Option<String> {
    let with_unit = |number: f64, kind| {
        let unit = unit_text(kind, System::Si, field_reading(kind));
        format!("{} {unit}", field_text(number, kind, System::Si)).trim_end().to_string()
    };
    // What is left open in the file is asked too, and the owner sees what it is thought to be.
    for (key, joint) in [("between", " to "), ("one_of", " or ")] {
        if let Some(list) = value[key].as_array() {
            let each = list.iter().filter_map(|one| shown(one, field, text)).collect::<Vec<_>>();
            return Some(format!("{TO_ASK}: {}", each.join(joint)));
        }
    }
    match field.shape {
        FieldShape::Number { kind, .. } => value.as_f64().map(|number| with_unit(number, kind)),
        FieldShape::Numbers { kind, .. } => value.as_array().map(|list| {
            list.iter().filter_map(Value::as_f64).map(|one| with_unit(one, kind)).collect::<Vec<_>>().join(", ")
        }),
        FieldShape::Choice(words) => {
            let place = words.iter().position(|word| Some(*word) == value.as_str())?;
            Some(text.words.get(place).unwrap_or(&words[place]).to_string())
        }
        FieldShape::Flag => value.as_bool().map(|is_so| if is_so { "yes" } else { "no" }.into()),
        _ => value.as_str().map(Into::into),
    }
}

fn assumed(field: &Field, text: &FieldText) -> Option<String> {
    let value = match (field.absent, field.shape) {
        (Absent::Is(number), _) => Value::from(number),
        (Absent::Set(is_so), _) => Value::from(is_so),
        (Absent::Word(place), FieldShape::Choice(words)) => Value::from(words[place]),
        _ => return None,
    };
    shown(&value, field, text)
}

/// Groups of three in front of the decimal point, as the engine prints them.
fn in_groups(text: &str) -> String {
    let (whole, rest) = text.split_at(text.find('.').unwrap_or(text.len()));
    if whole.len() < 5 {
        return text.into();
    }
    let mut grouped = String::new();
    for (place, digit) in whole.chars().enumerate() {
        if place > 0 && (whole.len() - place).is_multiple_of(3) {
            grouped.push('\u{a0}');
        }
        grouped.push(digit);
    }
    grouped + rest
}

fn allowed(field: &Field, text: &FieldText) -> String {
    let ends = |kind, min, max| {
        let [min, max] = [min, max].map(|end| in_groups(&field_text(end, kind, System::Si)));
        format!("{min} to {max} {}", unit_text(kind, System::Si, field_reading(kind))).trim_end().to_string()
    };
    match field.shape {
        FieldShape::Number { kind, min, max } => ends(kind, min, max),
        FieldShape::Numbers { kind, count, min, max } => format!("{count} numbers, {}", ends(kind, min, max)),
        // A long list of words is the answer's own matter.
        FieldShape::Choice(words) if words.len() > 6 => "one of the list".into(),
        FieldShape::Choice(words) => {
            let shown = |place: usize| *text.words.get(place).unwrap_or(&words[place]);
            (0..words.len()).map(shown).collect::<Vec<_>>().join("; ")
        }
        FieldShape::Flag => "yes or no".into(),
        _ => "a text".into(),
    }
}
