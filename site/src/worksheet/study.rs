//! A study as it stands without scripts: its pictures and tables for an example.

use anyhow::Context;
use serde_json::Value;
use steadfoot::calc::show::Rounding;
use steadfoot::calc::{StepId, System};
use steadfoot::project::Project;
use steadfoot::report::drawing::{Drawing, Painter, bars, figure, plot};
use steadfoot::report::table::{Cell, Column, Table};
use steadfoot::study::{self, Picture, STUDY_TEXTS};

use super::assessed::of_config;
use super::math::with_symbols;
use super::words;
use crate::document::escaped;
use crate::svg::svg;

const WIDTH_PX: f64 = 480.0;

/// A study of a demo within a chapter: `{"demo": "02", "study": "strength"}`.
pub fn of_chapter(config: &Value) -> anyhow::Result<String> {
    let id = config["study"].as_str().context("a study is named by \"study\"")?;
    of_project(id, &of_config(config)?.project)
}

/// The study with its heading.
pub fn of_project(id: &str, project: &Project) -> anyhow::Result<String> {
    let study = study::study(id).with_context(|| format!("there is no study \"{id}\""))?;
    let text = STUDY_TEXTS.iter().find(|text| text.id == id).context("every study has texts")?;
    let mut html = format!(
        "<section class=\"study\" data-study=\"{id}\"><h3>{}</h3><p class=\"help\">{}</p>\n",
        escaped(text.title),
        with_symbols(text.help)
    );
    match (study.make)(project, "") {
        Ok(shown) => {
            for picture in &shown.pictures {
                html += &framed(&painted(picture));
            }
            for table in &shown.tables {
                html += &self::table(table);
            }
            for note in &shown.notes {
                html += &format!("<p class=\"note\">{}.</p>\n", with_symbols(&words::sentence_case(&said(*note))));
            }
        }
        Err(reason) => {
            html += &format!("<p class=\"note\">{}.</p>\n", with_symbols(&words::sentence_case(&said(reason))))
        }
    }
    Ok(html + "</section>\n")
}

fn said(id: StepId) -> String {
    study::text(id).map_or_else(String::new, |row| row.what.to_string())
}

fn painted(picture: &Picture) -> Drawing {
    let painter = Painter { width_px: WIDTH_PX, system: System::Si, words: &said };
    match picture {
        Picture::Plot(one) => plot(one, &painter),
        Picture::Bars(one) => bars(one, &painter),
        Picture::Figure(one) => figure(one, &painter),
    }
}

fn framed(drawing: &Drawing) -> String {
    format!(
        "<figure class=\"figure {}\"><div class=\"frame\">{}</div><figcaption>{}</figcaption></figure>\n",
        drawing.view,
        svg(drawing),
        escaped(&drawing.title)
    )
}

fn table(table: &Table) -> String {
    let name = words::sentence_case(&said(table.name));
    let classes: Vec<&str> = (0..table.columns.len()).map(|place| class_of(table, place)).collect();
    let heads: String = table
        .columns
        .iter()
        .zip(&classes)
        .map(|(column, class)| format!("<th scope=\"col\"{class}>{}</th>", with_symbols(&said(column.name))))
        .collect();
    let wordy = classes.iter().filter(|class| class.is_empty()).count();
    let many = if classes.len() > if wordy > 1 { 3 } else { 4 } { " class=\"many\"" } else { "" };
    let mut html = format!(
        "<div class=\"study-table\"><div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"{}\"><table{many}><caption>{}</caption>\
         <thead><tr>{heads}</tr></thead><tbody>\n",
        escaped(&name),
        with_symbols(&name)
    );
    for line in &table.rows {
        html += if line.is_marked { "<tr class=\"marked\">" } else { "<tr>" };
        for ((cell, column), class) in line.cells.iter().zip(&table.columns).zip(&classes) {
            let label = escaped(&said(column.name));
            html += &format!("<td{class} data-label=\"{label}\">{}</td>", with_symbols(&cell_text(cell, column)));
        }
        html += "</tr>\n";
    }
    html + "</tbody></table></div></div>\n"
}

/// Columns of numbers alone stand at the right, so that their digits can be compared.
fn class_of(table: &Table, place: usize) -> &'static str {
    let is_figure =
        |cell: &Cell| matches!(cell, Cell::Nothing | Cell::Number(_) | Cell::Range(_) | Cell::Measured { .. });
    let is_of_figures = table.rows.iter().all(|line| line.cells.get(place).is_none_or(is_figure));
    if is_of_figures { " class=\"figures\"" } else { "" }
}

fn cell_text(cell: &Cell, column: &Column) -> String {
    match cell {
        Cell::Nothing => "–".to_string(),
        Cell::Number(value) => words::plain(*value, column.kind, column.rounding),
        Cell::Range([low, high]) => {
            let low = words::plain(*low, column.kind, Rounding::Down);
            format!("{low} to {}", words::plain(*high, column.kind, Rounding::Up))
        }
        Cell::Measured { ends: [low, high], kind } if low == high => words::plain(*low, *kind, column.rounding),
        Cell::Measured { ends: [low, high], kind } => {
            let low = words::plain(*low, *kind, Rounding::Down);
            format!("{low} to {}", words::plain(*high, *kind, Rounding::Up))
        }
        Cell::Name(id) => said(*id),
        Cell::Text(text) => text.clone(),
        Cell::Check(check) => check.title().to_string(),
        Cell::Status(status) => words::status(*status).to_string(),
    }
}
