//! The JSON Schema of a project file, for editors: made from the same fields as the reader and the form.
//!
//! It says what single fields may hold; what parts must agree in (names, places, rules) only the reader knows. Only
//! native code asks for it.

use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;

use super::parts::{PARTS, Part, Presence, Rules};
use crate::calc::show::field_text;
use crate::calc::{Kind, System};
use crate::input::allowed::{CONTENTS_MAX, NAME_MAX};
use crate::input::open::{BETWEEN, ONE_OF};
use crate::input::{Absent, Field, FieldShape, FieldText};
use crate::rules::anchor::{ANCHOR_RULE_TEXTS, ANCHOR_RULES};
use crate::rules::demand::{DEMAND_RULE_TEXTS, DEMAND_RULES};
use tree::Tree;

/// The schema, indented.
pub fn schema() -> String {
    let mut root = match object_of(&PARTS[0]) {
        Tree::Object(members) => members,
        _ => Vec::new(),
    };
    let head =
        [("$schema", text("https://json-schema.org/draft/2020-12/schema")), ("title", text("Steadfoot project"))];
    root.retain(|(key, _)| key != "title");
    root.splice(0..0, head.map(|(key, tree)| (key.to_string(), tree)));
    let mut printed = String::new();
    Tree::Object(root).print(0, &mut printed);
    printed.push('\n');
    printed
}

/// The schema of a part as it stands in its parent: an object, one or nothing, or a list.
fn part(part: &Part) -> Tree {
    let schema = match part.rules {
        Rules::Demand => one_of(
            DEMAND_RULES
                .iter()
                .zip(DEMAND_RULE_TEXTS)
                .map(|(rule, texts)| rule_object(rule.id, texts.title, rule.fields, texts.fields)),
        ),
        Rules::Anchor => one_of(
            ANCHOR_RULES
                .iter()
                .zip(ANCHOR_RULE_TEXTS)
                .map(|(rule, texts)| rule_object(rule.id, texts.title, rule.fields, texts.fields)),
        ),
        Rules::None | Rules::AnchorOwn => object_of(part),
    };
    match part.presence {
        Presence::Required => schema,
        Presence::Optional => object_or_null(schema, part),
        Presence::List { max } => object(&[
            ("title", text(part.title)),
            ("description", text(part.help)),
            ("type", types(&["array", "null"])),
            ("maxItems", whole(max)),
            ("items", schema),
        ]),
    }
}

fn object_or_null(schema: Tree, part: &Part) -> Tree {
    object(&[
        ("title", text(part.title)),
        ("description", text(part.help)),
        ("anyOf", Tree::List(vec![schema, object(&[("type", text("null"))])])),
    ])
}

/// The object of a part with the parts inside it.
fn object_of(parent: &Part) -> Tree {
    let mut properties = match parent.path {
        // What the file itself is called and how it is assessed has to be known.
        "" => parent.fields.iter().zip(parent.texts).map(|(one, texts)| known(one, texts)).collect(),
        _ => fields(parent.fields, parent.texts),
    };
    let mut required = required(parent.fields);
    if parent.rules == Rules::AnchorOwn {
        properties.extend(own_fields());
    }
    for child in PARTS {
        if let Some(key) = key_in(parent, child) {
            if child.presence == Presence::Required {
                required.push(text(key));
            }
            properties.push((key.to_string(), part(child)));
        }
    }
    object(&[
        ("title", text(parent.title)),
        ("description", text(parent.help)),
        ("type", text("object")),
        ("properties", Tree::Object(properties)),
        ("required", Tree::List(required)),
        ("additionalProperties", Tree::Raw("false".into())),
    ])
}

/// The key of a part in another, if it stands right in it.
fn key_in<'c>(parent: &Part, child: &'c Part) -> Option<&'c str> {
    let path = child.path.trim_end_matches("[]");
    let (within, key) = path.rsplit_once('.').unwrap_or(("", path));
    (within == parent.path && !key.is_empty()).then_some(key)
}

fn rule_object(id: &str, title: &str, of: &[Field], texts: &[FieldText]) -> Tree {
    let mut properties = vec![("rule".to_string(), object(&[("const", text(id))]))];
    properties.extend(fields(of, texts));
    let mut needed = vec![text("rule")];
    needed.extend(required(of));
    object(&[
        ("title", text(title)),
        ("type", text("object")),
        ("properties", Tree::Object(properties)),
        ("required", Tree::List(needed)),
        ("additionalProperties", Tree::Raw("false".into())),
    ])
}

fn one_of(schemas: impl Iterator<Item = Tree>) -> Tree {
    object(&[("oneOf", Tree::List(schemas.collect()))])
}

