//! Random anchorages, and a plain one to change: what the tests of anchor rules begin with.

use steadfoot::calc::{CheckId, Outcome};
use steadfoot::geometry::{Point, Rectangle, Size};
use steadfoot::input::{Value, Values};
use steadfoot::rules::aci_318_19 as aci;
use steadfoot::rules::anchor::{
    ANCHOR_RULES, AnchorForce, AnchorPlace, AnchorRule, AnchorSlab, Cracking, Finding, anchor_rule,
};

use crate::random::Random;
use crate::random_values::{drawn, valid_values};
use crate::run_anchors::Case;

/// The SI edition.
pub const SI: &str = "aci-318-19-si";
/// The inch-pound edition.
pub const US: &str = "aci-318-19";

/// All editions of ACI 318.
pub fn aci_rules() -> impl Iterator<Item = &'static AnchorRule> {
    ANCHOR_RULES.iter().copied().filter(|rule| rule.id.starts_with("aci-"))
}

/// Valid values of all kinds of anchors, mostly with what their evaluation report has to say.
fn random_values(random: &mut Random, rule: &AnchorRule) -> Values {
    loop {
        let mut values = valid_values(random, rule.fields, rule.faults);
        let is_headed = values.choice(aci::ANCHOR_KIND) == Some(0);
        if !is_headed && random.percent(30) {
            continue;
        }
        for &place in rule.report_fields {
            if values.0[place] == Value::Unknown && random.percent(80) {
                values.0[place] = drawn(random, &rule.fields[place].shape);
            }
        }
        if random.percent(80) {
            values.0[aci::TENSION_BARS] = Value::Unknown;
            values.0[aci::SHEAR_BARS] = Value::Unknown;
        }
        let mut found = Vec::new();
        (rule.faults)(&values, &mut found);
        if found.is_empty() {
            return values;
        }
    }
}

/// A layout of one to eight anchors in a slab, loaded at random, mostly within the rule's reach.
pub fn random_case(random: &mut Random, rule: &'static AnchorRule) -> Case {
    let mut values = random_values(random, rule);
    let embedment_mm = random.decades(40.0, 700.0);
    if random.percent(95) {
        values.set_number(aci::EMBEDMENT, embedment_mm);
    }
    let embedment_mm = values.given(aci::EMBEDMENT);
    let pitch_mm = embedment_mm * random.decades(0.3, 6.0);
    let columns = 1 + random.below(4);
    let rows = 1 + random.below(2);
    let is_uneven = random.percent(15);
    let mut anchors = Vec::new();
    for column in 0..columns {
        for row in 0..rows {
            let mut at = Point::new(column as f64 * pitch_mm, row as f64 * pitch_mm * 1.3);
            if is_uneven {
                at.x_mm += random.between(-0.2, 0.2) * pitch_mm;
                at.y_mm += random.between(-0.2, 0.2) * pitch_mm;
            }
            let mut own = values.clone();
            if random.percent(2) {
                own.set_number(aci::EMBEDMENT, embedment_mm * 0.8);
            }
            anchors.push(AnchorPlace { at, values: own });
        }
    }
    let all = Rectangle {
        left_mm: anchors.iter().map(|anchor| anchor.at.x_mm).fold(f64::INFINITY, f64::min),
        right_mm: anchors.iter().map(|anchor| anchor.at.x_mm).fold(f64::NEG_INFINITY, f64::max),
        front_mm: anchors.iter().map(|anchor| anchor.at.y_mm).fold(f64::INFINITY, f64::min),
        rear_mm: anchors.iter().map(|anchor| anchor.at.y_mm).fold(f64::NEG_INFINITY, f64::max),
    };
    let mut beyond = || if random.percent(45) { f64::INFINITY } else { embedment_mm * random.decades(0.2, 8.0) };
    let outline = Rectangle {
        left_mm: all.left_mm - beyond(),
        right_mm: all.right_mm + beyond(),
        front_mm: all.front_mm - beyond(),
        rear_mm: all.rear_mm + beyond(),
    };
    let mut openings = Vec::new();
    if random.percent(20) {
        let half = Size::new(random.decades(0.1, 3.0) * embedment_mm, random.decades(0.1, 3.0) * embedment_mm);
        let reach = |from: f64, to: f64, random: &mut Random| random.between(from - 300.0, to + 300.0);
        let at = Point::new(reach(all.left_mm, all.right_mm, random), reach(all.front_mm, all.rear_mm, random));
        let opening = Rectangle::around(at, half);
        if anchors.iter().all(|anchor| !opening.contains(anchor.at)) {
            openings.push(opening);
        }
    }
    let slab = AnchorSlab {
        strength_mpa: if random.percent(3) { random.between(5.0, 20.0) } else { random.between(17.5, 90.0) },
        thickness_mm: embedment_mm * if random.percent(2) { 0.9 } else { random.decades(1.05, 6.0) },
        cracking: if random.percent(50) { Cracking::Cracked } else { Cracking::Uncracked },
        outline,
        boundary: Rectangle::EVERYWHERE,
        openings,
    };
    let mut own = anchors.len();
    if random.percent(15) && own > 1 {
        own = own.div_ceil(2);
    }
    let forces = random_forces(random, anchors.len());
    Case { rule, values, own, anchors, slab, forces }
}

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

