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

/// When a check is asked.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum When {
    /// In every state, load case and direction of the sweep.
    Shaken,
    /// In every state, standing at rest.
    AtRest,
    /// In every state and direction, standing free.
    Free,
    /// In every state, for the frame, for moving and for lifting.
    Handled,
    /// For the places of anchors alone.
    Placed,
    /// Once for the whole project.
    Once,
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
    ($($variant:ident $id:literal $section:literal $kind:ident $role:ident $when:ident $short:literal $title:literal;)*) => {
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

            /// The check of an id.
            ///
            /// ```
            /// use steadfoot::calc::CheckId;
            /// assert_eq!(CheckId::named("foot.bearing"), Some(CheckId::FootBearing));
            /// assert_eq!(CheckId::named("foot"), None);
            /// ```
            pub fn named(id: &str) -> Option<CheckId> {
                CheckId::ALL.iter().copied().find(|check| check.id() == id)
            }

            /// The word for it in a step's address: `tension-breakout`.
            pub fn section(self) -> &'static str {
                match self { $(CheckId::$variant => $section),* }
            }

            /// What its value and its limit measure.
            pub fn kind(self) -> Kind {
                match self { $(CheckId::$variant => Kind::$kind),* }
            }

            /// What it counts for.
            pub fn role(self) -> Role {
                match self { $(CheckId::$variant => Role::$role),* }
            }

            /// When it is asked.
            pub fn when(self) -> When {
                match self { $(CheckId::$variant => When::$when),* }
            }

            /// Its title, for native code: the page has its own list.
            pub fn title(self) -> &'static str {
                match self { $(CheckId::$variant => $title),* }
            }

            /// Its short name, for a drawing's narrow places.
            pub fn short(self) -> &'static str {
                match self { $(CheckId::$variant => $short),* }
            }
        }
    };
}

