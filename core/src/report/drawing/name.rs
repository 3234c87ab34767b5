//! The words of the drawings, and short names of checks.

use alloc::string::String;

use crate::calc::clause::STATICS;
use crate::calc::{CheckId, StepId, steps};

steps! { 18 "drawing";
    REAR "" Number (STATICS "" Derived) "rear": Name;
    FRONT "" Number (STATICS "" Derived) "front": Name;
    LEFT "" Number (STATICS "" Derived) "left": Name;
    RIGHT "" Number (STATICS "" Derived) "right": Name;
    REAR_LEFT "" Number (STATICS "" Derived) "rear left": Name;
    REAR_RIGHT "" Number (STATICS "" Derived) "rear right": Name;
    FRONT_LEFT "" Number (STATICS "" Derived) "front left": Name;
    FRONT_RIGHT "" Number (STATICS "" Derived) "front right": Name;
    SEEN_ALONG "" Number (STATICS "" Derived) "seen along {0}": Name;
    SHEAR_EACH "" Number (STATICS "" Derived) "shear {0} in each anchor": Name;
    SHEAR_UP_TO "" Number (STATICS "" Derived) "shear up to {0} in an anchor": Name;
    PEAK_PRESSURE "" Number (STATICS "" Derived) "peak pressure {0}": Name;
    TIPS "" Number (STATICS "" Derived) "tips": Name;
    TIPS_HERE "" Number (STATICS "" Derived) "tips about this edge": Name;
    ON_THE_POINT "" Number (STATICS "" Derived) "on the point of tipping": Name;
    FORCES_LEFT_OUT "" Number (STATICS "" Derived) "forces not written: {0}": Name;
    MASSES_LEFT_OUT "" Number (STATICS "" Derived) "not written: {0} of contents": Name;
    VALUE_AT "" Number (STATICS "" Derived) "{0} at {1}": Name;
    NOTHING_GOVERNS "" Number (STATICS "" Derived) "no check to show": Name;
    PLAN_TITLE "" Number (STATICS "" Derived) "Plan, rear on top": Name;
    ELEVATION_TITLE "" Number (STATICS "" Derived) "Elevation": Name;
    ROSE_TITLE "" Number (STATICS "" Derived) "Utilisation for every direction of the push": Name;
    PUSH_TOWARDS "" Number (STATICS "" Derived) "push {0} towards {1}": Name;
    LARGEST_PULL "" Number (STATICS "" Derived) "largest pull {0} in anchor {1}": Name;
    LARGEST_PRESS "" Number (STATICS "" Derived) "largest force {0} under foot {1}": Name;
    PIVOT "" Number (STATICS "" Derived) "pivot": Name;
    CENTRE_HEIGHT "" Number (STATICS "" Derived) "centre of gravity {0} above the floor": Name;
    SHORT_DEMAND "" Number (STATICS "" Derived) "demand": Name;
    SHORT_EQUILIBRIUM "" Number (STATICS "" Derived) "balance": Name;
    SHORT_TENSION_STEEL "" Number (STATICS "" Derived) "steel in tension": Name;
    SHORT_TENSION_BREAKOUT "" Number (STATICS "" Derived) "breakout": Name;
    SHORT_TENSION_TRIBUTARY "" Number (STATICS "" Derived) "own share of concrete": Name;
    SHORT_TENSION_PULLOUT "" Number (STATICS "" Derived) "pullout": Name;
    SHORT_TENSION_BLOWOUT "" Number (STATICS "" Derived) "side-face blowout": Name;
    SHORT_TENSION_BOND "" Number (STATICS "" Derived) "bond": Name;
    SHORT_TENSION_SPLITTING "" Number (STATICS "" Derived) "splitting": Name;
    SHORT_SUSTAINED "" Number (STATICS "" Derived) "lasting pull": Name;
    SHORT_DUCTILE "" Number (STATICS "" Derived) "ductile steel first": Name;
    SHORT_SHEAR_STEEL "" Number (STATICS "" Derived) "steel in shear": Name;
    SHORT_SHEAR_BREAKOUT "" Number (STATICS "" Derived) "edge breakout": Name;
    SHORT_SHEAR_PRYOUT "" Number (STATICS "" Derived) "pryout": Name;
    SHORT_INTERACTION_STEEL "" Number (STATICS "" Derived) "steel, tension with shear": Name;
    SHORT_INTERACTION "" Number (STATICS "" Derived) "tension with shear": Name;
    SHORT_SPACING "" Number (STATICS "" Derived) "spacing": Name;
    SHORT_EDGE "" Number (STATICS "" Derived) "edge distance": Name;
    SHORT_THICKNESS "" Number (STATICS "" Derived) "thickness": Name;
    SHORT_ANCHORAGE "" Number (STATICS "" Derived) "anchorage": Name;
    SHORT_AS_BUILT "" Number (STATICS "" Derived) "as drilled": Name;
    SHORT_BEARING "" Number (STATICS "" Derived) "bearing": Name;
    SHORT_PRESSURE "" Number (STATICS "" Derived) "pressure": Name;
    SHORT_TIPPING "" Number (STATICS "" Derived) "tipping": Name;
    SHORT_SLIDING "" Number (STATICS "" Derived) "sliding": Name;
    SHORT_TILT "" Number (STATICS "" Derived) "tilt of 10°": Name;
    SHORT_PUSH "" Number (STATICS "" Derived) "stability push": Name;
    SHORT_FLOOR_REST "" Number (STATICS "" Derived) "slab in bending, at rest": Name;
    SHORT_FLOOR_REST_PUNCH "" Number (STATICS "" Derived) "punching, at rest": Name;
    SHORT_FLOOR_QUAKE "" Number (STATICS "" Derived) "slab in bending": Name;
    SHORT_FLOOR_QUAKE_PUNCH "" Number (STATICS "" Derived) "punching": Name;
    SHORT_FLOOR_PLATE "" Number (STATICS "" Derived) "foot plate": Name;
    SHORT_FLOOR_PLATE_REST "" Number (STATICS "" Derived) "foot plate, at rest": Name;
    SHORT_FLOOR_AISC "" Number (STATICS "" Derived) "bearing, AISC": Name;
    SHORT_FLOOR_EN "" Number (STATICS "" Derived) "bearing, EN": Name;
    SHORT_FLOOR_GROUT "" Number (STATICS "" Derived) "grout": Name;
    SHORT_FLOOR_ROWS "" Number (STATICS "" Derived) "rows and aisles": Name;
    SHORT_FLOOR_LEG "" Number (STATICS "" Derived) "single leg": Name;
    SHORT_FLOOR_AREA "" Number (STATICS "" Derived) "area load": Name;
    SHORT_FLOOR_STRIP "" Number (STATICS "" Derived) "strip load": Name;
    SHORT_FLOOR_PANEL "" Number (STATICS "" Derived) "floor panel": Name;
    SHORT_FLOOR_PEDESTAL "" Number (STATICS "" Derived) "pedestal": Name;
    SHORT_FLOOR_UNIFORM "" Number (STATICS "" Derived) "panels, uniform": Name;
    SHORT_FLOOR_SHAKEN "" Number (STATICS "" Derived) "raised floor, shaken": Name;
    SHORT_FLOOR_ROLLED "" Number (STATICS "" Derived) "panel, rolled over": Name;
    SHORT_FLOOR_ROUTE "" Number (STATICS "" Derived) "slab, rolled over": Name;
    SHORT_FLOOR_WHEEL "" Number (STATICS "" Derived) "wheel pressure": Name;
    SHORT_FRAME_PERIOD "" Number (STATICS "" Derived) "rigid frame": Name;
    SHORT_FRAME_BRACE "" Number (STATICS "" Derived) "braces": Name;
    SHORT_FRAME_GAP "" Number (STATICS "" Derived) "gap": Name;
    SHORT_FRAME_SLACK "" Number (STATICS "" Derived) "slack": Name;
    SHORT_FRAME_RAILS "" Number (STATICS "" Derived) "rails": Name;
    SHORT_FRAME_LATCH "" Number (STATICS "" Derived) "latch": Name;
    SHORT_MOVE_PUSH "" Number (STATICS "" Derived) "pushing off": Name;
    SHORT_MOVE_KEEP "" Number (STATICS "" Derived) "keeping it in motion": Name;
    SHORT_MOVE_SILL "" Number (STATICS "" Derived) "sill": Name;
    SHORT_MOVE_BRAKE "" Number (STATICS "" Derived) "braking": Name;
    SHORT_MOVE_TRUCK "" Number (STATICS "" Derived) "fork truck": Name;
    SHORT_MOVE_FORKS "" Number (STATICS "" Derived) "off the forks": Name;
    SHORT_MOVE_ENTRY "" Number (STATICS "" Derived) "forks under it": Name;
    SHORT_MOVE_CARRIER "" Number (STATICS "" Derived) "on a carrier": Name;
    SHORT_MOVE_DECK "" Number (STATICS "" Derived) "sliding on a carrier": Name;
    SHORT_MOVE_HAND "" Number (STATICS "" Derived) "by hand": Name;
    SHORT_MOVE_ROAD "" Number (STATICS "" Derived) "on a vehicle": Name;
    SHORT_LIFT_CENTRE "" Number (STATICS "" Derived) "centre below points": Name;
    SHORT_LIFT_TILT "" Number (STATICS "" Derived) "tilt on the hook": Name;
    SHORT_LIFT_ANGLE "" Number (STATICS "" Derived) "flat legs": Name;
    SHORT_LIFT_LEG "" Number (STATICS "" Derived) "leg of the sling": Name;
    SHORT_LIFT_SLING "" Number (STATICS "" Derived) "sling set": Name;
    SHORT_LIFT_ATTACHMENT "" Number (STATICS "" Derived) "eyebolts": Name;
    SHORT_LIFT_THREAD "" Number (STATICS "" Derived) "thread": Name;
    SHORT_OTHER "" Number (STATICS "" Derived) "another check": Name;
}

