//! What SNI 1726:2019 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    S_S "s_s" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
        "Mapped acceleration S_S",
        "Mapped spectral acceleration at short periods for the risk-targeted maximum considered earthquake, in g. Give this with the site class, or give S_DS instead.",
        "SNI 1726:2019 6.1", [];
    SITE_CLASS "site_class" Choice(&["SA", "SB", "SC", "SD", "SE", "SF"]), Unknown,
        "Site class",
        "Soil under the building, from the soil report. Needed with S_S.",
        "SNI 1726:2019 5.3",
        ["SA: hard rock", "SB: rock", "SC: very dense soil, soft rock", "SD: stiff soil", "SE: soft soil",
         "SF: site investigation required"];
    S_DS "s_ds" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
        "Design acceleration S_DS",
        "Design spectral acceleration at short periods, in g, where it is already known for the site. It stands in place of S_S and the site class.",
        "SNI 1726:2019 6.3", [];
    IMPORTANCE "importance_factor" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
        "Component importance factor I_p",
        "1.5 if the cabinet is needed for life safety, holds hazardous material, or must keep working in a building of risk category IV; otherwise 1.0. With 1.5 active equipment also needs certification by test or experience, which anchorage alone does not give.",
        "SNI 1726:2019 9", [];
    COMPONENT "component" Choice(&[
            "sheet-metal-cabinet", "communication", "generator", "air-side", "wet-side", "engine", "other-mechanical-electrical",
            "isolated-neoprene", "isolated-springs", "isolated-internally", "given"]), Fault,
        "Kind of component",
        "The row of the standard's table that fits. A loaded equipment rack may be read as a sheet-metal-framed cabinet or as communication equipment: the first asks for slightly more.",
        "SNI 1726:2019 9",
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
         "Values given below"];
    A_P "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
        "Component amplification factor a_p",
        "Stands in place of the row's value: 1.0 for rigid, 2.5 for flexible, less than the row only by dynamic analysis and never below 1.0.",
        "SNI 1726:2019 9", [];
    R_P "component_response" Number { kind: Kind::Number, min: 1.0, max: 6.0 }, Unknown,
        "Component response factor R_p",
        "Stands in place of the row's value. Attachments may not count on more than 6.",
        "SNI 1726:2019 9", [];
    OMEGA_0 "component_overstrength" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
        "Overstrength factor of the component",
        "Stands in place of the row's value, for anchors in concrete or masonry.",
        "SNI 1726:2019 9", [];
    GAP "isolator_gap_mm" Number { kind: Kind::Length, min: 0.0, max: 200.0 }, Unknown,
        "Clearance at the snubbers",
        "Only for a vibration-isolated component: the free play between the frame and its bumpers. Over 0.25 in the force is doubled.",
        "SNI 1726:2019 9", [];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above the base of the building at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
        "SNI 1726:2019 9", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Average height of the roof",
        "Height of the roof above the base of the building. Needed when the cabinet stands above the base.",
        "SNI 1726:2019 9", [];
    DIRECTIONS "directions" Choice(&["any", "100-30"]), Word(0),
        "Directions",
        "The full force in any horizontal direction, or 100 % along one axis together with 30 % along the other. The second asks for 4 % more on the diagonal and is met only on eight directions.",
        "SNI 1726:2019 9",
        ["the full force in every horizontal direction", "100 % along one axis with 30 % along the other"];
}
