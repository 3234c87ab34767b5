//! Prints the JSON Schema of a project file: `cargo run --example schema > demo-configs/steadfoot.schema.json`; behind
//! `-- hall` that of a hall file: `cargo run --example schema -- hall > demo-configs/hall/hall.schema.json`.

fn main() {
    let is_hall = std::env::args().nth(1).is_some_and(|word| word == "hall");
    print!("{}", if is_hall { steadfoot::hall::schema() } else { steadfoot::project::schema::schema() });
}
