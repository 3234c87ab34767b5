//! The engine's modules run by an interpreter that counts instructions.

use wasmi::{CompilationMode, Config, Engine, Error, ExternType, Func, Instance, Linker, Memory, Module, Store, Val};

/// Modules that are ready to be asked, with all the fuel that they may burn.
pub struct Opened {
    store: Store<()>,
    first: Instance,
    function: Func,
}

const TANK: u64 = 1 << 50;

impl Opened {
    /// Opens an export of the first module; the others take what they import from it.
    pub fn new(modules: &[Vec<u8>], export: &str) -> Opened {
        let mut config = Config::default();
        // Translation happens first, so that it is not counted.
        config.consume_fuel(true).compilation_mode(CompilationMode::Eager);
        let engine = Engine::new(&config);
        let mut store = Store::new(&engine, ());
        store.set_fuel(TANK).expect("fuel is on");
        let mut modules = modules.iter().map(|wasm| Module::new(&engine, wasm).expect("the module is valid"));
        let first = open_first(&mut store, &modules.next().expect("there is a first module"));
        for later in modules {
            let mut linker = Linker::new(&engine);
            for import in later.imports() {
                let found = first.get_export(&store, import.name()).expect("the first module exports it");
                linker.define(import.module(), import.name(), found).expect("each import stands once");
            }
            linker.instantiate_and_start(&mut store, &later).expect("the later module starts");
        }
        let function = first.get_func(&store, export).unwrap_or_else(|| panic!("the module exports no {export}"));
        Opened { store, first, function }
    }

    /// What one call returns, and the instructions that it took.
    pub fn call(&mut self) -> (u32, u64) {
        self.try_call().unwrap_or_else(|error| panic!("{error}"))
    }

    /// The same, or what stopped it.
    pub fn try_call(&mut self) -> Result<(u32, u64), Error> {
        let mut result = [Val::I32(0)];
        let before = self.store.get_fuel().expect("fuel is on");
        self.function.call(&mut self.store, &[], &mut result)?;
        let after = self.store.get_fuel().expect("fuel is on");
        let Val::I32(value) = result[0] else { panic!("it returns no whole number") };
        Ok((value.cast_unsigned(), before - after))
    }

    /// The bytes of the memory that the first module exports as "memory".
    pub fn memory(&self) -> &[u8] {
        let memory: Memory = self.first.get_memory(&self.store, "memory").expect("the memory is exported");
        memory.data(&self.store)
    }
}

/// The page's own functions are not here; an export without any JavaScript value needs none of them.
fn open_first(store: &mut Store<()>, module: &Module) -> Instance {
    let mut linker = Linker::new(store.engine());
    for import in module.imports() {
        let ExternType::Func(kind) = import.ty() else { panic!("an import that is no function: {}", import.name()) };
        let name = import.name().to_string();
        let absent = Func::new(&mut *store, kind.clone(), move |_, _, _| Err(Error::new(format!("{name} was called"))));
        linker.define(import.module(), import.name(), absent).expect("each import stands once");
    }
    linker.instantiate_and_start(store, module).expect("the module starts")
}
