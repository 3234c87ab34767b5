//! Stiffness of a storey.

use crate::calc::number::pow;

/// A post whose ends are held against turning by springs.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Column {
    /// Modulus of elasticity times second moment of area.
    pub bending_nmm2: f64,
    /// Its height.
    pub height_mm: f64,
    /// Stiffness of the spring at its head, moment per radian; infinite where it cannot turn.
    pub head_nmm: f64,
    /// The same at its foot; zero where it turns freely.
    pub foot_nmm: f64,
}

/// The sideways stiffness of a post with springs at both ends.
///
/// Slope deflection: 12 EI/h^3 (ab + a + b)/(ab + 4 (a + b) + 12), a and b the springs over EI/h. Scope: small
/// movements, no axial force. Limits: 12 EI/h^3 with both ends held, 3 EI/h^3 with one.
///
/// ```
/// use steadfoot::frame::{Column, column_stiffness_n_per_mm};
/// let post = Column { bending_nmm2: 1e11, height_mm: 2000.0, head_nmm: 3e8, foot_nmm: 7e7 };
/// assert!((column_stiffness_n_per_mm(&post) - 47.4).abs() < 0.05);
/// ```
pub fn column_stiffness_n_per_mm(column: &Column) -> f64 {
    let relative = |spring: f64| spring * column.height_mm / column.bending_nmm2;
    let (a, b) = (relative(column.head_nmm), relative(column.foot_nmm));
    let whole = 12.0 * column.bending_nmm2 / pow(column.height_mm, 3.0);
    match (a.is_infinite(), b.is_infinite()) {
        (true, true) => whole,
        (true, false) => whole * (b + 1.0) / (b + 4.0),
        (false, true) => whole * (a + 1.0) / (a + 4.0),
        (false, false) => whole * (a * b + a + b) / (a * b + 4.0 * (a + b) + 12.0),
    }
}
