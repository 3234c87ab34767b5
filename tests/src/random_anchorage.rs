//! Random anchorages of EN 1992-4: one to eight fasteners in a slab, loaded at random, mostly within the rule's reach.

use steadfoot::geometry::{Point, Rectangle, Size};
use steadfoot::input::{Value, Values};
use steadfoot::rules::anchor::{AnchorForce, AnchorPlace, AnchorSlab, Cracking, anchor_rule};
use steadfoot::rules::en_1992_4 as en;

use crate::random::Random;
use crate::random_values::valid_values;
use crate::run_anchors::Case;

/// One of them.
pub fn random_anchorage(random: &mut Random) -> Case {
    let rule = anchor_rule("en-1992-4-2018").expect("the rule is in the registry");
    let mut values = valid_values(random, rule.fields, rule.faults);
    likely(random, &mut values);
    let embedment_mm = random.decades(42.0, 500.0);
    if random.percent(97) {
        values.set_number(en::EMBEDMENT, embedment_mm);
    }
    let embedment_mm = values.given(en::EMBEDMENT);
    let pitch_mm = embedment_mm * random.decades(0.3, 6.0);
    let (columns, rows) = (1 + random.below(4), 1 + random.below(2));
    let is_uneven = random.percent(15);
    let is_headed = values.choice(en::FASTENER) == Some(en::HEADED);
    let mut anchors = Vec::new();
    for column in 0..columns {
        for row in 0..rows {
            let mut at = Point::new(column as f64 * pitch_mm, row as f64 * pitch_mm * 1.3);
            if is_uneven {
                at.x_mm += random.between(-0.2, 0.2) * pitch_mm;
                at.y_mm += random.between(-0.2, 0.2) * pitch_mm;
            }
            let mut own = values.clone();
            if random.percent(if is_headed { 3 } else { 1 }) {
                own.set_number(en::EMBEDMENT, embedment_mm * 0.8);
            }
            anchors.push(AnchorPlace { at, values: own });
        }
    }
    let extreme = |of: fn(Point) -> f64, best: fn(f64, f64) -> f64| {
        anchors.iter().map(|anchor| of(anchor.at)).reduce(best).expect("there are anchors")
    };
    let all = Rectangle {
        left_mm: extreme(|at| at.x_mm, f64::min),
        right_mm: extreme(|at| at.x_mm, f64::max),
        front_mm: extreme(|at| at.y_mm, f64::min),
        rear_mm: extreme(|at| at.y_mm, f64::max),
    };
    let mut beyond = || if random.percent(45) { f64::INFINITY } else { embedment_mm * random.decades(0.2, 12.0) };
    let outline = Rectangle {
        left_mm: all.left_mm - beyond(),
        right_mm: all.right_mm + beyond(),
        front_mm: all.front_mm - beyond(),
        rear_mm: all.rear_mm + beyond(),
    };
    let slab = AnchorSlab {
        strength_mpa: if random.percent(3) { random.between(5.0, 120.0) } else { random.between(12.0, 90.0) },
        thickness_mm: embedment_mm * if random.percent(2) { 0.9 } else { random.decades(1.05, 6.0) },
        cracking: if random.percent(50) { Cracking::Cracked } else { Cracking::Uncracked },
        boundary: match random.percent(10) {
            true => Rectangle { right_mm: all.right_mm + embedment_mm * random.part(), ..Rectangle::EVERYWHERE },
            false => Rectangle::EVERYWHERE,
        },
        openings: match random.percent(2) {
            true => vec![Rectangle::around(Point::new(all.right_mm + 500.0, 0.0), Size::new(100.0, 100.0))],
            false => Vec::new(),
        },
        outline,
    };
    let mut forces = random_forces(random, anchors.len());
    let own = anchors.len();
    if random.percent(10) {
        // A neighbour pushed alike, to the right or behind.
        let by_mm = embedment_mm * random.between(0.5, 4.0);
        let beside = random.percent(50);
        for place in 0..own {
            let AnchorPlace { mut at, values } = anchors[place].clone();
            if beside {
                at.x_mm += all.right_mm - all.left_mm + by_mm;
            } else {
                at.y_mm += all.rear_mm - all.front_mm + by_mm;
            }
            anchors.push(AnchorPlace { at, values });
            forces.push(forces[place]);
        }
    }
    Case { rule, values, anchors, slab, forces, own }
}

