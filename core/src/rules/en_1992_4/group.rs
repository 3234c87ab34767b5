//! A group against its pull: what cone, bond and splitting have in common.

use alloc::vec::Vec;

use super::body::{Body, Piece, Reach};
use super::coverage::MIXED_DEPTHS;
use super::document::EN_1992_4;
use super::facts::{Facts, compared, corners, sum};
use super::seismic::{self, Mode};
use super::{bond, cone, factor, splitting};
use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System, steps};

steps! { 86 "EN 1992-4, groups";
    A_OWN "A_own" Area (PRACTICE "" Memory) "The fastener's own part of the projected area, cut half way to its neighbours": Geometry;
    A_GROUP "A_group" Area (EN_1992_4 "7.2.1.4(3)" Secondary) "Projected area of the whole group": Geometry;
    N_ALL "n" Number (STATICS "" Derived) "Number of fasteners in the group": Given;
    N_I "N_Ed_i" Force (STATICS "base reactions" Derived) "Pull on each fastener of the group": Solved;
    X_I "x_i" Length (INPUT "" Derived) "Place of each fastener of the group, to the right": Given;
    Y_I "y_i" Length (INPUT "" Derived) "Place of each fastener of the group, to the rear": Given;
    E_N_X "e_N_x" Length (EN_1992_4 "7.2.1.4(6)" Secondary) "Eccentricity of the pull along x" = "abs(sum(N_Ed_i * x_i) / sum(N_Ed_i) - sum(x_i) / n)";
    E_N_Y "e_N_y" Length (EN_1992_4 "7.2.1.4(6)" Secondary) "Eccentricity of the pull along y" = "abs(sum(N_Ed_i * y_i) / sum(N_Ed_i) - sum(y_i) / n)";
    PSI_EC_X "psi_ec_x" Number (EN_1992_4 "(7.6)" Secondary) "Effect of the eccentricity along x" = "1 / (1 + 2 * e_N_x / s_cr)";
    PSI_EC_Y "psi_ec_y" Number (EN_1992_4 "(7.6)" Secondary) "Effect of the eccentricity along y" = "1 / (1 + 2 * e_N_y / s_cr)";
    PSI_EC "psi_ec" Number (EN_1992_4 "(7.6)" Secondary) "Effect of both eccentricities" = "psi_ec_x * psi_ec_y";
    PSI_EC_ONE "psi_ec" Number (EN_1992_4 "(7.6)" Secondary) "1 for one fastener": Condition;
    N_ED "N_Ed" Force (STATICS "base reactions" Derived) "Pull on the fastener": Solved;
    N_ED_GROUP "N_Ed" Force (STATICS "" Derived) "Pull on the group" = "sum(N_Ed_i)";
}

/// What a mode of a group is written with.
pub struct GroupMode {
    /// The check.
    pub check: CheckId,
    /// Its row of Table C.3.
    pub mode: Mode,
    /// Characteristic resistance, by the factors that stand on the sheet.
    pub resistance: StepId,
    /// Design resistance.
    pub design: StepId,
    /// Action over resistance.
    pub ratio: StepId,
    basic: fn(&Facts, &Body, Piece, &mut Sheet) -> Basic,
}

/// The mode of a reach.
pub fn mode(reach: Reach) -> &'static GroupMode {
    match reach {
        Reach::Cone => &CONE,
        Reach::Bond => &BOND,
        Reach::Splitting => &SPLITTING,
    }
}

static CONE: GroupMode = GroupMode {
    check: CheckId::AnchorTensionBreakout,
    mode: Mode::Cone,
    resistance: cone::N_RK,
    design: cone::N_RD,
    ratio: cone::BETA,
    basic: cone::basic,
};
static BOND: GroupMode = GroupMode {
    check: CheckId::AnchorTensionBond,
    mode: Mode::Bond,
    resistance: bond::N_RK,
    design: bond::N_RD,
    ratio: bond::BETA,
    basic: bond::basic,
};
static SPLITTING: GroupMode = GroupMode {
    check: CheckId::AnchorTensionSplitting,
    mode: Mode::Splitting,
    resistance: splitting::N_RK,
    design: splitting::N_RD,
    ratio: splitting::BETA,
    basic: splitting::basic,
};

