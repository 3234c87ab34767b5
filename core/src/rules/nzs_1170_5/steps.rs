//! What NZS 1170.5 writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::{AS_NZS_1170_0, NZS_1170_5};

steps! { 104 "nzs-1170-5";
    Z "Z" Acceleration (INPUT "" Derived) "Hazard factor": Given;
    P_20 "probability" Number (NZS_1170_5 "Table 3.5" Memory) "Annual probability of exceedance 1/20": Name;
    P_25 "probability" Number (NZS_1170_5 "Table 3.5" Memory) "Annual probability of exceedance 1/25": Name;
    P_50 "probability" Number (NZS_1170_5 "Table 3.5" Memory) "Annual probability of exceedance 1/50": Name;
    P_100 "probability" Number (NZS_1170_5 "Table 3.5" Memory) "Annual probability of exceedance 1/100": Name;
    P_250 "probability" Number (NZS_1170_5 "Table 3.5" Memory) "Annual probability of exceedance 1/250": Name;
    P_500 "probability" Number (NZS_1170_5 "Table 3.5" Memory) "Annual probability of exceedance 1/500": Name;
    P_1000 "probability" Number (NZS_1170_5 "Table 3.5" Memory) "Annual probability of exceedance 1/1000": Name;
    P_2000 "probability" Number (NZS_1170_5 "Table 3.5" Memory) "Annual probability of exceedance 1/2000": Name;
    P_2500 "probability" Number (NZS_1170_5 "Table 3.5" Memory) "Annual probability of exceedance 1/2500": Name;
    R "R" Number (NZS_1170_5 "Table 3.5" Memory) "Return period factor": Table;
    R_GIVEN "R" Number (INPUT "" Derived) "Return period factor": Given;
    Z_R "z_r" Acceleration (NZS_1170_5 "3.1.1" Secondary) "Hazard factor times return period factor, at most 0.7" = "min(0.7, Z * R)";
    SOIL_A "soil" Number (NZS_1170_5 "3.1.3" Secondary) "Site subsoil class A: strong rock": Name;
    SOIL_B "soil" Number (NZS_1170_5 "3.1.3" Secondary) "Site subsoil class B: rock": Name;
    SOIL_C "soil" Number (NZS_1170_5 "3.1.3" Secondary) "Site subsoil class C: shallow soil": Name;
    SOIL_D "soil" Number (NZS_1170_5 "3.1.3" Secondary) "Site subsoil class D: deep or soft soil": Name;
    SOIL_E "soil" Number (NZS_1170_5 "3.1.3" Secondary) "Site subsoil class E: very soft soil": Name;
    C_H0 "C_h0" Number (NZS_1170_5 "Table 3.1" Secondary) "Spectral shape factor at zero period": Table;
    N "N" Number (NZS_1170_5 "3.1.6" Secondary) "Near-fault factor at periods up to 1.5 s": Condition;
    C_0 "C_0" Acceleration (NZS_1170_5 "3.1(1)" Secondary) "Site hazard coefficient at zero period" = "C_h0 * z_r * N";

    H_I "h_i" Height (INPUT "" Derived) "Height of the attachment above the base": Given;
    H_N "h_n" Height (INPUT "" Derived) "Height of the building above the base": Given;
    R_H "r_h" Number (NZS_1170_5 "8.3" Secondary) "Height of the attachment over height of the building, at most 1" = "min(1, h_i / h_n)";
    R_H_BASE "r_h" Number (NZS_1170_5 "8.3" Secondary) "Attached at or below the base": Condition;
    H_6 "h_6" Height (NZS_1170_5 "8.3(1)" Secondary) "Height over which the coefficient grows by 1, 6 m": Constant;
    C_H1 "C_H1" Number (NZS_1170_5 "8.3(1)" Secondary) "Floor height coefficient of an attachment lower than 12 m" = "1 + h_i / h_6";
    C_H2 "C_H2" Number (NZS_1170_5 "8.3(2)" Secondary) "Floor height coefficient of an attachment lower than a fifth of the building" = "1 + 10 * r_h";
    C_H "C_Hi" Number (NZS_1170_5 "8.3(3)" Secondary) "Floor height coefficient: the lesser, at most 3" = "min(3, min(C_H1, C_H2))";
    C_H_BASE "C_Hi" Number (NZS_1170_5 "8.3" Secondary) "Floor height coefficient at or below the base": Condition;
    T_P "T_p" Time (INPUT "" Derived) "Period of the cabinet": Given;
    T_1 "t_1" Time (NZS_1170_5 "8.4" Secondary) "Unit of the period in the next line, 1 s": Constant;
    C_I "C_i" Number (NZS_1170_5 "8.4" Secondary) "Part spectral shape coefficient" = "min(2, max(0.5, 2 * (1.75 - T_p / t_1)))";
    C_I_UNKNOWN "C_i" Number (NZS_1170_5 "8.4" Secondary) "Largest part spectral shape coefficient, because the period is not known": Condition;
    C_P_T "C_p" Acceleration (NZS_1170_5 "8.2(1)" Secondary) "Design response coefficient of the part" = "C_0 * C_Hi * C_i";
    MU_P "mu_p" Number (INPUT "" Derived) "Ductility of the cabinet": Given;
    C_PH "C_ph" Number (NZS_1170_5 "Table C8.3" Secondary) "Part response factor of that ductility": Interpolated;
    CLASS_1 "class" Number (NZS_1170_5 "Table 8.1" Memory) "P.1: hazard to life outside the building": Name;
    CLASS_2 "class" Number (NZS_1170_5 "Table 8.1" Memory) "P.2: hazard to a crowd inside": Name;
    CLASS_3 "class" Number (NZS_1170_5 "Table 8.1" Memory) "P.3: hazard to individual life inside": Name;
    CLASS_4 "class" Number (NZS_1170_5 "Table 8.1" Memory) "P.4: needed for life safety systems": Name;
    CLASS_5 "class" Number (NZS_1170_5 "Table 8.1" Memory) "P.5: operational continuity (serviceability 2)": Name;
    CLASS_6 "class" Number (NZS_1170_5 "Table 8.1" Memory) "P.6: consequences out of proportion (serviceability 1)": Name;
    CLASS_7 "class" Number (NZS_1170_5 "Table 8.1" Memory) "P.7: all other (serviceability 1)": Name;
    R_P "R_p" Number (NZS_1170_5 "Table 8.1" Memory) "Part risk factor": Table;
    R_P_GIVEN "R_p" Number (INPUT "" Derived) "Part risk factor": Given;

    C_1 "c_1" Acceleration (NZS_1170_5 "8.5(1)" Secondary) "Horizontal force over the weight, before its limit" = "C_p * C_ph * R_p";
    C_MAX "c_max" Acceleration (NZS_1170_5 "8.5(1)" Secondary) "It need not be more than": Condition;
    C_P "c_p" Acceleration (NZS_1170_5 "8.5(1)" Secondary) "Horizontal force over the weight" = "min(c_max, c_1)";
    W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_PH "F_ph" Force (NZS_1170_5 "8.5(1)" Secondary) "Horizontal force on the cabinet" = "c_p * W_p";
    C_V_T "C_v" Acceleration (INPUT "" Derived) "Elastic spectrum of the site at the vertical period": Given;
    C_V "c_v" Acceleration (NZS_1170_5 "8.5(2), 3.2" Memory) "Vertical force over the weight, up or down together with the horizontal one" = "min(2.5, 0.7 * C_v * C_ph * R_p)";
    F_PV "F_pv" Force (NZS_1170_5 "8.5(2)" Memory) "Vertical force on the cabinet" = "c_v * W_p";
    MU_A_BRITTLE "mu_a" Number (NZS_1170_5 "8.7" Memory) "Ductility for fixings that are brittle, or not known": Condition;
    MU_A_NOMINAL "mu_a" Number (NZS_1170_5 "8.7" Memory) "Ductility for nominally ductile fixings" = "min(1.25, mu_p)";
    MU_A_CAPACITY "mu_a" Number (NZS_1170_5 "8.7" Memory) "Ductility for capacity designed fixings" = "mu_p";
    C_PHA "C_pha" Number (NZS_1170_5 "Table C8.3" Secondary) "Part response factor for the fixings": Interpolated;
    C_1A "c_1a" Acceleration (NZS_1170_5 "8.5(1), 8.7" Memory) "Horizontal force over the weight for fixings, before its limit" = "C_p * C_pha * R_p";
    C_PA "c_pa" Acceleration (NZS_1170_5 "8.5(1), 8.7" Memory) "Horizontal force over the weight for fixings" = "min(c_max, c_1a)";
    F_PA "F_pa" Force (NZS_1170_5 "8.5(1), 8.7" Memory) "Horizontal force on the cabinet for its fixings" = "c_pa * W_p";
    C_VA "c_va" Acceleration (NZS_1170_5 "8.5(2), 3.2, 8.7" Memory) "Vertical force over the weight for fixings, which count on no more ductility up and down than sideways" = "min(2.5, 0.7 * C_v * C_pha * R_p)";
    F_PVA "F_pva" Force (NZS_1170_5 "8.5(2), 8.7" Memory) "Vertical force on the cabinet for its fixings" = "c_va * W_p";
    V_DOWN "v_1" Number (AS_NZS_1170_0 "4.2.2" Memory) "Downward load over the weight: G and the vertical force downwards" = "1.0 + c_v";
    V_UP "v_2" Number (AS_NZS_1170_0 "4.2.2" Memory) "Downward load over the weight: G and the vertical force upwards" = "1.0 - c_v";
    V_DOWN_ANCHORS "v_1a" Number (AS_NZS_1170_0 "4.2.2" Memory) "Downward load over the weight for fixings: G and the vertical force downwards" = "1.0 + c_va";
    V_UP_ANCHORS "v_2a" Number (AS_NZS_1170_0 "4.2.2" Memory) "Downward load over the weight for fixings: G and the vertical force upwards" = "1.0 - c_va";

    ALONE "G+E" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u": Name;
    ALONE_ANCHORS "G+E a" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, fixings": Name;
    DOWN "G+E down" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, vertical force down": Name;
    UP "G+E up" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, vertical force up": Name;
    DOWN_ANCHORS "G+E down a" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, fixings, vertical force down": Name;
    UP_ANCHORS "G+E up a" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, fixings, vertical force up": Name;
    ALONE_ELASTIC "G+E e" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, fixings, elastic": Name;
    DOWN_ELASTIC "G+E down e" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, fixings, elastic, vertical force down": Name;
    UP_ELASTIC "G+E up e" Number (AS_NZS_1170_0 "4.2.2" Memory) "G + E_u, fixings, elastic, vertical force up": Name;

    NOT_AMPLIFIED "overstrength" Number (NZS_1170_5 "8.7" Memory) "This edition has no overstrength factor for parts: ductile fixings count on less ductility instead.": Reason;
}
