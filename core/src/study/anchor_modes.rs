//! How a bolt in concrete fails: every mode drawn to scale with the reader's own numbers, and how much of it is used.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Kind, Status, StepId, steps};
use crate::explore::{holes, is_by_report};
use crate::project::{Project, assess};
use crate::report::figure::{Figure, FigurePart};
use crate::report::outcome::CheckTold;
use crate::report::plot::PlotName;
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 96 "how anchors fail";
    STEEL "" Number (STATICS "" Derived) "Steel in tension: the bolt itself tears": Name;
    BREAKOUT "" Number (STATICS "" Derived) "Breakout: the head pulls a body out of the concrete": Name;
    PULLOUT "" Number (STATICS "" Derived) "Pullout: the concrete under the head is crushed and the bolt comes out": Name;
    BLOWOUT "" Number (STATICS "" Derived) "Side-face blowout: near an edge the head bursts the side": Name;
    BOND "" Number (STATICS "" Derived) "Bond: the glued rod comes out with a little concrete about it": Name;
    SPLITTING "" Number (STATICS "" Derived) "Splitting: the wedge of an anchor, or a thin member, splits the concrete": Name;
    SHEAR_STEEL "" Number (STATICS "" Derived) "Steel in shear: the bolt is cut at the surface": Name;
    SHEAR_BREAKOUT "" Number (STATICS "" Derived) "Edge breakout: pushed towards an edge, the bolt breaks a wedge off": Name;
    PRYOUT "" Number (STATICS "" Derived) "Pryout: pushed aside, a short bolt turns and lifts the concrete behind it": Name;
    MODES "" Number (STATICS "" Derived) "every way to fail": Name;
    MODE "" Number (STATICS "" Derived) "what happens": Name;
    UTILISATION "" Number (STATICS "" Derived) "utilisation": Name;
    OUTCOME "" Number (STATICS "" Derived) "outcome": Name;
    USED "" Number (STATICS "" Derived) "used": Name;
    NOT_NEEDED "" Number (STATICS "" Derived) "not needed here": Name;
    NOT_COVERED "" Number (STATICS "" Derived) "not covered here": Name;
    EDGE "" Number (INPUT "slab" Derived) "edge": Name;
    TO_SCALE "" Number (INPUT "anchorage" Derived) "drawn to scale: diameter, embedment, thickness of the slab, and the distance to the nearest edge where a mode needs one": Reason;
    NO_EDGE "" Number (INPUT "slab" Derived) "no edge is given near, so the modes at an edge are not drawn": Reason;
    NO_ANCHOR "" Number (INPUT "cabinet.anchors" Derived) "there is no anchor whose size and embedment are known": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "anchor-modes", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "anchor-modes",
    title: "How would a bolt fail?",
    help: "Each way in which a bolt in concrete can fail, drawn to scale with the numbers of this cabinet, and how much of \
           its strength is used where it governs.",
    steps: &[&TEXTS],
};

/// The bolt that is drawn, in its slab. It stands at x = 0, the surface at y = 0, the edge on the left.
struct Bolt {
    diameter_mm: f64,
    depth_mm: f64,
    thickness_mm: f64,
    edge_mm: Option<f64>,
    /// Whether a head holds it; what is set into a drilled hole has none.
    is_headed: bool,
}

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let bolt = bolt(project).ok_or(NO_ANCHOR)?;
    let report = assess(project);
    let governing = report.governs.map(|place| report.checks[place].id);
    let mut pictures = Vec::new();
    let mut rows = Vec::new();
    for (check, name, draw) in MODES_DRAWN {
        let told = report.checks.iter().find(|told| told.id == check.id());
        // A rule may not know a mode at all.
        if told.is_none() {
            continue;
        }
        rows.push(Line {
            cells: vec![
                Cell::Name(*name),
                told.and_then(|told| told.utilisation).map_or(Cell::Nothing, Cell::Number),
                told.map_or(Cell::Nothing, |told| Cell::Status(told.status)),
            ],
            is_marked: governing == Some(check.id()),
        });
        let mut parts = Vec::new();
        // What only drilled anchors do is not drawn where it cannot happen.
        let is_of_others = matches!(check, CheckId::AnchorTensionBond | CheckId::AnchorTensionSplitting)
            && told.is_none_or(|told| told.status == Status::NotNeeded);
        if is_of_others {
            continue;
        }
        if let Some(tip_mm) = draw(&bolt, &mut parts) {
            parts.extend(used(told, tip_mm));
            pictures.push(Picture::Figure(Figure { name: *name, parts }));
        }
    }
    let columns = columns![Column::words(MODE), Column::up(UTILISATION, Kind::Utilisation), Column::words(OUTCOME)];
    let tables = vec![Table { name: MODES, columns, rows }];
    let mut notes = vec![TO_SCALE];
    if bolt.edge_mm.is_none() {
        notes.push(NO_EDGE);
    }
    Ok(Shown { notes, tables, pictures, sections: Vec::new() })
}

