//! What a project says about the test that a cabinet of its kind is to pass, and about the rig that does it.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};
use crate::input::{Problem, Values};

fields! {
    SPECTRUM "spectrum" Choice(&[
            "ac156", "ac156-24", "ieee-693-low", "ieee-693-moderate", "ieee-693-moderate-performance", "ieee-693-high",
            "ieee-693-high-performance", "telecom-0", "telecom-1-2", "telecom-3", "telecom-4"]), Fault,
        "Required spectrum",
        "Which document says what the table must show. It is a level for a test and no force to design anchors for.",
        "", ["AC156 with ASCE 7-05 to 7-16", "AC156-24 with ASCE 7-22", "IEEE 693, low", "IEEE 693, moderate",
             "IEEE 693, moderate, performance level", "IEEE 693, high", "IEEE 693, high, performance level",
             "telecom zone 0", "telecom zones 1 and 2", "telecom zone 3", "telecom zone 4"];
    S_DS "s_ds" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
        "Design acceleration S_DS",
        "Design spectral acceleration at short periods, in g, for which the cabinet is to be certified. Needed with AC156.",
        "AC156", [];
    HEIGHT_RATIO "height_ratio" Number { kind: Kind::Number, min: 0.0, max: 1.0 }, Is(1.0),
        "Height ratio z/h",
        "Height of the floor over that of the roof, only used with AC156: 0 at grade, 1 at the roof, which covers every floor.",
        "AC156", [];
    S_DS_2 "second_s_ds" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
        "Second S_DS",
        "Only with AC156: where one test is to cover two places, such as a roof and, for stronger shaking, the ground floor. The larger of each level counts.",
        "AC156", [];
    HEIGHT_RATIO_2 "second_height_ratio" Number { kind: Kind::Number, min: 0.0, max: 1.0 }, Unknown,
        "Second height ratio z/h", "Height ratio that belongs to the second S_DS.", "AC156", [];
    DAMPING "damping_percent" Number { kind: Kind::Number, min: 2.0, max: 10.0 }, Is(2.0),
        "Damping in per cent",
        "Only with IEEE 693: the damping at which the spectrum is drawn. 2 % where nothing is known. AC156 is drawn at 5 %, the telecom zones at 2 %.",
        "IEEE 693", [];
    LOWEST "lowest_frequency_hz" Number { kind: Kind::Frequency, min: 0.3, max: 100.0 }, Unknown,
        "Lowest natural frequency",
        "Of the loaded cabinet as it stands on the table. Where it is not known, the highest acceleration of the spectrum is taken.",
        "", [];
    MATCHED_FROM "matched_from_hz" Number { kind: Kind::Frequency, min: 0.3, max: 8.0 }, Unknown,
        "Matched from",
        "Lowest frequency from which the test must reach the spectrum, as agreed with the laboratory. It decides the travel that the rig needs. Where it is not given: by AC156 from the lowest natural frequency, else 1 Hz.",
        "", [];
    FIXTURE_MASS "fixture_mass_kg" Number { kind: Kind::Mass, min: 0.0, max: 100_000.0 }, Fault,
        "Mass of the fixture",
        "Frame or plate between the table and the cabinet. It often weighs as much as what stands on it.",
        "", [];
    FIXTURE_HEIGHT "fixture_height_mm" Number { kind: Kind::Length, min: 0.0, max: 5000.0 }, Is(0.0),
        "Height of the fixture", "How far above the table the cabinet stands.", "", [];
    FIXTURE_CENTRE "fixture_centre_mm" Number { kind: Kind::Length, min: 0.0, max: 5000.0 }, Unknown,
        "Centre of the fixture", "Height of the fixture’s centre of gravity above the table. Half its height where it is not given.", "", [];
    RIG_PAYLOAD "rig_payload_kg" Number { kind: Kind::Mass, min: 1.0, max: 2_000_000.0 }, Unknown,
        "The rig’s payload",
        "Most mass that the rig carries at the accelerations below. A rig reaches less acceleration the more it carries; ask for the values that belong together.",
        "", [];
    RIG_MOMENT "rig_moment_nmm" Number { kind: Kind::Moment, min: 1e6, max: 1e13 }, Unknown,
        "The rig’s overturning moment",
        "Most overturning moment about the top of the table. 250 kN·m is 250000000 N·mm.",
        "", [];
    RIG_ACCELERATION "rig_acceleration" Number { kind: Kind::Acceleration, min: 0.05, max: 20.0 }, Unknown,
        "The rig’s horizontal acceleration", "Highest horizontal acceleration with this payload.", "", [];
    RIG_VERTICAL "rig_vertical_acceleration" Number { kind: Kind::Acceleration, min: 0.05, max: 20.0 }, Unknown,
        "The rig’s vertical acceleration", "Highest vertical acceleration with this payload.", "", [];
    RIG_VELOCITY "rig_velocity_mm_per_s" Number { kind: Kind::Velocity, min: 10.0, max: 10_000.0 }, Unknown,
        "The rig’s velocity", "Highest horizontal velocity.", "", [];
    RIG_TRAVEL "rig_travel_mm" Number { kind: Kind::Length, min: 5.0, max: 3000.0 }, Unknown,
        "The rig’s travel", "Furthest horizontal travel each way from the middle.", "", [];
}

/// Whether the spectrum comes from S_DS.
fn is_ac156(values: &Values) -> bool {
    matches!(values.choice(SPECTRUM), Some(0 | 1))
}

/// Faults that a single field's limits cannot see.
pub fn faults(values: &Values, faults: &mut alloc::vec::Vec<(usize, Problem, &'static str)>) {
    if is_ac156(values) && values.number(S_DS).is_none() {
        faults.push((S_DS, Problem::Missing, "a number, because the spectrum is of AC156"));
    }
    match (values.number(S_DS_2), values.number(HEIGHT_RATIO_2)) {
        (Some(_), None) => faults.push((HEIGHT_RATIO_2, Problem::Missing, "a number, with second_s_ds")),
        (None, Some(_)) => faults.push((S_DS_2, Problem::Missing, "a number, with second_height_ratio")),
        (Some(_), Some(_)) if values.number(S_DS).is_none() => {
            faults.push((S_DS, Problem::Missing, "a number, because there is a second one"));
        }
        _ => {}
    }
    if let (Some(centre), Some(height)) = (values.number(FIXTURE_CENTRE), values.number(FIXTURE_HEIGHT))
        && centre > height
    {
        faults.push((FIXTURE_CENTRE, Problem::AboveLimit, "not above fixture_height_mm"));
    }
}
