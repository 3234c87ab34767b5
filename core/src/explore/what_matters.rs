//! What matters most: how far the governing utilisation moves when the numbers of a file move a little.
//!
//! Numbers that belong together move together: the masses of all contents, the places of all anchors. Each variant is
//! read anew and swept as a whole by the true checks.

use alloc::string::String;
use alloc::vec::Vec;

use super::trial::{Trial, Trials};
use crate::calc::Kind;
use crate::input::{Given, Setting};
use crate::project::{Project, numbers, read_set};

/// How much every number of a group is made smaller and larger.
pub const SHARE: f64 = 0.1;
/// How far places that are zero are moved instead.
pub const SHIFT_MM: f64 = 25.0;

/// Parts of a file that no required check reads.
const APART: [&str; 5] = ["motion", "moving", "lifting", "drilling", "shake_table"];
/// Vectors whose numbers move together: they say how far apart things stand, or how large they are.
const TOGETHER: [&str; 3] = ["at_mm", "size_mm", "as_built_mm"];

/// Numbers that are moved together.
#[derive(Clone, PartialEq, Debug)]
pub struct Group {
    /// Where they stand, with `[*]` for every item of a list.
    pub path: String,
    /// The numbers.
    pub numbers: Vec<Given>,
    /// Whether they are all zero, and are shifted by [`SHIFT_MM`].
    pub is_shifted: bool,
}

/// What a group came to: made smaller, then larger; none where that cannot be built.
pub type Moved = [Option<Trial>; 2];

/// The trying on its way. Ask [`WhatMatters::next`] until it says that nothing is left.
pub struct WhatMatters {
    project: Project,
    /// The groups, in the order of the file.
    pub groups: Vec<Group>,
    results: Vec<Option<Trial>>,
    /// What the file as it is comes to.
    pub now: Trial,
    trials: Trials,
}

impl WhatMatters {
    /// Prepares the trying.
    pub fn new(project: &Project) -> WhatMatters {
        let mut trials = Trials::new();
        let now = trials.learn(project);
        WhatMatters { project: project.clone(), groups: groups(project), results: Vec::new(), now, trials }
    }

    /// Tries up to `budget` further variants; true while some are left.
    pub fn next(&mut self, budget: usize) -> bool {
        for _ in 0..budget {
            let number = self.results.len();
            let Some(group) = self.groups.get(number / 2) else { return false };
            let settings = group.moved(number % 2 == 1);
            let variant = read_set(&self.project.source, &self.with_stand_ins(settings));
            self.results.push(variant.ok().map(|variant| self.trials.learn(&variant)));
        }
        self.results.len() < 2 * self.groups.len()
    }

    /// All at once.
    pub fn finish(&mut self) {
        while self.next(usize::MAX / 2) {}
    }

    /// How many variants were tried, and of how many.
    pub fn progress(&self) -> [usize; 2] {
        [self.results.len(), 2 * self.groups.len()]
    }

    /// The groups that were tried, the one that moves the governing utilisation most first.
    pub fn ranked(&self) -> Vec<(&Group, Moved)> {
        let pairs = self.results.chunks_exact(2).map(|pair| [pair[0], pair[1]]);
        let mut ranked: Vec<(f64, usize, Moved)> =
            pairs.enumerate().map(|(place, moved)| (self.span(&moved), place, moved)).collect();
        crate::calc::order::put_in_order(&mut ranked, |a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
        ranked.into_iter().map(|(_, place, moved)| (&self.groups[place], moved)).collect()
    }

    /// By how much the governing utilisation moves at most; something that has no number moves further than any number.
    pub fn span(&self, moved: &Moved) -> f64 {
        let Some(now) = self.now.utilisation else { return 0.0 };
        let change = |trial: &Trial| trial.utilisation.map_or(f64::INFINITY, |used| (used - now).abs());
        moved.iter().flatten().map(change).fold(0.0, f64::max)
    }

    /// What stands in for what is not known stays where the file's own middle is not.
    fn with_stand_ins(&self, mut settings: Vec<Setting>) -> Vec<Setting> {
        for open in &self.project.open {
            if settings.iter().all(|setting| setting.at != open.at) {
                settings.push(Setting { at: open.at, value: open.stand_in });
            }
        }
        settings
    }
}

impl Group {
    /// The group with every number a little smaller, or larger.
    fn moved(&self, is_larger: bool) -> Vec<Setting> {
        let sign = if is_larger { 1.0 } else { -1.0 };
        let value = |number: &Given| {
            if self.is_shifted { sign * SHIFT_MM } else { number.value * (1.0 + sign * SHARE) }
        };
        self.numbers.iter().map(|number| Setting { at: number.at, value: value(number) }).collect()
    }

    /// The number, where the group has one, or all of its numbers are the same.
    pub fn value(&self) -> Option<f64> {
        let first = self.numbers.first()?.value;
        self.numbers.iter().all(|number| number.value == first).then_some(first)
    }

    /// What the numbers measure.
    pub fn kind(&self) -> Kind {
        self.numbers.first().map_or(Kind::Number, |number| number.kind)
    }
}

fn groups(project: &Project) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    for number in numbers(project) {
        let top = number.path.split(['.', '[']).next().unwrap_or("");
        if APART.contains(&top) {
            continue;
        }
        let path = group_path(&number.path);
        match groups.iter_mut().find(|group| group.path == path) {
            Some(group) => group.numbers.push(number),
            None => groups.push(Group { path, numbers: alloc::vec![number], is_shifted: false }),
        }
    }
    for group in &mut groups {
        group.is_shifted = group.numbers.iter().all(|number| number.value == 0.0);
    }
    // A place that is zero can be shifted; what else is zero is not there.
    groups.retain(|group| !group.is_shifted || group.kind() == Kind::Length && group.path.ends_with(']'));
    groups
}

/// `contents[2].mass_kg` becomes `contents[*].mass_kg`; `cabinet.feet[0].at_mm[1]` becomes `cabinet.feet[*].at_mm`.
fn group_path(path: &str) -> String {
    let mut general = String::new();
    for (place, piece) in path.split('[').enumerate() {
        if place == 0 {
            general.push_str(piece);
            continue;
        }
        match piece.split_once(']') {
            Some((inside, rest)) if !rest.is_empty() || inside.starts_with('"') => {
                general.push_str("[*]");
                general.push_str(rest);
            }
            Some((inside, _)) if !TOGETHER.iter().any(|key| general.ends_with(key)) => {
                general.push('[');
                general.push_str(inside);
                general.push(']');
            }
            _ => {}
        }
    }
    general
}
