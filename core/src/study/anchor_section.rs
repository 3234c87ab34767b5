//! A section through the bolts that are pulled hardest, and a plan of what they would break out, to scale.

use alloc::vec;
use alloc::vec::Vec;

use super::breakout_profile::{Cut, profiles};
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Kind, StepId, steps};
use crate::explore::{Hole, holes, is_by_report};
use crate::geometry::{Point, Polygon, Rectangle};
use crate::project::{Project, assess, scene};
use crate::report::drawing::Scene;
use crate::report::figure::{Figure, FigurePart};
use crate::report::plot::PlotName;
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 95 "section through anchors";
    SECTION "" Number (INPUT "anchorage" Derived) "Section through the bolts that are pulled": Name;
    PLAN "" Number (INPUT "anchorage" Derived) "Plan of the concrete that would break out": Name;
    AREAS "" Number (STATICS "" Derived) "projected areas": Name;
    BODY "" Number (STATICS "" Derived) "body": Name;
    BOLTS "" Number (STATICS "" Derived) "bolts in it": Name;
    AREA "" Number (STATICS "" Derived) "projected area, united and cut": Name;
    ALONE "" Number (STATICS "" Derived) "area of its bolts if each stood alone, far from edges": Name;
    PART "" Number (STATICS "" Derived) "what is left of it": Name;
    SURFACE "" Number (INPUT "slab" Derived) "surface of the concrete": Name;
    UNDERSIDE "" Number (INPUT "slab" Derived) "underside": Name;
    EDGE "" Number (INPUT "slab" Derived) "edge": Name;
    PULL "" Number (STATICS "base reactions" Derived) "pull": Name;
    HARDEST "" Number (STATICS "base reactions" Derived) "drawn for the load case and direction in which breakout in tension governs; other directions pull other bolts": Reason;
    SLOPE "" Number (STATICS "" Derived) "the bodies rise from the heads by one in one and a half and are cut at edges; near three edges the equations take a smaller depth than the one that is drawn": Reason;
    NO_PULL "" Number (STATICS "base reactions" Derived) "no bolt is pulled in any load case, so nothing would break out": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "anchor-section", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "anchor-section",
    title: "What would break out of the concrete?",
    help: "A section through the bolts and a plan of the projected areas of breakout in tension, both to scale, as they are \
           counted: united where they overlap, cut off where the slab ends.",
    steps: &[&TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let report = assess(project);
    let check = report.checks.iter().find(|check| check.id == CheckId::AnchorTensionBreakout.id());
    let at = check.and_then(|check| check.at).ok_or(NO_PULL)?;
    let scene = scene(project, Some(&at));
    let holes = holes(project);
    let pulled: Vec<usize> =
        (0..holes.len()).filter(|&place| scene.anchors[place].tension_n.is_some_and(|pull| pull > 0.0)).collect();
    let hardest = pulled.iter().copied().max_by(|&a, &b| {
        let pull = |place: usize| scene.anchors[place].tension_n.unwrap_or(0.0);
        pull(a).total_cmp(&pull(b))
    });
    let (Some(hardest), false) = (hardest, scene.breakouts.is_empty()) else { return Err(NO_PULL) };
    let section = section(project, &scene, &holes, &pulled, hardest);
    let pictures = section.into_iter().chain([plan(&scene, &holes, &pulled)]).map(Picture::Figure).collect();
    let tables = vec![areas(&scene.breakouts, &holes, &pulled)];
    Ok(Shown { notes: vec![HARDEST, SLOPE], tables, pictures, sections: Vec::new() })
}

