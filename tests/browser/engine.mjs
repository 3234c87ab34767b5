// The shipped engine in node: the very bytes and the very glue that stand in the page's script.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import vm from 'node:vm';
import { SITE } from './visit.mjs';

/** The engine's exports, from `page.js` of the built site. Each call gives a fresh one. */
export function engine() {
  const script = readFileSync(join(SITE, 'page.js'), 'utf8');
  const bytes = Buffer.from(between(script, 'const engineBase64="', '"'), 'base64');
  const glue = between(script, 'function engineGlue(){\n', '\nreturn steadfootWasm;\n}');
  const opened = vm.runInThisContext(`(function(){"use strict";\n${glue}\nreturn steadfootWasm;\n})`, { filename: 'glue.js' })();
  opened.initSync({ module: new WebAssembly.Module(bytes) });
  return opened;
}

/** The text tables that the page shows, from `texts.js` of the built site. */
export function texts() {
  const script = readFileSync(join(SITE, 'texts.js'), 'utf8');
  return JSON.parse(script.slice('globalThis.steadfootTexts='.length).replace(/;\s*$/, ''));
}

function between(text, open, close) {
  const start = text.indexOf(open);
  const end = text.indexOf(close, start + open.length);
  if (start < 0 || end < 0) throw new Error(`the page's script has no ${open}`);
  return text.slice(start + open.length, end);
}