/// Draws a mode and tells where its force points to; none where the bolt has no such place.
type Draw = fn(&Bolt, &mut Vec<FigurePart>) -> Option<[f64; 2]>;

static MODES_DRAWN: &[(CheckId, StepId, Draw)] = &[
    (CheckId::AnchorTensionSteel, STEEL, draw_steel),
    (CheckId::AnchorTensionBreakout, BREAKOUT, draw_breakout),
    (CheckId::AnchorTensionPullout, PULLOUT, draw_pullout),
    (CheckId::AnchorTensionBlowout, BLOWOUT, draw_blowout),
    (CheckId::AnchorTensionBond, BOND, draw_bond),
    (CheckId::AnchorTensionSplitting, SPLITTING, draw_splitting),
    (CheckId::AnchorShearSteel, SHEAR_STEEL, draw_shear_steel),
    (CheckId::AnchorShearBreakout, SHEAR_BREAKOUT, draw_shear_breakout),
    (CheckId::AnchorShearPryout, PRYOUT, draw_pryout),
];

/// The bolt nearest to an edge, or the first.
fn bolt(project: &Project) -> Option<Bolt> {
    let holes = holes(project);
    let edge_of = |edges: &[f64; 4]| edges.iter().fold(f64::INFINITY, |least, &edge| least.min(edge));
    let hole = holes.iter().min_by(|a, b| edge_of(&a.edges_mm).total_cmp(&edge_of(&b.edges_mm)))?;
    let (depth_mm, edge_mm) = (hole.embedment_mm?, edge_of(&hole.edges_mm));
    // Farther away than this, a mode at the edge would be drawn beside a bolt of the size of a dot.
    let is_near = edge_mm <= EDGE_NEAR * depth_mm;
    Some(Bolt {
        diameter_mm: hole.diameter_mm?,
        depth_mm,
        thickness_mm: project.slab.as_ref()?.thickness_mm,
        edge_mm: is_near.then_some(edge_mm),
        is_headed: !is_by_report(project),
    })
}

/// An edge is drawn where it is at most this many embedments away.
const EDGE_NEAR: f64 = 4.0;
/// Breakout bodies rise by one over this much.
const SLOPE: f64 = 1.5;

/// How much is used, at the tip of the force.
fn used(told: Option<&CheckTold>, tip_mm: [f64; 2]) -> Option<FigurePart> {
    let told = told?;
    let (name, value) = match (told.status, told.utilisation) {
        (Status::NotNeeded, _) => (NOT_NEEDED, None),
        (Status::NotCovered, _) => (NOT_COVERED, None),
        (_, utilisation) => (USED, utilisation.map(|utilisation| (utilisation, Kind::Utilisation))),
    };
    Some(FigurePart::Label { at_mm: tip_mm, name: PlotName::Row(name), value })
}

impl Bolt {
    /// Surface and underside of the slab between two places, the edge as a strong line.
    fn slab(&self, parts: &mut Vec<FigurePart>, from_mm: f64, to_mm: f64, edge_mm: Option<f64>) {
        let line = |class, ends_mm| FigurePart::Line { class, ends_mm };
        let low = -self.thickness_mm;
        parts.push(line("strong", [[from_mm, 0.0], [to_mm, 0.0]]));
        parts.push(line("strong", [[from_mm, low], [to_mm, low]]));
        if let Some(edge_mm) = edge_mm {
            parts.push(line("strong", [[-edge_mm, 0.0], [-edge_mm, low]]));
            parts.push(FigurePart::Dimension { from_mm: [-edge_mm, low], to_mm: [0.0, low], offset_px: -22.0 });
            parts.push(FigurePart::Label { at_mm: [-edge_mm, 0.8 * low], name: PlotName::Row(EDGE), value: None });
        }
        parts.push(FigurePart::Dimension { from_mm: [to_mm, 0.0], to_mm: [to_mm, low], offset_px: 12.0 });
    }

    /// Shank and head, moved by some way and lifted by some height.
    fn steel(&self, parts: &mut Vec<FigurePart>, lifted_mm: f64) {
        let (d, h) = (self.diameter_mm, self.depth_mm - lifted_mm);
        parts.push(block([-0.5 * d, -h], [0.5 * d, 2.0 * d + lifted_mm]));
        self.head(parts, -h);
    }

    fn head(&self, parts: &mut Vec<FigurePart>, level_mm: f64) {
        let d = self.diameter_mm;
        if self.is_headed {
            parts.push(block([-0.85 * d, level_mm - 0.65 * d], [0.85 * d, level_mm]));
        }
    }

