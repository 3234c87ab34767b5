//! The engine built for the browser: the WebAssembly module and the script that talks to it.

pub mod cut;
pub mod later;
mod plan;
pub mod references;

use std::{
    env,
    ffi::OsString,
    fs,
    path::{Path, PathBuf},
    process::Command,
};

use anyhow::{Context, bail, ensure};
use wasm_bindgen_cli_support::Bindgen;

use crate::workspace::Workspace;
use references::References;

const TARGET: &str = "wasm32-unknown-unknown";

/// The name that the binding script declares.
pub const GLOBAL: &str = "steadfootWasm";

/// The built engine.
pub struct Engine {
    /// The script that converts values between the page and the module; declares [`GLOBAL`].
    pub glue: String,
    /// The WebAssembly module: the part that the landing page needs.
    pub wasm: Vec<u8>,
    /// The rest of it, a module that takes the first one's exports.
    pub later: Vec<u8>,
}

/// Builds the engine for the browser, adding Rust's target for it where it is missing.
pub fn build(workspace: &Workspace) -> anyhow::Result<Engine> {
    add_target_if_missing()?;
    let compiled = compile(workspace)?;
    bind(&compiled)
}

fn add_target_if_missing() -> anyhow::Result<()> {
    let rustc = env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    let answer = Command::new(&rustc)
        .args(["--print", "target-libdir", "--target", TARGET])
        .output()
        .with_context(|| format!("{} did not start; is Rust installed?", Path::new(&rustc).display()))?;
    ensure!(answer.status.success(), "rustc does not know the target {TARGET}; a newer Rust is needed");
    let library = PathBuf::from(String::from_utf8_lossy(&answer.stdout).trim());
    if library.is_dir() {
        return Ok(());
    }
    println!("Rust's target {TARGET} is missing here; adding it: rustup target add {TARGET}");
    let added = Command::new("rustup").args(["target", "add", TARGET]).status();
    match added {
        Ok(status) if status.success() => Ok(()),
        Ok(status) => bail!("`rustup target add {TARGET}` ended with {status}; it needs a network the first time"),
        Err(error) => bail!(
            "the target {TARGET} is missing and rustup, which would add it, did not start ({error}); \
             install Rust by rustup, or install this target's standard library by your system's packages"
        ),
    }
}

fn compile(workspace: &Workspace) -> anyhow::Result<PathBuf> {
    let cargo = env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let folder = workspace.wasm_build();
    let status = Command::new(cargo)
        .args(["build", "--quiet", "-p", "steadfoot-wasm", "--profile=engine", "--target", TARGET, "--target-dir"])
        .arg(&folder)
        .current_dir(workspace.root())
        .env("CARGO_ENCODED_RUSTFLAGS", flags(workspace))
        .env_remove("RUSTFLAGS")
        .status()
        .context("cargo did not start")?;
    ensure!(status.success(), "the engine did not compile for the browser (its messages stand above)");
    Ok(folder.join(TARGET).join("engine/steadfoot_wasm.wasm"))
}

/// The compiler's flags, with the separator that cargo asks for. Without remapped paths the module would carry this
/// machine's in its panic messages, and two builds would differ.
fn flags(workspace: &Workspace) -> OsString {
    let mut flags = OsString::from("--remap-path-prefix=");
    flags.push(workspace.root());
    flags.push("=steadfoot");
    // Every browser of the last years has these instructions, the one for a square root among them, which a library
    // without the standard one has no other way to.
    flags.push("\u{1f}-Ctarget-feature=+simd128");
    // Without this the stack takes a megabyte, and the address of every constant a byte more.
    flags.push("\u{1f}-Clink-arg=-zstack-size=524288");
    // The later part of the engine is cut off by what the linker knows of who refers to what.
    flags.push("\u{1f}-Clink-arg=--emit-relocs");
    // By its own measure the compiler copies whatever the standard library marks as small into each place; that was a
    // tenth of the engine. A call costs time where it stands in the inner loops: there the sources say what is copied.
    flags.push("\u{1f}-Cllvm-args=-inline-threshold=15\u{1f}-Cllvm-args=-inlinehint-threshold=50");
    if let Some(home) = cargo_home() {
        flags.push("\u{1f}--remap-path-prefix=");
        flags.push(home);
        flags.push("=cargo");
    }
    flags
}

fn cargo_home() -> Option<OsString> {
    env::var_os("CARGO_HOME").or_else(|| {
        let user = env::var_os("HOME").or_else(|| env::var_os("USERPROFILE"))?;
        Some(Path::new(&user).join(".cargo").into_os_string())
    })
}

fn bind(compiled: &Path) -> anyhow::Result<Engine> {
    let references = References::read(&fs::read(compiled)?)?;
    let mut output = Bindgen::new()
        .input_path(compiled)
        .no_modules(true)?
        .no_modules_global(GLOBAL)?
        .omit_default_module_path(true)
        .demangle(false)
        .remove_name_section(false)
        .remove_producers_section(true)
        .typescript(false)
        .generate_output()
        .with_context(|| format!("the bindings of {} could not be made", compiled.display()))?;
    let glue = output.js().to_string();
    ensure!(!glue.contains("</script"), "the binding script contains </script and cannot stand inside a page");
    let cut = cut::cut(&output.wasm_mut().emit_wasm(), &references, later::is_later)?;
    Ok(Engine { glue, wasm: cut.first, later: cut.later })
}
