//! What SNI 1726:2019 writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::SNI_1726;

steps! { 118 "sni-1726";
    S_S "S_S" Acceleration (INPUT "" Derived) "Mapped spectral acceleration at short periods": Given;
    CLASS_A "class" Number (SNI_1726 "5.3" Memory) "Site class SA: hard rock": Name;
    CLASS_B "class" Number (SNI_1726 "5.3" Memory) "Site class SB: rock": Name;
    CLASS_C "class" Number (SNI_1726 "5.3" Memory) "Site class SC: very dense soil, soft rock": Name;
    CLASS_D "class" Number (SNI_1726 "5.3" Memory) "Site class SD: stiff soil": Name;
    CLASS_E "class" Number (SNI_1726 "5.3" Memory) "Site class SE: soft soil": Name;
    CLASS_F "class" Number (SNI_1726 "5.3" Memory) "Site class SF": Name;
    F_A "F_a" Number (SNI_1726 "Table of F_a" Memory) "Site coefficient at short periods": Interpolated;
    S_MS "S_MS" Acceleration (SNI_1726 "6.2" Memory) "Maximum considered acceleration at short periods, with the soil" = "F_a * S_S";
    S_DS "S_DS" Acceleration (SNI_1726 "6.3" Memory) "Design spectral acceleration at short periods" = "2 / 3 * S_MS";
    S_DS_GIVEN "S_DS" Acceleration (INPUT "" Derived) "Design spectral acceleration at short periods": Given;

    ROW_SHEET_METAL "row" Number (SNI_1726 "9, table of components" Memory) "Motor control centre, panelboard, switchgear, instrumentation cabinet, other sheet-metal framing": Name;
    ROW_COMMUNICATION "row" Number (SNI_1726 "9, table of components" Memory) "Communication equipment, computers, instrumentation, controls": Name;
    ROW_GENERATOR "row" Number (SNI_1726 "9, table of components" Memory) "Generator, battery, inverter, motor, transformer": Name;
    ROW_AIR_SIDE "row" Number (SNI_1726 "9, table of components" Memory) "Air-side equipment, fan, air conditioner, sheet-metal framing": Name;
    ROW_WET_SIDE "row" Number (SNI_1726 "9, table of components" Memory) "Wet-side equipment, boiler, chiller, tank, process equipment": Name;
    ROW_ENGINE "row" Number (SNI_1726 "9, table of components" Memory) "Engine, turbine, pump, compressor": Name;
    ROW_OTHER "row" Number (SNI_1726 "9, table of components" Memory) "Other mechanical or electrical component": Name;
    ROW_ISOLATED_NEOPRENE "row" Number (SNI_1726 "9, table of components" Memory) "Vibration isolated: neoprene, with snubbers or stops": Name;
    ROW_ISOLATED_SPRINGS "row" Number (SNI_1726 "9, table of components" Memory) "Vibration isolated: springs, closely restrained": Name;
    ROW_ISOLATED_INTERNALLY "row" Number (SNI_1726 "9, table of components" Memory) "Vibration isolated internally": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    A_P_ROW "a_p" Number (SNI_1726 "9, table of components" Memory) "Component amplification factor": Table;
    A_P_GIVEN "a_p" Number (INPUT "" Derived) "Component amplification factor": Given;
    R_P_ROW "R_p" Number (SNI_1726 "9, table of components" Memory) "Component response factor": Table;
    R_P_GIVEN "R_p" Number (INPUT "" Derived) "Component response factor": Given;
    I_P "I_p" Number (INPUT "" Derived) "Component importance factor": Given;

    Z "z" Height (INPUT "" Derived) "Height of the attachment above the base": Given;
    H "h" Height (INPUT "" Derived) "Average height of the roof above the base": Given;
    R_Z "r_z" Number (SNI_1726 "9" Memory) "Height of the attachment over height of the roof, at most 1" = "min(1, z / h)";
    R_Z_BASE "r_z" Number (SNI_1726 "9" Memory) "Attached at or below the base": Condition;

    C_1 "c_1" Acceleration (SNI_1726 "9, as ASCE 7-16 13.3-1" Memory) "Horizontal force over the weight, before limits" = "0.4 * a_p * S_DS / (R_p / I_p) * (1 + 2 * r_z)";
    C_MAX "c_max" Acceleration (SNI_1726 "9, as ASCE 7-16 13.3-2" Memory) "It need not be more than" = "1.6 * S_DS * I_p";
    C_MIN "c_min" Acceleration (SNI_1726 "9, as ASCE 7-16 13.3-3" Memory) "It may not be less than" = "0.3 * S_DS * I_p";
    C_P "c_p" Acceleration (SNI_1726 "9" Memory) "Horizontal force over the weight" = "max(c_min, min(c_max, c_1))";
    C_LIMITED "c_l" Acceleration (SNI_1726 "9" Memory) "Horizontal force over the weight, before what the snubbers add" = "max(c_min, min(c_max, c_1))";
    GAP "g" Length (INPUT "" Derived) "Clearance at the snubbers": Given;
    GAP_MAX "g_b" Length (SNI_1726 "9, table of components, footnote b" Memory) "Clearance up to which the force is not doubled, 0.25 in": Constant;
    C_P_ISOLATED "c_p" Acceleration (SNI_1726 "9, table of components, footnote b" Memory) "Horizontal force over the weight" = "if(g > g_b, 2, 1) * c_l";
    C_V "c_v" Acceleration (SNI_1726 "9" Memory) "Vertical force over the weight, up or down together with the horizontal one" = "0.2 * S_DS";
    W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_P "F_p" Force (SNI_1726 "9" Memory) "Horizontal force on the cabinet" = "c_p * W_p";
    E_V "E_v" Force (SNI_1726 "9" Memory) "Vertical force on the cabinet" = "c_v * W_p";
    OMEGA_ROW "Omega_0" Number (SNI_1726 "9, table of components, as ASCE 7-16" Memory) "Overstrength factor of the component": Table;
    OMEGA_GIVEN "Omega_0" Number (INPUT "" Derived) "Overstrength factor of the component": Given;
    C_M "c_m" Acceleration (SNI_1726 "9, as ASCE 7-16 13.4.2" Memory) "Horizontal force over the weight for anchors in concrete: after the limits, before load factors" = "Omega_0 * c_p";
    F_M "F_m" Force (SNI_1726 "9, as ASCE 7-16 13.4.2" Memory) "Horizontal force on the cabinet for anchors in concrete" = "c_m * W_p";
    V_6 "v_6" Number (SNI_1726 "combination 6" Memory) "Downward load over the weight: 1.2 D + E_v, with 1.0 E_h" = "1.2 + c_v";
    V_7 "v_7" Number (SNI_1726 "combination 7" Memory) "Downward load over the weight: 0.9 D - E_v, with 1.0 E_h" = "0.9 - c_v";

    LRFD_6 "LRFD 6" Number (SNI_1726 "combination 6" Memory) "1.2 D + E_v + E_h": Name;
    LRFD_7 "LRFD 7" Number (SNI_1726 "combination 7" Memory) "0.9 D - E_v + E_h": Name;
    LRFD_6_AMPLIFIED "LRFD 6m" Number (SNI_1726 "combination 6" Memory) "1.2 D + E_v + E_mh": Name;
    LRFD_7_AMPLIFIED "LRFD 7m" Number (SNI_1726 "combination 7" Memory) "0.9 D - E_v + E_mh": Name;

    CATEGORY_C "seismic design category" Number (SNI_1726 "6.5" Memory) "S_DS of 0.33 or more puts the building in seismic design category C or higher; its anchors may not be designed as in A or B": Reason;
    NOT_CLASS_F "site class SF" Number (SNI_1726 "6.2" Memory) "site class SF has no site coefficient: it needs a site response analysis, which gives S_DS": Reason;
}