    fn depth(&self, parts: &mut Vec<FigurePart>, at_mm: f64) {
        parts.push(FigurePart::Dimension { from_mm: [at_mm, 0.0], to_mm: [at_mm, -self.depth_mm], offset_px: 0.0 });
    }

    /// The pull on the bolt, whose end stands higher by some way; returns the tip of the arrow.
    fn pull(&self, parts: &mut Vec<FigurePart>, lifted_mm: f64) -> [f64; 2] {
        let from_mm = [0.0, 2.2 * self.diameter_mm + lifted_mm];
        let to_mm = [0.0, from_mm[1] + 0.45 * self.depth_mm];
        parts.push(FigurePart::Arrow { class: "force", from_mm, to_mm, name: PlotName::None, value: None });
        to_mm
    }

    /// The push on the bolt, to the left; returns where it begins.
    fn push(&self, parts: &mut Vec<FigurePart>) -> [f64; 2] {
        let level_mm = 1.2 * self.diameter_mm;
        let from_mm = [0.9 * self.diameter_mm + 0.6 * self.depth_mm, level_mm];
        let to_mm = [0.7 * self.diameter_mm, level_mm];
        parts.push(FigurePart::Arrow { class: "force", from_mm, to_mm, name: PlotName::None, value: None });
        from_mm
    }
}

fn block(low: [f64; 2], high: [f64; 2]) -> FigurePart {
    let corners_mm = vec![low, [high[0], low[1]], high, [low[0], high[1]]];
    FigurePart::Outline { class: "steel", corners_mm }
}

fn body(corners_mm: Vec<[f64; 2]>) -> FigurePart {
    FigurePart::Outline { class: "hatched", corners_mm }
}

fn draw_steel(bolt: &Bolt, parts: &mut Vec<FigurePart>) -> Option<[f64; 2]> {
    let (d, h, wide) = (bolt.diameter_mm, bolt.depth_mm, 1.2 * bolt.depth_mm);
    bolt.slab(parts, -wide, wide, None);
    // The upper piece has come away by a gap of half a diameter.
    bolt.head(parts, -h);
    let torn = |level: f64| {
        [[0.5 * d, level], [0.2 * d, level + 0.3 * d], [-0.2 * d, level - 0.2 * d], [-0.5 * d, level + 0.1 * d]]
    };
    let mut lower = vec![[-0.5 * d, -h], [0.5 * d, -h]];
    lower.extend(torn(-0.5 * d));
    parts.push(FigurePart::Outline { class: "steel", corners_mm: lower });
    let mut upper: Vec<[f64; 2]> = torn(0.0).into();
    upper.extend([[-0.5 * d, 2.5 * d], [0.5 * d, 2.5 * d]]);
    parts.push(FigurePart::Outline { class: "steel", corners_mm: upper });
    bolt.depth(parts, -0.6 * wide);
    Some(bolt.pull(parts, 0.5 * d))
}

fn draw_breakout(bolt: &Bolt, parts: &mut Vec<FigurePart>) -> Option<[f64; 2]> {
    let (h, reach) = (bolt.depth_mm, SLOPE * bolt.depth_mm);
    let near = bolt.edge_mm.filter(|&edge| edge < reach);
    let left = near.unwrap_or(reach);
    bolt.slab(parts, if near.is_some() { -left } else { -1.2 * reach }, 1.2 * reach, near);
    // At an edge the body ends in the side face.
    let side = h - left / SLOPE;
    let mut corners = vec![[-left, 0.0], [-left, -side], [0.0, -h], [reach, 0.0]];
    corners.dedup();
    parts.push(body(corners));
    bolt.steel(parts, 0.0);
    parts.push(FigurePart::Dimension { from_mm: [0.0, 0.0], to_mm: [reach, 0.0], offset_px: 18.0 });
    bolt.depth(parts, 1.1 * reach);
    Some(bolt.pull(parts, 0.0))
}

fn draw_pullout(bolt: &Bolt, parts: &mut Vec<FigurePart>) -> Option<[f64; 2]> {
    let (d, h, wide) = (bolt.diameter_mm, bolt.depth_mm, 1.2 * bolt.depth_mm);
    let lifted = 0.2 * h;
    bolt.slab(parts, -wide, wide, None);
    // What the head has crushed above it, and the space that it left.
    parts.push(body(vec![
        [-1.3 * d, -h + lifted],
        [1.3 * d, -h + lifted],
        [0.9 * d, -h + lifted + d],
        [-0.9 * d, -h + lifted + d],
    ]));
    parts.push(FigurePart::Path {
        class: "dashed",
        points_mm: vec![
            [-0.85 * d, -h + lifted - 0.65 * d],
            [-0.85 * d, -h - 0.65 * d],
            [0.85 * d, -h - 0.65 * d],
            [0.85 * d, -h + lifted - 0.65 * d],
        ],
    });
    bolt.steel(parts, lifted);
    bolt.depth(parts, -0.6 * wide);
    Some(bolt.pull(parts, lifted))
}

