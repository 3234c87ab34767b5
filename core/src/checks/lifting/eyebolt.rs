//! Lifting eyebolts of DIN 580.

/// A size of eyebolt, and what one bolt of it may carry.
///
/// DIN 580, Table A.1: masses for one bolt along its axis, up to 45 degrees from it, and up to 90 degrees, in the plane
/// of the eye.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Eyebolt {
    /// Nominal diameter of the thread.
    pub diameter_mm: f64,
    /// Pitch of the thread.
    pub pitch_mm: f64,
    /// Along the axis.
    pub axial_kg: f64,
    /// Up to 45 degrees from it.
    pub inclined_kg: f64,
    /// Up to 90 degrees from it.
    pub sideways_kg: f64,
}

/// A pull within 5 degrees of the axis counts as along it (29 CFR 1910.184(b)).
pub(super) const ALONG_DEG: f64 = 5.0;

impl Eyebolt {
    /// The size of this place in [`SIZES`].
    pub fn of(place: usize) -> Option<Eyebolt> {
        BOLTS.get(place).map(|&[diameter_mm, pitch_mm, axial_kg, inclined_kg, sideways_kg]| Eyebolt {
            diameter_mm,
            pitch_mm,
            axial_kg,
            inclined_kg,
            sideways_kg,
        })
    }
}

/// The sizes, as the file names them.
pub static SIZES: &[&str] =
    &["M8", "M10", "M12", "M16", "M20", "M24", "M30", "M36", "M42", "M48", "M56", "M64", "M72x6", "M80x6", "M100x6"];

/// Diameter, pitch (coarse threads of ISO 261 up to M64), rating along the axis, to 45 degrees, to 90 degrees.
static BOLTS: [[f64; 5]; 15] = [
    [8.0, 1.25, 140.0, 100.0, 70.0],
    [10.0, 1.5, 230.0, 170.0, 115.0],
    [12.0, 1.75, 340.0, 240.0, 170.0],
    [16.0, 2.0, 700.0, 500.0, 350.0],
    [20.0, 2.5, 1200.0, 860.0, 600.0],
    [24.0, 3.0, 1800.0, 1290.0, 900.0],
    [30.0, 3.5, 3200.0, 2300.0, 1600.0],
    [36.0, 4.0, 4600.0, 3300.0, 2300.0],
    [42.0, 4.5, 6300.0, 4500.0, 3150.0],
    [48.0, 5.0, 8600.0, 6100.0, 4300.0],
    [56.0, 5.5, 11_500.0, 8200.0, 5750.0],
    [64.0, 6.0, 16_000.0, 11_000.0, 8000.0],
    [72.0, 6.0, 20_000.0, 14_000.0, 10_000.0],
    [80.0, 6.0, 28_000.0, 20_000.0, 14_000.0],
    [100.0, 6.0, 40_000.0, 29_000.0, 20_000.0],
];
