//! Text into project, or the list of what is wrong with it.

use alloc::string::String;
use alloc::vec::Vec;

use super::draft::{Draft, Item, draft};
use super::{Anchorage, FORMAT, FORMAT_NAME, PART_FILLED, Project, Site, TITLE, WRITTEN_BY};
use super::{Drilling, Neighbour, neighbour, row::Row};
use super::{agreement::agreement, fingerprint::fingerprint};
use crate::cabinet::{self, Anchor, Cabinet, Foot, Frame, LiftingPoint, Stem, anchor, foot, frame, lifting_point};
use crate::floor::Floor;
use crate::geometry::Rectangle;
use crate::geometry::{Point, Size};
use crate::input::corner::{CORNERS_MAX, corner_count, corners, settings};
use crate::input::open::{Open, Setting};
use crate::input::text::{self, Json, Trouble};
use crate::input::{Fault, Given, LimitUnits, Problem, Reader, Spot, Values};
use crate::load_out::{Content, State, content, state};
use crate::motion::MotionSetting;
use crate::shake_table::ShakeTable;
use crate::slab::{self, Slab, edge, opening};

/// Corners that are read to find one that may stand in.
const STAND_INS_MAX: usize = 16;

/// Reads a project file. The page, the command line and the tests all read here, so that all give the same faults.
///
/// The text is in SI; `units` only says in which units the faults tell what is allowed: those of the file, or those in
/// which a form shows its fields in a system. Errors: every fault in the order of the text, 200 at most and then the
/// count of the others; a text that is not JSON or another format has one.
///
/// ```
/// use steadfoot::input::LimitUnits;
/// let text = r#"{ "format": "steadfoot 1", "cabinet": { "width_mm": 600, "depth_mm": 800, "height_mm": 0,
///     "frame": { "mass_kg": 200, "centre_mm": [0, 0, 900] } } }"#;
/// let faults = steadfoot::project::read(text, LimitUnits::File).unwrap_err();
/// assert_eq!(faults.len(), 1);
/// assert_eq!(faults[0].path, "cabinet.height_mm");
/// assert!(steadfoot::project::read(&text.replace("\"height_mm\": 0", "\"height_mm\": 2000"), LimitUnits::File).is_ok());
/// ```
///
/// Where a file leaves something open, the project is that of what stands in for it: the middle of each range and the
/// first word of each set, or, where that cannot be built, the first corner of them that can.
pub fn read(text: &str, units: impl Into<LimitUnits>) -> Result<Project, Vec<Fault>> {
    read_in(text, units.into())
}

/// The sentence of every fault of a text, in the order of [`read`]; none where it has no fault.
///
/// A sentence repeats what the text writes, so what it allows is in the units of the text, whatever a form shows.
pub fn fault_sentences(text: &str) -> Vec<String> {
    read_in(text, LimitUnits::File).map_or_else(|faults| faults.iter().map(Fault::sentence).collect(), |_| Vec::new())
}

fn read_in(text: &str, units: LimitUnits) -> Result<Project, Vec<Fault>> {
    let refused = match attempt(text, units, &[]) {
        Ok(project) => return Ok(project),
        Err(refused) => refused,
    };
    // Not all of them: somebody may be typing, and waits.
    let step = (corner_count(&refused.open).min(CORNERS_MAX as f64) as usize / STAND_INS_MAX) | 1;
    let mut others = corners(&refused.open).step_by(step);
    let built = others.find_map(|values| attempt(text, units, &settings(&refused.open, &values)).ok());
    built.ok_or(refused.faults)
}

/// Reads a project file with other values at some places of its text, such as one of those that are not known; nothing
/// is open in what comes out.
///
/// Errors as [`read`] in the units of the file, so a value that the rest of the file does not bear is found.
pub fn read_set(text: &str, settings: &[Setting]) -> Result<Project, Vec<Fault>> {
    let project = attempt(text, LimitUnits::File, settings).map_err(|refused| refused.faults)?;
    Ok(Project { open: Vec::new(), ..project })
}

/// Every number that stands in a project file without faults, in the order in which they are read; for what is not
/// known, what stands in for it.
pub fn numbers(project: &Project) -> Vec<Given> {
    let Ok(root) = text::read(&project.source) else { return Vec::new() };
    let mut reader = Reader::new(&project.source, LimitUnits::File);
    reader.numbers = Some(Vec::new());
    draft(&mut reader, Spot { path: String::new(), node: &root });
    let mut numbers = reader.numbers.unwrap_or_default();
    for number in &mut numbers {
        // What stands in need not be the middle.
        if let Some(open) = project.open.iter().find(|open| open.at == number.at) {
            number.value = open.stand_in;
        }
    }
    numbers
}

