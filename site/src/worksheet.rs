//! A worksheet of a chapter: the element that the page's code brings to life, and what stands in it until then.

use anyhow::{Context, ensure};
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
    let config = config(body)?;
    let mut attribute = String::new();
    escape_html(&mut attribute, &config.to_string())?;
    let content = static_content(kind, &config)?;
    Ok(format!(
        "<steadfoot-worksheet kind=\"{kind}\" config=\"{attribute}\">\n{content}\n</steadfoot-worksheet>\n"
    ))
}

/// Content that the engine makes once, when the guide is built, with no live part: tables of rules, of sources.
pub fn made(info: &str, body: &str) -> anyhow::Result<String> {
    static_content(info.trim(), &config(body)?)
}

fn config(body: &str) -> anyhow::Result<Value> {
    let body = body.trim();
    if body.is_empty() {
        return Ok(Value::Object(Default::default()));
    }
    let config: Value =
        serde_json::from_str(body).context("between the fences stands a JSON object")?;
    ensure!(
        config.is_object(),
        "between the fences stands a JSON object, not {config}"
    );
    Ok(config)
}

/// What a reader without scripts sees in place of the live worksheet.
pub fn static_content(kind: &str, config: &Value) -> anyhow::Result<String> {
    let title = config.get("title").and_then(Value::as_str).unwrap_or(kind);
    let mut text = String::new();
    escape_html(&mut text, title)?;
    Ok(format!(
        "<p class=\"still\">Worksheet: {text}. It computes in the browser, with scripts on.</p>"
    ))
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
