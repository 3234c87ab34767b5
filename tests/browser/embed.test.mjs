// A worksheet in somebody else's site: one script tag, one element, that site's own policy and style.
import assert from 'node:assert/strict';
import { copyFile, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { inWords, SITE, until, visit } from './visit.mjs';

let site;

const html = (tags, element) => `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Another site</title><link rel="icon" href="data:,">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self' file: 'wasm-unsafe-eval'; style-src 'self' file:; worker-src blob:; img-src data:">
${tags}</head><body><main><h1>Another site</h1>
${element}
</main></body></html>`;

const TAG = '<script src="steadfoot.js" defer></script>';
const ELEMENT = `<steadfoot-worksheet kind="load-out" config='{}'>
<p>static</p></steadfoot-worksheet>`;

before(async () => {
  site = await mkdtemp(join(tmpdir(), 'steadfoot-another-'));
  await copyFile(join(SITE, 'steadfoot.js'), join(site, 'steadfoot.js'));
  await writeFile(join(site, 'once.html'), html(TAG, ELEMENT));
  await writeFile(join(site, 'twice.html'), html(TAG + TAG, ELEMENT + ELEMENT));
  await writeFile(join(site, 'early.html'), html(TAG.replace(' defer', ''), ELEMENT));
});

after(async () => {
  await closeBrowsers();
  await rm(site, { recursive: true, force: true });
});

for (const browser of ['chromium', 'firefox']) {
  for (const from of ['file', 'http']) {
    for (const [page, words] of [['once.html', 'by one script tag'], ['twice.html', 'also when the tag stands twice'], ['early.html', 'also when the script comes first']]) {
      test(`a worksheet comes alive in another site ${words}, ${inWords({ browser, from })}`, () => visit({ browser, from, site, page }, async ({ page: opened }) => {
        await until(opened, 'the worksheets are alive', () => [...document.querySelectorAll('steadfoot-worksheet')].every((one) => one.shadowRoot));
        const state = await opened.evaluate(() => [...document.querySelectorAll('steadfoot-worksheet')].map((one) => Boolean(one.shadowRoot?.querySelector('input, select, button'))));
        assert.deepEqual(state, page === 'twice.html' ? [true, true] : [true]);
        assert.deepEqual(await opened.evaluate(() => Object.keys(globalThis).filter((name) => /steadfoot/i.test(name)).sort()), ['steadfoot', 'steadfootTexts']);
      }));
    }
  }
}