/// The short name of a check, for a drawing's narrow places.
pub fn short_name(check: CheckId) -> StepId {
    match check {
        CheckId::Demand => SHORT_DEMAND,
        CheckId::BaseEquilibrium => SHORT_EQUILIBRIUM,
        CheckId::AnchorTensionSteel => SHORT_TENSION_STEEL,
        CheckId::AnchorTensionBreakout => SHORT_TENSION_BREAKOUT,
        CheckId::AnchorTensionTributary => SHORT_TENSION_TRIBUTARY,
        CheckId::AnchorTensionPullout => SHORT_TENSION_PULLOUT,
        CheckId::AnchorTensionBlowout => SHORT_TENSION_BLOWOUT,
        CheckId::AnchorTensionBond => SHORT_TENSION_BOND,
        CheckId::AnchorTensionSplitting => SHORT_TENSION_SPLITTING,
        CheckId::AnchorSustained => SHORT_SUSTAINED,
        CheckId::AnchorDuctile => SHORT_DUCTILE,
        CheckId::AnchorShearSteel => SHORT_SHEAR_STEEL,
        CheckId::AnchorShearBreakout => SHORT_SHEAR_BREAKOUT,
        CheckId::AnchorShearPryout => SHORT_SHEAR_PRYOUT,
        CheckId::AnchorInteractionSteel => SHORT_INTERACTION_STEEL,
        CheckId::AnchorInteraction => SHORT_INTERACTION,
        CheckId::AnchorSpacing => SHORT_SPACING,
        CheckId::AnchorEdge => SHORT_EDGE,
        CheckId::AnchorThickness => SHORT_THICKNESS,
        CheckId::Anchorage => SHORT_ANCHORAGE,
        CheckId::AnchorAsBuilt => SHORT_AS_BUILT,
        CheckId::FootBearing => SHORT_BEARING,
        CheckId::FootPressure => SHORT_PRESSURE,
        CheckId::FootBearingAisc => SHORT_FLOOR_AISC,
        CheckId::FootBearingEn => SHORT_FLOOR_EN,
        CheckId::FootPlate => SHORT_FLOOR_PLATE,
        CheckId::SlabQuakeBending => SHORT_FLOOR_QUAKE,
        CheckId::SlabQuakePunching => SHORT_FLOOR_QUAKE_PUNCH,
        CheckId::RaisedShaken => SHORT_FLOOR_SHAKEN,
        CheckId::FootPlateRest => SHORT_FLOOR_PLATE_REST,
        CheckId::SlabRestBending => SHORT_FLOOR_REST,
        CheckId::SlabRestPunching => SHORT_FLOOR_REST_PUNCH,
        CheckId::FootGrout => SHORT_FLOOR_GROUT,
        CheckId::SlabRestRows => SHORT_FLOOR_ROWS,
        CheckId::FloorLeg => SHORT_FLOOR_LEG,
        CheckId::FloorArea => SHORT_FLOOR_AREA,
        CheckId::FloorStrip => SHORT_FLOOR_STRIP,
        CheckId::RaisedPanel => SHORT_FLOOR_PANEL,
        CheckId::RaisedPedestal => SHORT_FLOOR_PEDESTAL,
        CheckId::RaisedUniform => SHORT_FLOOR_UNIFORM,
        CheckId::RoutePanel => SHORT_FLOOR_ROLLED,
        CheckId::RouteBending => SHORT_FLOOR_ROUTE,
        CheckId::RouteContact => SHORT_FLOOR_WHEEL,
        CheckId::FreeTipping => SHORT_TIPPING,
        CheckId::FreeSliding => SHORT_SLIDING,
        CheckId::FreeTilt => SHORT_TILT,
        CheckId::FreePush => SHORT_PUSH,
        CheckId::FramePeriod => SHORT_FRAME_PERIOD,
        CheckId::FrameBrace => SHORT_FRAME_BRACE,
        CheckId::FrameGap => SHORT_FRAME_GAP,
        CheckId::FrameSlack => SHORT_FRAME_SLACK,
        CheckId::FrameRails => SHORT_FRAME_RAILS,
        CheckId::FrameLatch => SHORT_FRAME_LATCH,
        CheckId::MovePush => SHORT_MOVE_PUSH,
        CheckId::MoveKeep => SHORT_MOVE_KEEP,
        CheckId::MoveSill => SHORT_MOVE_SILL,
        CheckId::MoveBrake => SHORT_MOVE_BRAKE,
        CheckId::MoveTruck => SHORT_MOVE_TRUCK,
        CheckId::MoveForks => SHORT_MOVE_FORKS,
        CheckId::MoveEntry => SHORT_MOVE_ENTRY,
        CheckId::MoveCarrier => SHORT_MOVE_CARRIER,
        CheckId::MoveDeck => SHORT_MOVE_DECK,
        CheckId::MoveHand => SHORT_MOVE_HAND,
        CheckId::MoveRoad => SHORT_MOVE_ROAD,
        CheckId::LiftCentre => SHORT_LIFT_CENTRE,
        CheckId::LiftTilt => SHORT_LIFT_TILT,
        CheckId::LiftAngle => SHORT_LIFT_ANGLE,
        CheckId::LiftLeg => SHORT_LIFT_LEG,
        CheckId::LiftSling => SHORT_LIFT_SLING,
        CheckId::LiftAttachment => SHORT_LIFT_ATTACHMENT,
        CheckId::LiftThread => SHORT_LIFT_THREAD,
        // A check that is new has no short name yet; a test tells.
        #[allow(unreachable_patterns)]
        _ => SHORT_OTHER,
    }
}

/// The words of a row of this file.
pub fn word(id: StepId) -> &'static str {
    TEXTS.rows[id.row()].what
}

/// The words of a row with its slots `{0}`, `{1}` filled.
pub fn filled(id: StepId, slots: &[&str]) -> String {
    let mut text = String::new();
    for character in word(id).chars() {
        match character {
            '{' | '}' => {}
            '0'..='9' => text.push_str(slots.get(character as usize - '0' as usize).unwrap_or(&"")),
            _ => text.push(character),
        }
    }
    text
}
