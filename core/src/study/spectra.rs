//! What a shake table must show: required response spectra of every document, beside each other on logarithmic axes.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::{Kind, Sheet, StepId, steps};
use crate::project::{Project, Site};
use crate::report::plot::{self, AxisScale, Curve, Plot, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};
use crate::shake_table::ac156::Place;
use crate::shake_table::{self, Axis, Basis, Spectrum, TESTS, spectrum};

steps! { 135 "spectra study";
    LEVELS "" Number (INPUT "shake_table" Derived) "levels of the tests": Name;
    TEST "" Number (INPUT "shake_table" Derived) "test": Name;
    DAMPING "" Number (INPUT "shake_table" Derived) "damping, per cent": Name;
    PEAK_H "" Number (INPUT "shake_table" Derived) "horizontal, highest": Name;
    RIGID_H "" Number (INPUT "shake_table" Derived) "horizontal, of the table itself": Name;
    PEAK_V "" Number (INPUT "shake_table" Derived) "vertical, highest": Name;
    RIGID_V "" Number (INPUT "shake_table" Derived) "vertical, of the table itself": Name;
    WHY_NOT "" Number (INPUT "shake_table" Derived) "why there is none": Name;
    FREQUENCY "" Number (INPUT "shake_table" Derived) "frequency": Name;
    ACCELERATION "" Number (INPUT "shake_table" Derived) "required acceleration": Name;

    FAMILY_AC156 "" Number (INPUT "shake_table" Derived) "AC156: required acceleration over frequency, at 5 % damping": Name;
    FAMILY_IEEE "" Number (INPUT "shake_table" Derived) "IEEE 693: required horizontal acceleration over frequency; vertical is 80 % of it": Name;
    FAMILY_TELECOM "" Number (INPUT "shake_table" Derived) "telecom zones: required acceleration over frequency, at 2 % damping, the same in all three axes": Name;

    T_AC156 "" Number (INPUT "shake_table" Derived) "AC156 with ASCE 7-05 to 7-16": Name;
    T_AC156_24 "" Number (INPUT "shake_table" Derived) "AC156-24 with ASCE 7-22": Name;
    T_IEEE_LOW "" Number (INPUT "shake_table" Derived) "IEEE 693, low": Name;
    T_IEEE_MODERATE "" Number (INPUT "shake_table" Derived) "IEEE 693, moderate": Name;
    T_IEEE_MODERATE_PL "" Number (INPUT "shake_table" Derived) "IEEE 693, moderate, performance level": Name;
    T_IEEE_HIGH "" Number (INPUT "shake_table" Derived) "IEEE 693, high": Name;
    T_IEEE_HIGH_PL "" Number (INPUT "shake_table" Derived) "IEEE 693, high, performance level": Name;
    T_ZONE_0 "" Number (INPUT "shake_table" Derived) "telecom zone 0": Name;
    T_ZONE_1_2 "" Number (INPUT "shake_table" Derived) "telecom zones 1 and 2": Name;
    T_ZONE_3 "" Number (INPUT "shake_table" Derived) "telecom zone 3": Name;
    T_ZONE_4 "" Number (INPUT "shake_table" Derived) "telecom zone 4": Name;
    SHORT_16 "" Number (INPUT "shake_table" Derived) "with ASCE 7-16": Name;
    SHORT_22 "" Number (INPUT "shake_table" Derived) "with ASCE 7-22": Name;
    SHORT_V "" Number (INPUT "shake_table" Derived) "vertical": Name;
    SHORT_MODERATE "" Number (INPUT "shake_table" Derived) "moderate": Name;
    SHORT_HIGH "" Number (INPUT "shake_table" Derived) "high; moderate performance": Name;
    SHORT_HIGH_PL "" Number (INPUT "shake_table" Derived) "high performance": Name;
    SHORT_1_2 "" Number (INPUT "shake_table" Derived) "zones 1 and 2": Name;
    SHORT_3 "" Number (INPUT "shake_table" Derived) "zone 3": Name;
    SHORT_4 "" Number (INPUT "shake_table" Derived) "zone 4": Name;

    NO_ANCHOR_FORCE "" Number (INPUT "shake_table" Derived) "a test level is no force to design anchors for: a building code divides its force by what the component can give, a test does not": Reason;
    GROUND "" Number (INPUT "shake_table" Derived) "the spectra of IEEE 693 begin at the ground; a cabinet on a floor needs the spectrum of that floor; its expressions are rounded in print and differ by 0.7 % where they meet at 1.1 Hz": Reason;
    ZONES "" Number (INPUT "shake_table" Derived) "the telecom zones stand on a map of their own and take the place of no building code; their numbers are from memory": Reason;
    RIGID "" Number (INPUT "shake_table" Derived) "the acceleration of the table itself is what the spectrum falls to at high frequencies": Reason;
    OF_SITE "" Number (INPUT "shake_table" Derived) "no shake table is described: AC156 is drawn for S_DS and the height of the seismic rule": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "required-spectra", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "required-spectra",
    title: "What must a shake table show?",
    help: "Required response spectra by AC156 in both forms, IEEE 693 and the telecom zones. They are levels for a test and no forces \
           to design anchors for. Outside of the frequencies for which a document gives one, there is none.",
    steps: &[&TEXTS, &shake_table::ac156::TEXTS, &shake_table::ieee_693::TEXTS, &shake_table::telecom::TEXTS],
};

