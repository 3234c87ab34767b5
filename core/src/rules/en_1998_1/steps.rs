//! What EN 1998-1 writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::{EN_1990, EN_1998_1};
use crate::rules::en_1992_4::EN_1992_4;

steps! { 100 "en-1998-1";
    A_GR "a_gR" Acceleration (INPUT "" Derived) "Reference peak ground acceleration on ground A": Given;
    CLASS_I "class" Number (EN_1998_1 "Table 4.3" Memory) "Building of importance class I": Name;
    CLASS_II "class" Number (EN_1998_1 "Table 4.3" Memory) "Building of importance class II": Name;
    CLASS_III "class" Number (EN_1998_1 "Table 4.3" Memory) "Building of importance class III": Name;
    CLASS_IV "class" Number (EN_1998_1 "Table 4.3" Memory) "Building of importance class IV": Name;
    GAMMA_I "gamma_I" Number (EN_1998_1 "4.2.5(5), recommended" Memory) "Importance factor of the building": Table;
    GAMMA_I_GIVEN "gamma_I" Number (INPUT "" Derived) "Importance factor of the building": Given;
    ALPHA "alpha" Acceleration (EN_1998_1 "3.2.1(3)" Memory) "Design ground acceleration on ground A, over g" = "gamma_I * a_gR";
    TYPE_1 "spectrum" Number (EN_1998_1 "3.2.2.2(2)" Memory) "Spectrum of type 1": Name;
    TYPE_2 "spectrum" Number (EN_1998_1 "3.2.2.2(2)" Memory) "Spectrum of type 2": Name;
    GROUND_A "ground" Number (EN_1998_1 "Table 3.1" Memory) "Ground A: rock": Name;
    GROUND_B "ground" Number (EN_1998_1 "Table 3.1" Memory) "Ground B: very dense sand, gravel, very stiff clay": Name;
    GROUND_C "ground" Number (EN_1998_1 "Table 3.1" Memory) "Ground C: deep dense sand, gravel, stiff clay": Name;
    GROUND_D "ground" Number (EN_1998_1 "Table 3.1" Memory) "Ground D: loose soil, soft to firm clay": Name;
    GROUND_E "ground" Number (EN_1998_1 "Table 3.1" Memory) "Ground E: soft layer over rock": Name;
    GROUND_S1 "ground" Number (EN_1998_1 "Table 3.1" Memory) "Ground S1": Name;
    GROUND_S2 "ground" Number (EN_1998_1 "Table 3.1" Memory) "Ground S2": Name;
    S_TYPE_1 "S" Number (EN_1998_1 "Table 3.2, recommended" Secondary) "Soil factor": Table;
    S_TYPE_2 "S" Number (EN_1998_1 "Table 3.3, recommended" Memory) "Soil factor": Table;
    S_GIVEN "S" Number (INPUT "" Derived) "Soil factor": Given;

    ROW_CABINET "row" Number (EN_1998_1 "Table 4.4; EN 1992-4 Table C.2" Memory) "Permanent cabinet or book stack supported by the floor": Name;
    ROW_ELECTRICAL "row" Number (EN_1992_4 "Table C.2" Memory) "Electrical or communication equipment": Name;
    ROW_RACK "row" Number (EN_1992_4 "Table C.2" Memory) "Rack for computers, communication or storage": Name;
    ROW_HAZARDOUS "row" Number (EN_1992_4 "Table C.2" Memory) "Tank or storage of hazardous contents": Name;
    ROW_CANTILEVER_HIGH "row" Number (EN_1998_1 "Table 4.4" Memory) "On legs, free over more than half of its height": Name;
    ROW_CANTILEVER_LOW "row" Number (EN_1998_1 "Table 4.4" Memory) "On legs, free over less than half, or braced at its centre of mass or above": Name;
    ROW_OTHER "row" Number (EN_1998_1 "4.3.5.4" Memory) "Other equipment, in neither table": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    Q_A "q_a" Number (EN_1998_1 "Table 4.4; EN 1992-4 Table C.2" Memory) "Behaviour factor of the element": Table;
    Q_A_GIVEN "q_a" Number (INPUT "" Derived) "Behaviour factor of the element": Given;
    GAMMA_A "gamma_a" Number (INPUT "" Derived) "Importance factor of the element (4.3.5.3)": Given;
    Z "z" Height (INPUT "" Derived) "Height of the attachment above the foundation or a rigid basement": Given;
    H "H" Height (INPUT "" Derived) "Height of the building above the same level": Given;
    R_Z "r_z" Number (EN_1998_1 "4.25" Secondary) "Height of the attachment over height of the building, at most 1" = "min(1, z / H)";
    R_Z_BASE "r_z" Number (EN_1998_1 "4.25" Secondary) "Attached at or below the foundation": Condition;
    T_A "T_a" Time (INPUT "" Derived) "Period of the element": Given;
    T_1 "T_1" Time (INPUT "" Derived) "Period of the building": Given;
    A_A "A_a" Number (EN_1998_1 "4.25" Secondary) "Amplification by the element" = "3 / (1 + (1 - T_a / T_1)^2)";
    A_A_RESONANCE "A_a" Number (EN_1998_1 "4.25, with T_a = T_1" Secondary) "Amplification at resonance, because periods are not known": Condition;
    A_A_TABLE "A_a" Number (EN_1992_4 "Table C.2" Memory) "Amplification by the element, as listed": Table;
    A_A_GIVEN "A_a" Number (INPUT "" Derived) "Amplification by the element": Given;

    S_1 "S_1" Acceleration (EN_1998_1 "4.25" Secondary) "Seismic coefficient, before its limit" = "alpha * S * ((1 + r_z) * A_a - 0.5)";
    S_MIN "S_min" Acceleration (EN_1998_1 "4.3.5.2(3)" Secondary) "It may not be less than" = "alpha * S";
    S_A "S_a" Acceleration (EN_1998_1 "4.25" Secondary) "Seismic coefficient" = "max(S_min, S_1)";
    C_1 "c_1" Acceleration (EN_1998_1 "4.24" Memory) "Horizontal force over the weight, before its limit" = "S_1 * gamma_a / q_a";
    C_MIN "c_min" Acceleration (EN_1998_1 "4.24" Memory) "It may not be less than" = "S_min * gamma_a / q_a";
    C_P "c_p" Acceleration (EN_1998_1 "4.24" Memory) "Horizontal force over the weight" = "max(c_min, c_1)";
    W_A "W_a" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_A "F_a" Force (EN_1998_1 "4.24" Memory) "Horizontal force on the cabinet" = "c_p * W_a";

    R_V "r_v" Number (EN_1998_1 "Table 3.4, recommended" Memory) "Vertical over horizontal ground acceleration": Table;
    R_V_GIVEN "r_v" Number (INPUT "" Derived) "Vertical over horizontal ground acceleration": Given;
    ALPHA_V "alpha_v" Acceleration (EN_1992_4 "annex C" Memory) "Vertical ground acceleration, over g" = "r_v * alpha";
    NO_VERTICAL "vertical" Number (EN_1992_4 "annex C" Memory) "Vertical force left out: the ground shakes up and down with at most 0.25 g, and the cabinet stands on the structure": Name;
    S_VA "S_va" Acceleration (EN_1992_4 "annex C" Memory) "Vertical seismic coefficient" = "alpha_v * A_a";
    Q_AA_CAUTIOUS "q_aa" Number (EN_1992_4 "9.2, annex C" Memory) "Behaviour factor for anchors whose option of design is not stated": Condition;
    Q_AA_ELASTIC "q_aa" Number (EN_1992_4 "9.2, annex C" Memory) "Behaviour factor for anchors by elastic design" = "min(1.5, q_a)";
    Q_AA_CAPACITY "q_aa" Number (EN_1992_4 "9.2, annex C" Memory) "Behaviour factor for anchors by capacity design, or ductile ones" = "q_a";
    C_PA "c_pa" Acceleration (EN_1992_4 "annex C" Memory) "Horizontal force over the weight for anchors" = "S_a * gamma_a / q_aa";
    F_AA "F_aa" Force (EN_1992_4 "annex C" Memory) "Horizontal force on the cabinet for its anchors" = "c_pa * W_a";
    C_VA "c_va" Acceleration (EN_1992_4 "annex C" Memory) "Vertical force over the weight for anchors, up or down" = "S_va * gamma_a / q_aa";
    F_VA "F_va" Force (EN_1992_4 "annex C" Memory) "Vertical force on the cabinet for its anchors" = "c_va * W_a";
    V_PART "v_p" Acceleration (EN_1992_4 "annex C; EN 1998-1 4.3.3.5.2(4)" Memory) "Vertical force over the weight that joins the whole horizontal one" = "0.3 * c_va";
    H_PART "h_p" Acceleration (EN_1992_4 "annex C; EN 1998-1 4.3.3.5.2(4)" Memory) "Horizontal force over the weight that joins the whole vertical one" = "0.3 * c_pa";

    CASE "G+A" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed": Name;
    CASE_ANCHORS "G+A a" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors": Name;
    PUSH_DOWN "G+A h-" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors: horizontal with 0.3 vertical, down": Name;
    PUSH_UP "G+A h+" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors: horizontal with 0.3 vertical, up": Name;
    LIFT_DOWN "G+A v-" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors: vertical with 0.3 horizontal, down": Name;
    LIFT_UP "G+A v+" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors: vertical with 0.3 horizontal, up": Name;
    CASE_ELASTIC "G+A e" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors by elastic design": Name;
    PUSH_DOWN_ELASTIC "G+A eh-" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors by elastic design: horizontal with 0.3 vertical, down": Name;
    PUSH_UP_ELASTIC "G+A eh+" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors by elastic design: horizontal with 0.3 vertical, up": Name;
    LIFT_DOWN_ELASTIC "G+A ev-" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors by elastic design: vertical with 0.3 horizontal, down": Name;
    LIFT_UP_ELASTIC "G+A ev+" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors by elastic design: vertical with 0.3 horizontal, up": Name;

    NOT_GROUND "ground S1, S2" Number (EN_1998_1 "3.1.2(4)" Memory) "ground S1 and S2 have no soil factor: they need a study of the site, which gives S": Reason;
    NOT_AMPLIFIED "overstrength" Number (EN_1992_4 "9.2, annex C" Memory) "Anchors designed by capacity, or ductile ones, have no elastic level, and this code has no overstrength factor.": Reason;
}
