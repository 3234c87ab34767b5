//! What a test rig must carry: payload, force, overturning moment, acceleration, velocity and travel for the cabinet and its
//! fixture; and the static pull at the top that bends the cabinet's base as much.
//!
//! The cabinet is taken as if all its mass answered at its lowest natural frequency, and at the highest required acceleration
//! where that is not known; the fixture as rigid. Velocity and travel are those of oscillators on the table, which are more
//! than the table's own; the record itself decides.

use super::spectrum::{Axis, Spectrum};
use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Part, Sheet, StepId, Subject, System, steps};

steps! { 134 "shake-table rig";
    F_LOW_PRACTICE "f_low" Frequency (PRACTICE "" Memory) "Lowest frequency from which the test reaches the required spectrum, where nothing is agreed": Condition;
    F_LOW_AGREED "f_low" Frequency (INPUT "shake_table" Derived) "Lowest frequency from which the test must reach the required spectrum, as agreed": Given;

    M "m" Mass (STATICS "" Derived) "Mass of the cabinet in this state": Given;
    Z "z" Length (STATICS "" Derived) "Its centre of gravity above its base": Given;
    H "H" Length (INPUT "cabinet" Derived) "Height of the cabinet": Given;
    X_C "x" Length (STATICS "" Derived) "Its centre of gravity, to the right": Given;
    Y_C "y" Length (STATICS "" Derived) "Its centre of gravity, to the rear": Given;
    M_F "m_f" Mass (INPUT "shake_table" Derived) "Mass of the fixture": Given;
    H_F "h_f" Length (INPUT "shake_table" Derived) "Height of the cabinet's base above the table": Given;
    Z_F_GIVEN "z_f" Length (INPUT "shake_table" Derived) "Centre of gravity of the fixture above the table": Given;
    Z_F_HALF "z_f" Length (STATICS "" Derived) "Centre of gravity of the fixture above the table, at half its height" = "h_f / 2";
    A_R "A_R" Acceleration (STATICS "" Derived) "Horizontal acceleration of the table: the spectrum where all is rigid": Given;
    A_RV "A_RV" Acceleration (STATICS "" Derived) "Vertical acceleration of the table": Given;
    F_S "f_s" Frequency (STATICS "" Derived) "Frequency, at or above the cabinet's lowest, at which the spectrum asks for most": Condition;
    A_S "A_S" Acceleration (STATICS "" Derived) "Required acceleration there, which the cabinet is taken to answer with": Given;
    G "g" Gravity (STATICS "" Derived) "Weight of a mass": Constant;

    M_P "m_p" Mass (STATICS "sum of masses" Derived) "Payload: cabinet and fixture" = "m + m_f";
    F_C "F_c" Force (STATICS "inertia" Derived) "Force of the cabinet on its base" = "m * g * A_S";
    F_F "F_f" Force (STATICS "inertia" Derived) "Force of the fixture, which moves with the table" = "m_f * g * A_R";
    F_T "F_t" Force (STATICS "sum of forces" Derived) "Horizontal force on the table" = "F_c + F_f";
    M_O "M_o" Moment (STATICS "moments about the top of the table" Derived) "Overturning moment on the table" = "F_c * (h_f + z) + F_f * z_f";
    T_Z "T_z" Moment (STATICS "moments about the upright axis" Derived) "Twist on the table, with the cabinet's middle on the table's" = "F_c * max(abs(x), abs(y))";
    N_T "N_t" Force (STATICS "inertia" Derived) "Downward force on the table" = "m_p * g * (1 + A_RV)";
    P "P" Force (STATICS "moments about the base" Derived) "Static pull at the top of the cabinet with the same moment about its base" = "F_c * z / H";
    R_P "r_P" Acceleration (STATICS "" Derived) "That pull over the weight of the cabinet" = "P / (m * g)";

    G_L "g_l" FreeFall (STATICS "" Derived) "Acceleration of free fall": Constant;
    PI "pi" Number (STATICS "" Derived) "Circumference of a circle over its diameter": Constant;
    F_V "f_v" Frequency (STATICS "" Derived) "Frequency in the matched range at which the spectrum asks for the largest velocity": Condition;
    A_V "A_v" Acceleration (STATICS "" Derived) "Required acceleration there": Given;
    V "v" Velocity (STATICS "harmonic motion" Derived) "Velocity of an oscillator there, which the table's own stays below" = "A_v * g_l / (2 * pi * f_v)";
    F_D "f_d" Frequency (STATICS "" Derived) "Frequency in the matched range at which the spectrum asks for the longest travel": Condition;
    A_D "A_d" Acceleration (STATICS "" Derived) "Required acceleration there": Given;
    D "d" Length (STATICS "harmonic motion" Derived) "Travel of an oscillator there, each way, which the table's own stays near or below" = "A_d * g_l / (2 * pi * f_d)^2";

    M_RIG "m_r" Mass (INPUT "shake_table" Derived) "Payload of the rig": Given;
    M_O_RIG "M_r" Moment (INPUT "shake_table" Derived) "Overturning moment of the rig": Given;
    A_RIG "A_r" Acceleration (INPUT "shake_table" Derived) "Horizontal acceleration of the rig": Given;
    A_V_RIG "A_rv" Acceleration (INPUT "shake_table" Derived) "Vertical acceleration of the rig": Given;
    V_RIG "v_r" Velocity (INPUT "shake_table" Derived) "Velocity of the rig": Given;
    D_RIG "d_r" Length (INPUT "shake_table" Derived) "Travel of the rig, each way": Given;
    U_M "u_m" Utilisation (STATICS "" Derived) "Payload over that of the rig" = "m_p / m_r";
    U_O "u_o" Utilisation (STATICS "" Derived) "Overturning moment over that of the rig" = "M_o / M_r";
    U_A "u_a" Utilisation (STATICS "" Derived) "Horizontal acceleration over that of the rig" = "A_R / A_r";
    U_AV "u_av" Utilisation (STATICS "" Derived) "Vertical acceleration over that of the rig" = "A_RV / A_rv";
    U_V "u_v" Utilisation (STATICS "" Derived) "Velocity over that of the rig" = "v / v_r";
    U_D "u_d" Utilisation (STATICS "" Derived) "Travel over that of the rig" = "d / d_r";
}

