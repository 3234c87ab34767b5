//! The engine's module cut in two: what the landing page needs travels first, the rest when it is wanted.
//!
//! The later part shares the first one's memory, tables and globals, and calls its functions by the names under which
//! the first part exports them. The first part reaches the later one through places of the function table that are
//! empty until the later part fills them: a call before that is a trap, never a wrong number.

use std::ops::Range;

use anyhow::{Context, bail, ensure};
use walrus::{
    ConstExpr, DataKind, ElementItems, ElementKind, FunctionBuilder, FunctionId, FunctionKind, GlobalKind, ImportId,
    ImportKind, ImportedFunction, LocalFunction, Module, ModuleConfig, TableId, ir::Value, passes,
};

use super::{
    plan::{Plan, ids, table_entries},
    references::References,
};

/// The module from which the later part imports everything.
const FIRST: &str = "first";

/// The two parts.
pub struct Cut {
    pub first: Vec<u8>,
    pub later: Vec<u8>,
}

/// Cuts a bound module that still has its names. `is_later` decides by a function's path; what only later functions call
/// goes with them. Errors: a module without names, or with more than one list of table entries.
pub fn cut(wasm: &[u8], references: &References, is_later: impl Fn(&str) -> bool) -> anyhow::Result<Cut> {
    let whole = parsed(wasm)?;
    let plan = Plan::new(&whole, references, is_later)?;
    Ok(Cut { first: plan.first(parsed(wasm)?)?, later: plan.later(parsed(wasm)?)? })
}

fn parsed(wasm: &[u8]) -> anyhow::Result<Module> {
    let mut module = ModuleConfig::new()
        .generate_name_section(false)
        .generate_producers_section(false)
        .parse(wasm)
        .context("the engine's module cannot be read")?;
    for linkers in ["linking", "reloc.CODE", "reloc.DATA", "target_features"] {
        module.customs.remove_raw(linkers);
    }
    Ok(module)
}

impl Plan {
    /// The module without the later functions: those that are called from here stay as doors through the table.
    fn first(&self, mut module: Module) -> anyhow::Result<Vec<u8>> {
        let ids = ids(&module);
        let table = function_table(&module)?;
        for &(place, slot) in &self.doors {
            let door = door(&mut module, ids[place], table, slot);
            module.funcs.get_mut(ids[place]).kind = FunctionKind::Local(door);
        }
        let kept: Vec<(u32, FunctionId)> = {
            let entries = table_entries(&module)?;
            let gone: Vec<u32> = self.entries.iter().map(|&(slot, _)| slot).collect();
            entries.into_iter().filter(|(slot, _)| !gone.contains(slot)).collect()
        };
        set_entries(&mut module, table, &kept);
        self.widen(&mut module, table);
        set_data(&mut module, |at| {
            let mut start = at.start;
            let mut kept = Vec::new();
            for free in self.data.iter().filter_map(|free| common(free, at)) {
                kept.push(start..free.start);
                start = free.end;
            }
            kept.push(start..at.end);
            kept
        })?;
        for (name, &place) in self.shared.iter().enumerate() {
            module.exports.add(&name.to_string(), ids[place]);
        }
        for (name, id) in module.memories.iter().map(|one| one.id()).enumerate().collect::<Vec<_>>() {
            module.exports.add(&format!("m{name}"), id);
        }
        for (name, id) in module.tables.iter().map(|one| one.id()).enumerate().collect::<Vec<_>>() {
            module.exports.add(&format!("t{name}"), id);
        }
        for (name, id) in module.globals.iter().map(|one| one.id()).enumerate().collect::<Vec<_>>() {
            module.exports.add(&format!("g{name}"), id);
        }
        passes::gc::run(&mut module);
        Ok(module.emit_wasm())
    }

    /// Room in the function table for the doors, the same in both parts.
    fn widen(&self, module: &mut Module, table: TableId) {
        let end = self.entries.iter().map(|&(slot, _)| u64::from(slot) + 1).max().unwrap_or(0);
        let table = module.tables.get_mut(table);
        table.initial = table.initial.max(end);
        table.maximum = table.maximum.map(|maximum| maximum.max(end));
    }

    /// The later functions alone; everything else is imported from the first part.
    fn later(&self, mut module: Module) -> anyhow::Result<Vec<u8>> {
        let ids = ids(&module);
        let table = function_table(&module)?;
        module.start = None;
        for id in module.exports.iter().map(|export| export.id()).collect::<Vec<_>>() {
            module.exports.delete(id);
        }
        set_data(&mut module, |at| self.data.iter().filter_map(|free| common(free, at)).collect())?;
        // What the first part itself imports comes from the first part as well.
        for import in module.imports.iter().map(|import| import.id()).collect::<Vec<_>>() {
            module.imports.delete(import);
        }
        for (name, &place) in self.shared.iter().enumerate() {
            let ty = module.funcs.get(ids[place]).ty();
            let import = module.imports.add(FIRST, &name.to_string(), ids[place]);
            module.funcs.get_mut(ids[place]).kind = FunctionKind::Import(ImportedFunction { import, ty });
        }
        import_the_rest(&mut module);
        self.widen(&mut module, table);
        let entries: Vec<(u32, FunctionId)> = self.entries.iter().map(|&(slot, place)| (slot, ids[place])).collect();
        set_entries(&mut module, table, &entries);
        passes::gc::run(&mut module);
        Ok(module.emit_wasm())
    }
}

