//! What an input is called: every number of every demo by the label of its field, the same on the page as here.

use std::fs;
use std::path::PathBuf;

use steadfoot::calc::System;
use steadfoot::explore::WhatMatters;
use steadfoot::project::{self, Project, input_name, numbers};

fn demos() -> Vec<Project> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs");
    let files = fs::read_dir(folder).expect("demos").map(|entry| entry.expect("an entry").path());
    let is_demo = |path: &PathBuf| path.file_name().is_some_and(|name| name.as_encoded_bytes()[0].is_ascii_digit());
    let read =
        |path: PathBuf| project::read(&fs::read_to_string(path).expect("a demo"), System::Si).expect("no faults");
    files.filter(is_demo).map(read).collect()
}

#[test]
fn no_number_of_any_demo_is_called_by_its_key() {
    let mut seen = 0;
    for project in demos() {
        let paths = numbers(&project).into_iter().map(|number| number.path);
        let groups = WhatMatters::new(&project).groups.into_iter().map(|group| group.path);
        for path in paths.chain(groups) {
            let name = input_name(&path, &project);
            let key = path.rsplit('.').next().unwrap_or("").split('[').next().unwrap_or("");
            let own = name.rsplit(", ").next().unwrap_or("");
            assert!(!name.is_empty() && own != key && own.starts_with(char::is_uppercase), "{path}: {name}");
            seen += 1;
        }
    }
    assert!(seen > 2000, "{seen}");
}

#[test]
fn a_field_of_a_rule_is_called_by_its_label_with_its_symbol() {
    let project = demos().into_iter().find(|project| project.title.contains("full")).or_else(project::built_in);
    let project = project.expect("a project");
    for (path, name) in [
        ("site.s_ds", "Site, Design acceleration S_DS"),
        ("anchorage.embedment_mm", "Anchorage, Embedment h_ef"),
        ("contents[*].mass_kg", "Contents, Mass"),
        ("contents[\"clock, upper\"].mass_kg", "clock, upper, Mass"),
        (r#"contents["6\" tray"].mass_kg"#, "6\" tray, Mass"),
        ("cabinet.frame.centre_mm[2]", "Frame, Centre of gravity of the frame z"),
        ("cabinet.feet[*].at_mm", "Feet, Position"),
        ("slab.edges_mm.rear", "Edges of the slab, Edge at the rear"),
        ("states[0].drawn_out_mm[\"tray 1\"]", "state 1, Drawn out tray 1"),
        ("contents", "Contents"),
        ("site.rule", "Site, Rule"),
    ] {
        assert_eq!(input_name(path, &project), name, "{path}");
    }
}
