// The shipped engine in node: the very bytes and the very glue that stand in the page's script.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import vm from 'node:vm';
import { SITE } from './visit.mjs';

/**
 * The engine's exports, from `page.js` of the built site; each call gives a fresh one.
 *
 * The script is run as it is. It shows its engine to other sites first; what comes then needs a page and fails here.
 */
export function engine() {
  const script = readFileSync(join(SITE, 'page.js'), 'utf8');
  globalThis.steadfootTexts = texts();
  delete globalThis.steadfoot;
  let stopped = null;
  try {
    vm.runInThisContext(script, { filename: 'page.js' });
  } catch (error) {
    stopped = error;
  }
  if (!globalThis.steadfoot) throw new Error(`the page's script shows no engine: ${stopped}`);
  return globalThis.steadfoot.openEngine();
}

/** The text tables that the page shows, from `texts.js` of the built site. */
export function texts() {
  const script = readFileSync(join(SITE, 'texts.js'), 'utf8');
  return JSON.parse(script.slice('globalThis.steadfootTexts='.length).replace(/;\s*$/, ''));
}
