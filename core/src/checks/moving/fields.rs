//! What is asked about the way.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    MOVERS "movers" Choice(&["men", "women", "powered"]), Word(0),
        "Who moves it", "The limits for people are a filter for a first look and no safe limit.", "HSE L23",
        ["men", "women", "a powered mover"];
    PEOPLE "people" Number { kind: Kind::Number, min: 1.0, max: 12.0 }, Is(2.0),
        "People", "How many push at the same time. A team reaches less than the sum.", "", [];
    WHEEL_RADIUS "wheel_radius_mm" Number { kind: Kind::Length, min: 5.0, max: 1_000.0 }, Unknown,
        "Radius of the wheels", "Of the casters, or of the skates put under it. Decides which sill it climbs.", "", [];
    ROLLING "rolling_resistance" Number { kind: Kind::Number, min: 0.0, max: 0.5 }, Is(0.02),
        "Rolling resistance", "Force over weight on the level: at least 0.02 on a clean floor, up to 0.1 on an uneven one; two or three times that to start.", "HSE L23", [];
    START "start_g" Number { kind: Kind::Acceleration, min: 0.0, max: 1.0 }, Is(0.0),
        "Acceleration at the start", "How fast it is set in motion.", "", [];
    SILL "sill_mm" Number { kind: Kind::Length, min: 0.0, max: 500.0 }, Is(0.0),
        "Highest sill", "The highest threshold, cable ramp or edge of a panel on the way.", "", [];
    SLOPE "slope" Number { kind: Kind::Number, min: 0.0, max: 1.0 }, Is(0.0),
        "Steepest ramp", "Rise over run: 1 in 12 is 0.0833.", "", [];
    BRAKE "brake_g" Number { kind: Kind::Acceleration, min: 0.0, max: 2.0 }, Is(0.3),
        "Braking", "How hard a truck or a guided vehicle brakes: 0.1 to 0.3 in service, 0.3 to 0.5 in an emergency, from memory.", "common practice", [];
    TRUCK_RATING "truck_rating_kg" Number { kind: Kind::Mass, min: 1.0, max: 1_000_000.0 }, Unknown,
        "Rating of the truck", "From the plate of the fork truck, which governs for height, tilt and attachments.", "29 CFR 1910.178", [];
    TRUCK_CENTRE "truck_centre_mm" Number { kind: Kind::Length, min: 100.0, max: 5_000.0 }, Unknown,
        "Load centre of that rating", "Distance from the face of the forks for which the rating holds, from the same plate: often 500 mm, 600 mm or 24 in.", "29 CFR 1910.178", [];
    FORKS_FROM "forks_from" Choice(&["front", "rear", "left", "right"]), Word(0),
        "Forks enter from", "The side on which the face of the forks touches the cabinet.", "", ["the front", "the rear", "the left", "the right"];
    FORK_SPREAD "fork_spread_mm" Number { kind: Kind::Length, min: 50.0, max: 5_000.0 }, Unknown,
        "Spread of the forks", "From the outer edge of one fork to that of the other.", "", [];
    FORK_HEIGHT "fork_height_mm" Number { kind: Kind::Length, min: 5.0, max: 500.0 }, Unknown,
        "Height of the forks", "Upper face of the forks over the floor when they are let down.", "", [];
    ENTRY_HEIGHT "entry_height_mm" Number { kind: Kind::Length, min: 1.0, max: 2_000.0 }, Unknown,
        "Clear height under the base", "Between the floor and the underside that the forks lift.", "", [];
    TURN "turn_g" Number { kind: Kind::Acceleration, min: 0.0, max: 2.0 }, Is(0.1),
        "Sideways acceleration in a turn", "On the forks of a truck that turns slowly, from memory.", "common practice", [];
    CARRIER "carrier" Choice(&["none", "pallet-truck", "guided-vehicle"]), Word(0),
        "Carried on", "A pallet truck or a guided vehicle carries it higher up, on its own wheels, and brakes and turns with it.", "", ["neither of these", "a pallet truck", "a guided vehicle"];
    CARRIER_ALONG "carrier_travels" Choice(&["front-to-rear", "side-to-side"]), Word(0),
        "Which way it travels", "Seen from the cabinet, whose middle stands over the middle of the carrier.", "", ["front or rear first", "a side first"];
    CARRIER_LENGTH "carrier_length_mm" Number { kind: Kind::Length, min: 100.0, max: 10_000.0 }, Unknown,
        "Length of the carrier's wheels", "From its front wheels to its rear ones. With three wheels, twice the distance from the middle to the nearest side of their triangle.", "", [];
    CARRIER_WIDTH "carrier_width_mm" Number { kind: Kind::Length, min: 100.0, max: 10_000.0 }, Unknown,
        "Width of the carrier's wheels", "From its left wheels to its right ones; of a pallet truck those under its forks.", "", [];
    DECK_HEIGHT "deck_height_mm" Number { kind: Kind::Length, min: 0.0, max: 3_000.0 }, Unknown,
        "How high it is lifted", "Underside of the feet over the floor while it is carried.", "", [];
    DECK_FRICTION "deck_friction" Number { kind: Kind::Number, min: 0.0, max: 1.5 }, Is(0.2),
        "Friction on forks or deck", "0.2 for a bare deck; 0.6 on an anti-slip mat, from memory.", "EN 12195-1", [];
    HAND_REACH "hand_reach_mm" Number { kind: Kind::Length, min: 100.0, max: 630.0 }, Unknown,
        "Hands in front of the ankles", "Where contents are lifted in by hand: how far the hands are away from the middle of the ankles. Up to 630 mm.", "NIOSH 1994", [];
    HAND_FROM "hand_from_mm" Number { kind: Kind::Length, min: 0.0, max: 1_750.0 }, Is(750.0),
        "Hands above the floor", "Where the lift begins or ends, the worse of both.", "NIOSH 1994", [];
    HAND_BY "hand_by_mm" Number { kind: Kind::Length, min: 0.0, max: 1_750.0 }, Is(250.0),
        "Lifted by", "How far up or down it is lifted.", "NIOSH 1994", [];
    HAND_TURN "hand_turn_deg" Number { kind: Kind::Number, min: 0.0, max: 135.0 }, Is(0.0),
        "Twist of the body, degrees", "How far to the side it is lifted.", "NIOSH 1994", [];
    HAND_OFTEN "hand_frequency_factor" Number { kind: Kind::Number, min: 0.05, max: 1.0 }, Is(1.0),
        "Factor for how often", "1 for a lift now and then, less for many, by the tables of the document.", "NIOSH 1994", [];
    HAND_GRIP "hand_grip_factor" Number { kind: Kind::Number, min: 0.9, max: 1.0 }, Is(1.0),
        "Factor for the grip", "1 for handles, 0.9 for a poor grip, from memory.", "NIOSH 1994", [];
    TRANSPORT "transport" Choice(&["none", "road", "rail", "sea-a", "sea-b", "sea-c"]), Word(0),
        "Sent by", "What it is secured against on the way. Sea areas by the height of the waves.", "EN 12195-1",
        ["nothing of these", "road", "rail", "sea, area A", "sea, area B", "sea, area C"];
}
