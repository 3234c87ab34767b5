//! What ASCE 7-22 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    S_DS "s_ds" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Fault,
        "Design acceleration S_DS",
        "Design spectral acceleration at short periods for the site and its soil, in g. In this edition it comes from the hazard data for the site class, not from a mapped value and a coefficient. Where the soil is not known it is the worst of classes C, CD and D.",
        "ASCE 7-22 11.4.4", [];
    IMPORTANCE "importance_factor" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
        "Component importance factor I_p",
        "1.5 if the cabinet is needed for life safety, holds hazardous material, or must keep working in a building of risk category IV; otherwise 1.0. It is not the importance factor of the building. With 1.5 active equipment also needs certification by test or experience, which anchorage alone does not give.",
        "ASCE 7-22 13.1.3", [];
    COMPONENT "component" Choice(&[
            "sheet-metal-cabinet", "communication", "generator", "air-side", "wet-side", "engine", "other-mechanical-electrical",
            "isolated", "storage-cabinet", "shelving", "laboratory", "rigid",
            "flexible-high", "flexible-limited", "flexible-low", "given"]), Fault,
        "Kind of component",
        "The row of the standard's tables that fits. A loaded equipment rack may be read as a sheet-metal-framed cabinet or as communication equipment. Air coolers and condensers on legs of their own have a row that is not listed (C_AR 1.8 at grade, 2.2 above, R_po 1.5, overstrength 1.75): give its values. Steel storage racks at or below grade are not in this chapter.",
        "ASCE 7-22 Tables 13.5-1, 13.6-1",
        ["Motor control centre, panelboard, switchgear, instrumentation cabinet, other sheet-metal framing",
         "Communication equipment, computers, instrumentation, controls",
         "Generator, battery, inverter, motor, transformer",
         "Air-side equipment, fan, air conditioner, sheet-metal framing",
         "Wet-side equipment, chiller, tank, process equipment",
         "Engine, turbine, pump, compressor",
         "Other mechanical or electrical component",
         "Vibration isolated",
         "Storage cabinet over 1.83 m (6 ft) tall, with contents",
         "Library shelving, book stacks over 1.83 m (6 ft) tall",
         "Laboratory equipment",
         "Other rigid component",
         "Other flexible component, high deformability",
         "Other flexible component, limited deformability",
         "Other flexible component, low deformability",
         "Values given below"];
    C_AR "component_resonance" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Component resonance ductility factor C_AR",
        "Stands in place of the row's value. The tables have one for components at or below grade and one for those carried by the building above.",
        "ASCE 7-22 13.3.1.3", [];
    R_PO "component_strength" Number { kind: Kind::Number, min: 1.0, max: 3.0 }, Unknown,
        "Component strength factor R_po",
        "Stands in place of the row's value.",
        "ASCE 7-22 13.3.1.4", [];
    OMEGA_0P "component_overstrength" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Overstrength factor of the anchorage",
        "Stands in place of the row's value, for anchors in concrete or masonry. 2 where a row is unclear.",
        "ASCE 7-22 Tables 13.5-1, 13.6-1", [];
    GAP "isolator_gap_mm" Number { kind: Kind::Length, min: 0.0, max: 200.0 }, Unknown,
        "Clearance at the snubbers",
        "Only for a vibration-isolated component: the free play between the frame and its bumpers. Over 0.25 in the force is doubled.",
        "ASCE 7-22 Table 13.6-1, footnote", [];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above grade at which the cabinet is attached: 0 on a slab on the ground, below zero in a basement.",
        "ASCE 7-22 13.3.1.1", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Average height of the roof",
        "Height of the roof above the base of the building. Needed when the cabinet stands above grade.",
        "ASCE 7-22 13.3.1.1", [];
    PERIOD "period" Choice(&["unknown", "approximate", "given"]), Word(0),
        "Period of the building",
        "The force grows less with height in a building with a long period. Unknown is on the safe side. Only used above grade.",
        "ASCE 7-22 13.3.1.1",
        ["not known", "approximate, from the building's system and height", "given below"];
    T_A "building_period_s" Number { kind: Kind::Time, min: 0.05, max: 20.0 }, Unknown,
        "Period given",
        "Lowest approximate fundamental period of the building in any direction.",
        "ASCE 7-22 12.8.2.1", [];
    SYSTEM "building_system" Choice(&[
            "unknown", "steel-moment-frame", "concrete-moment-frame", "intermediate-concrete-moment-frame", "ordinary-concrete-moment-frame",
            "special-wall-bearing", "special-wall-frame", "ordinary-wall-bearing", "special-braced-frame", "ordinary-braced-frame",
            "buckling-restrained-braced-frame", "eccentrically-braced-frame", "steel-not-detailed", "given"]), Word(0),
        "System of the building",
        "What carries the building against earthquakes. A ductile building shakes its contents less; unknown is on the safe side. Only used above grade.",
        "ASCE 7-22 13.3.1.2, Table 12.2-1",
        ["not known", "special steel moment frame", "special concrete moment frame", "intermediate concrete moment frame",
         "ordinary concrete moment frame", "special concrete walls, bearing", "special concrete walls, building frame",
         "ordinary concrete walls, bearing", "special concentrically braced steel frame", "ordinary concentrically braced steel frame",
         "buckling-restrained braced frame", "eccentrically braced steel frame", "steel system not detailed for earthquakes",
         "values given below"];
    R "building_response" Number { kind: Kind::Number, min: 1.0, max: 8.0 }, Unknown,
        "Response factor R of the building",
        "Only where the system's values are given: R of the building's seismic force-resisting system.",
        "ASCE 7-22 Table 12.2-1", [];
    OMEGA_B "building_overstrength" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Overstrength factor of the building",
        "Only where the system's values are given: overstrength of the building's seismic force-resisting system.",
        "ASCE 7-22 Table 12.2-1", [];
    I_E "building_importance" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Unknown,
        "Importance factor I_e of the building",
        "1.0, 1.25 or 1.5 by the risk category of the building. Needed where its system is known; it is not the importance factor of the component.",
        "ASCE 7-22 11.5.1", [];
    DIRECTIONS "directions" Choice(&["any", "100-30"]), Word(0),
        "Directions",
        "The full force in any horizontal direction, or 100 % along one axis together with 30 % along the other. The second asks for 4 % more on the diagonal and is met only on eight directions.",
        "ASCE 7-22 13.3.1",
        ["the full force in every horizontal direction", "100 % along one axis with 30 % along the other"];
}
