//! What of the engine travels later: everything that the landing page does without.

/// Paths of modules and functions. Whatever only they call goes with them. How a breakdown is told is among them: the
/// first part stops without words, and the whole engine, asked again, finds them.
const LATER: &[&str] = &[
    "console_error_panic_hook::hook",
    "core::panicking::panic_fmt",
    "core::str::slice_error_fail_rt",
    "std::panicking::panic_handler",
    "std::panicking::panic_with_hook",
    "steadfoot::checks::floor",
    "steadfoot::checks::lifting",
    "steadfoot::checks::moving",
    "steadfoot::explore::",
    "steadfoot::frame",
    "steadfoot::hall",
    "steadfoot::input::difference",
    "steadfoot::motion",
    "steadfoot::project::floored::check_state",
    "steadfoot::project::handled::check",
    "steadfoot::project::handled::swayed",
    "steadfoot::rules::",
    "steadfoot::shake_table",
    "steadfoot::study",
    "steadfoot_wasm::approval",
    "steadfoot_wasm::compare",
    "steadfoot_wasm::hall",
    "steadfoot_wasm::map",
    "steadfoot_wasm::motion",
    "steadfoot_wasm::open",
    "steadfoot_wasm::study",
];

/// What lies under these paths and yet comes first.
const FIRST: &[&str] = &[
    "steadfoot::explore::limit::",
    "steadfoot::explore::scaled",
    "steadfoot::rules::aci_318_19",
    "steadfoot::rules::anchor",
    "steadfoot::rules::asce_7::",
    "steadfoot::rules::asce_7_16",
    "steadfoot::rules::attachment",
    "steadfoot::rules::bolts",
    "steadfoot::rules::component_row",
    "steadfoot::rules::demand",
    "steadfoot::rules::site_class",
];

/// What lies under those again and travels later.
const LATER_WITHIN_FIRST: &[&str] = &["steadfoot::rules::aci_318_19::bars", "steadfoot::rules::aci_318_19::bond"];

/// Names of exports that travel later.
const EXPORTS: &[&str] = &[
    "approval_read",
    "approval_write",
    "begin_open",
    "begin_study",
    "compare",
    "csv_line",
    "hall",
    "hall_check",
    "knobs",
    "map_check",
    "map_drawing",
    "map_edits",
    "map_places",
    "map_portion",
    "open_check",
    "patterned",
    "pressure_check",
    "rocking_check",
    "rocking_path",
    "search_check",
    "study",
];

/// Classes whose methods travel later.
const CLASSES: &[&str] = &["hallreader_", "hallrows_", "openwork_", "studywork_"];

/// Whether the function of this path travels later.
pub fn is_later(path: &str) -> bool {
    let path = path.trim_start_matches(['<', '&', ' ']);
    let is_under = |paths: &[&str]| paths.iter().any(|known| path.starts_with(known));
    if is_under(LATER_WITHIN_FIRST) {
        return true;
    }
    // The binding tool wraps an export in a function of the same name with a word behind it.
    let name = path.split(' ').next().unwrap_or_default();
    (is_under(LATER) && !is_under(FIRST))
        || EXPORTS.contains(&name)
        || CLASSES.iter().any(|class| name.starts_with(class))
}
