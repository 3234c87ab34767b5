//! Holes where they were drilled: everything is checked twice, and the second round counts.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::{Shape, Status, System};
use steadfoot::project::{self, Project, as_built, as_planned, assess, working};
use steadfoot::report::outcome::{CheckTold, Report, Verdict};
use steadfoot::report::text_tables::text;
use steadfoot_tests::proof::Proof;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn measured(value: &mut Value, anchor: usize, off: [f64; 2]) {
    let at = value["cabinet"]["anchors"][anchor]["at_mm"].clone();
    let hole = [0, 1].map(|axis| at[axis].as_f64().expect("a number") + off[axis]);
    value["cabinet"]["anchors"][anchor]["as_built_mm"] = json!(hole);
}

fn check_of<'r>(report: &'r Report, id: &str) -> Option<&'r CheckTold> {
    report.checks.iter().find(|check| check.id == id)
}

#[test]
fn holes_that_were_drilled_on_their_marks_give_the_same_bits() {
    for file in ["02-full.json", "07-slab-edge.json", "11-inch-bolts.json"] {
        let mut value = demo(file);
        let planned = assess(&read(&value));
        assert_eq!(check_of(&planned, "anchor.as-built"), None, "nobody measured anything");
        for anchor in 0..4 {
            measured(&mut value, anchor, [0.0, 0.0]);
        }
        let project = read(&value);
        let told = assess(&project);
        let second = check_of(&told, "anchor.as-built").expect("it was measured");
        let governing = planned.governs.map(|place| &planned.checks[place]).expect("something governs");
        assert_eq!(second.utilisation.map(f64::to_bits), governing.utilisation.map(f64::to_bits), "{file}");
        assert_eq!(told.verdict, planned.verdict);
        let built = assess(&as_built(&project).expect("it was measured"));
        assert_eq!(built.checks, planned.checks, "{file}");
        let mut others = told.checks.clone();
        others.retain(|check| check.id != "anchor.as-built");
        assert_eq!(others, planned.checks, "{file}: the first round does not know of the second");
    }
}

#[test]
fn a_hole_towards_the_edge_fails_although_its_mark_holds() {
    let mut value = demo("07-slab-edge.json");
    let planned = assess(&read(&value));
    assert_eq!(planned.verdict, Verdict::Holds);
    measured(&mut value, 0, [0.0, -12.0]);
    let project = read(&value);
    let told = assess(&project);
    let second = check_of(&told, "anchor.as-built").expect("it was measured");
    assert_eq!((second.status, told.verdict), (Status::Fails, Verdict::DoesNotHold));
    assert_eq!(assess(&as_planned(&project)).verdict, Verdict::Holds, "what is planned still holds");
    assert_ne!(told.fingerprint, planned.fingerprint, "a measured hole is input");
    // The working says how far off the hole is, and where the number comes from.
    let sections = working(&project, second.at.as_ref().expect("it opens"));
    let section = sections.iter().find(|section| section.check.is_some()).expect("its own section");
    let row = |step: &steadfoot::calc::Step| text(step.id).expect("every step has its row");
    let named = |symbol: &str| section.steps.iter().find(|step| row(step).symbol == symbol).expect("the step");
    assert_eq!(named("Delta").value, 12.0);
    assert_eq!(row(named("Delta")).shape, Shape::Geometry);
    assert_eq!(Some(named("u").value), second.utilisation);
    let mut proof = Proof::of(&steadfoot::study::tables());
    proof.take(&sections);
    assert_eq!(proof.close().wrong, Vec::<String>::new());
}

#[test]
fn a_hole_that_brings_the_rule_to_its_end_is_not_covered() {
    // In another seat of the same slab nothing is amplified: the second round is as uncovered as the first.
    let mut value = demo("10-cannot-be-said.json");
    measured(&mut value, 1, [2.0, 1.0]);
    let told = assess(&read(&value));
    let second = check_of(&told, "anchor.as-built").expect("it was measured");
    assert_eq!((second.status, told.verdict), (Status::NotCovered, Verdict::CannotBeSaid));
    assert!(second.reason.is_some());
}

#[test]
fn holes_that_nobody_measured_stay_where_they_were_planned() {
    let mut value = demo("02-full.json");
    measured(&mut value, 2, [7.0, -3.0]);
    let project = read(&value);
    let built = as_built(&project).expect("one was measured");
    for (place, (anchor, planned)) in built.cabinet.anchors.iter().zip(&project.cabinet.anchors).enumerate() {
        let off = if place == 2 { [7.0, -3.0] } else { [0.0, 0.0] };
        assert_eq!([anchor.at.x_mm - planned.at.x_mm, anchor.at.y_mm - planned.at.y_mm], off);
        assert!(anchor.as_built.is_none());
    }
    assert!(as_built(&as_planned(&project)).is_none());
}
