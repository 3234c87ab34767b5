//! Two sheets compared: what is told to differ differs, what moved is followed back to where it entered, and by itself
//! every difference does what is said of it.

use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::LazyLock;

use serde_json::{Value, json};
use steadfoot::calc::{StepId, System};
use steadfoot::explore::{Alone, Compared, compare};
use steadfoot::input::difference::{Change, Difference, differences};
use steadfoot::input::text;
use steadfoot::project::{self, Project, assess, working_told};
use steadfoot::report::outcome::At;
use steadfoot::study;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

static USES: LazyLock<BTreeMap<StepId, String>> = LazyLock::new(|| {
    let rows = study::tables().into_iter().flat_map(|table| {
        let id = |row: usize| StepId::of(table.number, row as u8);
        table.rows.iter().enumerate().map(move |(row, text)| (id(row), text.uses()))
    });
    rows.collect()
});

fn compared(before: &Value, after: &Value) -> Compared {
    compare(&read(before), &read(after), &|id| USES[&id].clone())
}

fn symbol(id: StepId) -> &'static str {
    study::text(id).expect("a row has a text").symbol
}

fn paths(found: &Compared) -> Vec<(&str, Change)> {
    found.inputs.iter().map(|input| (input.path.as_str(), input.change)).collect()
}

fn of_texts(before: &str, after: &str) -> Vec<Difference> {
    let roots = [before, after].map(|one| text::read(one).expect("it is JSON"));
    differences([before, after], [&roots[0], &roots[1]])
}

#[test]
fn the_same_input_otherwise_spaced_ordered_and_written_is_the_same_and_a_title_moves_nothing() {
    let file = demo("02-full.json");
    let mut other = serde_json::to_string_pretty(&file).unwrap().replace("\"mass_kg\": 720", "\"mass_kg\": 7.2e2");
    other = other.replacen('{', "{ \"floor\": null, \"written_by\": \"0.0.1\",", 1);
    assert!(of_texts(&file.to_string(), &other).is_empty(), "{:?}", of_texts(&file.to_string(), &other));
    let mut titled = file.clone();
    titled["title"] = json!("yesterday's");
    let found = compared(&titled, &file);
    assert_eq!(paths(&found), [("title", Change::Value)]);
    assert_eq!(found.inputs[0].alone, Alone::MovesNothing);
    assert!(found.checks.is_empty() && found.unmoved == assess(&read(&file)).checks.len());
    assert_eq!(found.sides[0].verdict, found.sides[1].verdict);
}

#[test]
fn one_field_is_one_path_and_every_moved_check_is_followed_back_to_it() {
    let file = demo("02-full.json");
    // Where it enters, the symbol that the sheet has for it.
    for (pointer, path, value, symbols) in [
        ("/slab/strength_mpa", "slab.strength_mpa", 35.0, &["f'_c", "f_c"][..]),
        ("/anchorage/embedment_mm", "anchorage.embedment_mm", 160.0, &["h_ef", "k_a"]),
        ("/site/s_ds", "site.s_ds", 1.2, &["S_DS"]),
        ("/contents/1/mass_kg", "contents[\"recorder 2\"].mass_kg", 300.0, &["m_i", "m_j", "m_c"]),
    ] {
        let mut changed = file.clone();
        *changed.pointer_mut(pointer).expect(pointer) = json!(value);
        let found = compared(&file, &changed);
        assert_eq!(paths(&found), [(path, Change::Value)]);
        assert_eq!(found.inputs[0].alone, Alone::Moves, "{path}");
        assert_eq!(found.inputs[0].after.as_deref(), Some(json!(value).to_string().as_str()));
        assert!(!found.checks.is_empty(), "{path}");
        let mut entered = 0;
        for check in &found.checks {
            let (before, after) = (check.before.as_ref().unwrap(), check.after.as_ref().unwrap());
            assert_eq!(check.by.len(), 1, "{path} moves {} by itself", check.id);
            assert_eq!(check.by[0].utilisation.map(f64::to_bits), after.utilisation.map(f64::to_bits), "{}", check.id);
            let last = check.steps.last().unwrap_or_else(|| panic!("{path}: {} has no chain", check.id));
            if before.at.map(|at| (at.state, at.case)) == after.at.map(|at| (at.state, at.case)) {
                let ends = [before.utilisation, after.utilisation];
                assert!([last.before, last.after] == ends || symbol(last.id) != "u", "{}: {last:?}", check.id);
            }
            for (place, step) in check.steps.iter().enumerate() {
                assert!(step.before.is_none() || step.before != step.after, "{path}: {} stayed", symbol(step.id));
                assert!(step.before.map(f64::to_bits) != step.after.map(f64::to_bits), "{step:?}");
                assert!(step.from.iter().all(|&from| from < place), "a step hangs on what stands before it");
            }
            let leaves: Vec<&str> =
                check.steps.iter().filter(|step| step.from.is_empty()).map(|step| symbol(step.id)).collect();
            entered += usize::from(leaves.iter().any(|leaf| symbols.contains(leaf)));
            println!("{path} {}: {leaves:?} of {}", check.id, check.steps.len());
        }
        assert!(entered > 0, "{path} enters nowhere");
    }
}

