//! Not known is an answer: what becomes of a project over all that its open inputs may be.
//!
//! Tried are what stands in, the corners, and points spread evenly between them; each is read anew, so that whatever the
//! rest of the file does not bear is found, and asked by the true checks. What is told was tried, and nothing is proved.

use alloc::string::String;
use alloc::vec::Vec;

use super::trial::{Trial, Trials};
use crate::calc::Section;
use crate::input::corner::{Spread, corners, settings};
use crate::input::{MayBe, Open};
use crate::project::{
    HASH_START, Project, assess, built_in_of, hashed, read_set, stated, value_told, values_told, working,
};
use crate::report::not_known::{Part, PointTold, Settles, Tried};
use crate::report::outcome::{Report, Verdict};

/// Points between the corners.
const INNER: usize = 40;

/// The report of a project: where it leaves something open, over everything that is tried; else that of [`assess`].
///
/// ```
/// use steadfoot::{calc::System, explore, project};
/// let text = r#"{ "format": "steadfoot 1", "cabinet": { "width_mm": 600, "depth_mm": 800, "height_mm": 2000,
///     "frame": { "mass_kg": { "between": [200, 300] }, "centre_mm": [0, 0, 900] } } }"#;
/// let report = explore::assess_open(&project::read(text, System::Si).unwrap());
/// let tried = report.unknown.unwrap().tried.unwrap();
/// assert_eq!(tried.tried, tried.of);
/// ```
pub fn assess_open(project: &Project) -> Report {
    match Unknowns::new(project) {
        Some(mut unknowns) => {
            unknowns.finish();
            unknowns.report()
        }
        None => assess(project),
    }
}

/// The trying on its way. Ask [`Unknowns::next`] until it says that nothing is left.
pub struct Unknowns {
    project: Project,
    points: Vec<Vec<f64>>,
    results: Vec<Came>,
    trials: Trials,
}

/// What one point came to.
#[derive(Clone, Debug)]
pub enum Came {
    /// It was checked.
    To(Trial),
    /// It cannot be built: the first fault.
    Unbuilt(String),
}

impl Came {
    fn holds(&self) -> bool {
        matches!(self, Came::To(Trial { verdict: Verdict::Holds, .. }))
    }

    fn fails(&self) -> bool {
        matches!(self, Came::To(Trial { verdict: Verdict::DoesNotHold, .. }))
    }
}

impl Unknowns {
    /// Prepares the trying; none where everything is known.
    pub fn new(project: &Project) -> Option<Unknowns> {
        if project.open.is_empty() {
            return None;
        }
        let open = &project.open;
        let spread = Spread::new(open.len());
        let inner = (0..INNER).map(|place| {
            let shares = spread.point(place);
            open.iter().zip(shares).map(|(open, share)| open.at_share(share)).collect()
        });
        let mut points: Vec<Vec<f64>> = Vec::new();
        let first = [open.iter().map(|open| open.stand_in).collect(), open.iter().map(Open::middle).collect()];
        for point in first.into_iter().chain(corners(open)).chain(inner) {
            if !points.contains(&point) {
                points.push(point);
            }
        }
        Some(Unknowns { project: project.clone(), points, results: Vec::new(), trials: Trials::new() })
    }

    /// Tries up to `budget` further points; true while some are left.
    pub fn next(&mut self, budget: usize) -> bool {
        for _ in 0..budget {
            let Some(point) = self.points.get(self.results.len()) else { return false };
            let came = match self.at(point) {
                Ok(project) => Came::To(self.trials.attempt(&project)),
                Err(fault) => Came::Unbuilt(fault),
            };
            self.results.push(came);
        }
        self.results.len() < self.points.len()
    }

    /// All at once.
    pub fn finish(&mut self) {
        while self.next(usize::MAX / 2) {}
    }

    /// How many points were tried, and of how many.
    pub fn progress(&self) -> [usize; 2] {
        [self.results.len(), self.points.len()]
    }

    /// Every point that was tried, a value for each open input, with what it came to.
    pub fn tried(&self) -> impl Iterator<Item = (&[f64], &Came)> {
        self.points.iter().map(Vec::as_slice).zip(&self.results)
    }

    /// The project of a point; the sentence of its first fault where it cannot be built.
    pub fn at(&self, point: &[f64]) -> Result<Project, String> {
        let settings = settings(&self.project.open, point);
        let first = |faults: Vec<crate::input::Fault>| faults.first().map_or(String::new(), |fault| fault.sentence());
        read_set(&self.project.source, &settings).map_err(first)
    }

