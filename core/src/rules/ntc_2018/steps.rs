//! What NTC 2018 writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::{EN_1998_1, NTC_2018};
use crate::rules::en_1992_4::EN_1992_4;

steps! { 101 "ntc-2018";
    ALPHA "alpha" Acceleration (INPUT "" Derived) "Ground acceleration at SLV, over g": Given;
    GROUND_A "ground" Number (NTC_2018 "Table 3.2.II" Memory) "Soil A: rock or very stiff soil": Name;
    GROUND_B "ground" Number (NTC_2018 "Table 3.2.II" Memory) "Soil B: soft rock, very dense coarse soil, very stiff clay": Name;
    GROUND_C "ground" Number (NTC_2018 "Table 3.2.II" Memory) "Soil C: medium dense coarse soil, stiff clay": Name;
    GROUND_D "ground" Number (NTC_2018 "Table 3.2.II" Memory) "Soil D: loose coarse soil, soft clay": Name;
    GROUND_E "ground" Number (NTC_2018 "Table 3.2.II" Memory) "Soil E: soft soil over rock": Name;
    GROUND_OTHER "ground" Number (NTC_2018 "3.2.2" Memory) "Soil that needs a study of the site": Name;
    F_O "F_o" Number (INPUT "" Derived) "Largest amplification of the spectrum on rigid ground": Given;
    S_S_A "S_S" Number (NTC_2018 "Table 3.2.IV" Memory) "Stratigraphic factor of soil A": Condition;
    S_S_B "S_S" Number (NTC_2018 "Table 3.2.IV" Memory) "Stratigraphic factor of soil B" = "max(1.00, min(1.20, 1.40 - 0.40 * F_o * alpha))";
    S_S_C "S_S" Number (NTC_2018 "Table 3.2.IV" Memory) "Stratigraphic factor of soil C" = "max(1.00, min(1.50, 1.70 - 0.60 * F_o * alpha))";
    S_S_D "S_S" Number (NTC_2018 "Table 3.2.IV" Memory) "Stratigraphic factor of soil D" = "max(0.90, min(1.80, 2.40 - 1.50 * F_o * alpha))";
    S_S_E "S_S" Number (NTC_2018 "Table 3.2.IV" Memory) "Stratigraphic factor of soil E" = "max(1.00, min(1.60, 2.00 - 1.10 * F_o * alpha))";
    T1 "topography" Number (NTC_2018 "Table 3.2.III" Memory) "T1: level, or slopes up to 15 degrees": Name;
    T2 "topography" Number (NTC_2018 "Table 3.2.III" Memory) "T2: slopes over 15 degrees": Name;
    T3 "topography" Number (NTC_2018 "Table 3.2.III" Memory) "T3: narrow ridge, slopes of 15 to 30 degrees": Name;
    T4 "topography" Number (NTC_2018 "Table 3.2.III" Memory) "T4: narrow ridge, slopes over 30 degrees": Name;
    S_T "S_T" Number (NTC_2018 "Table 3.2.V" Memory) "Topographic factor": Table;
    S "S" Number (NTC_2018 "3.2.3.2.1" Secondary) "Soil factor" = "S_S * S_T";
    S_GIVEN "S" Number (INPUT "" Derived) "Soil factor": Given;

    Z "z" Height (INPUT "" Derived) "Height of the attachment above the foundation": Given;
    H "H" Height (INPUT "" Derived) "Height of the building above the foundation": Given;
    R_Z "r_z" Number (NTC_2018 "C7.2.3" Secondary) "Height of the attachment over height of the building, at most 1" = "min(1, z / H)";
    R_Z_BASE "r_z" Number (NTC_2018 "C7.2.3" Secondary) "Attached at or below the foundation": Condition;
    K "k" Acceleration (NTC_2018 "C7.2.11" Memory) "Acceleration of the floor over g, rising with height" = "alpha * S * (1 + r_z)";
    T_1 "T_1" Time (INPUT "" Derived) "Period of the building": Given;
    T_A "T_a" Time (INPUT "" Derived) "Period of the element": Given;
    A "a" Number (NTC_2018 "Table C7.2.II" Memory) "Where the plateau begins, over the period of the building": Table;
    B "b" Number (NTC_2018 "Table C7.2.II" Memory) "Where the plateau ends, over the period of the building": Table;
    A_P "a_p" Number (NTC_2018 "Table C7.2.II" Memory) "Amplification on the plateau": Table;
    S_1_SHORT "S_1" Acceleration (NTC_2018 "C7.2.11" Memory) "Seismic coefficient, before its limit, with T_a under a T_1" = "k * a_p / (1 + (a_p - 1) * (1 - T_a / (a * T_1))^2)";
    S_1_PLATEAU "S_1" Acceleration (NTC_2018 "C7.2.11" Memory) "Seismic coefficient, before its limit, with T_a from a T_1 to b T_1" = "k * a_p";
    S_1_LONG "S_1" Acceleration (NTC_2018 "C7.2.11" Memory) "Seismic coefficient, before its limit, with T_a from b T_1 up" = "k * a_p / (1 + (a_p - 1) * (1 - T_a / (b * T_1))^2)";
    S_1_UNKNOWN "S_1" Acceleration (NTC_2018 "C7.2.11" Memory) "Seismic coefficient, before its limit, on the plateau because T_a is not known" = "k * a_p";
    A_A "A_a" Number (EN_1998_1 "4.25" Memory) "Amplification by the element" = "3 / (1 + (1 - T_a / T_1)^2)";
    A_A_RESONANCE "A_a" Number (EN_1998_1 "4.25, with T_a = T_1" Memory) "Amplification at resonance, because periods are not known": Condition;
    S_1_OTHER "S_1" Acceleration (EN_1998_1 "4.25" Memory) "Seismic coefficient, before its limit" = "k * A_a - 0.5 * alpha * S";
    S_MIN "S_min" Acceleration (NTC_2018 "C7.2.11" Memory) "It may not be less than" = "alpha * S";
    S_A "S_a" Acceleration (NTC_2018 "C7.2.11" Memory) "Seismic coefficient" = "max(S_min, S_1)";
    ROW_CABINET "row" Number (NTC_2018 "Table C7.2.I" Memory) "Permanent cabinet or book stack supported by the floor": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    Q_A "q_a" Number (NTC_2018 "Table C7.2.I" Memory) "Behaviour factor of the element": Table;
    Q_A_GIVEN "q_a" Number (INPUT "" Derived) "Behaviour factor of the element": Given;
    C_1 "c_1" Acceleration (NTC_2018 "7.2.1" Secondary) "Horizontal force over the weight, before its limit" = "S_1 / q_a";
    C_MIN "c_min" Acceleration (NTC_2018 "7.2.1" Secondary) "It may not be less than" = "S_min / q_a";
    C_P "c_p" Acceleration (NTC_2018 "7.2.1" Secondary) "Horizontal force over the weight" = "max(c_min, c_1)";
    W_A "W_a" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_A "F_a" Force (NTC_2018 "7.2.1" Secondary) "Horizontal force on the cabinet" = "c_p * W_a";
    Q_AA_CAUTIOUS "q_aa" Number (EN_1992_4 "9.2, annex C" Memory) "Behaviour factor for anchors whose option of design is not stated": Condition;
    Q_AA_ELASTIC "q_aa" Number (EN_1992_4 "9.2, annex C" Memory) "Behaviour factor for anchors by elastic design" = "min(1.5, q_a)";
    Q_AA_CAPACITY "q_aa" Number (EN_1992_4 "9.2, annex C" Memory) "Behaviour factor for anchors by capacity design, or ductile ones" = "q_a";
    C_PA "c_pa" Acceleration (EN_1992_4 "annex C" Memory) "Horizontal force over the weight for anchors" = "S_a / q_aa";
    F_AA "F_aa" Force (EN_1992_4 "annex C" Memory) "Horizontal force on the cabinet for its anchors" = "c_pa * W_a";

    CASE "G+E" Number (NTC_2018 "2.5.5" Memory) "G + E": Name;
    CASE_ANCHORS "G+E a" Number (NTC_2018 "2.5.5" Memory) "G + E, anchors": Name;
    CASE_ELASTIC "G+E e" Number (NTC_2018 "2.5.5" Memory) "G + E, anchors by elastic design": Name;

    NOT_GROUND "other soils" Number (NTC_2018 "3.2.2" Memory) "this soil has no stratigraphic factor: it needs a study of the site, which gives S": Reason;
    NOT_AMPLIFIED "overstrength" Number (NTC_2018 "7.2.3" Memory) "Anchors designed by capacity, or ductile ones, have no elastic level, and these rules have no overstrength factor.": Reason;
}
