//! Who refers to what in the linked module, as the linker wrote it down: functions to data, data to data, both to
//! functions whose address they take.

use std::{collections::HashMap, ops::Range};

use anyhow::{Context, ensure};
use wasmparser::{
    DataKind, KnownCustom, Linking, Name, Operator, Parser, Payload, RelocSectionReader, RelocationType, SymbolInfo,
};

/// What one function or one piece of data refers to.
#[derive(Debug, Default, Clone)]
pub struct Referred {
    /// Places in [`References::data`].
    pub data: Vec<usize>,
    /// Functions whose address is taken, by name.
    pub functions: Vec<String>,
}

/// One named piece of data in memory.
#[derive(Debug, Clone)]
pub struct Datum {
    /// Its addresses.
    pub at: Range<u32>,
    pub refers: Referred,
}

/// All references of a linked module.
#[derive(Debug, Default)]
pub struct References {
    pub functions: HashMap<String, Referred>,
    pub data: Vec<Datum>,
}

impl References {
    /// Reads the sections that the linker leaves in a module when it is asked for its relocations. Errors: a module
    /// without them.
    pub fn read(wasm: &[u8]) -> anyhow::Result<References> {
        Linked::read(wasm)?.references()
    }
}

enum Symbol {
    Data(usize),
    Function(u32),
    Other,
}

/// The parts of a linked module that tell of references.
struct Linked<'a> {
    imported: u32,
    names: HashMap<u32, &'a str>,
    code_start: usize,
    /// The bytes of each function.
    bodies: Vec<Range<usize>>,
    data_start: usize,
    /// The bytes of each data segment, and the address at which it begins.
    segments: Vec<(Range<usize>, u32)>,
    symbols: Vec<SymbolInfo<'a>>,
    code: Option<RelocSectionReader<'a>>,
    data: Option<RelocSectionReader<'a>>,
}

