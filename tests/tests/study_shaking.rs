//! Rules side by side, the floor's share, what a table must show and a rig must carry: nothing hidden, nothing mixed, and the
//! same numbers as the rules themselves.

use std::path::PathBuf;

use serde_json::{Value as Json, json};
use steadfoot::calc::{Sheet, Status, StepId, System};
use steadfoot::input::Value;
use steadfoot::load_case::Format;
use steadfoot::project::{self, Project, Site};
use steadfoot::report::table::{Cell, Line, Table};
use steadfoot::rules::demand::{DEMAND_RULES, demand_rule};
use steadfoot::shake_table::{Axis, Basis, spectrum};
use steadfoot::study::side_by_side::{compared, fill, sample, storeys_of};
use steadfoot::study::{Picture, Shown, study, tables, text};
use steadfoot_tests::proof::Proof;
use steadfoot_tests::random::Random;
use steadfoot_tests::random_project::random_project;
use steadfoot_tests::random_values::valid_values;

fn demo(file: &str) -> Json {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Json) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn show(project: &Project, id: &str) -> Result<Shown, StepId> {
    (study(id).expect(id).make)(project, "")
}

fn words(id: StepId) -> &'static str {
    text(id).expect("a row has a text").what
}

fn table<'s>(shown: &'s Shown, name: &str) -> &'s Table {
    shown.tables.iter().find(|table| words(table.name).starts_with(name)).unwrap_or_else(|| panic!("no table {name}"))
}

fn cell_text(cell: &Cell) -> String {
    match cell {
        Cell::Name(id) => words(*id).to_string(),
        Cell::Text(text) => text.clone(),
        other => format!("{other:?}"),
    }
}

fn column(table: &Table, name: &str) -> usize {
    table.columns.iter().position(|column| words(column.name) == name).unwrap_or_else(|| panic!("no column {name}"))
}

fn number(line: &Line, place: usize) -> f64 {
    match line.cells[place] {
        Cell::Number(number) => number,
        ref other => panic!("{other:?} is no number"),
    }
}

#[test]
fn every_rule_has_a_sample_that_fills_it_and_none_is_left_over() {
    let is_own = |id: &str| id == "direct";
    for rule in DEMAND_RULES {
        assert!(sample(rule.id).is_some(), "{} has no sample", rule.id);
        let filled = fill(rule, None);
        assert_eq!(filled.needed.is_empty(), !is_own(rule.id), "{}: {}", rule.id, filled.needed_text());
        assert!(filled.own.is_empty());
    }
}

#[test]
fn every_rule_stands_in_one_table_of_results_or_among_those_left_out() {
    for file in ["02-full.json", "06-upper-floor.json", "11-inch-bolts.json"] {
        let project = read(&demo(file));
        let shown = show(&project, "side-by-side").unwrap();
        let results = shown.tables.iter().filter(|table| words(table.name) != "what each rule was asked with");
        let mut names: Vec<String> =
            results.flat_map(|table| &table.rows).map(|row| cell_text(&row.cells[0])).collect();
        names.sort();
        let mut rules: Vec<String> =
            DEMAND_RULES.iter().map(|rule| words(sample(rule.id).expect(rule.id).name).to_string()).collect();
        rules.sort();
        assert_eq!(names, rules, "{file}");
        assert_eq!(table(&shown, "what each rule").rows.len(), DEMAND_RULES.len());
    }
}

#[test]
fn formats_are_never_mixed_in_a_table() {
    let project = read(&demo("06-upper-floor.json"));
    let shown = show(&project, "side-by-side").unwrap();
    for one in compared(&project) {
        let name = match one.format {
            Format::Strength => "rules of strength design",
            Format::LimitStates => "rules of limit states",
            Format::AllowableStress => "rules of allowable stress",
        };
        if let Some(Ok(demand)) = &one.demand {
            let own = words(sample(one.filled.rule.id).unwrap().name);
            let rows = &table(&shown, name).rows;
            let row = rows.iter().find(|row| cell_text(&row.cells[0]) == own);
            let row = row.unwrap_or_else(|| panic!("{own} is not among {name}"));
            assert_eq!(number(row, 1), demand.push);
            assert_eq!(row.cells[2], Cell::Name(demand.governs));
        }
    }
    let pictures: Vec<&str> = shown
        .pictures
        .iter()
        .map(|picture| match picture {
            Picture::Plot(plot) => words(plot.name),
            Picture::Figure(figure) => words(figure.name),
            Picture::Bars(bars) => words(bars.name),
        })
        .collect();
    assert_eq!(pictures.len(), 2, "allowable stress has one rule, which compares with nothing: {pictures:?}");
}

