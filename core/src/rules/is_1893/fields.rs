//! What the rule for India asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    ZONE "zone" Choice(&["II", "III", "IV", "V"]), Unknown,
        "Seismic zone",
        "Zone of the site on the map of the code. Give this, or the zone factor.",
        "IS 1893 (Part 1):2016 Figure 1, Table 3", ["II", "III", "IV", "V"];
    Z "zone_factor" Number { kind: Kind::Acceleration, min: 0.01, max: 1.0 }, Unknown,
        "Zone factor Z",
        "Stands in place of the zone, for instance from a newer map.",
        "IS 1893 (Part 1):2016 Table 3", [];
    BASIS "basis" Choice(&["half-zone-factor", "whole-zone-factor"]), Fault,
        "Share of the zone factor",
        "The draft for IS 1893 (IITK-GSDMA; Mondal and Jain 2005) takes half of Z, the design earthquake. A book of 2012 and a clause of IS 16700:2017 are recalled to take all of Z, twice the force. Ask whoever approves the design; there is no usual answer.",
        "IITK-GSDMA-EQ05; Murty et al. 2012; IS 16700:2017",
        ["Z/2: draft for IS 1893, Mondal and Jain 2005", "Z: Murty et al. 2012, IS 16700:2017"];
    IMPORTANCE "importance_factor" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
        "Importance factor of the component I_p",
        "1.5 for life safety, hazardous contents and storage racks open to the public, otherwise 1.0.",
        "IITK-GSDMA-EQ05", [];
    COMPONENT "component" Choice(&["electrical", "communication-rigid", "communication-flexible", "storage", "mechanical", "machinery", "vessel",
            "hvac", "isolated", "conveyor", "distributed", "given"]), Fault,
        "Kind of component",
        "The row of the draft that fits. Communication and computer equipment is not listed there: choose by whether its period on its anchors is under 0.06 s (rigid). A flexible cabinet of another row gets a_p = 2.5, given below.",
        "IITK-GSDMA-EQ05, table of components",
        ["Electrical equipment: cabinet, panel", "Communication, computer equipment (not listed), rigid",
         "Communication, computer equipment (not listed), flexible", "Storage cabinet, laboratory equipment",
         "Boiler, furnace, other mechanical equipment", "Machinery", "Pressure vessel on a skirt, free-standing",
         "Air conditioning, not isolated", "Air conditioning or other, on vibration isolators", "Conveyor",
         "Bus duct, conduit, cable tray", "Values given below"];
    A_P "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
        "Component amplification factor a_p",
        "Stands in place of the row's value: 1.0 rigid, 2.5 flexible.",
        "IITK-GSDMA-EQ05", [];
    R_P "component_response" Number { kind: Kind::Number, min: 1.0, max: 5.0 }, Unknown,
        "Component response factor R_p",
        "Stands in place of the row's value.",
        "IITK-GSDMA-EQ05", [];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above the top of the foundation at which the cabinet is attached; 0 or below there.",
        "IITK-GSDMA-EQ05", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Height of the building",
        "Above the top of the foundation. Needed when the cabinet stands above it.",
        "IITK-GSDMA-EQ05", [];
    VERTICAL "vertical_coefficient" Number { kind: Kind::Acceleration, min: 0.0, max: 2.0 }, Unknown,
        "Vertical coefficient A_v",
        "Stands in place of the code's coefficient, which acts in zones IV and V and takes here no reduction R of the building.",
        "IS 1893 (Part 1):2016 6.4.6", [];
    ANCHORS "anchor_type" Choice(&["deep", "shallow"]), Fault,
        "Type of anchors",
        "Expansion, chemical or cast-in anchors embedded less than eight diameters count as shallow and get a response factor of at most 1.5.",
        "IITK-GSDMA-EQ05",
        ["embedded at least eight diameters", "embedded less than eight diameters"];
    ANCHOR_FACTOR "anchor_factor" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Factor for anchors",
        "Stands in place of 2, by which the draft raises the force on connections and anchors.",
        "IITK-GSDMA-EQ05", [];
    ON_TOP "anchor_load_factor" Choice(&["on-top", "alone"]), Word(0),
        "Load factor on the anchors' force",
        "Whether 1.5 of the combinations multiplies the doubled force as well. It is not settled; both results stand on the sheet. The second never gives less than 1.5 times the component's force.",
        "IS 1893 (Part 1):2016 6.3; IITK-GSDMA-EQ05",
        ["1.5 on top of the doubled force", "the doubled force alone"];
    DIRECTIONS "directions" Choice(&["any", "100-30"]), Word(1),
        "Directions",
        "100 % along one axis together with 30 % along the others; or the full force in any horizontal direction.",
        "IS 1893 (Part 1):2016 6.3.4",
        ["the full force in every horizontal direction", "100 % along one axis with 30 % along the other"];
}
