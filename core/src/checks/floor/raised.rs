//! A cabinet on a raised floor at rest, at service throughout.

use super::{FloorSite, Standing};
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System};
use crate::floor::raised;
use crate::input::Values;
use crate::rules::floor::raised::{self as rules, Compared, PanelLoad, Rating};

fn outcome(compared: Compared) -> Outcome {
    Outcome::Compared { value: compared.value, limit: compared.limit, utilisation: compared.utilisation }
}

/// Panel, pedestal and uniform load.
pub fn check(
    site: &FloorSite,
    standing: &Standing,
    sheet: &mut Sheet,
    find: &mut dyn FnMut(CheckId, Subject, Outcome),
) {
    let Some(values) = &site.floor.raised else { return };
    if values.flag(raised::STAND) {
        find(CheckId::RaisedPanel, Subject::Whole, Outcome::NotNeeded(rules::ON_STAND));
        return;
    }
    let rating = raised::rating(values);
    let most = standing.legs_n.iter().copied().fold(0.0, f64::max);
    let load = PanelLoad { leg_n: most, legs: values.given(raised::LEGS) };
    let open = |check, sheet: &mut Sheet| sheet.open(Part::Floor, Subject::Whole, Some(check), System::Si);
    open(CheckId::RaisedPanel, sheet);
    let panel = match &rating {
        Some(rating) => outcome(load.on_panel(rating, sheet)),
        None => Outcome::NotCovered(rules::NO_RATING),
    };
    find(CheckId::RaisedPanel, Subject::Whole, panel);
    open(CheckId::RaisedPedestal, sheet);
    find(CheckId::RaisedPedestal, Subject::Whole, pedestal(values, &load, rating.as_ref(), sheet));
    open(CheckId::RaisedUniform, sheet);
    let uniform = match (values.number(raised::UNIFORM), rating.and_then(|rating| rating.uniform_mpa())) {
        (Some(given), _) => Some((rules::Q_GIVEN, given)),
        (None, Some(grade)) => Some((rules::Q_GRADE, grade)),
        (None, None) => None,
    };
    let uniform = match uniform {
        Some(panel) => outcome(rules::uniform(standing.weight_n, site.footprint_mm, panel, sheet)),
        None => Outcome::NotCovered(rules::NO_UNIFORM),
    };
    find(CheckId::RaisedUniform, Subject::Whole, uniform);
}

fn pedestal(values: &Values, load: &PanelLoad, rating: Option<&Rating>, sheet: &mut Sheet) -> Outcome {
    match (values.number(raised::PEDESTAL), rating) {
        (Some(given), _) => outcome(load.on_pedestal(Some(given), &Rating::Given(given), sheet)),
        (None, Some(rating @ Rating::Class { .. })) => outcome(load.on_pedestal(None, rating, sheet)),
        _ => Outcome::NotCovered(rules::NO_PEDESTAL),
    }
}

/// Why a shaken raised floor is not covered; none where there is none, or a stand relieves it.
pub fn shaken(site: &FloorSite) -> Option<StepId> {
    let values = site.floor.raised.as_ref()?;
    (!values.flag(raised::STAND)).then_some(rules::SHAKEN)
}