#[test]
fn the_numbers_of_a_chain_are_those_of_the_two_workings() {
    let before = demo("02-full.json");
    let mut after = before.clone();
    after["slab"]["strength_mpa"] = json!(35);
    let projects = [read(&before), read(&after)];
    for check in compared(&before, &after).checks {
        for (project, told, side) in [(&projects[0], check.before.as_ref(), 0), (&projects[1], check.after.as_ref(), 1)]
        {
            let at = told.unwrap().at.expect("it was compared");
            let mut sections = working_told(project, &at);
            sections.extend(working_told(project, &At { check: None, ..at }));
            for step in &check.steps {
                let value = [step.before, step.after][side];
                let is_there = sections.iter().any(|section| {
                    let is = |one: &steadfoot::report::sheet_told::StepTold| {
                        one.id == step.id.code()
                            && one.index == step.index
                            && one.value.map(f64::to_bits) == value.map(f64::to_bits)
                    };
                    (section.of == step.of || side == 0) && section.part == step.part && section.steps.iter().any(is)
                });
                assert!(is_there, "{}: {} {value:?}", check.id, symbol(step.id));
            }
        }
    }
}

#[test]
fn rows_are_known_by_their_names_and_a_renamed_content_is_a_rename() {
    let file = demo("05-drawer-out.json");
    let old = file["contents"][0]["name"].as_str().unwrap().to_string();
    let text = file.to_string().replace(&format!("{:?}", old), "\"something else\"");
    let renamed: Value = serde_json::from_str(&text).unwrap();
    let found = compared(&file, &renamed);
    assert_eq!(paths(&found), [(format!("contents[{old:?}]").as_str(), Change::Renamed)]);
    assert!(found.checks.is_empty(), "a name moves nothing");
    let mut changed = demo("02-full.json");
    let contents = changed["contents"].as_array_mut().unwrap();
    let gone = contents.remove(0);
    contents.reverse();
    contents[0]["mass_kg"] = json!(1.0);
    let (gone, first) = (gone["name"].as_str().unwrap(), contents[0]["name"].as_str().unwrap());
    let mut expected = vec![
        (format!("contents[{gone:?}]"), Change::Removed),
        (format!("contents[{first:?}].mass_kg"), Change::Value),
        ("contents".to_string(), Change::Moved),
    ];
    let found = compared(&demo("02-full.json"), &changed);
    let mut told: Vec<(String, Change)> = found.inputs.iter().map(|one| (one.path.clone(), one.change)).collect();
    let by = |a: &(String, Change), b: &(String, Change)| a.0.cmp(&b.0);
    expected.sort_by(by);
    told.sort_by(by);
    assert_eq!(told, expected);
    // Rows without names keep their places.
    let feet = |xs: &str| format!("{{\"a\": [{xs}]}}");
    let found = of_texts(&feet("{\"x\": 1}, {\"x\": 2}"), &feet("{\"x\": 1}, {\"x\": 3}, {\"x\": 2}"));
    assert_eq!(found.len(), 1);
    assert_eq!(
        (found[0].path.as_str(), found[0].change, found[0].after.as_deref()),
        ("a[1]", Change::Added, Some("{\"x\": 3}"))
    );
}

