//! Writes a schedule of as many cabinets as asked for, no two alike, for the hall of the demo:
//! `cargo run --release --example schedule -- 100000 [SEED] > schedule.csv`. The same seed gives the same schedule.

use std::io::Write;

const HEAD: &str = "place,type,load_out,floor,storey,x_mm,y_mm,turn_deg,cabinet.frame.mass_kg,contents[*].offset_mm[0],slab.thickness_mm,anchorage.embedment_mm,site.s_ds";
const TYPES: [(&str, u32); 3] = [("recorder", 8), ("relay", 5), ("battery", 4)];
const FLOORS: [&str; 3] = ["ground", "gallery", "by the joint"];
/// Cabinets in a row of the hall.
const IN_A_ROW: u64 = 100;
const PITCH_MM: [u64; 2] = [1800, 2600];

fn main() -> std::io::Result<()> {
    let mut arguments = std::env::args().skip(1).map(|argument| argument.parse::<u64>());
    let (Some(Ok(count)), Some(Ok(seed))) = (arguments.next(), arguments.next().or(Some(Ok(1)))) else {
        eprintln!("use: schedule COUNT [SEED]");
        std::process::exit(2);
    };
    let mut random = Random(seed);
    let mut output = std::io::BufWriter::new(std::io::stdout().lock());
    writeln!(output, "{HEAD}")?;
    for number in 0..count {
        let (type_name, contents) = TYPES[random.below(TYPES.len() as u64) as usize];
        let load_out = match random.below(4) {
            0 => "full".to_string(),
            1 => format!("lowest {}", 1 + random.below(u64::from(contents))),
            2 => format!("highest {}", 1 + random.below(u64::from(contents))),
            _ => format!("{} %", 50 + random.below(60)),
        };
        let (row, place) = (number / IN_A_ROW, number % IN_A_ROW);
        writeln!(
            output,
            "R{row}-{place},{type_name},{load_out},{},{},{},{},{},{:.3},{:.2},{:.2},{:.2},{:.4}",
            FLOORS[random.below(3) as usize],
            2 * random.below(2),
            place * PITCH_MM[0],
            row * PITCH_MM[1],
            180 * (row % 2),
            random.between(250.0, 800.0),
            random.between(-20.0, 20.0),
            random.between(180.0, 400.0),
            random.between(90.0, 130.0),
            random.between(0.2, 1.6),
        )?;
    }
    output.flush()
}

/// Numbers that look random, the same ones for the same seed (SplitMix64).
struct Random(u64);

impl Random {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    fn below(&mut self, count: u64) -> u64 {
        self.next() % count
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * (self.next() >> 11) as f64 / (1u64 << 53) as f64
    }
}
