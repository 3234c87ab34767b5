//! The page's script as it travels: without spaces, with short names for everything that only the script itself names.
//!
//! The squeezed script is a third larger when it is compressed, and every first visit would pay for it. Names at the top,
//! by which the builder calls the page, and all names of properties stay as they are.

use anyhow::bail;
use oxc_allocator::Allocator;
use oxc_codegen::{Codegen, CodegenOptions};
use oxc_mangler::{MangleOptions, Mangler};
use oxc_parser::Parser;
use oxc_span::SourceType;

/// The script, made short. Errors: what is no JavaScript, with the parser's own words.
pub fn shortened(source: &str) -> anyhow::Result<String> {
    let allocator = Allocator::default();
    let parsed = Parser::new(&allocator, source, SourceType::script()).parse();
    if let Some(fault) = parsed.errors.first() {
        bail!("the page's script cannot be read: {fault}");
    }
    let options = MangleOptions { top_level: Some(false), ..MangleOptions::default() };
    let mangled = Mangler::new().with_options(options).build(&parsed.program);
    let printed = Codegen::new()
        .with_options(CodegenOptions::minify())
        .with_scoping(Some(mangled.scoping))
        .with_private_member_mappings(Some(mangled.class_private_mappings))
        .build(&parsed.program);
    Ok(printed.code + "\n")
}

#[cfg(test)]
mod tests {
    use super::shortened;

    #[test]
    fn names_inside_become_short_and_names_at_the_top_stay() {
        let short = shortened("function page(texts) {\n  const answer = texts.answer;\n  return answer;\n}\n").unwrap();
        assert!(short.starts_with("function page("), "{short}");
        assert!(short.contains(".answer") && !short.contains("texts"), "{short}");
    }

    #[test]
    fn what_is_no_script_is_refused() {
        assert!(shortened("function (").is_err());
    }
}
