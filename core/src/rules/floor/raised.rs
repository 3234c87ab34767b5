//! Raised floors: classes, grades, and a cabinet's legs on their panels and pedestals.

use super::documents::{CISCA, EN_12825, PSA_MOB};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Sheet, StepId, limit, steps};

steps! { 153 "raised floor";
    CLASS "class" Number (EN_12825 "Table 1" Secondary) "Class of the panel": Given;
    F_ULT "F_u" Force (EN_12825 "Table 1" Secondary) "Ultimate load of the class": Table;
    SF "n_s" Number (EN_12825 "4.2" Secondary) "Safety factor of the designation": Given;
    F_WORK "F_w" Force (EN_12825 "4.2" Secondary) "Working load of the panel" = "F_u / n_s";
    F_GRADE "F_w" Force (PSA_MOB "performance grades" Secondary) "Working load of the grade on 25 mm by 25 mm": Constant;
    F_300 "F_300" Force (PSA_MOB "performance grades" Secondary) "Working load of the grade on 300 mm by 300 mm": Constant;
    Q_GRADE "q_w" AreaLoad (PSA_MOB "performance grades" Secondary) "Uniform load of the grade": Constant;
    F_GIVEN "F_w" Force (INPUT "floor.raised" Derived) "Working point load of the panel, given": Given;
    F_BROKE "F_u" Force (CISCA "ultimate load" Secondary) "Ultimate load of the panel, given": Given;
    F_HALF "F_w" Force (CISCA "ultimate at least twice the concentrated load, as makers rate" Memory) "Working point load of the panel" = "F_u / 2";
    Q_GIVEN "q_w" AreaLoad (INPUT "floor.raised" Derived) "Uniform load of the panel, given": Given;
    N_LEG "N" Force (STATICS "at rest" Derived) "Load of the heaviest leg at rest": Given;
    N_PANEL "n_p" Number (INPUT "floor.raised" Derived) "Legs on one panel, those of a neighbour included": Given;
    F_P "F_p" Force (STATICS "" Derived) "Load on the panel" = "N * n_p";
    U_P "u" Utilisation (EN_12825 "4.2" Secondary) "Load over working load, both at service" = "F_p / F_w";
    N_THREE "N_3" Force (STATICS "one of four legs bears nothing" Derived) "Load of a leg where one of four bears nothing" = "W / 3";
    W "W" Force (STATICS "" Derived) "Weight of the cabinet": Given;
    F_PED_4 "F_d" Force (EN_12825 "4.3" Secondary) "Load that a pedestal bears without damage" = "4 * F_w";
    F_PED "F_d" Force (CISCA "section 5" Secondary) "Rating of the pedestal, given": Given;
    F_D "F_s" Force (STATICS "corner shares of four panels" Derived) "Load on the pedestal between the panels" = "N * n_p";
    U_D "u" Utilisation (STATICS "" Derived) "Load over rating of the pedestal" = "F_s / F_d";
    F_ROLL "F_r" Force (CISCA "rolling load" Secondary) "Rolling rating of the panel, given": Given;
    PHI_D "phi_d" Number (INPUT "floor.route" Memory) "Dynamic factor: 1.25 on smooth panels, 1.5 to 3 over joints and sills": Given;
    N_W "n_w" Number (STATICS "three of four wheels" Secondary) "Wheels that bear, one of four counted out": Given;
    F_WHEEL "F" Force (STATICS "three of four wheels" Secondary) "Load of a wheel on the way in" = "phi_d * W / n_w";
    U_R "u" Utilisation (CISCA "rolling load" Secondary) "Load of a wheel over the rolling rating" = "F / F_r";
    LX "L_x" Length (INPUT "cabinet" Derived) "Width of the footprint": Given;
    LY "L_y" Length (INPUT "cabinet" Derived) "Depth of the footprint": Given;
    Q_F "q_f" AreaLoad (STATICS "" Derived) "Load over the footprint" = "W / (L_x * L_y)";
    U_Q "u" Utilisation (STATICS "" Derived) "Load over the footprint over the uniform load of the panels" = "q_f / q_w";
    ON_STAND "" Number (INPUT "floor.raised" Derived) "a stand carries the cabinet to the slab: the panels carry nothing of it": Reason;
    NO_RATING "" Number (INPUT "floor.raised" Derived) "no rating of the panels is given: their class, grade or working load": Reason;
    NO_PEDESTAL "" Number (INPUT "floor.raised" Derived) "no rating of the pedestals is given": Reason;
    NO_ROLLING "" Number (INPUT "floor.raised" Derived) "no rolling rating of the panels is given; a rating for standing loads says nothing of wheels": Reason;
    SHAKEN "" Number (STATICS "" Derived) "panels and pedestals are rated for standing and rolling loads, not for shaking: in an earthquake a stand carries the cabinet to the slab": Reason;
    NO_UNIFORM "" Number (INPUT "floor.raised" Derived) "no uniform load of the panels is given": Reason;
}

/// EN 12825: ultimate loads of the classes 1 to 6, N.
pub static EN_CLASSES_N: [f64; 6] = [4000.0, 6000.0, 8000.0, 9000.0, 10_000.0, 12_000.0];

/// A grade of the UK performance specification.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grade {
    /// On 25 mm by 25 mm.
    pub point_n: f64,
    /// On 300 mm by 300 mm; none where none is printed.
    pub wide_n: Option<f64>,
    /// Uniform.
    pub uniform_mpa: f64,
}

/// Light, medium, heavy, extra heavy; the last also 11 kN on four points at 200 mm.
pub static GRADES: [Grade; 4] = [
    Grade { point_n: 1500.0, wide_n: Some(2700.0), uniform_mpa: 6.7e-3 },
    Grade { point_n: 3000.0, wide_n: Some(4500.0), uniform_mpa: 8.0e-3 },
    Grade { point_n: 4500.0, wide_n: None, uniform_mpa: 12.0e-3 },
    Grade { point_n: 4500.0, wide_n: None, uniform_mpa: 12.0e-3 },
];

