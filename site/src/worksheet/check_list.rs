//! The list of checks: title, scale, number, word, clause.

use steadfoot::calc::show::Rounding;
use steadfoot::calc::{Kind, Role, Shape, Status, Trust};
use steadfoot::project;
use steadfoot::report::outcome::CheckTold;
use steadfoot::report::text_tables::{text, text_of_code};

use super::assessed::Assessed;
use super::math::with_symbols;
use super::scale::{Labels, scale};
use super::{trust, words};
use crate::document::escaped;
use crate::texts::cited;

const ROLES: [Role; 3] = [Role::Required, Role::BeforeBolting, Role::Information];

/// Whether the groups of checks have headings, or are told apart by their places alone.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Headings {
    Written,
    Left,
}

/// The checks that are wanted, group by group, with the legend of trust.
pub fn check_list(assessed: &Assessed, headings: Headings, is_wanted: impl Fn(&str) -> bool) -> String {
    let mut html = String::from("<div class=\"check-list\">\n");
    for role in ROLES {
        let checks = assessed.report.checks.iter().filter(|check| check.role == role && is_wanted(check.id));
        html += &group(role, checks.collect(), headings, assessed);
    }
    html + &trust::legend() + "</div>\n"
}

fn group(role: Role, checks: Vec<&CheckTold>, headings: Headings, assessed: &Assessed) -> String {
    if checks.is_empty() {
        return String::new();
    }
    let title = words::role(role);
    let mut html = format!("<section class=\"group\" aria-label=\"{title}\" data-role=\"{}\">\n", role_word(role));
    if headings == Headings::Written {
        html += &format!("<h2>{title}</h2>\n");
    }
    html += "<ul class=\"checks\">\n";
    // Zero and one are written once, at the first scale of a group.
    let labelled = checks.iter().position(|check| is_compared(check));
    for (place, check) in checks.iter().enumerate() {
        let labels = if labelled == Some(place) { Labels::Written } else { Labels::Left };
        html += &row(check, labels, assessed);
    }
    html + "</ul>\n</section>\n"
}

fn row(check: &CheckTold, labels: Labels, assessed: &Assessed) -> String {
    let status = words::status(check.status);
    let (drawn, value) = if is_compared(check) {
        let value =
            check.utilisation.map_or("∞".into(), |value| words::plain(value, Kind::Utilisation, Rounding::Up));
        (scale(check, labels), value)
    } else {
        ("<span class=\"no-scale\"></span>".into(), "–".into())
    };
    let utilisation = match check.utilisation {
        Some(utilisation) if is_compared(check) => format!(" data-utilisation=\"{utilisation}\""),
        _ => String::new(),
    };
    format!(
        "<li class=\"check-row {class}\" data-check=\"{id}\" data-of=\"{of}\" data-status=\"{class}\" \
         data-role=\"{role}\"{utilisation}>\n<div class=\"row\"><span class=\"title\">{title}</span>{drawn}\
         <span class=\"value\">{value}</span><span class=\"outcome\"><b class=\"word\">{status}</b> \
         <span class=\"occasion\">{beside}</span></span><span class=\"source\">{source}</span></div>\n</li>\n",
        class = status.replace(' ', "_"),
        id = check.id,
        of = escaped(&check.of),
        role = role_word(check.role),
        title = escaped(words::check_title(check.id)),
        beside = beside(check, assessed),
        source = source(check, assessed),
    )
}

/// Why there is no number, or the span and the occasion of the number.
fn beside(check: &CheckTold, assessed: &Assessed) -> String {
    if let Some(reason) = check.reason {
        return with_symbols(words::row(reason));
    }
    let occasion = check.at.map(|at| with_symbols(&words::occasion(&at, assessed))).unwrap_or_default();
    let ends = check.span.map(|ends| ends.map(|end| words::plain(end, Kind::Utilisation, Rounding::Up)));
    match ends {
        Some([low, high]) if low != high => format!("{low} to {high}; {occasion}"),
        _ => occasion,
    }
}

/// The clause of the last step of the check's own section, and the least trust among that section's clauses.
fn source(check: &CheckTold, assessed: &Assessed) -> String {
    if let Some(row) = check.reason.and_then(text_of_code) {
        return format!("{} {}", trust::mark(row.trust), escaped(&clause(row.clause)));
    }
    let Some(at) = check.at else { return String::new() };
    let sections = project::working(&assessed.project, &at);
    let own = sections.iter().filter(|section| section.check.is_some_and(|of| of.id() == check.id));
    let steps = own.flat_map(|section| &section.steps).filter(|step| !step.carried);
    let rows: Vec<_> = steps.filter_map(|step| text(step.id)).collect();
    let mut told = rows.iter().filter(|row| !clause(row.clause).is_empty() && row.shape != Shape::Reason);
    let trusts: Vec<Trust> = told.clone().map(|row| row.trust).collect();
    let Some(least) = trust::least(trusts.into_iter()) else { return String::new() };
    let last = told.next_back().map(|row| clause(row.clause)).unwrap_or_default();
    format!("{} {}", trust::mark(least), escaped(&last))
}

/// The document with the number of the clause.
pub fn clause(clause: steadfoot::calc::Clause) -> String {
    cited(clause.document.short, clause.number)
}

fn is_compared(check: &CheckTold) -> bool {
    matches!(check.status, Status::Holds | Status::Fails)
}

fn role_word(role: Role) -> &'static str {
    match role {
        Role::Required => "required",
        Role::BeforeBolting => "before-bolting",
        Role::Information => "information",
    }
}