/// Defaults of the rule with a bolt M16 8.8 embedded 120 mm, in seismic design category C to F.
pub fn plain_values(rule: &AnchorRule) -> Values {
    let json = serde_json::json!({ "bolt": "M16", "steel": "iso-8.8", "embedment_mm": 120.0 });
    crate::values::field_values(rule.fields, &json).unwrap()
}

/// Two of them 150 mm apart far from edges, pulled and sheared.
pub fn pair_case(rule: &str) -> Case {
    let rule = anchor_rule(rule).unwrap();
    let values = plain_values(rule);
    let anchor = |x_mm| AnchorPlace { at: Point::new(x_mm, 0.0), values: values.clone() };
    let slab = AnchorSlab {
        strength_mpa: 30.0,
        thickness_mm: 300.0,
        cracking: Cracking::Cracked,
        outline: Rectangle::EVERYWHERE,
        boundary: Rectangle::EVERYWHERE,
        openings: Vec::new(),
    };
    let force = AnchorForce { tension_n: 8000.0, shear_x_n: 0.0, shear_y_n: 3000.0 };
    Case { rule, anchors: vec![anchor(0.0), anchor(150.0)], values, slab, forces: vec![force; 2], own: 2 }
}

pub fn set(values: &mut Values, field: usize, word: &str) {
    let steadfoot::input::FieldShape::Choice(words) = aci::FIELDS[field].shape else { panic!("no choice") };
    values.0[field] = Value::Choice(words.iter().position(|known| *known == word).unwrap());
}

impl Utilised for Vec<Finding> {}

/// The largest utilisation of a check.
pub trait Utilised: std::borrow::Borrow<Vec<Finding>> {
    fn largest(&self, check: CheckId) -> f64 {
        let of = |finding: &&Finding| finding.check == check;
        self.borrow().iter().filter(of).fold(f64::NEG_INFINITY, |most, finding| match finding.outcome {
            Outcome::Compared { utilisation, .. } => most.max(utilisation),
            _ => most,
        })
    }
}

/// The checks whose utilisation is proportional to the forces.
pub fn strengths() -> impl Iterator<Item = CheckId> {
    CheckId::ALL.iter().copied().filter(|check| {
        let name = check.id();
        name.starts_with("anchor.tension") || name.starts_with("anchor.shear")
    })
}

pub fn random_case_like(case: &Case) -> Case {
    Case {
        rule: case.rule,
        values: case.values.clone(),
        anchors: case.anchors.clone(),
        slab: case.slab.clone(),
        own: case.own,
        forces: case.forces.clone(),
    }
}
