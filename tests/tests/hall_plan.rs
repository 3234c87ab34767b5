//! Where cabinets stand in a hall: none in another's place, none beyond the outline, aisles clear, and fast for many.

use std::time::{Duration, Instant};

use steadfoot::hall::{Hall, HallPlan, Head, Record};
use steadfoot::input::{Fault, Problem};
use steadfoot_tests::random::Random;

/// A hall of cabinets of 600 by 800 mm.
fn hall(more: &str) -> Hall {
    let text = format!(
        r#"{{ "types": {{ "small": {{ "cabinet": {{ "width_mm": 600, "depth_mm": 800 }} }},
            "long": {{ "cabinet": {{ "width_mm": 6000, "depth_mm": 300 }} }} }}{more} }}"#
    );
    Hall::read(&text).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

/// The faults of where rows stand, in their order.
fn faults(hall: &Hall, rows: &[&str]) -> Vec<Option<Fault>> {
    let head = Head::of("place,type,storey,x_mm,y_mm,turn_deg", 1).expect("a head");
    let mut plan = HallPlan::new();
    let told = |(place, text): (usize, &&str)| {
        let number = place as u32 + 1;
        let mut record = Record { number, line: number + 1, text: text.to_string(), fault: None };
        plan.stand(hall, &head, &mut record);
        record.fault
    };
    rows.iter().enumerate().map(told).collect()
}

/// What the last of the rows is told, with what would do; the others have no fault.
fn last(hall: &Hall, rows: &[&str]) -> Option<(Problem, String)> {
    let mut told = faults(hall, rows);
    let last = told.pop().expect("a row");
    assert!(told.iter().all(Option::is_none), "{told:?}");
    last.map(|fault| {
        assert_eq!((fault.path.as_str(), fault.line), ("place", rows.len() as u32 + 1));
        assert!(rows.last().is_some_and(|row| row.starts_with(&fault.given)), "{}", fault.given);
        (fault.problem, fault.allowed.replace('\u{a0}', " "))
    })
}

#[test]
fn cabinets_that_touch_do_not_overlap_and_those_that_share_more_than_a_millimetre_do() {
    let hall = hall("");
    let overlaps = |rows: &[&str]| match last(&hall, rows) {
        None => false,
        Some((problem, allowed)) => {
            assert_eq!((problem, allowed.as_str()), (Problem::Overlaps, "clear of A"));
            true
        }
    };
    assert!(!overlaps(&["A,small,,0,0,0", "B,small,,600,0,0"]) && !overlaps(&["A,small,,0,0,0", "B,small,,599.5,0,0"]));
    assert!(overlaps(&["A,small,,0,0,0", "B,small,,598.5,0,0"]));
    assert!(
        !overlaps(&["A,small,,0,0,0", "B,small,,0,-799.5,180"]) && overlaps(&["A,small,,0,0,0", "B,small,,0,-798,180"])
    );
    // Turned by a quarter its depth lies along x: 300 + 400 mm.
    assert!(!overlaps(&["A,small,,0,0,0", "B,small,,700,0,90"]) && overlaps(&["A,small,,0,0,0", "B,small,,698,0,90"]));
    // A corner pushed into a side: the upright boxes about both overlap long before they do.
    let half = 700.0 / f64::sqrt(2.0);
    let [clear, deep] = [1.0, -3.0].map(|gap: f64| format!("B,small,,{},0,45", 300.0 + half + gap));
    assert!(!overlaps(&["A,small,,0,0,0", &clear]) && overlaps(&["A,small,,0,0,0", &deep]));
    // No corner of either lies in the other.
    assert!(
        overlaps(&["A,long,,0,0,0", "B,long,,0,0,90"])
            && overlaps(&["A,small,,100000,-100000,0", "B,small,,100000,-100000,0"])
    );
}

