//! The frame in both directions: period, movement of the top, and the shape in which it sways.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::{CheckId, Kind, Sheet, StepId, steps};
use crate::frame::{Axis, Swayed};
use crate::project::{Project, swayed};
use crate::report::plot::{Axis as PlotAxis, AxisScale, Curve, Plot, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table};

steps! { 27 "sway study";
    NAME "" Number (INPUT "structure" Derived) "How the full cabinet sways under the push": Name;
    TABLE "" Number (INPUT "structure" Derived) "Period and movement of the top": Name;
    STATE "" Number (INPUT "structure" Derived) "state": Name;
    WAY "" Number (INPUT "structure" Derived) "push": Name;
    PERIOD "" Number (INPUT "structure" Derived) "period": Name;
    TOP "" Number (INPUT "structure" Derived) "top, under the reduced push": Name;
    SIDEWAYS "" Number (INPUT "structure" Derived) "to the side": Name;
    REARWARDS "" Number (INPUT "structure" Derived) "to the rear": Name;
    MOVEMENT "" Number (INPUT "structure" Derived) "movement": Name;
    HEIGHT "" Number (INPUT "structure" Derived) "height": Name;
    NO_STRUCTURE "" Number (INPUT "structure" Derived) "the structure of the frame is not given, so it is taken to be rigid": Reason;
    REDUCED "" Number (INPUT "structure" Derived) "the push of a rule is reduced; the real movement is that of the table times the factor given as movement_factor": Name;
}

/// The study.
pub static STUDY: Study = Study { id: "sway", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "sway",
    title: "How does the frame sway?",
    help: "Period and movement of the top in both directions and every state, and the shape over the height. Small \
           movements, feet that press all the time: once a foot lifts, it is softer.",
    steps: &[&TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    project.structure.as_ref().ok_or(NO_STRUCTURE)?;
    let demand = project.site.as_ref().and_then(|site| (site.rule.demand)(&site.values, 1.0, &mut Sheet::quiet()).ok());
    let push = demand.map_or(0.0, |demand| demand.push);
    let mut rows = Vec::new();
    let mut curves = Vec::new();
    let mut reason = None;
    for (state, load) in project.all_states().iter().enumerate() {
        swayed(project, state, &mut |frame: &Swayed| {
            for (axis, name, stroke) in [(Axis::X, SIDEWAYS, Stroke::Strong), (Axis::Y, REARWARDS, Stroke::Dashed)] {
                match frame.sway(axis, CheckId::FramePeriod, &mut Sheet::quiet()) {
                    Ok(sway) => {
                        rows.push(Line::plain(vec![
                            Cell::Text(load.name.clone()),
                            Cell::Name(name),
                            Cell::Number(sway.period_s),
                            Cell::Number(sway.top_mm() * push),
                        ]));
                        if state == 0 {
                            let levels = sway.movements_mm.iter().zip(&sway.heights_mm);
                            let points = core::iter::once([0.0, 0.0])
                                .chain(levels.map(|(movement, height)| [movement * push, *height]));
                            curves.push(Curve { name: PlotName::Row(name), points: points.collect(), stroke });
                        }
                    }
                    Err(why) => reason = Some(why),
                }
            }
        });
    }
    if let (Some(why), true) = (reason, rows.is_empty()) {
        return Err(why);
    }
    let axis = |name, kind| PlotAxis { name, kind, scale: AxisScale::Linear, ends: None };
    let plot = Plot {
        name: NAME,
        x: axis(MOVEMENT, Kind::Length),
        y: axis(HEIGHT, Kind::Length),
        curves,
        points: Vec::new(),
        levels: Vec::new(),
        grid: None,
    };
    let columns =
        vec![Column::words(STATE), Column::words(WAY), Column::up(PERIOD, Kind::Time), Column::up(TOP, Kind::Length)];
    Ok(Shown {
        notes: vec![REDUCED],
        tables: vec![Table { name: TABLE, columns, rows }],
        pictures: vec![Picture::Plot(plot)],
        sections: Vec::new(),
    })
}
