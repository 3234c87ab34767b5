//! The classic scripts: the text tables, the page's code with the first part of the engine, and the later part.
//!
//! A page opened from disk may load neither modules nor data, so everything travels as plain scripts, with the engine's
//! bytes packed and as base64 text. The landing page loads the first part only; what it has not, it fetches when it is
//! wanted. Chapters load both, and the one file and the one script for other sites hold both.

use serde_json::Value;

use crate::{
    engine::{self, Engine},
    halves,
    pack::Packer,
    parts::Parts,
    shorten, squeeze,
    texts::Tables,
};

/// How the parts come together, in the page.
const ARRIVAL: &str = include_str!("arrival.js");

/// The script that puts the first text tables where the page's code looks for them.
pub fn of_texts(texts: &Value) -> String {
    // A stroke behind an opening bracket could end an inline script; the escape means the same to the reader of JSON.
    let json = texts.to_string().replace('<', "\\u003c").replace('\u{2028}', "\\u2028").replace('\u{2029}', "\\u2029");
    format!("globalThis.steadfootTexts={json};\n")
}

/// The script that runs the page: expects the text tables to be there, does nothing the second time.
pub fn of_page(engine: &Engine, parts: &Parts, texts: &Tables, packer: &Packer) -> anyhow::Result<String> {
    let packed_engine = packer.packed("engine", &engine.wasm)?;
    let build = &texts.build;
    let start = format!(
        "const texts=globalThis.steadfootTexts;\n\
         if(!texts)throw new Error(\"the text tables are missing\");\n\
         const packedEngine=\"{packed_engine}\";\n\
         const script=globalThis.document&&document.currentScript;\n\
         begun(texts,packedEngine,\"{build}\",script&&script.src);\n"
    );
    Ok(once(&page_code(engine, parts)?, &start))
}

/// The script of the later part; it stands before the page's script, or is fetched by it.
pub fn of_later(engine: &Engine, parts: &Parts, texts: &Tables, packer: &Packer) -> anyhow::Result<String> {
    let code = later_code(parts)?;
    let build = &texts.build;
    let engine = packer.packed("later-engine", &engine.later)?;
    let texts = packer.packed("later-texts", texts.later.to_string().as_bytes())?;
    let part =
        format!("globalThis.steadfootLater={{build:\"{build}\",engine:\"{engine}\",texts:\"{texts}\",code:later}};");
    Ok(format!("(function(){{\n\"use strict\";\n{code}{part}\n}})();\n"))
}

/// Everything in one, for the page that is one file.
pub fn of_one_file(engine: &Engine, parts: &Parts, texts: &Tables, packer: &Packer) -> anyhow::Result<String> {
    let packed_texts = packer.packed("texts", texts.first.to_string().as_bytes())?;
    let packed_engine = packer.packed("engine", &engine.wasm)?;
    let build = &texts.build;
    let later = of_later(engine, parts, texts, packer)?;
    let start = format!(
        "const packedTexts=\"{packed_texts}\";\n\
         const packedEngine=\"{packed_engine}\";\n\
         begun(unpackedTexts(packedTexts),packedEngine,\"{build}\",null);\n"
    );
    Ok(later + &once(&page_code(engine, parts)?, &start))
}

/// The first half of the page's code as one function of what comes to it.
pub fn page_code(engine: &Engine, parts: &Parts) -> anyhow::Result<String> {
    let glue = squeeze::script(&engine.glue)?;
    let style = serde_json::to_string(&parts.worksheet_style)?;
    let arrival = squeeze::script(ARRIVAL)?;
    let (global, given) = (engine::GLOBAL, halves::GIVEN.join(","));
    let script = halves::joined(&parts.script, &later_source(parts)?)?.first;
    shorten::shortened(&format!(
        "function page({given}){{\n\
         const worksheetStyle={style};\n\
         function engineGlue(){{\n{glue}return {global};\n}}\n\
         {script}started();\n}}\n\
         {arrival}"
    ))
}

/// The later half as one function of what the first one hands over.
pub fn later_code(parts: &Parts) -> anyhow::Result<String> {
    shorten::shortened(&halves::joined(&parts.script, &later_source(parts)?)?.later)
}

fn later_source(parts: &Parts) -> anyhow::Result<String> {
    Ok(format!("const laterStyle={};\n{}", serde_json::to_string(&parts.later_style)?, parts.later_script))
}

/// Included twice, the code runs once.
fn once(code: &str, start: &str) -> String {
    format!("(function(){{\n\"use strict\";\nif(globalThis.steadfoot)return;\n{code}{start}}})();\n")
}

#[cfg(test)]
mod tests {
    use super::of_texts;

    #[test]
    fn texts_cannot_end_the_script_that_holds_them() {
        let script = of_texts(&serde_json::json!({ "a": "</script><!--\u{2028}" }));
        assert!(!script.contains('<'), "{script}");
        assert!(script.contains("\\u003c/script>"), "{script}");
    }
}