impl<'a> Linked<'a> {
    fn read(wasm: &'a [u8]) -> anyhow::Result<Linked<'a>> {
        let mut linked = Linked {
            imported: 0,
            names: HashMap::new(),
            code_start: 0,
            bodies: Vec::new(),
            data_start: 0,
            segments: Vec::new(),
            symbols: Vec::new(),
            code: None,
            data: None,
        };
        for payload in Parser::new(0).parse_all(wasm) {
            match payload? {
                Payload::ImportSection(imports) => {
                    for import in imports.into_imports() {
                        linked.imported += u32::from(matches!(import?.ty, wasmparser::TypeRef::Func(_)));
                    }
                }
                Payload::CodeSectionStart { range, .. } => linked.code_start = range.start,
                Payload::CodeSectionEntry(body) => linked.bodies.push(body.range()),
                Payload::DataSection(section) => {
                    linked.data_start = section.range().start;
                    for segment in section {
                        let segment = segment?;
                        let start = segment.range.end - segment.data.len();
                        linked.segments.push((start..segment.range.end, address(&segment.kind)?));
                    }
                }
                Payload::CustomSection(section) => match section.as_known() {
                    KnownCustom::Linking(linking) => {
                        for part in linking.subsections() {
                            if let Linking::SymbolTable(symbols) = part? {
                                linked.symbols = symbols.into_iter().collect::<Result<_, _>>()?;
                            }
                        }
                    }
                    KnownCustom::Name(names) => {
                        for part in names {
                            if let Name::Function(functions) = part? {
                                for naming in functions {
                                    let naming = naming?;
                                    linked.names.insert(naming.index, bound_name(naming.name));
                                }
                            }
                        }
                    }
                    KnownCustom::Reloc(relocations) if section.name() == "reloc.CODE" => {
                        linked.code = Some(relocations)
                    }
                    KnownCustom::Reloc(relocations) if section.name() == "reloc.DATA" => {
                        linked.data = Some(relocations)
                    }
                    _ => {}
                },
                _ => {}
            }
        }
        Ok(linked)
    }

    fn references(self) -> anyhow::Result<References> {
        ensure!(!self.symbols.is_empty(), "the linked module does not tell its symbols");
        let mut data: Vec<Datum> = Vec::new();
        let mut symbols = Vec::with_capacity(self.symbols.len());
        for symbol in &self.symbols {
            symbols.push(match symbol {
                SymbolInfo::Func { index, .. } => Symbol::Function(*index),
                SymbolInfo::Data { symbol: Some(symbol), .. } => {
                    let (_, start) = self.segments.get(symbol.index as usize).context("a symbol in no segment")?;
                    let start = start + symbol.offset;
                    data.push(Datum { at: start..start + symbol.size, refers: Referred::default() });
                    Symbol::Data(data.len() - 1)
                }
                _ => Symbol::Other,
            });
        }
        let mut functions: HashMap<String, Referred> = HashMap::new();
        for name in self.names.values() {
            functions.entry(name.to_string()).or_default();
        }
        for relocation in
            self.code.as_ref().context("the linked module does not tell what its code refers to")?.entries()
        {
            let relocation = relocation?;
            let at = self.code_start + relocation.offset as usize;
            let place = self.bodies.partition_point(|body| body.end <= at);
            let name = self.names.get(&(self.imported + place as u32)).context("a function without a name")?;
            let referred = functions.entry(name.to_string()).or_default();
            self.note(referred, relocation.ty, symbols.get(relocation.index as usize))?;
        }
        let order = {
            let mut order: Vec<usize> = (0..data.len()).filter(|&place| !data[place].at.is_empty()).collect();
            order.sort_unstable_by_key(|&place| data[place].at.start);
            order
        };
        for relocation in
            self.data.as_ref().context("the linked module does not tell what its data refer to")?.entries()
        {
            let relocation = relocation?;
            let at = self.address_of(self.data_start + relocation.offset as usize)?;
            let mut referred = Referred::default();
            self.note(&mut referred, relocation.ty, symbols.get(relocation.index as usize))?;
            let mut is_held = false;
            for &place in &order[..order.partition_point(|&place| data[place].at.start <= at)] {
                if data[place].at.contains(&at) {
                    is_held = true;
                    data[place].refers.data.extend(&referred.data);
                    data[place].refers.functions.extend(referred.functions.iter().cloned());
                }
            }
            ensure!(is_held, "data at {at} belong to no symbol");
        }
        Ok(References { functions, data })
    }

    fn note(&self, referred: &mut Referred, kind: RelocationType, symbol: Option<&Symbol>) -> anyhow::Result<()> {
        use RelocationType as R;
        match (kind, symbol.context("a reference to no symbol")?) {
            (R::MemoryAddrLeb | R::MemoryAddrSleb | R::MemoryAddrI32, Symbol::Data(place)) => {
                referred.data.push(*place)
            }
            (R::TableIndexSleb | R::TableIndexI32, Symbol::Function(index)) => {
                let name = self.names.get(index).context("an address is taken of a function without a name")?;
                referred.functions.push(name.to_string());
            }
            // Calls, types, globals and tables are seen in the code itself.
            (R::FunctionIndexLeb | R::TypeIndexLeb | R::GlobalIndexLeb | R::TableNumberLeb, _) => {}
            // The linker's own marks of where data begin and end have no place in a segment.
            (R::MemoryAddrLeb | R::MemoryAddrSleb | R::MemoryAddrI32, Symbol::Other) => {}
            (kind, _) => anyhow::bail!("a reference of the kind {kind:?}"),
        }
        Ok(())
    }

    fn address_of(&self, byte: usize) -> anyhow::Result<u32> {
        let (bytes, start) =
            self.segments.iter().find(|(bytes, _)| bytes.contains(&byte)).context("a reference outside all data")?;
        Ok(start + (byte - bytes.start) as u32)
    }
}

/// The name that the binding tool leaves to a function: an export loses its mark of sixteen hexadecimal digits.
fn bound_name(name: &str) -> &str {
    let is_mark = |mark: &str| mark.len() == 16 && mark.bytes().all(|byte| byte.is_ascii_hexdigit());
    match name.rsplit_once('_') {
        Some((export, mark)) if is_mark(mark) && !name.starts_with("_R") => export,
        _ => name,
    }
}

fn address(kind: &DataKind) -> anyhow::Result<u32> {
    let DataKind::Active { offset_expr, .. } = kind else { anyhow::bail!("data without an address") };
    match offset_expr.get_operators_reader().read()? {
        Operator::I32Const { value } => Ok(value as u32),
        _ => anyhow::bail!("data whose address is no number"),
    }
}