/// The cabinet in the state that is tested.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Specimen {
    /// Mass of frame and contents.
    pub mass_kg: f64,
    /// Centre of gravity in cabinet axes.
    pub centre_mm: [f64; 3],
    /// Height of the cabinet.
    pub height_mm: f64,
    /// Lowest natural frequency on the table, where it is known.
    pub lowest_hz: Option<f64>,
}

/// What stands between the table and the cabinet.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Fixture {
    /// Its mass.
    pub mass_kg: f64,
    /// How far above the table the cabinet stands.
    pub height_mm: f64,
    /// Its centre of gravity above the table; half its height where it is not known.
    pub centre_mm: Option<f64>,
}

/// What the rig can do, as far as it is known.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Rig {
    /// Payload.
    pub payload_kg: Option<f64>,
    /// Overturning moment about the top of the table.
    pub moment_nmm: Option<f64>,
    /// Horizontal acceleration with this payload, g.
    pub acceleration: Option<f64>,
    /// Vertical acceleration with this payload, g.
    pub vertical: Option<f64>,
    /// Horizontal velocity.
    pub velocity_mm_per_s: Option<f64>,
    /// Horizontal travel each way.
    pub travel_mm: Option<f64>,
}

/// Something that the rig must do, beside what it can.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Needed {
    /// The step that tells it.
    pub step: StepId,
    /// What is needed, in SI base units.
    pub value: f64,
    /// What the rig can, where it is known.
    pub rated: Option<f64>,
    /// Needed over rated.
    pub utilisation: Option<f64>,
}

/// What a rig must carry.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Carried {
    /// Payload, overturning moment, horizontal and vertical acceleration, velocity, travel.
    pub needed: [Needed; 6],
    /// Force of the cabinet on its base.
    pub cabinet_n: f64,
    /// Horizontal force on the table.
    pub force_n: f64,
    /// Downward force on the table.
    pub down_n: f64,
    /// Twist about the upright axis.
    pub twist_nmm: f64,
    /// Static pull at the top of the cabinet with the same moment about its base.
    pub pull_n: f64,
    /// The acceleration that the cabinet is taken to answer with, g.
    pub answered: f64,
}

/// The motion that the table must make.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Motion {
    answered: [f64; 2],
    rigid: f64,
    rigid_vertical: f64,
    velocity_at: [f64; 2],
    travel_at: [f64; 2],
}

