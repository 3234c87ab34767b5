//! Runs a block of motion: rocking, sliding, oscillators, and standing by weight and friction.
//!
//! Input: `ask` says what; `body` is a rectangle of `half_width` and `half_height`, or `mass`, `inertia`, `height`, `right`
//! and `left`; `side` ("right" or "left"), `impulse` (1 where absent), `free_fall` (a number in mm/s2, the standard one where
//! absent), `release_over_alpha`; `pulse` has `form`, `amplitude` (g) and `duration` (s), or `record` is a file; `factor`.
//!
//! Answers: the steps told, by their symbols (an indexed one with its place behind it), and what is followed in time in
//! words.

use serde_json::Value as Json;
use steadfoot::calc::{CheckId, Kind, Part, Section, Sheet, Subject, System};
use steadfoot::checks::other_tests::other_tests;
use steadfoot::checks::stability::Tested;
use steadfoot::checks::thresholds::{Stand, thresholds};
use steadfoot::frame::{Cantilevers, cantilever_period_s};
use steadfoot::geometry::{Hull, Point};
use steadfoot::motion::code_spectrum::Beside;
use steadfoot::motion::{
    CodeSpectrum, End, FREE_FALL_MM_PER_S2, Following, FreeRocking, Grip, GroundMotion, MassAndReach, Method,
    Oscillator, Pulse, PulseForm, Record, RecordForm, RecordUnit, Rocked, Rocking, RockingBody, Scaled, Side,
    SlidingEstimate, SpectrumSetting, criteria, first_fall, free_rocking, half_sine_that_overturns, read_record,
    rectangle_that_overturns, response, rock, rocking_angle, rocking_capacity, slide, slide_of_pulse_mm,
    sliding_distance_mm,
};
use steadfoot::report::text_tables::text;
use steadfoot::rules::demand::demand_rule;

use super::{Answers, Found, Ran, field_values, quantity};

/// The answers for an input with their working.
pub fn told(input: &Json) -> Result<Ran, String> {
    let mut sheet = Sheet::told();
    sheet.open(Part::StandingFree, Subject::Whole, None, System::Si);
    let mut answers = Answers::new();
    ask(&Asked { input }, &mut sheet, &mut answers)?;
    tell(&sheet.sections, &mut answers)?;
    Ok(Ran { answers, sections: sheet.sections })
}