    /// The report over what was tried so far.
    pub fn report(&self) -> Report {
        let mut report = assess(&self.project);
        stated(&self.project, &mut report, Some(self.told()));
        report
    }

    /// What became of what was tried so far.
    pub fn told(&self) -> Tried {
        let count = |is: fn(&Came) -> bool| self.results.iter().filter(|came| is(came)).count();
        let (holds, fails) = (count(Came::holds), count(Came::fails));
        let unbuilt = count(|came| matches!(came, Came::Unbuilt(_)));
        let tried = self.results.len();
        Tried {
            of: self.points.len(),
            tried,
            holds,
            fails,
            unsaid: tried - holds - fails - unbuilt,
            unbuilt,
            nearest: self.nearest().map(|place| self.point_told(place)),
            closest: self.closest().map(|place| self.point_told(place)),
            settles: self.settles(),
        }
    }

    /// The working at the tried point that does not hold and is nearest to what stands in: that of its governing check.
    pub fn working(&self) -> Vec<Section> {
        let project = self.nearest().and_then(|place| self.at(&self.points[place]).ok());
        let told = project.and_then(|project| {
            let report = assess(&project);
            let at = report.checks.get(report.governs?)?.at?;
            Some(working(&project, &at))
        });
        told.unwrap_or_default()
    }

    /// The point nearest to what stands in that fails; where none fails, that of which nothing can be said, or that
    /// cannot be built.
    fn nearest(&self) -> Option<usize> {
        let any_fails = self.results.iter().any(Came::fails);
        let counts = |came: &Came| if any_fails { came.fails() } else { !came.holds() };
        let mut best: Option<(f64, usize)> = None;
        for place in (0..self.results.len()).filter(|&place| counts(&self.results[place])) {
            let far = self.far(&self.points[place]);
            if best.is_none_or(|(known, _)| far < known) {
                best = Some((far, place));
            }
        }
        best.map(|(_, place)| place)
    }

    /// The point that holds with the highest utilisation.
    fn closest(&self) -> Option<usize> {
        let mut best: Option<(f64, usize)> = None;
        for (place, came) in self.results.iter().enumerate() {
            if let Came::To(Trial { verdict: Verdict::Holds, utilisation: Some(utilisation), .. }) = came
                && best.is_none_or(|(known, _)| *utilisation > known)
            {
                best = Some((*utilisation, place));
            }
        }
        best.map(|(_, place)| place)
    }

    /// How far a point lies from what stands in, squared: a whole range counts as much as another word.
    fn far(&self, point: &[f64]) -> f64 {
        let along = |(open, value): (&Open, &f64)| match &open.may_be {
            MayBe::Between(_, [low, high]) => (value - open.stand_in) / (high - low),
            MayBe::OneOf { .. } => f64::from(u8::from(*value != open.stand_in)),
        };
        self.project.open.iter().zip(point).map(along).map(|share| share * share).sum()
    }

    fn point_told(&self, place: usize) -> PointTold {
        let point = &self.points[place];
        let values = values_told(&self.project.open, point);
        let (mut governs, mut utilisation, mut fault) = (None, None, None);
        match &self.results[place] {
            Came::Unbuilt(sentence) => fault = Some(sentence.clone()),
            Came::To(_) => {
                // A trial may have stopped at the first place that fails; what governs is found by the whole sweep.
                if let Ok(project) = self.at(point) {
                    let trial = Trials::new().learn(&project);
                    governs = trial.governs.map(|check| check.id());
                    utilisation = trial.utilisation;
                }
            }
        }
        PointTold { values, governs, utilisation, fault }
    }

    /// Nothing is left to decide where everything that was tried agrees.
    fn settles(&self) -> Vec<Settles> {
        let holds = self.results.iter().filter(|came| came.holds()).count();
        if holds == 0 || holds == self.results.len() {
            return Vec::new();
        }
        let mut all: Vec<(f64, Settles)> = (0..self.project.open.len()).map(|input| self.settled_by(input)).collect();
        // Where two decide alike, the one whose parts lean further to one side comes first.
        crate::calc::order::put_in_order(&mut all, |a, b| {
            b.1.decides.total_cmp(&a.1.decides).then(b.0.total_cmp(&a.0))
        });
        all.into_iter().map(|(_, settles)| settles).collect()
    }

