//! What UBC 1997 writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::UBC_1997;

steps! { 30 "ubc-1997";
    ZONE_1 "zone" Number (UBC_1997 "Figure 16-2" Memory) "Seismic zone 1": Name;
    ZONE_2A "zone" Number (UBC_1997 "Figure 16-2" Memory) "Seismic zone 2A": Name;
    ZONE_2B "zone" Number (UBC_1997 "Figure 16-2" Memory) "Seismic zone 2B": Name;
    ZONE_3 "zone" Number (UBC_1997 "Figure 16-2" Memory) "Seismic zone 3": Name;
    ZONE_4 "zone" Number (UBC_1997 "Figure 16-2" Memory) "Seismic zone 4": Name;
    Z "Z" Acceleration (UBC_1997 "Table 16-I" Secondary) "Seismic zone factor": Table;
    SOIL_A "soil" Number (UBC_1997 "Table 16-J" Memory) "Soil profile S_A: hard rock": Name;
    SOIL_B "soil" Number (UBC_1997 "Table 16-J" Memory) "Soil profile S_B: rock": Name;
    SOIL_C "soil" Number (UBC_1997 "Table 16-J" Memory) "Soil profile S_C: very dense soil, soft rock": Name;
    SOIL_D "soil" Number (UBC_1997 "1629.3, Table 16-J" Memory) "Soil profile S_D: stiff soil, also where not known": Name;
    SOIL_E "soil" Number (UBC_1997 "Table 16-J" Memory) "Soil profile S_E: soft soil": Name;
    SOIL_F "soil" Number (UBC_1997 "Table 16-J" Memory) "Soil profile S_F": Name;
    C_A_ZONE_2 "C_a" Acceleration (UBC_1997 "Table 16-Q" Secondary) "Seismic coefficient": Table;
    C_A_ZONE_1_3 "C_a" Acceleration (UBC_1997 "Table 16-Q" Memory) "Seismic coefficient": Table;
    C_4 "C_4" Acceleration (UBC_1997 "Table 16-Q, zone 4" Secondary) "Seismic coefficient in zone 4, away from every source": Table;
    SOURCE_A "source" Number (UBC_1997 "Table 16-U" Memory) "Seismic source type A": Name;
    SOURCE_B "source" Number (UBC_1997 "Table 16-U" Memory) "Seismic source type B": Name;
    DISTANCE "d_s" Distance (INPUT "" Derived) "Distance to the source": Given;
    N_A "N_a" Number (UBC_1997 "Table 16-S" Secondary) "Near-source factor": Interpolated;
    N_A_C "N_a" Number (UBC_1997 "Table 16-S" Secondary) "Near-source factor of a source of type C": Condition;
    C_A_ZONE_4 "C_a" Acceleration (UBC_1997 "Table 16-Q, zone 4" Secondary) "Seismic coefficient" = "C_4 * N_a";
    C_A_GIVEN "C_a" Acceleration (INPUT "" Derived) "Seismic coefficient": Given;
    I_P "I_p" Number (INPUT "" Derived) "Importance factor (Table 16-K)": Given;
    C_1 "c_1" Acceleration (UBC_1997 "32-1" Secondary) "Horizontal force over the weight by the simple equation" = "4.0 * C_a * I_p";

    ROW_EQUIPMENT "row" Number (UBC_1997 "Table 16-O, 3.B" Secondary) "Electrical, mechanical or plumbing equipment": Name;
    ROW_EQUIPMENT_FLEXIBLE "row" Number (UBC_1997 "Table 16-O, 3.C" Secondary) "Flexible equipment, anchored below its centre of mass": Name;
    ROW_TANK "row" Number (UBC_1997 "Table 16-O" Memory) "Tank or vessel": Name;
    ROW_EMERGENCY "row" Number (UBC_1997 "Table 16-O" Memory) "Emergency power, essential communication, battery rack, fuel tank": Name;
    ROW_CABINET "row" Number (UBC_1997 "Table 16-O" Memory) "Cabinet or book stack over 1.83 m (6 ft) tall, with contents": Name;
    ROW_STORAGE_RACK "row" Number (UBC_1997 "Table 16-O" Memory) "Storage rack, with contents": Name;
    ROW_RIGID_DUCTILE "row" Number (UBC_1997 "Table 16-O" Memory) "Rigid component, ductile material and attachment": Name;
    ROW_RIGID_NONDUCTILE "row" Number (UBC_1997 "Table 16-O" Memory) "Rigid component, nonductile material or attachment": Name;
    ROW_FLEXIBLE_DUCTILE "row" Number (UBC_1997 "Table 16-O" Memory) "Flexible component, ductile material and attachment": Name;
    ROW_FLEXIBLE_NONDUCTILE "row" Number (UBC_1997 "Table 16-O" Memory) "Flexible component, nonductile material or attachment": Name;
    ROW_ISOLATED "row" Number (UBC_1997 "Table 16-O" Memory) "Vibration-isolated equipment": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    A_P_ROW "a_p" Number (UBC_1997 "Table 16-O" Memory) "Component amplification factor": Table;
    A_P_GIVEN "a_p" Number (INPUT "" Derived) "Component amplification factor": Given;
    R_P_ROW "R_p" Number (UBC_1997 "Table 16-O" Memory) "Component response factor": Table;
    R_P_GIVEN "R_p" Number (INPUT "" Derived) "Component response factor": Given;
    H_X "h_x" Height (INPUT "" Derived) "Height of the attachment above grade": Given;
    H_R "h_r" Height (INPUT "" Derived) "Height of the roof above grade": Given;
    R_H "r_h" Number (UBC_1997 "1632.2" Secondary) "Height of the attachment over height of the roof, at most 1" = "min(1, h_x / h_r)";
    R_H_GRADE "r_h" Number (UBC_1997 "1632.2" Secondary) "Attached at or below grade": Condition;
    C_2 "c_2" Acceleration (UBC_1997 "32-2" Secondary) "Horizontal force over the weight, before limits" = "a_p * C_a * I_p / R_p * (1 + 3 * r_h)";
    C_MAX "c_max" Acceleration (UBC_1997 "32-3" Secondary) "It need not be more than" = "4.0 * C_a * I_p";
    C_MIN "c_min" Acceleration (UBC_1997 "32-3" Memory) "It may not be less than" = "0.7 * C_a * I_p";
    C_P "c_p" Acceleration (UBC_1997 "1632.2" Secondary) "Horizontal force over the weight" = "max(c_min, min(c_max, c_2))";
    C_P_SIMPLE "c_p" Acceleration (UBC_1997 "1632.2" Secondary) "Horizontal force over the weight" = "c_1";
    C_V "c_v" Acceleration (UBC_1997 "1630.1.1" Secondary) "Vertical force over the weight, up or down together with the horizontal one" = "0.5 * C_a * I_p";
    W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_P "F_p" Force (UBC_1997 "1632.2" Secondary) "Horizontal force on the cabinet" = "c_p * W_p";
    E_V "E_v" Force (UBC_1997 "1630.1.1" Secondary) "Vertical force on the cabinet" = "c_v * W_p";

    R_PA_DEEP "R_pa" Number (UBC_1997 "1632.2" Memory) "Response factor for anchors embedded at least eight diameters" = "R_p";
    R_PA_SHALLOW "R_pa" Number (UBC_1997 "1632.2" Secondary) "Response factor for anchors embedded less than eight diameters" = "min(1.5, R_p)";
    R_PA_NONDUCTILE "R_pa" Number (UBC_1997 "1632.2" Memory) "Response factor for anchors of nonductile material, or adhesive" = "min(1.0, R_p)";
    C_2A "c_2a" Acceleration (UBC_1997 "32-2" Secondary) "Horizontal force over the weight for anchors, before limits" = "a_p * C_a * I_p / R_pa * (1 + 3 * r_h)";
    C_PA "c_pa" Acceleration (UBC_1997 "1632.2" Secondary) "Horizontal force over the weight for anchors" = "max(c_min, min(c_max, c_2a))";
    C_PA_SIMPLE "c_pa" Acceleration (UBC_1997 "1632.2" Secondary) "Horizontal force over the weight for anchors" = "c_1";
    K_ISOLATED "k_a" Number (UBC_1997 "Table 16-O, footnote 14" Secondary) "Factor on shallow or nonductile anchors under vibration isolators": Condition;
    C_PA_ISOLATED "c_pi" Acceleration (UBC_1997 "Table 16-O, footnote 14" Secondary) "Horizontal force over the weight for anchors under vibration isolators" = "k_a * c_pa";
    F_PA "F_pa" Force (UBC_1997 "1632.2" Secondary) "Horizontal force on the cabinet for its anchors, before load factors" = "c_pa * W_p";
    F_PA_ISOLATED "F_pa" Force (UBC_1997 "1632.2" Secondary) "Horizontal force on the cabinet for its anchors, before load factors" = "c_pi * W_p";
    V_HEAVY "v_1" Number (UBC_1997 "12-5" Memory) "Downward load over the weight: 1.2 D and 1.0 E downwards" = "1.2 + c_v";
    V_LIGHT "v_2" Number (UBC_1997 "12-6" Memory) "Downward load over the weight: 0.9 D and 1.0 E upwards" = "0.9 - c_v";
    H_ANCHORS "h_a" Acceleration (UBC_1997 "1612.2.1, exception 2" Memory) "Horizontal force over the weight for anchors in concrete, with its load factor" = "1.1 * c_pa";
    H_ANCHORS_ISOLATED "h_a" Acceleration (UBC_1997 "1612.2.1, exception 2" Memory) "Horizontal force over the weight for anchors in concrete, with its load factor" = "1.1 * c_pi";
    V_HEAVY_ANCHORS "v_1a" Number (UBC_1997 "12-5; 1612.2.1, exception 2" Memory) "Downward load over the weight for anchors in concrete: 1.2 D and 1.0 E downwards" = "1.1 * v_1";
    V_LIGHT_ANCHORS "v_2a" Number (UBC_1997 "12-6; 1612.2.1, exception 2" Memory) "Downward load over the weight for anchors in concrete: 0.9 D and 1.0 E upwards" = "1.1 * v_2";

    HEAVY "12-5" Number (UBC_1997 "12-5" Memory) "1.2 D + 1.0 E": Name;
    LIGHT "12-6" Number (UBC_1997 "12-6" Memory) "0.9 D - 1.0 E": Name;
    HEAVY_ANCHORS "12-5a" Number (UBC_1997 "12-5; 1612.2.1, exception 2" Memory) "1.1 (1.2 D + 1.0 E), anchors": Name;
    LIGHT_ANCHORS "12-6a" Number (UBC_1997 "12-6; 1612.2.1, exception 2" Memory) "1.1 (0.9 D - 1.0 E), anchors": Name;

    CATEGORY_C "seismic design category" Number (UBC_1997 "Table 16-I, as compared in ACI 318-05 R1.1.8.3" Memory) "zone 2A and higher compare with seismic design category C or higher; anchors may not be designed as in A or B": Reason;
    NOT_SOIL_F "soil profile S_F" Number (UBC_1997 "Table 16-Q, footnote 1" Memory) "soil profile S_F has no coefficient: it needs an investigation of the site, which gives C_a": Reason;
    NOT_SOURCE "near-source factor" Number (UBC_1997 "Table 16-S" Secondary) "in zone 4 the near-source factor needs the type of the source and its distance": Reason;
    NOT_AMPLIFIED "overstrength" Number (UBC_1997 "1632.2" Memory) "This edition has no overstrength factor for components: for anchors it lowers the response factor instead.": Reason;
}
