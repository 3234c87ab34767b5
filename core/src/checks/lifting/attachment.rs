use super::eyebolt::{ALONG_DEG, Eyebolt};
use super::{Hung, Leg, fields, texts::*};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Detail, Outcome, Sheet, limit};

/// What a sling is hooked to.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) enum Held {
    /// An eyebolt of DIN 580.
    Eyebolt(Eyebolt),
    /// A shouldered eyebolt of another standard, by its rating along the axis.
    Shoulder(f64),
    /// A swivel hoist ring, by its rating.
    Ring(f64),
    /// A lug of the frame: forces at yield and at break.
    Lug(f64, f64),
}

/// Design factors of ASME BTH-1, categories A to C.
const DESIGN_FACTORS: [f64; 3] = [2.0, 3.0, 6.0];
/// Shares of the axial rating of a shouldered eyebolt up to an angle from its axis; the lowest of the tables in use.
const SHOULDER: [(f64, f64); 3] = [(ALONG_DEG, 1.0), (15.0, 0.55), (90.0, 0.25)];

impl Hung<'_> {
    /// The eyebolt given, if one is.
    pub(super) fn eyebolt(&self) -> Option<Eyebolt> {
        self.values.choice(fields::EYEBOLT).and_then(Eyebolt::of)
    }

    /// What the slings are hooked to; the first of what is given.
    pub(super) fn held(&self) -> Option<Held> {
        let number = |field: usize| self.values.number(field);
        self.eyebolt()
            .map(Held::Eyebolt)
            .or_else(|| number(fields::SHOULDER_CAPACITY).map(Held::Shoulder))
            .or_else(|| number(fields::RING_CAPACITY).map(Held::Ring))
            .or_else(|| Some(Held::Lug(number(fields::LUG_YIELD)?, number(fields::LUG_BREAK)?)))
    }

    /// The point that is used most against what it is rated for.
    pub(super) fn check_attachment(&self, legs: &[Leg], sheet: &mut Sheet) -> Outcome {
        let Some(held) = self.held() else { return Outcome::NotCovered(NO_RATING) };
        let mut worst: Option<(f64, &Leg)> = None;
        for leg in legs {
            let Some((_, rating_n)) = self.rated(&held, leg.from_axis_rad) else {
                return Outcome::NotCovered(TOO_SIDEWAYS);
            };
            let use_of_it = leg.tension_n / rating_n;
            if worst.is_none_or(|(known, _)| use_of_it > known) {
                worst = Some((use_of_it, leg));
            }
        }
        let Some((_, leg)) = worst else { return Outcome::NotCovered(NO_RATING) };
        self.open(CheckId::LiftAttachment, sheet);
        let at = self.points[leg.point].at_mm;
        sheet.detailed(BETA_PICK, leg.from_axis_rad, || Detail::Shape(alloc::vec![[at[0], at[1]]]));
        let pull = sheet.detailed(T_PICK, leg.tension_n, || Detail::Shape(alloc::vec![[at[0], at[1]]]));
        let Some((angle_deg, rating_n)) = self.rated(&held, leg.from_axis_rad) else {
            return Outcome::NotCovered(TOO_SIDEWAYS);
        };
        let rating = match held {
            Held::Lug(yields, breaks) => {
                sheet.step(F_YIELD, yields);
                sheet.step(F_BREAK, breaks);
                match self.design_factor() {
                    Some(factor) => {
                        sheet.detailed(N_D, factor, || Detail::Rows(alloc::vec![[self.category() as f64, factor]]));
                        sheet.step(R_LUG, rating_n)
                    }
                    None => sheet.step(R_LUG_EN, rating_n),
                }
            }
            Held::Eyebolt(bolt) => {
                sheet.carry(G, G_N_PER_KG);
                let kg = along(&rows(&bolt), leg.from_axis_rad).map_or(0.0, |row| row.1);
                sheet.detailed(M_EYE, kg, || Detail::Rows(alloc::vec![[angle_deg, kg]]));
                sheet.step(R_PICK, rating_n)
            }
            Held::Shoulder(kg) => {
                sheet.carry(G, G_N_PER_KG);
                sheet.step(M_0, kg);
                let share = along(&SHOULDER, leg.from_axis_rad).map_or(0.0, |row| row.1);
                sheet.detailed(K_P, share, || Detail::Rows(alloc::vec![[angle_deg, share]]));
                sheet.step(M_SHOULDER, share * kg);
                sheet.step(R_PICK, rating_n)
            }
            Held::Ring(kg) => {
                sheet.carry(G, G_N_PER_KG);
                sheet.step(M_RING, kg);
                sheet.step(R_PICK, rating_n)
            }
        };
        Outcome::told_ratio(pull, rating, U_PICK, sheet)
    }

    /// The row of a table for a pull so far from the axis, its last angle, and what may be pulled there.
    fn rated(&self, held: &Held, from_axis_rad: f64) -> Option<(f64, f64)> {
        match *held {
            Held::Eyebolt(bolt) => along(&rows(&bolt), from_axis_rad).map(|(deg, kg)| (deg, kg * G_N_PER_KG)),
            Held::Shoulder(kg) => along(&SHOULDER, from_axis_rad).map(|(deg, share)| (deg, share * kg * G_N_PER_KG)),
            Held::Ring(kg) => Some((0.0, kg * G_N_PER_KG)),
            Held::Lug(yields, breaks) => Some((
                0.0,
                match self.design_factor() {
                    Some(factor) => f64::min(yields / factor, breaks / (1.2 * factor)),
                    None => f64::min(yields / 2.0, breaks / 3.0),
                },
            )),
        }
    }

    fn category(&self) -> usize {
        self.values.choice(fields::LUG_CATEGORY).unwrap_or(1)
    }

    /// The design factor of BTH-1; none by EN 13155.
    fn design_factor(&self) -> Option<f64> {
        DESIGN_FACTORS.get(self.category()).copied()
    }
}

/// Ratings of an eyebolt in kg, up to an angle from its axis.
fn rows(bolt: &Eyebolt) -> [(f64, f64); 3] {
    [(ALONG_DEG, bolt.axial_kg), (45.0, bolt.inclined_kg), (90.0, bolt.sideways_kg)]
}

/// The row that holds for an angle from the axis.
fn along(rows: &[(f64, f64); 3], from_axis_rad: f64) -> Option<(f64, f64)> {
    rows.iter().copied().find(|(most_deg, _)| limit::at_most(from_axis_rad, most_deg.to_radians()))
}
