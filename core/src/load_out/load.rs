//! Mass, centre of gravity and inertia of a state.
//!
//! The frame counts as a uniform box of the cabinet's size about its own centre, every content as a uniform box. The
//! inertia is that about the centre of gravity of the whole, three moments about axes along x, y, z (parallel axes).

use alloc::string::String;
use alloc::vec::Vec;

use super::content::Content;
use super::load_state::{Aboard, LoadState};
use crate::cabinet::Cabinet;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Part, Sheet, StepId, Subject, System, steps};

steps! { 10 "load-out";
    WIDTH "B" Length (INPUT "cabinet" Derived) "Width of the cabinet": Given;
    DEPTH "D" Length (INPUT "cabinet" Derived) "Depth of the cabinet": Given;
    HEIGHT "H" Length (INPUT "cabinet" Derived) "Height of the cabinet": Given;
    M_F "m_f" Mass (INPUT "cabinet.frame" Derived) "Mass of the frame": Given;
    X_F "x_f" Length (INPUT "cabinet.frame" Derived) "Centre of the frame, to the right": Given;
    Y_F "y_f" Length (INPUT "cabinet.frame" Derived) "Centre of the frame, to the rear": Given;
    Z_F "z_f" Length (INPUT "cabinet.frame" Derived) "Centre of the frame, above the floor": Given;
    M_I "m_i" Mass (INPUT "contents" Derived) "Mass of each content that is there": Given;
    X_I "x_i" Length (INPUT "contents" Derived) "Middle of each box, to the right": Given;
    Y_I "y_i" Length (INPUT "contents" Derived) "Middle of each box, to the rear, drawn in": Given;
    S_I "s_i" Length (INPUT "contents, states" Derived) "How far each box is drawn out to the front in this state": Given;
    Z_I "z_i" Length (INPUT "contents" Derived) "Underside of each box above the floor": Given;
    B_I "b_i" Length (INPUT "contents" Derived) "Width of each box": Given;
    D_I "d_i" Length (INPUT "contents" Derived) "Depth of each box": Given;
    H_I "h_i" Length (INPUT "contents" Derived) "Height of each box": Given;
    M_C "m_c" Mass (STATICS "sum of masses" Derived) "Mass of the contents" = "sum(m_i)";
    M "m" Mass (STATICS "sum of masses" Derived) "Mass of this state" = "m_f + m_c";
    M_EMPTY "m" Mass (STATICS "sum of masses" Derived) "Mass of this state, which is that of the frame" = "m_f";
    X "x" Length (STATICS "first moments of mass" Derived) "Centre of gravity, to the right" = "(m_f * x_f + sum(m_i * x_i)) / m";
    X_EMPTY "x" Length (STATICS "first moments of mass" Derived) "Centre of gravity, to the right" = "x_f";
    Y "y" Length (STATICS "first moments of mass" Derived) "Centre of gravity, to the rear" = "(m_f * y_f + sum(m_i * (y_i - s_i))) / m";
    Y_EMPTY "y" Length (STATICS "first moments of mass" Derived) "Centre of gravity, to the rear" = "y_f";
    Z "z" Length (STATICS "first moments of mass" Derived) "Centre of gravity, above the floor" = "(m_f * z_f + sum(m_i * (z_i + h_i / 2))) / m";
    Z_EMPTY "z" Length (STATICS "first moments of mass" Derived) "Centre of gravity, above the floor" = "z_f";
    J_X "J_x" Inertia (STATICS "uniform boxes, parallel axes" Derived) "Moment of inertia about the axis through the centre of gravity along x" = "m_f * ((D^2 + H^2) / 12 + (y_f - y)^2 + (z_f - z)^2) + sum(m_i * ((d_i^2 + h_i^2) / 12 + (y_i - s_i - y)^2 + (z_i + h_i / 2 - z)^2))";
    J_X_EMPTY "J_x" Inertia (STATICS "uniform box" Derived) "Moment of inertia about the axis through the centre of gravity along x" = "m_f * (D^2 + H^2) / 12";
    J_Y "J_y" Inertia (STATICS "uniform boxes, parallel axes" Derived) "Moment of inertia about the axis through the centre of gravity along y" = "m_f * ((B^2 + H^2) / 12 + (x_f - x)^2 + (z_f - z)^2) + sum(m_i * ((b_i^2 + h_i^2) / 12 + (x_i - x)^2 + (z_i + h_i / 2 - z)^2))";
    J_Y_EMPTY "J_y" Inertia (STATICS "uniform box" Derived) "Moment of inertia about the axis through the centre of gravity along y" = "m_f * (B^2 + H^2) / 12";
    J_Z "J_z" Inertia (STATICS "uniform boxes, parallel axes" Derived) "Moment of inertia about the axis through the centre of gravity along z" = "m_f * ((B^2 + D^2) / 12 + (x_f - x)^2 + (y_f - y)^2) + sum(m_i * ((b_i^2 + d_i^2) / 12 + (x_i - x)^2 + (y_i - s_i - y)^2))";
    J_Z_EMPTY "J_z" Inertia (STATICS "uniform box" Derived) "Moment of inertia about the axis through the centre of gravity along z" = "m_f * (B^2 + D^2) / 12";
}

/// What a state weighs and where.
#[derive(Clone, PartialEq, Debug)]
pub struct Load {
    /// Name of the state.
    pub name: String,
    /// Mass of frame and contents.
    pub mass_kg: f64,
    /// Mass of the contents alone.
    pub aboard_kg: f64,
    /// Centre of gravity: x, y, z.
    pub centre_mm: [f64; 3],
    /// Moments of inertia about axes through the centre of gravity along x, y, z.
    pub inertia_kgmm2: [f64; 3],
}