#[test]
fn the_projects_own_rule_is_marked_and_answers_as_the_whole_check_does() {
    for file in ["02-full.json", "06-upper-floor.json", "09-must-not-pass.json"] {
        let project = read(&demo(file));
        let report = project::assess(&project);
        let shown = show(&project, "side-by-side").unwrap();
        let results = table(&shown, "rules of strength design");
        let marked: Vec<&Line> = results.rows.iter().filter(|row| row.is_marked).collect();
        assert_eq!(marked.len(), 1, "{file}");
        let site = project.site.as_ref().unwrap();
        let demand = (site.rule.demand)(&site.values, 1000.0, &mut Sheet::quiet()).unwrap();
        assert_eq!(number(marked[0], 1), demand.push);
        let governs = report.governs.map(|place| &report.checks[place]);
        let utilisation = column(results, "highest utilisation of your cabinet");
        assert_eq!(number(marked[0], utilisation), governs.unwrap().utilisation.unwrap(), "{file}");
    }
}

#[test]
fn a_utilisation_is_only_told_where_everything_required_is_covered() {
    let shown = show(&read(&demo("06-upper-floor.json")), "side-by-side").unwrap();
    for results in shown.tables.iter().filter(|table| words(table.name).starts_with("rules of")) {
        let (utilisation, answer) =
            (column(results, "highest utilisation of your cabinet"), column(results, "your cabinet, bolted as it is"));
        for row in &results.rows {
            let is_covered = row.cells[answer] != Cell::Status(Status::NotCovered);
            assert_eq!(matches!(row.cells[utilisation], Cell::Number(_)), is_covered, "{}", cell_text(&row.cells[0]));
        }
    }
}

#[test]
fn what_coincides_is_the_readers_own_and_everything_else_is_listed_as_taken() {
    let mut value = demo("06-upper-floor.json");
    value["site"]["attachment_height_m"] = json!(7);
    let shown = show(&read(&value), "side-by-side").unwrap();
    let given = table(&shown, "what each rule");
    for row in &given.rows {
        let id =
            DEMAND_RULES.iter().find(|rule| words(sample(rule.id).unwrap().name) == cell_text(&row.cells[0])).unwrap();
        let (own, taken) = (cell_text(&row.cells[1]), cell_text(&row.cells[2]));
        let has = |key: &str| id.fields.iter().any(|field| field.key == key);
        assert_eq!(own.contains("attachment height 7 m"), has("attachment_height_m"), "{}: {own}", id.id);
        assert!(!taken.contains("attachment height"));
        assert_eq!(taken.contains("storey 2"), has("storey"), "{}: {taken}", id.id);
    }
}

#[test]
fn zones_of_one_rule_are_never_asked_of_another() {
    let mut value = demo("06-upper-floor.json");
    value["site"] = json!({"rule": "ubc-1997", "zone": "1", "importance_factor": 1, "component": "cabinet",
        "anchor_type": "deep", "attachment_height_m": 0});
    let project = read(&value);
    for id in ["ubc-1994", "nscp-2015", "peru-e-030"] {
        let filled = fill(demand_rule(id).unwrap(), project.site.as_ref());
        assert!(filled.taken_text().contains("zone 4"), "{id}: {}", filled.taken_text());
    }
    let gb = fill(demand_rule("gb-50011").unwrap(), project.site.as_ref());
    assert!(!gb.own_text().contains("importance factor"), "another quantity has that name in China");
}

