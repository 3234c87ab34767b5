//! What to move down: the contents in another order, on the true checks.
//!
//! Contents keep their sizes and what lies between two of them stays as high as it is, so the stack is as tall as before
//! and nothing overlaps. Where contents stand side by side only those of one size change places. Tried are the order by
//! mass per height, the order by mass, and from the best of them exchanges of two, as long as one of them gains.

use alloc::vec::Vec;

use crate::calc::{CheckId, order::put_in_order};
use crate::project::bench::Bench;
use crate::project::{Project, quick_told};
use crate::report::outcome::Verdict;

/// Most orders that are tried.
pub const ORDERS_MAX: usize = 400;
/// What is gained has to be more than this, relative.
const GAIN: f64 = 1e-6;

/// Whose place each content takes: the first is what stands lowest.
pub type Order = Vec<usize>;

/// What one order came to.
#[derive(Clone, PartialEq, Debug)]
pub struct Ordered {
    /// The contents by their places in the file, the lowest first.
    pub order: Order,
    /// The answer in one word.
    pub verdict: Verdict,
    /// The check that governs once bolted.
    pub governs: Option<CheckId>,
    /// Its utilisation.
    pub bolted: Option<f64>,
    /// The utilisation of tipping before bolting.
    pub free: Option<f64>,
    /// How high the centre of gravity of the full cabinet is.
    pub centre_mm: f64,
}

/// The search on its way. Ask [`Reorder::next`] until it says that nothing is left.
pub struct Reorder {
    project: Project,
    is_stack: bool,
    /// As it stands.
    pub now: Ordered,
    /// The best exchange of two, from how it stands.
    pub one_exchange: Option<(Ordered, [usize; 2])>,
    /// The best that was found.
    pub best: Ordered,
    waiting: Vec<Errand>,
    gained: bool,
    /// Orders tried so far.
    pub tried: usize,
}

#[derive(Clone, Debug)]
enum Errand {
    /// A whole order.
    Whole(Order),
    /// An exchange of two, from how it stands.
    First([usize; 2]),
    /// An exchange of two, from the best.
    Further([usize; 2]),
}

impl Reorder {
    /// Prepares the search; none where fewer than two contents could change places.
    pub fn new(project: &Project) -> Option<Reorder> {
        let order = standing(project);
        let is_stack = is_stack(project, &order);
        let pairs = pairs(project, is_stack);
        if pairs.is_empty() {
            return None;
        }
        let now = asked(project, order.clone());
        let mut waiting = Vec::new();
        if is_stack {
            for by in [mass_per_height as fn(&Project, usize) -> f64, |project, place| project.contents[place].mass_kg]
            {
                let mut sorted = order.clone();
                put_in_order(&mut sorted, |&a, &b| by(project, b).total_cmp(&by(project, a)));
                if sorted != order {
                    waiting.push(Errand::Whole(sorted));
                }
            }
        }
        waiting.extend(pairs.into_iter().map(Errand::First));
        waiting.reverse();
        let best = now.clone();
        Some(Reorder {
            project: project.clone(),
            is_stack,
            now,
            one_exchange: None,
            best,
            waiting,
            gained: false,
            tried: 0,
        })
    }

    /// Tries up to `budget` further orders; true while some are left.
    pub fn next(&mut self, budget: usize) -> bool {
        for _ in 0..budget {
            if self.tried == ORDERS_MAX {
                self.waiting.clear();
                return false;
            }
            let Some(errand) = self.waiting.pop().or_else(|| self.another_round()) else { return false };
            self.tried += 1;
            match errand {
                Errand::Whole(order) => {
                    let came = self.ask(order);
                    self.keep(came);
                }
                Errand::First(pair) => {
                    let came = self.ask(exchanged(&self.now.order, pair));
                    let known = self.one_exchange.as_ref().map_or(&self.now, |(known, _)| known);
                    if is_better(&came, known) {
                        self.one_exchange = Some((came.clone(), pair));
                    }
                    self.keep(came);
                }
                Errand::Further(pair) => {
                    let came = self.ask(exchanged(&self.best.order, pair));
                    self.keep(came);
                }
            }
        }
        true
    }

    /// All at once.
    pub fn finish(&mut self) {
        while self.next(ORDERS_MAX) {}
    }

    /// The project with its contents in an order.
    pub fn project(&self, order: &[usize]) -> Project {
        reordered(&self.project, self.is_stack, order)
    }

    /// Whether the contents stand in one stack, so that any two can change places.
    pub fn is_stack(&self) -> bool {
        self.is_stack
    }

