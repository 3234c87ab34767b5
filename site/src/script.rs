//! The classic scripts: the text tables, and the page's code with the engine inside.
//!
//! A page opened from disk may load neither modules nor data, so everything travels as one plain script, with the
//! engine's bytes as base64 text. In the one-file page texts and engine are packed as well, or it would be too large
//! for the mail; unpacking takes some milliseconds.

use std::io::Write;

use base64::{Engine as _, engine::general_purpose::STANDARD};
use flate2::{Compression, write::DeflateEncoder};
use serde_json::Value;

use crate::{
    engine::{self, Engine},
    parts::Parts,
    shorten, squeeze,
};

/// The script that puts the text tables where the page's code looks for them.
pub fn of_texts(texts: &Value) -> String {
    // A stroke behind an opening bracket could end an inline script; the escape means the same to the reader of JSON.
    let json = texts.to_string().replace('<', "\\u003c").replace('\u{2028}', "\\u2028").replace('\u{2029}', "\\u2029");
    format!("globalThis.steadfootTexts={json};\n")
}

/// The script that runs the page: expects the text tables to be there, does nothing the second time.
pub fn of_page(engine: &Engine, parts: &Parts) -> anyhow::Result<String> {
    let engine_base64 = STANDARD.encode(&engine.wasm);
    let start = format!(
        "const texts=globalThis.steadfootTexts;\n\
         if(!texts)throw new Error(\"the text tables are missing\");\n\
         const engineBase64=\"{engine_base64}\";\n\
         page(texts,bytesOf(engineBase64));\n"
    );
    Ok(once(&page_code(engine, parts)?, &start))
}

/// The same with texts and engine inside, both packed, for the page that is one file.
pub fn of_one_file(engine: &Engine, parts: &Parts, texts: &Value) -> anyhow::Result<String> {
    let packed_texts = packed(texts.to_string().as_bytes())?;
    let packed_engine = packed(&engine.wasm)?;
    let start = format!(
        "const packedTexts=\"{packed_texts}\";\n\
         const packedEngine=\"{packed_engine}\";\n\
         async function unpacked(text){{\n\
         const stream=new Blob([bytesOf(text)]).stream().pipeThrough(new DecompressionStream(\"deflate-raw\"));\n\
         return new Uint8Array(await new Response(stream).arrayBuffer());\n}}\n\
         Promise.all([unpacked(packedTexts),unpacked(packedEngine)]).then(([texts,engine])=>{{\n\
         page(JSON.parse(new TextDecoder().decode(texts)),engine);\n}});\n"
    );
    Ok(once(&page_code(engine, parts)?, &start))
}

/// The page's code as one function of the text tables and the engine's bytes.
pub fn page_code(engine: &Engine, parts: &Parts) -> anyhow::Result<String> {
    let glue = squeeze::script(&engine.glue)?;
    let style = serde_json::to_string(&parts.worksheet_style)?;
    let global = engine::GLOBAL;
    let script = &parts.script;
    shorten::shortened(&format!(
        "function page(texts,engineBytes){{\n\
         const worksheetStyle={style};\n\
         function engineGlue(){{\n{glue}return {global};\n}}\n\
         {script}started();\n}}\n\
         function bytesOf(text){{\n\
         if(Uint8Array.fromBase64)return Uint8Array.fromBase64(text);\n\
         return Uint8Array.from(atob(text),(character)=>character.charCodeAt(0));\n}}\n"
    ))
}

/// Included twice, the code runs once.
fn once(code: &str, start: &str) -> String {
    format!("(function(){{\n\"use strict\";\nif(globalThis.steadfoot)return;\n{code}{start}}})();\n")
}

fn packed(bytes: &[u8]) -> anyhow::Result<String> {
    let mut encoder = DeflateEncoder::new(Vec::new(), Compression::best());
    encoder.write_all(bytes)?;
    Ok(STANDARD.encode(encoder.finish()?))
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
