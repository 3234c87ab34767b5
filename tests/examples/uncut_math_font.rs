//! Writes the uncut math font to the file named, for the test that renders formulas with both fonts.

use std::{env, fs, process::ExitCode};

use steadfoot_site::font::source;

fn main() -> ExitCode {
    let Some(file) = env::args().nth(1) else {
        eprintln!("use: uncut_math_font FILE");
        return ExitCode::from(2);
    };
    let font = source::math_font().expect("the font package carries the font");
    fs::write(&file, font).unwrap_or_else(|error| panic!("{file}: {error}"));
    ExitCode::SUCCESS
}