/// Most values of an assessment are there, within a decade of what assessments give, and most cases are not refused.
fn likely(random: &mut Random, values: &mut Values) {
    for (field, low, high) in [
        (en::GAMMA_INST, 1.0, 1.4),
        (en::N_RK_S, 1e4, 1e5),
        (en::N_RK_P_CR, 5e3, 1e5),
        (en::N_RK_P_UCR, 5e3, 1e5),
        (en::TAU_RK_CR, 2.0, 20.0),
        (en::TAU_RK_UCR, 4.0, 30.0),
        (en::C_CR_SP, 60.0, 800.0),
        (en::H_MIN, 60.0, 400.0),
        (en::S_MIN, 20.0, 100.0),
        (en::C_MIN, 20.0, 100.0),
        (en::V_0_RK_S, 5e3, 5e4),
        (en::N_RK_S_EQ, 1e4, 1e5),
        (en::N_RK_P_EQ, 5e3, 1e5),
        (en::TAU_RK_EQ, 1.0, 15.0),
        (en::V_RK_S_EQ, 5e3, 5e4),
    ] {
        if random.percent(94) {
            values.set_number(field, random.decades(low, high));
        }
    }
    for field in [
        en::N_RK_S,
        en::V_0_RK_S,
        en::D_NOM,
        en::HOLE,
        en::K_CR,
        en::K_UCR,
        en::C_CR_N,
        en::N_0_RK_SP,
        en::L_F,
        en::M_0_RK_S,
    ] {
        if random.percent(50) {
            values.0[field] = Value::Unknown;
        }
    }
    if random.percent(94) {
        values.set_choice(en::DESIGN, en::ELASTIC);
        values.set_choice(en::QUALIFIED, 2);
    }
    if random.percent(50) {
        values.set_choice(en::CATEGORY, en::STATIC);
    }
    if random.percent(60) {
        values.set_choice(en::SEAT, 0);
    }
    if random.percent(30) {
        values.set_choice(en::FASTENER, en::HEADED);
        values.set_number(en::HEAD_DIAMETER, random.decades(20.0, 300.0));
        values.set_number(en::HEAD_THICKNESS, random.decades(2.0, 40.0));
        values.set_number(en::BEARING_AREA, random.decades(100.0, 1e5));
        if values.choice(en::BOLT) == Some(en::BOLT_WORDS.len() - 1) {
            values.set_choice(en::HEAD, en::HEAD_ROUND);
        }
    }
    if values.choice(en::SEAT) == Some(en::SEAT_MORTAR) {
        values.set_number(en::GROUT, random.decades(2.0, 60.0));
    }
    if values.choice(en::SEAT) == Some(en::SEAT_GAP) && random.percent(90) {
        values.set_number(en::LEVER, random.decades(5.0, 500.0));
    }
}

/// Simultaneous forces, some of them none.
pub fn random_forces(random: &mut Random, count: usize) -> Vec<AnchorForce> {
    let direction = random.between(0.0, std::f64::consts::TAU);
    let (sin, cos) = match random.below(6) {
        0 => (0.0, 1.0),
        1 => (-1.0, 0.0),
        _ => direction.sin_cos(),
    };
    let twist = if random.percent(40) { random.between(0.0, 3.0) } else { 0.0 };
    let size_n = random.decades(10.0, 1e5);
    let is_even = random.percent(30);
    (0..count)
        .map(|place| {
            let turn = twist * (place as f64 / count as f64 - 0.5);
            let is_pulled = random.percent(80);
            let pull = if is_even { 1.0 } else { random.between(0.05, 1.0) };
            AnchorForce {
                tension_n: if is_pulled { size_n * pull } else { 0.0 },
                shear_x_n: size_n * (cos - turn * sin),
                shear_y_n: size_n * (sin + turn * cos),
            }
        })
        .collect()
}
