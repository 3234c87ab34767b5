//! Design live loads of rooms for computers and equipment: a table, and whose each row is.

use super::documents::{ASCE_7_LOADS, BS_6399_1, EN_1991_1_1, TIA_569, TIA_942};
use crate::calc::clause::INPUT;
use crate::calc::{Sheet, StepId, steps};

steps! { 152 "live loads";
    OFFICE "q_k" AreaLoad (ASCE_7_LOADS "Table 4.3-1" Secondary) "Offices: uniform live load": Constant;
    ACCESS_FLOOR "q_k" AreaLoad (ASCE_7_LOADS "Table 4.3-1" Memory) "Access floors for offices: uniform live load": Constant;
    COMPUTER "q_k" AreaLoad (ASCE_7_LOADS "Table 4.3-1" Memory) "Access floors for computer use: uniform live load": Constant;
    STORAGE_LIGHT "q_k" AreaLoad (ASCE_7_LOADS "Table 4.3-1" Memory) "Light storage: uniform live load": Constant;
    STORAGE_HEAVY "q_k" AreaLoad (ASCE_7_LOADS "Table 4.3-1" Memory) "Heavy storage: uniform live load": Constant;
    MANUFACTURING_LIGHT "q_k" AreaLoad (ASCE_7_LOADS "Table 4.3-1" Memory) "Light manufacturing: uniform live load": Constant;
    MANUFACTURING_HEAVY "q_k" AreaLoad (ASCE_7_LOADS "Table 4.3-1" Memory) "Heavy manufacturing: uniform live load": Constant;
    TELECOM "q_k" AreaLoad (TIA_569 "4.3" Secondary) "Telecommunications equipment rooms: uniform live load": Constant;
    DATA_LEAST "q_k" AreaLoad (TIA_942 "" Secondary) "Data halls, least: uniform live load": Constant;
    DATA_RECOMMENDED "q_k" AreaLoad (TIA_942 "rated 3" Secondary) "Data halls, recommended: uniform live load": Constant;
    EN_OFFICE "q_k" AreaLoad (EN_1991_1_1 "Table 6.2, category B" Memory) "Offices, recommended value: uniform live load": Constant;
    EN_STORAGE "q_k" AreaLoad (EN_1991_1_1 "Table 6.4, category E1" Memory) "Storage; heavy equipment is not covered there and is agreed with the client: uniform live load": Constant;
    UK_MAINFRAME "q_k" AreaLoad (BS_6399_1 "" Memory) "Mainframe rooms: uniform live load": Constant;
    UK_PLANT "q_k" AreaLoad (BS_6399_1 "" Memory) "Plant rooms: uniform live load": Constant;
    GIVEN "q_k" AreaLoad (INPUT "floor" Derived) "Design live load of the floor, given by its owner": Given;
    Q_OFFICE "Q_k" Force (ASCE_7_LOADS "Table 4.3-1" Secondary) "Offices: concentrated load on 762 mm by 762 mm (2.5 ft by 2.5 ft)": Constant;
    Q_COMPUTER "Q_k" Force (ASCE_7_LOADS "Table 4.3-1" Memory) "Access floors: concentrated load on 762 mm by 762 mm (2.5 ft by 2.5 ft)": Constant;
    Q_MANUFACTURING_HEAVY "Q_k" Force (ASCE_7_LOADS "Table 4.3-1" Memory) "Heavy manufacturing: concentrated load on 762 mm by 762 mm (2.5 ft by 2.5 ft)": Constant;
    Q_TELECOM "Q_k" Force (TIA_569 "4.3" Secondary) "Telecommunications equipment rooms: concentrated load": Constant;
    Q_EN_OFFICE "Q_k" Force (EN_1991_1_1 "Table 6.2" Memory) "Offices: concentrated load on 50 mm by 50 mm, alone": Constant;
    Q_EN_STORAGE "Q_k" Force (EN_1991_1_1 "Table 6.4" Memory) "Storage: concentrated load on 50 mm by 50 mm, alone": Constant;
    Q_UK "Q_k" Force (BS_6399_1 "" Memory) "Mainframe and plant rooms: concentrated load": Constant;
}

/// One row of the table.
#[derive(Clone, Copy, Debug)]
pub struct LiveLoad {
    /// The word in the file.
    pub word: &'static str,
    /// The row that names the uniform load and its source.
    pub row: StepId,
    /// Uniform load.
    pub uniform_mpa: f64,
    /// Concentrated load with its row, where one is printed.
    pub concentrated: Option<(StepId, f64)>,
}

const fn row(word: &'static str, row: StepId, uniform_mpa: f64, concentrated: Option<(StepId, f64)>) -> LiveLoad {
    LiveLoad { word, row, uniform_mpa, concentrated }
}

/// The rows: US ones as converted in the sheets that print both, others in their own units.
pub static LIVE_LOADS: [LiveLoad; 14] = [
    row("us-office", OFFICE, 2.40e-3, Some((Q_OFFICE, 8900.0))),
    row("us-access-floor-office", ACCESS_FLOOR, 2.40e-3, Some((Q_COMPUTER, 8900.0))),
    row("us-access-floor-computers", COMPUTER, 4.79e-3, Some((Q_COMPUTER, 8900.0))),
    row("us-storage-light", STORAGE_LIGHT, 6.00e-3, None),
    row("us-storage-heavy", STORAGE_HEAVY, 11.97e-3, None),
    row("us-manufacturing-light", MANUFACTURING_LIGHT, 6.00e-3, Some((Q_COMPUTER, 8900.0))),
    row("us-manufacturing-heavy", MANUFACTURING_HEAVY, 11.97e-3, Some((Q_MANUFACTURING_HEAVY, 13_340.0))),
    row("telecom-room", TELECOM, 12.0e-3, Some((Q_TELECOM, 4500.0))),
    row("data-hall-least", DATA_LEAST, 7.2e-3, None),
    row("data-hall-recommended", DATA_RECOMMENDED, 12.0e-3, None),
    row("en-office", EN_OFFICE, 3.0e-3, Some((Q_EN_OFFICE, 4500.0))),
    row("en-storage", EN_STORAGE, 7.5e-3, Some((Q_EN_STORAGE, 7000.0))),
    row("uk-mainframe", UK_MAINFRAME, 3.5e-3, Some((Q_UK, 4500.0))),
    row("uk-plant", UK_PLANT, 7.5e-3, Some((Q_UK, 4500.0))),
];

/// The words of the rows, for a field.
pub static OCCUPANCIES: &[&str] = &[
    "us-office",
    "us-access-floor-office",
    "us-access-floor-computers",
    "us-storage-light",
    "us-storage-heavy",
    "us-manufacturing-light",
    "us-manufacturing-heavy",
    "telecom-room",
    "data-hall-least",
    "data-hall-recommended",
    "en-office",
    "en-storage",
    "uk-mainframe",
    "uk-plant",
];

/// The uniform live load of a row, told; MPa.
pub fn uniform_mpa(place: usize, sheet: &mut Sheet) -> f64 {
    let row = &LIVE_LOADS[place];
    if let Some((name, force_n)) = row.concentrated {
        sheet.step(name, force_n);
    }
    sheet.step(row.row, row.uniform_mpa)
}