/// What a spectrum asks of the table's motion for a specimen; frequencies in Hz. Tells one section for each point read.
///
/// The reason where a frequency lies outside of the spectrum.
pub fn motion(
    spectrum: &Spectrum,
    lowest_hz: Option<f64>,
    agreed_hz: Option<f64>,
    sheet: &mut Sheet,
) -> Result<Motion, StepId> {
    let f_low = match agreed_hz {
        Some(agreed) => {
            sheet.open(Part::ShakeTable, Subject::Whole, None, System::Si);
            sheet.step(F_LOW_AGREED, agreed)
        }
        None => spectrum.matched_from_hz(lowest_hz, sheet),
    };
    let mut read = |frequency_hz: f64| Ok([frequency_hz, spectrum.at(Axis::Horizontal, frequency_hz, sheet)?]);
    // Not from where the test is matched: that may be agreed above the frequencies at which the spectrum asks for most.
    let [first_hz, _] = spectrum.drawn_hz();
    let answered = read(spectrum.most_from(lowest_hz.unwrap_or(first_hz), |_, a| a))?;
    let velocity_at = read(spectrum.most_from(f_low, |f, a| a / f))?;
    let travel_at = read(spectrum.most_from(f_low, |f, a| a / (f * f)))?;
    let rigid = spectrum.rigid(Axis::Horizontal, sheet)?;
    let rigid_vertical = spectrum.rigid(Axis::Vertical, sheet)?;
    Ok(Motion { answered, rigid, rigid_vertical, velocity_at, travel_at })
}

/// What a rig must carry for a specimen on its fixture under a motion. Tells one section.
pub fn carried(motion: &Motion, specimen: &Specimen, fixture: &Fixture, rig: &Rig, sheet: &mut Sheet) -> Carried {
    sheet.open(Part::ShakeTable, Subject::Whole, None, System::Si);
    let m = sheet.carry(M, specimen.mass_kg);
    let x = sheet.carry(X_C, specimen.centre_mm[0]);
    let y = sheet.carry(Y_C, specimen.centre_mm[1]);
    let z = sheet.carry(Z, specimen.centre_mm[2]);
    let h = sheet.step(H, specimen.height_mm);
    let m_f = sheet.step(M_F, fixture.mass_kg);
    let h_f = sheet.step(H_F, fixture.height_mm);
    let z_f = match fixture.centre_mm {
        Some(centre_mm) => sheet.step(Z_F_GIVEN, centre_mm),
        None => sheet.step(Z_F_HALF, h_f / 2.0),
    };
    let a_r = sheet.carry(A_R, motion.rigid);
    let a_rv = sheet.carry(A_RV, motion.rigid_vertical);
    sheet.step(F_S, motion.answered[0]);
    let a_s = sheet.carry(A_S, motion.answered[1]);
    let g = sheet.step(G, G_N_PER_KG);

    let m_p = sheet.step(M_P, m + m_f);
    let f_c = sheet.step(F_C, m * g * a_s);
    let f_f = sheet.step(F_F, m_f * g * a_r);
    let f_t = sheet.step(F_T, f_c + f_f);
    let m_o = sheet.step(M_O, f_c * (h_f + z) + f_f * z_f);
    let t_z = sheet.step(T_Z, f_c * f64::max(x.abs(), y.abs()));
    let n_t = sheet.step(N_T, m_p * g * (1.0 + a_rv));
    let p = sheet.step(P, f_c * z / h);
    sheet.step(R_P, p / (m * g));

    let g_l = sheet.step(G_L, G_N_PER_KG * 1000.0);
    let pi = sheet.step(PI, core::f64::consts::PI);
    let f_v = sheet.step(F_V, motion.velocity_at[0]);
    let a_v = sheet.carry(A_V, motion.velocity_at[1]);
    let v = sheet.step(V, a_v * g_l / (2.0 * pi * f_v));
    let f_d = sheet.step(F_D, motion.travel_at[0]);
    let a_d = sheet.carry(A_D, motion.travel_at[1]);
    let turns = 2.0 * pi * f_d;
    let d = sheet.step(D, a_d * g_l / (turns * turns));

    let mut needed = |step: StepId, value: f64, rated: Option<f64>, steps: [StepId; 2]| Needed {
        step,
        value,
        rated,
        utilisation: rated.map(|rated| {
            sheet.step(steps[0], rated);
            sheet.step(steps[1], value / rated)
        }),
    };
    Carried {
        needed: [
            needed(M_P, m_p, rig.payload_kg, [M_RIG, U_M]),
            needed(M_O, m_o, rig.moment_nmm, [M_O_RIG, U_O]),
            needed(A_R, a_r, rig.acceleration, [A_RIG, U_A]),
            needed(A_RV, a_rv, rig.vertical, [A_V_RIG, U_AV]),
            needed(V, v, rig.velocity_mm_per_s, [V_RIG, U_V]),
            needed(D, d, rig.travel_mm, [D_RIG, U_D]),
        ],
        cabinet_n: f_c,
        force_n: f_t,
        down_n: n_t,
        twist_nmm: t_z,
        pull_n: p,
        answered: a_s,
    }
}
