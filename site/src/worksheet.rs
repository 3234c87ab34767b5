//! A worksheet of a chapter: the element that the page's code brings to life, and what stands in it until then; and whatever
//! else the engine makes for the guide: drawings, examples, tables of rules and sources, numbers within the prose.

mod answer;
mod assessed;
mod assessed_tables;
mod check_list;
mod drawings;
mod example;
mod examples;
mod hall;
mod kind;
mod math;
mod number;
mod owner;
mod rules;
mod scale;
mod still;
mod study;
mod trust;
mod verification;
mod words;
mod working;

use anyhow::{Context, bail, ensure};
use pulldown_cmark_escape::escape_html;
use serde_json::Value;

/// The element with its precomputed content.
///
/// `info` is what stands behind the word on the fence, `body` the lines between the fences: a JSON object, or nothing.
pub fn element(info: &str, body: &str) -> anyhow::Result<String> {
    let kind = info.trim();
    ensure!(
        !kind.is_empty() && kind.chars().all(|c| c.is_ascii_lowercase() || c == '-'),
        "a worksheet names its kind on the fence, in small letters and dashes, such as ```worksheet load-out"
    );
    let mut config = config(body)?;
    if kind == "hall" {
        config = hall::config(&config)?;
    }
    let mut attribute = String::new();
    escape_html(&mut attribute, &config.to_string())?;
    let content = static_content(kind, &config)?;
    Ok(format!("<steadfoot-worksheet kind=\"{kind}\" config=\"{attribute}\">\n{content}\n</steadfoot-worksheet>\n"))
}

pub use number::MARK;

/// Content that the engine makes once, when the guide is built, with no live part.
pub fn made(info: &str, body: &str) -> anyhow::Result<String> {
    let config = config(body)?;
    Ok(match info.trim() {
        "drawings" => drawings::of_chapter(&config)?,
        "example" => example::example(&config)?,
        "examples" => examples::examples()?,
        "rules" => rules::rules(),
        "stops" => rules::stops(&config)?,
        "documents" => rules::documents(),
        "lines" => rules::lines(),
        "trust" => trust::legend(),
        "values" => verification::by_topic()?,
        "sources" => verification::by_source()?,
        "same-bits" => verification::same_bits(),
        "study" => study::of_chapter(&config)?,
        other => bail!(
            "\"{other}\" is nothing that is made; drawings, example, examples, rules, stops, documents, lines, trust, values, sources, same-bits, study are"
        ),
    })
}

fn config(body: &str) -> anyhow::Result<Value> {
    let body = body.trim();
    if body.is_empty() {
        return Ok(Value::Object(Default::default()));
    }
    let config: Value = serde_json::from_str(body).context("between the fences stands a JSON object")?;
    ensure!(config.is_object(), "between the fences stands a JSON object, not {config}");
    Ok(config)
}

/// A number in prose that the engine makes: what stands behind `made` within backticks.
pub fn inline(query: &str) -> anyhow::Result<String> {
    number::inline(query)
}

/// What a reader without scripts sees in place of the live worksheet.
pub fn static_content(kind: &str, config: &Value) -> anyhow::Result<String> {
    still::still(kind, config)
}

#[cfg(test)]
mod tests {
    use super::element;

    #[test]
    fn a_worksheet_becomes_an_element_with_content() {
        let html = element("load-out", "{\"title\": \"A & \\\"B\\\"\"}").unwrap();
        assert!(html.starts_with(
            "<steadfoot-worksheet kind=\"load-out\" config=\"{&quot;title&quot;:&quot;A &amp; \\&quot;B\\&quot;&quot;}\">"
        ));
        assert!(html.contains("A &amp; &quot;B&quot;"));
    }

    #[test]
    fn a_worksheet_without_kind_or_with_a_broken_config_is_refused() {
        assert!(element("", "").is_err());
        assert!(element("load-out", "{").is_err());
        assert!(element("load-out", "[1]").is_err());
    }
}
