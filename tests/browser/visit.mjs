// One reader's visit to one page: opened from disk or over http, with everything that goes wrong on it written down.
import assert from 'node:assert/strict';
import { copyFile, mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { browserOf, PATIENCE_MS } from './browsers.mjs';
import { serve } from './server.mjs';

const HERE = dirname(fileURLToPath(import.meta.url));

/** The built site. */
export const SITE = resolve(process.env.STEADFOOT_SITE ?? join(HERE, '../../site/dist'));
/** The name of the one-file page within it. */
export const ALONE = 'steadfoot.html';

export const SIZES = {
  desk: { width: 1280, height: 900 },
  phone: { width: 390, height: 844 },
  small: { width: 320, height: 640 },
};

/** Both browsers, from disk and over http: what most claims about the page are tested on. */
export const everywhere = ['chromium', 'firefox'].flatMap((browser) => ['file', 'http', 'alone'].map((from) => ({ browser, from })));
/** Both browsers, from disk: for claims that do not depend on where the page came from. */
export const bothBrowsers = ['chromium', 'firefox'].map((browser) => ({ browser, from: 'alone' }));

/** "in Firefox, over http", for the name of a test. */
export function inWords({ browser = 'chromium', from = 'file' }) {
  const origin = { file: 'the folder on disk', http: 'the folder over http', alone: 'the one file on disk' }[from];
  return `in ${browser === 'firefox' ? 'Firefox' : 'Chromium'}, from ${origin}`;
}

/**
 * Opens a page, gives it to `body`, and afterwards asserts that nothing went wrong on it: no console error, no refused
 * resource, no request to anything but the page's own files.
 *
 * where.browser  "chromium" or "firefox"
 * where.from     "file" (the folder), "http" (the folder), "alone" (the one file, copied to an empty folder first)
 * where.page     a file of the folder, with or without a #fragment; with "alone" only the fragment counts
 * where.size     "desk", "phone", "small" or { width, height }
 * where.look     "light" or "dark"
 * where.scripts  "on" or "off"
 * where.trouble  "none" (asserted) or "expected" (left to `body`)
 * where.site     another folder than the built site
 */
export async function visit(where, body) {
  const { browser = 'chromium', from = 'file', page: name = 'index.html', look = 'light', scripts = 'on', site = SITE } = where;
  const { browser: driver, downloads } = await browserOf(browser, { look, scripts });
  const stand = await settle(from, site);
  // A context of its own: what one visit leaves in the browser's memory is no business of the next.
  const context = await driver.createBrowserContext(browser === 'chromium' ? { downloadBehavior: { policy: 'allow', downloadPath: downloads } } : {});
  const page = await context.newPage();
  const notes = { trouble: [], requests: [] };
  try {
    page.setDefaultTimeout(PATIENCE_MS);
    await listen(page, notes, stand.base);
    const size = typeof where.size === 'object' ? where.size : SIZES[where.size ?? 'desk'];
    await page.setViewport(size);
    if (browser === 'chromium') {
      await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: look }]);
      await page.setJavaScriptEnabled(scripts === 'on');
    }
    const address = stand.addressOf(name);
    await page.goto(address, { waitUntil: 'load' });
    await body({ page, browser, from, address, ...notes, downloads, asked: stand.asked });
    if (browser === 'firefox') await leaveOutHalfRead(page, notes);
    if ((where.trouble ?? 'none') === 'none') assertNoTrouble(notes, stand.asked);
  } finally {
    await context.close();
    for (const name of await readdir(downloads)) await rm(join(downloads, name), { force: true });
    await stand.leave();
  }
}

/**
 * While it still reads a long page, Firefox lays out formulas of which only the first half has come, and calls them
 * invalid. That is left out, but only where no formula of the page that was read is without a child.
 */
