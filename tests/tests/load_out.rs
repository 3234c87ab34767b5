//! Load-out: masses, centres of gravity and inertia against other ways to the same number, and the states.

use serde_json::{Value, json};
use steadfoot::calc::formula::{Quantity, Symbols, evaluate};
use steadfoot::calc::{Shape, Sheet, System};
use steadfoot::load_out::{Aboard, Load, LoadState, TEXTS, load, loads};
use steadfoot::project::{self, Project};
use steadfoot_tests::random::Random;

fn read(file: &Value) -> Project {
    project::read(&file.to_string(), System::Si).unwrap_or_else(|faults| panic!("{faults:#?}"))
}

fn file(contents: Value, states: Value) -> Value {
    json!({ "format": "steadfoot 1", "part_filled": true,
        "cabinet": { "width_mm": 800, "depth_mm": 1200, "height_mm": 2000,
            "frame": { "mass_kg": 200, "centre_mm": [10, -20, 900] } },
        "contents": contents, "states": states })
}

/// Three trays: 100 kg at 300..500, 300 kg at 600..1000, 60 kg at 1500..1600 mm.
fn three_trays() -> Value {
    json!([
        { "name": "top", "mass_kg": 60, "bottom_mm": 1500, "size_mm": [700, 1000, 100], "offset_mm": [-40, 30] },
        { "name": "low", "mass_kg": 100, "bottom_mm": 300, "size_mm": [700, 1100, 200] },
        { "name": "middle", "mass_kg": 300, "bottom_mm": 600, "size_mm": [600, 900, 400], "offset_mm": [20, 50],
          "drawn_out_mm": 40, "travel_mm": 500 },
    ])
}

fn by_name(project: &Project) -> impl Fn(&str) -> Load + use<> {
    let loads = loads(&project.cabinet, &project.contents, &project.all_states());
    move |name| loads.iter().find(|load| load.name == name).unwrap_or_else(|| panic!("no state {name}")).clone()
}

fn near(a: f64, b: f64, tolerance: f64) -> bool {
    (a - b).abs() <= tolerance * a.abs().max(b.abs()).max(1.0)
}

#[test]
fn states_are_full_empty_the_part_filled_ones_and_the_users_own() {
    let project = read(&file(three_trays(), json!([{ "name": "service", "without": ["low"] }])));
    let states = project.all_states();
    let told: Vec<(&str, Vec<usize>)> = states
        .iter()
        .map(|state| (state.name.as_str(), state.aboard.iter().map(|one| one.content).collect()))
        .collect();
    assert_eq!(
        told,
        [
            ("full", vec![0, 1, 2]),
            ("empty", vec![]),
            ("lowest 1", vec![1]),
            ("lowest 2", vec![1, 2]),
            ("highest 1", vec![0]),
            ("highest 2", vec![0, 2]),
            ("service", vec![0, 2]),
        ]
    );
}

#[test]
fn part_filled_states_exist_only_where_they_are_asked_for_and_differ_from_full() {
    let mut not_asked = file(three_trays(), json!([]));
    not_asked["part_filled"] = json!(false);
    assert_eq!(read(&not_asked).all_states().len(), 2);
    let one = json!([{ "name": "only", "mass_kg": 5, "bottom_mm": 0, "size_mm": [1, 1, 1] }]);
    assert_eq!(read(&file(one, json!([]))).all_states().len(), 2);
    assert_eq!(read(&file(json!([]), json!([]))).all_states().len(), 2);
}

#[test]
fn contents_on_one_height_are_taken_in_the_order_of_the_file() {
    let shelf = |name: &str| json!({ "name": name, "mass_kg": 5, "bottom_mm": 100, "size_mm": [1, 1, 1] });
    let project = read(&file(json!([shelf("a"), shelf("b"), shelf("c")]), json!([])));
    let of = |name: &str| -> Vec<usize> {
        let state = project.all_states().into_iter().find(|state| state.name == name).expect("the state is there");
        state.aboard.iter().map(|one| one.content).collect()
    };
    assert_eq!(of("lowest 2"), [0, 1]);
    assert_eq!(of("highest 2"), [1, 2]);
    assert_eq!(of("highest 1"), [2]);
}

/// Worked by hand: m = 660, m x = 200(10) + 60(-40) + 300(20) = 5600, m y = 200(-20) + 60(30) + 300(50 - 40) = 800,
/// m z = 200(900) + 60(1550) + 100(400) + 300(800) = 553 000.
#[test]
fn the_full_cabinet_weighs_and_balances_as_worked_by_hand() {
    let full = by_name(&read(&file(three_trays(), json!([]))))("full");
    assert_eq!((full.mass_kg, full.aboard_kg), (660.0, 460.0));
    let expected = [5600.0 / 660.0, 800.0 / 660.0, 553_000.0 / 660.0];
    for (found, expected) in full.centre_mm.iter().zip(expected) {
        assert!(near(*found, expected, 1e-14), "{found} is not {expected}");
    }
}

