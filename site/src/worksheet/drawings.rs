//! Plan, elevation and rose of a result, painted when the guide was made.

use anyhow::{Context, bail};
use serde_json::Value;
use steadfoot::calc::System;
use steadfoot::project::{rose_scene, scene};
use steadfoot::report::drawing;
use steadfoot::report::outcome::At;

use super::assessed::{Assessed, of_config};
use super::number;
use crate::svg::svg;

/// The width of a drawing: two of them fill the column of the text, one a phone of middling size.
const WIDTH_PX: f64 = 320.0;

/// One of the three drawings.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum View {
    Plan,
    Elevation,
    Rose,
}

impl View {
    /// The view of this word.
    pub fn of(word: &str) -> anyhow::Result<Self> {
        Ok(match word {
            "plan" => View::Plan,
            "elevation" => View::Elevation,
            "rose" => View::Rose,
            other => bail!("there is no view \"{other}\"; there are plan, elevation, rose"),
        })
    }

    fn word(self) -> &'static str {
        match self {
            View::Plan => "plan",
            View::Elevation => "elevation",
            View::Rose => "rose",
        }
    }

    fn caption(self) -> &'static str {
        match self {
            View::Plan => "Plan, rear on top: pressure under the feet, pull in the anchors",
            View::Elevation => "Elevation, seen across the push",
            View::Rose => "Utilisation for every direction of the push",
        }
    }
}

/// The drawings of the result that governs among the checks of a kind, side by side.
pub fn of_governing(assessed: &Assessed, views: &[View], prefix: &str) -> String {
    let at = assessed.governing_of(prefix).and_then(|check| check.at);
    let figures: String = views.iter().map(|&view| figure(assessed, view, at.as_ref(), view.caption())).collect();
    side_by_side(&figures, views.len())
}

/// Drawings of a chapter: `{"figures": [{"demo": "02", "view": "plan", "check": id, "state": name, "direction_deg": 90,
/// "caption": "..."}]}`. Without a check it is the result that governs; a state or a direction of its own moves it there;
/// `"rest": true` shows the weight alone.
pub fn of_chapter(config: &Value) -> anyhow::Result<String> {
    let figures = config["figures"].as_array().context("drawings need a list \"figures\"")?;
    let mut html = String::new();
    for one in figures {
        let assessed = of_config(one)?;
        let view = View::of(one["view"].as_str().unwrap_or("elevation"))?;
        let at = place(&assessed, one)?;
        let caption = number::filled(one["caption"].as_str().unwrap_or(view.caption()))?;
        html += &figure(&assessed, view, at.as_ref(), &caption);
    }
    Ok(side_by_side(&html, figures.len()))
}

fn place(assessed: &Assessed, config: &Value) -> anyhow::Result<Option<At>> {
    let mut at = match config["check"].as_str() {
        Some(id) => assessed.check(id)?.at,
        None => assessed.governing().and_then(|check| check.at),
    };
    if config["rest"] == true {
        at = Some(assessed.at_rest(0));
    }
    if let (Some(at), Some(state)) = (&mut at, config["state"].as_str()) {
        at.state = assessed.state(state)?;
    }
    if let (Some(at), Some(direction_deg)) = (&mut at, config["direction_deg"].as_f64()) {
        at.direction_rad = direction_deg.to_radians();
    }
    Ok(at)
}

fn figure(assessed: &Assessed, view: View, at: Option<&At>, caption: &str) -> String {
    let mut drawn = match view {
        View::Plan => drawing::plan(&scene(&assessed.project, at), WIDTH_PX, System::Si),
        View::Elevation => drawing::elevation(&scene(&assessed.project, at), WIDTH_PX, System::Si),
        View::Rose => drawing::rose(&rose_scene(&assessed.report), WIDTH_PX),
    };
    // Marks that are only there to be pointed at have nothing to open here.
    drawn.marks.retain(|mark| mark.class != "direction");
    format!(
        "<figure class=\"figure {}\"><div class=\"frame\">{}</div><figcaption>{caption}</figcaption></figure>\n",
        view.word(),
        svg(&drawn)
    )
}

fn side_by_side(figures: &str, count: usize) -> String {
    format!(
        "<section class=\"drawings count-{count}\" aria-label=\"Drawings\"><div class=\"side-by-side\">\n{figures}</div></section>\n"
    )
}
