//! Which functions and data of the engine's module travel first, and which later.

use std::{collections::HashMap, ops::Range};

use anyhow::{bail, ensure};
use rustc_demangle::demangle;
use walrus::{
    ConstExpr, ElementItems, ElementKind, ExportItem, Function, FunctionId, FunctionKind, Module,
    ir::{Value, Visitor, dfs_in_order},
};

use super::references::{Datum, References, Referred};

/// Where every function goes. Functions are known by their places, which are the same whenever the module is read.
pub struct Plan {
    /// Functions of the first part that the later part calls, in the order of their names.
    pub shared: Vec<usize>,
    /// Functions of the later part that the first part calls or exports, and their places in the function table.
    pub doors: Vec<(usize, u32)>,
    /// Entries of the function table that the later part fills, doors among them.
    pub entries: Vec<(u32, usize)>,
    /// Addresses of the data that only the later part reads, in their order.
    pub data: Vec<Range<u32>>,
}

impl Plan {
    /// `is_later` decides by a function's path; what only later functions call or read goes with them. Errors: a function
    /// of which nobody knows what it refers to, or a table that is not a plain list of functions.
    pub fn new(module: &Module, references: &References, is_later: impl Fn(&str) -> bool) -> anyhow::Result<Plan> {
        let graph = Graph::of(module, references)?;
        let named_later = graph.named(module, is_later)?;
        let first = graph.first(module, references, &named_later);
        let called_by = |wanted: bool| {
            let mut called = vec![false; graph.ids.len()];
            let callers = (0..graph.ids.len()).filter(|&place| first.functions[place] == wanted);
            callers.flat_map(|place| &graph.calls[place]).for_each(|&place| called[place] = true);
            called
        };
        let (by_first, by_later) = (called_by(true), called_by(false));
        let (firsts, laters): (Vec<usize>, Vec<usize>) =
            (0..graph.ids.len()).partition(|&place| first.functions[place]);

        let mut end = graph.entries.iter().map(|&(slot, _)| slot + 1).max().unwrap_or(1);
        let mut entries: Vec<(u32, usize)> =
            graph.entries.iter().copied().filter(|&(_, place)| !first.functions[place]).collect();
        let mut doors = Vec::new();
        for place in laters.into_iter().filter(|place| by_first[*place] || graph.exported.contains(place)) {
            let known = entries.iter().find(|&&(_, of)| of == place).map(|&(slot, _)| slot);
            let slot = known.unwrap_or_else(|| {
                entries.push((end, place));
                end += 1;
                end - 1
            });
            doors.push((place, slot));
        }
        let shared = firsts.into_iter().filter(|&place| by_later[place]).collect();
        Ok(Plan { shared, doors, entries, data: free_of(&references.data, &first.data) })
    }
}

/// Who calls whom in the module. Every function is known by its place among [`ids`].
struct Graph<'a> {
    ids: Vec<FunctionId>,
    names: Vec<&'a str>,
    calls: Vec<Vec<usize>>,
    exported: Vec<usize>,
    started: Option<usize>,
    /// The function table: slots and the functions in them.
    entries: Vec<(u32, usize)>,
}

/// What the first part holds.
struct First {
    functions: Vec<bool>,
    data: Vec<bool>,
}