/// Names of the tests, in the order of the words of the field `spectrum`.
pub static TEST_NAMES: [StepId; TESTS] = [
    T_AC156,
    T_AC156_24,
    T_IEEE_LOW,
    T_IEEE_MODERATE,
    T_IEEE_MODERATE_PL,
    T_IEEE_HIGH,
    T_IEEE_HIGH_PL,
    T_ZONE_0,
    T_ZONE_1_2,
    T_ZONE_3,
    T_ZONE_4,
];

/// Spectra that are drawn together.
struct Family {
    name: StepId,
    /// Test, axis and short name of each line.
    lines: &'static [(usize, Axis, StepId)],
    /// Frequencies of the table, Hz.
    frequencies_hz: &'static [f64],
}

static FAMILIES: [Family; 3] = [
    Family {
        name: FAMILY_AC156,
        lines: &[(0, Axis::Horizontal, SHORT_16), (1, Axis::Horizontal, SHORT_22), (0, Axis::Vertical, SHORT_V)],
        frequencies_hz: &[
            0.1, 0.2, 0.3, 0.5, 0.7, 1.0, 1.3, 2.0, 3.5, 5.0, 8.3, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0, 33.3, 50.0,
        ],
    },
    Family {
        name: FAMILY_IEEE,
        lines: &[
            (3, Axis::Horizontal, SHORT_MODERATE),
            (5, Axis::Horizontal, SHORT_HIGH),
            (6, Axis::Horizontal, SHORT_HIGH_PL),
        ],
        frequencies_hz: &[
            0.1, 0.2, 0.3, 0.5, 0.7, 1.0, 1.1, 2.0, 4.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0, 33.0, 50.0,
        ],
    },
    Family {
        name: FAMILY_TELECOM,
        lines: &[(8, Axis::Horizontal, SHORT_1_2), (9, Axis::Horizontal, SHORT_3), (10, Axis::Horizontal, SHORT_4)],
        frequencies_hz: &[0.3, 0.4, 0.5, 0.6, 0.8, 1.0, 1.5, 2.0, 3.0, 5.0, 7.0, 10.0, 15.0, 20.0, 33.0, 50.0],
    },
];

/// Frequencies at which the working reads every spectrum, Hz: one on each straight part.
const TOLD_HZ: [f64; 4] = [0.7, 4.0, 12.0, 40.0];

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let (basis, is_of_site) = basis(project);
    let mut sheet = Sheet::told();
    let spectra: Vec<Result<Spectrum, StepId>> = (0..TESTS).map(|test| spectrum(test, &basis, &mut sheet)).collect();
    let chosen = project.shake_table.as_ref().map(|table| table.test());
    let told = match chosen {
        Some(test) => vec![test],
        None => vec![0, 1, 5, 10],
    };
    for spectrum in told.iter().filter_map(|&test| spectra[test].as_ref().ok()) {
        for frequency_hz in TOLD_HZ {
            let _ = spectrum.at(Axis::Horizontal, frequency_hz, &mut sheet);
        }
        let _ = spectrum.at(Axis::Vertical, TOLD_HZ[1], &mut sheet);
    }
    let mut notes = vec![NO_ANCHOR_FORCE, RIGID, GROUND, ZONES];
    if is_of_site {
        notes.push(OF_SITE);
    }
    let mut tables = vec![levels(&spectra, chosen)];
    let mut pictures = Vec::new();
    for family in &FAMILIES {
        // A line of a test that has no spectrum here is left out of plot and table; why stands in the table of levels.
        let lines: Vec<(Spectrum, &(usize, Axis, StepId))> =
            family.lines.iter().filter_map(|line| Some((*spectra[line.0].as_ref().ok()?, line))).collect();
        if !lines.is_empty() {
            pictures.push(Picture::Plot(drawn(family, &lines, chosen)));
            tables.push(read(family, &lines));
        }
    }
    let sections = sheet.sections.into_iter().filter(|section| !section.steps.is_empty()).collect();
    Ok(Shown { notes, tables, pictures, sections })
}