/// The plane of the section runs through the bolt that is pulled hardest, square to the edge that is nearest to it.
fn section(project: &Project, scene: &Scene, holes: &[Hole], pulled: &[usize], hardest: usize) -> Option<Figure> {
    let thickness_mm = project.slab.as_ref()?.thickness_mm;
    let hole = &holes[hardest];
    let nearest = (0..4).min_by(|&a, &b| hole.edges_mm[a].total_cmp(&hole.edges_mm[b]))?;
    // Along the section: from left to right or, for a front or rear edge, from front to rear.
    let is_across = nearest < 2;
    let along = |at: Point| if is_across { at.x_mm } else { at.y_mm };
    let beside = |at: Point| if is_across { at.y_mm } else { at.x_mm };
    let cuts: Vec<Cut> = pulled
        .iter()
        .filter_map(|&place| {
            let depth_mm = holes[place].embedment_mm?;
            let off_mm = (beside(holes[place].at) - beside(hole.at)).abs();
            (off_mm < REACH * depth_mm).then_some(Cut { along_mm: along(holes[place].at), off_mm, depth_mm })
        })
        .collect();
    let cuts = together(cuts, along(hole.at));
    let own = cuts.iter().find(|cut| cut.off_mm == 0.0 && cut.along_mm == along(hole.at)).copied()?;
    let slab = &scene.slab;
    let edges = if is_across { [slab.left_mm, slab.right_mm] } else { [slab.front_mm, slab.rear_mm] };
    let reach_mm = cuts.iter().fold(0.0, |reach: f64, cut| reach.max(REACH * cut.depth_mm));
    let first_mm = cuts.iter().fold(f64::INFINITY, |least, cut| least.min(cut.along_mm));
    let last_mm = cuts.iter().fold(f64::NEG_INFINITY, |most, cut| most.max(cut.along_mm));
    let margin_mm = 0.4 * thickness_mm;
    let from_mm = edges[0].max(first_mm - reach_mm - margin_mm);
    let to_mm = edges[1].min(last_mm + reach_mm + margin_mm);
    let mut parts = Vec::new();
    for corners_mm in profiles(&cuts, [from_mm.max(edges[0]), to_mm.min(edges[1])]) {
        parts.push(FigurePart::Outline { class: "hatched", corners_mm });
    }
    let line = |class, ends_mm| FigurePart::Line { class, ends_mm };
    parts.push(line("strong", [[from_mm, 0.0], [to_mm, 0.0]]));
    parts.push(line("strong", [[from_mm, -thickness_mm], [to_mm, -thickness_mm]]));
    for (end_mm, edge_mm) in [(from_mm, edges[0]), (to_mm, edges[1])] {
        let is_edge = end_mm == edge_mm;
        parts.push(line(if is_edge { "strong" } else { "dashed" }, [[end_mm, 0.0], [end_mm, -thickness_mm]]));
        if is_edge {
            parts.push(FigurePart::Label {
                at_mm: [end_mm, -0.75 * thickness_mm],
                name: PlotName::Row(EDGE),
                value: None,
            });
            let nearest = if end_mm == from_mm { first_mm } else { last_mm };
            parts.push(FigurePart::Dimension { from_mm: [end_mm, 0.0], to_mm: [nearest, 0.0], offset_px: 34.0 });
        }
    }
    let names = [(SURFACE, 0.0), (UNDERSIDE, -thickness_mm)];
    parts.extend(names.map(|(name, level_mm)| FigurePart::Label {
        at_mm: [to_mm - 0.2 * margin_mm, level_mm],
        name: PlotName::Row(name),
        value: None,
    }));
    for &place in pulled {
        let is_cut = cuts.iter().any(|cut| cut.along_mm == along(holes[place].at));
        if is_cut && beside(holes[place].at) == beside(hole.at) {
            draw_bolt(&mut parts, &holes[place], along(holes[place].at), !is_by_report(project));
        }
    }
    // The arrow begins above the bolt, and its number stands at its tip.
    let top_mm = 2.2 * hole.diameter_mm.unwrap_or(0.0);
    let tip_mm = [own.along_mm, top_mm + 0.3 * thickness_mm];
    let pull_n = scene.anchors[hardest].tension_n.unwrap_or(0.0);
    parts.push(FigurePart::Arrow {
        class: "force",
        from_mm: [own.along_mm, top_mm],
        to_mm: tip_mm,
        name: PlotName::None,
        value: None,
    });
    let pull = Some((pull_n, Kind::Force));
    parts.push(FigurePart::Label { at_mm: tip_mm, name: PlotName::Row(PULL), value: pull });
    let dimension = |from_mm, to_mm, offset_px| FigurePart::Dimension { from_mm, to_mm, offset_px };
    parts.push(dimension([own.along_mm, 0.0], [own.along_mm, -own.depth_mm], -24.0));
    parts.push(dimension([to_mm, 0.0], [to_mm, -thickness_mm], 12.0));
    if last_mm > first_mm {
        let mut along_mm: Vec<f64> = cuts.iter().map(|cut| cut.along_mm).collect();
        crate::calc::order::put_in_order(&mut along_mm, f64::total_cmp);
        along_mm.dedup();
        for pair in along_mm.windows(2) {
            parts.push(dimension([pair[0], 0.0], [pair[1], 0.0], 34.0));
        }
    }
    Some(Figure { name: SECTION, parts })
}

