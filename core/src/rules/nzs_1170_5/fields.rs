//! What NZS 1170.5 asks for.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    Z "hazard_factor" Number { kind: Kind::Acceleration, min: 0.01, max: 1.0 }, Fault,
        "Hazard factor Z",
        "Of the place, from the table or the map of the standard.",
        "NZS 1170.5 3.1.4, Table 3.3", [];
    PROBABILITY "annual_probability" Choice(&["1/20", "1/25", "1/50", "1/100", "1/250", "1/500", "1/1000", "1/2000", "1/2500"]), Unknown,
        "Annual probability of exceedance",
        "From the importance level of the building. For a life of 50 years at the ultimate limit state: level 1 has 1/100, level 2 1/500, level 3 1/1000, level 4 1/2500. Serviceability: 1/25, and 1/500 for continued operation of level 4.",
        "NZS 1170.0 Table 3.3; NZS 1170.5 Table 3.5",
        ["1/20", "1/25", "1/50", "1/100", "1/250", "1/500", "1/1000", "1/2000", "1/2500"];
    R "return_period_factor" Number { kind: Kind::Number, min: 0.1, max: 2.5 }, Unknown,
        "Return period factor R",
        "Stands in place of the factor of the annual probability.",
        "NZS 1170.5 Table 3.5", [];
    SOIL "soil_class" Choice(&["A", "B", "C", "D", "E"]), Fault,
        "Site subsoil class",
        "From the soil report.",
        "NZS 1170.5 3.1.3",
        ["A: strong rock", "B: rock", "C: shallow soil", "D: deep or soft soil", "E: very soft soil"];
    ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
        "Height of the attachment",
        "Height above the base of the building at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
        "NZS 1170.5 8.3", [];
    ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
        "Height of the building",
        "Height above the base to the uppermost seismic weight. Needed when the cabinet stands above the base.",
        "NZS 1170.5 8.3", [];
    PERIOD "component_period_s" Number { kind: Kind::Time, min: 0.01, max: 10.0 }, Unknown,
        "Period of the cabinet",
        "First period of the cabinet on its fixings. Where it is not known the largest spectral shape, that of periods up to 0.75 s, is taken.",
        "NZS 1170.5 8.4", [];
    DUCTILITY "component_ductility" Number { kind: Kind::Number, min: 1.0, max: 6.0 }, Fault,
        "Ductility of the cabinet",
        "Ductility that the cabinet itself can show: 1.0 elastic, 1.25 nominally ductile, up to 3 where its frame is known to yield without losing what it carries.",
        "NZS 1170.5 8.6, Table C8.3", [];
    CLASS "part_class" Choice(&["P1", "P2", "P3", "P4", "P5", "P6", "P7"]), Fault,
        "Class of the part",
        "What its failure would do. Every class that applies has to be tried; an anchored heavy cabinet is at least P.3.",
        "NZS 1170.5 8.1.1, Table 8.1",
        ["P.1: hazard to life outside the building", "P.2: hazard to a crowd inside", "P.3: hazard to individual life inside",
         "P.4: needed for life safety systems", "P.5: operational continuity (serviceability 2)",
         "P.6: consequences out of proportion (serviceability 1)", "P.7: all other (serviceability 1)"];
    R_P "risk_factor" Number { kind: Kind::Number, min: 0.5, max: 2.0 }, Unknown,
        "Part risk factor R_p",
        "Stands in place of the factor of the class.",
        "NZS 1170.5 Table 8.1", [];
    FIXINGS "fixings" Choice(&["brittle", "nominally-ductile", "capacity-designed"]), Word(0),
        "Fixings",
        "How the anchors fail. Post-installed anchors without proven ductility count as brittle and are designed for an elastic cabinet; nominally ductile ones for a ductility of 1.25; only fixings that are stronger than what the cabinet can bring may use its own ductility.",
        "NZS 1170.5 8.7",
        ["brittle, or not known", "nominally ductile", "capacity designed: the cabinet yields first"];
    VERTICAL "vertical_spectrum" Number { kind: Kind::Acceleration, min: 0.01, max: 6.0 }, Unknown,
        "Elastic spectrum at the vertical period",
        "Only for a cabinet that vertical motion harms: horizontal elastic spectrum C(T) of the site at the cabinet's vertical period. 0.7 of it shakes up and down. Without it no vertical force acts.",
        "NZS 1170.5 8.5(2), 3.2", [];
    DIRECTIONS "directions" Choice(&["any", "100-30"]), Word(1),
        "Directions",
        "100 % along one axis together with 30 % along the other, as for nominally ductile structures; or the full force in any horizontal direction.",
        "NZS 1170.5 5.3",
        ["the full force in every horizontal direction", "100 % along one axis with 30 % along the other"];
}
