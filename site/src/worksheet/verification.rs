//! What the results are held against: every check value, run when the guide is made.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use anyhow::{Context, anyhow};
use steadfoot::calc::Trust;

use super::example::without_scheme;
use super::{rules::head_of, trust, words};
use crate::check_value::{self, statics};
use crate::document::escaped;

/// The values of one source.
struct Source {
    topic: &'static str,
    name: String,
    trust: Trust,
    values: usize,
    met: usize,
}

/// How many values there are, and how many are met.
pub struct Count {
    pub values: usize,
    pub met: usize,
}

/// All values together.
pub fn count() -> anyhow::Result<Count> {
    let sources = sources()?;
    Ok(Count {
        values: sources.iter().map(|source| source.values).sum(),
        met: sources.iter().map(|source| source.met).sum(),
    })
}

/// How many values of each trust a topic has, and how many are met.
pub fn by_topic() -> anyhow::Result<String> {
    let mut topics: BTreeMap<&str, ([usize; 4], usize)> = BTreeMap::new();
    let mut all = ([0; 4], 0);
    for source in sources()? {
        for (counts, met) in [topics.entry(source.topic).or_default(), &mut all] {
            counts[rank(source.trust)] += source.values;
            *met += source.met;
        }
    }
    let head: String = trust::ORDER.iter().map(|&of| head_of(of)).collect();
    let mut body = String::new();
    for (topic, (counts, met)) in topics.into_iter().chain([("All", all)]) {
        let cell = |count: &usize| {
            let text = if *count == 0 { "–".into() } else { count.to_string() };
            format!("<td class=\"number\">{text}</td>")
        };
        let cells: String = counts.iter().map(cell).collect();
        let values: usize = counts.iter().sum();
        body += &format!("<tr><th scope=\"row\">{topic}</th>{cells}<td class=\"number\">{met} of {values}</td></tr>\n");
    }
    Ok(format!(
        "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"Check values by topic\"><table>\n<thead><tr>\
         <th scope=\"col\">Topic</th>{head}<th scope=\"col\">Met</th></tr></thead>\n<tbody>\n{body}</tbody></table></div>\n"
    ))
}

/// Every source with the number of its values; what is derived by our own scripts is one line a topic.
pub fn by_source() -> anyhow::Result<String> {
    let mut lines: BTreeMap<(usize, &str, String), (usize, usize)> = BTreeMap::new();
    for source in sources()? {
        let is_own = source.trust == Trust::Derived;
        let name = if is_own {
            "Our own arithmetic, by scripts that do not read the engine".into()
        } else {
            source.name.clone()
        };
        let (values, met) = lines.entry((rank(source.trust), source.topic, name)).or_default();
        *values += source.values;
        *met += source.met;
    }
    let mut body = String::new();
    let mut told = None;
    for ((rank, topic, name), (values, met)) in lines {
        let of = trust::ORDER[rank];
        if told != Some(rank) {
            told = Some(rank);
            let (word, meaning) = (words::sentence_case(words::trust(of)), words::trust_meaning(of));
            body += &format!(
                "<tr class=\"by\"><th scope=\"rowgroup\" colspan=\"3\">{} {word}: {meaning}</th></tr>\n",
                trust::mark(of)
            );
        }
        body += &format!(
            "<tr><td>{topic}</td><td>{}</td><td class=\"number\">{met} of {values}</td></tr>\n",
            escaped(&without_scheme(&name)),
        );
    }
    Ok(format!(
        "<div class=\"wide cited\" tabindex=\"0\" role=\"group\" aria-label=\"Sources of check values\"><table>\n<thead><tr>\
         <th scope=\"col\">Topic</th><th scope=\"col\">Source</th><th scope=\"col\">Met</th></tr>\
         </thead>\n<tbody>\n{body}</tbody></table></div>\n"
    ))
}

/// The hash of a built-in cabinet's results as the builder's own machine finds it, for the page to compare with its own.
pub fn same_bits() -> String {
    let hash = steadfoot::project::self_check();
    format!(
        "<p class=\"same-bits\" data-self-check=\"{hash}\">Where this guide was made the results of a built-in cabinet hash to \
         <code>{hash:08x}</code>. <span role=\"status\">With scripts on, this browser works them out as well and says here whether \
         they are the same bits.</span></p>\n"
    )
}

/// Every source, with its values run once.
fn sources() -> anyhow::Result<&'static [Source]> {
    static KNOWN: OnceLock<Vec<Source>> = OnceLock::new();
    if KNOWN.get().is_none() {
        let found = run_all()?;
        return Ok(KNOWN.get_or_init(|| found));
    }
    KNOWN.get().map(Vec::as_slice).context("the values were run")
}

fn run_all() -> anyhow::Result<Vec<Source>> {
    let mut found = Vec::new();
    for (file, block) in check_value::load()? {
        let answers = check_value::run(&block.runs, &block.input)
            .map_err(|problem| anyhow!("{problem}"))
            .with_context(|| format!("tests/values/{file}, {}", block.block))?;
        found.push(Source {
            topic: topic(&file),
            trust: of_word(&block.trust)?,
            values: block.expect.len(),
            met: block.expect.len() - block.unmet(&answers).len(),
            name: block.source,
        });
    }
    for source in statics::sources()? {
        found.push(Source {
            topic: "Base reactions",
            trust: of_word(&source.trust)?,
            values: source.values.len(),
            met: source.values.iter().filter(|value| value.compared.is_met()).count(),
            name: words::sentence_case(&source.source),
        });
    }
    Ok(found)
}

fn topic(file: &str) -> &'static str {
    match file.split('-').next() {
        Some("demand") => "Demand",
        Some("anchors") => "Anchors",
        Some("bolts") => "Bolts",
        Some("feet.json") => "Feet",
        Some("floor") => "Floors",
        _ => "Whole cabinets",
    }
}

fn of_word(word: &str) -> anyhow::Result<Trust> {
    trust::ORDER.into_iter().find(|of| words::trust(*of) == word).with_context(|| format!("\"{word}\" is no trust"))
}

fn rank(of: Trust) -> usize {
    trust::ORDER.iter().position(|known| *known == of).unwrap_or(0)
}
