//! The steps of lifting.

use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::{Document, steps};

/// EN 13414-1.
pub static EN_13414_1: Document = Document {
    short: "EN 13414-1",
    title: "EN 13414-1:2003+A2:2008, Steel wire rope slings: Slings for general lifting service",
};
/// DIN 580.
pub static DIN_580: Document = Document { short: "DIN 580", title: "DIN 580, Lifting eye bolts" };
/// ASME B30.26.
pub static ASME_B30_26: Document = Document { short: "ASME B30.26", title: "ASME B30.26, Rigging Hardware" };
/// ASME BTH-1.
pub static ASME_BTH_1: Document =
    Document { short: "ASME BTH-1", title: "ASME BTH-1, Design of Below-the-Hook Lifting Devices" };
/// EN 13155.
pub static EN_13155: Document =
    Document { short: "EN 13155", title: "EN 13155:2003+A2:2009, Cranes: Safety: Non-fixed load lifting attachments" };
/// WAC 296-155-56110.
pub static WAC: Document = Document {
    short: "WAC 296-155-56110",
    title: "Washington Administrative Code 296-155-56110, Rigging: lifting hardware",
};
/// FED-STD-H28/2B.
pub static FED_STD_H28: Document = Document {
    short: "FED-STD-H28/2B",
    title: "FED-STD-H28/2B, Screw-Thread Standards for Federal Services, Section 2: Unified Inch Screw Threads",
};

