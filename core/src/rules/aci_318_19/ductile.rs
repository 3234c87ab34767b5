//! Option (a) of 17.10.5.3: a ductile steel element yields before the concrete gives way.

use super::edition::ACI_318_19;
use super::facts::Facts;
use super::set::{Set, members};
use super::steel;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::limit::at_least;
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, steps};

steps! { 68 "ACI 318-19, ductile steel first";
    N_SA "N_sa" Force (ACI_318_19 "17.6.1.2" Secondary) "Nominal strength of the steel of the anchor that is used most": Solved;
    N_UA_I "N_ua_i" Force (STATICS "base reactions" Derived) "Pull on that anchor": Solved;
    R_STEEL "r_steel" Utilisation (ACI_318_19 "17.10.5.3(a)(i)" Secondary) "Pull over 1.2 times the steel's strength" = "N_ua_i / (1.2 * N_sa)";
    N_UA "N_ua" Force (STATICS "" Derived) "Pull on what gives way together": Solved;
    N_BREAKOUT "N_n" Force (ACI_318_19 "17.10.5.3(a)(i)" Secondary) "Nominal strength against breakout": Solved;
    N_PULLOUT "N_n" Force (ACI_318_19 "17.10.5.3(a)(i)" Secondary) "Nominal strength against pullout": Solved;
    N_BLOWOUT "N_n" Force (ACI_318_19 "17.10.5.3(a)(i)" Secondary) "Nominal strength against side-face blowout": Solved;
    N_BOND "N_n" Force (ACI_318_19 "17.10.5.3(a)(i)" Secondary) "Nominal bond strength": Solved;
    N_BARS "N_n" Force (ACI_318_19 "17.10.5.3(a)(i), 17.5.2.1" Memory) "Nominal strength of the anchor reinforcement": Solved;
    R_CONCRETE "r_concrete" Utilisation (ACI_318_19 "17.10.5.3(a)(i)" Secondary) "Pull over nominal strength of the concrete" = "N_ua / N_n";
    U "u" Utilisation (ACI_318_19 "17.10.5.3(a)(i)" Secondary) "The steel has to be used as much as the concrete, or more" = "r_concrete / r_steel";
    D_A "d_a" Length (INPUT "" Derived) "Diameter of the anchor": Given;
    L_STRETCH "l_stretch" Length (INPUT "" Derived) "Stretch length": Given;
    U_STRETCH "u" Utilisation (ACI_318_19 "17.10.5.3(a)(ii)" Secondary) "Eight diameters over the stretch length" = "8 * d_a / l_stretch";
    F_U "f_u" Stress (INPUT "" Derived) "Specified tensile strength of the anchor's steel": Given;
    F_YA "f_ya" Stress (INPUT "" Derived) "Specified yield strength of the anchor's steel": Given;
    U_THREAD "u" Utilisation (ACI_318_19 "17.10.5.3(a)(iv)" Secondary) "Of a bolt that is threaded over a part of its length and not upset there, 1.3 over the ratio of tensile to yield strength" = "1.3 * f_ya / f_u";
}

/// What gives way in the concrete.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Mode {
    /// Breakout.
    Breakout,
    /// Pullout.
    Pullout,
    /// Side-face blowout.
    Blowout,
    /// Bond.
    Bond,
    /// Anchor reinforcement in the place of breakout.
    Bars,
}

impl Mode {
    fn strength(self) -> StepId {
        match self {
            Mode::Breakout => N_BREAKOUT,
            Mode::Pullout => N_PULLOUT,
            Mode::Blowout => N_BLOWOUT,
            Mode::Bond => N_BOND,
            Mode::Bars => N_BARS,
        }
    }
}

/// Whether the steel of a group's most used anchor is used as much as its concrete in one mode.
///
/// Pull and nominal strength of the concrete stand in units of the edition; the strength is without phi and without the
/// seismic 0.75.
pub fn check(
    facts: &Facts,
    subject: Subject,
    concrete: (Mode, f64, f64),
    pulled: (Set, &[f64]),
    sheet: &mut Sheet,
) -> Outcome {
    let (mode, n_ua, n_n) = concrete;
    let (group, pull) = pulled;
    let quiet = &mut Sheet::quiet();
    let mut most = (0.0, 0.0, f64::NEG_INFINITY);
    for place in members(group) {
        let n_sa = steel::nominal_tension(facts, &facts.anchors[place], quiet);
        let ratio = pull[place] / (1.2 * n_sa);
        if ratio > most.2 || ratio.is_nan() {
            most = (n_sa, pull[place], ratio);
        }
    }
    sheet.open(Part::Anchors, subject, Some(CheckId::AnchorDuctile), facts.edition.system);
    sheet.carry(N_SA, most.0);
    sheet.carry(N_UA_I, most.1);
    let r_steel = sheet.step(R_STEEL, most.2);
    sheet.carry(N_UA, n_ua);
    sheet.carry(mode.strength(), n_n);
    let r_concrete = sheet.step(R_CONCRETE, n_ua / n_n);
    utilised(sheet.step(U, r_concrete / r_steel))
}

/// Stretch length and thread of the anchor that is worst for each.
pub fn check_make(facts: &Facts, sheet: &mut Sheet, mut find: impl FnMut(Subject, Outcome)) {
    let own = || members(facts.own);
    let thickest =
        own().fold(0, |best, place| if facts.anchors[place].d_a > facts.anchors[best].d_a { place } else { best });
    let subject = Subject::Anchor(thickest as u16);
    sheet.open(Part::Anchors, subject, Some(CheckId::AnchorDuctile), facts.edition.system);
    let d_a = sheet.step(D_A, facts.anchors[thickest].d_a);
    let stretch = sheet.step(L_STRETCH, facts.options.stretch);
    let u = sheet.step(U_STRETCH, 8.0 * d_a / stretch);
    // At the limit, which the clause includes, a conversion may have left a rounding.
    find(subject, utilised(if at_least(stretch, 8.0 * d_a) { u.min(1.0) } else { u }));
    if facts.options.thread != 0 {
        return;
    }
    let strain = |place: usize| 1.3 * facts.anchors[place].f_ya.unwrap_or(f64::NAN) / facts.anchors[place].f_u;
    let worst = own().fold(0, |best, place| if strain(place) > strain(best) { place } else { best });
    let subject = Subject::Anchor(worst as u16);
    sheet.open(Part::Anchors, subject, Some(CheckId::AnchorDuctile), facts.edition.system);
    let f_u = sheet.step(F_U, facts.anchors[worst].f_u);
    let f_ya = sheet.step(F_YA, facts.anchors[worst].f_ya.unwrap_or(f64::NAN));
    let u = sheet.step(U_THREAD, 1.3 * f_ya / f_u);
    find(subject, utilised(if at_least(f_u, 1.3 * f_ya) { u.min(1.0) } else { u }));
}

fn utilised(u: f64) -> Outcome {
    Outcome::Compared { value: u, limit: 1.0, utilisation: u }
}