async function leaveOutHalfRead(page, notes) {
  const isHalfRead = (one) => /^(uncaught|console \w+): Invalid markup: Incorrect number of children for <m(sub|sup|frac)\b/.test(one);
  if (!notes.trouble.some(isHalfRead)) return;
  const broken = await page.evaluate(() => {
    const roots = [document];
    for (const root of roots) for (const one of root.querySelectorAll('*')) if (one.shadowRoot) roots.push(one.shadowRoot);
    return roots.flatMap((root) => [...root.querySelectorAll('msub, msup, mfrac')]).filter((one) => one.children.length !== 2).length;
  });
  if (broken === 0) notes.trouble.splice(0, notes.trouble.length, ...notes.trouble.filter((one) => !isHalfRead(one)));
}

/** Where the page stands: a folder on disk, the same folder behind a server, or one file by itself. */
async function settle(from, site) {
  if (from === 'http') {
    const server = await serve(site);
    return { base: server.address, asked: server.asked, addressOf: (name) => server.address + name, leave: server.stop };
  }
  if (from === 'alone') {
    const folder = await mkdtemp(join(tmpdir(), 'steadfoot-alone-'));
    const file = join(folder, ALONE);
    await copyFile(join(site, ALONE), file);
    const address = pathToFileURL(file).href;
    const fragment = (name) => (name.includes('#') ? name.slice(name.indexOf('#')) : '');
    return {
      base: address,
      asked: [],
      addressOf: (name) => address + fragment(name),
      leave: () => rm(folder, { recursive: true, force: true }),
    };
  }
  const base = pathToFileURL(site + '/').href;
  return { base, asked: [], addressOf: (name) => base + name, leave: async () => {} };
}

async function listen(page, notes, base) {
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warn') notes.trouble.push(`console ${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => notes.trouble.push(`uncaught: ${error?.message ?? error}`));
  page.on('requestfailed', (request) => {
    // A page that is left cancels what it was still doing; that is not a failure of the page.
    const why = request.failure()?.errorText ?? 'failed';
    if (!/ERR_ABORTED|NS_BINDING_ABORTED/.test(why)) notes.trouble.push(`request failed: ${request.url()} (${why})`);
  });
  page.on('request', (request) => {
    notes.requests.push(request.url());
    if (!isOwn(request.url(), base)) notes.trouble.push(`asked for something else than itself: ${request.url().slice(0, 200)}`);
  });
  // Firefox tells no driver about a refusal by the security policy, so the page itself is made to say it.
  await page.evaluateOnNewDocument(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`security policy: ${event.violatedDirective} refused ${event.blockedURI || 'inline'} ${event.sample}`);
    });
  });
}

function isOwn(url, base) {
  return url.startsWith(base) || /^(data|blob|about):/.test(url) || url.startsWith('javascript:');
}

/** Fails with the whole list when anything went wrong on a visit. */
export function assertNoTrouble(notes, asked = []) {
  const missing = asked.filter((one) => one.status !== 200).map((one) => `not on the server: ${one.path}`);
  assert.deepEqual([...notes.trouble, ...missing], []);
}

/** Waits until `claim`, run in the page, is true; the error says what it waited for. */
export async function until(page, words, claim, ...given) {
  try {
    await page.waitForFunction(claim, { timeout: PATIENCE_MS }, ...given);
  } catch (error) {
    throw new Error(`waited in vain until ${words}: ${error.message}`);
  }
}

/** The files that were saved by the page, once `count` of them are whole. */
export async function savedFiles(downloads, count = 1) {
  for (let waited = 0; waited < PATIENCE_MS; waited += 100) {
    const names = (await readdir(downloads)).filter((name) => !/\.(part|crdownload|tmp)$/.test(name) && !name.startsWith('.'));
    // A browser writes under a name of its own first: what is renamed while it is looked at is not there yet.
    const sizes = await Promise.all(names.map(async (name) => (await stat(join(downloads, name)).catch(() => ({ size: 0 }))).size));
    if (names.length >= count && sizes.every((bytes) => bytes > 0)) return names.map((name) => join(downloads, name)).sort();
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error(`the page saved fewer than ${count} files`);
}
