//! Checks: ids, outcomes, roles.

use super::kind::Kind;
use super::sheet::Sheet;
use super::step::StepId;

/// What a check can come to.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Outcome {
    /// A value against a limit. Utilisation is value over limit, or their inverse where more is better.
    Compared {
        /// What is demanded, in SI base units of the check's kind.
        value: f64,
        /// What is allowed.
        limit: f64,
        /// Demand over capacity.
        utilisation: f64,
    },
    /// The clause itself releases this case; the reason is a row of a text table.
    NotNeeded(StepId),
    /// The clause does not reach this case; the reason is a row of a text table.
    NotCovered(StepId),
}

/// The word that a reader sees.
#[derive(Clone, Copy, PartialEq, Eq, Debug, serde::Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Status {
    /// Utilisation is finite and not over 1.
    Holds,
    /// Anything else that was compared.
    Fails,
    /// Released by the clause.
    NotNeeded,
    /// Outside the clause.
    NotCovered,
}

/// What a check counts for.
#[derive(Clone, Copy, PartialEq, Eq, Debug, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Role {
    /// Decides the answer.
    Required,
    /// Says how the cabinet stands while it is not yet bolted.
    BeforeBolting,
    /// Only tells.
    Information,
}

impl Outcome {
    /// Demand over capacity by division; not finite where it cannot be one.
    pub fn demand_over_capacity(value: f64, limit: f64) -> Outcome {
        // Without a capacity nothing is small enough; the quotient would be negative there, and look small.
        let utilisation = match (value == 0.0, limit > 0.0) {
            (true, true) => 0.0,
            (false, true) => value / limit,
            (_, false) => f64::INFINITY,
        };
        Outcome::Compared { value, limit, utilisation }
    }

    /// The same, with the ratio as a step of the open section; where nothing is left to hold there is no ratio to tell.
    pub fn told_ratio(value: f64, limit: f64, ratio: StepId, sheet: &mut Sheet) -> Outcome {
        let outcome = Outcome::demand_over_capacity(value, limit);
        if let (Outcome::Compared { utilisation, .. }, true) = (outcome, limit > 0.0) {
            sheet.step(ratio, utilisation);
        }
        outcome
    }

    /// The word for it: holds only if the utilisation is finite, not negative and not over 1.
    ///
    /// ```
    /// use steadfoot::calc::{Outcome, Status};
    /// assert_eq!(Outcome::demand_over_capacity(3.0, 4.0).status(), Status::Holds);
    /// assert_eq!(Outcome::demand_over_capacity(3.0, 0.0).status(), Status::Fails);
    /// assert_eq!(Outcome::demand_over_capacity(3.0, -4.0).status(), Status::Fails);
    /// assert_eq!(Outcome::demand_over_capacity(f64::NAN, 1.0).status(), Status::Fails);
    /// assert_eq!(Outcome::demand_over_capacity(1.0, f64::INFINITY).status(), Status::Fails);
    /// ```
    pub fn status(&self) -> Status {
        match *self {
            Outcome::Compared { value, limit, utilisation } => {
                // An infinite limit gives utilisation 0, which would pass by silence.
                let sound = value.is_finite() && limit.is_finite() && limit > 0.0;
                if sound && (0.0..=1.0).contains(&utilisation) { Status::Holds } else { Status::Fails }
            }
            Outcome::NotNeeded(_) => Status::NotNeeded,
            Outcome::NotCovered(_) => Status::NotCovered,
        }
    }
}

impl serde::Serialize for CheckId {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.id())
    }
}

