//! What the rule for India writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::{GSDMA_2012, IITK_GSDMA, IS_1893};

steps! { 103 "is-1893";
    ZONE_II "zone" Number (IS_1893 "Figure 1" Memory) "Seismic zone II": Name;
    ZONE_III "zone" Number (IS_1893 "Figure 1" Memory) "Seismic zone III": Name;
    ZONE_IV "zone" Number (IS_1893 "Figure 1" Memory) "Seismic zone IV": Name;
    ZONE_V "zone" Number (IS_1893 "Figure 1" Memory) "Seismic zone V": Name;
    Z "Z" Acceleration (IS_1893 "Table 3" Secondary) "Zone factor": Table;
    Z_GIVEN "Z" Acceleration (INPUT "" Derived) "Zone factor": Given;
    A_HALF "A" Acceleration (IITK_GSDMA "force on components" Memory) "Half of the zone factor, for the design earthquake" = "Z / 2";
    A_WHOLE "A" Acceleration (GSDMA_2012 "force on components" Memory) "The whole zone factor" = "Z";
    ROW_ELECTRICAL "row" Number (IITK_GSDMA "table of components" Memory) "Electrical equipment: cabinet, panel": Name;
    ROW_COMMUNICATION_RIGID "row" Number (IITK_GSDMA "table of components" Memory) "Communication, computer equipment (not listed), rigid": Name;
    ROW_COMMUNICATION_FLEXIBLE "row" Number (IITK_GSDMA "table of components" Memory) "Communication, computer equipment (not listed), flexible": Name;
    ROW_STORAGE "row" Number (IITK_GSDMA "table of components" Memory) "Storage cabinet, laboratory equipment": Name;
    ROW_MECHANICAL "row" Number (IITK_GSDMA "table of components" Memory) "Boiler, furnace, other mechanical equipment": Name;
    ROW_MACHINERY "row" Number (IITK_GSDMA "table of components" Memory) "Machinery": Name;
    ROW_VESSEL "row" Number (IITK_GSDMA "table of components" Memory) "Pressure vessel on a skirt, free-standing": Name;
    ROW_HVAC "row" Number (IITK_GSDMA "table of components" Memory) "Air conditioning, not isolated": Name;
    ROW_ISOLATED "row" Number (IITK_GSDMA "table of components" Memory) "Air conditioning or other, on vibration isolators": Name;
    ROW_CONVEYOR "row" Number (IITK_GSDMA "table of components" Memory) "Conveyor": Name;
    ROW_DISTRIBUTED "row" Number (IITK_GSDMA "table of components" Memory) "Bus duct, conduit, cable tray": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    A_P "a_p" Number (IITK_GSDMA "table of components" Memory) "Component amplification factor": Table;
    A_P_GIVEN "a_p" Number (INPUT "" Derived) "Component amplification factor": Given;
    R_P "R_p" Number (IITK_GSDMA "table of components" Memory) "Component response factor": Table;
    R_P_GIVEN "R_p" Number (INPUT "" Derived) "Component response factor": Given;
    I_P "I_p" Number (INPUT "" Derived) "Importance factor of the component": Given;
    X "x" Height (INPUT "" Derived) "Height of the attachment above the foundation": Given;
    H "h" Height (INPUT "" Derived) "Height of the building above the foundation": Given;
    R_X "r_x" Number (IITK_GSDMA "force on components" Memory) "Height of the attachment over height of the building, at most 1" = "min(1, x / h)";
    R_X_BASE "r_x" Number (IITK_GSDMA "force on components" Memory) "Attached at or below the foundation": Condition;

    C_1 "c_1" Acceleration (IITK_GSDMA "force on components" Memory) "Horizontal force over the weight, before its limit" = "A * (1 + r_x) * a_p / R_p * I_p";
    C_MIN "c_min" Acceleration (IITK_GSDMA "force on components" Memory) "It may not be less than": Condition;
    K_I "k_i" Number (IITK_GSDMA "force on components" Memory) "Factor on components on vibration isolators": Condition;
    C_P "c_p" Acceleration (IITK_GSDMA "force on components" Memory) "Horizontal force over the weight" = "max(c_min, c_1)";
    C_P_ISOLATED "c_p" Acceleration (IITK_GSDMA "force on components" Memory) "Horizontal force over the weight" = "k_i * max(c_min, c_1)";
    W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_P "F_p" Force (IITK_GSDMA "force on components" Memory) "Horizontal force on the cabinet" = "c_p * W_p";
    C_V "c_v" Acceleration (IS_1893 "6.4.6" Memory) "Vertical force over the weight, up or down, without reduction by the building" = "2 / 3 * (Z / 2) * 2.5";
    C_V_NONE "c_v" Acceleration (IS_1893 "6.3.3" Memory) "Vertical force over the weight: none is asked below zone IV": Condition;
    C_V_GIVEN "c_v" Acceleration (INPUT "" Derived) "Vertical force over the weight, up or down": Given;
    E_V "E_v" Force (IS_1893 "6.4.6" Memory) "Vertical force on the cabinet" = "c_v * W_p";
    R_PA_DEEP "R_pa" Number (IITK_GSDMA "anchors" Memory) "Response factor for anchors embedded at least eight diameters" = "R_p";
    R_PA_SHALLOW "R_pa" Number (IITK_GSDMA "anchors" Memory) "Response factor for anchors embedded less than eight diameters" = "min(1.5, R_p)";
    C_1A "c_1a" Acceleration (IITK_GSDMA "anchors" Memory) "Horizontal force over the weight for anchors, before its limit" = "A * (1 + r_x) * a_p / R_pa * I_p";
    K_A "k_a" Number (IITK_GSDMA "anchors" Memory) "Factor for connections and anchors": Condition;
    K_A_GIVEN "k_a" Number (INPUT "" Derived) "Factor for connections and anchors": Given;
    C_PA "c_pa" Acceleration (IITK_GSDMA "anchors" Memory) "Horizontal force over the weight for anchors" = "k_a * max(c_min, c_1a)";
    C_PA_ISOLATED "c_pa" Acceleration (IITK_GSDMA "anchors" Memory) "Horizontal force over the weight for anchors" = "k_a * k_i * max(c_min, c_1a)";
    F_PA "F_pa" Force (IITK_GSDMA "anchors" Memory) "Horizontal force on the cabinet for its anchors, before load factors" = "c_pa * W_p";
    H_E "h_E" Acceleration (IS_1893 "6.3.1" Memory) "Horizontal force over the weight with its load factor" = "1.5 * c_p";
    H_ON_TOP "h_t" Acceleration (IS_1893 "6.3.1" Memory) "Horizontal force over the weight for anchors: load factor on top of the doubled force" = "1.5 * c_pa";
    H_ALONE "h_d" Acceleration (IITK_GSDMA "anchors" Memory) "Horizontal force over the weight for anchors: the doubled force alone" = "max(h_E, c_pa)";
    H_A_ON_TOP "h_a" Acceleration (IS_1893 "6.3.1" Memory) "Horizontal force over the weight for anchors, as chosen" = "h_t";
    H_A_ALONE "h_a" Acceleration (IITK_GSDMA "anchors" Memory) "Horizontal force over the weight for anchors, as chosen" = "h_d";
    V_E "v_E" Acceleration (IS_1893 "6.3.1" Memory) "Vertical force over the weight with its load factor" = "1.5 * c_v";
    V_PART "v_p" Acceleration (IS_1893 "6.3.4" Memory) "Vertical force over the weight that joins the whole horizontal one" = "0.3 * v_E";
    H_PART "h_p" Acceleration (IS_1893 "6.3.4" Memory) "Horizontal force over the weight that joins the whole vertical one: 30 % along both axes" = "0.3 * sqrt(2) * h_E";
    H_A_PART "h_pa" Acceleration (IS_1893 "6.3.4" Memory) "The same for anchors" = "0.3 * sqrt(2) * h_a";

    HEAVY "1.5(DL+EL)" Number (IS_1893 "6.3.1" Memory) "1.5 (DL + EL)": Name;
    LIGHT "0.9DL+1.5EL" Number (IS_1893 "6.3.1" Memory) "0.9 DL + 1.5 EL": Name;
    HEAVY_ANCHORS "1.5(DL+EL) a" Number (IS_1893 "6.3.1" Memory) "1.5 (DL + EL), anchors": Name;
    LIGHT_ANCHORS "0.9DL+1.5EL a" Number (IS_1893 "6.3.1" Memory) "0.9 DL + 1.5 EL, anchors": Name;
    HEAVY_Z "1.5(DL+EL) z" Number (IS_1893 "6.3.1, 6.3.4" Memory) "1.5 (DL + EL), vertical whole": Name;
    LIGHT_Z "0.9DL+1.5EL z" Number (IS_1893 "6.3.1, 6.3.4" Memory) "0.9 DL + 1.5 EL, vertical whole": Name;
    HEAVY_Z_ANCHORS "1.5(DL+EL) za" Number (IS_1893 "6.3.1, 6.3.4" Memory) "1.5 (DL + EL), anchors, vertical whole": Name;
    LIGHT_Z_ANCHORS "0.9DL+1.5EL za" Number (IS_1893 "6.3.1, 6.3.4" Memory) "0.9 DL + 1.5 EL, anchors, vertical whole": Name;

    NOT_DEEP "anchor type" Number (IITK_GSDMA "anchors" Memory) "an anchor is embedded less than eight diameters, but the demand was asked for deep anchors; the anchor type \"shallow\" would fit": Reason;
    NOT_AMPLIFIED "overstrength" Number (IITK_GSDMA "anchors" Memory) "This draft has no overstrength factor beside the doubled force for anchors.": Reason;
}