/// The bolts whose bodies meet in the section, one after the other, from the one at a place.
fn together(cuts: Vec<Cut>, along_mm: f64) -> Vec<Cut> {
    let (mut kept, mut left): (Vec<Cut>, Vec<Cut>) =
        cuts.into_iter().partition(|cut| cut.along_mm == along_mm && cut.off_mm == 0.0);
    loop {
        let meets = |cut: &Cut| {
            let reach_mm = |other: &Cut| REACH * (cut.depth_mm + other.depth_mm);
            kept.iter().any(|other| (other.along_mm - cut.along_mm).abs() < reach_mm(other))
        };
        let Some(place) = left.iter().position(meets) else { return kept };
        kept.push(left.remove(place));
    }
}

/// A body reaches this many embedments to every side.
const REACH: f64 = 1.5;

/// A bolt with a head, to the scale of its diameter.
fn draw_bolt(parts: &mut Vec<FigurePart>, hole: &Hole, along_mm: f64, is_headed: bool) {
    let (Some(depth_mm), Some(diameter_mm)) = (hole.embedment_mm, hole.diameter_mm) else { return };
    let box_of = |half_mm: f64, high_mm: f64, low_mm: f64| FigurePart::Outline {
        class: "steel",
        corners_mm: vec![
            [along_mm - half_mm, low_mm],
            [along_mm + half_mm, low_mm],
            [along_mm + half_mm, high_mm],
            [along_mm - half_mm, high_mm],
        ],
    };
    parts.push(box_of(0.5 * diameter_mm, 2.0 * diameter_mm, -depth_mm));
    // What is set into a drilled hole has no head.
    if is_headed {
        parts.push(box_of(0.85 * diameter_mm, -depth_mm, -depth_mm - 0.65 * diameter_mm));
    }
}