#[test]
fn the_other_way_round_it_tells_the_same_with_the_sides_exchanged() {
    for (first, second) in [
        ("02-full.json", "06-upper-floor.json"),
        ("03-part-filled.json", "01-empty-frame.json"),
        ("02-full.json", "13-partial-factors.json"),
    ] {
        let (one, other) = (demo(first), demo(second));
        let (there, back) = (compared(&one, &other), compared(&other, &one));
        assert_eq!([&there.sides[0], &there.sides[1]], [&back.sides[1], &back.sides[0]]);
        assert_eq!(there.unmoved, back.unmoved);
        assert_eq!(there.checks.len(), back.checks.len());
        for (a, b) in there.checks.iter().zip(&back.checks) {
            assert_eq!((a.id, &a.before, &a.after), (b.id, &b.after, &b.before));
        }
        assert_eq!(there.inputs.len(), back.inputs.len(), "{:?} {:?}", paths(&there), paths(&back));
        for input in &there.inputs {
            let change = match input.change {
                Change::Added => Change::Removed,
                Change::Removed => Change::Added,
                other => other,
            };
            let is = |one: &&steadfoot::explore::InputMoved| one.path == input.path && one.change == change;
            let mirrored = back.inputs.iter().find(is).unwrap_or_else(|| panic!("{} is not told back", input.path));
            assert_eq!((&mirrored.before, &mirrored.after), (&input.after, &input.before));
        }
    }
}

#[test]
fn a_difference_put_in_by_itself_leaves_all_the_others_and_a_rule_goes_with_its_fields() {
    for (first, second) in [
        ("02-full.json", "04-off-centre.json"),
        ("02-full.json", "40-slab-on-the-ground.json"),
        ("41-raised-floor.json", "07-slab-edge.json"),
    ] {
        let [before, after] = [demo(first), demo(second)].map(|file| file.to_string());
        let found = of_texts(&before, &after);
        assert!(found.len() > 1);
        for one in &found {
            let Some(patch) = &one.patch else { continue };
            let patched = patch.applied(&before);
            let left: Vec<String> = of_texts(&patched, &after).into_iter().map(|left| left.path).collect();
            let mut expected: Vec<&str> = found.iter().map(|other| other.path.as_str()).collect();
            expected.retain(|path| *path != one.path);
            assert_eq!(left.len(), expected.len(), "{}: {left:?}", one.path);
            assert!(expected.iter().all(|path| left.iter().any(|other| other == path)), "{}: {left:?}", one.path);
        }
    }
    let (before, after) = (demo("02-full.json"), demo("10-cannot-be-said.json"));
    let found = compared(&before, &after);
    let of_site: Vec<_> = found.inputs.iter().filter(|input| input.path.starts_with("site.")).collect();
    assert!(of_site.len() > 3 && of_site.iter().all(|input| input.alone == Alone::Moves), "{of_site:?}");
}

#[test]
fn what_cannot_stand_alone_is_said_and_never_guessed() {
    let mut before = demo("02-full.json");
    before["states"] = json!([{ "name": "service", "without": [before["contents"][0]["name"].clone()] }]);
    let mut after = before.clone();
    after["contents"].as_array_mut().unwrap().remove(0);
    after["states"][0]["without"] = json!([]);
    let found = compared(&before, &after);
    let removed = found.inputs.iter().position(|input| input.change == Change::Removed).expect("it is gone");
    assert_eq!(found.inputs[removed].alone, Alone::NotAlone, "a state of the first file still names it");
    assert!(found.checks.iter().all(|check| check.by.iter().all(|by| by.input != removed)));
}
