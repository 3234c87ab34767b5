//! Moving: what it takes to roll the cabinet in, over sills and up ramps, on forks and on the road, and when it tips.
//!
//! The cabinet rolls on wheels where its feet are. People who move it have their own limits, which are a filter and no
//! safe limit; a truck has its own plate, which governs.

mod brake;
mod carrier;
mod fields;
mod forks;
mod hand;
mod push;
mod road;
mod sill;
mod texts;
mod truck;

pub use carrier::TEXTS as CARRIER_TEXTS;
pub use fields::{FIELD_TEXTS, FIELDS};
pub use texts::TEXTS;

use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Part, Sheet, Subject, System};
use crate::geometry::Hull;
use crate::input::field::Values;
use crate::rules::anchor::{Finding, Findings};

/// A cabinet in one state on its way.
#[derive(Clone, Copy, Debug)]
pub struct Moved<'a> {
    /// Its mass.
    pub mass_kg: f64,
    /// Its centre of gravity.
    pub centre_mm: [f64; 3],
    /// Hull of the feet, where its wheels are.
    pub hull: &'a Hull,
    /// Width and depth of the cabinet.
    pub size_mm: [f64; 2],
    /// The heaviest thing that is carried in by hand.
    pub heaviest_kg: f64,
    /// What is known of the way, in the order of [`FIELDS`].
    pub values: &'a Values,
}

impl Moved<'_> {
    /// All checks of moving in this state, quiet or told.
    ///
    /// Units: N, mm, kg, accelerations as multiples of g. "Not covered" where a number that a check needs is not given.
    pub fn check(&self, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let mut find = |check, outcome| findings.find(Finding { check, subject: Subject::Whole, outcome });
        find(CheckId::MovePush, self.check_push(sheet));
        find(CheckId::MoveKeep, self.check_keep(sheet));
        find(CheckId::MoveSill, self.check_sill(sheet));
        find(CheckId::MoveBrake, self.check_brake(sheet));
        find(CheckId::MoveTruck, self.check_truck(sheet));
        find(CheckId::MoveForks, self.check_forks(sheet));
        find(CheckId::MoveEntry, self.check_entry(sheet));
        find(CheckId::MoveCarrier, self.check_carrier(sheet));
        find(CheckId::MoveDeck, self.check_deck(sheet));
        find(CheckId::MoveHand, self.check_hand(sheet));
        find(CheckId::MoveRoad, self.check_road(sheet));
    }

    fn open(&self, check: CheckId, sheet: &mut Sheet) {
        sheet.open(Part::Moving, Subject::Whole, Some(check), System::Si);
    }

    fn tell_weight(&self, sheet: &mut Sheet) -> f64 {
        sheet.carry(texts::M, self.mass_kg);
        sheet.step(texts::G, G_N_PER_KG);
        sheet.step(texts::W, self.mass_kg * G_N_PER_KG)
    }

    /// The distance from the centre of gravity to the nearest side of the wheels' hull; zero outside of it.
    fn least_mm(&self) -> f64 {
        let centre = crate::geometry::Point::new(self.centre_mm[0], self.centre_mm[1]);
        self.hull.nearest_edge(centre).map_or(0.0, |side| crate::calc::number::positive_part(side.distance_mm))
    }
}