/// What is wrong with a text, and what it leaves open, where only that may be what is wrong.
struct Refused {
    faults: Vec<Fault>,
    open: Vec<Open>,
}

fn attempt(text: &str, units: LimitUnits, settings: &[Setting]) -> Result<Project, Refused> {
    let refuse = |faults: Vec<Fault>| Refused { faults, open: Vec::new() };
    let root = text::read(text).map_err(|trouble| refuse(only(text, units, trouble)))?;
    let mut reader = Reader::new(text, units);
    reader.settings = settings;
    let spot = Spot { path: String::new(), node: &root };
    if let Some(format) = spot.member(super::FIELDS[FORMAT].key)
        && format.node.json != Json::Text(FORMAT_NAME.into())
    {
        // Whatever else stands in a file of another format would only be called wrong.
        reader.fault(&format, Problem::NotAFormat, "\"steadfoot 1\"");
        return Err(refuse(reader.faults()));
    }
    if !spot.is_object() {
        reader.fault(&spot, Problem::NotAnObject, "an object in braces");
        return Err(refuse(reader.faults()));
    }
    let mut draft = draft(&mut reader, spot);
    let is_sound = reader.count() == 0;
    agreement(&mut reader, &draft);
    let open = core::mem::take(&mut reader.open);
    if reader.count() > 0 {
        return Err(Refused { faults: reader.faults(), open: if is_sound { open } else { Vec::new() } });
    }
    let fingerprint = fingerprint(&draft, &open);
    match project(&mut draft, fingerprint) {
        Some(project) => Ok(Project { open, source: text.into(), ..project }),
        None => panic!("an input without faults lacks a required part"),
    }
}

/// Reads a project file from bytes, which may be anything; errors as [`read`], and a fault where they are no UTF-8 text.
///
/// ```
/// use steadfoot::input::LimitUnits;
/// assert_eq!(steadfoot::project::read_bytes(&[0xff], LimitUnits::File).unwrap_err().len(), 1);
/// ```
pub fn read_bytes(bytes: &[u8], units: impl Into<LimitUnits>) -> Result<Project, Vec<Fault>> {
    let units = units.into();
    if bytes.len() > text::TEXT_MAX_BYTES {
        // What is too long is not searched for what is no text.
        return Err(only("", units, text::TOO_LONG));
    }
    match core::str::from_utf8(bytes) {
        Ok(text) => read_in(text, units),
        Err(error) => {
            let valid = core::str::from_utf8(&bytes[..error.valid_up_to()]).unwrap_or("");
            let problem = Problem::NotJson;
            Err(only(valid, units, Trouble { at: valid.len(), problem, allowed: "text in UTF-8" }))
        }
    }
}

fn only(text: &str, units: LimitUnits, trouble: Trouble) -> Vec<Fault> {
    let mut reader = Reader::new(text, units);
    reader.trouble(trouble);
    reader.faults()
}

