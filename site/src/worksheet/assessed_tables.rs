//! What was assessed: the states of the cabinet and the load cases of the rule.

use steadfoot::calc::Kind;
use steadfoot::calc::show::Rounding::{Nearest, Up};

use super::assessed::Assessed;
use super::math::with_symbols;
use super::words::{plain, row};

/// The states with mass and centre of gravity.
pub fn states(assessed: &Assessed) -> String {
    let rows = assessed.report.states.iter().map(|state| {
        let mut cells = vec![plain(state.mass_kg, Kind::Mass, Nearest), plain(state.aboard_kg, Kind::Mass, Nearest)];
        cells.extend(state.centre_mm.map(|length| plain(length, Kind::Length, Nearest)));
        (state.name.clone(), cells)
    });
    let heads = ["State", "Mass", "Aboard", "Centre of gravity, x", "Centre, y", "Centre, z"];
    table("load-out", "Load-out", &heads, rows.collect())
}

/// The load cases with their factors.
pub fn cases(assessed: &Assessed) -> String {
    let rows = assessed.report.cases.iter().map(|case| {
        let level = match case.level {
            "component" => "the cabinet itself",
            "concrete" => "concrete under the feet",
            "anchorage" => "anchors in concrete",
            _ => "anchors in concrete, amplified",
        };
        let directions = if case.directions == "any" { "every direction" } else { "100 % with 30 %" };
        let cells = vec![
            plain(case.gravity, Kind::Number, Nearest),
            plain(case.vertical, Kind::Number, Nearest),
            plain(case.horizontal, Kind::Number, Up),
            level.into(),
            directions.into(),
        ];
        (row(case.name).to_string(), cells)
    });
    let rows: Vec<_> = rows.collect();
    if rows.is_empty() {
        return "<p class=\"note\">There are no load cases: no rule is chosen, or it does not reach this input.</p>\n"
            .into();
    }
    let heads = ["Load case", "Weight times", "Vertical, g", "Horizontal, g", "For", "Directions"];
    table("demand", "Demand", &heads, rows)
}

fn table(part: &str, label: &str, heads: &[&str], rows: Vec<(String, Vec<String>)>) -> String {
    let head: String = heads.iter().map(|head| format!("<th scope=\"col\">{head}</th>")).collect();
    let body = |(name, cells): (String, Vec<String>)| {
        let cells: String = cells
            .iter()
            .zip(&heads[1..])
            .map(|(cell, head)| format!("<td data-label=\"{head}\">{cell}</td>"))
            .collect();
        format!("<tbody><tr><th scope=\"row\">{}</th>{cells}</tr></tbody>\n", with_symbols(&name))
    };
    let body: String = rows.into_iter().map(body).collect();
    format!(
        "<div class=\"assessed\" data-assessed=\"{part}\"><div class=\"wide\" tabindex=\"0\" role=\"group\" \
         aria-label=\"{label}\"><table class=\"assessed-table\">\n<thead><tr>{head}</tr></thead>\n{body}</table></div></div>\n"
    )
}