fn ask(asked: &Asked, sheet: &mut Sheet, answers: &mut Answers) -> Result<(), String> {
    let input = asked.input;
    match input["ask"].as_str().unwrap_or("") {
        "body" => {
            let body = asked.body_told(sheet)?;
            body.tell(asked.side(), asked.impulse(), sheet);
        }
        "free rocking" => {
            let body = asked.body()?;
            let edge = body.edge(asked.side());
            let start = FreeRocking {
                p_rad_per_s: edge.p_rad_per_s,
                alpha_rad: edge.alpha_rad,
                release_rad: asked.number("release_over_alpha")? * edge.alpha_rad,
                restitution: body.restitution(asked.side(), asked.impulse()),
                impacts: input["impacts"].as_u64().unwrap_or(0) as usize,
            };
            let rocked = free_rocking(&start, sheet);
            put(answers, "quarter", rocked.period_s / 4.0, Kind::Time);
            impacts(answers, &rocked.impacts_s);
        }
        "rectangle" => {
            rectangle_that_overturns(asked.number("height")?, sheet);
        }
        "half sine" => {
            half_sine_that_overturns(asked.number("quickness")?, sheet);
        }
        "rocking" => {
            let body = asked.body()?;
            let release_rad = input["release_over_alpha"].as_f64().unwrap_or(0.0) * body.edge(Side::Right).alpha_rad;
            let following = Following { impulse: asked.impulse(), release_rad, ..Following::USUAL };
            let motion = asked.motion()?;
            let factor = input["factor"].as_f64().unwrap_or(1.0);
            let motion = Scaled { motion: &*motion, horizontal: factor, vertical: 1.0 };
            rocked(answers, &rock(&body, &motion, &following, &mut |_, _| {}));
        }
        "least that overturns" => {
            let following = Following { impulse: asked.impulse(), ..Following::USUAL };
            let ends = [asked.number("from")?, asked.number("to")?];
            let fall = first_fall(&asked.body()?, &*asked.motion()?, &following, ends).ok_or("it never falls")?;
            put(answers, "falls at", fall.factor, Kind::Number);
        }
        "criteria" => {
            criteria(&asked.body()?, asked.side(), input["floor_hz"].as_f64(), sheet);
        }
        "approximate rocking" => {
            let body = asked.body()?;
            let angle = match input["angle_over_alpha"].as_f64() {
                Some(ratio) => Rocking::At(ratio * body.edge(asked.side()).alpha_rad),
                None => {
                    let record = asked.record()?;
                    let factor = asked.number("factor")?;
                    let demand = |frequency_hz: f64, damping: f64| {
                        factor * response(&record, 1.0 / frequency_hz, &asked.setting(damping)).acceleration
                    };
                    rocking_angle(&body, asked.side(), 1.0, &demand).ok_or("it falls")?
                }
            };
            if let Rocking::Found { angle_rad, .. } = angle {
                put(answers, "angle over alpha", angle_rad / body.edge(asked.side()).alpha_rad, Kind::Number);
            }
            rocking_capacity(&body, asked.side(), angle, 1.0, sheet);
        }
        "approximate sliding" => {
            let record = asked.record()?;
            let estimate = SlidingEstimate {
                friction: asked.number("friction")?,
                vertical: 0.0,
                free_fall_mm_per_s2: asked.free_fall(),
            };
            let demand = |frequency_hz: f64| response(&record, 1.0 / frequency_hz, &asked.setting(0.1)).acceleration;
            sliding_distance_mm(&estimate, &demand, sheet).ok_or("the spectrum stays below")?;
        }
        "sliding" => {
            let friction = asked.number("friction")?;
            let grip = Grip { standing: friction, sliding: friction, free_fall_mm_per_s2: asked.free_fall() };
            let slid = slide(&grip, &*asked.motion()?);
            put(answers, "peak", slid.peak_mm, Kind::Length);
            put(answers, "residual", slid.residual_mm, Kind::Length);
            if input["pulse"]["form"] == "rectangle" {
                let amplitude = input["pulse"]["amplitude"].as_f64().ok_or("amplitude")?;
                let duration_s = input["pulse"]["duration"].as_f64().ok_or("duration")?;
                slide_of_pulse_mm(&grip, amplitude, duration_s, sheet);
            }
        }
        "code spectrum" => {
            let rule = demand_rule(input["site"]["rule"].as_str().unwrap_or("")).ok_or("no rule of this id")?;
            let values = field_values(rule.fields, &input["site"])?;
            let beside = Beside { damping: asked.number("damping")?, corner_s: input["corner"].as_f64() };
            let spectrum = CodeSpectrum::of(rule, &values, &beside, sheet).map_err(|_| "it has no spectrum")?;
            for period_s in input["periods"].as_array().into_iter().flatten() {
                let period_s = period_s.as_f64().ok_or("a period is a number")?;
                let found = spectrum.at(period_s, sheet).ok_or("the corners are open")?;
                put(answers, &format!("at {period_s} s"), found, Kind::Acceleration);
            }
        }
        "posts alone" => {
            let posts = Cantilevers {
                posts: asked.number("posts")?,
                modulus_mpa: quantity(&input["modulus"], Kind::Stress)?,
                inertia_mm4: quantity(&input["inertia"], Kind::SecondMoment)?,
                height_mm: quantity(&input["height"], Kind::Length)?,
                top_kg: quantity(&input["top"], Kind::Mass)?,
                even_kg: quantity(&input["even"], Kind::Mass)?,
            };
            put(answers, "frequency", 1.0 / cantilever_period_s(&posts, sheet), Kind::Frequency);
        }
        "oscillator" => oscillator(asked, answers)?,
        "spectrum" => {
            let record = asked.record()?;
            let found = response(&record, asked.number("period")?, &asked.setting(asked.number("damping")?));
            put(answers, "displacement", found.displacement_mm, Kind::Length);
            put(answers, "acceleration", found.acceleration, Kind::Acceleration);
        }
        "record" => {
            let facts = asked.record()?.facts();
            put(answers, "values", asked.record()?.accelerations.len() as f64, Kind::Number);
            put(answers, "duration", facts.duration_s, Kind::Time);
            put(answers, "lowest", facts.ends[0], Kind::Acceleration);
            put(answers, "highest", facts.ends[1], Kind::Acceleration);
            put(answers, "lowest at", facts.ends_s[0], Kind::Time);
            put(answers, "highest at", facts.ends_s[1], Kind::Time);
            put(answers, "velocity", facts.velocity_mm_per_s, Kind::Velocity);
        }
        "thresholds" => {
            let length = |key: &str| quantity(&input[key], Kind::Length);
            let stand = Stand {
                mass_kg: quantity(&input["mass"], Kind::Mass)?,
                height_mm: length("height")?,
                reach_mm: length("reach")?,
                friction: asked.number("friction")?,
                vertical: asked.number("vertical")?,
                slope_rad: quantity(&input["slope"], Kind::Angle)?,
                push_height_mm: length("push_height")?,
            };
            thresholds(&stand, sheet);
        }
        "stability test" => {
            let length = |key: &str| quantity(&input[key], Kind::Length);
            let (width, depth, height_mm) = (length("width")?, length("depth")?, length("height")?);
            let corners = [(-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5)];
            let outline: Vec<Point> = corners.map(|(x, y)| Point::new(x * width, y * depth)).into();
            let hull = Hull::new(&outline);
            let centre_mm = [0.0, 0.0, length("centre")?];
            let mass_kg = quantity(&input["mass"], Kind::Mass)?;
            let tested = Tested { hull: &hull, mass_kg, centre_mm, height_mm, outline };
            for check in [CheckId::FreeTilt, CheckId::FreePush] {
                tested.check(check, &tested.worst(check), sheet);
            }
            other_tests(&tested, &tested.worst(CheckId::FreePush), sheet);
        }
        other => return Err(format!("motion is not asked for \"{other}\"")),
    }
    Ok(())
}