/// A uniform box a x b x c has m (b^2 + c^2) / 12 about its axis along a: 200 (1200^2 + 2000^2) / 12 and so on.
#[test]
fn the_empty_cabinet_is_its_frame() {
    let empty = by_name(&read(&file(three_trays(), json!([]))))("empty");
    assert_eq!((empty.mass_kg, empty.aboard_kg, empty.centre_mm), (200.0, 0.0, [10.0, -20.0, 900.0]));
    let expected = [5.44e6 / 12.0 * 200.0, 4.64e6 / 12.0 * 200.0, 2.08e6 / 12.0 * 200.0];
    for (found, expected) in empty.inertia_kgmm2.iter().zip(expected) {
        assert!(near(*found, expected, 1e-14), "{found} is not {expected}");
    }
}

#[test]
fn a_drawer_moves_the_centre_of_gravity_to_the_front_by_its_share_of_the_mass() {
    let states = json!([{ "name": "in", "drawn_out_mm": { "middle": 0 } }, { "name": "out", "drawn_out_mm": { "middle": 500 } }]);
    let of = by_name(&read(&file(three_trays(), states)));
    let (inside, out) = (of("in"), of("out"));
    assert!(near(inside.centre_mm[1] - out.centre_mm[1], 500.0 * 300.0 / 660.0, 1e-12));
    assert_eq!((inside.centre_mm[0], inside.centre_mm[2]), (out.centre_mm[0], out.centre_mm[2]));
    // What the content itself says holds where a state says nothing.
    assert!(near(inside.centre_mm[1] - of("full").centre_mm[1], 40.0 * 300.0 / 660.0, 1e-12));
}

#[test]
fn inertia_equals_the_sum_over_a_fine_grid_of_points() {
    let project = read(&file(three_trays(), json!([])));
    let full = by_name(&project)("full");
    const CUTS: usize = 40;
    let mut boxes = vec![(200.0, [800.0, 1200.0, 2000.0], [10.0, -20.0, 900.0])];
    boxes.push((60.0, [700.0, 1000.0, 100.0], [-40.0, 30.0, 1550.0]));
    boxes.push((100.0, [700.0, 1100.0, 200.0], [0.0, 0.0, 400.0]));
    boxes.push((300.0, [600.0, 900.0, 400.0], [20.0, 10.0, 800.0]));
    let mut sums = [0.0; 3];
    for (mass, size, centre) in boxes {
        let piece = mass / (CUTS * CUTS * CUTS) as f64;
        let place = |axis: usize, cut: usize| {
            let from: [f64; 3] = [centre[0], centre[1], centre[2]];
            from[axis] + size[axis] * ((cut as f64 + 0.5) / CUTS as f64 - 0.5) - full.centre_mm[axis]
        };
        for i in 0..CUTS {
            for j in 0..CUTS {
                for k in 0..CUTS {
                    let (x, y, z) = (place(0, i), place(1, j), place(2, k));
                    sums[0] += piece * (y * y + z * z);
                    sums[1] += piece * (x * x + z * z);
                    sums[2] += piece * (x * x + y * y);
                }
            }
        }
    }
    for (found, sum) in full.inertia_kgmm2.iter().zip(sums) {
        // Cutting a box in n pieces a side loses 1 / n^2 of its own inertia.
        assert!(near(*found, sum, 1.0 / (CUTS * CUTS) as f64), "{found} is not {sum}");
        assert!(*found > sum, "pieces without inertia of their own cannot have more");
    }
}

fn random_contents(random: &mut Random, count: usize) -> Value {
    let one = |place: usize, random: &mut Random| {
        json!({ "name": format!("c{place}"), "mass_kg": random.between(0.0, 300.0), "bottom_mm": random.between(0.0, 1800.0),
            "size_mm": [random.between(0.0, 800.0), random.between(0.0, 1200.0), random.between(0.0, 400.0)],
            "offset_mm": [random.between(-300.0, 300.0), random.between(-300.0, 300.0)], "drawn_out_mm": random.between(0.0, 600.0) })
    };
    Value::Array((0..count).map(|place| one(place, random)).collect())
}

