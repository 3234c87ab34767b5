//! The classic scripts: the text tables, and the page's code with the engine inside.
//!
//! A page opened from disk may load neither modules nor data, so everything travels as one plain script, with the
//! engine's bytes as base64 text.

use anyhow::ensure;
use base64::{Engine as _, engine::general_purpose::STANDARD};
use serde_json::Value;

use crate::{
    engine::{self, Engine},
    parts::Parts,
    squeeze,
};

/// The script that puts the text tables where the page's code looks for them.
pub fn of_texts(texts: &Value) -> String {
    // A stroke behind an opening bracket could end an inline script; the escape means the same to the reader of JSON.
    let json = texts
        .to_string()
        .replace('<', "\\u003c")
        .replace('\u{2028}', "\\u2028")
        .replace('\u{2029}', "\\u2029");
    format!("globalThis.steadfootTexts={json};\n")
}

/// The script that runs the page: expects the text tables to be there, does nothing the second time.
pub fn of_page(engine: &Engine, parts: &Parts) -> anyhow::Result<String> {
    let code = page_code(engine, parts)?;
    let bytes = STANDARD.encode(&engine.wasm);
    Ok(code.replacen(ENGINE_PLACE, &bytes, 1))
}

const ENGINE_PLACE: &str = "(the engine's bytes)";

/// The page's script with a mark in place of the engine's bytes; its size is the page's code.
pub fn page_code(engine: &Engine, parts: &Parts) -> anyhow::Result<String> {
    let glue = squeeze::script(&engine.glue)?;
    ensure!(
        !parts.script.contains(ENGINE_PLACE),
        "the page's code contains the builder's own mark"
    );
    let style = serde_json::to_string(&parts.worksheet_style)?;
    let global = engine::GLOBAL;
    let script = &parts.script;
    Ok(format!(
        "(function(){{\n\"use strict\";\nif(globalThis.steadfoot)return;\n\
         const texts=globalThis.steadfootTexts;\n\
         if(!texts)throw new Error(\"the text tables are missing\");\n\
         const worksheetStyle={style};\n\
         const engineBase64=\"{ENGINE_PLACE}\";\n\
         function engineGlue(){{\n{glue}return {global};\n}}\n\
         {script}started();\n}})();\n"
    ))
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