macro_rules! checks {
    ($($variant:ident $id:literal $section:literal $kind:ident $title:literal;)*) => {
        /// Which check. Ids go from thing to mode.
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
        #[repr(u8)]
        pub enum CheckId { $(#[doc = $title] $variant),* }

        impl CheckId {
            /// All of them, in the order in which they are told.
            pub const ALL: &'static [CheckId] = &[$(CheckId::$variant),*];

            /// The id as it is written in reports: `anchor.tension.breakout`.
            pub fn id(self) -> &'static str {
                match self { $(CheckId::$variant => $id),* }
            }

            /// The word for it in a step's address: `tension-breakout`.
            pub fn section(self) -> &'static str {
                match self { $(CheckId::$variant => $section),* }
            }

            /// What its value and its limit measure.
            pub fn kind(self) -> Kind {
                match self { $(CheckId::$variant => Kind::$kind),* }
            }
        }

        /// Titles of the checks, in the order of [`CheckId::ALL`].
        pub static CHECK_TITLES: &[&str] = &[$($title),*];
    };
}

checks! {
    Demand "demand.covered" "covered" Utilisation "Demand: whether the rule reaches this case";
    BaseEquilibrium "base.equilibrium" "equilibrium" Moment "Base: whether the load can be balanced at all";
    AnchorTensionSteel "anchor.tension.steel" "tension-steel" Force "Anchors: steel in tension";
    AnchorTensionBreakout "anchor.tension.breakout" "tension-breakout" Force "Anchors: concrete breakout in tension";
    AnchorTensionTributary "anchor.tension.tributary" "tension-tributary" Force "Anchors: the hottest anchor of a group on its own share of concrete";
    AnchorTensionPullout "anchor.tension.pullout" "tension-pullout" Force "Anchors: pullout";
    AnchorTensionBlowout "anchor.tension.blowout" "tension-blowout" Force "Anchors: side-face blowout";
    AnchorTensionBond "anchor.tension.bond" "tension-bond" Force "Anchors: bond";
    AnchorTensionSplitting "anchor.tension.splitting" "tension-splitting" Force "Anchors: splitting of the concrete";
    AnchorShearSteel "anchor.shear.steel" "shear-steel" Force "Anchors: steel in shear";
    AnchorShearBreakout "anchor.shear.breakout" "shear-breakout" Utilisation "Anchors: concrete breakout towards an edge in shear";
    AnchorShearPryout "anchor.shear.pryout" "shear-pryout" Force "Anchors: pryout";
    AnchorInteractionSteel "anchor.interaction.steel" "interaction-steel" Utilisation "Anchors: tension and shear together in the steel";
    AnchorInteraction "anchor.interaction" "interaction" Utilisation "Anchors: tension and shear together";
    AnchorSustained "anchor.sustained" "sustained" Force "Anchors: lasting pull on adhesive anchors";
    AnchorDuctile "anchor.ductile" "ductile" Utilisation "Anchors: ductile steel yields before the concrete gives way";
    AnchorSpacing "anchor.spacing" "spacing" Length "Anchors: spacing between anchors";
    AnchorEdge "anchor.edge" "edge" Length "Anchors: distance to the edge of the slab";
    AnchorThickness "anchor.thickness" "thickness" Length "Anchors: thickness of the concrete";
    Anchorage "anchor.anchorage" "anchorage" Utilisation "Anchors: whether the rule reaches this anchorage";
    AnchorAsBuilt "anchor.as-built" "as-built" Utilisation "Anchors: everything once more, where the holes were drilled";
    FootBearing "foot.bearing" "bearing" Force "Feet: bearing on concrete";
    FootPressure "foot.pressure" "pressure" Pressure "Feet: mean and peak pressure";
    FootBearingAisc "foot.bearing.aisc" "bearing-aisc" Force "Feet: bearing on concrete by AISC 360 J8";
    FootBearingEn "foot.bearing.en" "bearing-en" Force "Feet: bearing on concrete by EN 1992-1-1 6.7";
    FootPlate "foot.plate" "plate" Length "Feet: bending of the plate";
    FootGrout "foot.grout" "grout" Force "Feet: joint on grout";
    SlabQuakeBending "slab.quake.bending" "quake-bending" Utilisation "Slab: bending on the ground in an earthquake";
    SlabQuakePunching "slab.quake.punching" "quake-punching" Force "Slab: punching in an earthquake";
    RaisedShaken "raised.shaken" "shaken" Utilisation "Raised floor: in an earthquake";
    FootPlateRest "foot.plate.rest" "plate-rest" Length "Feet: bending of the plate at rest";
    SlabRestBending "slab.rest.bending" "rest-bending" Utilisation "Slab: bending on the ground at rest";
    SlabRestPunching "slab.rest.punching" "rest-punching" Force "Slab: punching at rest";
    SlabRestRows "slab.rest.rows" "rest-rows" AreaLoad "Slab: rows of cabinets with aisles on the ground";
    FloorLeg "floor.leg" "leg" Force "Suspended slab: heaviest leg against the design concentrated load";
    FloorArea "floor.area" "area" AreaLoad "Suspended slab: load over the pitch";
    FloorStrip "floor.strip" "strip" AreaLoad "Suspended slab: equivalent uniform load of a strip";
    RaisedPanel "raised.panel" "panel" Force "Raised floor: panel at rest";
    RaisedPedestal "raised.pedestal" "pedestal" Force "Raised floor: pedestal at rest";
    RaisedUniform "raised.uniform" "uniform" AreaLoad "Raised floor: uniform load at rest";
    RoutePanel "route.panel" "rolled" Force "Way in: wheel over the panels";
    RouteBending "route.slab" "rolled-slab" Utilisation "Way in: wheel at an edge of the slab";
    RouteContact "route.wheel" "wheel" Pressure "Way in: pressure of a wheel on concrete";
    FreeTipping "free.tipping" "tipping" Acceleration "Standing free: tipping";
    FreeSliding "free.sliding" "sliding" Acceleration "Standing free: sliding";
    FramePeriod "frame.period" "period" Time "Frame: stiff enough to count as rigid";
    FrameBrace "frame.brace" "brace" Force "Frame: braces of the lowest storey";
    FrameGap "frame.gap" "gap" Length "Frame: gap to the neighbour";
    FrameSlack "frame.slack" "slack" Length "Frame: slack of bars and hoses to the neighbour";
    FrameRails "frame.rails" "rails" Mass "Frame: rails under the heaviest content";
    FrameLatch "frame.latch" "latch" Force "Frame: latch of the heaviest content";
    MovePush "move.push" "push" Force "Moving: pushing it off";
    MoveKeep "move.keep" "keep" Force "Moving: keeping it in motion";
    MoveSill "move.sill" "sill" Force "Moving: over the highest sill";
    MoveBrake "move.brake" "brake" Acceleration "Moving: braking on the steepest ramp";
    MoveTruck "move.truck" "truck" Mass "Moving: what the fork truck may lift";
    MoveForks "move.forks" "forks" Acceleration "Moving: tipping sideways off the forks";
    MoveEntry "move.entry" "entry" Length "Moving: forks under the base";
    MoveCarrier "move.carrier" "carrier" Acceleration "Moving: tipping with a pallet truck or guided vehicle";
    MoveDeck "move.deck" "deck" Acceleration "Moving: sliding on the forks or deck of a carrier";
    MoveHand "move.hand" "hand" Mass "Moving: the heaviest content lifted by hand";
    MoveRoad "move.road" "road" Acceleration "Moving: standing unrestrained on a vehicle";
    LiftCentre "lift.centre" "centre" Length "Lifting: centre of gravity below the lifting points";
    LiftTilt "lift.tilt" "tilt" Angle "Lifting: tilt until the centre of gravity hangs below the hook";
    LiftAngle "lift.angle" "angle" Angle "Lifting: how flat the legs lie";
    LiftLeg "lift.leg" "leg" Force "Lifting: pull in the hardest leg";
    LiftSling "lift.sling" "sling" Force "Lifting: sling set by its leg factor";
    LiftAttachment "lift.attachment" "attachment" Force "Lifting: eyebolts or hoist rings";
    LiftThread "lift.thread" "thread" Force "Lifting: thread of the eyebolts";
    FreeTilt "free.tilt" "tilt" Length "Standing free: tilt of 10 degrees";
    FreePush "free.push" "push" Moment "Standing free: push and load of a stability test";
}
