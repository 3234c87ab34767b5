//! The zone statement: its rows are single limits, zones are whole, and nothing that is not covered looks like a load.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::{Status, System};
use steadfoot::explore::{Ending, Found, LimitOf, Standing, load_limit};
use steadfoot::input::field::FieldShape;
use steadfoot::load_case::Format;
use steadfoot::project::{self, Project, Site, assess};
use steadfoot::report::outcome::Verdict;
use steadfoot::report::table::{Cell, Table};
use steadfoot::rules::demand::{DEMAND_RULES, Strength};
use steadfoot::study::work::{Work, begin_of};
use steadfoot::study::zone_statement::{Statement, rows};
use steadfoot::study::{Shown, study, text};

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn table<'s>(shown: &'s Shown, name: &str) -> &'s Table {
    let is = |table: &&Table| text(table.name).is_some_and(|row| row.what.starts_with(name));
    shown.tables.iter().find(is).unwrap_or_else(|| panic!("no table {name}"))
}

fn words(cell: &Cell) -> String {
    match cell {
        Cell::Name(id) => text(*id).expect("every row has its text").what.to_string(),
        Cell::Text(text) => text.clone(),
        other => format!("{other:?}"),
    }
}

#[test]
fn every_zone_of_every_rule_with_zones_is_one_row_and_every_other_rule_has_four_or_five() {
    let project = read(&demo("02-full.json"));
    let (rows, left_out) = rows(&project);
    assert_eq!(left_out.iter().map(|one| one.rule.id).collect::<Vec<_>>(), ["direct"], "it has no place of its own");
    for rule in DEMAND_RULES.iter().filter(|rule| rule.id != "direct") {
        let of_rule: Vec<_> = rows.iter().filter(|row| row.filled.rule.id == rule.id).collect();
        let first = of_rule.first().unwrap_or_else(|| panic!("{} has no row", rule.id));
        match (rule.strength)(&first.filled.values) {
            Strength::Zones(field) => {
                let FieldShape::Choice(words) = rule.fields[field].shape else { panic!("zones are words") };
                assert_eq!(of_rule.len(), words.len(), "{}", rule.id);
            }
            Strength::Field(field) => {
                let values: Vec<f64> = of_rule.iter().filter_map(|row| row.filled.values.number(field)).collect();
                assert!(values.is_sorted() && (4..=5).contains(&values.len()), "{}: {values:?}", rule.id);
            }
        }
    }
    let present: Vec<_> = rows.iter().filter(|row| row.is_present).collect();
    assert_eq!(present.len(), 1);
    let own = project.site.as_ref().expect("it is shaken");
    assert_eq!(present[0].filled.values, own.values, "the row of the project's own shaking is the project");
}

#[test]
fn a_row_is_the_single_limit_of_the_project_with_that_rule_to_the_last_bit() {
    let project = read(&demo("10-cannot-be-said.json"));
    let covered = read(&demo("02-full.json"));
    for (project, wanted) in [(&covered, ["asce-7-16", "ubc-1997"]), (&project, ["ubc-1997", "en-1998-1"])] {
        for rule in wanted {
            let (rows, _) = rows(project);
            let own = rows.iter().position(|row| row.is_present && row.filled.rule.id == rule);
            let last = rows.iter().rposition(|row| row.filled.rule.id == rule);
            let mut row = rows.into_iter().nth(own.or(last).expect(rule)).expect(rule);
            row.ask_present(project);
            row.search_limits(project);
            let site = Some(Site { rule: row.filled.rule, values: row.filled.values.clone() });
            let alone = Project { site, ..project.clone() };
            let verdict = match row.present.expect("it was asked").standing {
                Standing::Holds => Verdict::Holds,
                Standing::Fails => Verdict::DoesNotHold,
                _ => Verdict::CannotBeSaid,
            };
            assert_eq!(verdict, assess(&alone).verdict, "{rule}");
            let [bolted, free] = row.limits.clone().expect("they were searched");
            assert_eq!(free, load_limit(&alone, LimitOf::Free), "{rule}");
            if !row.is_other_format(project) {
                assert_eq!(bolted, load_limit(&alone, LimitOf::Bolted), "{rule}");
            } else {
                let limit = load_limit(&alone, LimitOf::Bolted).expect("it can be searched");
                assert!(bolted.is_none() && limit.ending == Ending::CannotBeSaid, "{rule} is left out for a reason");
            }
        }
    }
}

