//! Who stands where in the hall: no two cabinets in one place, none beyond the outline, aisles clear.
//!
//! Rows are taken in the order of the schedule, and what is wrong is told of the lower of two rows, with both names.
//! Cabinets are found by the square metres that they and the aisles in front of them touch, so a row costs the same
//! however many stand elsewhere.

use alloc::string::String;
use alloc::vec::Vec;

use super::base::Base;
use super::column::{Head, Means, Separator};
use super::draft::Draft;
use super::file::Hall;
use super::schedule::Record;
use crate::calc::number;
use crate::input::{LimitUnits, Problem};

/// Side of the squares by which neighbours are found.
const SQUARE_MM: f64 = 1000.0;
/// So many chains of squares; squares that share one are only looked at in vain.
const CHAINS: usize = 1 << 16;
/// Where so many were looked at, one that stands on another is not kept: of a heap all are told, and none is quick.
const CROWD: usize = 256;
const NONE: u32 = u32::MAX;

/// The cabinets of a schedule, as far as they were met.
#[derive(Debug, Default)]
pub struct HallPlan {
    stood: Vec<Stood>,
    /// Their names, one behind the other.
    names: String,
    storeys: Vec<String>,
    /// The first link of each chain; empty before the first cabinet.
    chains: Vec<u32>,
    /// A cabinet and the next link.
    links: Vec<(u32, u32)>,
}

#[derive(Debug)]
struct Stood {
    base: Base,
    storey: u32,
    /// Where its name ends among the names.
    name_end: u32,
}

/// What is wrong with where a cabinet stands.
enum Clash {
    /// It stands on another.
    On(u32),
    /// It or the aisle in front of it reaches beyond the outline.
    Beyond(bool),
    /// Another stands in the aisle in front of it.
    Before(u32),
    /// It stands in the aisle of another.
    InAisle(u32),
}

impl HallPlan {
    /// No cabinet was met yet.
    pub fn new() -> HallPlan {
        HallPlan::default()
    }

    /// Takes in the cabinet of a row, and puts a fault into the row where it cannot stand there.
    ///
    /// Compared are cabinets of the same storey whose rows say where they stand and whose sizes are known. The aisle, where
    /// the hall has one, is the clear way in front of every cabinet, as wide as it.
    ///
    /// ```
    /// use steadfoot::hall::{Hall, HallPlan, Head, Record};
    /// let hall = Hall::read(include_str!("../../../demo-configs/02-full.json")).unwrap();
    /// let head = Head::of("place,x_mm,y_mm", 1).unwrap();
    /// let mut plan = HallPlan::new();
    /// let mut fault = |number: u32, text: &str| {
    ///     let mut record = Record { number, line: number + 1, text: text.into(), fault: None };
    ///     plan.stand(&hall, &head, &mut record);
    ///     record.fault.map(|fault| fault.sentence())
    /// };
    /// assert_eq!(fault(1, "A1,0,0"), None);
    /// assert_eq!(fault(2, "A2,5000,0"), None);
    /// assert!(fault(3, "A3,300,0").unwrap().ends_with("two cabinets stand in one place: A3; allowed: clear of A1"));
    /// ```
    pub fn stand(&mut self, hall: &Hall, head: &Head, record: &mut Record) {
        let is_placed = |means: Means| head.columns.iter().any(|column| column.means == means);
        if head.separator != Separator::JsonLines && !(is_placed(Means::X) && is_placed(Means::Y)) {
            return;
        }
        let mut draft = Draft::of(head, record);
        let Some(tree) = draft.tree(hall) else { return };
        draft.stand(&tree);
        let Some(corners) = draft.row.standing.and_then(|standing| standing.corners_mm) else { return };
        let Some(base) = Base::of(corners) else { return };
        let Some(clash) = self.take(hall, base, &draft.row) else { return };
        if record.fault.is_some() {
            return;
        }
        let clear = |text: &mut String| {
            text.push_str(&LimitUnits::File.length(hall.aisle_mm.unwrap_or(0.0)));
            text.push_str(" clear in front of ");
        };
        let mut allowed = String::new();
        let problem = match clash {
            Clash::On(other) => {
                allowed.push_str("clear of ");
                allowed.push_str(self.name(other));
                Problem::Overlaps
            }
            Clash::Beyond(false) => {
                allowed.push_str("within outline_mm");
                Problem::OutsideHall
            }
            Clash::Beyond(true) => {
                clear(&mut allowed);
                allowed.push_str("it, within outline_mm");
                Problem::NarrowsAisle
            }
            Clash::Before(other) => {
                clear(&mut allowed);
                allowed.push_str("it, where ");
                allowed.push_str(self.name(other));
                allowed.push_str(" stands");
                Problem::NarrowsAisle
            }
            Clash::InAisle(other) => {
                clear(&mut allowed);
                allowed.push_str(self.name(other));
                Problem::NarrowsAisle
            }
        };
        record.fault = Some(Record::fault_of_place(record.line, &draft.row.place, problem, &allowed));
    }

