//! What is asked about the frame.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

const SYSTEMS: &[&str] = &["portal", "single-brace", "cross-brace", "skin"];

fields! {
    STOREYS "storeys" Number { kind: Kind::Number, min: 1.0, max: 20.0 }, Is(1.0),
        "Storeys", "Into how many equal parts braces or beams divide its height.", "", [];
    HEIGHT "height_mm" Number { kind: Kind::Length, min: 100.0, max: 30_000.0 }, Unknown,
        "Height of the frame", "Empty is the height of the cabinet.", "", [];
    MODULUS "modulus_mpa" Number { kind: Kind::Stress, min: 10_000.0, max: 300_000.0 }, Is(200_000.0),
        "Modulus of elasticity", "200 000 MPa for steel in the United States, 210 000 MPa in Europe.", "", [];
    SYSTEM_X "sides_x" Choice(SYSTEMS), Fault,
        "Faces that resist a push to the side", "What makes front and rear stiff.", "",
        ["posts and beams", "one diagonal", "two crossing diagonals", "a sheet"];
    SYSTEM_Y "sides_y" Choice(SYSTEMS), Fault,
        "Faces that resist a push to the rear", "What makes the two sides stiff.", "",
        ["posts and beams", "one diagonal", "two crossing diagonals", "a sheet"];
    FACES_X "faces_x" Number { kind: Kind::Number, min: 1.0, max: 10.0 }, Is(2.0),
        "How many of them, to the side", "Faces that are braced or skinned for a push to the side.", "", [];
    FACES_Y "faces_y" Number { kind: Kind::Number, min: 1.0, max: 10.0 }, Is(2.0),
        "How many of them, to the rear", "Faces that are braced or skinned for a push to the rear.", "", [];
    POSTS "posts" Number { kind: Kind::Number, min: 2.0, max: 40.0 }, Is(4.0),
        "Posts", "How many posts share the push.", "", [];
    SPAN_X "span_x_mm" Number { kind: Kind::Length, min: 50.0, max: 30_000.0 }, Unknown,
        "Between posts, to the side", "Empty is the width of the cabinet.", "", [];
    SPAN_Y "span_y_mm" Number { kind: Kind::Length, min: 50.0, max: 30_000.0 }, Unknown,
        "Between posts, to the rear", "Empty is the depth of the cabinet.", "", [];
    POST_AREA "post_area_mm2" Number { kind: Kind::Area, min: 1.0, max: 1_000_000.0 }, Unknown,
        "Area of a post", "Braced faces need it: posts lengthen and shorten.", "", [];
    POST_INERTIA_X "post_inertia_x_mm4" Number { kind: Kind::SecondMoment, min: 1.0, max: 1e12 }, Unknown,
        "Second moment of a post, to the side", "For bending under a push to the side.", "", [];
    POST_INERTIA_Y "post_inertia_y_mm4" Number { kind: Kind::SecondMoment, min: 1.0, max: 1e12 }, Unknown,
        "Second moment of a post, to the rear", "For bending under a push to the rear.", "", [];
    BEAM_INERTIA_X "beam_inertia_x_mm4" Number { kind: Kind::SecondMoment, min: 1.0, max: 1e12 }, Unknown,
        "Second moment of a beam, to the side", "Of the beams that run from left to right.", "", [];
    BEAM_INERTIA_Y "beam_inertia_y_mm4" Number { kind: Kind::SecondMoment, min: 1.0, max: 1e12 }, Unknown,
        "Second moment of a beam, to the rear", "Of the beams that run from front to rear.", "", [];
    CORNERS "corners" Choice(&["unknown", "rigid", "given"]), Word(0),
        "Corners", "Thin sheet bolted together turns easily; welded gussets hardly. Ten to one is a usual range, so a test is worth it.", "",
        ["not known", "rigid", "of the stiffness given"];
    CORNER_STIFFNESS "corner_stiffness_nmm" Number { kind: Kind::Moment, min: 1.0, max: 1e15 }, Unknown,
        "Stiffness of a corner", "Moment per radian. From a test or the maker of the frame.", "", [];
    BASE "base" Choice(&["pinned", "fixed"]), Word(0),
        "Feet of the posts", "Whether the base frame keeps the posts from turning.", "", ["free to turn", "held"];
    BASE_ON "base_on" Choice(&["feet", "feet-and-anchors"]), Word(0),
        "What the base turns on", "Anchors hold it from turning only while they are tight; one that has come loose does not, and then the base is softer than told.", "", ["the feet alone", "the feet and tight anchors"];
    BRACE_AREA "brace_area_mm2" Number { kind: Kind::Area, min: 1.0, max: 100_000.0 }, Unknown,
        "Area of a brace", "Of the whole section.", "", [];
    BRACE_NET "brace_net_area_mm2" Number { kind: Kind::Area, min: 1.0, max: 100_000.0 }, Unknown,
        "Area through the holes", "The smallest area through bolt holes, times what the shear lag at its ends leaves.", "", [];
    BRACE_RADIUS "brace_radius_mm" Number { kind: Kind::Length, min: 0.1, max: 1_000.0 }, Unknown,
        "Least radius of gyration of a brace", "A single diagonal must take compression, too.", "", [];
    BRACE_ENDS "brace_ends" Choice(&["whole", "angle"]), Word(0),
        "Ends of the braces", "A single angle that is bolted by one leg is pulled beside its centre, which takes much of its strength.", "AISC 360 E5, EN 1993-1-1 BB.1.2", ["the whole section is joined", "an angle, bolted by one leg"];
    BRACE_BOLTS "brace_bolts" Number { kind: Kind::Number, min: 1.0, max: 12.0 }, Unknown,
        "Bolts at each end of an angle", "In one line along it.", "", [];
    BRACE_THICKNESS "brace_thickness_mm" Number { kind: Kind::Length, min: 0.5, max: 50.0 }, Unknown,
        "Thickness of the angle", "Of the leg that is joined.", "", [];
    BRACE_HOLE "brace_hole_mm" Number { kind: Kind::Length, min: 2.0, max: 60.0 }, Unknown,
        "Holes in the angle", "Their diameter.", "", [];
    BRACE_EDGE "brace_edge_mm" Number { kind: Kind::Length, min: 2.0, max: 200.0 }, Unknown,
        "Hole to the edge of the leg", "From the middle of the holes, across the brace. Only EN 1993-1-8 with a single bolt asks for it.", "EN 1993-1-8 3.10.3", [];
    BOLT_PITCH "brace_pitch_mm" Number { kind: Kind::Length, min: 5.0, max: 500.0 }, Unknown,
        "Bolt to bolt along the angle", "Only EN 1993-1-8 with two bolts or more asks for it.", "EN 1993-1-8 3.10.3", [];
    BRACE_AXIS_RADIUS "brace_axis_radius_mm" Number { kind: Kind::Length, min: 0.1, max: 1_000.0 }, Unknown,
        "Radius of gyration along the joined leg", "About the axis through the centre of the angle, parallel to the leg that is joined. A single diagonal of an angle needs it.", "AISC 360 E5", [];
    YIELD "yield_mpa" Number { kind: Kind::Stress, min: 50.0, max: 2_000.0 }, Unknown,
        "Yield strength of the braces", "Such as 235 MPa.", "", [];
    TENSILE "tensile_mpa" Number { kind: Kind::Stress, min: 50.0, max: 2_500.0 }, Unknown,
        "Tensile strength of the braces", "Such as 360 MPa.", "", [];
    STANDARD "standard" Choice(&["aisc-360", "en-1993"]), Word(0),
        "Standard for the braces", "Has to fit the format of the demand.", "", ["AISC 360", "EN 1993"];
    CURVE "curve" Choice(&["a0", "a", "b", "c", "d"]), Word(3),
        "Buckling curve", "Hollow hot-rolled a, cold-formed c, angles b, flats and channels c.", "EN 1993-1-1 Table 6.2", ["a0", "a", "b", "c", "d"];
    SKIN_THICKNESS "skin_mm" Number { kind: Kind::Length, min: 0.1, max: 50.0 }, Unknown,
        "Thickness of a skin", "Of the sheet that closes a face.", "", [];
    SKIN_SHARE "skin_share" Number { kind: Kind::Number, min: 0.001, max: 1.0 }, Is(0.05),
        "Share that the screws let through", "Slip of the screws leaves 0.05 to 0.30 of the stiffness of the sheet, from memory.", "common practice", [];
    MOVEMENT "movement_factor" Number { kind: Kind::Number, min: 1.0, max: 12.0 }, Unknown,
        "From reduced push to real movement", "The rule divides the push by a response factor; the movement has to be multiplied by it again: R_p of ASCE 7-16, R_po of ASCE 7-22, q_a of EN 1998-1. 1 where the push is not reduced.", "", [];
    GAP_FIELD "gap_mm" Number { kind: Kind::Length, min: 0.0, max: 10_000.0 }, Unknown,
        "Gap to the neighbour", "Clear distance at the top, to a cabinet, a wall or a pipe.", "", [];
    NEIGHBOUR "neighbour_movement_mm" Number { kind: Kind::Length, min: 0.0, max: 10_000.0 }, Is(0.0),
        "Movement of the neighbour", "How far the neighbour may come towards it.", "", [];
    NEIGHBOUR_PERIOD "neighbour_period_s" Number { kind: Kind::Time, min: 0.01, max: 10.0 }, Unknown,
        "Period of the neighbour", "Where both are bolted down and their periods differ by more than a tenth, the root of the squares of both movements is enough. Empty takes the sum.", "", [];
    SLACK_FIELD "slack_mm" Number { kind: Kind::Length, min: 0.0, max: 10_000.0 }, Unknown,
        "Slack of bars and hoses", "By how much bars, cables and hoses to the neighbour may be drawn out.", "", [];
    RAIL "rail_rating_kg" Number { kind: Kind::Mass, min: 0.1, max: 100_000.0 }, Unknown,
        "Rating of a pair of rails", "Static mass that one pair of rails carries, from its maker.", "", [];
    LATCH "latch_n" Number { kind: Kind::Force, min: 1.0, max: 10_000_000.0 }, Unknown,
        "What a latch holds", "Force at which the latch or the screws of a content let go.", "", [];
}
