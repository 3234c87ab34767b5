//! Walks the tree of a text by tables of fields and collects the faults.

use alloc::string::String;
use alloc::vec::Vec;

use super::allowed::LimitUnits;
use super::fault::{Fault, Problem, push_whole};
use super::open::{Given, Open, Setting};
use super::text::{Json, Member, Node, Trouble};

/// Most faults that are listed; the others are counted.
pub const FAULTS_MAX: usize = 200;
/// Most characters of what was given that a fault repeats.
const GIVEN_MAX: usize = 60;

/// Collects what is wrong with a text.
pub struct Reader<'t> {
    text: &'t str,
    /// The units in which limits are told.
    pub units: LimitUnits,
    /// Names of the contents with their places in the file, sorted by name, for the fields that refer to them; `None`
    /// where the contents could not be read, so that one fault there does not make a hundred here.
    pub contents: Option<Vec<(&'t str, usize)>>,
    /// What is not known, in the order in which it is read.
    pub open: Vec<Open>,
    /// Other values for what stands at some places of the text.
    pub settings: &'t [Setting],
    /// Every number that is read, where they are asked for.
    pub numbers: Option<Vec<Given>>,
    /// Whether what is read now has to be known.
    pub is_closed: bool,
    /// The first faults in the order of the text, one more than are listed, so that a text of a hundred thousand faults
    /// costs neither time nor memory.
    found: Vec<Found>,
    count: usize,
}

/// A value of the tree with its path.
#[derive(Clone, Debug)]
pub struct Spot<'n> {
    /// `cabinet.feet[2]`
    pub path: String,
    /// The value.
    pub node: &'n Node<'n>,
}

struct Found {
    at: usize,
    fault: Fault,
}

impl<'n> Spot<'n> {
    /// The member of an object; `None` where it is absent, null, or this is no object.
    pub fn member(&self, key: &str) -> Option<Spot<'n>> {
        let member = self.members().iter().find(|member| member.key == key)?;
        (member.node.json != Json::Null).then(|| self.child(member))
    }

    /// Whether it is an object.
    pub fn is_object(&self) -> bool {
        matches!(self.node.json, Json::Object(_))
    }

    /// How many items a list has; `None` where this is no list.
    pub fn item_count(&self) -> Option<usize> {
        match &self.node.json {
            Json::List(nodes) => Some(nodes.len()),
            _ => None,
        }
    }

    /// The members of an object; none where it is something else.
    pub fn members(&self) -> &'n [Member<'n>] {
        match &self.node.json {
            Json::Object(members) => members,
            _ => &[],
        }
    }

    /// The value of a member of this object, null or not.
    pub fn child(&self, member: &'n Member<'n>) -> Spot<'n> {
        Spot { path: child_path(&self.path, &member.key), node: &member.node }
    }

    /// An item of a list.
    pub fn item(&self, place: usize, node: &'n Node<'n>) -> Spot<'n> {
        let mut path = self.path.clone();
        path.push('[');
        push_whole(&mut path, place);
        path.push(']');
        Spot { path, node }
    }
}