    /// Looks at those that stand near and takes the cabinet in.
    fn take(&mut self, hall: &Hall, base: Base, row: &super::Row) -> Option<Clash> {
        let storey = self.storey(&row.storey);
        let aisle_of = |base: &Base| hall.aisle_mm.map(|deep| base.in_front(deep));
        let aisle = aisle_of(&base);
        if self.chains.is_empty() {
            self.chains = alloc::vec![NONE; CHAINS];
        }
        let squares = squares(&base, aisle.as_ref());
        let [mut on, mut before, mut in_aisle] = [NONE; 3];
        let mut looked_at = 0;
        for square in squares.iter() {
            let mut link = self.chains[chain(square, storey)];
            while link != NONE {
                let (other, next) = self.links[link as usize];
                link = next;
                let Stood { base: their, storey: on_storey, .. } = &self.stood[other as usize];
                looked_at += 1;
                if *on_storey != storey {
                    continue;
                }
                // The first that was met is told.
                if other < on && base.shares_with(their) {
                    on = other;
                }
                if let Some(aisle) = &aisle {
                    if other < before && aisle.shares_with(their) {
                        before = other;
                    }
                    if other < in_aisle && aisle_of(their).is_some_and(|their| base.shares_with(&their)) {
                        in_aisle = other;
                    }
                }
            }
        }
        if on == NONE || looked_at < CROWD {
            let this = self.stood.len() as u32;
            self.names.push_str(&row.place);
            self.stood.push(Stood { base, storey, name_end: self.names.len() as u32 });
            for square in squares.iter() {
                let first = &mut self.chains[chain(square, storey)];
                self.links.push((this, *first));
                *first = self.links.len() as u32 - 1;
            }
        }
        match () {
            _ if on != NONE => Some(Clash::On(on)),
            _ if !base.is_within(&hall.outline_mm) => Some(Clash::Beyond(false)),
            _ if before != NONE => Some(Clash::Before(before)),
            _ if in_aisle != NONE => Some(Clash::InAisle(in_aisle)),
            _ if aisle.is_some_and(|aisle| !aisle.is_within(&hall.outline_mm)) => Some(Clash::Beyond(true)),
            _ => None,
        }
    }

    fn name(&self, cabinet: u32) -> &str {
        let from = cabinet.checked_sub(1).map_or(0, |before| self.stood[before as usize].name_end);
        &self.names[from as usize..self.stood[cabinet as usize].name_end as usize]
    }

    fn storey(&mut self, name: &str) -> u32 {
        let known = self.storeys.iter().position(|known| known == name);
        let place = known.unwrap_or_else(|| {
            self.storeys.push(name.into());
            self.storeys.len() - 1
        });
        place as u32
    }
}

/// The squares from a lowest to a highest one.
struct Squares {
    low: [i64; 2],
    high: [i64; 2],
}

impl Squares {
    fn iter(&self) -> impl Iterator<Item = [i64; 2]> + use<> {
        let ([x0, y0], [x1, y1]) = (self.low, self.high);
        (x0..=x1).flat_map(move |x| (y0..=y1).map(move |y| [x, y]))
    }
}

/// The squares that a base and the aisle in front of it touch.
fn squares(base: &Base, aisle: Option<&Base>) -> Squares {
    let mut found = Squares { low: [i64::MAX; 2], high: [i64::MIN; 2] };
    for place in core::iter::once(base).chain(aisle) {
        for (axis, way) in [[1.0, 0.0], [0.0, 1.0]].into_iter().enumerate() {
            let square = |mm: f64| number::floor(mm / SQUARE_MM) as i64;
            let reach = place.reach(way);
            found.low[axis] = found.low[axis].min(square(place.at[axis] - reach));
            found.high[axis] = found.high[axis].max(square(place.at[axis] + reach));
        }
    }
    found
}

/// The chain of a square of a storey.
fn chain([x, y]: [i64; 2], storey: u32) -> usize {
    let mixed = (x as u64).wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ (y as u64).wrapping_mul(0xc2b2_ae3d_27d4_eb4f);
    let mixed = (mixed ^ u64::from(storey)).wrapping_mul(0x1656_67b1_9e37_79f9);
    (mixed >> 48) as usize
}
