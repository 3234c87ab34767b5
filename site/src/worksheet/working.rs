//! A working: every step that led to a result, with its formula, the numbers put in, its clause and its trust.

use std::collections::BTreeMap;

use steadfoot::calc::show::{Reading, Rounding, Style, show};
use steadfoot::calc::{Kind, Section, Shape, Step, StepText, Subject};
use steadfoot::study::text;

use super::check_list::clause;
use super::math::{self, Inside, with_symbols};
use super::{trust, words};
use crate::document::escaped;

/// Sections one below the other, each with its heading.
pub fn working<'a>(sections: impl IntoIterator<Item = &'a Section>) -> String {
    let mut html = String::from("<div class=\"working\">\n");
    for section in sections.into_iter().filter(|section| !section.steps.is_empty()) {
        let title = section.check.map_or(words::part(section.part), |check| words::check_title(check.id()));
        let subject = match section.subject {
            Subject::Whole => String::new(),
            Subject::Foot(place) => format!(" · foot {}", place + 1),
            Subject::Anchor(place) => format!(" · anchor {}", place + 1),
            Subject::Group(number) => format!(" · group {number}"),
        };
        html += &format!("<section class=\"section\"><h3>{}{subject}</h3>\n<ol class=\"steps\">\n", escaped(title));
        html += &steps(section);
        html += "</ol>\n</section>\n";
    }
    html + "</div>\n"
}

fn steps(section: &Section) -> String {
    let mut known: BTreeMap<&str, (f64, Kind, u16)> = BTreeMap::new();
    let mut html = String::new();
    let mut rest = section.steps.as_slice();
    while let [step, ..] = rest {
        let Some(row) = text(step.id) else { break };
        // Values of an indexed quantity stand in one table.
        let is_same = |next: &&Step| step.index > 0 && next.id == step.id && next.index > 0;
        let length = rest.iter().take_while(is_same).count().max(1);
        html += &if step.index > 0 { indexed(section, row, &rest[..length]) } else { one(section, row, step, &known) };
        known.insert(row.symbol, (step.value, row.kind, step.index));
        rest = &rest[length..];
    }
    html
}

fn one(section: &Section, row: &StepText, step: &Step, known: &BTreeMap<&str, (f64, Kind, u16)>) -> String {
    let is_named = matches!(row.shape, Shape::Name | Shape::Reason);
    let formula = if step.carried { None } else { math::formula(row) };
    let symbol = if row.symbol.is_empty() { String::new() } else { math::symbol(row.symbol, 0) };
    let mut pieces = Vec::new();
    if let Some(set) = &formula {
        let symbolic = math::filled(set, |name| math::symbol(name, 0));
        pieces.push(format!("{symbol}<mo>=</mo>{symbolic}"));
        let numbers = math::filled(set, |name| match known.get(name) {
            Some(&(value, kind, 0)) => {
                let text = base(section, value, kind);
                math::number(text.split('\u{a0}').next().unwrap_or(""), Inside::Formula)
            }
            _ => math::symbol(name, 0),
        });
        // A bare name, or a sum whose terms stand in the rows above, has nothing to put in.
        if set.template.chars().count() > 1 && numbers != symbolic {
            pieces.push(format!("<mo>=</mo>{numbers}"));
        }
        pieces.push(format!("<mo>=</mo>{}", math::quantity(&base(section, step.value, row.kind))));
    } else if !is_named {
        let equals = if symbol.is_empty() { "" } else { "<mo>=</mo>" };
        pieces.push(format!("{symbol}{equals}{}", math::quantity(&base(section, step.value, row.kind))));
    }
    let pieces: String =
        pieces.iter().map(|piece| format!("<span class=\"piece\">{}</span>", math::math(piece))).collect();
    let carried = if step.carried { "<span class=\"carried\"> (from above)</span>" } else { "" };
    let set = if pieces.is_empty() { String::new() } else { format!("<div class=\"formula\">{pieces}</div>") };
    let plain = if formula.is_none() { " plain-step" } else { "" };
    format!(
        "<li class=\"step{plain}\"><div class=\"said\"><p class=\"what\">{}{carried}</p>{set}</div>{}</li>\n",
        with_symbols(row.what),
        margin(row)
    )
}

fn indexed(section: &Section, row: &StepText, run: &[Step]) -> String {
    let value = |step: &Step| {
        let quantity = math::quantity(&base(section, step.value, row.kind));
        format!("<li>{}</li>", math::math(&format!("{}<mo>=</mo>{quantity}", math::symbol(row.symbol, step.index))))
    };
    format!(
        "<li class=\"step each\"><div class=\"said\"><p class=\"what\">{}</p><div class=\"wide\" tabindex=\"0\" role=\"group\" \
         aria-label=\"{}\"><ul class=\"values\">{}</ul></div></div>{}</li>\n",
        with_symbols(row.what),
        escaped(row.what),
        run.iter().map(value).collect::<String>(),
        margin(row)
    )
}

fn margin(row: &StepText) -> String {
    format!("<p class=\"margin\">{} {}</p>", trust::mark(row.trust), escaped(&clause(row.clause)))
}

fn base(section: &Section, value: f64, kind: Kind) -> String {
    let rounding = if kind == Kind::Utilisation { Rounding::Up } else { Rounding::Nearest };
    let style = Style { from: section.system, to: section.system, reading: Reading::Base, rounding, digits: 0 };
    show(value, kind, style)
}
