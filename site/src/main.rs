//! `cargo run -p steadfoot-site` builds the guide and serves it on a loopback address.

use std::process::ExitCode;

use steadfoot_site::{arguments::Arguments, build, server, workspace::Workspace};

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("error: {error:#}");
            ExitCode::FAILURE
        }
    }
}

fn run() -> anyhow::Result<()> {
    let Some(arguments) = Arguments::read(std::env::args().skip(1))? else {
        print!("{}", Arguments::HELP);
        return Ok(());
    };
    let workspace = Workspace::here()?;
    let site = build::build(&workspace)?;
    if arguments.sizes {
        print!("{}", site.sizes);
    }
    println!("one file: {}", workspace.one_file().display());
    if arguments.serve {
        server::serve(&workspace.dist(), arguments.port)?;
    } else {
        println!("folder:   {}", workspace.dist().display());
    }
    Ok(())
}