/// What no force changes of a resistance: the product of its factors but for the eccentricity, and s_cr of that.
#[derive(Clone, Copy, Debug)]
pub struct Basic {
    /// The product.
    pub product: f64,
    /// The characteristic spacing.
    pub s_cr: f64,
}

/// How far the resultant of a group's forces lies from the group's centroid.
#[derive(Clone, Copy, Debug)]
pub struct Eccentricity {
    /// Along x.
    pub x: f64,
    /// Along y.
    pub y: f64,
}

/// A group with its body and its resistances.
pub struct Group {
    /// Its geometry.
    pub body: Body,
    basic: Basic,
    shares: Vec<Basic>,
    cuts: Vec<Basic>,
}

/// What is found of one group or fastener: whom, and how it came out.
pub type Found = (Subject, Outcome);

impl Group {
    /// The group of a body.
    pub fn new(facts: &Facts, body: Body) -> Group {
        let quiet = &mut Sheet::quiet();
        let of = mode(body.reach).basic;
        let basic = of(facts, &body, Piece::Whole, quiet);
        let mut each = |is_needed: bool, piece: fn(usize) -> Piece| -> Vec<Basic> {
            let count = if is_needed { body.members.len() } else { 0 };
            (0..count).map(|place| of(facts, &body, piece(place), quiet)).collect()
        };
        let shares = each(body.reach == Reach::Cone, Piece::Share);
        let cuts = each(body.reach != Reach::Splitting, Piece::Cut);
        Group { body, basic, shares, cuts }
    }

    /// The factors of a piece, told.
    pub fn tell(&self, facts: &Facts, piece: Piece, sheet: &mut Sheet) {
        if sheet.is_told() {
            (mode(self.body.reach).basic)(facts, &self.body, piece, sheet);
        }
    }

    /// Characteristic resistance of the whole group with an eccentricity that stands on the sheet as e_N_x and e_N_y.
    pub fn resistance(&self, eccentricity: Eccentricity, sheet: &mut Sheet) -> f64 {
        let s_cr = self.basic.s_cr;
        let psi_x = sheet.step(PSI_EC_X, 1.0 / (1.0 + 2.0 * eccentricity.x / s_cr));
        let psi_y = sheet.step(PSI_EC_Y, 1.0 / (1.0 + 2.0 * eccentricity.y / s_cr));
        let psi_ec = sheet.step(PSI_EC, psi_x * psi_y);
        sheet.step(mode(self.body.reach).resistance, self.basic.product * psi_ec)
    }

    /// Characteristic resistance of one fastener: the only one, or one on a piece of the body.
    pub fn single(&self, piece: Piece, sheet: &mut Sheet) -> f64 {
        let basic = match piece {
            Piece::Whole => &self.basic,
            Piece::Share(place) => &self.shares[place],
            Piece::Cut(place) => &self.cuts[place],
        };
        sheet.step(PSI_EC_ONE, 1.0);
        sheet.step(mode(self.body.reach).resistance, basic.product)
    }

    /// The group of this number against the pulls of all fasteners, `sharing` of which are pulled.
    pub fn check(&self, facts: &Facts, (number, pull): (u16, &[f64]), sharing: usize, sheet: &mut Sheet) -> Found {
        let (members, of) = (&self.body.members, mode(self.body.reach));
        let subject = Subject::Group(number);
        sheet.open(Part::Anchors, subject, Some(of.check), System::Si);
        if !self.body.alike {
            return (subject, Outcome::NotCovered(MIXED_DEPTHS));
        }
        self.tell(facts, Piece::Whole, sheet);
        let (n_rk, n_ed) = if let [only] = members[..] {
            (self.single(Piece::Whole, sheet), sheet.carry(N_ED, pull[only]))
        } else {
            let eccentricity = self.eccentricity(facts, pull, sheet);
            let n_rk = self.resistance(eccentricity, sheet);
            (n_rk, sheet.step(N_ED_GROUP, sum(members, |place| pull[place])))
        };
        let k_eq = seismic::reduction(facts, of.mode, sharing, sheet);
        let gamma = factor::concrete_tension(facts, sheet);
        let n_rd = sheet.step(of.design, k_eq * n_rk / gamma);
        sheet.step(of.ratio, n_ed / n_rd);
        (subject, compared(n_ed, n_rd))
    }