    fn settled_by(&self, input: usize) -> (f64, Settles) {
        let open = &self.project.open[input];
        let (decides, leaning, parts) = match &open.may_be {
            MayBe::Between(_, ends) => self.settled_by_range(input, *ends),
            MayBe::OneOf { places, .. } => self.settled_by_words(input, places),
        };
        let part = |&([from, to], held): &([f64; 2], Held)| Part {
            from: value_told(open, from),
            to: value_told(open, to),
            tried: held.tried,
            holds: held.holds,
        };
        (leaning, Settles { input, decides, parts: parts.iter().map(part).collect() })
    }

    fn settled_by_words(&self, input: usize, places: &[usize]) -> (f64, f64, Vec<([f64; 2], Held)>) {
        let word = |place: &usize| ([*place as f64; 2], self.held(input, |value| value == *place as f64));
        let parts: Vec<([f64; 2], Held)> = places.iter().map(word).collect();
        let agreed = parts.iter().filter(|(_, held)| held.agrees()).count();
        let (leaning, tried) = parts.iter().fold((0, 0), |sum, (_, held)| (sum.0 + held.most(), sum.1 + held.tried));
        (agreed as f64 / places.len() as f64, leaning as f64 / tried.max(1) as f64, parts)
    }

    /// From either end of a range as far as everything tried agrees, and what lies between.
    fn settled_by_range(&self, input: usize, [low, high]: [f64; 2]) -> (f64, f64, Vec<([f64; 2], Held)>) {
        let mut values: Vec<f64> = self.tried().map(|(point, _)| point[input]).collect();
        crate::calc::order::put_in_order(&mut values, f64::total_cmp);
        values.dedup();
        let agrees_to = |to: f64| self.held(input, |value| value <= to).agrees();
        let agrees_from = |from: f64| self.held(input, |value| value >= from).agrees();
        let below = values.iter().copied().take_while(|&value| agrees_to(value)).last();
        let above = values.iter().rev().copied().take_while(|&value| agrees_from(value)).last();
        let mut parts = Vec::new();
        let mut push = |ends: [f64; 2], held: Held| {
            if held.tried > 0 {
                parts.push((ends, held));
            }
        };
        let [from, to] = [below.unwrap_or(low), above.unwrap_or(high)];
        if below.is_some() {
            push([low, from], self.held(input, |value| value <= from));
        }
        let is_between =
            |value: f64| below.is_none_or(|below| value > below) && above.is_none_or(|above| value < above);
        push([from, to], self.held(input, is_between));
        if above.is_some() {
            push([to, high], self.held(input, |value| value >= to));
        }
        let middle = self.project.open[input].middle();
        let halves = [self.held(input, |value| value < middle), self.held(input, |value| value > middle)];
        let leaning = halves.iter().map(Held::most).sum::<usize>() as f64;
        let tried = halves.iter().map(|half| half.tried).sum::<usize>();
        let decided = (from - low) + (high - to);
        (decided / (high - low), leaning / tried.max(1) as f64, parts)
    }

    /// How many of the points with such values of an input were tried, and how many of those hold.
    fn held(&self, input: usize, is_such: impl Fn(f64) -> bool) -> Held {
        let mut held = Held { tried: 0, holds: 0 };
        for (point, came) in self.tried() {
            if is_such(point[input]) {
                held.tried += 1;
                held.holds += usize::from(came.holds());
            }
        }
        held
    }
}

#[derive(Clone, Copy)]
struct Held {
    tried: usize,
    holds: usize,
}

impl Held {
    fn agrees(&self) -> bool {
        self.holds == 0 || self.holds == self.tried
    }

    fn most(&self) -> usize {
        self.holds.max(self.tried - self.holds)
    }
}

/// Tries a built-in cabinet of whose bolts and concrete not all is known, and hashes what was found; the same on every
/// target. The cost gate counts it.
///
/// Zero says that nothing was left open, which a test holds to be impossible.
pub fn open_check() -> u32 {
    let open = built_in_of("{\"between\":[20,35]}", "{\"between\":[60,125]}");
    let Some(mut unknowns) = open.and_then(|project| Unknowns::new(&project)) else { return 0 };
    unknowns.finish();
    unknowns.results.iter().fold(HASH_START, |hash, came| {
        let used = if let Came::To(trial) = came { trial.utilisation } else { None };
        hashed(hash, used.unwrap_or(f64::NAN))
    })
}
