//! The map in DEVELOPERS.md is the land: every module is on it, each knows only those above it, every path it names exists.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// The heading under which the modules stand, the ones that know nothing of the others first.
const HEADING: &str = "## The modules of `core`";

#[test]
fn every_module_is_on_the_map_and_every_module_of_the_map_exists() {
    let named: BTreeSet<String> = map().into_iter().collect();
    assert_eq!(named.len(), map().len(), "a module stands on the map twice");
    assert_eq!(named, modules());
}

#[test]
fn every_module_knows_only_those_above_it_on_the_map() {
    let order = map();
    let place = |module: &str| order.iter().position(|known| known == module);
    let mut against = Vec::new();
    let mut uses = 0;
    for file in sources(&source()) {
        let path = module_path(&file);
        let Some(own) = path.first().and_then(|module| place(module)) else { continue };
        for known in known_modules(&fs::read_to_string(&file).unwrap(), path.len()) {
            let Some(other) = place(&known) else { continue };
            uses += 1;
            if other > own {
                against.push(format!("{} knows {known}, which stands below it", path.join("::")));
            }
        }
    }
    assert!(uses > 100, "only {uses} uses were found");
    assert!(against.is_empty(), "{}", against.join("\n"));
}

#[test]
fn every_path_that_the_documents_name_exists() {
    let mut looked = 0;
    for document in ["README.md", "DEVELOPERS.md", "CHANGELOG.md"] {
        let text = fs::read_to_string(root().join(document)).unwrap();
        for code in text.split('`').skip(1).step_by(2) {
            let is_path =
                ["core/", "wasm/", "site/", "tests/", "demo-configs/"].iter().any(|top| code.starts_with(top));
            // A name with a gap in it, such as tests/values/derive_TOPIC.py, and what the builder makes are no files of
            // the repository.
            let is_plain =
                !code.contains(|c: char| c.is_ascii_uppercase() || " *<{".contains(c)) && !code.contains("/dist");
            if is_path && is_plain {
                looked += 1;
                assert!(root().join(code).exists(), "{document} names {code}, which is not there");
            }
        }
    }
    assert!(looked > 20, "only {looked} paths were found");
}

#[test]
fn uses_are_found_however_they_are_written() {
    let found = |text: &str, depth| known_modules(text, depth).into_iter().collect::<Vec<_>>().join(" ");
    assert_eq!(found("use crate::calc::{Kind, unit};", 1), "calc");
    assert_eq!(found("use crate::{calc::Kind, rules::{self, demand}, slab};", 1), "calc rules slab");
    assert_eq!(found("fn f(x: crate::geometry::Point) {} // crate::report", 1), "geometry");
    assert_eq!(found("use super::super::report::Slot; use super::step;", 2), "report");
    assert_eq!(found("use super::report::Slot;", 1), "report");
    assert_eq!(found("/// [`crate::project`]\nuse super::step;", 2), "");
}

/// The modules in the order of the map.
fn map() -> Vec<String> {
    let text = fs::read_to_string(root().join("DEVELOPERS.md")).expect("there is a DEVELOPERS.md");
    let section = text.split(HEADING).nth(1).expect("DEVELOPERS.md has the map of modules");
    let section = section.split("\n## ").next().unwrap();
    let rows = section.lines().filter_map(|line| line.strip_prefix("| `"));
    rows.map(|row| row.split('`').next().unwrap().to_string()).collect()
}

/// The modules that there are.
fn modules() -> BTreeSet<String> {
    let entries =
        fs::read_dir(source()).unwrap().map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned());
    entries.map(|name| name.trim_end_matches(".rs").to_string()).filter(|name| name != "lib").collect()
}

/// The modules of the crate that a file's text names, by `crate::` or by going up to the crate; comments do not count.
fn known_modules(text: &str, depth: usize) -> BTreeSet<String> {
    let code: String = text.lines().map(|line| line.split("//").next().unwrap().to_string() + "\n").collect();
    let mut known = BTreeSet::new();
    let up = "super::".repeat(depth);
    for start in ["crate::", up.as_str()] {
        for (at, _) in code.match_indices(start) {
            // A longer way up was found at its beginning.
            if start != "crate::" && code[..at].ends_with("super::") {
                continue;
            }
            known.extend(names(&code[at + start.len()..]));
        }
    }
    known
}

/// The name that a path goes on with, or the first names of all its branches.
fn names(rest: &str) -> Vec<String> {
    let name = |text: &str| -> String { text.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect() };
    let Some(list) = rest.strip_prefix('{') else { return vec![name(rest)] };
    let mut level = 0;
    let mut found = Vec::new();
    let mut begins = true;
    for (at, sign) in list.char_indices() {
        match sign {
            '{' => level += 1,
            '}' if level == 0 => break,
            '}' => level -= 1,
            ',' if level == 0 => begins = true,
            _ if begins && !sign.is_whitespace() => {
                found.push(name(&list[at..]));
                begins = false;
            }
            _ => {}
        }
    }
    found
}

/// `calc/show.rs` is calc, show; `calc/mod.rs` is calc.
fn module_path(file: &Path) -> Vec<String> {
    let inside = file.strip_prefix(source()).unwrap().with_extension("");
    let mut path: Vec<String> = inside.iter().map(|part| part.to_string_lossy().into_owned()).collect();
    path.retain(|part| part != "mod");
    path
}

fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            files.extend(sources(&path));
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            files.push(path);
        }
    }
    files.sort();
    files
}

fn source() -> PathBuf {
    root().join("core/src")
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}
