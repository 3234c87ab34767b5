//! What a number measures.

/// The kind of a quantity: what it measures, hence its dimension and the units it is shown in.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Kind {
    /// A count or a factor without dimension.
    Number,
    /// Demand over capacity.
    Utilisation,
    /// An acceleration as a multiple of g.
    Acceleration,
    /// A length of the cabinet, the slab or an anchor.
    Length,
    /// A height in a building, in m.
    Height,
    /// A distance on a map, in km.
    Distance,
    /// An area.
    Area,
    /// A second moment of area or of a pattern of points.
    SecondMoment,
    /// A force.
    Force,
    /// A moment.
    Moment,
    /// A stress or a strength.
    Stress,
    /// A pressure under a foot.
    Pressure,
    /// A load of a floor over an area, in kPa and psf; formulas take it as a pressure.
    AreaLoad,
    /// A load along a line, in kN/m and lbf/ft; formulas take it as a force per length.
    LineLoad,
    /// A mass.
    Mass,
    /// A moment of inertia of a mass.
    Inertia,
    /// The weight of a mass, force per mass.
    Gravity,
    /// A force per length of movement.
    Stiffness,
    /// A pressure per length of movement.
    Subgrade,
    /// An angle, in radians.
    Angle,
    /// A time.
    Time,
    /// How often in a second.
    Frequency,
    /// A length per time.
    Velocity,
    /// The acceleration of free fall: a length per time per time. Every other acceleration is a multiple of it.
    FreeFall,
    /// An angle per time; the frequency parameter of a rocking body.
    AngularVelocity,
    /// An empirical constant of a formula: powers of force and length, in sixths.
    Empirical {
        /// Power of force, in sixths.
        force: i8,
        /// Power of length, in sixths.
        length: i8,
    },
}

impl serde::Serialize for Kind {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_u16(self.code())
    }
}

/// Powers of force, length, mass and time, in sixths, so that square roots and cube roots stay exact.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Dimension {
    /// Power of force, in sixths.
    pub force: i16,
    /// Power of length, in sixths.
    pub length: i16,
    /// Power of mass, in sixths.
    pub mass: i16,
    /// Power of time, in sixths.
    pub time: i16,
}

impl Kind {
    const SIMPLE: [Kind; 25] = [
        Kind::Number,
        Kind::Utilisation,
        Kind::Acceleration,
        Kind::Length,
        Kind::Height,
        Kind::Distance,
        Kind::Area,
        Kind::SecondMoment,
        Kind::Force,
        Kind::Moment,
        Kind::Stress,
        Kind::Pressure,
        Kind::Mass,
        Kind::Inertia,
        Kind::Gravity,
        Kind::Stiffness,
        Kind::Subgrade,
        Kind::Angle,
        Kind::Time,
        Kind::Frequency,
        Kind::Velocity,
        Kind::FreeFall,
        Kind::AngularVelocity,
        Kind::AreaLoad,
        Kind::LineLoad,
    ];

    /// The kind as a number, for the boundary to the page.
    pub fn code(self) -> u16 {
        if let Kind::Empirical { force, length } = self {
            return 1000 + (force + 50) as u16 * 100 + (length + 50) as u16;
        }
        Kind::SIMPLE.iter().position(|&kind| kind == self).unwrap_or(0) as u16
    }

    /// The kind of a code made by [`Kind::code`]; `None` for any other number.
    ///
    /// ```
    /// use steadfoot::calc::Kind;
    /// let k_c = Kind::Empirical { force: 3, length: -3 };
    /// assert_eq!(Kind::from_code(k_c.code()), Some(k_c));
    /// assert_eq!(Kind::from_code(999), None);
    /// ```
    pub fn from_code(code: u16) -> Option<Kind> {
        if code < 1000 {
            return Kind::SIMPLE.get(code as usize).copied();
        }
        let (force, length) = ((code - 1000) / 100, (code - 1000) % 100);
        (force < 100).then(|| Kind::Empirical { force: force as i8 - 50, length: length as i8 - 50 })
    }

    /// The dimension of the kind.
    pub fn dimension(self) -> Dimension {
        let of = |force, length, mass, time| Dimension { force, length, mass, time };
        match self {
            Kind::Number | Kind::Utilisation | Kind::Acceleration | Kind::Angle => of(0, 0, 0, 0),
            Kind::Length | Kind::Height | Kind::Distance => of(0, 6, 0, 0),
            Kind::Area => of(0, 12, 0, 0),
            Kind::SecondMoment => of(0, 24, 0, 0),
            Kind::Force => of(6, 0, 0, 0),
            Kind::Moment => of(6, 6, 0, 0),
            Kind::Stress | Kind::Pressure | Kind::AreaLoad => of(6, -12, 0, 0),
            Kind::Mass => of(0, 0, 6, 0),
            Kind::Inertia => of(0, 12, 6, 0),
            Kind::Gravity => of(6, 0, -6, 0),
            Kind::Stiffness | Kind::LineLoad => of(6, -6, 0, 0),
            Kind::Subgrade => of(6, -18, 0, 0),
            Kind::Time => of(0, 0, 0, 6),
            Kind::Frequency | Kind::AngularVelocity => of(0, 0, 0, -6),
            Kind::Velocity => of(0, 6, 0, -6),
            Kind::FreeFall => of(0, 6, 0, -12),
            Kind::Empirical { force, length } => of(force as i16, length as i16, 0, 0),
        }
    }
}