#[test]
fn storeys_have_plans_of_their_own_and_of_a_heap_every_cabinet_is_told() {
    let hall = hall(r#", "storeys": { "1": {}, "2": {} }"#);
    assert_eq!(last(&hall, &["A,small,1,0,0,0", "B,small,2,0,0,0"]), None);
    let told = faults(&hall, &["A,small,1,0,0,0", "B,small,1,100,0,0", "C,small,1,650,0,0", "D,small,1,5000,0,0"]);
    let words: Vec<_> = told.iter().map(|fault| fault.as_ref().map(|fault| fault.sentence())).collect();
    assert_eq!(words[0], None);
    assert_eq!(
        words[1].as_deref(),
        Some("place (line 3, column 1): two cabinets stand in one place: B; allowed: clear of A")
    );
    // C touches nothing of A, but B, which is told itself.
    assert_eq!(
        words[2].as_deref(),
        Some("place (line 4, column 1): two cabinets stand in one place: C; allowed: clear of B")
    );
    assert_eq!(words[3], None);
}

#[test]
fn a_cabinet_stands_within_the_outline_of_the_hall_whatever_its_shape() {
    // A room with a recess: 10 m by 10 m without the upper right quarter.
    let hall = hall(r#", "outline_mm": [[0, 0], [10000, 0], [10000, 5000], [5000, 5000], [5000, 10000], [0, 10000]]"#);
    let within = |row: &str| match last(&hall, &[row]) {
        None => true,
        Some((problem, allowed)) => {
            assert_eq!((problem, allowed.as_str()), (Problem::OutsideHall, "within outline_mm"));
            false
        }
    };
    assert!(within("A,small,,300,400,0") && within("A,small,,9700,4600,0") && within("A,small,,4700,9600,0"));
    assert!(within("A,small,,299.5,400,0") && !within("A,small,,298,400,0"));
    assert!(!within("A,small,,7500,7500,0") && !within("A,small,,-5000,400,0") && !within("A,small,,7500,4602,0"));
    // All its corners inside, and a corner of the room within it.
    assert!(!within("A,long,,4900,5100,45") && within("A,long,,2500,2500,45"));
    assert!(within("A,long,,3200,1000,0") && !within("A,long,,3200,1000,90"));
}

#[test]
fn an_aisle_is_clear_in_front_of_every_cabinet_whichever_row_comes_first() {
    let hall =
        hall(r#", "aisle_mm": 1200, "outline_mm": [[-5000, -5000], [5000, -5000], [5000, 5000], [-5000, 5000]]"#);
    let told = |rows: &[&str]| {
        last(&hall, rows).map(|(problem, allowed)| {
            assert_eq!(problem, Problem::NarrowsAisle);
            allowed
        })
    };
    // Side by side and back to back there is no aisle.
    assert_eq!(told(&["A,small,,0,0,0", "B,small,,600,0,0", "C,small,,0,800,180"]), None);
    // Face to face 1200 mm do for both.
    assert_eq!(told(&["A,small,,0,0,0", "B,small,,0,-2000,180"]), None);
    assert_eq!(
        told(&["A,small,,0,0,0", "B,small,,0,-1998,180"]).as_deref(),
        Some("1200 mm clear in front of it, where A stands")
    );
    // The back of the next row stands in the aisle, or its own aisle is narrowed by a back.
    assert_eq!(told(&["A,small,,0,0,0", "B,small,,0,-1900,0"]).as_deref(), Some("1200 mm clear in front of A"));
    assert_eq!(
        told(&["B,small,,0,-1900,0", "A,small,,0,0,0"]).as_deref(),
        Some("1200 mm clear in front of it, where B stands")
    );
    // As wide as the cabinet and no wider, and turned with it.
    assert_eq!(told(&["A,small,,0,0,0", "B,small,,601,-1000,0"]), None);
    assert_eq!(told(&["A,small,,0,0,90", "B,small,,1500,0,90"]).as_deref(), Some("1200 mm clear in front of A"));
    // A wall stands in it as well.
    assert_eq!(told(&["A,small,,0,-3400,0"]), None);
    assert_eq!(told(&["A,small,,0,-3402,0"]).as_deref(), Some("1200 mm clear in front of it, within outline_mm"));
}

#[test]
fn rows_that_say_nowhere_or_have_no_size_are_held_against_nobody() {
    let hall =
        Hall::read(r#"{ "types": { "bare": {}, "vast": { "cabinet": { "width_mm": 1e7, "depth_mm": 1e7 } } } }"#)
            .expect("a hall");
    assert!(
        faults(&hall, &["A,bare,,0,0,0", "B,bare,,0,0,0", "C,vast,,0,0,0", "D,vast,,0,0,0", "E,bare,,,,"])
            .iter()
            .all(Option::is_none)
    );
}

/// Every pair of a hundred halls of random cabinets, by cutting one rectangle with the sides of the other.
#[test]
fn overlaps_are_those_that_clipping_every_pair_finds() {
    let hall = hall("");
    let mut random = Random::new(7);
    let mut overlaps = 0;
    for _ in 0..60 {
        let count = 12;
        let turned: Vec<[f64; 3]> = (0..count)
            .map(|_| [random.between(0.0, 6000.0), random.between(0.0, 6000.0), random.between(0.0, 360.0)])
            .collect();
        let rows: Vec<String> =
            turned.iter().enumerate().map(|(place, [x, y, turn])| format!("P{place},small,,{x},{y},{turn}")).collect();
        let rows: Vec<&str> = rows.iter().map(String::as_str).collect();
        let told = faults(&hall, &rows);
        for (place, fault) in told.iter().enumerate() {
            // Shrunk by the touch that is allowed.
            let first = (0..place).find(|&other| shared(turned[place], turned[other], 0.5) > 0.0);
            let surely_not = (0..place).all(|other| shared(turned[place], turned[other], 0.0) == 0.0);
            assert_eq!(fault.is_some(), first.is_some(), "{place} {turned:?}");
            assert!(fault.is_none() || !surely_not);
            if let (Some(fault), Some(first)) = (fault, first) {
                assert_eq!(fault.allowed, format!("clear of P{first}"));
                overlaps += 1;
            }
        }
    }
    assert!(overlaps > 60, "{overlaps}");
}

/// What two cabinets of 600 by 800 mm share, each shrunk on all sides.
fn shared(one: [f64; 3], other: [f64; 3], shrunk: f64) -> f64 {
    let corners = |[x, y, turn]: [f64; 3]| {
        let (sin, cos) = turn.to_radians().sin_cos();
        let (half_x, half_y) = (300.0 - shrunk, 400.0 - shrunk);
        [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].map(|(right, rear)| {
            let (right, rear) = (right * half_x, rear * half_y);
            [x + right * cos - rear * sin, y + right * sin + rear * cos]
        })
    };
    let (mut kept, sides) = (corners(one).to_vec(), corners(other));
    for (side, from) in sides.iter().enumerate() {
        let to = sides[(side + 1) % 4];
        let inside = |p: &[f64; 2]| (to[0] - from[0]) * (p[1] - from[1]) - (to[1] - from[1]) * (p[0] - from[0]);
        let mut next = Vec::new();
        for (at, p) in kept.iter().enumerate() {
            let q = kept[(at + 1) % kept.len()];
            let (a, b) = (inside(p), inside(&q));
            if a >= 0.0 {
                next.push(*p);
            }
            if (a > 0.0) != (b > 0.0) && a != b {
                let t = a / (a - b);
                next.push([p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])]);
            }
        }
        kept = next;
    }
    let twice: f64 =
        (0..kept.len()).map(|at| (kept[at], kept[(at + 1) % kept.len()])).map(|(p, q)| p[0] * q[1] - p[1] * q[0]).sum();
    twice / 2.0
}

/// A row costs the same however many stand elsewhere, and a heap is no trap.
#[test]
fn ten_thousand_rows_in_a_grid_or_in_one_heap_are_told_at_once() {
    let hall = hall(r#", "aisle_mm": 1200"#);
    for is_heap in [false, true] {
        let rows: Vec<String> = (0..10_000)
            .map(|place| match is_heap {
                true => format!("P{place},small,,{},0,0", place % 3),
                false => format!(
                    "P{place},small,,{},{},{}",
                    700 * (place % 100),
                    2000 * (place / 100),
                    180 * (place / 100 % 2)
                ),
            })
            .collect();
        let rows: Vec<&str> = rows.iter().map(String::as_str).collect();
        let began = Instant::now();
        let told = faults(&hall, &rows);
        assert!(began.elapsed() < Duration::from_secs(10), "{:?}", began.elapsed());
        println!("{:?} for {} rows", began.elapsed(), rows.len());
        let faulty = told.iter().flatten().count();
        assert!(if is_heap { faulty == 9_999 } else { faulty == 0 }, "{faulty}");
    }
}
