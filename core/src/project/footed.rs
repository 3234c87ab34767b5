//! The feet of a project on its slab, and the supports that feet and anchors make.

use alloc::vec::Vec;

use super::Project;
use super::bench::STIFFNESS_FACTORS;
use crate::base_reactions::{self, Supports};
use crate::calc::{Sheet, System};
use crate::checks::feet::{FootOnSlab, Surroundings, spread};
use crate::checks::floor::FloorSite;
use crate::checks::stiffness::{FootStiffness, anchored_n_per_mm};
use crate::floor::{Floor, FloorKind, Reinforcement};
use crate::geometry::{Point, Rectangle, Size};
use crate::rules::anchor::PreparedAnchors;

/// The feet with the concrete around them; none without a slab.
pub(super) fn feet_on_slab(project: &Project) -> Vec<FootOnSlab> {
    let Some(slab) = &project.slab else { return Vec::new() };
    let half = |size: Size| Size::new(size.x_mm / 2.0, size.y_mm / 2.0);
    let places: Vec<(Point, Size)> = project.cabinet.feet.iter().map(|foot| (foot.at, half(foot.size))).collect();
    let outline = &slab.outline;
    let around = Surroundings {
        edges_mm: [-outline.left_mm, outline.right_mm, -outline.front_mm, outline.rear_mm],
        thickness_mm: slab.thickness_mm,
        feet: &places,
    };
    let system = project.anchorage.as_ref().map_or(System::Si, |anchorage| anchorage.rule.system);
    let is_plain = |floor: &Floor| floor.kind() == FloorKind::OnGround && floor.reinforcement() == Reinforcement::Plain;
    let is_plain = project.floor.as_ref().is_some_and(is_plain);
    places
        .iter()
        .enumerate()
        .map(|(number, (at, half))| {
            // An opening beside a foot ends the spread of its load as an edge does.
            let room = slab.room_mm(&Rectangle::around(*at, *half));
            let beyond = spread(number, &around);
            FootOnSlab {
                number: number as u16,
                half: *half,
                beyond: Size::new(beyond.x_mm.min(room[0]).min(room[1]), beyond.y_mm.min(room[2]).min(room[3])),
                strength_mpa: slab.strength_mpa,
                is_plain,
                system,
            }
        })
        .collect()
}

/// The cabinet on its floor; none where no floor or no slab is given.
pub(super) fn floor_site(project: &Project) -> Option<FloorSite<'_>> {
    let (slab, floor) = (project.slab.as_ref()?, project.floor.as_ref()?);
    let beyond: Vec<Size> = feet_on_slab(project).iter().map(|foot| foot.beyond).collect();
    Some(FloorSite::new(&project.cabinet, slab, floor, &beyond))
}

/// The foot whose corner of the slab an anchor shares: the nearest one.
fn nearest_foot(project: &Project, at: Point) -> Option<usize> {
    let feet = project.cabinet.feet.iter().enumerate();
    let nearest = feet.fold(None, |best: Option<(usize, f64)>, (place, foot)| {
        let away = foot.at.distance_mm(at);
        if best.is_none_or(|(_, known)| away < known) { Some((place, away)) } else { best }
    });
    nearest.map(|(place, _)| place)
}

/// The stiffness of an anchor in series with its clip and the slab on the ground, told in the open section.
///
/// The slab gives way under foot and anchor of one corner alike.
pub(super) fn anchored(project: &Project, place: usize, by_rule: f64, sheet: &mut Sheet) -> f64 {
    let anchor = &project.cabinet.anchors[place];
    let slab = floor_site(project)
        .zip(nearest_foot(project, anchor.at))
        .and_then(|(site, foot)| site.stiffness_n_per_mm(foot, &mut Sheet::quiet()));
    anchored_n_per_mm(by_rule, anchor.clip_stiffness_n_per_mm, slab, sheet)
}

/// The feet as far as their stiffness goes.
pub(super) fn foot_stiffnesses(project: &Project) -> Vec<FootStiffness> {
    let modulus = project.anchorage.as_ref().map(|anchorage| anchorage.rule.concrete_modulus_mpa);
    let concrete_mpa = match (modulus, &project.slab) {
        (Some(modulus), Some(slab)) => Some(modulus(slab.strength_mpa)),
        _ => None,
    };
    let site = floor_site(project);
    let mut feet = Vec::new();
    for (number, foot) in project.cabinet.feet.iter().enumerate() {
        feet.push(FootStiffness {
            number: number as u16,
            given_n_per_mm: foot.stiffness_n_per_mm,
            size: foot.size,
            stem_mm: foot.stem.map(|stem| (stem.diameter_mm, stem.length_mm)),
            pad_n_per_mm: foot.pad_stiffness_n_per_mm,
            slab_n_per_mm: site.as_ref().and_then(|site| site.stiffness_n_per_mm(number, &mut Sheet::quiet())),
            concrete_mpa,
        });
    }
    feet
}

/// The supports as given, and, where a default was needed, with anchors four times softer and four times stiffer.
pub(super) fn supports(project: &Project, prepared: Option<&dyn PreparedAnchors>) -> Vec<Supports> {
    let mut stiffness: Vec<f64> = Vec::new();
    for foot in foot_stiffnesses(project) {
        stiffness.push(foot.stiffness_n_per_mm(&mut Sheet::quiet()));
    }
    let feet: Vec<base_reactions::Foot> = project
        .cabinet
        .feet
        .iter()
        .zip(&stiffness)
        .map(|(foot, &stiffness_n_per_mm)| base_reactions::Foot {
            at: foot.at,
            half: Size::new(foot.size.x_mm / 2.0, foot.size.y_mm / 2.0),
            stiffness_n_per_mm,
        })
        .collect();
    let mut is_all_given = project.cabinet.feet.iter().all(|foot| foot.stiffness_n_per_mm.is_some());
    let softest = stiffness.iter().copied().fold(f64::INFINITY, f64::min);
    let anchors: Vec<base_reactions::Anchor> = project
        .cabinet
        .anchors
        .iter()
        .enumerate()
        .map(|(place, anchor)| {
            is_all_given &= anchor.stiffness_n_per_mm.is_some();
            let by_rule = || {
                let alone = prepared.map(|prepared| prepared.stiffness_n_per_mm(place, &mut Sheet::quiet()));
                alone.map(|alone| anchored(project, place, alone, &mut Sheet::quiet()))
            };
            // Without a rule there is no embedment: the anchor is then taken as stiff as the softest foot, which the
            // span around it makes plain.
            let stiffness_n_per_mm =
                anchor.stiffness_n_per_mm.or_else(by_rule).unwrap_or(if softest.is_finite() { softest } else { 1e5 });
            base_reactions::Anchor { at: anchor.at, stiffness_n_per_mm }
        })
        .collect();
    let mut given = Supports::new(&feet, &anchors);
    if project.cabinet.feet.iter().any(|foot| foot.gap_mm > 0.0) {
        let gaps: Vec<f64> = project.cabinet.feet.iter().map(|foot| foot.gap_mm).collect();
        given = given.with_gaps_mm(&gaps);
    }
    if is_all_given || anchors.is_empty() {
        return alloc::vec![given];
    }
    STIFFNESS_FACTORS.iter().map(|&factor| given.with_anchor_stiffness_scaled(factor)).collect()
}
