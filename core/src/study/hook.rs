//! The cabinet on its hook: what each leg feels in each state, and how it looks.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::{Kind, StepId, steps};
use crate::checks::lifting::{Hung, Leg, legs};
use crate::load_out;
use crate::project::Project;
use crate::report::figure::{Figure, FigurePart};
use crate::report::plot::PlotName;
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 26 "hook study";
    NAME "" Number (INPUT "lifting" Derived) "On the hook, seen from the front": Name;
    TABLE "" Number (INPUT "lifting" Derived) "Pull in each leg, at its worst": Name;
    STATE "" Number (INPUT "lifting" Derived) "state": Name;
    MASS "" Number (INPUT "lifting" Derived) "mass": Name;
    POINT "" Number (INPUT "lifting" Derived) "lifting point": Name;
    PULL "" Number (INPUT "lifting" Derived) "pull": Name;
    ANGLE "" Number (INPUT "lifting" Derived) "from the vertical": Name;
    HOOK "" Number (INPUT "lifting" Derived) "hook": Name;
    CENTRE "" Number (INPUT "lifting" Derived) "centre of gravity": Name;
    NO_RIGGING "" Number (INPUT "lifting" Derived) "no rigging or no lifting points are given": Reason;
    BOUND "" Number (INPUT "lifting" Derived) "on a stiff cabinet the pulls of all legs do not add up to its weight: each is the worst of every set of legs that may carry": Name;
}

/// The study.
pub static STUDY: Study = Study { id: "hook", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "hook",
    title: "What does each leg of the sling feel?",
    help: "The pull in every leg in every state, each at its worst over the ways in which the legs may share the load. \
           Rigging needs a qualified person.",
    steps: &[&TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let values = project.lifting.as_ref().filter(|_| !project.cabinet.lifting_points.is_empty()).ok_or(NO_RIGGING)?;
    let mut rows = Vec::new();
    let mut picture = None;
    for load in load_out::loads(&project.cabinet, &project.contents, &project.all_states()) {
        let hung =
            Hung { mass_kg: load.mass_kg, centre_mm: load.centre_mm, points: &project.cabinet.lifting_points, values };
        let legs = legs(&hung);
        let hardest = legs.iter().map(|leg| leg.tension_n).fold(0.0, f64::max);
        for leg in &legs {
            let cells = vec![
                Cell::Text(load.name.clone()),
                Cell::Number(load.mass_kg),
                Cell::Number((leg.point + 1) as f64),
                Cell::Number(leg.tension_n),
                Cell::Number(leg.from_vertical_rad),
            ];
            rows.push(Line { cells, is_marked: leg.tension_n == hardest && load.name == "full" });
        }
        picture.get_or_insert_with(|| figure(project, &hung, &legs));
    }
    let columns = columns![
        Column::words(STATE),
        Column::nearest(MASS, Kind::Mass),
        Column::nearest(POINT, Kind::Number),
        Column::up(PULL, Kind::Force),
        Column::up(ANGLE, Kind::Angle),
    ];
    Ok(Shown {
        notes: vec![BOUND],
        tables: vec![Table { name: TABLE, columns, rows }],
        pictures: picture.into_iter().map(Picture::Figure).collect(),
        sections: Vec::new(),
    })
}

/// The first state as seen from the front: outline, legs, hook, centre of gravity.
fn figure(project: &Project, hung: &Hung, legs: &[Leg]) -> Figure {
    let (half, height) = (project.cabinet.width_mm / 2.0, project.cabinet.height_mm);
    let [x, _, z] = hung.hook_mm();
    let mut parts = vec![FigurePart::Outline {
        class: "cabinet",
        corners_mm: vec![[-half, 0.0], [half, 0.0], [half, height], [-half, height]],
    }];
    for point in hung.points {
        let [at_x, _, at_z] = point.at_mm;
        parts.push(FigurePart::Line { class: "strong", ends_mm: [[at_x, at_z], [x, z]] });
        parts.push(FigurePart::Circle { class: "anchor", middle_mm: [at_x, at_z], radius_mm: 18.0 });
    }
    let [centre_x, _, centre_z] = hung.centre_mm;
    parts.push(FigurePart::Circle { class: "centre", middle_mm: [centre_x, centre_z], radius_mm: 30.0 });
    parts.push(FigurePart::Label { at_mm: [centre_x, centre_z], name: PlotName::Row(CENTRE), value: None });
    parts.push(FigurePart::Line { class: "axis", ends_mm: [[x, z], [centre_x, centre_z]] });
    let pull = legs.iter().map(|leg| leg.tension_n).fold(0.0, f64::max);
    let label = (pull > 0.0).then_some((pull, Kind::Force));
    parts.push(FigurePart::Label { at_mm: [x, z], name: PlotName::Row(HOOK), value: None });
    if let Some(worst) = legs.iter().find(|leg| leg.tension_n == pull) {
        let [at_x, _, at_z] = hung.points[worst.point].at_mm;
        let middle = [(at_x + x) / 2.0, (at_z + z) / 2.0];
        parts.push(FigurePart::Label { at_mm: middle, name: PlotName::Row(PULL), value: label });
    }
    parts.push(FigurePart::Dimension { from_mm: [half, height], to_mm: [half, z], offset_px: 26.0 });
    parts.push(FigurePart::Dimension { from_mm: [-half, 0.0], to_mm: [half, 0.0], offset_px: -22.0 });
    Figure { name: NAME, parts }
}
