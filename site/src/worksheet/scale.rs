//! A plain scale for one utilisation: ticks at 0 and 1, a break at its end, a pointer that is hollow while the check holds
//! and filled where it does not. All positions are attributes.

use steadfoot::calc::Status;
use steadfoot::report::outcome::CheckTold;

const ZERO: f64 = 8.0;
const ONE: f64 = 158.0;
const END: f64 = 200.0;
const BEYOND: f64 = 214.0;
const LINE: f64 = 15.0;
const WIDTH: f64 = 224.0;
const HEIGHT: f64 = 20.0;
const HEIGHT_LABELLED: f64 = 33.0;

/// Whether 0 and 1 are written beneath the ticks.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Labels {
    Written,
    Left,
}

/// The scale of a check.
pub fn scale(check: &CheckTold, labels: Labels) -> String {
    let height = if labels == Labels::Written { HEIGHT_LABELLED } else { HEIGHT };
    let tick =
        |x: f64, up: f64| format!("<line x1=\"{x}\" x2=\"{x}\" y1=\"{}\" y2=\"{}\"></line>", LINE - up, LINE + 4.0);
    let label =
        |x: f64, text: &str| format!("<text x=\"{x}\" y=\"{}\" text-anchor=\"middle\">{text}</text>", height - 2.0);
    let mut svg =
        format!("<svg class=\"scale\" viewBox=\"0 0 {WIDTH} {height}\" aria-hidden=\"true\" focusable=\"false\">");
    svg += &format!(
        "<path class=\"axis\" d=\"M{ZERO} {LINE}H{}M{} {LINE}H{}\"></path>",
        END + 1.0,
        END + 8.0,
        WIDTH - 2.0
    );
    svg += &format!("<path class=\"break\" d=\"M{} {}l6 -8m1 8l6 -8\"></path>", END - 2.0, LINE + 4.0);
    svg += &tick(ZERO, 4.0);
    svg += &tick(ONE, 10.0);
    if labels == Labels::Written {
        svg += &label(ZERO, "0");
        svg += &label(ONE, "1");
    }
    if let Some([low, high]) = check.span {
        let [low, high] = [place(Some(low)), place(Some(high))];
        svg += &format!("<line class=\"span\" x1=\"{low}\" x2=\"{high}\" y1=\"{LINE}\" y2=\"{LINE}\"></line>");
    }
    let class = if check.status == Status::Fails { "pointer beyond" } else { "pointer" };
    let at = check.utilisation.map(|utilisation| format!(" data-pointer=\"{utilisation}\"")).unwrap_or_default();
    svg += &format!(
        "<path class=\"{class}\"{at} d=\"M0 0L-5 -10H5Z\" transform=\"translate({} {LINE})\"></path></svg>",
        place(check.utilisation)
    );
    svg
}

/// Where a utilisation stands on the scale; beyond its end, or without a number, behind the break.
pub fn place(utilisation: Option<f64>) -> f64 {
    let place = utilisation.map_or(f64::INFINITY, |utilisation| ZERO + utilisation * (ONE - ZERO));
    // A place is read by people and tests, not added up.
    if place <= END { (place * 100.0).round() / 100.0 } else { BEYOND }
}

#[cfg(test)]
mod tests {
    use super::{BEYOND, place};

    #[test]
    fn a_utilisation_stands_in_proportion_until_the_break() {
        assert_eq!(place(Some(0.0)), 8.0);
        assert_eq!(place(Some(1.0)), 158.0);
        assert_eq!(place(Some(0.5)), 83.0);
        assert_eq!(place(Some(1.5)), BEYOND);
        assert_eq!(place(None), BEYOND);
    }

    #[test]
    fn the_page_draws_the_same_scale() {
        let page = include_str!("../../page/scale.js");
        let stated = "const SCALE = { zero: 8, one: 158, end: 200, beyond: 214, line: 15, width: 224, height: 20, labelled: 33 };";
        assert!(page.contains(stated));
    }
}
