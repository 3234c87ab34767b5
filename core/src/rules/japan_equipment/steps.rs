//! What the demand by Japanese practice for building equipment writes on the sheet.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::documents::JAPAN_EQUIPMENT;

steps! { 119 "japan-equipment";
    Z "Z" Number (JAPAN_EQUIPMENT "notification 1793 of 1980" Memory) "Region factor": Table;
    ROW_EQUIPMENT "row" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Equipment": Name;
    ROW_ISOLATED "row" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Equipment on vibration isolators": Name;
    ROW_TANK "row" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Water tank": Name;
    CLASS_S "class" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Class S": Name;
    CLASS_A "class" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Class A": Name;
    CLASS_B "class" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Class B": Name;
    STOREYS "n_s" Number (INPUT "" Derived) "Storeys of the building above ground": Given;
    STOREY "s" Number (INPUT "" Derived) "Storey on whose floor it stands": Given;
    UPPER_COUNT "n_u" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Upper storeys: 1 of up to 6, 2 of up to 9, 3 of up to 12, 4 of more": Table;
    GROUND "position" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Basement and ground floor": Name;
    MIDDLE "position" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Middle storeys": Name;
    UPPER "position" Number (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Upper storeys, roof and penthouse": Name;
    K_S "K_S" Acceleration (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Standard coefficient": Table;
    K_S_TANK "K_S" Acceleration (JAPAN_EQUIPMENT "table of standard coefficients" Secondary) "Standard coefficient of a water tank in basement or ground floor": Table;
    K_S_GIVEN "K_S" Acceleration (INPUT "" Derived) "Standard coefficient": Given;
    K_H "K_H" Acceleration (JAPAN_EQUIPMENT "horizontal coefficient" Secondary) "Horizontal force over the weight" = "Z * K_S";
    K_V "K_V" Acceleration (JAPAN_EQUIPMENT "vertical coefficient" Secondary) "Vertical force over the weight, always with the horizontal one" = "K_H / 2";
    W "W" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
    F_H "F_H" Force (JAPAN_EQUIPMENT "horizontal coefficient" Secondary) "Horizontal force on the cabinet" = "K_H * W";
    F_V "F_V" Force (JAPAN_EQUIPMENT "vertical coefficient" Secondary) "Vertical force on the cabinet" = "K_V * W";
    V_DOWN "v_1" Number (JAPAN_EQUIPMENT "short-term load" Memory) "Downward load over the weight, vertical force downwards" = "1.0 + K_V";
    V_UP "v_2" Number (JAPAN_EQUIPMENT "short-term load" Memory) "Downward load over the weight, vertical force upwards" = "1.0 - K_V";

    DOWN "W + F_V" Number (JAPAN_EQUIPMENT "short-term load" Memory) "W + F_V with F_H": Name;
    UP "W - F_V" Number (JAPAN_EQUIPMENT "short-term load" Memory) "W - F_V with F_H": Name;

    NOT_AMPLIFIED "overstrength" Number (JAPAN_EQUIPMENT "short-term load" Memory) "The practice has no overstrength factor: short-term forces are compared with short-term allowable stresses.": Reason;
}
