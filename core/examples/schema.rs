//! Prints the JSON Schema of a project file: `cargo run --example schema > demo-configs/steadfoot.schema.json`.

fn main() {
    print!("{}", steadfoot::project::schema::schema());
}
