//! What is asked about the rigging.

use super::eyebolt::SIZES;
use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    HOOK_ABOVE "hook_above_mm" Number { kind: Kind::Length, min: 100.0, max: 30_000.0 }, Fault,
        "Hook above the lifting points", "Height of the hook over the highest lifting point; with the plan distance it decides how flat the legs are.", "", [];
    HOOK_AT "hook_at_mm" Numbers { kind: Kind::Length, count: 2, min: -30_000.0, max: 30_000.0 }, Unknown,
        "Hook in plan", "To the right and to the rear of the middle of the base. Empty is above the centre of gravity of each state, which the crane driver has to find.", "", [];
    SHARING "sharing" Choice(&["stiff", "equalised"]), Word(0),
        "How the legs share it", "A stiff cabinet on legs of fixed length hangs on two or three of them. All carry only where something evens them out.", "EN 13414-1",
        ["any two or three legs may carry all", "something makes all legs carry"];
    LEG_CAPACITY "leg_capacity_kg" Number { kind: Kind::Mass, min: 1.0, max: 1_000_000.0 }, Unknown,
        "Rating of one leg", "Working load limit of a single straight leg, from its tag.", "", [];
    DYNAMIC "dynamic_factor" Number { kind: Kind::Number, min: 1.0, max: 3.0 }, Is(1.25),
        "Allowance for hoisting", "Factor on the weight for starting and stopping; 1.1 to 1.25 for a crane in a shop, from memory.", "common practice", [];
    EYEBOLT "eyebolt" Choice(SIZES), Unknown,
        "Eyebolt", "Size of a lifting eyebolt at each point, its axis upright. Empty where there are hoist rings, or where it is not known.", "DIN 580",
        ["M8", "M10", "M12", "M16", "M20", "M24", "M30", "M36", "M42", "M48", "M56", "M64", "M72x6", "M80x6", "M100x6"];
    RING_CAPACITY "ring_capacity_kg" Number { kind: Kind::Mass, min: 1.0, max: 1_000_000.0 }, Unknown,
        "Rating of a hoist ring", "Working load limit of a swivel hoist ring for a pull from any side, from its maker. It counts where no eyebolt is given.", "", [];
    SHOULDER_CAPACITY "shoulder_eyebolt_kg" Number { kind: Kind::Mass, min: 1.0, max: 1_000_000.0 }, Unknown,
        "Rating of a shouldered eyebolt", "Working load limit along its axis of an eyebolt of another standard, whose shoulder sits tight and whose eye lies in the plane of the pull. The lowest of the tables counts for a pull at an angle. It counts where no eyebolt of DIN 580 is given.", "ASME B30.26", [];
    LUG_YIELD "lug_yield_n" Number { kind: Kind::Force, min: 1.0, max: 100_000_000.0 }, Unknown,
        "Lug: force at first yield", "Of one lifting point that is a part of the frame, in the direction of the leg, by calculation or test. It counts where neither eyebolt nor ring is given.", "ASME BTH-1", [];
    LUG_BREAK "lug_break_n" Number { kind: Kind::Force, min: 1.0, max: 100_000_000.0 }, Unknown,
        "Lug: force at break", "The same point, its weld and its bolts, where it tears or lets go.", "ASME BTH-1", [];
    LUG_CATEGORY "lug_category" Choice(&["a", "b", "c", "en-13155"]), Word(1),
        "Design category of the lug", "A: loads are known and lifting is rare and well controlled; B: the usual one; C: special. EN 13155 tests with twice the rating without a lasting set and three times without letting go.", "ASME BTH-1", ["BTH-1, A", "BTH-1, B", "BTH-1, C", "EN 13155"];
    ENGAGEMENT "thread_engagement_mm" Number { kind: Kind::Length, min: 1.0, max: 500.0 }, Unknown,
        "Thread engaged", "How deep the eyebolt is screwed into the frame.", "WAC 296-155-56110", [];
    BASE_TENSILE "base_tensile_mpa" Number { kind: Kind::Stress, min: 50.0, max: 2_000.0 }, Unknown,
        "Strength of the tapped part", "Tensile strength of the steel that holds the thread, such as 360 MPa of S235.", "", [];
}
