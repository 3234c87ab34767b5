//! The check values of base reactions, from `tests/values/statics`: supports, loads, and what each source prints of the
//! reactions. A print is met when the result differs by no more than half of its last digit.

use anyhow::{Context, ensure};
use serde_json::Value as Json;
use steadfoot::base_reactions::{Anchor, BaseLoad, Foot, Horizontal, Reactions, Supports, pivots, shear_shares};
use steadfoot::geometry::{Hull, Point, Rectangle, Size};

use super::Compared;
use super::block::{files, folder};

const MPA_OF_KSF: f64 = 0.047_880_258_980_336;
const N_OF_KIP: f64 = 4_448.221_615_260_5;

/// One source of base reactions.
pub struct Source {
    /// The block's name.
    pub block: String,
    /// What stands there.
    pub title: String,
    /// How far it can be trusted: the word before the colon of its source.
    pub trust: String,
    /// Where the numbers come from.
    pub source: String,
    /// All printed numbers.
    pub values: Vec<Printed>,
}

/// One printed number.
pub struct Printed {
    /// The load case of the block.
    pub case: String,
    /// What is read: `feet_kn`.
    pub name: String,
    /// Place in a list, from 1; 0 for a number alone.
    pub place: usize,
    /// The print beside what was found.
    pub compared: Compared,
}

/// All sources, in the order of their files.
pub fn sources() -> anyhow::Result<Vec<Source>> {
    let read = |(file, text): (String, String)| -> anyhow::Result<Source> {
        let block: Json = serde_json::from_str(&text).with_context(|| format!("tests/values/statics/{file}"))?;
        source(&block).with_context(|| format!("tests/values/statics/{file}"))
    };
    files(&folder().join("statics"))?.into_iter().map(read).collect()
}

fn source(block: &Json) -> anyhow::Result<Source> {
    let text = |key: &str| block[key].as_str().map(String::from).with_context(|| format!("the block has no {key}"));
    let whole = text("source")?;
    let (trust, source) = whole.split_once(": ").context("a source begins with how far it can be trusted")?;
    let mut values = Vec::new();
    for case in block["cases"].as_array().context("the block has no cases")? {
        let case_name = case["name"].as_str().unwrap_or_default();
        for (name, printed) in case["expect"].as_object().context("the case expects nothing")? {
            let found = found(block, case, name);
            let prints = printed.as_array().map_or(std::slice::from_ref(printed), Vec::as_slice);
            ensure!(prints.len() == found.len(), "{case_name}: {name} has {} numbers", found.len());
            for (place, (print, found)) in prints.iter().zip(found).enumerate() {
                let print = print.as_str().context("a print is a text")?;
                let compared = Compared::new(print, found).map_err(anyhow::Error::msg)?;
                let place = if printed.is_array() { place + 1 } else { 0 };
                values.push(Printed { case: case_name.into(), name: name.clone(), place, compared });
            }
        }
    }
    Ok(Source { block: text("block")?, title: text("title")?, trust: trust.into(), source: source.into(), values })
}

fn found(block: &Json, case: &Json, name: &str) -> Vec<f64> {
    if name.starts_with("pivot") {
        return vec![by_hand(block, case, name)];
    }
    if case.get("horizontal_n").is_some() {
        return vec![by_shear(block, case, name)];
    }
    let supports = supports(block, case);
    if let Some(step_deg) = case["swept_deg"].as_f64() {
        let steps = (45.0 / step_deg) as usize;
        let at = |step: usize| (step as f64 * step_deg, settled(&supports, case, step as f64 * step_deg));
        let worst = |of: fn(&Reactions) -> f64| {
            (0..=steps).map(at).max_by(|a, b| of(&a.1).total_cmp(&of(&b.1))).map(|(deg, r)| (deg, of(&r))).unwrap()
        };
        return vec![match name {
            "tension_max_kn" => worst(Reactions::tension_max_n).1 / 1e3,
            "tension_max_at_deg" => worst(Reactions::tension_max_n).0,
            "compression_max_kn" => worst(Reactions::compression_max_n).1 / 1e3,
            _ => panic!("no reading for {name}"),
        }];
    }
    let reactions = settled(&supports, case, case["direction_deg"].as_f64().unwrap_or(0.0));
    let peak_mpa = reactions.feet.iter().fold(0.0, |most: f64, foot| most.max(foot.peak_pressure_mpa));
    let mut pulls = reactions.anchors_n.clone();
    pulls.sort_by(|a, b| b.total_cmp(a));
    match name {
        "feet_kn" => reactions.feet.iter().map(|foot| foot.force_n / 1e3).collect(),
        "anchors_kn" => reactions.anchors_n.iter().map(|pull| pull / 1e3).collect(),
        "contact_m2" => {
            let area = |foot: &Foot| foot.area_mm2() / 1e6;
            supports
                .feet()
                .iter()
                .zip(&reactions.feet)
                .map(|(foot, found)| area(foot) * found.contact_fraction)
                .collect()
        }
        "tension_max_kn" => vec![reactions.tension_max_n() / 1e3],
        "tension_max_n" => vec![reactions.tension_max_n()],
        "tension_max_kip" => vec![reactions.tension_max_n() / N_OF_KIP],
        "tension_least_kip" => vec![pulls[pulls.len() - 1] / N_OF_KIP],
        "tension_second_kn" => vec![pulls[1] / 1e3],
        "tension_second_n" => vec![pulls[1]],
        "compression_max_kn" => vec![reactions.compression_max_n() / 1e3],
        "peak_kpa" => vec![peak_mpa * 1e3],
        "peak_kpa_over_1000" => vec![peak_mpa],
        "peak_ksf" => vec![peak_mpa / MPA_OF_KSF],
        _ => panic!("no reading for {name}"),
    }
}

