//! The states of a load-out: the ones that always exist, the part-filled ones, the user's own.

use crate::calc::order::put_in_order;
use alloc::string::String;
use alloc::vec::Vec;

use super::content::Content;
use super::state::State;
use crate::cabinet::Cabinet;
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

/// Contents whose middles differ by more than this along an axis stand beside each other.
const BESIDE_MM: f64 = 50.0;

/// Word, axis and sense of the sides to which a part-filled cabinet may lean.
pub(super) const LEANING: [(&str, usize, f64); 4] =
    [("leaning left ", 0, -1.0), ("leaning right ", 0, 1.0), ("leaning front ", 1, -1.0), ("leaning rear ", 1, 1.0)];

/// The states that lean: aboard are only those contents that tip the whole most towards one side of its feet.
///
/// Moments about that side are sums over what is aboard, so a set is worst when it holds every content whose distance
/// from the side, over its height, is below one number: the push over the gravity that holds against it. The contents
/// are put in the order of that ratio; the first are those with which it tips by the least push, and with more of them
/// it pulls hardest at stronger pushes. Only along an axis on which contents stand beside each other: elsewhere these
/// are the highest ones. Sets that are there already are left out.
pub fn leaning(cabinet: &Cabinet, contents: &[Content], known: &[LoadState]) -> Vec<LoadState> {
    let mut found: Vec<LoadState> = Vec::new();
    let centres: Vec<[f64; 3]> = contents.iter().map(|content| content.centre_mm(content.drawn_out_mm)).collect();
    for (word, axis, sense) in LEANING {
        let ends = contents.iter().map(|content| content.offset_mm[axis]);
        let [low, high] = ends.fold([f64::INFINITY, f64::NEG_INFINITY], |[low, high], at| [low.min(at), high.max(at)]);
        let side_mm = cabinet.feet.iter().fold(f64::NEG_INFINITY, |side: f64, foot| {
            let (at, size) = if axis == 0 { (foot.at.x_mm, foot.size.x_mm) } else { (foot.at.y_mm, foot.size.y_mm) };
            side.max(sense * at + size / 2.0)
        });
        if !(high - low > BESIDE_MM && side_mm.is_finite()) {
            continue;
        }
        let lever_mm = |at: &[f64; 3]| side_mm - sense * at[axis];
        let ratio = |content: usize| lever_mm(&centres[content]) / centres[content][2].max(1.0);
        let mut first: Vec<usize> = (0..contents.len()).collect();
        put_in_order(&mut first, |&a, &b| ratio(a).total_cmp(&ratio(b)));
        let frame = &cabinet.frame;
        let (mut holding, mut tipping) =
            (frame.mass_kg * lever_mm(&frame.centre_mm), frame.mass_kg * frame.centre_mm[2]);
        let mut least = 0;
        for &content in &first {
            if !(ratio(content) * tipping < holding) {
                break;
            }
            holding += contents[content].mass_kg * lever_mm(&centres[content]);
            tipping += contents[content].mass_kg * centres[content][2];
            least += 1;
        }
        let mut rank = alloc::vec![0; contents.len()];
        for (place, &content) in first.iter().enumerate() {
            rank[content] = place;
        }
        for count in usize::max(least, 1)..contents.len() {
            let state = those(counted(word, count), contents, |content| rank[content] < count);
            if !known.iter().chain(&found).any(|other| other.aboard == state.aboard) {
                found.push(state);
            }
        }
    }
    found
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

/// Every way to fill the cabinet, to check that none is worse than the states that are assessed: 2^n states for n
/// contents, at most 20 of them. Panics with more.
pub fn states_of_all_subsets(contents: &[Content]) -> Vec<LoadState> {
    assert!(contents.len() <= 20, "there are too many subsets of {} contents", contents.len());
    let subset = |bits: usize| those(counted("subset ", bits), contents, |content| bits >> content & 1 == 1);
    (0..1 << contents.len()).map(subset).collect()
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