fn draw_blowout(bolt: &Bolt, parts: &mut Vec<FigurePart>) -> Option<[f64; 2]> {
    let (h, edge) = (bolt.depth_mm, bolt.edge_mm?);
    bolt.slab(parts, -edge, 1.2 * h, Some(edge));
    // Half a pyramid from the head to the side face.
    let reach = f64::min(SLOPE * edge, f64::min(h, bolt.thickness_mm - h));
    parts.push(body(vec![[0.0, -h], [-edge, -h + reach], [-edge, -h - reach]]));
    bolt.steel(parts, 0.0);
    bolt.depth(parts, 0.6 * h);
    Some(bolt.pull(parts, 0.0))
}

fn draw_bond(bolt: &Bolt, parts: &mut Vec<FigurePart>) -> Option<[f64; 2]> {
    let (d, h, wide) = (bolt.diameter_mm, bolt.depth_mm, 1.2 * bolt.depth_mm);
    let lifted = 0.15 * h;
    bolt.slab(parts, -wide, wide, None);
    // A flat cone at the surface comes along; below it the rod slides in its hole.
    let top = 0.25 * h;
    parts.push(body(vec![[-0.65 * d, -top], [-SLOPE * top, 0.0], [SLOPE * top, 0.0], [0.65 * d, -top]]));
    for side in [-1.0, 1.0] {
        let line = [[side * 0.65 * d, -top], [side * 0.65 * d, -h]];
        parts.push(FigurePart::Line { class: "dashed", ends_mm: line });
    }
    parts.push(block([-0.5 * d, -h + lifted], [0.5 * d, 2.0 * d + lifted]));
    bolt.depth(parts, -0.6 * wide);
    Some(bolt.pull(parts, lifted))
}

fn draw_splitting(bolt: &Bolt, parts: &mut Vec<FigurePart>) -> Option<[f64; 2]> {
    let (d, h, wide) = (bolt.diameter_mm, bolt.depth_mm, 1.2 * bolt.depth_mm);
    bolt.slab(parts, -wide, wide, None);
    let low = -bolt.thickness_mm;
    let crack = |from: f64, to: f64| -> Vec<[f64; 2]> {
        (0..=6)
            .map(|step| [if step % 2 == 0 { 0.0 } else { 0.3 * d }, from + (to - from) * f64::from(step) / 6.0])
            .collect()
    };
    parts.push(FigurePart::Path { class: "hatched", points_mm: crack(-h - 0.65 * d, low) });
    bolt.steel(parts, 0.0);
    bolt.depth(parts, -0.6 * wide);
    Some(bolt.pull(parts, 0.0))
}

fn draw_shear_steel(bolt: &Bolt, parts: &mut Vec<FigurePart>) -> Option<[f64; 2]> {
    let (d, h, wide) = (bolt.diameter_mm, bolt.depth_mm, 1.2 * bolt.depth_mm);
    bolt.slab(parts, -wide, wide, None);
    bolt.head(parts, -h);
    parts.push(block([-0.5 * d, -h], [0.5 * d, 0.0]));
    parts.push(block([-0.9 * d, 0.0], [0.1 * d, 2.0 * d]));
    bolt.depth(parts, -0.6 * wide);
    Some(bolt.push(parts))
}

fn draw_shear_breakout(bolt: &Bolt, parts: &mut Vec<FigurePart>) -> Option<[f64; 2]> {
    let (edge, low) = (bolt.edge_mm?, -bolt.thickness_mm);
    bolt.slab(parts, -edge, 1.2 * bolt.depth_mm, Some(edge));
    // The crack runs down from the bolt by one in one and a half of the edge distance, and ends where the slab does.
    let deep = SLOPE * edge;
    let mut corners = vec![[0.0, 0.0], [-edge, 0.0]];
    if -deep >= low {
        corners.push([-edge, -deep]);
    } else {
        corners.extend([[-edge, low], [edge * low / deep, low]]);
    }
    parts.push(body(corners));
    bolt.steel(parts, 0.0);
    Some(bolt.push(parts))
}

fn draw_pryout(bolt: &Bolt, parts: &mut Vec<FigurePart>) -> Option<[f64; 2]> {
    let (h, reach) = (bolt.depth_mm, SLOPE * bolt.depth_mm);
    bolt.slab(parts, -0.8 * reach, 1.2 * reach, None);
    parts.push(body(vec![[0.0, 0.0], [0.0, -h], [reach, 0.0]]));
    bolt.steel(parts, 0.0);
    bolt.depth(parts, -0.5 * reach);
    Some(bolt.push(parts))
}