fn supports(block: &Json, case: &Json) -> Supports {
    let feet: Vec<Foot> = parts(block, "feet")
        .map(|foot| Foot {
            at: point(&foot["at_mm"]),
            half: Size::new(foot["half_mm"][0].as_f64().unwrap(), foot["half_mm"][1].as_f64().unwrap()),
            stiffness_n_per_mm: foot["stiffness_n_per_mm"].as_f64().unwrap(),
        })
        .collect();
    let mut anchors = anchors(block);
    if let Some(kappa) = case["kappa"].as_f64() {
        anchors.iter_mut().for_each(|anchor| anchor.stiffness_n_per_mm = feet[0].stiffness_n_per_mm / kappa);
    }
    Supports::new(&feet, &anchors)
}

fn settled(supports: &Supports, case: &Json, direction_deg: f64) -> Reactions {
    let load = load(case, direction_deg);
    supports.settle(&load).unwrap_or_else(|why| panic!("{}: {why:?}", case["name"]))
}

fn load(case: &Json, direction_deg: f64) -> BaseLoad {
    if let Some(down_n) = case["down_n"].as_f64() {
        let moment = |index: usize| case["moment_nm"][index].as_f64().unwrap() * 1e3;
        return BaseLoad { down_n, moment_x_nmm: moment(0), moment_y_nmm: moment(1) };
    }
    let down_n = case["down_kn"].as_f64().unwrap() * 1e3;
    let at = case.get("at_mm").map_or(Point::default(), point);
    let moment_nmm = case["moment_knm"].as_f64().unwrap_or(0.0) * 1e6;
    let (sin, cos) = direction_deg.to_radians().sin_cos();
    BaseLoad {
        down_n,
        moment_x_nmm: down_n * at.x_mm + moment_nmm * cos,
        moment_y_nmm: down_n * at.y_mm + moment_nmm * sin,
    }
}

fn by_hand(block: &Json, case: &Json, name: &str) -> f64 {
    let half_mm = case["plan_half_mm"].as_f64().unwrap();
    let plan = Hull::new(&Rectangle::around(Point::default(), Size::new(half_mm, half_mm)).corners());
    let anchors = anchors(block);
    let pivots = pivots(&plan, &anchors, &load(case, 0.0));
    let worst = pivots.iter().max_by(|a, b| a.tension_max_n.total_cmp(&b.tension_max_n)).unwrap();
    let tensions = anchors.iter().map(|anchor| worst.tension_n(anchor));
    let in_the_far_row =
        anchors.iter().filter(|anchor| worst.edge.distance_mm(anchor.at) == worst.lever_max_mm).count();
    match name {
        "pivot_far_n" => worst.tension_max_n,
        "pivot_near_n" => tensions.fold(f64::INFINITY, f64::min),
        "pivot_far_alone_n" => worst.excess_nmm / (worst.lever_max_mm * in_the_far_row as f64),
        _ => panic!("no reading for {name}"),
    }
}

fn by_shear(block: &Json, case: &Json, name: &str) -> f64 {
    let anchors: Vec<(Point, f64)> = anchors(block).iter().map(|anchor| (anchor.at, 1.0)).collect();
    let force = Horizontal {
        x_n: 0.0,
        y_n: case["horizontal_n"].as_f64().unwrap(),
        at: Point::new(case["offset_mm"].as_f64().unwrap(), 0.0),
    };
    let shares = shear_shares(&anchors, &force).unwrap();
    let most_n = || shares.shares.iter().fold(0.0, |most: f64, share| most.max(share.size_n()));
    match name {
        "twist_nm" => shares.twist_nmm / 1e3,
        "polar_m2" => shares.polar / 1e6,
        "shear_max_n" => most_n(),
        "shear_least_n" => shares.shares.iter().fold(f64::INFINITY, |least, share| least.min(share.size_n())),
        "shear_max_kn" => most_n() / 1e3,
        _ => panic!("no reading for {name}"),
    }
}

fn anchors(block: &Json) -> Vec<Anchor> {
    let anchor = |anchor: &Json| Anchor {
        at: point(&anchor["at_mm"]),
        stiffness_n_per_mm: anchor["stiffness_n_per_mm"].as_f64().unwrap(),
    };
    parts(block, "anchors").map(anchor).collect()
}

fn parts<'a>(block: &'a Json, name: &str) -> impl Iterator<Item = &'a Json> {
    block.get(name).and_then(Json::as_array).into_iter().flatten()
}

fn point(value: &Json) -> Point {
    Point::new(value[0].as_f64().unwrap(), value[1].as_f64().unwrap())
}