fn plan(scene: &Scene, holes: &[Hole], pulled: &[usize]) -> Figure {
    let mut parts = Vec::new();
    let points = |polygon: &Polygon| polygon.corners.iter().map(|corner| [corner.x_mm, corner.y_mm]).collect();
    for body in &scene.breakouts {
        parts.push(FigurePart::Outline { class: "hatched", corners_mm: points(body) });
    }
    let of = |rectangle: &Rectangle| rectangle.corners().map(|corner| [corner.x_mm, corner.y_mm]).into();
    parts.push(FigurePart::Outline { class: "cabinet", corners_mm: of(&scene.cabinet.outline()) });
    parts.extend(scene.feet.iter().map(|foot| FigurePart::Outline { class: "foot", corners_mm: of(&foot.outline) }));
    let mut around = scene.cabinet.outline();
    for corner in scene.breakouts.iter().flat_map(|body| &body.corners) {
        around.left_mm = around.left_mm.min(corner.x_mm);
        around.right_mm = around.right_mm.max(corner.x_mm);
        around.front_mm = around.front_mm.min(corner.y_mm);
        around.rear_mm = around.rear_mm.max(corner.y_mm);
    }
    let slab = &scene.slab;
    let margin_mm = 0.05 * (around.right_mm - around.left_mm);
    let limit = |edge_mm: f64, free_mm: f64| if edge_mm.is_finite() { edge_mm } else { free_mm };
    let [left, right] =
        [limit(slab.left_mm, around.left_mm - margin_mm), limit(slab.right_mm, around.right_mm + margin_mm)];
    let [front, rear] =
        [limit(slab.front_mm, around.front_mm - margin_mm), limit(slab.rear_mm, around.rear_mm + margin_mm)];
    let room = [
        around.left_mm - margin_mm,
        around.right_mm + margin_mm,
        around.front_mm - margin_mm,
        around.rear_mm + margin_mm,
    ];
    let kept = |value: f64, low: f64, high: f64| value.max(low).min(high);
    let [x0, x1] = [kept(left, room[0], room[1]), kept(right, room[0], room[1])];
    let [y0, y1] = [kept(front, room[2], room[3]), kept(rear, room[2], room[3])];
    let edges = [
        (slab.left_mm, room[0], [[left, y0], [left, y1]]),
        (-slab.right_mm, -room[1], [[right, y0], [right, y1]]),
        (slab.front_mm, room[2], [[x0, front], [x1, front]]),
        (-slab.rear_mm, -room[3], [[x0, rear], [x1, rear]]),
    ];
    for (edge_mm, room_mm, ends_mm) in edges {
        if edge_mm >= room_mm {
            parts.push(FigurePart::Line { class: "strong", ends_mm });
            let at_mm = [(ends_mm[0][0] + ends_mm[1][0]) / 2.0, (ends_mm[0][1] + ends_mm[1][1]) / 2.0];
            parts.push(FigurePart::Label { at_mm, name: PlotName::Row(EDGE), value: None });
        }
    }
    for hole in holes {
        let middle_mm = [hole.at.x_mm, hole.at.y_mm];
        let radius_mm = hole.diameter_mm.unwrap_or(0.0) / 2.0;
        let class = if pulled.contains(&(hole.number - 1)) { "centre" } else { "hole" };
        parts.push(FigurePart::Circle { class, middle_mm, radius_mm });
        let name = PlotName::Text(super::setting_out::number_text(hole.number));
        parts.push(FigurePart::Label { at_mm: middle_mm, name, value: None });
    }
    Figure { name: PLAN, parts }
}

fn areas(bodies: &[Polygon], holes: &[Hole], pulled: &[usize]) -> Table {
    let columns = columns![
        Column::nearest(BODY, Kind::Number),
        Column::nearest(BOLTS, Kind::Number),
        Column::nearest(AREA, Kind::Area),
        Column::nearest(ALONE, Kind::Area),
        Column::down(PART, Kind::Number),
    ];
    let mut rows = Vec::new();
    for (number, body) in bodies.iter().enumerate() {
        let inside: Vec<&Hole> =
            pulled.iter().map(|&place| &holes[place]).filter(|hole| is_inside(body, hole.at)).collect();
        let alone_mm2: f64 = inside
            .iter()
            .filter_map(|hole| hole.embedment_mm)
            .map(|depth_mm| 4.0 * REACH * REACH * depth_mm * depth_mm)
            .sum();
        let area_mm2 = body.area_mm2();
        let part = if alone_mm2 > 0.0 { Cell::Number(area_mm2 / alone_mm2) } else { Cell::Nothing };
        rows.push(Line::plain(vec![
            Cell::Number((number + 1) as f64),
            Cell::Number(inside.len() as f64),
            Cell::Number(area_mm2),
            Cell::Number(alone_mm2),
            part,
        ]));
    }
    Table { name: AREAS, columns, rows }
}

/// Whether a place lies inside an outline: a ray to the right crosses it an odd number of times.
fn is_inside(outline: &Polygon, at: Point) -> bool {
    let corners = &outline.corners;
    let mut inside = false;
    for (place, from) in corners.iter().enumerate() {
        let to = corners[(place + 1) % corners.len()];
        if (from.y_mm > at.y_mm) != (to.y_mm > at.y_mm) {
            let way = (at.y_mm - from.y_mm) / (to.y_mm - from.y_mm);
            inside ^= at.x_mm < from.x_mm + way * (to.x_mm - from.x_mm);
        }
    }
    inside
}
