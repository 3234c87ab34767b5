// The shipped engine in node: the very bytes and the very glue that stand in the page's scripts.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import vm from 'node:vm';
import { SITE } from './visit.mjs';

// The scripts are run as they are, in the order of a chapter's page, so that the engine is the whole one. They show the
// engine to other sites first; what comes then needs a page and fails here.
delete globalThis.steadfoot;
for (const name of ['texts.js', 'later.js', 'page.js']) {
  vm.runInThisContext(readFileSync(join(SITE, name), 'utf8'), { filename: name });
}
const stopped = await globalThis.steadfoot.started.catch((error) => error);

/** The engine's exports. */
export function engine() {
  if (!globalThis.steadfoot.openEngine) throw new Error(`the page's script shows no engine: ${stopped}`);
  return globalThis.steadfoot.openEngine();
}

/** The exports of the first part alone, as the landing page opens it; a function that is not in it stops the call. */
export async function firstAlone() {
  const page = vm.createContext({ atob, Blob, console, DecompressionStream, Response, TextDecoder, TextEncoder, Uint8Array, WebAssembly });
  for (const name of ['texts.js', 'page.js']) vm.runInContext(readFileSync(join(SITE, name), 'utf8'), page, { filename: name });
  await page.steadfoot.started.catch(() => {});
  return page.steadfoot.openEngine();
}

/** All text tables of the page. */
export function texts() {
  return globalThis.steadfoot.texts;
}