impl<'a> Graph<'a> {
    fn of(module: &'a Module, references: &References) -> anyhow::Result<Graph<'a>> {
        let ids = ids(module);
        let places: HashMap<FunctionId, usize> = ids.iter().enumerate().map(|(place, &id)| (id, place)).collect();
        let names: Vec<&str> = ids.iter().map(|&id| module.funcs.get(id).name.as_deref().unwrap_or_default()).collect();
        for (&id, name) in ids.iter().zip(&names).filter(|(id, _)| !is_imported(module, **id)) {
            let is_known = references.functions.contains_key(*name);
            ensure!(is_known || is_made(name), "what the function {name:?} ({id:?}) refers to is not known");
        }
        let exported = module.exports.iter().filter_map(|export| match export.item {
            ExportItem::Function(id) => Some(places[&id]),
            _ => None,
        });
        Ok(Graph {
            calls: ids.iter().map(|&id| called(module.funcs.get(id), &places)).collect(),
            exported: exported.collect(),
            started: module.start.map(|id| places[&id]),
            entries: table_entries(module)?.into_iter().map(|(slot, id)| (slot, places[&id])).collect(),
            names,
            ids,
        })
    }

    fn named(&self, module: &Module, is_later: impl Fn(&str) -> bool) -> anyhow::Result<Vec<bool>> {
        let named: Vec<bool> = (self.ids.iter().zip(&self.names))
            .map(|(&id, name)| !is_imported(module, id) && is_later(&format!("{:#}", demangle(name))))
            .collect();
        ensure!(named.contains(&true), "no function of the engine's module goes into its later part");
        Ok(named)
    }

    /// What can be reached from the exports without passing a function that is named for later.
    fn first(&self, module: &Module, references: &References, named_later: &[bool]) -> First {
        let mut places_of: HashMap<&str, Vec<usize>> = HashMap::new();
        self.names.iter().enumerate().for_each(|(place, name)| places_of.entry(name).or_default().push(place));
        // Nobody's list of references has a function of the binding tool's own making.
        let is_unlisted = |place: &usize| !references.functions.contains_key(self.names[*place]);
        let made = self.entries.iter().map(|&(_, place)| place).filter(is_unlisted);
        let mut waiting: Vec<usize> = self.exported.iter().copied().chain(self.started).chain(made).collect();
        let mut first = First {
            functions: self.ids.iter().map(|&id| is_imported(module, id)).collect(),
            data: vec![false; references.data.len()],
        };
        while let Some(place) = waiting.pop() {
            if first.functions[place] || named_later[place] {
                continue;
            }
            first.functions[place] = true;
            waiting.extend(&self.calls[place]);
            for name in references
                .functions
                .get(self.names[place])
                .into_iter()
                .flat_map(|referred| first.read(referred, references))
            {
                waiting.extend(places_of.get(name).into_iter().flatten());
            }
        }
        first
    }
}

impl First {
    /// Takes in the data that are referred to; gives the functions whose address is known from there.
    fn read<'r>(&mut self, referred: &'r Referred, references: &'r References) -> Vec<&'r str> {
        let mut functions = Vec::new();
        let mut waiting = vec![referred];
        while let Some(referred) = waiting.pop() {
            functions.extend(referred.functions.iter().map(String::as_str));
            for &place in &referred.data {
                if !self.data[place] {
                    self.data[place] = true;
                    waiting.push(&references.data[place].refers);
                }
            }
        }
        functions
    }
}

/// Addresses that belong to data of which none is reached. Shorter pieces than a segment costs stay where they are.
fn free_of(data: &[Datum], is_reached: &[bool]) -> Vec<Range<u32>> {
    const SEGMENT_BYTES: u32 = 16;
    let sorted = |wanted: bool| {
        let mut ranges: Vec<Range<u32>> =
            data.iter().zip(is_reached).filter(|&(_, &is)| is == wanted).map(|(datum, _)| datum.at.clone()).collect();
        ranges.sort_unstable_by_key(|range| range.start);
        ranges
    };
    let mut free: Vec<Range<u32>> = Vec::new();
    for range in sorted(false) {
        match free.last_mut() {
            Some(last) if range.start <= last.end => last.end = last.end.max(range.end),
            _ => free.push(range),
        }
    }
    for kept in sorted(true) {
        free = free
            .into_iter()
            .flat_map(|range| [range.start..range.end.min(kept.start), range.start.max(kept.end)..range.end])
            .filter(|range| range.start < range.end)
            .collect();
    }
    free.retain(|range| range.end - range.start >= SEGMENT_BYTES);
    free
}

/// All functions of a module; read again, it has them in the same order.
pub fn ids(module: &Module) -> Vec<FunctionId> {
    module.funcs.iter().map(Function::id).collect()
}

fn is_imported(module: &Module, id: FunctionId) -> bool {
    matches!(module.funcs.get(id).kind, FunctionKind::Import(_))
}

struct Called<'a> {
    places: &'a HashMap<FunctionId, usize>,
    found: Vec<usize>,
}

impl<'instr> Visitor<'instr> for Called<'_> {
    fn visit_function_id(&mut self, id: &FunctionId) {
        self.found.push(self.places[id]);
    }
}

/// The functions that a function names.
fn called(function: &Function, places: &HashMap<FunctionId, usize>) -> Vec<usize> {
    let FunctionKind::Local(local) = &function.kind else { return Vec::new() };
    let mut visitor = Called { places, found: Vec::new() };
    dfs_in_order(&mut visitor, local, local.entry_block());
    visitor.found
}

/// Whether the binding tool made the function of this name: it refers to no data.
fn is_made(name: &str) -> bool {
    name.is_empty() || name.ends_with(" shim") || name.contains(" -> ") || name.starts_with("__")
}

/// The slots of the function table and what stands in them.
pub fn table_entries(module: &Module) -> anyhow::Result<Vec<(u32, FunctionId)>> {
    let mut entries = Vec::new();
    for element in module.elements.iter() {
        let ElementKind::Active { offset: ConstExpr::Value(Value::I32(start)), .. } = &element.kind else {
            continue;
        };
        let ElementItems::Functions(functions) = &element.items else {
            bail!("the engine's table of functions is written in a way that cannot be cut");
        };
        entries.extend((*start as u32..).zip(functions.iter().copied()));
    }
    Ok(entries)
}