struct Asked<'j> {
    input: &'j Json,
}

impl Asked<'_> {
    fn number(&self, key: &str) -> Result<f64, String> {
        self.input[key].as_f64().ok_or_else(|| format!("{key} is no number"))
    }

    fn free_fall(&self) -> f64 {
        self.input["free_fall"].as_f64().unwrap_or(FREE_FALL_MM_PER_S2)
    }

    fn impulse(&self) -> f64 {
        self.input["impulse"].as_f64().unwrap_or(1.0)
    }

    fn side(&self) -> Side {
        if self.input["side"] == "left" { Side::Left } else { Side::Right }
    }

    fn body(&self) -> Result<RockingBody, String> {
        self.body_told(&mut Sheet::quiet())
    }

    fn body_told(&self, sheet: &mut Sheet) -> Result<RockingBody, String> {
        let given = &self.input["body"];
        let length = |key: &str| quantity(&given[key], Kind::Length);
        if given.get("half_width").is_some() {
            let (half_width, half_height) = (length("half_width")?, length("half_height")?);
            let given = MassAndReach {
                mass_kg: 1.0,
                inertia_kgmm2: (half_width * half_width + half_height * half_height) / 3.0,
                height_mm: half_height,
                right_mm: half_width,
                left_mm: half_width,
                free_fall_mm_per_s2: self.free_fall(),
            };
            return Ok(RockingBody::of(&given, sheet));
        }
        let given = MassAndReach {
            mass_kg: quantity(&given["mass"], Kind::Mass)?,
            inertia_kgmm2: quantity(&given["inertia"], Kind::Inertia)?,
            height_mm: length("height")?,
            right_mm: length("right")?,
            left_mm: length("left")?,
            free_fall_mm_per_s2: self.free_fall(),
        };
        Ok(RockingBody::of(&given, sheet))
    }

    fn motion(&self) -> Result<Box<dyn GroundMotion>, String> {
        let pulse = &self.input["pulse"];
        if pulse.is_null() {
            return Ok(Box::new(self.record()?));
        }
        let form = match pulse["form"].as_str() {
            Some("rectangle") => PulseForm::Rectangle,
            Some("half sine") => PulseForm::HalfSine,
            Some("one sine") => PulseForm::OneSine,
            Some("one cosine") => PulseForm::OneCosine,
            other => return Err(format!("no pulse is called {other:?}")),
        };
        let amplitude = pulse["amplitude"].as_f64().ok_or("a pulse without amplitude")?;
        let duration_s = pulse["duration"].as_f64().ok_or("a pulse without duration")?;
        Ok(Box::new(Pulse { form, amplitude, duration_s }))
    }

    /// The record of a file, which only those tests have that fetched it.
    fn record(&self) -> Result<Record, String> {
        let path = self.input["record"].as_str().ok_or("neither pulse nor record")?;
        let text = std::fs::read_to_string(path).map_err(|error| format!("{path}: {error}"))?;
        let form = RecordForm { unit: RecordUnit::G, step_s: None };
        read_record(&text, &form).map_err(|faults| faults[0].sentence())
    }

    fn setting(&self, damping: f64) -> SpectrumSetting {
        let looks = self.input["looks"].as_u64().unwrap_or(1) as usize;
        SpectrumSetting { damping, free_fall_mm_per_s2: self.free_fall(), looks }
    }
}

