//! The examples of `demo-configs`: what each teaches, and its answer.

use steadfoot::calc::Kind;
use steadfoot::calc::show::Rounding;
use steadfoot::report::outcome::Verdict;

use super::assessed::{demo, demo_files};
use super::words;
use crate::document::escaped;

/// Every example with what it teaches and what came out.
pub fn examples() -> anyhow::Result<String> {
    let mut body = String::new();
    for file in demo_files()? {
        let assessed = demo(&file)?;
        let title = assessed.title.rsplit(": ").next().unwrap_or_default();
        let verdict = match assessed.report.verdict {
            Verdict::Holds => "holds",
            Verdict::DoesNotHold => "does not hold",
            Verdict::CannotBeSaid => "cannot be said",
        };
        let used = assessed.governing().and_then(|check| check.utilisation);
        let used = match assessed.report.verdict {
            Verdict::CannotBeSaid => String::new(),
            _ => used.map_or_else(
                || ", no balance".into(),
                |used| format!(", {}", words::plain(used, Kind::Utilisation, Rounding::Up)),
            ),
        };
        body += &format!(
            "<tr><th scope=\"row\" data-demo=\"{file}\">{}</th><td>{}</td><td>{verdict}{used}</td></tr>\n",
            escaped(&words::sentence_case(title)),
            escaped(&assessed.claim),
        );
    }
    Ok(format!(
        "<div class=\"wide demos\" tabindex=\"0\" role=\"group\" aria-label=\"Examples\"><table>\n<thead><tr><th scope=\"col\">Cabinet</th>\
         <th scope=\"col\">What it teaches</th><th scope=\"col\">Once bolted</th></tr></thead>\n<tbody>\n{body}</tbody></table></div>\n"
    ))
}
