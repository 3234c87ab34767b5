//! What TI 809-04 writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::{FEMA_302, TI_809_04};

steps! { 37 "ti-809-04";
    S_S "S_S" Acceleration (INPUT "" Derived) "Mapped spectral acceleration at short periods": Given;
    CLASS_A "class" Number (FEMA_302 "4.1.2.1" Memory) "Site class A: hard rock": Name;
    CLASS_B "class" Number (FEMA_302 "4.1.2.1" Memory) "Site class B: rock": Name;
    CLASS_C "class" Number (FEMA_302 "4.1.2.1" Memory) "Site class C: very dense soil, soft rock": Name;
    CLASS_D "class" Number (FEMA_302 "4.1.2.1" Memory) "Site class D: stiff soil, also where not known": Name;
    CLASS_E "class" Number (FEMA_302 "4.1.2.1" Memory) "Site class E: soft clay": Name;
    CLASS_F "class" Number (FEMA_302 "4.1.2.1" Memory) "Site class F": Name;
    F_A "F_a" Number (FEMA_302 "Table 4.1.2.4a" Memory) "Site coefficient at short periods": Interpolated;
    S_MS "S_MS" Acceleration (FEMA_302 "4.1.2.4" Memory) "Maximum considered acceleration at short periods, with the soil" = "F_a * S_S";
    S_DS_A "S_DS" Acceleration (TI_809_04 "ground motion A" Memory) "Design spectral acceleration at short periods" = "2 / 3 * S_MS";
    S_DS_B "S_DS" Acceleration (TI_809_04 "ground motion B" Memory) "Design spectral acceleration at short periods" = "3 / 4 * S_MS";
    S_DS_GIVEN "S_DS" Acceleration (INPUT "" Derived) "Design spectral acceleration at short periods": Given;

    ROW_ELECTRICAL "row" Number (TI_809_04 "Table 10-2" Memory) "General electrical equipment": Name;
    ROW_MECHANICAL "row" Number (TI_809_04 "Table 10-2" Memory) "General mechanical equipment": Name;
    ROW_VENTILATION "row" Number (TI_809_04 "Table 10-2" Memory) "Ventilation and air conditioning, not isolated": Name;
    ROW_STORAGE "row" Number (TI_809_04 "Table 10-1" Published) "Storage cabinet, laboratory equipment": Name;
    ROW_RIGID_HIGH "row" Number (TI_809_04 "Table 10-1" Published) "Other rigid component, high deformability": Name;
    ROW_RIGID_LIMITED "row" Number (TI_809_04 "Table 10-1" Published) "Other rigid component, limited deformability": Name;
    ROW_RIGID_LOW "row" Number (TI_809_04 "Table 10-1" Published) "Other rigid component, low deformability": Name;
    ROW_FLEXIBLE_HIGH "row" Number (TI_809_04 "Table 10-1" Published) "Other flexible component, high deformability": Name;
    ROW_FLEXIBLE_LIMITED "row" Number (TI_809_04 "Table 10-1" Published) "Other flexible component, limited deformability": Name;
    ROW_FLEXIBLE_LOW "row" Number (TI_809_04 "Table 10-1" Published) "Other flexible component, low deformability": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    A_P_1 "a_p" Number (TI_809_04 "Table 10-1" Published) "Component amplification factor": Table;
    A_P_2 "a_p" Number (TI_809_04 "Table 10-2" Memory) "Component amplification factor": Table;
    A_P_GIVEN "a_p" Number (INPUT "" Derived) "Component amplification factor": Given;
    R_P_1 "R_p" Number (TI_809_04 "Table 10-1" Published) "Component response factor": Table;
    R_P_2 "R_p" Number (TI_809_04 "Table 10-2" Memory) "Component response factor": Table;
    R_P_GIVEN "R_p" Number (INPUT "" Derived) "Component response factor": Given;
    I_P "I_p" Number (INPUT "" Derived) "Component importance factor (10-1d)": Given;

    Z "z" Height (INPUT "" Derived) "Height of the attachment above grade": Given;
    H "h" Height (INPUT "" Derived) "Average height of the roof above grade": Given;
    R_Z "r_z" Number (TI_809_04 "10-1" Memory) "Height of the attachment over height of the roof, at most 1" = "min(1, z / h)";
    R_Z_BASE "r_z" Number (TI_809_04 "10-1" Memory) "Attached at or below grade": Condition;

    C_1 "c_1" Acceleration (TI_809_04 "10-1" Memory) "Horizontal force over the weight, before limits" = "0.4 * a_p * S_DS / (R_p / I_p) * (1 + 2 * r_z)";
    C_MAX "c_max" Acceleration (TI_809_04 "10-2" Memory) "It need not be more than" = "1.6 * S_DS * I_p";
    C_MIN "c_min" Acceleration (TI_809_04 "10-3" Memory) "It may not be less than" = "0.3 * S_DS * I_p";
    C_P "c_p" Acceleration (TI_809_04 "10-1 to 10-3" Memory) "Horizontal force over the weight" = "max(c_min, min(c_max, c_1))";
    C_V "c_v" Acceleration (FEMA_302 "5.2.7" Memory) "Vertical force over the weight, up or down together with the horizontal one" = "0.2 * S_DS";
    W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_P "F_p" Force (TI_809_04 "10-1 to 10-3" Memory) "Horizontal force on the cabinet" = "c_p * W_p";
    E_V "E_v" Force (FEMA_302 "5.2.7" Memory) "Vertical force on the cabinet" = "c_v * W_p";
    R_PA_DEEP "R_pa" Number (FEMA_302 "6.1.6" Memory) "Response factor for anchors embedded at least eight diameters" = "R_p";
    R_PA_SHALLOW "R_pa" Number (FEMA_302 "6.1.6" Memory) "Response factor for anchors embedded less than eight diameters" = "min(1.5, R_p)";
    C_1A "c_1a" Acceleration (TI_809_04 "10-1" Memory) "Horizontal force over the weight for anchors, before limits" = "0.4 * a_p * S_DS / (R_pa / I_p) * (1 + 2 * r_z)";
    C_PA "c_pa" Acceleration (FEMA_302 "6.1.6" Memory) "Prescribed horizontal force over the weight for anchors" = "max(c_min, min(c_max, c_1a))";
    H_A "h_a" Acceleration (FEMA_302 "6.1.6" Memory) "Horizontal force over the weight for anchors: 1.3 times the prescribed one" = "1.3 * c_pa";
    F_PA "F_pa" Force (FEMA_302 "6.1.6" Memory) "Horizontal force on the cabinet for its anchors" = "h_a * W_p";
    V_A "v_a" Acceleration (FEMA_302 "6.1.6" Memory) "Vertical force over the weight for anchors, raised alike" = "1.3 * c_v";
    V_1 "v_1" Number (FEMA_302 "5.2.7" Memory) "Downward load over the weight: 1.2 D and 1.0 E downwards" = "1.2 + c_v";
    V_2 "v_2" Number (FEMA_302 "5.2.7" Memory) "Downward load over the weight: 0.9 D and 1.0 E upwards" = "0.9 - c_v";
    V_1A "v_1a" Number (FEMA_302 "5.2.7, 6.1.6" Memory) "Downward load over the weight for anchors, weight adding" = "1.2 + v_a";
    V_2A "v_2a" Number (FEMA_302 "5.2.7, 6.1.6" Memory) "Downward load over the weight for anchors, weight holding down" = "0.9 - v_a";

    HEAVY "1.2" Number (FEMA_302 "5.2.7" Memory) "1.2 D + 1.0 E": Name;
    LIGHT "0.9" Number (FEMA_302 "5.2.7" Memory) "0.9 D - 1.0 E": Name;
    HEAVY_ANCHORS "1.2a" Number (FEMA_302 "5.2.7, 6.1.6" Memory) "1.2 D + 1.3 E, anchors": Name;
    LIGHT_ANCHORS "0.9a" Number (FEMA_302 "5.2.7, 6.1.6" Memory) "0.9 D - 1.3 E, anchors": Name;

    CATEGORY_C "seismic design category" Number (FEMA_302 "Table 4.2.1a" Memory) "S_DS of 0.33 or more puts the building in seismic design category C or higher; its anchors may not be designed as in A or B": Reason;
    NOT_DEEP "anchor type" Number (FEMA_302 "6.1.6" Memory) "an anchor is embedded less than eight diameters, but the demand was asked for deep anchors; the anchor type \"shallow\" would fit": Reason;
    NOT_AMPLIFIED "overstrength" Number (FEMA_302 "6.1.6" Memory) "This document has no overstrength factor for components: it raises the force on anchors by 1.3 and limits their response factor instead.": Reason;
    NOT_CLASS_F "site class" Number (FEMA_302 "4.1.2.4" Memory) "site class F, and E with S_S above 1.0, have no site coefficient: they need an investigation of the site, which gives S_DS": Reason;
}