/// What a single anchor may have of its own, whichever anchor rule is chosen.
fn own_fields() -> Vec<(String, Tree)> {
    let mut own: Vec<(String, Tree)> = Vec::new();
    for (rule, texts) in ANCHOR_RULES.iter().zip(ANCHOR_RULE_TEXTS) {
        for &place in rule.anchor_fields {
            let field = Field { absent: Absent::Unknown, ..rule.fields[place] };
            let next = self::field(&field, &texts.fields[place]);
            match own.iter_mut().find(|(key, _)| key == field.key) {
                None => own.push((field.key.to_string(), next)),
                Some((_, known)) if *known == next => {}
                Some((_, Tree::Object(members))) if members[0].0 == "anyOf" => {
                    if let Tree::List(others) = &mut members[0].1 {
                        others.push(next);
                    }
                }
                Some((_, known)) => *known = object(&[("anyOf", Tree::List(vec![known.clone(), next]))]),
            }
        }
    }
    own
}

fn fields(fields: &[Field], texts: &[FieldText]) -> Vec<(String, Tree)> {
    fields.iter().zip(texts).map(|(one, texts)| (one.key.to_string(), field(one, texts))).collect()
}

fn required(fields: &[Field]) -> Vec<Tree> {
    fields.iter().filter(|field| matches!(field.absent, Absent::Fault)).map(|field| text(field.key)).collect()
}

/// The schema of a field that has to be known, with its key.
fn known(field: &Field, texts: &FieldText) -> (String, Tree) {
    (field.key.to_string(), plain(field, texts))
}

/// The schema of a field that may be left open: its plain one, and what stands there when it is not known. Keywords of
/// numbers and of objects do not touch each other; only a list of words has to stand apart.
fn field(field: &Field, texts: &FieldText) -> Tree {
    let mut known = plain(field, texts);
    let Tree::Object(members) = &mut known else { return known };
    let place = members.iter().position(|(key, _)| key == "default").unwrap_or(members.len());
    match field.shape {
        FieldShape::Number { min, max, .. } => {
            members.splice(place..place, between(min, max));
            or_object(members);
        }
        FieldShape::Numbers { min, max, .. } => {
            if let Some((_, Tree::Object(items))) = members.iter_mut().find(|(key, _)| key == "items") {
                items.extend(between(min, max));
                or_object(items);
            }
        }
        FieldShape::Flag => {
            members.splice(
                place..place,
                open(ONE_OF, "\"minItems\": 2, \"uniqueItems\": true, \"items\": { \"type\": \"boolean\" }"),
            );
            or_object(members);
        }
        FieldShape::Choice(words) => {
            if let Some((key, list)) = members.iter_mut().find(|(key, _)| key == "enum") {
                let words: Vec<String> = words.iter().map(|word| alloc::format!("\"{word}\"")).collect();
                let items = alloc::format!("{{ \"enum\": [{}] }}", words.join(", "));
                let mut either = vec![("type".to_string(), text("object"))];
                either.extend(open(
                    ONE_OF,
                    &alloc::format!("\"minItems\": 2, \"uniqueItems\": true, \"items\": {items}"),
                ));
                let known = Tree::Object(vec![("enum".to_string(), list.clone())]);
                (*key, *list) = ("anyOf".to_string(), Tree::List(vec![known, Tree::Object(either)]));
            }
        }
        _ => {}
    }
    known
}

/// What an object may hold that stands where a number belongs.
fn between(min: f64, max: f64) -> [(String, Tree); 3] {
    let [min, max] = [min, max].map(|limit| field_text(limit, Kind::Number, System::Si));
    let items = alloc::format!("{{ \"type\": \"number\", \"minimum\": {min}, \"maximum\": {max} }}");
    open(BETWEEN, &alloc::format!("\"minItems\": 2, \"maxItems\": 2, \"items\": {items}"))
}

/// An object with one list, on one line.
fn open(key: &str, list: &str) -> [(String, Tree); 3] {
    [
        ("properties".to_string(), Tree::Raw(alloc::format!("{{ \"{key}\": {{ \"type\": \"array\", {list} }} }}"))),
        ("required".to_string(), Tree::List(vec![text(key)])),
        ("additionalProperties".to_string(), Tree::Raw("false".into())),
    ]
}

/// Lets an object stand where a plain value does.
fn or_object(members: &mut [(String, Tree)]) {
    if let Some((_, kind)) = members.iter_mut().find(|(key, _)| key == "type") {
        *kind = match kind.clone() {
            Tree::List(mut names) => {
                names.insert(names.len() - 1, text("object"));
                Tree::List(names)
            }
            name => Tree::List(vec![name, text("object")]),
        };
    }
}

