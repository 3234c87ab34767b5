//! What ASCE 7-22 writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::ASCE_7_22;

steps! { 32 "asce-7-22";
    S_DS "S_DS" Acceleration (INPUT "" Derived) "Design spectral acceleration at short periods": Given;

    ROW_SHEET_METAL "row" Number (ASCE_7_22 "Table 13.6-1" Memory) "Motor control centre, panelboard, switchgear, instrumentation cabinet, other sheet-metal framing": Name;
    ROW_COMMUNICATION "row" Number (ASCE_7_22 "Table 13.6-1" Memory) "Communication equipment, computers, instrumentation, controls": Name;
    ROW_GENERATOR "row" Number (ASCE_7_22 "Table 13.6-1" Memory) "Generator, battery, inverter, motor, transformer": Name;
    ROW_AIR_SIDE "row" Number (ASCE_7_22 "Table 13.6-1" Memory) "Air-side equipment, fan, air conditioner, sheet-metal framing": Name;
    ROW_WET_SIDE "row" Number (ASCE_7_22 "Table 13.6-1" Memory) "Wet-side equipment, chiller, tank, process equipment": Name;
    ROW_ENGINE "row" Number (ASCE_7_22 "Table 13.6-1" Memory) "Engine, turbine, pump, compressor": Name;
    ROW_OTHER "row" Number (ASCE_7_22 "Table 13.6-1" Memory) "Other mechanical or electrical component": Name;
    ROW_ISOLATED "row" Number (ASCE_7_22 "Table 13.6-1" Memory) "Vibration isolated": Name;
    ROW_STORAGE "row" Number (ASCE_7_22 "Table 13.5-1" Memory) "Storage cabinet over 1.83 m (6 ft) tall, with contents": Name;
    ROW_SHELVING "row" Number (ASCE_7_22 "Table 13.5-1" Memory) "Library shelving, book stacks over 1.83 m (6 ft) tall": Name;
    ROW_LABORATORY "row" Number (ASCE_7_22 "Table 13.5-1" Memory) "Laboratory equipment": Name;
    ROW_RIGID "row" Number (ASCE_7_22 "Table 13.5-1" Memory) "Other rigid component": Name;
    ROW_FLEXIBLE_HIGH "row" Number (ASCE_7_22 "Table 13.5-1" Memory) "Other flexible component, high deformability": Name;
    ROW_FLEXIBLE_LIMITED "row" Number (ASCE_7_22 "Table 13.5-1" Memory) "Other flexible component, limited deformability": Name;
    ROW_FLEXIBLE_LOW "row" Number (ASCE_7_22 "Table 13.5-1" Memory) "Other flexible component, low deformability": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    C_AR_AT_GRADE "C_AR" Number (ASCE_7_22 "Tables 13.5-1, 13.6-1, at or below grade" Memory) "Component resonance ductility factor": Table;
    C_AR_ABOVE "C_AR" Number (ASCE_7_22 "Tables 13.5-1, 13.6-1, above grade" Memory) "Component resonance ductility factor": Table;
    C_AR_GIVEN "C_AR" Number (INPUT "" Derived) "Component resonance ductility factor": Given;
    R_PO_ROW "R_po" Number (ASCE_7_22 "Tables 13.5-1, 13.6-1" Memory) "Component strength factor": Table;
    R_PO_GIVEN "R_po" Number (INPUT "" Derived) "Component strength factor": Given;
    I_P "I_p" Number (INPUT "" Derived) "Component importance factor (13.1.3)": Given;

    Z "z" Height (INPUT "" Derived) "Height of the attachment above grade": Given;
    H "h" Height (INPUT "" Derived) "Average height of the roof above the base": Given;
    R_Z "r_z" Number (ASCE_7_22 "13.3.1.1" Memory) "Height of the attachment over height of the roof, at most 1" = "min(1, z / h)";
    R_Z_BASE "r_z" Number (ASCE_7_22 "13.3.1.1" Memory) "Attached at or below grade": Condition;

    SYSTEM_UNKNOWN "system" Number (ASCE_7_22 "13.3.1.2" Secondary) "System of the building not known": Name;
    SYSTEM_STEEL_MOMENT "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Special steel moment frame": Name;
    SYSTEM_CONCRETE_MOMENT "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Special concrete moment frame": Name;
    SYSTEM_INTERMEDIATE_MOMENT "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Intermediate concrete moment frame": Name;
    SYSTEM_ORDINARY_MOMENT "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Ordinary concrete moment frame": Name;
    SYSTEM_SPECIAL_WALL_BEARING "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Special concrete walls, bearing": Name;
    SYSTEM_SPECIAL_WALL_FRAME "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Special concrete walls, building frame": Name;
    SYSTEM_ORDINARY_WALL_BEARING "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Ordinary concrete walls, bearing": Name;
    SYSTEM_SPECIAL_BRACED "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Special concentrically braced steel frame": Name;
    SYSTEM_ORDINARY_BRACED "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Ordinary concentrically braced steel frame": Name;
    SYSTEM_BUCKLING_RESTRAINED "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Buckling-restrained braced frame": Name;
    SYSTEM_ECCENTRIC "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Eccentrically braced steel frame": Name;
    SYSTEM_STEEL_NOT_DETAILED "system" Number (ASCE_7_22 "Table 12.2-1" Memory) "Steel system not detailed for earthquakes": Name;
    SYSTEM_GIVEN "system" Number (INPUT "" Derived) "System of the building with values given by the user": Name;
    R_ROW "R" Number (ASCE_7_22 "Table 12.2-1" Memory) "Response factor of the building": Table;
    R_GIVEN "R" Number (INPUT "" Derived) "Response factor of the building": Given;
    OMEGA_B_ROW "Omega_b" Number (ASCE_7_22 "Table 12.2-1" Memory) "Overstrength factor of the building": Table;
    OMEGA_B_GIVEN "Omega_b" Number (INPUT "" Derived) "Overstrength factor of the building": Given;
    I_E "I_e" Number (INPUT "" Derived) "Importance factor of the building (11.5.1)": Given;
    R_MU "R_mu" Number (ASCE_7_22 "13.3-6" Memory) "Reduction by the ductility of the building" = "max(1.3, sqrt(1.1 * R / (I_e * Omega_b)))";
    R_MU_UNKNOWN "R_mu" Number (ASCE_7_22 "13.3.1.2" Secondary) "Reduction where the system of the building is not known": Condition;
    R_MU_AT_GRADE "R_mu" Number (ASCE_7_22 "13.3.1.2" Secondary) "No reduction at or below grade": Condition;

    C_T "C_t" Time (ASCE_7_22 "Table 12.8-2" Memory) "Period of a building of this system that is 1 m high": Table;
    X "x" Number (ASCE_7_22 "Table 12.8-2" Memory) "Power of the height": Table;
    H_1 "h_1" Height (ASCE_7_22 "Table 12.8-2" Memory) "Height to which C_t belongs, 1 m": Constant;
    T_A "T_a" Time (ASCE_7_22 "12.8-8" Memory) "Approximate period of the building" = "C_t * (h / h_1)^x";
    T_A_GIVEN "T_a" Time (INPUT "" Derived) "Approximate period of the building": Given;
    T_1 "t_1" Time (ASCE_7_22 "13.3-4" Memory) "Period that makes a_1 and a_2 plain numbers, 1 s": Constant;
    A_1 "a_1" Number (ASCE_7_22 "13.3-4" Memory) "Share of the height that grows straight" = "min(2.5, t_1 / T_a)";
    A_2 "a_2" Number (ASCE_7_22 "13.3-4" Memory) "Share of the height that grows near the roof" = "max(0, 1 - (0.4 * t_1 / T_a)^2)";
    H_F "H_f" Number (ASCE_7_22 "13.3-4" Memory) "Amplification with height, period of the building known" = "1 + a_1 * r_z + a_2 * r_z^10";
    H_F_UNKNOWN "H_f" Number (ASCE_7_22 "13.3-5" Secondary) "Amplification with height, period of the building not known" = "1 + 2.5 * r_z";
    H_F_AT_GRADE "H_f" Number (ASCE_7_22 "13.3.1.1" Secondary) "No amplification at or below grade": Condition;

    C_1 "c_1" Acceleration (ASCE_7_22 "13.3-1" Secondary) "Horizontal force over the weight, before limits" = "0.4 * S_DS * I_p * (H_f / R_mu) * (C_AR / R_po)";
    C_MAX "c_max" Acceleration (ASCE_7_22 "13.3-2" Secondary) "It need not be more than" = "1.6 * S_DS * I_p";
    C_MIN "c_min" Acceleration (ASCE_7_22 "13.3-3" Secondary) "It may not be less than" = "0.3 * S_DS * I_p";
    C_P "c_p" Acceleration (ASCE_7_22 "13.3.1" Secondary) "Horizontal force over the weight" = "max(c_min, min(c_max, c_1))";
    C_LIMITED "c_l" Acceleration (ASCE_7_22 "13.3.1" Secondary) "Horizontal force over the weight, before what the snubbers add" = "max(c_min, min(c_max, c_1))";
    GAP "g" Length (INPUT "" Derived) "Clearance at the snubbers": Given;
    GAP_MAX "g_b" Length (ASCE_7_22 "Table 13.6-1, footnote" Memory) "Clearance up to which the force is not doubled, 0.25 in": Constant;
    C_P_ISOLATED "c_p" Acceleration (ASCE_7_22 "Table 13.6-1, footnote" Memory) "Horizontal force over the weight" = "if(g > g_b, 2, 1) * c_l";
    C_V "c_v" Acceleration (ASCE_7_22 "13.3.1, 12.4.2.2" Secondary) "Vertical force over the weight, up or down together with the horizontal one" = "0.2 * S_DS";
    W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_P "F_p" Force (ASCE_7_22 "13.3.1" Secondary) "Horizontal force on the cabinet" = "c_p * W_p";
    E_V "E_v" Force (ASCE_7_22 "13.3.1, 12.4.2.2" Secondary) "Vertical force on the cabinet" = "c_v * W_p";
    OMEGA_ROW "Omega_0p" Number (ASCE_7_22 "Tables 13.5-1, 13.6-1" Memory) "Overstrength factor of the anchorage": Table;
    OMEGA_GIVEN "Omega_0p" Number (INPUT "" Derived) "Overstrength factor of the anchorage": Given;
    C_M "c_m" Acceleration (ASCE_7_22 "13.4.2, 12.4.3" Memory) "Horizontal force over the weight for anchors in concrete: after the limits, before load factors" = "Omega_0p * c_p";
    F_M "F_m" Force (ASCE_7_22 "13.4.2, 12.4.3" Memory) "Horizontal force on the cabinet for anchors in concrete" = "c_m * W_p";
    V_6 "v_6" Number (ASCE_7_22 "2.3.6, combination 6" Memory) "Downward load over the weight: 1.2 D + E_v, with 1.0 E_h" = "1.2 + c_v";
    V_7 "v_7" Number (ASCE_7_22 "2.3.6, combination 7" Memory) "Downward load over the weight: 0.9 D - E_v, with 1.0 E_h" = "0.9 - c_v";

    LRFD_6 "LRFD 6" Number (ASCE_7_22 "2.3.6, combination 6" Memory) "1.2 D + E_v + E_h": Name;
    LRFD_7 "LRFD 7" Number (ASCE_7_22 "2.3.6, combination 7" Memory) "0.9 D - E_v + E_h": Name;
    LRFD_6_AMPLIFIED "LRFD 6m" Number (ASCE_7_22 "2.3.6, combination 6, with 12.4.3" Memory) "1.2 D + E_v + E_mh": Name;
    LRFD_7_AMPLIFIED "LRFD 7m" Number (ASCE_7_22 "2.3.6, combination 7, with 12.4.3" Memory) "0.9 D - E_v + E_mh": Name;

    CATEGORY_C "seismic design category" Number (ASCE_7_22 "Table 11.6-1" Secondary) "S_DS of 0.33 or more puts the building in seismic design category C or higher; its anchors may not be designed as in A or B": Reason;
}
