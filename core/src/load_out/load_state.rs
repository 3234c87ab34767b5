//! The states of a load-out: the ones that always exist, the part-filled ones, the user's own.

use crate::calc::order::put_in_order;
use alloc::string::String;
use alloc::vec::Vec;

use super::content::Content;
use super::state::State;
use crate::input::fault::push_whole;

/// What is in the cabinet in one state.
#[derive(Clone, PartialEq, Debug)]
pub struct LoadState {
    /// Its name.
    pub name: String,
    /// The contents that are there, in the order of the file.
    pub aboard: Vec<Aboard>,
}

/// A content that is there.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Aboard {
    /// Its place in the file.
    pub content: usize,
    /// How far it is drawn out to the front.
    pub drawn_out_mm: f64,
}

/// The states that always exist: full, empty.
pub fn always(contents: &[Content]) -> [LoadState; 2] {
    [those("full".into(), contents, |_| true), those("empty".into(), contents, |_| false)]
}

/// The states with only the lowest and only the highest contents: one of them, two, and so on up to all but one.
///
/// Contents are ordered by their undersides; where these are equal, by the order of the file.
pub fn part_filled(contents: &[Content]) -> Vec<LoadState> {
    let mut rising: Vec<usize> = (0..contents.len()).collect();
    put_in_order(&mut rising, |&a, &b| contents[a].bottom_mm.total_cmp(&contents[b].bottom_mm));
    let mut rank = alloc::vec![0; contents.len()];
    for (place, &content) in rising.iter().enumerate() {
        rank[content] = place;
    }
    let counts = 1..contents.len();
    let lowest =
        counts.clone().map(|count| those(counted("lowest ", count), contents, |content| rank[content] < count));
    let highest = counts
        .map(|count| those(counted("highest ", count), contents, |content| rank[content] >= contents.len() - count));
    lowest.chain(highest).collect()
}

/// A state of the user's own.
pub fn own(contents: &[Content], state: &State) -> LoadState {
    let mut own = those(state.name.clone(), contents, |content| state.without.binary_search(&content).is_err());
    for aboard in &mut own.aboard {
        if let Ok(found) = state.drawn_out_mm.binary_search_by_key(&aboard.content, |(content, _)| *content) {
            aboard.drawn_out_mm = state.drawn_out_mm[found].1;
        }
    }
    own
}

fn those(name: String, contents: &[Content], is_aboard: impl Fn(usize) -> bool) -> LoadState {
    let aboard = contents.iter().enumerate().filter(|(place, _)| is_aboard(*place));
    let aboard = aboard.map(|(place, content)| Aboard { content: place, drawn_out_mm: content.drawn_out_mm });
    LoadState { name, aboard: aboard.collect() }
}

fn counted(word: &str, count: usize) -> String {
    let mut name = String::from(word);
    push_whole(&mut name, count);
    name
}