#[test]
fn a_box_cut_in_two_halves_is_the_same_load() {
    let mut random = Random::new(31);
    for _ in 0..200 {
        let count = 1 + random.below(8);
        let contents = random_contents(&mut random, count);
        let whole = by_name(&read(&file(contents.clone(), json!([]))))("full");
        let mut cut = contents.as_array().expect("a list").clone();
        let mut upper = cut[0].clone();
        let number = |value: &Value| value.as_f64().expect("a number");
        let (mass, height) = (number(&cut[0]["mass_kg"]), number(&cut[0]["size_mm"][2]));
        cut[0]["mass_kg"] = json!(mass / 2.0);
        cut[0]["size_mm"][2] = json!(height / 2.0);
        upper["name"] = json!("upper half");
        upper["mass_kg"] = json!(mass / 2.0);
        upper["size_mm"][2] = json!(height / 2.0);
        upper["bottom_mm"] = json!(number(&cut[0]["bottom_mm"]) + height / 2.0);
        cut.push(upper);
        let halves = by_name(&read(&file(Value::Array(cut), json!([]))))("full");
        assert!(near(whole.mass_kg, halves.mass_kg, 1e-13));
        for axis in 0..3 {
            assert!(near(whole.centre_mm[axis], halves.centre_mm[axis], 1e-11));
            assert!(near(whole.inertia_kgmm2[axis], halves.inertia_kgmm2[axis], 1e-12));
        }
    }
}

#[test]
fn whatever_is_aboard_the_load_is_that_of_the_frame_and_its_contents() {
    let mut random = Random::new(32);
    let project = read(&file(random_contents(&mut random, 10), json!([])));
    let of = |subset: usize| {
        let aboard = project.contents.iter().enumerate().filter(|(place, _)| subset >> place & 1 == 1);
        let aboard = aboard.map(|(content, one)| Aboard { content, drawn_out_mm: one.drawn_out_mm });
        LoadState { name: format!("subset {subset}"), aboard: aboard.collect() }
    };
    let states: Vec<LoadState> = (0..1 << project.contents.len()).map(of).collect();
    assert_eq!(states.len(), 1024);
    for (state, load) in states.iter().zip(loads(&project.cabinet, &project.contents, &states)) {
        let mut mass = project.cabinet.frame.mass_kg;
        let mut moment = project.cabinet.frame.centre_mm.map(|at| at * mass);
        for one in &state.aboard {
            let content = &project.contents[one.content];
            mass += content.mass_kg;
            for (axis, at) in content.centre_mm(one.drawn_out_mm).into_iter().enumerate() {
                moment[axis] += at * content.mass_kg;
            }
        }
        assert!(near(load.mass_kg, mass, 1e-13));
        for (axis, moment) in moment.into_iter().enumerate() {
            assert!(near(load.centre_mm[axis], moment / mass, 1e-12));
        }
    }
}

/// The numbers of one section by their symbols.
struct Recorded<'s>(&'s Sheet);

impl Symbols for Recorded<'_> {
    fn values(&self, name: &str) -> Vec<Quantity> {
        let rows = self.0.sections[0].steps.iter().map(|step| (step.value, &TEXTS.rows[step.id.row()]));
        rows.filter(|(_, row)| row.symbol == name)
            .map(|(value, row)| Quantity { value, dimension: row.kind.dimension() })
            .collect()
    }
}

#[test]
fn every_formula_of_the_working_gives_the_recorded_number() {
    let mut random = Random::new(33);
    for run in 0..300 {
        let count = run % 7;
        let project = read(&file(random_contents(&mut random, count), json!([])));
        for state in project.all_states() {
            check_working(&project, &state);
        }
    }
}

fn check_working(project: &Project, state: &LoadState) {
    let mut sheet = Sheet::told();
    let told = load(&project.cabinet, &project.contents, state, &mut sheet);
    let quiet = load(&project.cabinet, &project.contents, state, &mut Sheet::quiet());
    assert_eq!(told, quiet);
    let mut formulas = 0;
    for step in &sheet.sections[0].steps {
        let row = &TEXTS.rows[step.id.row()];
        if let Shape::Formula(text) = row.shape {
            let found = evaluate(text, &Recorded(&sheet)).unwrap_or_else(|error| panic!("{text}: {}", error.0));
            assert!(
                (found.value - step.value).abs() <= 1e-12 * step.value.abs(),
                "{text}: {} is not {}",
                found.value,
                step.value
            );
            assert_eq!(found.dimension, row.kind.dimension(), "{text}");
            formulas += 1;
        }
    }
    assert_eq!(formulas, if state.aboard.is_empty() { 7 } else { 8 });
    assert_eq!(sheet.sections[0].steps.last().map(|step| step.value), Some(told.inertia_kgmm2[2]));
}
