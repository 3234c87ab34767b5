//! What AS 1170.4 writes on the sheet. Its transcription could not be traced to a place, so all of it counts as memory.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::{AS_1170_4, AS_5216, AS_NZS_1170_0};

steps! { 105 "as-1170-4";
    EDITION "edition" Number (AS_1170_4 "2007, amendment of 2018" Memory) "An edition of 2024 exists; it was not compared with this one": Name;
    Z "Z" Acceleration (INPUT "" Derived) "Hazard factor": Given;
    P_20 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/20": Name;
    P_25 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/25": Name;
    P_50 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/50": Name;
    P_100 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/100": Name;
    P_200 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/200": Name;
    P_250 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/250": Name;
    P_500 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/500": Name;
    P_800 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/800": Name;
    P_1000 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/1000": Name;
    P_1500 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/1500": Name;
    P_2000 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/2000": Name;
    P_2500 "probability" Number (AS_1170_4 "Table 3.1" Memory) "Annual probability of exceedance 1/2500": Name;
    K_P "k_p" Number (AS_1170_4 "Table 3.1" Memory) "Probability factor": Table;
    K_Z_MIN "k_min" Acceleration (AS_1170_4 "Table 3.3" Memory) "Smallest probability factor times hazard factor (1/800 has no row and takes that of 1/1000)": Table;
    K_Z "k_z" Acceleration (AS_1170_4 "3.2" Memory) "Probability factor times hazard factor" = "max(k_min, k_p * Z)";
    K_Z_FREE "k_z" Acceleration (AS_1170_4 "3.2" Memory) "Probability factor times hazard factor, without a smallest value at this probability" = "k_p * Z";
    SOIL_A "soil" Number (AS_1170_4 "4.1" Memory) "Site sub-soil class A_e: strong rock": Name;
    SOIL_B "soil" Number (AS_1170_4 "4.1" Memory) "Site sub-soil class B_e: rock": Name;
    SOIL_C "soil" Number (AS_1170_4 "4.1" Memory) "Site sub-soil class C_e: shallow soil": Name;
    SOIL_D "soil" Number (AS_1170_4 "4.1" Memory) "Site sub-soil class D_e: deep or soft soil": Name;
    SOIL_E "soil" Number (AS_1170_4 "4.1" Memory) "Site sub-soil class E_e: very soft soil": Name;
    C_H0 "C_h0" Number (AS_1170_4 "Table 6.4, bracketed values" Memory) "Spectral shape factor at zero period": Table;
    K_Z_CATEGORY_I "k_I" Acceleration (AS_1170_4 "Table 2.1, importance level 2" Memory) "Largest probability factor times hazard factor in design category I": Table;
    H_X "h_x" Height (INPUT "" Derived) "Height of the attachment above the base": Given;
    H_N "h_n" Height (INPUT "" Derived) "Height of the building above the base": Given;
    R_H "r_h" Number (AS_1170_4 "8.3" Memory) "Height of the attachment over height of the building, at most 1" = "min(1, h_x / h_n)";
    R_H_BASE "r_h" Number (AS_1170_4 "8.3" Memory) "Attached at or below the base": Condition;
    H_12 "h_12" Height (AS_1170_4 "8.3; Table 2.1" Memory) "Height from which a building counts as high, 12 m": Constant;
    H_1 "h_1" Height (AS_1170_4 "8.3" Memory) "Height to which the factor 0.17 belongs, 1 m": Constant;
    A_X_BASE "a_x" Number (AS_1170_4 "8.3" Memory) "Height amplification factor at or below the base": Condition;
    A_X_HIGH "a_x" Number (AS_1170_4 "8.3" Memory) "Height amplification factor of a building of 12 m and more" = "1 + 2 * r_h";
    A_X_LOW "a_x" Number (AS_1170_4 "8.3" Memory) "Height amplification factor of a building under 12 m" = "1 + 0.17 * h_x / h_1";
    A_FLOOR "a_f" Acceleration (INPUT "" Derived) "Design floor acceleration": Given;

    I_C "I_c" Number (INPUT "" Derived) "Importance factor of the component (8.3)": Given;
    ROW_RIGID_DUCTILE "row" Number (AS_1170_4 "8.3" Memory) "Rigid (period up to 0.06 s)": Name;
    ROW_RIGID_NONDUCTILE "row" Number (AS_1170_4 "8.3" Memory) "Rigid, of non-ductile material or with non-ductile connections": Name;
    ROW_FLEXIBLE "row" Number (AS_1170_4 "8.3" Memory) "Flexible (period over 0.06 s)": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    A_C "a_c" Number (AS_1170_4 "8.3" Memory) "Component amplification factor": Table;
    A_C_GIVEN "a_c" Number (INPUT "" Derived) "Component amplification factor": Given;
    R_C "R_c" Number (AS_1170_4 "8.3" Memory) "Component ductility factor": Table;
    R_C_GIVEN "R_c" Number (INPUT "" Derived) "Component ductility factor": Given;
    R_CA_ELASTIC "R_ca" Number (AS_5216 "seismic annex" Memory) "Ductility factor for anchors designed elastically": Condition;
    R_CA_DUCTILE "R_ca" Number (AS_5216 "seismic annex" Memory) "Ductility factor for anchors that are capacity designed or ductile" = "R_c";

    C_1 "c_1" Acceleration (AS_1170_4 "8.3" Memory) "Horizontal force over the weight, before its limit" = "k_z * C_h0 * a_x * I_c * a_c / R_c";
    C_MIN "c_min" Acceleration (AS_1170_4 "8.3" Memory) "It may not be less than": Condition;
    C_P "c_p" Acceleration (AS_1170_4 "8.3" Memory) "Horizontal force over the weight" = "max(c_min, c_1)";
    C_1A "c_1a" Acceleration (AS_1170_4 "8.3" Memory) "Horizontal force over the weight for anchors, before its limit" = "k_z * C_h0 * a_x * I_c * a_c / R_ca";
    C_PA "c_pa" Acceleration (AS_1170_4 "8.3" Memory) "Horizontal force over the weight for anchors" = "max(c_min, c_1a)";
    C_MAX "c_max" Acceleration (AS_1170_4 "8.2" Memory) "It need not be more than": Condition;
    C_MAX_GIVEN "c_max" Acceleration (INPUT "" Derived) "It need not be more than": Given;
    C_1_FLOOR "c_1" Acceleration (AS_1170_4 "8.2" Memory) "Horizontal force over the weight, before its limit" = "a_f * I_c * a_c / R_c";
    C_P_FLOOR "c_p" Acceleration (AS_1170_4 "8.2" Memory) "Horizontal force over the weight" = "min(c_max, c_1)";
    C_1A_FLOOR "c_1a" Acceleration (AS_1170_4 "8.2" Memory) "Horizontal force over the weight for anchors, before its limit" = "a_f * I_c * a_c / R_ca";
    C_PA_FLOOR "c_pa" Acceleration (AS_1170_4 "8.2" Memory) "Horizontal force over the weight for anchors" = "min(c_max, c_1a)";
    C_P_CATEGORY_I "c_p" Acceleration (AS_1170_4 "5.3" Memory) "Horizontal force over the weight in a building of design category I": Condition;
    C_PA_CATEGORY_I "c_pa" Acceleration (AS_1170_4 "5.3" Memory) "Horizontal force over the weight for anchors" = "c_p";
    W_C "W_c" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_C "F_c" Force (AS_1170_4 "8.2, 8.3" Memory) "Horizontal force on the cabinet" = "c_p * W_c";
    F_CA "F_ca" Force (AS_1170_4 "8.2, 8.3" Memory) "Horizontal force on the cabinet for its anchors" = "c_pa * W_c";

    CASE "G+E" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u": Name;
    CASE_ANCHORS "G+E a" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, anchors": Name;
    CASE_ELASTIC "G+E e" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, anchors by elastic design": Name;

    NOT_CATEGORY_I "design category I" Number (AS_1170_4 "Table 2.1" Memory) "k_p Z, the height of the building or its importance, which is above level 2 where the annual probability is below 1/500, is too large for design category I; the simple method of 8.3 would fit": Reason;
    NOT_AMPLIFIED "overstrength" Number (AS_1170_4 "8.3" Memory) "Anchors that are capacity designed or ductile have no elastic level, and this edition has no overstrength factor for parts.": Reason;
}