#[test]
fn rules_of_another_format_are_not_covered_bolted_and_told_free() {
    let project = read(&demo("02-full.json"));
    let shown = (study("zone-statement").expect("it is registered").make)(&project, "").expect("it is shown");
    let statement = table(&shown, "where it holds");
    let (rows, _) = rows(&project);
    assert_eq!(statement.rows.len(), rows.len());
    let (mut others, mut intervals) = (0, 0);
    let aboard_kg: f64 = project.contents.iter().map(|content| content.mass_kg).sum();
    for (line, row) in statement.rows.iter().zip(&rows) {
        let format = (row.filled.rule.format)(&row.filled.values);
        assert_eq!(line.is_marked, row.is_present);
        if format != Format::Strength {
            others += 1;
            assert_eq!(line.cells[2], Cell::Status(Status::NotCovered), "{}", row.filled.rule.id);
            assert_eq!((words(&line.cells[4]).as_str(), &line.cells[5]), ("not covered", &Cell::Nothing));
            assert_eq!(line.cells[6], Cell::Nothing, "nothing governs what is not covered");
            let name = words(&line.cells[0]);
            let why = table(&shown, "rules that say nothing").rows.iter().find(|line| words(&line.cells[0]) == name);
            let why = words(&why.unwrap_or_else(|| panic!("nothing says why {name} is not covered")).cells[1]);
            assert!(why.len() > 20, "{why}");
        }
        // An interval holds at its lower end, and the share is of that end.
        if let Cell::Range([low, high]) = line.cells[4] {
            intervals += 1;
            assert!(low < high && line.cells[5] == Cell::Number(low / aboard_kg), "{}", row.filled.rule.id);
            assert_eq!(line.cells[2] == Cell::Status(Status::Holds), low >= aboard_kg, "{}", row.filled.rule.id);
        }
        assert_ne!(words(&line.cells[7]), "not tried");
    }
    assert!(intervals > 10, "{intervals}");
    assert!(others > 10, "{others}");
    let notes: Vec<&str> = shown.notes.iter().map(|note| text(*note).expect("a text").what).collect();
    assert!(
        notes.iter().any(|note| note.contains("no permit")) && !notes.iter().any(|note| note.contains("not finished"))
    );
    let facts = table(&shown, "the frame, its bolts").rows.iter().map(|line| (words(&line.cells[0]), &line.cells[1]));
    let facts: Vec<(String, &Cell)> = facts.collect();
    let file = demo("02-full.json");
    for (name, value) in [("bolt", &file["anchorage"]["bolt"]), ("steel", &file["anchorage"]["steel"])] {
        assert!(
            facts.iter().any(|(known, cell)| known == name && **cell == Cell::Text(value.as_str().unwrap().into()))
        );
    }
    let embedment = file["anchorage"]["embedment_mm"].as_f64().expect("a number");
    let is_embedment = |cell: &Cell| matches!(cell, Cell::Measured { ends, .. } if *ends == [embedment; 2]);
    assert!(facts.iter().any(|(known, cell)| known == "embedment" && is_embedment(cell)));
}

#[test]
fn a_statement_is_made_in_portions_and_tells_what_it_has_when_it_is_stopped() {
    let project = read(&demo("01-empty-frame.json"));
    let mut work = begin_of("zone-statement").expect("it is done in portions")(&project, "").expect("it begins");
    let (_, of) = work.progress();
    assert!(work.advance());
    assert_eq!(work.progress(), (1, of));
    let shown = work.shown();
    let statement = table(&shown, "where it holds");
    assert_ne!(words(&statement.rows[0].cells[2]), "not tried");
    assert_eq!(words(&statement.rows[1].cells[2]), "not tried");
    assert!(shown.notes.iter().any(|note| text(*note).expect("a text").what.contains("not finished")));
    // An empty frame has nothing to scale, and says so where it was searched.
    let mut statement = Statement::new(&project).expect("there are rules");
    statement.rows[0].ask_present(&project);
    statement.rows[0].search_limits(&project);
    let shown = statement.shown();
    assert_eq!(words(&table(&shown, "where it holds").rows[0].cells[4]), "nothing aboard to scale");
}

#[test]
fn a_rule_that_asks_for_the_kind_of_anchors_is_asked_with_one_that_it_reaches_with() {
    // Seven diameters deep: no deep anchors to UBC 1997, which says which kind would do.
    let mut file = demo("02-full.json");
    file["anchorage"]["overstrength"] = json!(2);
    let project = read(&file);
    let (rows, _) = rows(&project);
    let mut row = rows.into_iter().find(|row| row.filled.rule.id == "ubc-1997").expect("it has rows");
    assert!(row.filled.text(|_| true).contains("anchor type shallow"), "{}", row.filled.text(|_| true));
    row.ask_present(&project);
    assert_ne!(row.present.expect("it was asked").standing, Standing::NotCovered);
}

#[test]
fn a_zone_that_the_rule_refuses_with_the_other_inputs_is_not_assessed() {
    let mut file = demo("02-full.json");
    file["site"] = json!({ "rule": "ubc-1997", "zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": 1,
        "component": "cabinet", "anchor_type": "deep", "attachment_height_m": 0, "roof_height_m": 20 });
    let project = read(&file);
    let (rows, _) = rows(&project);
    for mut row in rows.into_iter().filter(|row| row.filled.rule.id == "ubc-1997") {
        row.ask_present(&project);
        let mut faults = Vec::new();
        (row.filled.rule.faults)(&row.filled.values, &mut faults);
        let found = row.present.expect("it was asked");
        assert_eq!(found.standing == Standing::NotBuilt, !faults.is_empty());
        if faults.is_empty() {
            assert_eq!(
                found.packed().map(f64::to_bits),
                Found::assess(&row.project(&project), None).packed().map(f64::to_bits)
            );
        }
    }
}