// The row of a check: its id, the word of its address, its kind, what it counts for, when it is asked, its short name, and
// its title.
checks! {
    Demand "demand.covered" "covered" Utilisation Required Once "demand" "Demand: whether the rule reaches this case";
    BaseEquilibrium "base.equilibrium" "equilibrium" Moment Required Shaken "balance" "Base: whether the load can be balanced at all";
    AnchorTensionSteel "anchor.tension.steel" "tension-steel" Force Required Shaken "steel in tension" "Anchors: steel in tension";
    AnchorTensionBreakout "anchor.tension.breakout" "tension-breakout" Force Required Shaken "breakout" "Anchors: concrete breakout in tension";
    AnchorTensionTributary "anchor.tension.tributary" "tension-tributary" Force Required Shaken "own share of concrete" "Anchors: the hottest anchor of a group on its own share of concrete";
    AnchorTensionPullout "anchor.tension.pullout" "tension-pullout" Force Required Shaken "pullout" "Anchors: pullout";
    AnchorTensionBlowout "anchor.tension.blowout" "tension-blowout" Force Required Shaken "side-face blowout" "Anchors: side-face blowout";
    AnchorTensionBond "anchor.tension.bond" "tension-bond" Force Required Shaken "bond" "Anchors: bond";
    AnchorTensionSplitting "anchor.tension.splitting" "tension-splitting" Force Required Shaken "splitting" "Anchors: splitting of the concrete";
    AnchorShearSteel "anchor.shear.steel" "shear-steel" Force Required Shaken "steel in shear" "Anchors: steel in shear";
    AnchorShearBreakout "anchor.shear.breakout" "shear-breakout" Utilisation Required Shaken "edge breakout" "Anchors: concrete breakout towards an edge in shear";
    AnchorShearPryout "anchor.shear.pryout" "shear-pryout" Force Required Shaken "pryout" "Anchors: pryout";
    AnchorInteractionSteel "anchor.interaction.steel" "interaction-steel" Utilisation Required Shaken "steel, tension with shear" "Anchors: tension and shear together in the steel";
    AnchorInteraction "anchor.interaction" "interaction" Utilisation Required Shaken "tension with shear" "Anchors: tension and shear together";
    AnchorSustained "anchor.sustained" "sustained" Force Required Shaken "lasting pull" "Anchors: lasting pull on adhesive anchors";
    AnchorDuctile "anchor.ductile" "ductile" Utilisation Required Shaken "ductile steel first" "Anchors: ductile steel yields before the concrete gives way";
    AnchorSpacing "anchor.spacing" "spacing" Length Required Placed "spacing" "Anchors: spacing between anchors";
    AnchorEdge "anchor.edge" "edge" Length Required Placed "edge distance" "Anchors: distance to the edge of the slab";
    AnchorThickness "anchor.thickness" "thickness" Length Required Placed "thickness" "Anchors: thickness of the concrete";
    Anchorage "anchor.anchorage" "anchorage" Utilisation Required Placed "anchorage" "Anchors: whether the rule reaches this anchorage";
    AnchorAsBuilt "anchor.as-built" "as-built" Utilisation Required Once "as drilled" "Anchors: everything once more, where the holes were drilled";
    FootBearing "foot.bearing" "bearing" Force Required Shaken "bearing" "Feet: bearing on concrete";
    FootPressure "foot.pressure" "pressure" Pressure Information Shaken "pressure" "Feet: mean and peak pressure";
    FootBearingAisc "foot.bearing.aisc" "bearing-aisc" Force Information Shaken "bearing, AISC" "Feet: bearing on concrete by AISC 360 J8";
    FootBearingEn "foot.bearing.en" "bearing-en" Force Required Shaken "bearing, EN" "Feet: bearing on concrete by EN 1992-1-1 6.7";
    FootPlate "foot.plate" "plate" Length Required Shaken "foot plate" "Feet: bending of the plate";
    FootGrout "foot.grout" "grout" Force Required Shaken "grout" "Feet: joint on grout";
    SlabQuakeBending "slab.quake.bending" "quake-bending" Utilisation Required Shaken "slab in bending" "Slab: bending on the ground in an earthquake";
    SlabQuakePunching "slab.quake.punching" "quake-punching" Force Required Shaken "punching" "Slab: punching in an earthquake";
    RaisedShaken "raised.shaken" "shaken" Utilisation Required Shaken "raised floor, shaken" "Raised floor: in an earthquake";
    FootPlateRest "foot.plate.rest" "plate-rest" Length Required AtRest "foot plate, at rest" "Feet: bending of the plate at rest";
    SlabRestBending "slab.rest.bending" "rest-bending" Utilisation Required AtRest "slab in bending, at rest" "Slab: bending on the ground at rest";
    SlabRestPunching "slab.rest.punching" "rest-punching" Force Required AtRest "punching, at rest" "Slab: punching at rest";
    SlabRestRows "slab.rest.rows" "rest-rows" AreaLoad Required AtRest "rows and aisles" "Slab: rows of cabinets with aisles on the ground";
    FloorLeg "floor.leg" "leg" Force Information AtRest "single leg" "Suspended slab: heaviest leg against the design concentrated load";
    FloorArea "floor.area" "area" AreaLoad Required AtRest "area load" "Suspended slab: load over the pitch";
    FloorStrip "floor.strip" "strip" AreaLoad Required AtRest "strip load" "Suspended slab: equivalent uniform load of a strip";
    RaisedPanel "raised.panel" "panel" Force Required AtRest "floor panel" "Raised floor: panel at rest";
    RaisedPedestal "raised.pedestal" "pedestal" Force Required AtRest "pedestal" "Raised floor: pedestal at rest";
    RaisedUniform "raised.uniform" "uniform" AreaLoad Information AtRest "panels, uniform" "Raised floor: uniform load at rest";
    RoutePanel "route.panel" "rolled" Force Required AtRest "panel, rolled over" "Way in: wheel over the panels";
    RouteBending "route.slab" "rolled-slab" Utilisation Required AtRest "slab, rolled over" "Way in: wheel at an edge of the slab";
    RouteContact "route.wheel" "wheel" Pressure Information AtRest "wheel pressure" "Way in: pressure of a wheel on concrete";
    FreeTipping "free.tipping" "tipping" Acceleration BeforeBolting Free "tipping" "Standing free: tipping";
    FreeSliding "free.sliding" "sliding" Acceleration BeforeBolting Free "sliding" "Standing free: sliding";
    FramePeriod "frame.period" "period" Time Information Handled "rigid frame" "Frame: stiff enough to count as rigid";
    FrameBrace "frame.brace" "brace" Force Required Handled "braces" "Frame: braces of the lowest storey";
    FrameGap "frame.gap" "gap" Length Required Handled "gap" "Frame: gap to the neighbour";
    FrameSlack "frame.slack" "slack" Length Required Handled "slack" "Frame: slack of bars and hoses to the neighbour";
    FrameRails "frame.rails" "rails" Mass Required Handled "rails" "Frame: rails under the heaviest content";
    FrameLatch "frame.latch" "latch" Force Required Handled "latch" "Frame: latch of the heaviest content";
    MovePush "move.push" "push" Force BeforeBolting Handled "pushing off" "Moving: pushing it off";
    MoveKeep "move.keep" "keep" Force BeforeBolting Handled "keeping it in motion" "Moving: keeping it in motion";
    MoveSill "move.sill" "sill" Force BeforeBolting Handled "sill" "Moving: over the highest sill";
    MoveBrake "move.brake" "brake" Acceleration BeforeBolting Handled "braking" "Moving: braking on the steepest ramp";
    MoveTruck "move.truck" "truck" Mass BeforeBolting Handled "fork truck" "Moving: what the fork truck may lift";
    MoveForks "move.forks" "forks" Acceleration BeforeBolting Handled "off the forks" "Moving: tipping sideways off the forks";
    MoveEntry "move.entry" "entry" Length BeforeBolting Handled "forks under it" "Moving: forks under the base";
    MoveCarrier "move.carrier" "carrier" Acceleration BeforeBolting Handled "on a carrier" "Moving: tipping with a pallet truck or guided vehicle";
    MoveDeck "move.deck" "deck" Acceleration Information Handled "sliding on a carrier" "Moving: sliding on the forks or deck of a carrier";
    MoveHand "move.hand" "hand" Mass Information Handled "by hand" "Moving: the heaviest content lifted by hand";
    MoveRoad "move.road" "road" Acceleration Information Handled "on a vehicle" "Moving: standing unrestrained on a vehicle";
    LiftCentre "lift.centre" "centre" Length BeforeBolting Handled "centre below points" "Lifting: centre of gravity below the lifting points";
    LiftTilt "lift.tilt" "tilt" Angle Information Handled "tilt on the hook" "Lifting: tilt until the centre of gravity hangs below the hook";
    LiftAngle "lift.angle" "angle" Angle BeforeBolting Handled "flat legs" "Lifting: how flat the legs lie";
    LiftLeg "lift.leg" "leg" Force BeforeBolting Handled "leg of the sling" "Lifting: pull in the hardest leg";
    LiftSling "lift.sling" "sling" Force BeforeBolting Handled "sling set" "Lifting: sling set by its leg factor";
    LiftAttachment "lift.attachment" "attachment" Force BeforeBolting Handled "eyebolts" "Lifting: eyebolts or hoist rings";
    LiftThread "lift.thread" "thread" Force BeforeBolting Handled "thread" "Lifting: thread of the eyebolts";
    FreeTilt "free.tilt" "tilt" Length BeforeBolting Free "tilt of 10°" "Standing free: tilt of 10 degrees";
    FreePush "free.push" "push" Moment BeforeBolting Free "stability push" "Standing free: push and load of a stability test";
}