fn oscillator(asked: &Asked, answers: &mut Answers) -> Result<(), String> {
    let input = asked.input;
    let (mass, stiffness, step_s) = (asked.number("mass")?, asked.number("stiffness")?, asked.number("step")?);
    let oscillator = Oscillator { omega_rad_per_s: (stiffness / mass).sqrt(), damping: asked.number("damping")? };
    let load: Vec<f64> = input["load"].as_array().ok_or("no load")?.iter().filter_map(Json::as_f64).collect();
    let statics: Vec<f64> = load.iter().map(|force| force / stiffness).collect();
    let method = match input["method"].as_str() {
        Some("exact") => Method::Exact,
        Some("central difference") => Method::CentralDifference,
        Some("average acceleration") => Method::AverageAcceleration,
        Some("linear acceleration") => Method::LinearAcceleration,
        other => return Err(format!("no method is called {other:?}")),
    };
    for (place, [u, v]) in oscillator.response(&statics, step_s, method).into_iter().enumerate() {
        put(answers, &format!("u {place}"), u, Kind::Number);
        put(answers, &format!("v {place}"), v, Kind::Number);
    }
    let recurrence = oscillator.recurrence(step_s);
    for (place, name) in ["A", "B", "C", "D"].into_iter().enumerate() {
        // The book's loads are forces, the engine's are displacements of the spring.
        let per_load = if place < 2 { 1.0 } else { 1.0 / stiffness };
        put(answers, name, recurrence.displacement[place] * per_load, Kind::Number);
        put(answers, &format!("{name}'"), recurrence.velocity[place] * per_load, Kind::Number);
    }
    Ok(())
}

fn rocked(answers: &mut Answers, rocked: &Rocked) {
    let is = |end: End| if rocked.end == end { 1.0 } else { 0.0 };
    put(answers, "lifts", 1.0 - is(End::NeverLifts), Kind::Number);
    put(answers, "falls", is(End::Overturns), Kind::Number);
    put(answers, "recovers", is(End::Recovers), Kind::Number);
    put(answers, "ends at", rocked.end_s, Kind::Time);
    put(answers, "peak", rocked.peak_rad, Kind::Angle);
    put(answers, "peak over alpha", rocked.peak_ratio, Kind::Number);
    put(answers, "peak at", rocked.peak_s, Kind::Time);
    put(answers, "impacts", rocked.impacts as f64, Kind::Number);
    impacts(answers, &rocked.impacts_s);
}

fn impacts(answers: &mut Answers, times_s: &[f64]) {
    for (place, &time_s) in times_s.iter().enumerate() {
        put(answers, &format!("impact {}", place + 1), time_s, Kind::Time);
    }
}

fn put(answers: &mut Answers, name: &str, value: f64, kind: Kind) {
    answers.insert(name.to_string(), Found { value, kind });
}

fn tell(sections: &[Section], answers: &mut Answers) -> Result<(), String> {
    for section in sections {
        for step in &section.steps {
            let row = text(step.id).ok_or("a step without a text")?;
            let value = section.system.to_si(step.value, row.kind);
            let name = if step.index > 0 { format!("{} {}", row.symbol, step.index) } else { row.symbol.to_string() };
            answers.entry(name).or_insert(Found { value, kind: row.kind });
        }
    }
    Ok(())
}