    /// The hottest fastener of the group on its own share of the concrete; none for a fastener alone.
    ///
    /// psi_ec can hide a hot fastener in a long chain; common practice checks it on the area cut half way to its
    /// neighbours, with psi_s only from real edges. An equal part of the group's area is taken where that is larger.
    pub fn check_share(&self, facts: &Facts, pull: &[f64], sharing: usize, sheet: &mut Sheet) -> Option<Found> {
        let members = &self.body.members;
        if members.len() < 2 {
            return None;
        }
        if !self.body.alike {
            return Some((Subject::Anchor(members[0] as u16), Outcome::NotCovered(MIXED_DEPTHS)));
        }
        let of = mode(self.body.reach);
        let mut worst = (0, f64::NEG_INFINITY);
        for (place, &member) in members.iter().enumerate().filter(|(_, member)| **member < facts.own) {
            let ratio = pull[member] / self.shares[place].product;
            // A ratio that is no number is the worst of all.
            if ratio > worst.1 || ratio.is_nan() {
                worst = (place, ratio);
            }
        }
        let (place, _) = worst;
        let subject = Subject::Anchor(members[place] as u16);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorTensionTributary), System::Si);
        self.tell(facts, Piece::Share(place), sheet);
        let n_rk = self.single(Piece::Share(place), sheet);
        let k_eq = seismic::reduction(facts, of.mode, sharing, sheet);
        let gamma = factor::concrete_tension(facts, sheet);
        let n_rd = sheet.step(of.design, k_eq * n_rk / gamma);
        let n_ed = sheet.carry(N_ED, pull[members[place]]);
        sheet.step(of.ratio, n_ed / n_rd);
        Some((subject, compared(n_ed, n_rd)))
    }

    /// e_N along both axes, from the centre of gravity of the pulled fasteners.
    fn eccentricity(&self, facts: &Facts, pull: &[f64], sheet: &mut Sheet) -> Eccentricity {
        let members = &self.body.members;
        let at = |place: usize| facts.anchors[place].at;
        if sheet.is_told() {
            let of = |value: &dyn Fn(usize) -> f64| -> Vec<f64> { members.iter().map(|&place| value(place)).collect() };
            sheet.carry_each(N_I, &of(&|place| pull[place]));
            sheet.each(X_I, &of(&|place| at(place).x_mm));
            sheet.each(Y_I, &of(&|place| at(place).y_mm));
        }
        let n = sheet.step(N_ALL, members.len() as f64);
        let total = sum(members, |place| pull[place]);
        let e_x = sum(members, |p| pull[p] * at(p).x_mm) / total - sum(members, |p| at(p).x_mm) / n;
        let e_y = sum(members, |p| pull[p] * at(p).y_mm) / total - sum(members, |p| at(p).y_mm) / n;
        Eccentricity { x: sheet.step(E_N_X, e_x.abs()), y: sheet.step(E_N_Y, e_y.abs()) }
    }
}

/// The rows of an area: that of a whole body, of one cut half way to its neighbours, of a share of it.
pub struct AreaRows {
    /// Of the group.
    pub whole: StepId,
    /// Of a fastener, cut half way to its neighbours.
    pub cut: StepId,
    /// The larger of its own part and an equal part.
    pub share: StepId,
}

/// The projected area of a piece, told with these rows.
pub fn projected_area(facts: &Facts, body: &Body, (piece, rows): (Piece, &AreaRows), sheet: &mut Sheet) -> f64 {
    let whole = || corners(&body.outline(facts));
    let own = |place| move || corners(&[body.share_outline(facts, place)]);
    match piece {
        Piece::Whole => sheet.detailed(rows.whole, body.area_mm2, whole),
        Piece::Cut(place) => sheet.detailed(rows.cut, body.shares[place].area_mm2, own(place)),
        Piece::Share(place) => {
            let all = sheet.detailed(A_GROUP, body.area_mm2, whole);
            let part = sheet.detailed(A_OWN, body.shares[place].area_mm2, own(place));
            let n = sheet.step(N_ALL, body.members.len() as f64);
            sheet.step(rows.share, part.max(all / n))
        }
    }
}
