//! What NSCP 2015 writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::NSCP_2015;

steps! { 115 "nscp-2015";
    ZONE_2 "zone" Number (NSCP_2015 "208.4" Memory) "Zone 2": Name;
    ZONE_4 "zone" Number (NSCP_2015 "208.4" Memory) "Zone 4": Name;
    SOIL_A "soil" Number (NSCP_2015 "208.4" Memory) "Soil profile S_A": Name;
    SOIL_B "soil" Number (NSCP_2015 "208.4" Memory) "Soil profile S_B": Name;
    SOIL_C "soil" Number (NSCP_2015 "208.4" Memory) "Soil profile S_C": Name;
    SOIL_D "soil" Number (NSCP_2015 "208.4" Memory) "Soil profile S_D": Name;
    SOIL_E "soil" Number (NSCP_2015 "208.4" Memory) "Soil profile S_E": Name;
    SOIL_F "soil" Number (NSCP_2015 "208.4" Memory) "Soil profile S_F": Name;
    C_A_ZONE_2 "C_a" Acceleration (NSCP_2015 "seismic coefficient C_a" Memory) "Seismic coefficient in zone 2": Table;
    C_4 "C_4" Acceleration (NSCP_2015 "seismic coefficient C_a" Memory) "Seismic coefficient in zone 4, away from every source": Table;
    SOURCE_A "source" Number (NSCP_2015 "208.4" Memory) "Seismic source type A": Name;
    SOURCE_B "source" Number (NSCP_2015 "208.4" Memory) "Seismic source type B": Name;
    DISTANCE "d_s" Distance (INPUT "" Derived) "Distance to the source": Given;
    N_A "N_a" Number (NSCP_2015 "near-source factor N_a" Memory) "Near-source factor": Interpolated;
    N_A_C "N_a" Number (NSCP_2015 "near-source factor N_a" Memory) "Near-source factor of a source of type C": Condition;
    C_A_ZONE_4 "C_a" Acceleration (NSCP_2015 "seismic coefficient C_a" Memory) "Seismic coefficient in zone 4" = "C_4 * N_a";
    C_A_GIVEN "C_a" Acceleration (INPUT "" Derived) "Seismic coefficient": Given;
    I_P "I_p" Number (INPUT "" Derived) "Importance factor": Given;
    C_1 "c_1" Acceleration (NSCP_2015 "208.9, simple equation" Memory) "Horizontal force over the weight by the simple equation" = "4.0 * C_a * I_p";

    ROW_EQUIPMENT "row" Number (NSCP_2015 "208.9, table of components" Memory) "Rigid electrical or mechanical equipment": Name;
    ROW_FLEXIBLE "row" Number (NSCP_2015 "208.9, table of components, as in UBC 1997" Memory) "Flexible equipment, anchored below its centre of mass": Name;
    ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
    A_P_ROW "a_p" Number (NSCP_2015 "208.9, table of components" Memory) "Component amplification factor": Table;
    A_P_GIVEN "a_p" Number (INPUT "" Derived) "Component amplification factor": Given;
    R_P_ROW "R_p" Number (NSCP_2015 "208.9, table of components" Memory) "Component response factor": Table;
    R_P_GIVEN "R_p" Number (INPUT "" Derived) "Component response factor": Given;
    H_X "h_x" Height (INPUT "" Derived) "Height of the attachment above grade": Given;
    H_R "h_r" Height (INPUT "" Derived) "Height of the roof above grade": Given;
    R_H "r_h" Number (NSCP_2015 "208.9" Memory) "Height of the attachment over height of the roof, at most 1" = "min(1, h_x / h_r)";
    R_H_GRADE "r_h" Number (NSCP_2015 "208.9" Memory) "Attached at or below grade": Condition;
    C_2 "c_2" Acceleration (NSCP_2015 "208.9, full equation" Memory) "Horizontal force over the weight, before limits" = "a_p * C_a * I_p / R_p * (1 + 3 * r_h)";
    C_MAX "c_max" Acceleration (NSCP_2015 "208.9, limits" Memory) "It need not be more than" = "4.0 * C_a * I_p";
    C_MIN "c_min" Acceleration (NSCP_2015 "208.9, limits" Memory) "It may not be less than" = "0.7 * C_a * I_p";
    C_P "c_p" Acceleration (NSCP_2015 "208.9" Memory) "Horizontal force over the weight" = "max(c_min, min(c_max, c_2))";
    C_P_SIMPLE "c_p" Acceleration (NSCP_2015 "208.9" Memory) "Horizontal force over the weight" = "c_1";
    C_V "c_v" Acceleration (NSCP_2015 "208.5" Memory) "Vertical force over the weight, up or down together with the horizontal one" = "0.5 * C_a * I_p";
    W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_P "F_p" Force (NSCP_2015 "208.9" Memory) "Horizontal force on the cabinet" = "c_p * W_p";
    E_V "E_v" Force (NSCP_2015 "208.5" Memory) "Vertical force on the cabinet" = "c_v * W_p";

    R_PA_DEEP "R_pa" Number (NSCP_2015 "208.9" Memory) "Response factor for anchors embedded at least eight diameters" = "R_p";
    R_PA_SHALLOW "R_pa" Number (NSCP_2015 "208.9" Memory) "Response factor for anchors embedded less than eight diameters" = "min(1.5, R_p)";
    R_PA_NONDUCTILE "R_pa" Number (NSCP_2015 "208.9" Memory) "Response factor for anchors of nonductile material, or adhesive" = "min(1.0, R_p)";
    C_2A "c_2a" Acceleration (NSCP_2015 "208.9, full equation" Memory) "Horizontal force over the weight for anchors, before limits" = "a_p * C_a * I_p / R_pa * (1 + 3 * r_h)";
    C_PA "c_pa" Acceleration (NSCP_2015 "208.9" Memory) "Horizontal force over the weight for anchors" = "max(c_min, min(c_max, c_2a))";
    C_PA_SIMPLE "c_pa" Acceleration (NSCP_2015 "208.9" Memory) "Horizontal force over the weight for anchors" = "c_1";
    F_PA "F_pa" Force (NSCP_2015 "208.9" Memory) "Horizontal force on the cabinet for its anchors" = "c_pa * W_p";
    V_1 "v_1" Number (NSCP_2015 "203.3" Memory) "Downward load over the weight: 1.2 D and 1.0 E downwards" = "1.2 + c_v";
    V_2 "v_2" Number (NSCP_2015 "203.3" Memory) "Downward load over the weight: 0.9 D and 1.0 E upwards" = "0.9 - c_v";

    HEAVY "1.2" Number (NSCP_2015 "203.3" Memory) "1.2 D + 1.0 E": Name;
    LIGHT "0.9" Number (NSCP_2015 "203.3" Memory) "0.9 D - 1.0 E": Name;
    HEAVY_ANCHORS "1.2a" Number (NSCP_2015 "203.3, 208.9" Memory) "1.2 D + 1.0 E, anchors": Name;
    LIGHT_ANCHORS "0.9a" Number (NSCP_2015 "203.3, 208.9" Memory) "0.9 D - 1.0 E, anchors": Name;

    CATEGORY_C "seismic design category" Number (NSCP_2015 "208.4, as UBC zones are compared in ACI 318-05 R1.1.8.3" Memory) "both zones compare with seismic design category C or higher; anchors may not be designed as in A or B": Reason;
    NOT_DEEP "anchor type" Number (NSCP_2015 "208.9" Memory) "an anchor is embedded less than eight diameters, but the demand was asked for deep anchors; the anchor type \"shallow\" would fit": Reason;
    NOT_SOIL_F "soil profile S_F" Number (NSCP_2015 "208.4" Memory) "soil profile S_F has no coefficient: it needs an investigation of the site, which gives C_a": Reason;
    NOT_SOURCE "near-source factor" Number (NSCP_2015 "208.4" Memory) "in zone 4 the near-source factor needs the type of the source and its distance": Reason;
    NOT_AMPLIFIED "overstrength" Number (NSCP_2015 "208.9" Memory) "This edition has no overstrength factor for components: for anchors it lowers the response factor instead.": Reason;
    NOT_DUCTILE "anchor type" Number (NSCP_2015 "208.9" Memory) "an anchor is adhesive or of steel that counts as brittle, but the demand was asked for ductile anchors; the anchor type \"nonductile\" would fit": Reason;
}
