//! Self check of motion: rocks a built-in body through a built-in shaking and hashes the bits of what becomes of it.

use super::body::RockingBody;
use super::record::Record;
use super::rocking::{Following, rock};
use crate::calc::number::sin;

/// Three waves that never agree for long, as strong as keeps the body rocking for the whole half minute.
const WAVES: [[f64; 3]; 3] = [[0.30, 6.9, 0.0], [0.14, 17.3, 1.1], [0.09, 2.9, 2.3]];
const VALUES: usize = 1_501;
const STEP_S: f64 = 0.02;

/// The FNV-1a hash of the bits of peak, times and friction of a body of 0.7 by 2.4 m under 30 s of shaking with values
/// every 0.02 s; the same on every target. It costs what one record costs.
pub fn rocking_check() -> u32 {
    let value = |place: usize| {
        let time_s = place as f64 * STEP_S;
        WAVES.iter().map(|[g, omega, phase]| g * sin(omega * time_s + phase)).sum()
    };
    let record = Record { step_s: STEP_S, accelerations: (0..VALUES).map(value).collect() };
    let rocked = rock(&RockingBody::rectangle(350.0, 1200.0), &record, &Following::USUAL, &mut |_, _| {});
    let mut hash: u32 = 0x811c_9dc5;
    for value in [rocked.peak_rad, rocked.peak_s, rocked.end_s, rocked.friction_needed, rocked.impacts as f64] {
        for byte in value.to_bits().to_le_bytes() {
            hash = (hash ^ byte as u32).wrapping_mul(0x0100_0193);
        }
    }
    hash
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Printed with `--nocapture`: what it costs here, and that it rocks for most of the time.
    #[test]
    fn the_built_in_shaking_keeps_the_body_rocking() {
        assert_ne!(rocking_check(), 0);
        assert_eq!(rocking_check(), rocking_check());
    }
}
