//! What the evaluation report of an anchor says, in units of the edition.

use super::chosen;
use super::edition::Edition;
use super::fields as f;
use crate::calc::Kind;
use crate::input::field::Values;

/// Values that hold for all anchors of the anchorage; each may be unknown.
#[derive(Clone, Copy, Debug)]
pub struct Report {
    /// Place of the anchor category's word: 0 is category 1.
    pub category: Option<usize>,
    /// Effectiveness factor in cracked concrete.
    pub k_cr: Option<f64>,
    /// Effectiveness factor in uncracked concrete.
    pub k_uncr: Option<f64>,
    /// Whether pullout decides.
    pub pullout_decides: bool,
    /// Place of the word for where the bond stress comes from.
    pub bond_stress: usize,
    /// Bond stress in cracked concrete.
    pub tau_cr: Option<f64>,
    /// Bond stress in uncracked concrete.
    pub tau_uncr: Option<f64>,
    /// Factor on bond stress under simulated earthquakes.
    pub alpha_n_seis: Option<f64>,
    /// Whether a sleeve passes the shear plane.
    pub sleeve: bool,
    /// Critical edge distance.
    pub c_ac: Option<f64>,
    /// Least spacing.
    pub s_min: Option<f64>,
    /// Least edge distance.
    pub c_min: Option<f64>,
    /// Least thickness of the concrete.
    pub h_min: Option<f64>,
}

impl Report {
    /// The report in the values of an anchorage.
    pub fn new(edition: &Edition, values: &Values) -> Report {
        let to = |field: usize, kind| values.number(field).map(|number| edition.system.from_si(number, kind));
        let length = |field| to(field, Kind::Length);
        let coefficient = |field| to(field, Kind::Empirical { force: 3, length: -3 });
        Report {
            category: values.choice(f::CATEGORY),
            k_cr: coefficient(f::K_CR),
            k_uncr: coefficient(f::K_UNCR),
            pullout_decides: values.choice(f::PULLOUT) != Some(chosen::PULLOUT_NOT_DECISIVE),
            bond_stress: values.choice(f::BOND_STRESS).unwrap_or(0),
            tau_cr: to(f::TAU_CR, Kind::Stress),
            tau_uncr: to(f::TAU_UNCR, Kind::Stress),
            alpha_n_seis: values.number(f::ALPHA_N_SEIS),
            sleeve: values.flag(f::SLEEVE),
            c_ac: length(f::C_AC),
            s_min: length(f::S_MIN),
            c_min: length(f::C_MIN),
            h_min: length(f::H_MIN),
        }
    }
}
