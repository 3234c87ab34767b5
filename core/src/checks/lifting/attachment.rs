use super::eyebolt::{ALONG_DEG, Eyebolt};
use super::{Hung, Leg, fields, texts::*};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Detail, Outcome, Sheet, limit};

impl Hung<'_> {
    /// The eyebolt given, if one is.
    pub(super) fn eyebolt(&self) -> Option<Eyebolt> {
        self.values.choice(fields::EYEBOLT).and_then(Eyebolt::of)
    }

    /// The point that is used most against the rating of its eyebolt or hoist ring.
    pub(super) fn check_attachment(&self, legs: &[Leg], sheet: &mut Sheet) -> Outcome {
        let ring_kg = self.values.number(fields::RING_CAPACITY);
        let bolt = self.eyebolt();
        let rating_kg = |leg: &Leg| match (bolt, ring_kg) {
            (Some(bolt), _) => rated(&bolt, leg.from_axis_rad),
            (None, Some(ring_kg)) => Some((0.0, ring_kg)),
            (None, None) => None,
        };
        if bolt.is_none() && ring_kg.is_none() {
            return Outcome::NotCovered(NO_RATING);
        }
        let mut worst: Option<(f64, &Leg, f64, f64)> = None;
        for leg in legs {
            let Some((angle_deg, rating_kg)) = rating_kg(leg) else { return Outcome::NotCovered(TOO_SIDEWAYS) };
            let use_of_it = leg.tension_n / (rating_kg * G_N_PER_KG);
            if worst.is_none_or(|(known, ..)| use_of_it > known) {
                worst = Some((use_of_it, leg, angle_deg, rating_kg));
            }
        }
        let Some((_, leg, angle_deg, rating_kg)) = worst else { return Outcome::NotCovered(NO_RATING) };
        self.open(CheckId::LiftAttachment, sheet);
        let at = self.points[leg.point].at_mm;
        sheet.detailed(BETA_PICK, leg.from_axis_rad, || Detail::Shape(alloc::vec![[at[0], at[1]]]));
        let pull = sheet.detailed(T_PICK, leg.tension_n, || Detail::Shape(alloc::vec![[at[0], at[1]]]));
        sheet.carry(G, G_N_PER_KG);
        match bolt {
            Some(_) => sheet.detailed(M_EYE, rating_kg, || Detail::Rows(alloc::vec![[angle_deg, rating_kg]])),
            None => sheet.step(M_RING, rating_kg),
        };
        let rating = sheet.step(R_PICK, rating_kg * G_N_PER_KG);
        Outcome::told_ratio(pull, rating, U_PICK, sheet)
    }
}

/// The row of the table for a pull so far from the axis: its last angle, and the rating.
fn rated(bolt: &Eyebolt, from_axis_rad: f64) -> Option<(f64, f64)> {
    let rows = [(ALONG_DEG, bolt.axial_kg), (45.0, bolt.inclined_kg), (90.0, bolt.sideways_kg)];
    rows.into_iter().find(|(most_deg, _)| limit::at_most(from_axis_rad, most_deg.to_radians()))
}
