use alloc::string::String;

use crate::calc::show::{Reading, Rounding, Style, show, unit_text};
use crate::calc::{Kind, StepId, System};
use crate::report::plot::PlotName;

/// For whom a plot or a figure is painted.
#[derive(Clone, Copy)]
pub struct Painter<'a> {
    /// Its width in px.
    pub width_px: f64,
    /// The units of the reader.
    pub system: System,
    /// The words of a row of a text table. The engine carries no texts, so whoever asks brings them.
    pub words: &'a dyn Fn(StepId) -> String,
}

impl Painter<'_> {
    /// What is written; empty for nothing.
    pub fn text(&self, name: &PlotName) -> String {
        match name {
            PlotName::None => String::new(),
            PlotName::Row(id) => (self.words)(*id),
            PlotName::Text(text) => text.clone(),
            PlotName::Check(check) => String::from(check.short()),
        }
    }

    /// Words and a number behind them; a utilisation is rounded up, as in every table.
    pub fn text_with(&self, name: &PlotName, value: Option<(f64, Kind)>) -> String {
        let mut text = self.text(name);
        if let Some((number, kind)) = value {
            if !text.is_empty() {
                text.push(' ');
            }
            let rounding = if kind == Kind::Utilisation { Rounding::Up } else { Rounding::Nearest };
            text.push_str(&show(number, kind, Style::plain(self.system, rounding)));
        }
        text
    }

    /// A number with its unit.
    pub fn number(&self, value: f64, kind: Kind) -> String {
        show(value, kind, Style::plain(self.system, Rounding::Nearest))
    }

    /// The name of an axis with the unit of its numbers.
    pub fn axis_text(&self, name: StepId, kind: Kind) -> String {
        let mut text = (self.words)(name);
        let unit = unit_text(kind, self.system, Reading::Plain);
        if !unit.is_empty() {
            text.push_str(" (");
            text.push_str(&unit);
            text.push(')');
        }
        text
    }

    /// The width, with room for labels at least.
    pub fn width(&self) -> f64 {
        if self.width_px.is_finite() {
            self.width_px.max(super::scale::WIDTH_MIN_PX)
        } else {
            super::scale::WIDTH_MIN_PX
        }
    }
}
