//! The page's code in two halves that know each other.
//!
//! Both are written as if they stood in one place. What the later half uses of the first one is found here and handed
//! over when it comes; what the first half uses of the later one it names `late.Thing`, which is there once the later
//! half is, and calls for it before.

use std::collections::{BTreeMap, BTreeSet};

use anyhow::{bail, ensure};
use oxc_allocator::Allocator;
use oxc_parser::Parser;
use oxc_semantic::SemanticBuilder;
use oxc_span::SourceType;

/// Both halves, each with what it hands to the other.
pub struct Halves {
    /// Statements; they end with the function that hands over.
    pub first: String,
    /// A function that takes what the first half hands over, and returns what that one uses of it.
    pub later: String,
}

/// What the builder gives the first half to begin with.
pub const GIVEN: [&str; 4] = ["texts", "engineBytes", "laterGiven", "bringLater"];

/// Joins two halves. Errors: a name of the later half that the first one uses as its own, one that is declared in both,
/// and one that changes after it was handed over.
pub fn joined(first: &str, later: &str) -> anyhow::Result<Halves> {
    let (mut names, late_names) = (Names::of(first)?, Names::of(later)?);
    names.declared.extend(GIVEN.map(|name| (name.to_string(), false)));
    for name in late_names.declared.keys() {
        ensure!(!names.declared.contains_key(name), "`{name}` is declared in both halves of the page's code");
        ensure!(
            !names.wanted.contains(name),
            "the first half of the page's code uses `{name}` of the later one: write `late.{name}`"
        );
    }
    let mut handed = Vec::new();
    for name in &late_names.wanted {
        if let Some(changes) = names.declared.get(name) {
            ensure!(
                !changes,
                "`{name}` changes in the first half of the page's code, so the later one would have its old value"
            );
            handed.push(name.as_str());
        }
    }
    let returned = used_as_late(first);
    if let Some(name) = returned.iter().find(|name| !late_names.declared.contains_key(**name)) {
        bail!("the first half of the page's code uses `late.{name}`, and the later one declares no such name");
    }
    let (handed, returned) = (handed.join(","), returned.into_iter().collect::<Vec<_>>().join(","));
    Ok(Halves {
        first: format!("{first}function handedOver(){{return{{{handed}}};}}\n"),
        later: format!("function later(first){{\nconst{{{handed}}}=first;\n{later}return{{{returned}}};\n}}\n"),
    })
}

/// What a script declares at its top, with whether it is assigned to later, and what it uses without declaring it.
struct Names {
    declared: BTreeMap<String, bool>,
    wanted: BTreeSet<String>,
}

impl Names {
    fn of(source: &str) -> anyhow::Result<Self> {
        let allocator = Allocator::default();
        let parsed = Parser::new(&allocator, source, SourceType::script()).parse();
        if let Some(fault) = parsed.errors.first() {
            bail!("the page's script cannot be read: {fault}");
        }
        let semantic = SemanticBuilder::new().build(&parsed.program).semantic;
        let scoping = semantic.scoping();
        let symbols = scoping.iter_bindings_in(scoping.root_scope_id());
        let declared =
            symbols.map(|symbol| (scoping.symbol_name(symbol).to_string(), scoping.symbol_is_mutated(symbol)));
        let wanted = scoping.root_unresolved_references().keys().map(ToString::to_string);
        Ok(Self { declared: declared.collect(), wanted: wanted.collect() })
    }
}

fn used_as_late(first: &str) -> BTreeSet<&str> {
    let is_part = |character: char| character.is_alphanumeric() || character == '_' || character == '$';
    let pieces: Vec<&str> = first.split("late.").collect();
    let behind = pieces.windows(2).filter(|pair| !pair[0].ends_with(is_part));
    behind.map(|pair| pair[1].split(|character: char| !is_part(character)).next().unwrap_or("")).collect()
}

#[cfg(test)]
mod tests {
    use super::joined;

    #[test]
    fn each_half_hands_over_what_the_other_one_uses() {
        let first = "const a = 1;\nfunction b() { return new late.C(a, texts); }\n";
        let halves =
            joined(first, "class C { constructor(d) { this.d = d + a + texts.e; } }\nclass D extends C {}\n").unwrap();
        assert!(halves.first.ends_with("function handedOver(){return{a,texts};}\n"), "{}", halves.first);
        assert!(halves.later.starts_with("function later(first){\nconst{a,texts}=first;\n"), "{}", halves.later);
        assert!(halves.later.ends_with("return{C};\n}\n"), "{}", halves.later);
    }

    #[test]
    fn what_could_not_work_is_refused() {
        for (first, later, words) in [
            ("new C();", "class C {}", "write `late.C`"),
            ("late.D();", "class C {}", "declares no such name"),
            ("let a = 1; a = 2;", "a;", "old value"),
            ("const a = 1;", "const a = 2;", "in both halves"),
        ] {
            let fault = joined(first, later).err().expect("is refused").to_string();
            assert!(fault.contains(words), "{fault}");
        }
    }
}
