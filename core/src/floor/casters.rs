//! The wheels that the cabinet comes in on, and the way.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*, Values};
use crate::rules::floor::wheel::Elastic;

/// Steel, cast iron, nylon, polyurethane, rubber: modulus and Poisson's ratio, common values without a source.
pub static TREADS: [Elastic; 5] = [
    Elastic { modulus_mpa: 200e3, poisson: 0.3 },
    Elastic { modulus_mpa: 100e3, poisson: 0.26 },
    Elastic { modulus_mpa: 2500.0, poisson: 0.39 },
    Elastic { modulus_mpa: 50.0, poisson: 0.49 },
    Elastic { modulus_mpa: 10.0, poisson: 0.49 },
];

/// The tread, with a modulus of the user's own where one is given.
pub fn tread(values: &Values) -> Elastic {
    let usual = TREADS[values.choice(TREAD).unwrap_or(0)];
    Elastic { modulus_mpa: values.number(MODULUS).unwrap_or(usual.modulus_mpa), ..usual }
}

fields! {
    WHEELS "wheels" Number { kind: Kind::Number, min: 3.0, max: 64.0 }, Is(4.0),
        "Wheels", "How many it rolls on. One of four is counted out: any joint may lift it.", "", [];
    RADIUS "radius_mm" Number { kind: Kind::Length, min: 5.0, max: 1_000.0 }, Fault,
        "Radius of the wheels", "Half their diameter.", "", [];
    WIDTH "width_mm" Number { kind: Kind::Length, min: 2.0, max: 500.0 }, Fault,
        "Width of the tread", "What touches the floor across.", "", [];
    TREAD "tread" Choice(&["steel", "cast-iron", "nylon", "polyurethane", "rubber"]), Fault,
        "Tread", "Hard treads press on a line, soft ones on a patch.", "", ["Steel", "Cast iron", "Nylon", "Polyurethane", "Rubber"];
    MODULUS "tread_modulus_mpa" Number { kind: Kind::Stress, min: 0.5, max: 300_000.0 }, Unknown,
        "Modulus of the tread", "From its maker. Left empty, a common value for the material.", "", [];
    DYNAMIC "dynamic_factor" Number { kind: Kind::Number, min: 1.0, max: 5.0 }, Is(1.25),
        "Dynamic factor", "1.25 on smooth floors, 1.5 to 3 over joints and sills.", "common practice", [];
    LEVER "rolling_lever_mm" Number { kind: Kind::Length, min: 0.01, max: 50.0 }, Is(2.2),
        "Lever of rolling friction", "2.2 mm on smooth concrete, 2.4 on tile, 3.3 on asphalt, 4.5 on carpet, measured for hard rubber.", "Al-Eisawi 1999", [];
    SLOPE "slope" Number { kind: Kind::Number, min: 0.0, max: 0.5 }, Is(0.0),
        "Steepest ramp on the way", "Rise over run: 1 in 12 is 0.0833.", "", [];
}
