//! The frame in both directions: period, movement of the top, and the shape in which it sways.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::{CheckId, Kind, Part, Sheet, StepId, Subject, System, steps};
use crate::frame::{Axis, CANTILEVER_TEXTS, Swayed, cantilever_period_s};
use crate::project::{Project, swayed};
use crate::report::plot::{Axis as PlotAxis, AxisScale, Curve, Plot, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};

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
    LEVELS "" Number (INPUT "structure" Derived) "Movement at every level of the full cabinet, under the reduced push": Name;
    ALONE "" Number (INPUT "structure" Derived) "Posts alone, whatever the corners give": Name;
    LONGEST "" Number (INPUT "structure" Derived) "period, at most": Name;
    FEET_HELD "" Number (INPUT "structure" Derived) "posts alone with their feet held, and everything aboard at the top: corners only shorten that period, a base that turns and feet that are free lengthen it": Reason;
    REDUCED "" Number (INPUT "structure" Derived) "the push of a rule is reduced; the real movement is that of the table times the factor from the reduced push to the real movement": Name;
}

/// The study.
pub static STUDY: Study = Study { id: "sway", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "sway",
    title: "How does the frame sway?",
    help: "Period and movement of the top in both directions and every state, and the shape over the height. Small \
           movements, feet that press all the time: once a foot lifts, it is softer.",
    steps: &[&TEXTS, &CANTILEVER_TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    project.structure.as_ref().ok_or(NO_STRUCTURE)?;
    let demand = project.site.as_ref().and_then(|site| (site.rule.demand)(&site.values, 1.0, &mut Sheet::quiet()).ok());
    let push = demand.map_or(0.0, |demand| demand.push);
    let mut rows = Vec::new();
    let mut curves = Vec::new();
    let mut reason = None;
    let mut levels: Vec<[f64; 3]> = Vec::new();
    let mut alone = Vec::new();
    let mut sheet = Sheet::told();
    for (state, load) in project.all_states().iter().enumerate() {
        swayed(project, state, &mut |frame: &Swayed| {
            for (place, axis, name, stroke) in
                [(1, Axis::X, SIDEWAYS, Stroke::Strong), (2, Axis::Y, REARWARDS, Stroke::Dashed)]
            {
                if let (0, Some(posts)) = (state, frame.posts_alone(axis)) {
                    sheet.open(Part::Frame, Subject::Whole, None, System::Si);
                    let period_s = cantilever_period_s(&posts, &mut sheet);
                    alone.push(Line::plain(vec![Cell::Name(name), Cell::Number(period_s)]));
                }
                match frame.sway(axis, CheckId::FramePeriod, &mut Sheet::quiet()) {
                    Ok(sway) => {
                        rows.push(Line::plain(vec![
                            Cell::Text(load.name.clone()),
                            Cell::Name(name),
                            Cell::Number(sway.period_s),
                            Cell::Number(sway.top_mm() * push),
                        ]));
                        if state == 0 {
                            for (level, (&movement, &height)) in
                                sway.movements_mm.iter().zip(&sway.heights_mm).enumerate()
                            {
                                if levels.len() == level {
                                    levels.push([height, f64::NAN, f64::NAN]);
                                }
                                levels[level][place] = movement * push;
                            }
                            let levels = sway.movements_mm.iter().zip(&sway.heights_mm);
                            let points = core::iter::once([0.0, 0.0])
                                .chain(levels.map(|(movement, height)| [movement * push, *height]));
                            curves.push(Curve { name: PlotName::Row(name), points: points.collect(), stroke });
                        }
                    }
                    Err(why) => reason = reason.or(Some(why)),
                }
            }
        });
    }
    let mut tables = Vec::new();
    let mut notes = vec![REDUCED];
    if !alone.is_empty() {
        notes.push(FEET_HELD);
        let columns = columns![Column::words(WAY), Column::up(LONGEST, Kind::Time)];
        tables.push(Table { name: ALONE, columns, rows: alone });
    }
    if let (Some(why), true) = (reason, rows.is_empty()) {
        if tables.is_empty() {
            return Err(why);
        }
        notes.push(why);
        return Ok(Shown { notes, tables, pictures: Vec::new(), sections: sheet.sections });
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
    let columns = columns![
        Column::words(STATE),
        Column::words(WAY),
        Column::up(PERIOD, Kind::Time),
        Column::up(TOP, Kind::Length)
    ];
    tables.insert(0, Table { name: TABLE, columns, rows });
    let movement = |value: f64| if value.is_finite() { Cell::Number(value) } else { Cell::Nothing };
    let line = |[height, x, y]: &[f64; 3]| Line::plain(vec![Cell::Number(*height), movement(*x), movement(*y)]);
    tables.push(Table {
        name: LEVELS,
        columns: columns![
            Column::nearest(HEIGHT, Kind::Length),
            Column::up(SIDEWAYS, Kind::Length),
            Column::up(REARWARDS, Kind::Length),
        ],
        rows: levels.iter().map(line).collect(),
    });
    Ok(Shown { notes, tables, pictures: vec![Picture::Plot(plot)], sections: sheet.sections })
}