/// What the spectra are made of, and whether that is the seismic rule's for want of a shake table.
fn basis(project: &Project) -> (Basis, bool) {
    if let Some(table) = &project.shake_table {
        return (Basis::of(&table.values), false);
    }
    let place = project.site.as_ref().and_then(place);
    let is_of_site = place.is_some();
    (Basis { places: place.into_iter().collect(), damping_percent: 2.0 }, is_of_site)
}

/// S_DS and height ratio of a seismic rule that asks for them by these names.
fn place(site: &Site) -> Option<Place> {
    let number = |key: &str| {
        let field = site.rule.fields.iter().position(|field| field.key == key)?;
        site.values.number(field)
    };
    let height_ratio = match (number("attachment_height_m")?, number("roof_height_m")) {
        (height, _) if height <= 0.0 => 0.0,
        (height, Some(roof)) => f64::min(1.0, height / roof),
        _ => 1.0,
    };
    Some(Place { s_ds: number("s_ds")?, height_ratio })
}

fn levels(spectra: &[Result<Spectrum, StepId>], chosen: Option<usize>) -> Table {
    let quiet = &mut Sheet::quiet();
    let mut line = |(test, spectrum): (usize, &Result<Spectrum, StepId>)| {
        let cells = match spectrum {
            Ok(spectrum) => {
                let peak_hz = spectrum.most_from(0.3, |_, a| a);
                let mut number = |axis, frequency_hz: f64| {
                    spectrum.at(axis, frequency_hz, quiet).map_or(Cell::Nothing, Cell::Number)
                };
                vec![
                    Cell::Name(TEST_NAMES[test]),
                    Cell::Number(spectrum.damping_percent),
                    number(Axis::Horizontal, peak_hz),
                    number(Axis::Horizontal, 50.0),
                    number(Axis::Vertical, peak_hz),
                    number(Axis::Vertical, 50.0),
                    Cell::Nothing,
                ]
            }
            Err(reason) => {
                let mut cells = vec![Cell::Nothing; 7];
                cells[0] = Cell::Name(TEST_NAMES[test]);
                cells[6] = Cell::Name(*reason);
                cells
            }
        };
        Line { cells, is_marked: chosen == Some(test) }
    };
    Table {
        name: LEVELS,
        columns: columns![
            Column::words(TEST),
            Column::nearest(DAMPING, Kind::Number),
            Column::up(PEAK_H, Kind::Acceleration),
            Column::up(RIGID_H, Kind::Acceleration),
            Column::up(PEAK_V, Kind::Acceleration),
            Column::up(RIGID_V, Kind::Acceleration),
            Column::words(WHY_NOT),
        ],
        rows: spectra.iter().enumerate().map(&mut line).collect(),
    }
}

type Lines<'s> = [(Spectrum, &'s (usize, Axis, StepId))];

fn drawn(family: &Family, lines: &Lines, chosen: Option<usize>) -> Plot {
    const OTHERS: [Stroke; 3] = [Stroke::Plain, Stroke::Dashed, Stroke::Dotted];
    let curve = |(place, (spectrum, line)): (usize, &(Spectrum, &(usize, Axis, StepId)))| Curve {
        name: PlotName::Row(line.2),
        points: spectrum.line(line.1),
        stroke: if chosen == Some(line.0) && line.1 == Axis::Horizontal { Stroke::Strong } else { OTHERS[place % 3] },
    };
    let axis = |name, kind| plot::Axis { name, kind, scale: AxisScale::Log, ends: None };
    Plot {
        name: family.name,
        x: axis(FREQUENCY, Kind::Frequency),
        y: axis(ACCELERATION, Kind::Acceleration),
        curves: lines.iter().enumerate().map(curve).collect(),
        points: Vec::new(),
        levels: Vec::new(),
        grid: None,
    }
}

fn read(family: &Family, lines: &Lines) -> Table {
    let mut columns = vec![Column::nearest(FREQUENCY, Kind::Frequency)];
    columns.extend(lines.iter().map(|(_, line)| Column::up(line.2, Kind::Acceleration)));
    let row = |&frequency_hz: &f64| {
        let mut cells = vec![Cell::Number(frequency_hz)];
        for (spectrum, line) in lines {
            let found = spectrum.at(line.1, frequency_hz, &mut Sheet::quiet());
            cells.push(found.map_or(Cell::Nothing, Cell::Number));
        }
        Line::plain(cells)
    };
    Table { name: family.name, columns, rows: family.frequencies_hz.iter().map(row).collect() }
}
