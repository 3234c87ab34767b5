// What is wrong with a file is said in the same words on the page as on the command line, and nothing breaks.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { typeInto, untilSheet, worksheet } from './check-page.mjs';
import { ROOT } from './native.mjs';
import { checkPage, sample } from './projects.mjs';
import { until, visit } from './visit.mjs';

after(closeBrowsers);

const folder = join(ROOT, 'tests/invalid');
const names = readdirSync(folder).filter((name) => name.endsWith('.json') && !name.endsWith('.faults.json')).sort();
// A page reads a file as UTF-8 text, so one that is none reaches the engine as other bytes than on the command line.
const isText = (name) => !readFileSync(join(folder, name), 'utf8').includes('\ufffd');
const files = names.filter(isText).map((name) => ({
  name,
  text: readFileSync(join(folder, name), 'utf8'),
  expected: JSON.parse(readFileSync(join(folder, name.replace(/\.json$/, '.faults.json')), 'utf8')),
}));

for (const browser of ['chromium', 'firefox']) {
  test(`every invalid file has exactly its faults in ${browser}`, () => visit({ browser, from: 'alone' }, async ({ page }) => {
    assert.ok(files.length >= 60, `${files.length} files`);
    await until(page, 'the page has started', () => document.querySelector('#not-started').hidden);
    const told = await page.evaluate((texts) => {
      const engine = globalThis.steadfoot.openEngine();
      return texts.map((text) => engine.assess(text, 'si').faults);
    }, files.map((file) => file.text));
    for (const [place, { name, expected }] of files.entries()) {
      assert.ok(told[place], `${name} has no fault`);
      // A form shows forces and the loads of floors in another unit than the file: what is allowed there is told in that
      // unit, and the sentence, which is of the file, in the file's.
      const ofForm = (fault) => ({ ...fault, allowed: /(load_mpa|_n)$/.test(fault.path) ? '' : fault.allowed });
      assert.deepEqual(told[place].map(({ sentence, ...fault }) => ofForm(fault)), expected.map(ofForm), name);
      for (const [at, { sentence, path, allowed }] of told[place].entries()) {
        assert.ok(sentence.length > 10 && sentence.endsWith(expected[at].allowed), `${name}: ${sentence}`);
        if (/load_mpa$/.test(path)) assert.match(allowed, /^[\d.]+ to [\d.]+\u00a0kPa$/, name);
        if (/\u00a0N$/.test(expected[at].allowed)) assert.match(allowed, /^[\d.]+ to [\d. \u202f\u00a0]+\u00a0kN$/, name);
      }
    }
  }));

  test(`the form keeps what was typed for every bad number, tells each beside its field, and mends it in ${browser}`, () => visit({ browser, from: 'alone', page: checkPage('alone', { ...sample(), floor: { kind: 'suspended', live_load_mpa: 0.005 } }) }, async ({ page }) => {
    const root = await worksheet(page);
    const bad = { 'cabinet.width_mm': '-5', 'cabinet.frame.mass_kg': 'NaN', 'contents[0].mass_kg': '1e999', 'slab.thickness_mm': '', 'cabinet.feet[0].at_mm[0]': '99999', 'site.s_ds': '1..2' };
    const good = await root.evaluate((shadow, paths) => Object.fromEntries(paths.map((path) => [path, shadow.querySelector(`[data-path="${path}"]`).value])), Object.keys(bad));
    for (const [path, text] of Object.entries(bad)) await typeInto(page, root, path, text);
    await untilSheet(page, root, 'all faults are told', (shadow) => shadow.querySelectorAll('[data-fault]').length >= 6);
    const state = await root.evaluate((shadow, paths) => paths.map((path) => {
      const input = shadow.querySelector(`[data-path="${path}"]`);
      const beside = (input.getAttribute('aria-describedby') ?? '').split(' ').map((id) => shadow.getElementById(id)?.textContent ?? '').join(' ');
      return [path, input.value, input.getAttribute('aria-invalid'), beside];
    }), Object.keys(bad));
    for (const [path, value, invalid, beside] of state) {
      assert.equal(value, bad[path], `${path} keeps what was typed`);
      assert.equal(invalid, 'true', `${path} is marked`);
      assert.ok(beside.length > 10, `${path}: "${beside}"`);
    }
    const numbers = await root.evaluate((shadow) => {
      const results = shadow.querySelector('.results');
      return getComputedStyle(results).visibility;
    });
    assert.equal(numbers, 'hidden', 'no number can be read while the input has faults');
    await typeInto(page, root, 'floor.live_load_mpa', '2000');
    await untilSheet(page, root, 'its limit is told as it was typed', (shadow) => /0\.1 to 1000\u00a0kPa \(here: 2000\)/.test(shadow.querySelector('[data-fault="floor.live_load_mpa"]')?.textContent)
      && /0\.1 to 1000\u00a0kPa$/.test(shadow.querySelector('[data-fault-of="floor.live_load_mpa"]')?.textContent));
    await typeInto(page, root, 'floor.live_load_mpa', '5');
    for (const [path, text] of Object.entries(good)) await typeInto(page, root, path, text);
    await untilSheet(page, root, 'the answer is back', (shadow) => shadow.querySelector('[data-answer]').dataset.answer !== 'faults' && getComputedStyle(shadow.querySelector('.results')).visibility === 'visible');
  }));

  test(`outcomes that are no faults are told in words: no feet, feet in a line, anchors on one side, in ${browser}`, async () => {
    const odd = {
      'no feet': (project) => { project.cabinet.feet = []; project.cabinet.anchors = []; },
      'feet in a line': (project) => { project.cabinet.feet = project.cabinet.feet.slice(0, 3); project.cabinet.feet.forEach((foot, place) => { foot.at_mm = [0, -400 + 400 * place]; foot.size_mm = [0, 0]; foot.stiffness_n_per_mm = 1e5; }); project.cabinet.anchors = []; },
      'anchors on one side': (project) => { project.cabinet.anchors = project.cabinet.anchors.slice(0, 2); },
      'all anchors on one point': (project) => { for (const anchor of project.cabinet.anchors) anchor.at_mm = [0, 0]; },
      'no anchors': (project) => { project.cabinet.anchors = []; },
      'no site': (project) => { delete project.site; },
      'no slab': (project) => { delete project.slab; },
    };
    for (const [words, change] of Object.entries(odd)) {
      const project = sample();
      change(project);
      await visit({ browser, from: 'alone', page: checkPage('alone', project) }, async ({ page }) => {
        const root = await worksheet(page);
        const told = await root.evaluate((shadow) => ({ verdict: shadow.querySelector('[data-answer]').dataset.answer, words: shadow.querySelector('[data-answer]').innerText }));
        assert.ok(['does_not_hold', 'cannot_be_said', 'faults'].includes(told.verdict) || words === 'anchors on one side', `${words}: ${told.verdict}`);
        assert.doesNotMatch(told.words, /NaN|undefined|Infinity|∞ /, words);
        assert.ok(told.words.length > 30, `${words}: ${told.words}`);
      });
    }
  });
}
