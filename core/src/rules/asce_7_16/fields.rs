//! What ASCE 7-16 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    S_S "s_s" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
        "Mapped acceleration S_S",
        "Mapped spectral acceleration at short periods for the risk-targeted maximum considered earthquake, in g. Give this with the site class, or give S_DS instead.",
        "ASCE 7-16 11.4.2", [];
    SITE_CLASS "site_class" Choice(&["A", "B", "B-unmeasured", "C", "D", "D-default", "E", "F"]), Word(5),
        "Site class",
        "Soil under the building, from the soil report. Where the soil is not known the standard takes class D with F_a not below 1.2. Only used with S_S.",
        "ASCE 7-16 11.4.3, 20.3",
        ["A: hard rock", "B: rock, shear wave velocity measured", "B: rock, velocity not measured", "C: very dense soil, soft rock",
         "D: stiff soil, by soil report", "D: soil not known", "E: soft clay", "F: site analysis required"];
    S_DS "s_ds" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
        "Design acceleration S_DS",
        "Design spectral acceleration at short periods, in g, where it is already known for the site. It stands in place of S_S and the site class.",
        "ASCE 7-16 11.4.5", [];
    IMPORTANCE "importance_factor" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
        "Component importance factor I_p",
        "1.5 if the cabinet is needed for life safety, holds hazardous material, or must keep working in a building of risk category IV; otherwise 1.0. With 1.5 active equipment also needs certification by test or experience, which anchorage alone does not give.",
        "ASCE 7-16 13.1.3", [];
    COMPONENT "component" Choice(&[
            "sheet-metal-cabinet", "communication", "generator", "air-side", "wet-side", "engine", "other-mechanical-electrical",
            "isolated-neoprene", "isolated-springs", "isolated-internally",
            "storage-cabinet", "shelving", "laboratory", "rigid-high", "rigid-limited", "rigid-low",
            "flexible-high", "flexible-limited", "flexible-low", "given"]), Fault,
        "Kind of component",
        "The row of the standard's tables that fits. A loaded equipment rack may be read as a sheet-metal-framed cabinet or as communication equipment: the first asks for slightly more. Air coolers and condensers on legs of their own have a row that is not listed (a_p 2.5, R_p 3.0, overstrength 1.5): give its values. Steel storage racks at or below grade are not in this chapter.",
        "ASCE 7-16 Tables 13.5-1, 13.6-1",
        ["Motor control centre, panelboard, switchgear, instrumentation cabinet, other sheet-metal framing",
         "Communication equipment, computers, instrumentation, controls",
         "Generator, battery, inverter, motor, transformer",
         "Air-side equipment, fan, air conditioner, sheet-metal framing",
         "Wet-side equipment, boiler, chiller, tank, process equipment",
         "Engine, turbine, pump, compressor",
         "Other mechanical or electrical component",
         "Vibration isolated: neoprene, with snubbers or stops",
         "Vibration isolated: springs, closely restrained",
         "Vibration isolated internally",
         "Storage cabinet over 1.83 m (6 ft) tall, with contents",
         "Library shelving, book stacks over 1.83 m (6 ft) tall",
         "Laboratory equipment",
         "Other rigid component, high deformability",
         "Other rigid component, limited deformability",
         "Other rigid component, low deformability",
         "Other flexible component, high deformability",
         "Other flexible component, limited deformability",
         "Other flexible component, low deformability",
         "Values given below"];
    A_P "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
        "Component amplification factor a_p",
        "Stands in place of the row's value: 1.0 for rigid, 2.5 for flexible, less than the row only by dynamic analysis and never below 1.0.",
        "ASCE 7-16 Table 13.6-1, footnote a", [];
    R_P "component_response" Number { kind: Kind::Number, min: 1.0, max: 6.0 }, Unknown,
        "Component response factor R_p",
        "Stands in place of the row's value. Attachments may not count on more than 6.",
        "ASCE 7-16 Table 13.6-1, 13.4.1", [];
    OMEGA_0 "component_overstrength" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Overstrength factor of the component",
        "Stands in place of the row's value, for anchors in concrete or masonry.",
        "ASCE 7-16 Table 13.6-1, 13.4.2", [];
    GAP "isolator_gap_mm" Number { kind: Kind::Length, min: 0.0, max: 200.0 }, Unknown,
        "Clearance at the snubbers",
        "Only for a vibration-isolated component: the free play between the frame and its bumpers. Over 0.25 in the force is doubled.",
        "ASCE 7-16 Table 13.6-1, footnote b", [];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above the base of the building at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
        "ASCE 7-16 13.3.1", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Average height of the roof",
        "Height of the roof above the base of the building. Needed when the cabinet stands above the base.",
        "ASCE 7-16 13.3.1", [];
    DIRECTIONS "directions" Choice(&["any", "100-30"]), Word(0),
        "Directions",
        "The full force in any horizontal direction, or 100 % along one axis together with 30 % along the other. The second asks for 4 % more on the diagonal and is met only on eight directions.",
        "ASCE 7-16 13.3.1.1",
        ["the full force in every horizontal direction", "100 % along one axis with 30 % along the other"];
}
