//! What to ask the owner of the floor: every number that the checks need, what it is for, and whether it is given.

use alloc::vec;

use super::{Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::{StepId, steps};
use crate::floor::{self, casters, raised};
use crate::input::{Value, Values};
use crate::project::Project;
use crate::report::table::{Cell, Column, Line, Table};

steps! { 164 "questions to the owner";
    SLAB "" Number (INPUT "" Derived) "The slab": Name;
    RAISED "" Number (INPUT "" Derived) "A raised floor, if there is one": Name;
    ROUTE "" Number (INPUT "" Derived) "The way in": Name;
    QUESTION "" Number (INPUT "" Derived) "what to ask": Name;
    FOR "" Number (INPUT "" Derived) "what it is for": Name;
    ANSWER "" Number (INPUT "" Derived) "answer": Name;
    GIVEN "" Number (INPUT "" Derived) "given": Name;
    MISSING "" Number (INPUT "" Derived) "to be asked": Name;
    ASSUMED "" Number (INPUT "" Derived) "assumed until it is answered": Name;
    Q_KIND "" Number (INPUT "floor.kind" Derived) "does the slab lie on the ground, or does it span between supports?": Name;
    Q_STRENGTH "" Number (INPUT "slab.strength_mpa" Derived) "strength of the concrete, from drawings or a test": Name;
    Q_THICKNESS "" Number (INPUT "slab.thickness_mm" Derived) "thickness of the structural concrete, without screed": Name;
    Q_EDGES "" Number (INPUT "slab.edges_mm" Derived) "where its edges, joints and openings are": Name;
    Q_REINFORCEMENT "" Number (INPUT "floor.reinforcement" Derived) "what it is reinforced with: nothing, fabric or bars, fibres": Name;
    Q_DEPTH "" Number (INPUT "floor.effective_depth_mm" Derived) "size, spacing and cover of its steel": Name;
    Q_RESIDUAL "" Number (INPUT "floor.residual_moment_n" Derived) "test values of the fibre concrete": Name;
    Q_SUBGRADE "" Number (INPUT "floor.subgrade_n_per_mm3" Derived) "modulus of subgrade reaction, or the soil report": Name;
    Q_FLEXURAL "" Number (INPUT "floor.flexural_strength_mpa" Derived) "flexural or tensile strength that it was designed with": Name;
    Q_LIVE "" Number (INPUT "floor.live_load_mpa" Derived) "design live load, and for which use": Name;
    Q_SPAN "" Number (INPUT "floor.span_mm" Derived) "span, its direction, and where the supports are": Name;
    Q_PITCH "" Number (INPUT "floor.pitch_mm" Derived) "how the cabinets will stand: pitch and aisles": Name;
    Q_STAND "" Number (INPUT "floor.raised.stand_to_slab" Derived) "may a stand go through the raised floor to the slab?": Name;
    Q_PANEL "" Number (INPUT "floor.raised" Derived) "class, grade or working point load of the panels": Name;
    Q_UNIFORM "" Number (INPUT "floor.raised.uniform_load_mpa" Derived) "uniform load of the panels": Name;
    Q_PEDESTAL "" Number (INPUT "floor.raised.pedestal_n" Derived) "rating of the pedestals": Name;
    Q_ROLLING "" Number (INPUT "floor.raised.rolling_n" Derived) "rolling rating of the panels": Name;
    Q_WHEELS "" Number (INPUT "floor.casters" Derived) "what it will be rolled on: number, size and tread of the wheels": Name;
    Q_WAY "" Number (INPUT "floor.casters.dynamic_factor" Derived) "joints, sills and door steps on the way, and who covers them": Name;
    Q_SLOPE "" Number (INPUT "floor.casters.slope" Derived) "ramps on the way and their slope": Name;
    F_BEARING "" Number (INPUT "" Derived) "bearing, punching, anchors": Name;
    F_BENDING "" Number (INPUT "" Derived) "bending of the slab under legs and wheels": Name;
    F_ALL "" Number (INPUT "" Derived) "every check of the slab": Name;
    F_YIELD "" Number (INPUT "" Derived) "yield lines and punching": Name;
    F_AREA "" Number (INPUT "" Derived) "loads over an area": Name;
    F_PANEL "" Number (INPUT "" Derived) "legs on panels and pedestals": Name;
    F_SHAKEN "" Number (INPUT "" Derived) "standing in an earthquake": Name;
    F_ROUTE "" Number (INPUT "" Derived) "wheels on the way in": Name;
    F_PUSH "" Number (INPUT "" Derived) "how hard it is to push and to hold": Name;
    IN_WRITING "" Number (INPUT "" Derived) "ask for answers in writing and with their source; a limit of this page belongs to whoever gives it": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "ask-the-owner", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "ask-the-owner",
    title: "What to ask the owner of the floor",
    help: "One page to print and to send: what the checks of the floor need to know, what each number is for, and which of \
           them this project has already.",
    steps: &[&TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let (slab, floor) = (project.slab.as_ref(), project.floor.as_ref());
    let has = |values: Option<&Values>, fields: &[usize]| {
        let is_given = |&field: &usize| values.is_some_and(|values| values.0.get(field) != Some(&Value::Unknown));
        if fields.iter().any(is_given) && values.is_some() { GIVEN } else { MISSING }
    };
    let values = floor.map(|floor| &floor.values);
    let said = |is_there: bool| if is_there { GIVEN } else { MISSING };
    let assumed = |values: Option<&Values>| if values.is_some() { ASSUMED } else { MISSING };
    let table = |name, rows: &[(StepId, StepId, StepId)]| Table {
        name,
        columns: vec![Column::words(QUESTION), Column::words(FOR), Column::words(ANSWER)],
        rows: rows
            .iter()
            .map(|&(question, purpose, answer)| Line {
                cells: [question, purpose, answer].map(Cell::Name).into(),
                is_marked: answer == MISSING,
            })
            .collect(),
    };
    let raised = floor.and_then(|floor| floor.raised.as_ref());
    let wheels = floor.and_then(|floor| floor.casters.as_ref());
    let tables = vec![
        table(
            SLAB,
            &[
                (Q_KIND, F_ALL, said(floor.is_some())),
                (Q_STRENGTH, F_BEARING, said(slab.is_some())),
                (Q_THICKNESS, F_ALL, said(slab.is_some())),
                (Q_EDGES, F_ALL, said(slab.is_some())),
                (Q_REINFORCEMENT, F_ALL, assumed(values)),
                (Q_DEPTH, F_YIELD, has(values, &[floor::DEPTH])),
                (Q_RESIDUAL, F_YIELD, has(values, &[floor::RESIDUAL])),
                (Q_SUBGRADE, F_BENDING, has(values, &[floor::SUBGRADE, floor::BEARING_RATIO, floor::SOIL])),
                (Q_FLEXURAL, F_BENDING, has(values, &[floor::FLEXURAL, floor::TENSILE])),
                (Q_SPAN, F_AREA, has(values, &[floor::SPAN])),
                (Q_LIVE, F_AREA, has(values, &[floor::LIVE_LOAD, floor::OCCUPANCY])),
                (Q_PITCH, F_AREA, has(values, &[floor::PITCH])),
            ],
        ),
        table(
            RAISED,
            &[
                (Q_STAND, F_SHAKEN, said(raised.is_some())),
                (Q_PANEL, F_PANEL, has(raised, &[raised::CLASS, raised::GRADE, raised::WORKING])),
                (Q_UNIFORM, F_PANEL, has(raised, &[raised::UNIFORM])),
                (Q_PEDESTAL, F_PANEL, has(raised, &[raised::PEDESTAL])),
                (Q_ROLLING, F_ROUTE, has(raised, &[raised::ROLLING])),
            ],
        ),
        table(
            ROUTE,
            &[
                (Q_WHEELS, F_ROUTE, has(wheels, &[casters::RADIUS])),
                (Q_WAY, F_ROUTE, assumed(wheels)),
                (Q_SLOPE, F_PUSH, assumed(wheels)),
            ],
        ),
    ];
    Ok(Shown { notes: vec![IN_WRITING], tables, ..Shown::default() })
}
