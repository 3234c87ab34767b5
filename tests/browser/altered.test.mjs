// A file that was changed on its way says so, and shows no number as if nothing had happened.
import assert from 'node:assert/strict';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { ALONE, SITE, until, visit } from './visit.mjs';

after(closeBrowsers);

const NOTICE = '#not-started';

/** A visit to the site with some of its files changed. */
async function altered(where, changes, body) {
  const site = await mkdtemp(join(tmpdir(), 'steadfoot-altered-'));
  try {
    await cp(SITE, site, { recursive: true });
    for (const [name, change] of Object.entries(changes)) {
      const before = await readFile(join(site, name), 'latin1');
      const after_ = change(before);
      if (after_ === null) await rm(join(site, name));
      else {
        assert.notEqual(after_, before, 'the change changes something');
        await writeFile(join(site, name), after_, 'latin1');
      }
    }
    await visit({ ...where, site, trouble: 'expected' }, body);
  } finally {
    await rm(site, { recursive: true, force: true });
  }
}

/** Waits until a reader sees the notice, which takes a moment to appear; its text as seen. */
async function saysSo(page) {
  await until(page, 'the notice is seen', () => /altered/.test(document.body.innerText));
  return page.evaluate(() => document.body.innerText);
}

const replaceLast = (text, old, by) => {
  const at = text.lastIndexOf(old);
  return text.slice(0, at) + by + text.slice(at + old.length);
};

const ONE_FILE_CHANGES = {
  'one letter of its code differs': (html) => replaceLast(html, '"use strict"', '"use strict" '),
  'one digit of a text table differs': (html) => html.replace('const packedTexts="', 'const packedTexts=" '),
  'its end is missing': (html) => html.slice(0, Math.floor(html.length * 0.97)),
  'its last line is missing': (html) => html.slice(0, html.lastIndexOf('\n', html.lastIndexOf('</script>') - 1)),
  'a mail program broke its long lines': (html) => html.replace(/[^\n]{990}/g, '$&\n'),
  'a mail program marked every equals sign': (html) => html.replace(/=/g, '=3D'),
};

for (const browser of ['chromium', 'firefox']) {
  for (const [words, change] of Object.entries(ONE_FILE_CHANGES)) {
    test(`the one file says so when ${words}, in ${browser}`, () => altered({ browser, from: 'alone' }, { [ALONE]: change }, async ({ page }) => {
      assert.match(await saysSo(page), /mail programs do that/);
    }));
  }

  test(`the one file says so when its style differs, in ${browser}`, () => altered({ browser, from: 'alone' }, { [ALONE]: (html) => html.replace(/<style>/, '<style> ') }, async ({ page }) => {
    assert.match(await saysSo(page), /style .*altered/);
  }));

  test(`line ends of another system change nothing, or the one file says so, in ${browser}`, () => altered({ browser, from: 'alone' }, { [ALONE]: (html) => html.replace(/\n/g, '\r\n') }, async ({ page, trouble }) => {
    const started = await page.$eval(NOTICE, (element) => element.hidden);
    if (started) assert.deepEqual(trouble, []);
    else await saysSo(page);
  }));

  for (const [words, changes] of [['the script is missing', { 'page.js': () => null }], ['the texts are missing', { 'texts.js': () => null }],
    ['the script was cut short', { 'page.js': (script) => script.slice(0, -40) }], ['the style is missing', { 'page.css': () => null }]]) {
    test(`a page of the folder says so when ${words}, in ${browser}`, () => altered({ browser, from: 'file' }, changes, ({ page }) => saysSo(page)));
  }
}
