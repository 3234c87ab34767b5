//! What a row has aboard: everything, nothing, the lowest or highest few, or everything at a part of its mass.

use alloc::string::String;
use alloc::vec::Vec;

use super::tree::Tree;
use crate::calc::decimal::precise;
use crate::calc::order::put_in_order;
use crate::input::Problem;
use crate::input::number::number;

/// What would do in the column, for faults.
pub const ALLOWED: &str = "full, empty, lowest and a number of contents, highest and a number of contents, a percentage of the mass from 1 % to 200 %, or a name of the hall's load_outs";

/// A load-out that needs no name of its own.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Aboard {
    /// All contents.
    Full,
    /// None.
    Empty,
    /// Only so many of the lowest.
    Lowest(usize),
    /// Only so many of the highest.
    Highest(usize),
    /// All, each at this part of its mass.
    Part(f64),
}

/// Whether a name could be taken for one of these.
pub fn is_word(name: &str) -> bool {
    let name = name.trim();
    matches!(name, "full" | "empty" | "lowest" | "highest") || Aboard::of(name).is_some()
}

impl Aboard {
    /// The load-out of a cell.
    pub fn of(cell: &str) -> Option<Aboard> {
        let cell = cell.trim();
        if let Some(percent) = cell.strip_suffix('%') {
            let percent = number(percent.trim_end())?;
            return (1.0..=200.0).contains(&percent).then_some(Aboard::Part(percent / 100.0));
        }
        let mut words = cell.split_ascii_whitespace();
        let aboard = match (words.next()?, words.next()) {
            ("full", None) => Aboard::Full,
            ("empty", None) => Aboard::Empty,
            ("lowest", Some(count)) => Aboard::Lowest(whole(count)?),
            ("highest", Some(count)) => Aboard::Highest(whole(count)?),
            _ => return None,
        };
        words.next().is_none().then_some(aboard)
    }

    /// Leaves aboard what is meant. Contents are ordered by their undersides; where these are equal, by the order of the
    /// file. A state no longer speaks of what is not there.
    pub fn leave(self, project: &mut Tree) -> Result<(), Problem> {
        let count = match project.member("contents") {
            Some(Tree::List(items)) => items.len(),
            _ => 0,
        };
        let is_aboard: Vec<bool> = match self {
            Aboard::Full => return Ok(()),
            Aboard::Part(part) => {
                scale(project, part);
                return Ok(());
            }
            Aboard::Empty => alloc::vec![false; count],
            Aboard::Lowest(few) | Aboard::Highest(few) => {
                if few > count {
                    return Err(Problem::AboveLimit);
                }
                let rising = rising(project);
                let mut is_aboard = alloc::vec![false; count];
                let kept = if self == Aboard::Lowest(few) { &rising[..few] } else { &rising[count - few..] };
                kept.iter().for_each(|&content| is_aboard[content] = true);
                is_aboard
            }
        };
        let mut gone: Vec<String> = Vec::new();
        if let Some(Tree::List(items)) = project.member_mut("contents") {
            let mut place = 0;
            items.retain(|item| {
                let stays = is_aboard[place];
                place += 1;
                if !stays {
                    gone.extend(item.member("name").and_then(Tree::text).map(String::from));
                }
                stays
            });
        }
        forget(project, &gone);
        Ok(())
    }
}

fn whole(digits: &str) -> Option<usize> {
    let is_whole = digits.len() <= 4 && digits.bytes().all(|byte| byte.is_ascii_digit());
    let number = is_whole.then(|| digits.bytes().fold(0, |sum, digit| 10 * sum + usize::from(digit - b'0')))?;
    (number > 0).then_some(number)
}

/// Places of the contents by their undersides, the lowest first.
fn rising(project: &Tree) -> Vec<usize> {
    let Some(Tree::List(items)) = project.member("contents") else { return Vec::new() };
    let bottom = |item: &Tree| match item.member("bottom_mm") {
        Some(Tree::Leaf(source)) => number(source).unwrap_or(0.0),
        _ => 0.0,
    };
    let bottoms: Vec<f64> = items.iter().map(bottom).collect();
    let mut places: Vec<usize> = (0..items.len()).collect();
    put_in_order(&mut places, |&a, &b| bottoms[a].total_cmp(&bottoms[b]));
    places
}

fn scale(project: &mut Tree, part: f64) {
    let Some(Tree::List(items)) = project.member_mut("contents") else { return };
    for item in items {
        if let Some(Tree::Leaf(source)) = item.member_mut("mass_kg")
            && let Some(mass_kg) = number(source).filter(|mass| *mass >= 0.0 && mass.is_finite())
        {
            source.clear();
            precise(source, mass_kg * part);
        }
    }
}

/// Takes contents that are not there out of what the states say of them.
fn forget(project: &mut Tree, gone: &[String]) {
    let Some(Tree::List(states)) = project.member_mut("states") else { return };
    for state in states {
        if let Some(Tree::List(names)) = state.member_mut("without") {
            names.retain(|name| name.text().is_none_or(|name| !gone.iter().any(|gone| gone == name)));
        }
        if let Some(Tree::Object(entries)) = state.member_mut("drawn_out_mm") {
            entries.retain(|(name, _)| !gone.contains(name));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_of_load_outs_are_read() {
        assert_eq!(Aboard::of(" full "), Some(Aboard::Full));
        assert_eq!(Aboard::of("lowest 3"), Some(Aboard::Lowest(3)));
        assert_eq!(Aboard::of("80 %"), Some(Aboard::Part(0.8)));
        for word in ["", "lowest", "lowest 0", "lowest -1", "lowest 3 4", "half", "0 %", "201 %", "%", "full 1"] {
            assert_eq!(Aboard::of(word), None, "{word}");
        }
    }
}