impl<'t> Reader<'t> {
    /// A reader of this text, telling limits in these units.
    pub fn new(text: &'t str, units: LimitUnits) -> Reader<'t> {
        Reader {
            text,
            units,
            contents: None,
            open: Vec::new(),
            settings: &[],
            numbers: None,
            is_closed: false,
            found: Vec::new(),
            count: 0,
        }
    }

    /// How many faults were found so far.
    pub fn count(&self) -> usize {
        self.count
    }

    /// A fault of a value.
    pub fn fault(&mut self, spot: &Spot, problem: Problem, allowed: &str) {
        self.push(spot.node.from, spot.path.clone(), problem, self.source(spot.node), allowed);
    }

    /// A key of an object that has to be there and is not, or is null.
    pub fn missing(&mut self, parent: &Spot, key: &str, allowed: &str) {
        self.member_fault(parent, key, Problem::Missing, allowed);
    }

    /// A fault of a member of an object, whether the member is there or not.
    #[inline(never)]
    pub fn member_fault(&mut self, parent: &Spot, key: &str, problem: Problem, allowed: &str) {
        let (at, given) = match parent.members().iter().find(|member| member.key == key) {
            Some(member) => (member.node.from, self.source(&member.node)),
            None => (parent.node.from, ""),
        };
        self.push(at, child_path(&parent.path, key), problem, given, allowed);
    }

    /// The trouble that ended the reading of the text.
    pub fn trouble(&mut self, trouble: Trouble) {
        let rest = self.text.get(trouble.at..).unwrap_or("").lines().next().unwrap_or("");
        // Of a text that is too long nothing is repeated: whoever reads it may have cut it.
        let given = if trouble.problem == Problem::TooLong { "" } else { rest };
        self.push(trouble.at, String::new(), trouble.problem, given, trouble.allowed);
    }

    /// A fault of a key of an object.
    pub fn key_fault(&mut self, parent: &Spot, member: &Member, problem: Problem, allowed: &str) {
        self.push(member.at, child_path(&parent.path, &member.key), problem, self.source(&member.node), allowed);
    }

    /// A list that is too long.
    pub fn too_many(&mut self, spot: &Spot, count: usize, max: usize) {
        let (mut given, mut allowed) = (String::new(), String::from("at most "));
        push_whole(&mut given, count);
        push_whole(&mut allowed, max);
        self.push(spot.node.from, spot.path.clone(), Problem::TooMany, &given, &allowed);
    }

    /// All faults in the order of the text, 200 at most, then the count of the others.
    pub fn faults(self) -> Vec<Fault> {
        let mut faults = Vec::new();
        let mut place = Place { at: 0, line: 1, column: 1 };
        for found in self.found {
            place.go_to(self.text, found.at);
            let mut fault = found.fault;
            if faults.len() == FAULTS_MAX {
                let mut given = String::new();
                push_whole(&mut given, self.count - FAULTS_MAX);
                fault =
                    Fault { path: String::new(), problem: Problem::MoreFaults, given, allowed: String::new(), ..fault };
            }
            faults.push(Fault { line: place.line, column: place.column, ..fault });
        }
        faults
    }

    /// The text of a value, as it is written.
    pub fn source(&self, node: &Node) -> &'t str {
        self.text.get(node.from..node.to).unwrap_or("")
    }

    #[inline(never)]
    fn push(&mut self, at: usize, path: String, problem: Problem, given: &str, allowed: &str) {
        self.count += 1;
        // Faults of one place stay in the order in which they are found.
        let place = self.found.partition_point(|found| found.at <= at);
        if place <= FAULTS_MAX {
            self.found.truncate(FAULTS_MAX);
            let fault = Fault { path, problem, given: cut(given), allowed: allowed.into(), line: 0, column: 0 };
            self.found.insert(place, Found { at, fault });
        }
    }
}

/// The path of a member: `cabinet.frame`, or `drawn_out_mm["tray 1"]` where the key is no plain word.
pub fn child_path(parent: &str, key: &str) -> String {
    let mut path = String::from(parent);
    let plain = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'_';
    if !key.is_empty() && key.bytes().all(plain) && key.len() <= GIVEN_MAX {
        if !path.is_empty() {
            path.push('.');
        }
        path.push_str(key);
        return path;
    }
    path.push_str("[\"");
    for letter in cut(key).chars() {
        if matches!(letter, '"' | '\\') {
            path.push('\\');
        }
        path.push(letter);
    }
    path.push_str("\"]");
    path
}

/// The first characters of a text on one line, runs of space and control characters as one space.
pub(crate) fn cut(text: &str) -> String {
    let mut short = String::new();
    let mut count = 0;
    let mut space = false;
    for letter in text.chars() {
        let blank = letter.is_control() || letter == ' ';
        if blank && space {
            continue;
        }
        if count == GIVEN_MAX {
            short.push('…');
            break;
        }
        space = blank;
        short.push(if blank { ' ' } else { letter });
        count += 1;
    }
    short
}

/// Line and column of an offset, both from 1, counted on from the last offset.
struct Place {
    at: usize,
    line: u32,
    column: u32,
}

impl Place {
    fn go_to(&mut self, text: &str, at: usize) {
        for letter in text.get(self.at..at).unwrap_or("").chars() {
            self.column += 1;
            if letter == '\n' {
                self.line += 1;
                self.column = 1;
            }
        }
        self.at = at;
    }
}
