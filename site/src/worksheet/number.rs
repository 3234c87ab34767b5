//! Numbers in prose that the engine makes: `` `made 02 mass full` `` in a chapter becomes the mass of that state.
//!
//! The first word is an example (how its file begins), the second what is asked, the rest of what:
//!
//! | asked | of what | gives |
//! |---|---|---|
//! | `mass`, `aboard`, `x`, `y`, `z` | a state | mass, mass of its contents, centre of gravity |
//! | `push`, `vertical` | | horizontal and vertical action of the demand rule over the weight |
//! | `utilisation`, `low`, `high`, `value`, `limit`, `direction`, `state` | a check | where and how it came out |
//! | `step` | a check and a symbol | that step of the check's working |
//! | `strongest`, `heaviest` | `bolted` or `free` | how far it holds |
//! | `least`, `most` | an input that can be turned, such as `bolt` | where the stretch that holds begins and ends |
//! | `answer`, `claim` | | the answer, what the example teaches |
//!
//! `` `made hall utilisation D03` `` is of a place of the hall of the example: `rows`, `count` an outcome, `utilisation`,
//! `governs`, `reason` or `fault` of a place.
//!
//! `` `made count values` `` counts: `examples`, `rules`, check `values`, those that are `met`.

use anyhow::{Context, bail, ensure};
use steadfoot::calc::show::Rounding::{self, Down, Nearest, Up};
use steadfoot::calc::show::{Reading, Style, show};
use steadfoot::calc::{Kind, Sheet, System};
use steadfoot::explore::{HowFar, Knob, LimitOf, What};
use steadfoot::project;
use steadfoot::report::text_tables::text;

use super::assessed::{Assessed, demo, demo_files};
use super::{answer, hall, verification, words};
use crate::document::escaped;

/// What begins such a number within backticks.
pub const MARK: &str = "made ";

/// Characters that are kept in one line.
const TOGETHER_MAX: usize = 24;

/// The number as it stands in the prose.
pub fn inline(query: &str) -> anyhow::Result<String> {
    let text = told(query).with_context(|| format!("`{MARK}{query}`"))?;
    // A number stays with its unit in one line; words may part.
    let class = if text.chars().count() > TOGETHER_MAX { "made words" } else { "made" };
    Ok(format!("<span class=\"{class}\">{}</span>", escaped(&text)))
}

/// A text without other marks in which the numbers within backticks are made.
pub fn filled(text: &str) -> anyhow::Result<String> {
    let mut html = String::new();
    for (place, piece) in text.split('`').enumerate() {
        match piece.strip_prefix(MARK) {
            Some(query) if place % 2 == 1 => html += &inline(query)?,
            _ => html += &escaped(piece),
        }
    }
    Ok(html)
}

fn told(query: &str) -> anyhow::Result<String> {
    let (first, rest) = query.split_once(' ').context("it names what is asked")?;
    if first == "count" {
        return counted(rest);
    }
    if first == "hall" {
        return hall::number(rest);
    }
    let assessed = demo(first)?;
    let (asked, of) = rest.split_once(' ').unwrap_or((rest, ""));
    let report = &assessed.report;
    let plain = words::plain;
    Ok(match asked {
        "mass" => plain(report.states[assessed.state(of)?].mass_kg, Kind::Mass, Nearest),
        "aboard" => plain(report.states[assessed.state(of)?].aboard_kg, Kind::Mass, Nearest),
        "x" | "y" | "z" => {
            let axis = ["x", "y", "z"].iter().position(|axis| *axis == asked).unwrap_or(0);
            plain(report.states[assessed.state(of)?].centre_mm[axis], Kind::Length, Nearest)
        }
        "push" | "vertical" => {
            let site = assessed.project.site.as_ref().context("the example has no site")?;
            let demand = (site.rule.demand)(&site.values, 1.0, &mut Sheet::quiet());
            let demand = demand.ok().context("the rule does not reach the example")?;
            plain(if asked == "push" { demand.push } else { demand.vertical }, Kind::Acceleration, Up)
        }
        "utilisation" => {
            let value = assessed.check(of)?.utilisation.context("it was not compared")?;
            plain(value, Kind::Utilisation, Up)
        }
        "low" | "high" => {
            let [low, high] = assessed.check(of)?.span.context("it has no span")?;
            plain(if asked == "low" { low } else { high }, Kind::Utilisation, Up)
        }
        "value" => of_check(&assessed, of, Up)?,
        "limit" => of_check(&assessed, of, Down)?,
        "direction" => {
            let at = assessed.check(of)?.at.context("it stands for no direction")?;
            plain(at.direction_rad, Kind::Angle, Nearest)
        }
        "state" => {
            let at = assessed.check(of)?.at.context("it stands for no state")?;
            report.states[at.state].name.clone()
        }
        "step" => step(&assessed, of)?,
        "strongest" => limit(&assessed, What::Demand, of)?,
        "heaviest" => limit(&assessed, What::Load, of)?,
        "least" | "most" => far(&assessed, asked, of)?,
        "answer" => answer::whole(report),
        "claim" => assessed.claim.clone(),
        other => bail!("\"{other}\" is not something to ask for"),
    })
}