    fn ask(&self, order: Order) -> Ordered {
        asked(&reordered(&self.project, self.is_stack, &order), order)
    }

    fn keep(&mut self, came: Ordered) {
        if is_better(&came, &self.best) {
            self.best = came;
            self.gained = true;
        }
    }

    fn another_round(&mut self) -> Option<Errand> {
        if !self.gained {
            return None;
        }
        self.gained = false;
        self.waiting = pairs(&self.project, self.is_stack).into_iter().map(Errand::Further).collect();
        self.waiting.reverse();
        self.waiting.pop()
    }
}

/// The contents by their places in the file, the lowest first.
fn standing(project: &Project) -> Order {
    let mut order: Order = (0..project.contents.len()).collect();
    put_in_order(&mut order, |&a, &b| {
        project.contents[a].bottom_mm.total_cmp(&project.contents[b].bottom_mm).then(a.cmp(&b))
    });
    order
}

/// Whether no two contents share a height.
fn is_stack(project: &Project, order: &[usize]) -> bool {
    order.windows(2).all(|pair| {
        let [below, above] = [&project.contents[pair[0]], &project.contents[pair[1]]];
        below.bottom_mm + below.size_mm[2] <= above.bottom_mm
    })
}

/// Which contents may change places, by their places in the file.
fn pairs(project: &Project, is_stack: bool) -> Vec<[usize; 2]> {
    let contents = &project.contents;
    let mut pairs = Vec::new();
    for a in 0..contents.len() {
        for b in a + 1..contents.len() {
            let alike = contents[a].size_mm == contents[b].size_mm;
            if (is_stack || alike) && contents[a].mass_kg != contents[b].mass_kg {
                pairs.push([a, b]);
            }
            // More than are ever tried need not be listed.
            if pairs.len() > ORDERS_MAX {
                return pairs;
            }
        }
    }
    pairs
}

fn mass_per_height(project: &Project, place: usize) -> f64 {
    let content = &project.contents[place];
    content.mass_kg / content.size_mm[2].max(1.0)
}

fn exchanged(order: &[usize], [a, b]: [usize; 2]) -> Order {
    let other = |&place: &usize| match place {
        _ if place == a => b,
        _ if place == b => a,
        _ => place,
    };
    order.iter().map(other).collect()
}

fn reordered(project: &Project, is_stack: bool, order: &[usize]) -> Project {
    let mut changed = project.clone();
    let before = standing(project);
    if !is_stack {
        // Of one size, so each takes the other's place as it is.
        for (&from, &to) in before.iter().zip(order) {
            let place = &project.contents[from];
            (changed.contents[to].bottom_mm, changed.contents[to].offset_mm) = (place.bottom_mm, place.offset_mm);
        }
        return changed;
    }
    let top = |place: usize| project.contents[place].bottom_mm + project.contents[place].size_mm[2];
    let mut bottom_mm = before.first().map_or(0.0, |&lowest| project.contents[lowest].bottom_mm);
    for (number, &place) in order.iter().enumerate() {
        changed.contents[place].bottom_mm = bottom_mm;
        let gap_mm = before.get(number + 1).map_or(0.0, |&next| project.contents[next].bottom_mm - top(before[number]));
        bottom_mm += changed.contents[place].size_mm[2] + gap_mm;
    }
    changed
}

fn asked(project: &Project, order: Order) -> Ordered {
    let mut bench = Bench::new(project);
    let quick = quick_told(&mut bench);
    let governing = quick.governing();
    let find = |id: CheckId| quick.checks.iter().find(|check| check.id == id.id());
    Ordered {
        order,
        verdict: quick.verdict,
        governs: governing.and_then(|check| CheckId::named(check.id)),
        bolted: governing.and_then(|check| check.utilisation),
        free: find(CheckId::FreeTipping).and_then(|check| check.utilisation),
        centre_mm: bench.loads.first().map_or(0.0, |load| load.centre_mm[2]),
    }
}

/// Less of what is allowed once bolted; where that is the same, before bolting.
fn is_better(one: &Ordered, other: &Ordered) -> bool {
    let level = |used: Option<f64>| used.unwrap_or(f64::INFINITY);
    let less = |a: f64, b: f64| a < b * (1.0 - GAIN) || (b.is_infinite() && a.is_finite());
    let (a, b) = (level(one.bolted), level(other.bolted));
    less(a, b) || !less(b, a) && less(level(one.free), level(other.free))
}