#[test]
fn a_rule_that_needs_more_needs_what_is_not_there_and_never_less() {
    let mut random = Random::new(79);
    for rule in DEMAND_RULES {
        for _ in 0..100 {
            let site = Site { rule, values: valid_values(&mut random, rule.fields, rule.faults) };
            let number = |key| site.values.number(rule.fields.iter().position(|field| field.key == key)?);
            // Some methods do not ask for heights and take any.
            if number("attachment_height_m") > number("roof_height_m").or(Some(1e9)) {
                continue;
            }
            for other in DEMAND_RULES {
                let filled = fill(other, Some(&site));
                let is_there = |&field: &usize| filled.values.0[field] != Value::Unknown;
                assert!(
                    !filled.needed.iter().any(is_there),
                    "{} after {}: {}",
                    other.id,
                    rule.id,
                    filled.needed_text()
                );
                assert!(filled.own.iter().all(is_there), "{} after {}", other.id, rule.id);
            }
        }
    }
    let of_europe = json!({"rule": "en-1998-1", "reference_acceleration": 0.2, "building_class": "II", "spectrum": "1", "ground_type": "B",
        "component_importance": 1, "component": "electrical", "building_period_s": 0.5, "attachment_height_m": 0});
    let mut value = demo("06-upper-floor.json");
    value["site"] = of_europe;
    value["anchorage"] = Json::Null;
    let filled = fill(demand_rule("asce-7-22").unwrap(), read(&value).site.as_ref());
    assert!(filled.needed.is_empty() && !filled.own_text().contains("period"), "{}", filled.needed_text());
}

#[test]
fn storeys_are_counted_from_one_upwards_and_from_minus_one_downwards() {
    for (height_m, storey) in
        [(0.0, 1.0), (3.9, 1.0), (4.0, 2.0), (20.0, 5.0), (-0.1, -1.0), (-4.0, -1.0), (-4.1, -2.0)]
    {
        assert_eq!(storeys_of([height_m, 20.0]), [storey, 5.0], "{height_m}");
    }
}

#[test]
fn the_push_over_the_height_is_that_of_the_rule_at_that_height() {
    let project = read(&demo("06-upper-floor.json"));
    let shown = show(&project, "floor-level").unwrap();
    let mut curves = 0;
    for picture in &shown.pictures {
        let Picture::Plot(plot) = picture else { panic!("floors are plots") };
        for curve in &plot.curves {
            curves += 1;
            let heights: Vec<f64> = curve.points.iter().map(|point| point[1]).collect();
            assert!(heights[0] == 0.0 && heights.windows(2).all(|pair| pair[0] < pair[1]));
            let pushes: Vec<f64> = curve.points.iter().map(|point| point[0]).filter(|push| push.is_finite()).collect();
            // At grade ASCE 7-22 has other factors than a little above.
            assert!(pushes[1..].windows(2).all(|pair| pair[1] >= pair[0] * (1.0 - 1e-12)), "{:?} falls", curve.name);
        }
        for point in &plot.points {
            let site = project.site.as_ref().unwrap();
            let demand = (site.rule.demand)(&site.values, 1.0, &mut Sheet::quiet()).unwrap();
            assert_eq!(point.at[0], demand.push);
        }
    }
    let with_heights = DEMAND_RULES
        .iter()
        .filter(|rule| rule.fields.iter().any(|field| field.key == "attachment_height_m" || field.key == "storey"));
    assert_eq!(curves, with_heights.count());
}

/// A project with a shake table.
fn tested(table: Json) -> Project {
    let mut value = demo("02-full.json");
    value["shake_table"] = table;
    read(&value)
}

#[test]
fn tables_of_spectra_are_the_spectra_and_outside_of_them_stands_nothing() {
    let project = tested(json!({"spectrum": "telecom-4", "s_ds": 1.2, "height_ratio": 0.5, "fixture_mass_kg": 0}));
    let shown = show(&project, "required-spectra").unwrap();
    assert!(shown.notes.iter().any(|&note| words(note).contains("no force to design anchors for")));
    let basis = Basis::of(&project.shake_table.as_ref().unwrap().values);
    for (name, tests) in [("AC156:", [0, 1]), ("IEEE 693:", [3, 5]), ("telecom zones:", [8, 9])] {
        let read = table(&shown, name);
        assert!(read.rows.len() > 10);
        for row in &read.rows {
            for (place, test) in tests.into_iter().enumerate() {
                let spectrum = spectrum(test, &basis, &mut Sheet::quiet()).unwrap();
                let at = spectrum.at(Axis::Horizontal, number(row, 0), &mut Sheet::quiet()).unwrap();
                assert_eq!(number(row, place + 1), at, "{name} at {} Hz", number(row, 0));
            }
        }
    }
    let levels = table(&shown, "levels");
    let marked: Vec<String> =
        levels.rows.iter().filter(|row| row.is_marked).map(|row| cell_text(&row.cells[0])).collect();
    assert_eq!(marked, ["telecom zone 4"]);
    let why: Vec<String> = levels
        .rows
        .iter()
        .filter(|row| row.cells[6] != Cell::Nothing)
        .map(|row| format!("{}: {}", cell_text(&row.cells[0]), cell_text(&row.cells[6])))
        .collect();
    assert_eq!(why.len(), 2, "{why:?}");
}

