//! Prints the hash of the self check of the native engine.

fn main() {
    println!("{}", steadfoot::project::self_check());
}
