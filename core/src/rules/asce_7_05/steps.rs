//! What ASCE 7-05 writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::ASCE_7_05;

steps! { 35 "asce-7-05";
    S_S "S_S" Acceleration (INPUT "" Derived) "Mapped spectral acceleration at short periods": Given;
    CLASS_A "class" Number (ASCE_7_05 "20.3" Memory) "Site class A: hard rock": Name;
    CLASS_B "class" Number (ASCE_7_05 "20.3" Memory) "Site class B: rock": Name;
    CLASS_C "class" Number (ASCE_7_05 "20.3" Memory) "Site class C: very dense soil, soft rock": Name;
    CLASS_D "class" Number (ASCE_7_05 "20.3" Memory) "Site class D: stiff soil, also where not known": Name;
    CLASS_E "class" Number (ASCE_7_05 "20.3" Memory) "Site class E: soft clay": Name;
    CLASS_F "class" Number (ASCE_7_05 "20.3" Memory) "Site class F": Name;
    F_A "F_a" Number (ASCE_7_05 "Table 11.4-1" Memory) "Site coefficient at short periods": Interpolated;
    S_MS "S_MS" Acceleration (ASCE_7_05 "11.4-1" Memory) "Maximum considered acceleration at short periods, with the soil" = "F_a * S_S";
    S_DS "S_DS" Acceleration (ASCE_7_05 "11.4-3" Memory) "Design spectral acceleration at short periods" = "2 / 3 * S_MS";
    S_DS_GIVEN "S_DS" Acceleration (INPUT "" Derived) "Design spectral acceleration at short periods": Given;

    ROW_SHEET_METAL "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Motor control centre, panelboard, switchgear, instrumentation cabinet, other sheet-metal framing": Name;
    ROW_COMMUNICATION "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Communication equipment, computers, instrumentation, controls": Name;
    ROW_GENERATOR "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Generator, battery, inverter, motor, transformer": Name;
    ROW_AIR_SIDE "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Air-side equipment, fan, air conditioner, sheet-metal framing": Name;
    ROW_WET_SIDE "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Wet-side equipment, boiler, chiller, tank, process equipment": Name;
    ROW_ENGINE "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Engine, turbine, pump, compressor": Name;
    ROW_OTHER "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Other mechanical or electrical component": Name;
    ROW_ISOLATED_NEOPRENE "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Vibration isolated: neoprene, with snubbers or stops": Name;
    ROW_ISOLATED_SPRINGS "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Vibration isolated: springs, closely restrained": Name;
    ROW_ISOLATED_INTERNALLY "row" Number (ASCE_7_05 "Table 13.6-1" Memory) "Vibration isolated internally": Name;
    ROW_STORAGE "row" Number (ASCE_7_05 "Table 13.5-1" Memory) "Storage cabinet over 1.83 m (6 ft) tall, with contents": Name;
    ROW_SHELVING "row" Number (ASCE_7_05 "Table 13.5-1" Memory) "Library shelving, book stacks over 1.83 m (6 ft) tall": Name;
    ROW_LABORATORY "row" Number (ASCE_7_05 "Table 13.5-1" Memory) "Laboratory equipment": Name;
    ROW_RIGID_HIGH "row" Number (ASCE_7_05 "Table 13.5-1" Memory) "Other rigid component, high deformability": Name;
    ROW_RIGID_LIMITED "row" Number (ASCE_7_05 "Table 13.5-1" Memory) "Other rigid component, limited deformability": Name;
    ROW_RIGID_LOW "row" Number (ASCE_7_05 "Table 13.5-1" Memory) "Other rigid component, low deformability": Name;
    ROW_FLEXIBLE_HIGH "row" Number (ASCE_7_05 "Table 13.5-1" Memory) "Other flexible component, high deformability": Name;
    ROW_FLEXIBLE_LIMITED "row" Number (ASCE_7_05 "Table 13.5-1" Memory) "Other flexible component, limited deformability": Name;
    ROW_FLEXIBLE_LOW "row" Number (ASCE_7_05 "Table 13.5-1" Memory) "Other flexible component, low deformability": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    A_P_MECHANICAL "a_p" Number (ASCE_7_05 "Table 13.6-1" Memory) "Component amplification factor": Table;
    A_P_ARCHITECTURAL "a_p" Number (ASCE_7_05 "Table 13.5-1" Memory) "Component amplification factor": Table;
    A_P_GIVEN "a_p" Number (INPUT "" Derived) "Component amplification factor": Given;
    R_P_MECHANICAL "R_p" Number (ASCE_7_05 "Table 13.6-1" Memory) "Component response factor": Table;
    R_P_ARCHITECTURAL "R_p" Number (ASCE_7_05 "Table 13.5-1" Memory) "Component response factor": Table;
    R_P_GIVEN "R_p" Number (INPUT "" Derived) "Component response factor": Given;
    I_P "I_p" Number (INPUT "" Derived) "Component importance factor (13.1.3)": Given;

    Z "z" Height (INPUT "" Derived) "Height of the attachment above the base": Given;
    H "h" Height (INPUT "" Derived) "Average height of the roof above the base": Given;
    R_Z "r_z" Number (ASCE_7_05 "13.3.1" Memory) "Height of the attachment over height of the roof, at most 1" = "min(1, z / h)";
    R_Z_BASE "r_z" Number (ASCE_7_05 "13.3.1" Memory) "Attached at or below the base": Condition;

    C_1 "c_1" Acceleration (ASCE_7_05 "13.3-1" Memory) "Horizontal force over the weight, before limits" = "0.4 * a_p * S_DS / (R_p / I_p) * (1 + 2 * r_z)";
    C_MAX "c_max" Acceleration (ASCE_7_05 "13.3-2" Memory) "It need not be more than" = "1.6 * S_DS * I_p";
    C_MIN "c_min" Acceleration (ASCE_7_05 "13.3-3" Memory) "It may not be less than" = "0.3 * S_DS * I_p";
    C_P "c_p" Acceleration (ASCE_7_05 "13.3.1" Memory) "Horizontal force over the weight" = "max(c_min, min(c_max, c_1))";
    C_LIMITED "c_l" Acceleration (ASCE_7_05 "13.3.1" Memory) "Horizontal force over the weight, before what the snubbers add" = "max(c_min, min(c_max, c_1))";
    GAP "g" Length (INPUT "" Derived) "Clearance at the snubbers": Given;
    GAP_MAX "g_b" Length (ASCE_7_05 "Table 13.6-1, footnote b" Memory) "Clearance up to which the force is not doubled, 0.25 in": Constant;
    C_P_ISOLATED "c_p" Acceleration (ASCE_7_05 "Table 13.6-1, footnote b" Memory) "Horizontal force over the weight" = "if(g > g_b, 2, 1) * c_l";
    C_V "c_v" Acceleration (ASCE_7_05 "13.3.1" Memory) "Vertical force over the weight, up or down together with the horizontal one" = "0.2 * S_DS";
    W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_P "F_p" Force (ASCE_7_05 "13.3.1" Memory) "Horizontal force on the cabinet" = "c_p * W_p";
    E_V "E_v" Force (ASCE_7_05 "13.3.1" Memory) "Vertical force on the cabinet" = "c_v * W_p";
    R_PA_QUALIFIED "R_pa" Number (ASCE_7_05 "13.4.2" Memory) "Response factor for anchors that are ductile or prequalified" = "R_p";
    R_PA_OTHER "R_pa" Number (ASCE_7_05 "13.4.2" Memory) "Response factor for other anchors" = "min(1.5, R_p)";
    C_1A "c_1a" Acceleration (ASCE_7_05 "13.3-1" Memory) "Horizontal force over the weight for anchors, before limits" = "0.4 * a_p * S_DS / (R_pa / I_p) * (1 + 2 * r_z)";
    C_PA "c_pa" Acceleration (ASCE_7_05 "13.3.1, 13.4.2" Memory) "Prescribed horizontal force over the weight for anchors" = "max(c_min, min(c_max, c_1a))";
    C_LA "c_la" Acceleration (ASCE_7_05 "13.3.1, 13.4.2" Memory) "The same for anchors, before what the snubbers add" = "max(c_min, min(c_max, c_1a))";
    C_PA_ISOLATED "c_pa" Acceleration (ASCE_7_05 "Table 13.6-1, footnote b" Memory) "Prescribed horizontal force over the weight for anchors" = "if(g > g_b, 2, 1) * c_la";
    H_A "h_a" Acceleration (ASCE_7_05 "13.4.2 a" Memory) "Horizontal force over the weight for anchors: 1.3 times the prescribed one; where the component can pass on less, that may be taken" = "1.3 * c_pa";
    F_A_ANCHORS "F_pa" Force (ASCE_7_05 "13.4.2 a" Memory) "Horizontal force on the cabinet for its anchors" = "h_a * W_p";
    V_A "v_a" Acceleration (ASCE_7_05 "13.4.2 a" Memory) "Vertical force over the weight for anchors, raised alike" = "1.3 * c_v";
    V_5 "v_5" Number (ASCE_7_05 "2.3.2, combination 5, with 12.4.2.3" Memory) "Downward load over the weight: 1.2 D + E_v, with 1.0 E_h" = "1.2 + c_v";
    V_7 "v_7" Number (ASCE_7_05 "2.3.2, combination 7, with 12.4.2.3" Memory) "Downward load over the weight: 0.9 D - E_v, with 1.0 E_h" = "0.9 - c_v";

    V_5A "v_5a" Number (ASCE_7_05 "2.3.2, combination 5, with 13.4.2" Memory) "Downward load over the weight for anchors, weight adding" = "1.2 + v_a";
    V_7A "v_7a" Number (ASCE_7_05 "2.3.2, combination 7, with 13.4.2" Memory) "Downward load over the weight for anchors, weight holding down" = "0.9 - v_a";

    LRFD_5 "LRFD 5" Number (ASCE_7_05 "2.3.2, combination 5, with 12.4.2.3" Memory) "1.2 D + 1.0 E": Name;
    LRFD_7 "LRFD 7" Number (ASCE_7_05 "2.3.2, combination 7, with 12.4.2.3" Memory) "0.9 D - 1.0 E": Name;
    LRFD_5_ANCHORS "LRFD 5a" Number (ASCE_7_05 "2.3.2, combination 5, with 13.4.2" Memory) "1.2 D + 1.3 E, anchors": Name;
    LRFD_7_ANCHORS "LRFD 7a" Number (ASCE_7_05 "2.3.2, combination 7, with 13.4.2" Memory) "0.9 D - 1.3 E, anchors": Name;

    CATEGORY_C "seismic design category" Number (ASCE_7_05 "Table 11.6-1" Memory) "S_DS of 0.33 or more puts the building in seismic design category C or higher; its anchors may not be designed as in A or B": Reason;
    NOT_AMPLIFIED "overstrength" Number (ASCE_7_05 "13.4.2" Memory) "This edition has no overstrength factor for components: it raises the force on anchors by 1.3 and limits their response factor instead.": Reason;
    NOT_QUALIFIED "anchor type" Number (ASCE_7_05 "13.4.2" Memory) "a cast-in anchor is of steel that counts as brittle, but the demand was asked for anchors whose ductile steel governs; the anchor type \"other\" would fit": Reason;
    NOT_CLASS_F "site class F" Number (ASCE_7_05 "11.4.7" Memory) "site class F has no site coefficient: it needs a site response analysis, which gives S_DS": Reason;
}
