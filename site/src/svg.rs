//! A drawing of the engine as an SVG element.

use std::fmt::Write;

use pulldown_cmark_escape::escape_html;
use steadfoot::report::drawing::{Drawing, Mark, Shape, TextAnchor};

/// The drawing as one `<svg>` element, every mark an element of the mark's class.
///
/// Positions are attributes and never a style, which the content security policy would drop. Coordinates are rounded
/// to a tenth of a px. The drawing's words for those who do not see it become its accessible name.
pub fn svg(drawing: &Drawing) -> String {
    let mut svg = format!(
        "<svg class=\"drawing\" data-drawing=\"{}\" viewBox=\"0 0 {w} {h}\" width=\"{w}\" height=\"{h}\" role=\"img\" aria-label=\"{}\"",
        drawing.view,
        escaped(&drawing.title),
        w = tenth(drawing.width),
        h = tenth(drawing.height),
    );
    if drawing.mm_per_px > 0.0 {
        // Not a place on the sheet but the key to all of them, so it keeps its digits.
        push_attribute(&mut svg, "data-mm-per-unit", &drawing.mm_per_px.to_string());
    }
    svg.push('>');
    for mark in &drawing.marks {
        push_mark(&mut svg, mark);
    }
    svg.push_str("</svg>");
    svg
}

fn push_mark(svg: &mut String, mark: &Mark) {
    let name = match mark.shape {
        Shape::Polygon => "polygon",
        Shape::Polyline => "polyline",
        Shape::Line => "line",
        Shape::Lines => "path",
        Shape::Circle => "circle",
        Shape::Text => "text",
    };
    svg.push('<');
    svg.push_str(name);
    push_attribute(svg, "class", mark.class);
    push_places(svg, mark);
    if let Some(tone) = mark.tone {
        push_attribute(svg, "fill-opacity", &format!("{}", (tone * 1000.0).round() / 1000.0));
    }
    if !mark.of.is_nothing() {
        push_attribute(svg, "data-of", &mark.of.text());
    }
    if let Some(direction_deg) = mark.direction_deg {
        push_attribute(svg, "data-direction-deg", &direction_deg.to_string());
    }
    if let Some(utilisation) = mark.utilisation {
        push_attribute(svg, "data-utilisation", &utilisation.to_string());
    }
    if mark.shape == Shape::Text {
        let _ = write!(svg, ">{}</text>", escaped(&mark.text));
    } else {
        svg.push_str("/>");
    }
}

fn push_places(svg: &mut String, mark: &Mark) {
    let at = |place: usize| mark.points.get(place).map_or([0.0, 0.0], |point| *point);
    match mark.shape {
        Shape::Polygon | Shape::Polyline => {
            let places: Vec<String> = mark.points.iter().map(|[x, y]| format!("{},{}", tenth(*x), tenth(*y))).collect();
            push_attribute(svg, "points", &places.join(" "));
        }
        Shape::Line => {
            for (name, value) in [("x1", at(0)[0]), ("y1", at(0)[1]), ("x2", at(1)[0]), ("y2", at(1)[1])] {
                push_attribute(svg, name, &tenth(value));
            }
        }
        Shape::Lines => {
            let mut path = String::new();
            for ends in mark.points.chunks_exact(2) {
                let [from, to] = [ends[0], ends[1]].map(|[x, y]| format!("{} {}", tenth(x), tenth(y)));
                let _ = write!(path, "M{from}L{to}");
            }
            push_attribute(svg, "d", &path);
        }
        Shape::Circle => {
            let radius = mark.radius.unwrap_or(0.0);
            for (name, value) in [("cx", at(0)[0]), ("cy", at(0)[1]), ("r", radius)] {
                push_attribute(svg, name, &tenth(value));
            }
        }
        Shape::Text => {
            let (x, y) = (tenth(at(0)[0]), tenth(at(0)[1]));
            push_attribute(svg, "x", &x);
            push_attribute(svg, "y", &y);
            match mark.anchor {
                Some(TextAnchor::Middle) => push_attribute(svg, "text-anchor", "middle"),
                Some(TextAnchor::End) => push_attribute(svg, "text-anchor", "end"),
                Some(TextAnchor::Start) | None => {}
            }
            if let Some(turn) = mark.turn {
                push_attribute(svg, "transform", &format!("rotate({} {x} {y})", tenth(turn)));
            }
        }
    }
}

fn push_attribute(svg: &mut String, name: &str, value: &str) {
    let _ = write!(svg, " {name}=\"{}\"", escaped(value));
}

fn escaped(text: &str) -> String {
    let mut out = String::new();
    // Writing into a string does not fail.
    let _ = escape_html(&mut out, text);
    out
}

/// The number with at most one decimal.
fn tenth(value: f64) -> String {
    let rounded = (value * 10.0).round() / 10.0;
    // Minus nothing would be written with its sign.
    if rounded == 0.0 { "0".to_string() } else { rounded.to_string() }
}

#[cfg(test)]
mod tests {
    use super::{svg, tenth};
    use steadfoot::calc::CheckId;
    use steadfoot::report::drawing::{RosePoint, RoseScene, rose};

    fn example() -> String {
        let point = |place: u16| RosePoint {
            direction_rad: f64::from(place),
            utilisation: 0.2 * f64::from(place),
            check: CheckId::AnchorTensionBreakout,
            at: Some(place),
        };
        svg(&rose(&RoseScene { points: (0..6).map(point).collect(), governing: Some(5) }, 320.0))
    }

    #[test]
    fn a_drawing_is_one_svg_with_a_name_and_positions_as_attributes() {
        let svg = example();
        assert!(svg.starts_with("<svg class=\"drawing\" data-drawing=\"rose\" viewBox=\"0 0 320 "));
        assert!(svg.contains("role=\"img\" aria-label=\"Utilisation for every direction of the push; 1.00 at 286°"));
        assert!(svg.ends_with("</svg>") && svg.matches("<svg").count() == 1);
        assert!(!svg.contains("style"));
        assert!(svg.contains("data-utilisation=\"1\""));
    }

    #[test]
    fn coordinates_have_one_decimal_at_most() {
        let svg = example();
        for attribute in [" cx=\"", " cy=\"", " x1=\"", " y=\"", " r=\""] {
            for rest in svg.split(attribute).skip(1) {
                let value = rest.split('"').next().unwrap();
                assert!(value.split_once('.').is_none_or(|(_, decimals)| decimals.len() == 1), "{value}");
            }
        }
        assert_eq!([tenth(-0.04), tenth(1.25), tenth(3.0)], ["0", "1.3", "3"]);
    }
}