fn of_check(assessed: &Assessed, id: &str, rounding: Rounding) -> anyhow::Result<String> {
    let check = assessed.check(id)?;
    let value = if rounding == Up { check.value } else { check.limit };
    let kind = Kind::from_code(check.kind).context("a check has a kind")?;
    Ok(words::plain(value.context("it was not compared")?, kind, rounding))
}

/// A step of a check's working, the check's own section first.
fn step(assessed: &Assessed, of: &str) -> anyhow::Result<String> {
    let (id, symbol) = of.split_once(' ').context("a step is asked for by check and symbol")?;
    let at = assessed.check(id)?.at.context("the check has no working")?;
    let mut sections = project::working(&assessed.project, &at);
    sections.sort_by_key(|section| section.check.is_none_or(|check| check.id() != id));
    for section in &sections {
        for step in &section.steps {
            let Some(row) = text(step.id).filter(|row| row.symbol == symbol) else { continue };
            let style =
                Style { from: section.system, to: System::Si, reading: Reading::Plain, rounding: Nearest, digits: 0 };
            return Ok(show(step.value, row.kind, style));
        }
    }
    bail!("the working of {id} has no step {symbol}")
}

fn limit(assessed: &Assessed, what: What, of: &str) -> anyhow::Result<String> {
    let of = match of {
        "bolted" => LimitOf::Bolted,
        "free" => LimitOf::Free,
        other => bail!("a limit is that of a cabinet bolted or free, not {other}"),
    };
    let found = assessed
        .limits()
        .iter()
        .find(|limit| limit.of == of && limit.what == what)
        .context("there is no such limit")?;
    let kind = Kind::from_code(found.kind).context("a limit has a kind")?;
    Ok(words::plain(found.low.context("it holds nowhere")?, kind, Down))
}

/// Where the first stretch of an input that holds begins, or the last one ends.
fn far(assessed: &Assessed, asked: &str, word: &str) -> anyhow::Result<String> {
    let knob = Knob::of_word(word).with_context(|| format!("\"{word}\" is no input that can be turned"))?;
    let mut search = HowFar::with(&assessed.project, None, [knob].into_iter());
    search.finish();
    let stretches = search.ranges.first().context("the example has no such input")?.stretches();
    let (first, last) = stretches.first().zip(stretches.last()).context("it holds nowhere")?;
    let (bound, rounding) = if asked == "least" { (first.from, Up) } else { (last.to, Down) };
    bound.beyond.context("it holds to the end of what was tried")?;
    Ok(words::plain(bound.holds, knob.kind(&assessed.project), rounding))
}

fn counted(what: &str) -> anyhow::Result<String> {
    let count = match what {
        "examples" => demo_files()?.len(),
        "rules" => steadfoot::rules::demand::DEMAND_RULES.len() + steadfoot::rules::anchor::ANCHOR_RULES.len(),
        "values" => verification::count()?.values,
        "met" => verification::count()?.met,
        other => bail!("\"{other}\" is not counted"),
    };
    ensure!(count > 0, "there are no {what}");
    Ok(count.to_string())
}