fn plain(field: &Field, texts: &FieldText) -> Tree {
    let mut members = vec![("title", text(texts.label)), ("description", text(texts.help))];
    let can_be_null = !matches!(field.absent, Absent::Fault);
    let kind = |name: &str| if can_be_null { types(&[name, "null"]) } else { text(name) };
    match field.shape {
        FieldShape::Number { min, max, .. } => members.extend(limits(kind("number"), min, max)),
        FieldShape::Numbers { count, min, max, .. } => members.extend([
            ("type", kind("array")),
            ("minItems", whole(count)),
            ("maxItems", whole(count)),
            ("items", object(&limits(text("number"), min, max))),
        ]),
        FieldShape::Choice(words) => {
            let mut words: Vec<Tree> = words.iter().map(|word| text(word)).collect();
            if can_be_null {
                words.push(Tree::Raw("null".into()));
            }
            members.push(("enum", Tree::List(words)));
        }
        FieldShape::Flag => members.push(("type", kind("boolean"))),
        FieldShape::Text => members.extend([("type", kind("string")), ("maxLength", whole(NAME_MAX))]),
        FieldShape::Name => {
            members.extend([("type", kind("string")), ("minLength", whole(1)), ("maxLength", whole(NAME_MAX))]);
        }
        FieldShape::NamesOfContents => members.extend([
            ("type", kind("array")),
            ("maxItems", whole(CONTENTS_MAX)),
            ("uniqueItems", Tree::Raw("true".into())),
            ("items", object(&[("type", text("string"))])),
        ]),
        FieldShape::NumbersOfContents { min, max, .. } => members.extend([
            ("type", kind("object")),
            ("additionalProperties", object(&limits(types(&["number", "null"]), min, max))),
        ]),
    }
    members.extend(default(field).map(|default| ("default", default)));
    object(&members)
}

fn limits(kind: Tree, min: f64, max: f64) -> [(&'static str, Tree); 3] {
    [("type", kind), ("minimum", number(min)), ("maximum", number(max))]
}

fn default(field: &Field) -> Option<Tree> {
    Some(match (field.absent, field.shape) {
        (Absent::Is(default), _) => number(default),
        (Absent::Are(default), FieldShape::Numbers { count, .. }) => Tree::List(vec![number(default); count]),
        (Absent::Word(place), FieldShape::Choice(words)) => text(words[place]),
        (Absent::Set(flag), _) => Tree::Raw(flag.to_string()),
        _ => return None,
    })
}

fn object(members: &[(&str, Tree)]) -> Tree {
    Tree::Object(members.iter().map(|(key, tree)| (key.to_string(), tree.clone())).collect())
}

fn text(text: &str) -> Tree {
    Tree::Text(text.into())
}

fn types(names: &[&str]) -> Tree {
    Tree::List(names.iter().map(|name| text(name)).collect())
}

fn whole(number: usize) -> Tree {
    Tree::Raw(number.to_string())
}

fn number(number: f64) -> Tree {
    Tree::Raw(field_text(number, Kind::Number, System::Si))
}

/// A JSON text to be printed.
mod tree {
    use alloc::string::String;
    use alloc::vec::Vec;

    #[derive(Clone, PartialEq)]
    pub enum Tree {
        Text(String),
        Raw(String),
        List(Vec<Tree>),
        Object(Vec<(String, Tree)>),
    }

    impl Tree {
        pub fn print(&self, indent: usize, printed: &mut String) {
            match self {
                Tree::Text(text) => push_text(text, printed),
                Tree::Raw(raw) => printed.push_str(raw),
                // What has no parts of its own stays on one line.
                Tree::List(items) if items.iter().all(|item| matches!(item, Tree::Text(_) | Tree::Raw(_))) => {
                    printed.push('[');
                    for (place, item) in items.iter().enumerate() {
                        printed.push_str(if place > 0 { ", " } else { "" });
                        item.print(indent, printed);
                    }
                    printed.push(']');
                }
                Tree::List(items) => {
                    printed.push('[');
                    for (place, item) in items.iter().enumerate() {
                        new_line(place, indent + 1, printed);
                        item.print(indent + 1, printed);
                    }
                    new_line(0, indent, printed);
                    printed.push(']');
                }
                Tree::Object(members) => {
                    printed.push('{');
                    for (place, (key, value)) in members.iter().enumerate() {
                        new_line(place, indent + 1, printed);
                        push_text(key, printed);
                        printed.push_str(": ");
                        value.print(indent + 1, printed);
                    }
                    new_line(0, indent, printed);
                    printed.push('}');
                }
            }
        }
    }

    fn new_line(place: usize, indent: usize, printed: &mut String) {
        printed.push_str(if place > 0 { ",\n" } else { "\n" });
        for _ in 0..indent {
            printed.push_str("  ");
        }
    }

    fn push_text(text: &str, printed: &mut String) {
        printed.push('"');
        for letter in text.chars() {
            if matches!(letter, '"' | '\\') {
                printed.push('\\');
            }
            printed.push(letter);
        }
        printed.push('"');
    }
}