/// The project of a draft without faults; `None` only if a required part is absent, which would have been one.
fn project(draft: &mut Draft, fingerprint: String) -> Option<Project> {
    let cabinet = &draft.cabinet.as_ref()?.values;
    let frame = &draft.frame.as_ref()?.values;
    let anchors = draft.anchors.iter().zip(core::mem::take(&mut draft.own));
    Some(Project {
        title: draft.top.text(TITLE).unwrap_or("").into(),
        written_by: draft.top.text(WRITTEN_BY).map(String::from),
        cabinet: Cabinet {
            width_mm: cabinet.given(cabinet::WIDTH),
            depth_mm: cabinet.given(cabinet::DEPTH),
            height_mm: cabinet.given(cabinet::HEIGHT),
            frame: Frame { mass_kg: frame.given(frame::MASS), centre_mm: frame.triple(frame::CENTRE) },
            feet: all(&draft.feet, foot_of),
            anchors: anchors.map(|(anchor, own)| anchor_of(&anchor.values, own)).collect(),
            lifting_points: all(&draft.lifting_points, |values| LiftingPoint {
                at_mm: values.triple(lifting_point::AT),
            }),
        },
        contents: all(&draft.contents, content_of),
        is_part_filled: draft.top.flag(PART_FILLED),
        states: all(&draft.states, |values| State {
            name: name_of(values, state::NAME),
            without: values.contents(state::WITHOUT).into(),
            drawn_out_mm: values.numbers_of_contents(state::DRAWN_OUT).into(),
        }),
        slab: draft.slab.as_ref().zip(draft.edges.as_ref()).map(|(slab, edges)| Slab {
            strength_mpa: slab.values.given(slab::STRENGTH),
            thickness_mm: slab.values.given(slab::THICKNESS),
            outline: edge::outline(&edges.values),
            boundary: draft.boundary.as_ref().map_or(Rectangle::EVERYWHERE, |lines| edge::outline(&lines.values)),
            openings: all(&draft.openings, opening::rectangle),
            is_cracked: slab.values.flag(slab::CRACKED),
            friction: slab.values.given(slab::FRICTION),
        }),
        motion: draft.motion.as_ref().map(|item| MotionSetting::new(&item.values)),
        site: draft.site.as_mut().and_then(|site| Some(Site { rule: site.rule?, values: site.item.take_values() })),
        anchorage: draft
            .anchorage
            .as_mut()
            .and_then(|anchorage| Some(Anchorage { rule: anchorage.rule?, values: anchorage.item.take_values() })),
        row: draft.row.as_ref().map(|row| Row::new(&row.values)),
        drilling: draft.drilling.as_ref().map(|drilling| Drilling::new(&drilling.values)),
        floor: values_of(&mut draft.floor).map(|values| Floor {
            values,
            raised: values_of(&mut draft.raised),
            casters: values_of(&mut draft.casters),
            standing: values_of(&mut draft.standing),
        }),
        neighbours: all(&draft.neighbours, |values| {
            let [x_mm, y_mm] = values.pair(neighbour::AT);
            Neighbour { name: name_of(values, neighbour::NAME), at: Point::new(x_mm, y_mm) }
        }),
        structure: values_of(&mut draft.structure),
        moving: values_of(&mut draft.moving),
        lifting: values_of(&mut draft.lifting),
        shake_table: values_of(&mut draft.shake_table).map(|values| ShakeTable { values }),
        fingerprint,
        open: Vec::new(),
        source: String::new(),
    })
}

/// Takes the values of a part out of a draft that is thrown away next.
fn values_of(part: &mut Option<Item>) -> Option<Values> {
    part.as_mut().map(Item::take_values)
}

fn all<T>(items: &[Item], make: impl Fn(&Values) -> T) -> Vec<T> {
    items.iter().map(|item| make(&item.values)).collect()
}

fn foot_of(values: &Values) -> Foot {
    let ([x_mm, y_mm], [width_mm, depth_mm]) = (values.pair(foot::AT), values.pair(foot::SIZE));
    let (diameter, length) = (values.number(foot::STEM_DIAMETER), values.number(foot::STEM_LENGTH));
    Foot {
        name: name_of(values, foot::NAME),
        at: Point::new(x_mm, y_mm),
        size: Size::new(width_mm, depth_mm),
        stiffness_n_per_mm: values.number(foot::STIFFNESS),
        stem: diameter.zip(length).map(|(diameter_mm, length_mm)| Stem { diameter_mm, length_mm }),
        pad_stiffness_n_per_mm: values.number(foot::PAD_STIFFNESS),
        gap_mm: values.given(foot::GAP),
    }
}

fn anchor_of(values: &Values, own: Values) -> Anchor {
    let [x_mm, y_mm] = values.pair(anchor::AT);
    Anchor {
        name: values.text(anchor::NAME).map(String::from),
        at: Point::new(x_mm, y_mm),
        as_built: values.numbers(anchor::AS_BUILT).map(|[x_mm, y_mm, _]| Point::new(x_mm, y_mm)),
        stiffness_n_per_mm: values.number(anchor::STIFFNESS),
        clip_stiffness_n_per_mm: values.number(anchor::CLIP),
        bracket_mm: values
            .number(anchor::BRACKET_TOE)
            .zip(values.number(anchor::BRACKET_LEVER))
            .map(|(toe, lever)| [toe, lever]),
        own,
    }
}

fn content_of(values: &Values) -> Content {
    Content {
        name: name_of(values, content::NAME),
        mass_kg: values.given(content::MASS),
        bottom_mm: values.given(content::BOTTOM),
        size_mm: values.triple(content::SIZE),
        offset_mm: values.pair(content::OFFSET),
        drawn_out_mm: values.given(content::DRAWN_OUT),
        travel_mm: values.number(content::TRAVEL),
    }
}

fn name_of(values: &Values, field: usize) -> String {
    values.text(field).unwrap_or("").into()
}