/// What every one of these states weighs and where.
pub fn loads(cabinet: &Cabinet, contents: &[Content], states: &[LoadState]) -> Vec<Load> {
    states.iter().map(|state| load(cabinet, contents, state, &mut Sheet::quiet())).collect()
}

/// Writes the load-out of a state on the sheet.
pub fn tell(cabinet: &Cabinet, contents: &[Content], state: &LoadState, sheet: &mut Sheet) {
    load(cabinet, contents, state, sheet);
}

/// Mass, centre of gravity and inertia of a state, in kg and mm whatever the rules compute in; told where the sheet is.
///
/// Statics: sums over frame and contents, each content a box of even density. A state that is empty is the frame alone.
///
/// ```
/// use steadfoot::{calc::Sheet, load_out::load, project::built_in};
/// let project = built_in().unwrap();
/// let full = load(&project.cabinet, &project.contents, &project.all_states()[0], &mut Sheet::quiet());
/// assert_eq!(full.mass_kg, 650.0 + 900.0 + 700.0);
/// ```
pub fn load(cabinet: &Cabinet, contents: &[Content], state: &LoadState, sheet: &mut Sheet) -> Load {
    sheet.open(Part::LoadOut, Subject::Whole, None, System::Si);
    let boxes = || state.aboard.iter().map(|aboard| Placed::new(&contents[aboard.content], aboard));
    if sheet.is_told() {
        tell_input(cabinet, boxes, sheet);
    }
    let is_empty = state.aboard.is_empty();
    let row = |filled: StepId, empty: StepId| if is_empty { empty } else { filled };
    // The order of the operations is that of the formula texts.
    let sum = |of: &dyn Fn(&Placed) -> f64| {
        boxes().map(|placed| of(&placed)).reduce(|total, next| total + next).unwrap_or(0.0)
    };

    let frame = &cabinet.frame;
    let m_f = frame.mass_kg;
    let m_c = sum(&|one| one.mass_kg);
    if !is_empty {
        sheet.step(M_C, m_c);
    }
    let m = sheet.step(row(M, M_EMPTY), m_f + m_c);

    let mut centre_mm = frame.centre_mm;
    if !is_empty {
        for (axis, centre_mm) in centre_mm.iter_mut().enumerate() {
            *centre_mm = (m_f * frame.centre_mm[axis] + sum(&|one| one.mass_kg * one.centre_mm[axis])) / m;
        }
    }
    let [x, y, z] = centre_mm;
    sheet.step(row(X, X_EMPTY), x);
    sheet.step(row(Y, Y_EMPTY), y);
    sheet.step(row(Z, Z_EMPTY), z);

    let size_mm = [cabinet.width_mm, cabinet.depth_mm, cabinet.height_mm];
    let inertia = |a: usize, b: usize| {
        let of = |size: &[f64; 3], at: &[f64; 3]| {
            let (to_a, to_b) = (at[a] - centre_mm[a], at[b] - centre_mm[b]);
            (size[a] * size[a] + size[b] * size[b]) / 12.0 + to_a * to_a + to_b * to_b
        };
        m_f * of(&size_mm, &frame.centre_mm) + sum(&|one| one.mass_kg * of(&one.size_mm, &one.centre_mm))
    };
    let inertia_kgmm2 = [
        sheet.step(row(J_X, J_X_EMPTY), inertia(1, 2)),
        sheet.step(row(J_Y, J_Y_EMPTY), inertia(0, 2)),
        sheet.step(row(J_Z, J_Z_EMPTY), inertia(0, 1)),
    ];
    Load { name: state.name.clone(), mass_kg: m, aboard_kg: m_c, centre_mm, inertia_kgmm2 }
}

/// A content where it stands in a state.
struct Placed {
    mass_kg: f64,
    size_mm: [f64; 3],
    centre_mm: [f64; 3],
    offset_mm: [f64; 2],
    bottom_mm: f64,
    drawn_out_mm: f64,
}

impl Placed {
    fn new(content: &Content, aboard: &Aboard) -> Placed {
        Placed {
            mass_kg: content.mass_kg,
            size_mm: content.size_mm,
            centre_mm: content.centre_mm(aboard.drawn_out_mm),
            offset_mm: content.offset_mm,
            bottom_mm: content.bottom_mm,
            drawn_out_mm: aboard.drawn_out_mm,
        }
    }
}

fn tell_input<I: Iterator<Item = Placed>>(cabinet: &Cabinet, boxes: impl Fn() -> I, sheet: &mut Sheet) {
    sheet.step(WIDTH, cabinet.width_mm);
    sheet.step(DEPTH, cabinet.depth_mm);
    sheet.step(HEIGHT, cabinet.height_mm);
    sheet.step(M_F, cabinet.frame.mass_kg);
    for (row, value) in [X_F, Y_F, Z_F].into_iter().zip(cabinet.frame.centre_mm) {
        sheet.step(row, value);
    }
    let mut each = |row: StepId, of: fn(&Placed) -> f64| {
        let values: Vec<f64> = boxes().map(|placed| of(&placed)).collect();
        sheet.each(row, &values);
    };
    each(M_I, |one| one.mass_kg);
    each(X_I, |one| one.offset_mm[0]);
    each(Y_I, |one| one.offset_mm[1]);
    each(S_I, |one| one.drawn_out_mm);
    each(Z_I, |one| one.bottom_mm);
    each(B_I, |one| one.size_mm[0]);
    each(D_I, |one| one.size_mm[1]);
    each(H_I, |one| one.size_mm[2]);
}