/// What a panel is said to carry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rating {
    /// Class of EN 12825, 1 to 6, with its safety factor of 2 or 3.
    Class {
        /// 1 to 6.
        class: usize,
        /// 2 or 3.
        safety: f64,
    },
    /// Grade of the UK specification, place in [`GRADES`].
    Grade(usize),
    /// Working point load from its maker.
    Given(f64),
    /// Ultimate point load from its maker, of which half counts.
    Ultimate(f64),
}

/// A utilisation with demand and capacity, N or MPa.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Compared {
    /// What is asked.
    pub value: f64,
    /// What is rated.
    pub limit: f64,
    /// Their ratio.
    pub utilisation: f64,
}

impl Rating {
    /// Working point load, N.
    pub fn working_n(&self, sheet: &mut Sheet) -> f64 {
        match *self {
            Rating::Class { class, safety } => {
                let place = class.clamp(1, EN_CLASSES_N.len());
                sheet.step(CLASS, place as f64);
                let ultimate = sheet.step(F_ULT, EN_CLASSES_N[place - 1]);
                let safety = sheet.step(SF, safety);
                sheet.step(F_WORK, ultimate / safety)
            }
            Rating::Grade(place) => {
                let grade = &GRADES[place.min(GRADES.len() - 1)];
                if let Some(wide) = grade.wide_n {
                    sheet.step(F_300, wide);
                }
                sheet.step(F_GRADE, grade.point_n)
            }
            Rating::Given(force_n) => sheet.step(F_GIVEN, force_n),
            Rating::Ultimate(force_n) => {
                let broke = sheet.step(F_BROKE, force_n);
                sheet.step(F_HALF, broke / 2.0)
            }
        }
    }

    /// Uniform load of the panel where the rating says one, MPa.
    pub fn uniform_mpa(&self) -> Option<f64> {
        match *self {
            Rating::Grade(place) => Some(GRADES[place.min(GRADES.len() - 1)].uniform_mpa),
            _ => None,
        }
    }
}

/// Legs at rest on one panel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PanelLoad {
    /// The heaviest leg.
    pub leg_n: f64,
    /// Legs on one panel.
    pub legs: f64,
}

impl PanelLoad {
    /// The panel at service.
    pub fn on_panel(&self, rating: &Rating, sheet: &mut Sheet) -> Compared {
        let working = rating.working_n(sheet);
        let leg = sheet.step(N_LEG, self.leg_n);
        let legs = sheet.step(N_PANEL, self.legs);
        let load = sheet.step(F_P, leg * legs);
        Compared { value: load, limit: working, utilisation: sheet.step(U_P, load / working) }
    }

    /// The pedestal that the panel's corners share, by its own rating, or by four times the working load of the panel.
    pub fn on_pedestal(&self, given_n: Option<f64>, rating: &Rating, sheet: &mut Sheet) -> Compared {
        let capacity = match given_n {
            Some(given) => sheet.step(F_PED, given),
            None => {
                let working = rating.working_n(sheet);
                sheet.step(F_PED_4, 4.0 * working)
            }
        };
        let leg = sheet.step(N_LEG, self.leg_n);
        let legs = sheet.step(N_PANEL, self.legs);
        let load = sheet.step(F_D, leg * legs);
        Compared { value: load, limit: capacity, utilisation: sheet.step(U_D, load / capacity) }
    }
}

/// The load of a leg where one of four bears nothing, N.
pub fn three_legs_n(weight_n: f64, sheet: &mut Sheet) -> f64 {
    let weight = sheet.step(W, weight_n);
    sheet.step(N_THREE, weight / 3.0)
}

/// How many wheels bear: one of four is counted out, as any joint may lift it; of more, one fewer than there are.
pub fn bearing_wheels(wheels: f64) -> f64 {
    if limit::more(wheels, 3.0) { wheels - 1.0 } else { wheels }
}

/// A cabinet on its wheels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rolled {
    /// Weight.
    pub weight_n: f64,
    /// Wheels.
    pub wheels: f64,
    /// Dynamic factor.
    pub dynamic: f64,
}

impl Rolled {
    /// The load of one wheel on the way in, N.
    pub fn wheel_n(&self, sheet: &mut Sheet) -> f64 {
        let weight = sheet.step(W, self.weight_n);
        let dynamic = sheet.step(PHI_D, self.dynamic);
        let bearing = sheet.step(N_W, bearing_wheels(self.wheels));
        sheet.step(F_WHEEL, dynamic * weight / bearing)
    }

    /// The wheel against the rolling rating of a panel.
    pub fn on_panel(&self, rolling_n: f64, sheet: &mut Sheet) -> Compared {
        let wheel = self.wheel_n(sheet);
        let rating = sheet.step(F_ROLL, rolling_n);
        Compared { value: wheel, limit: rating, utilisation: sheet.step(U_R, wheel / rating) }
    }
}

/// The footprint against the uniform load of the panels.
pub fn uniform(weight_n: f64, footprint_mm: [f64; 2], panel_mpa: (StepId, f64), sheet: &mut Sheet) -> Compared {
    let weight = sheet.step(W, weight_n);
    let width = sheet.step(LX, footprint_mm[0]);
    let depth = sheet.step(LY, footprint_mm[1]);
    let load = sheet.step(Q_F, weight / (width * depth));
    let panel = sheet.step(panel_mpa.0, panel_mpa.1);
    Compared { value: load, limit: panel, utilisation: sheet.step(U_Q, load / panel) }
}
