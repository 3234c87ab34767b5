//! The steps of moving.

use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::{Document, steps};

/// HSE guidance on manual handling.
pub static HSE_L23: Document = Document {
    short: "HSE L23",
    title: "HSE L23, Manual handling, Manual Handling Operations Regulations 1992: Guidance; with research report RR228",
};
/// A textbook of physics.
pub static HALLIDAY: Document = Document {
    short: "Halliday",
    title: "Halliday, Resnick, Walker, Fundamentals of Physics, chapter 12, problem 21: a wheel at a step",
};
/// OSHA 29 CFR 1910.178.
pub static OSHA_TRUCKS: Document =
    Document { short: "29 CFR 1910.178", title: "29 CFR 1910.178 Appendix A-5, Powered industrial trucks, OSHA" };
/// EN 12195-1 and the CTU code.
pub static EN_12195_1: Document = Document {
    short: "EN 12195-1",
    title: "EN 12195-1:2010, Load restraining on road vehicles; and the IMO/ILO/UNECE code of practice for packing of cargo transport units",
};

steps! { 23 "moving";
    M "m" Mass (STATICS "" Derived) "Mass of this state": Given;
    G "g" Gravity (STATICS "9.80665 m/s2" Derived) "Weight of a mass": Given;
    W "W" Force (STATICS "" Derived) "Weight" = "m * g";
    SLOPE "s" Number (INPUT "moving" Derived) "Slope of the ramp, rise over run": Given;
    L_S "l_s" Number (STATICS "" Derived) "Length of the slope over its run" = "sqrt(1 + s^2)";
    C_RR "c_rr" Number (HSE_L23 "at least 2 % of the load on a clean level floor" Secondary) "Rolling resistance over the weight": Given;
    A_S "a_s" Acceleration (INPUT "moving" Derived) "Acceleration at the start": Given;
    F_PUSH "F" Force (STATICS "along the slope" Derived) "Force that starts it" = "W * (s + c_rr) / l_s + W * a_s";
    F_ONE "F_1" Force (HSE_L23 "starting or stopping, hands between knuckle and shoulder" Secondary) "What one person may push to start it": Table;
    F_KEEP "F" Force (STATICS "along the slope" Derived) "Force that keeps it in motion" = "W * (s + c_rr) / l_s";
    F_ONE_KEEPS "F_1" Force (HSE_L23 "keeping in motion, hands between knuckle and shoulder" Secondary) "What one person may push to keep it in motion": Table;
    N_P "n" Number (INPUT "moving" Derived) "People": Given;
    K_N "k_n" Number (PRACTICE "two people two thirds of the sum, three and more a half" Memory) "Share of the sum that a team reaches": Table;
    F_TEAM "F_n" Force (HSE_L23 "" Secondary) "What the team may push" = "F_1 * n * k_n";
    U_PUSH "u" Utilisation (HSE_L23 "" Secondary) "Force over what the team may push" = "F / F_n";
    POWERED "" Number (INPUT "moving" Derived) "a powered mover pulls it: its own rating governs": Reason;
    R_W "r" Length (INPUT "moving" Derived) "Radius of the wheels": Given;
    H_S "h_s" Length (INPUT "moving" Derived) "Height of the sill": Given;
    K_A "k_a" Number (STATICS "the axle that carries most" Derived) "Share of the weight on the axle that climbs": Geometry;
    W_A "W_a" Force (STATICS "" Derived) "Weight on the axle that climbs" = "k_a * W";
    F_SILL "F" Force (HALLIDAY "chapter 12, problem 21" Published) "Level pull at the axle that lifts the wheels over the sill" = "W_a * sqrt(2 * r * h_s - h_s^2) / (r - h_s)";
    NO_SILL "" Number (INPUT "moving" Derived) "there is no sill": Reason;
    NO_WHEEL "" Number (INPUT "moving" Derived) "the radius of the wheels is not given (wheel_radius_mm)": Reason;
    H "h" Length (STATICS "" Derived) "Height of the centre of gravity": Given;
    T "t" Length (STATICS "" Derived) "Distance from the centre of gravity to the nearest side of the wheels' hull": Geometry;
    A_TIP "a_tip" Acceleration (STATICS "moments about the lower wheels" Derived) "Braking at which it tips down the slope" = "(t / h - s) / l_s";
    A_B "a_b" Acceleration (PRACTICE "service 0.1 to 0.3, emergency 0.3 to 0.5" Memory) "Braking": Given;
    U_BRAKE "u" Utilisation (STATICS "" Derived) "Braking over braking at which it tips" = "a_b / a_tip";
    STEEP "" Number (STATICS "" Derived) "on this slope it tips without any braking": Reason;
    M_R "m_r" Mass (INPUT "moving" Derived) "Rating of the truck": Given;
    C_R "c_r" Length (INPUT "moving" Derived) "Load centre of that rating, from the face of the forks": Given;
    C "c" Length (STATICS "" Derived) "Centre of gravity from the face of the forks": Geometry;
    M_C "m_c" Mass (OSHA_TRUCKS "Appendix A-5" Published) "What the truck may lift there, never above its rating" = "min(m_r, m_r * c_r / c)";
    U_TRUCK "u" Utilisation (OSHA_TRUCKS "Appendix A-5" Published) "Mass over what the truck may lift" = "m / m_c";
    UPGRADE "" Number (OSHA_TRUCKS "(n)(7)(i)" Memory) "On a grade of more than 10 % a truck travels with its load uphill": Name;
    NO_TRUCK "" Number (INPUT "moving" Derived) "rating and load centre of the truck are not given (truck_rating_kg, truck_centre_mm)": Reason;
    S_F "s_f" Length (INPUT "moving" Derived) "Outer spread of the forks": Given;
    E_F "e_f" Length (STATICS "" Derived) "Centre of gravity beside the middle of the forks": Geometry;
    A_SIDE "a_side" Acceleration (STATICS "moments about the outer edge of a fork" Derived) "Sideways acceleration at which it tips off the forks" = "(s_f / 2 - e_f) / h";
    A_T "a_t" Acceleration (PRACTICE "a slow turn" Memory) "Sideways acceleration in a turn": Given;
    U_FORKS "u" Utilisation (STATICS "" Derived) "Acceleration in a turn over that at which it tips" = "a_t / a_side";
    NO_FORKS "" Number (INPUT "moving" Derived) "the spread of the forks is not given (fork_spread_mm)": Reason;
    OFF_FORKS "" Number (STATICS "" Derived) "the centre of gravity does not stand between the forks": Reason;
    T_F "t_f" Length (INPUT "moving" Derived) "Height of the forks when let down": Given;
    H_E "h_e" Length (INPUT "moving" Derived) "Clear height under the base": Given;
    U_ENTRY "u" Utilisation (STATICS "" Derived) "Height of the forks over the clear height" = "t_f / h_e";
    NO_ENTRY "" Number (INPUT "moving" Derived) "the clear height under the base or the height of the forks is not given (entry_height_mm, fork_height_mm)": Reason;
    C_ROAD "c_a" Acceleration (EN_12195_1 "road: forward 0.8, sideways and to the rear 0.5, 0.6 where it may tip" Secondary) "Acceleration that a load on the road is secured for": Table;
    C_OTHER "c_a" Acceleration (EN_12195_1 "code of practice: sea and rail" Memory) "Acceleration that the load is secured for": Table;
    A_STAND "a_tip" Acceleration (STATICS "moments about the nearest side" Derived) "Acceleration at which it tips" = "t / h";
    U_ROAD "u" Utilisation (EN_12195_1 "" Secondary) "Acceleration over that at which it tips: above 1 it must be restrained against tipping" = "c_a / a_tip";
    NOT_SENT "" Number (INPUT "moving" Derived) "it is not sent by road, rail or sea": Reason;
    BESIDE "" Number (STATICS "" Derived) "the centre of gravity does not stand over the wheels": Reason;
}