steps! { 22 "lifting";
    M "m" Mass (STATICS "" Derived) "Mass of this state": Given;
    G "g" Gravity (STATICS "9.80665 m/s2" Derived) "Weight of a mass": Given;
    GAMMA "gamma_d" Number (PRACTICE "hoisting of a crane" Memory) "Allowance for the hoisting motion": Given;
    W "W" Force (STATICS "" Derived) "Weight with the allowance" = "m * g * gamma_d";
    Z_G "z_G" Length (STATICS "" Derived) "Centre of gravity above the floor": Given;
    Z_P "z_P" Length (INPUT "cabinet.lifting_points" Derived) "Lowest lifting point above the floor": Given;
    U_CENTRE "u" Utilisation (STATICS "a load that hangs below its points comes back" Derived) "Height of the centre over that of the points" = "z_G / z_P";
    ABOVE "" Number (STATICS "" Derived) "the centre of gravity lies above a lifting point: a leg may go slack and the load turn over, so a rigger must keep it within the slings": Reason;
    Z_H "z_H" Length (INPUT "lifting" Derived) "Hook above the floor": Given;
    E_H "e_H" Length (STATICS "" Derived) "Centre of gravity beside the hook, before it swings": Geometry;
    TILT "theta" Angle (STATICS "the centre comes to rest below the hook" Derived) "How far it tilts until its centre hangs below the hook": Geometry;
    TILT_MAX "theta_max" Angle (PRACTICE "" Memory) "Tilt that is tolerated for a load that must not slide or strike": Condition;
    U_TILT "u" Utilisation (STATICS "" Derived) "Tilt over the tilt that is tolerated" = "theta / theta_max";
    HOOK_LOW "" Number (STATICS "" Derived) "the hook does not stand above the centre of gravity: it cannot hang there": Reason;
    BETA "beta" Angle (STATICS "" Derived) "Flattest leg, from the vertical": Geometry;
    BETA_MAX "beta_max" Angle (EN_13414_1 "Table 4; OSHA: not below 30 degrees from the horizontal" Secondary) "Flattest leg that is used": Condition;
    U_ANGLE "u" Utilisation (EN_13414_1 "Table 4" Secondary) "Angle over the flattest that is used" = "beta / beta_max";
    T_I "T_i" Force (STATICS "equilibrium of the legs that carry, worst set for each leg" Derived) "Pull in each leg": Solved;
    T "T" Force (STATICS "" Derived) "Pull in the hardest leg": Solved;
    M_LEG "m_1" Mass (INPUT "lifting" Derived) "Rating of a single straight leg": Given;
    R_LEG "R" Force (STATICS "" Derived) "Rating of a leg as a force" = "m_1 * g";
    U_LEG "u" Utilisation (STATICS "" Derived) "Pull over rating" = "T / R";
    NO_LEG_RATING "" Number (INPUT "lifting" Derived) "the rating of a single leg of the slings is not given (leg_capacity_kg)": Reason;
    N_LEGS "n" Number (EN_13414_1 "a rigid load on four legs counts as on two" Secondary) "Legs that count": Condition;
    K_L "K_L" Number (EN_13414_1 "Table 4" Secondary) "Leg factor": Table;
    M_SET "m_set" Mass (EN_13414_1 "Table 4" Secondary) "Rating of the sling set" = "K_L * m_1";
    R_SLING "R" Force (STATICS "" Derived) "Rating of the sling set as a force" = "m_set * g";
    U_SLING "u" Utilisation (EN_13414_1 "Table 4" Secondary) "Weight over rating of the set" = "W / R";
    TOO_FLAT "" Number (EN_13414_1 "Table 4" Secondary) "the table of leg factors ends at 60 degrees from the vertical": Reason;
    BETA_PICK "beta" Angle (STATICS "" Derived) "Pull at the point that is used most, from the axis of its bolt": Geometry;
    T_PICK "T" Force (STATICS "" Derived) "Pull at that point": Geometry;
    M_EYE "m_1" Mass (DIN_580 "Table A.1" Secondary) "Rating of the eyebolt for a pull so far from its axis": Table;
    M_RING "m_1" Mass (INPUT "lifting" Derived) "Rating of the hoist ring": Given;
    M_0 "m_0" Mass (INPUT "lifting" Derived) "Rating of the shouldered eyebolt along its axis": Given;
    K_P "k_p" Number (ASME_B30_26 "the lowest of the tables in use: 1 to 5 degrees, 0.55 to 15, 0.25 to 90" Memory) "Share of it for a pull so far from the axis": Table;
    M_SHOULDER "m_1" Mass (ASME_B30_26 "" Memory) "Rating for a pull so far from its axis" = "k_p * m_0";
    F_YIELD "F_y" Force (INPUT "lifting" Derived) "Force at which the lug begins to yield": Given;
    F_BREAK "F_u" Force (INPUT "lifting" Derived) "Force at which the lug breaks or lets go": Given;
    N_D "N_d" Number (ASME_BTH_1 "3-1.3" Secondary) "Design factor against yielding; against breaking and in connections 1.2 times as much": Table;
    R_LUG "R" Force (ASME_BTH_1 "3-1.3" Secondary) "What the lug may carry" = "min(F_y / N_d, F_u / (1.2 * N_d))";
    R_LUG_EN "R" Force (EN_13155 "5.1.1" Memory) "What the lug may carry: half of where it keeps a set, a third of where it lets go" = "min(F_y / 2, F_u / 3)";
    R_PICK "R" Force (STATICS "" Derived) "Rating of the point as a force" = "m_1 * g";
    U_PICK "u" Utilisation (STATICS "" Derived) "Pull over rating" = "T / R";
    NO_RATING "" Number (INPUT "lifting" Derived) "nothing is given of what the slings are hooked to: an eyebolt, the rating of a shouldered one or of a hoist ring, or yield and break of a lug (eyebolt, shoulder_eyebolt_kg, ring_capacity_kg, lug_yield_n, lug_break_n)": Reason;
    TOO_SIDEWAYS "" Number (DIN_580 "Table A.1" Secondary) "an eyebolt is not rated for a pull below its own plane": Reason;
    D "d" Length (DIN_580 "" Secondary) "Nominal diameter of the thread": Given;
    P "P" Length (DIN_580 "" Secondary) "Pitch of the thread": Given;
    L_E "L_e" Length (INPUT "lifting" Derived) "Length of thread that is engaged": Given;
    K_E "k_e" Number (WAC "tapped blind hole in steel" Secondary) "Diameters of thread that must be engaged": Condition;
    L_MIN "L_min" Length (WAC "tapped blind hole in steel" Secondary) "Thread that must be engaged" = "k_e * d";
    U_LENGTH "u_L" Utilisation (WAC "" Secondary) "Thread needed over thread engaged" = "L_min / L_e";
    D_2 "d_2" Length (FED_STD_H28 "basic profile" Memory) "Basic pitch diameter" = "d - 0.649519 * P";
    PI "pi" Number (STATICS "" Derived) "Half a turn": Constant;
    A_N "A_s_n" Area (FED_STD_H28 "basic profile, no tolerances" Memory) "Area of the inner thread that would shear" = "pi * L_e / P * d * (P / 2 + 0.57735 * (d - d_2))";
    R_M "R_m" Stress (INPUT "lifting" Derived) "Tensile strength of the part that holds the thread": Given;
    F_STRIP "F_s" Force (FED_STD_H28 "shear strength half the tensile strength" Memory) "Pull that strips the thread" = "0.5 * R_m * A_s_n";
    NU "nu" Number (DIN_580 "working coefficient" Secondary) "Working coefficient, the same as that of the eyebolt": Condition;
    R_STRIP "R" Force (DIN_580 "working coefficient" Secondary) "What the thread may carry" = "F_s / nu";
    U_STRIP "u" Utilisation (DIN_580 "" Derived) "The larger of pull over what the thread may carry, and thread needed over thread engaged" = "max(T / R, u_L)";
    NO_THREAD "" Number (INPUT "lifting" Derived) "the thread that is engaged, or the strength of the part that holds it, is not given (thread_engagement_mm, base_tensile_mpa)": Reason;
    LUG_NO_THREAD "" Number (INPUT "lifting" Derived) "a lug has no thread": Reason;
    OTHER_THREAD "" Number (INPUT "lifting" Derived) "the thread of an eyebolt that is given by its rating alone is not known": Reason;
    RING_THREAD "" Number (INPUT "lifting" Derived) "a hoist ring brings its own rule for its thread": Reason;
    TWO_POINTS "" Number (STATICS "" Derived) "with fewer than three lifting points it swings about the line between them": Reason;
    SWINGS "" Number (STATICS "" Derived) "the line from the hook through the centre of gravity passes outside of the legs: no set of legs holds it so": Reason;
}