#[test]
fn without_a_strength_ac156_says_what_it_needs_and_the_others_are_drawn() {
    let mut value = demo("02-full.json");
    value["site"] = json!(null);
    let shown = show(&read(&value), "required-spectra").unwrap();
    assert_eq!(shown.pictures.len(), 2);
    let levels = table(&shown, "levels");
    assert!(cell_text(&levels.rows[0].cells[6]).starts_with("it needs S_DS"));
}

#[test]
fn a_rig_is_told_for_every_state_and_used_by_the_one_with_the_largest_moment() {
    assert_eq!(
        words(show(&read(&demo("02-full.json")), "test-rig").unwrap_err()).split(':').next(),
        Some("no shake table is described")
    );
    let project = tested(json!({"spectrum": "ac156", "s_ds": 1, "fixture_mass_kg": 800, "fixture_height_mm": 300,
        "rig_payload_kg": 6000, "rig_moment_nmm": 1e6, "rig_acceleration": 1.21}));
    let shown = show(&project, "test-rig").unwrap();
    let needed = table(&shown, "what the rig must do");
    assert_eq!(needed.rows.len(), project.all_states().len() + 1);
    let most = needed.rows[..needed.rows.len() - 1].iter().map(|row| number(row, 2)).fold(0.0, f64::max);
    let marked = needed.rows.iter().find(|row| row.is_marked).unwrap();
    assert_eq!(number(marked, 2), most);
    let used = table(&shown, "how far the rig");
    let outcomes: Vec<String> =
        used.rows.iter().map(|row| format!("{} {:?}", cell_text(&row.cells[0]), row.cells[2])).collect();
    assert_eq!(
        outcomes,
        ["payload Status(Holds)", "overturning moment Status(Fails)", "horizontal acceleration Status(Holds)"]
    );
    assert_eq!(number(&used.rows[1], 1), most / 1e6);
    let unasked = tested(json!({"spectrum": "telecom-0", "fixture_mass_kg": 0}));
    assert_eq!(words(show(&unasked, "test-rig").unwrap_err()), "zone 0 asks for no test");
}

#[test]
fn the_working_of_these_studies_proves_itself() {
    let mut random = Random::new(77);
    let mut proof = Proof::of(&tables());
    let mut rigs = 0;
    for _ in 0..150 {
        let project = read(&serde_json::from_str(&random_project(&mut random)).unwrap());
        for id in ["shaking-ideas", "required-spectra", "test-rig"] {
            if let Ok(shown) = show(&project, id) {
                rigs += usize::from(id == "test-rig");
                proof.take(&shown.sections);
                for table in &shown.tables {
                    assert!(table.rows.iter().all(|row| row.cells.len() == table.columns.len()));
                    let numbers = table.rows.iter().flat_map(|row| &row.cells);
                    assert!(
                        numbers
                            .filter_map(|cell| if let Cell::Number(n) = cell { Some(n) } else { None })
                            .all(|n| n.is_finite())
                    );
                }
            }
        }
    }
    assert!(rigs > 10);
    let account = proof.close();
    assert!(account.wrong.is_empty(), "{}", account.wrong.join("\n"));
}

#[test]
fn comparing_rules_never_fails_whatever_the_project() {
    let mut random = Random::new(78);
    for _ in 0..25 {
        let project = read(&serde_json::from_str(&random_project(&mut random)).unwrap());
        for id in ["side-by-side", "floor-level"] {
            let shown = show(&project, id).unwrap();
            for table in &shown.tables {
                assert!(table.rows.iter().all(|row| row.cells.len() == table.columns.len()));
            }
        }
    }
}