fn import_the_rest(module: &mut Module) {
    let add =
        |module: &mut Module, name: String, kind: ImportKind| -> ImportId { module.imports.add(FIRST, &name, kind) };
    for (name, id) in module.memories.iter().map(|one| one.id()).enumerate().collect::<Vec<_>>() {
        module.memories.get_mut(id).import = Some(add(module, format!("m{name}"), id.into()));
    }
    for (name, id) in module.tables.iter().map(|one| one.id()).enumerate().collect::<Vec<_>>() {
        module.tables.get_mut(id).import = Some(add(module, format!("t{name}"), id.into()));
    }
    for (name, id) in module.globals.iter().map(|one| one.id()).enumerate().collect::<Vec<_>>() {
        module.globals.get_mut(id).kind = GlobalKind::Import(add(module, format!("g{name}"), id.into()));
    }
}

/// A function that only calls what stands at a place of the table.
fn door(module: &mut Module, id: FunctionId, table: TableId, slot: u32) -> LocalFunction {
    let ty = module.funcs.get(id).ty();
    let (parameters, results) = module.types.params_results(ty);
    let (parameters, results) = (parameters.to_vec(), results.to_vec());
    let mut builder = FunctionBuilder::new(&mut module.types, &parameters, &results);
    let arguments: Vec<_> = parameters.iter().map(|&kind| module.locals.add(kind)).collect();
    let mut body = builder.func_body();
    for &argument in &arguments {
        body.local_get(argument);
    }
    body.i32_const(slot as i32).call_indirect(ty, table);
    builder.local_func(arguments)
}

/// The table of functions: the one that has entries.
fn function_table(module: &Module) -> anyhow::Result<TableId> {
    let mut tables = module.elements.iter().filter_map(|element| match element.kind {
        ElementKind::Active { table, .. } => Some(table),
        _ => None,
    });
    let table = tables.next().context("the engine's module has no table of functions")?;
    ensure!(tables.all(|other| other == table), "the engine's module has two tables of functions");
    Ok(table)
}

/// The table's entries become these alone.
fn set_entries(module: &mut Module, table: TableId, entries: &[(u32, FunctionId)]) {
    let mut sorted = entries.to_vec();
    sorted.sort_unstable_by_key(|&(slot, _)| slot);
    for id in module.elements.iter().map(|element| element.id()).collect::<Vec<_>>() {
        module.elements.delete(id);
    }
    module.tables.get_mut(table).elem_segments.clear();
    for run in sorted.chunk_by(|before, after| before.0 + 1 == after.0) {
        let offset = ConstExpr::Value(Value::I32(run[0].0 as i32));
        let functions = run.iter().map(|&(_, id)| id).collect();
        let id = module.elements.add(ElementKind::Active { table, offset }, ElementItems::Functions(functions));
        module.tables.get_mut(table).elem_segments.insert(id);
    }
}

fn common(one: &Range<u32>, other: &Range<u32>) -> Option<Range<u32>> {
    let both = one.start.max(other.start)..one.end.min(other.end);
    (both.start < both.end).then_some(both)
}

/// Every data segment becomes these parts of itself.
fn set_data(module: &mut Module, parts: impl Fn(&Range<u32>) -> Vec<Range<u32>>) -> anyhow::Result<()> {
    for id in module.data.iter().map(|data| data.id()).collect::<Vec<_>>() {
        let data = module.data.get(id);
        let DataKind::Active { memory, offset: ConstExpr::Value(Value::I32(start)) } = data.kind else {
            bail!("the engine's data are placed in a way that cannot be cut");
        };
        let (start, value) = (start as u32, data.value.clone());
        module.data.delete(id);
        module.memories.get_mut(memory).data_segments.remove(&id);
        for part in parts(&(start..start + value.len() as u32)).into_iter().filter(|part| part.start < part.end) {
            let offset = ConstExpr::Value(Value::I32(part.start as i32));
            let bytes = value[(part.start - start) as usize..(part.end - start) as usize].to_vec();
            let added = module.data.add(DataKind::Active { memory, offset }, bytes);
            module.memories.get_mut(memory).data_segments.insert(added);
        }
    }
    Ok(())
}
