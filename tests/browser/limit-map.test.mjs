// Maps and limits on the page: every point is a whole assessment, read by keys and pointer, opened to its working, saved
// with its numbers, stopped and gone on with; and the page stays awake meanwhile.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { engine, texts } from './engine.mjs';
import { bothBrowsers, inWords, savedFiles, until, visit } from './visit.mjs';

after(closeBrowsers);

const partOf = async (page, kind, selector) => {
  await until(page, `${kind} is awake`, (one, two) => document.querySelector(`steadfoot-worksheet[kind="${one}"]`)?.shadowRoot?.querySelector(two), kind, selector);
  return page.evaluateHandle((one, two) => document.querySelector(`steadfoot-worksheet[kind="${one}"]`).shadowRoot.querySelector(two), kind, selector);
};

/** Asks for the coarsest map, and waits until it is whole. */
async function coarse(page, map) {
  await map.evaluate((element) => {
    const fineness = element.querySelector('[data-key="map fineness"]');
    delete element.dataset.shown;
    fineness.value = '25';
    fineness.dispatchEvent(new Event('change'));
  });
  await until(page, 'the map is whole', (element) => element.dataset.shown === '625' && element.dataset.stride === '1', map);
}

const reading = (map) => map.evaluate((element) => ({ ...element.querySelector('.map-reading').dataset, words: element.querySelector('.map-reading').textContent }));

for (const where of bothBrowsers) {
  test(`a map is worked out, read, opened and saved ${inWords(where)}`, () => visit({ ...where, page: 'steadfoot.html#how-far' }, async ({ page, downloads, browser }) => {
    const map = await partOf(page, 'map', '.limit-map');
    if (browser === 'chromium') {
      await page.evaluate(() => {
        globalThis.longTasks = [];
        new PerformanceObserver((list) => globalThis.longTasks.push(...list.getEntries().map((one) => one.duration))).observe({ type: 'longtask' });
      });
    }
    await coarse(page, map);
    if (browser === 'chromium') {
      const longest = Math.max(0, ...await page.evaluate(() => globalThis.longTasks));
      assert.ok(longest < 250, `the page was kept from answering for ${longest} ms`);
    }
    for (const mark of ['.contour.one', '.beyond-hatch', '.region-border', '.plot-point.present', '.map-cursor']) assert.ok(await map.$(mark), mark);

    // It begins at the cabinet as it is; keys go on from there.
    const begin = await reading(map);
    await (await map.$('.map-frame')).focus();
    await page.keyboard.press('ArrowRight');
    const right = await reading(map);
    await page.keyboard.press('PageUp');
    const up = await reading(map);
    assert.ok(Number(right.x) > Number(begin.x) && right.y === begin.y, 'to the right is more');
    assert.ok(Number(up.y) > Number(right.y) && up.x === right.x, 'upwards is more');
    assert.equal(up.standing, 'fails');
    assert.match(up.words, /^Mass of all contents .*\skg, strength of the shaking .*\sg: fails, \d\.\d\d; what governs is /);
    await page.keyboard.press('Home');
    assert.deepEqual(await reading(map), begin);

    // The point opens to the very assessment that its cell told.
    for (let times = 0; times < 4; times += 1) await page.keyboard.press('ArrowUp');
    const there = await reading(map);
    await page.keyboard.press('Enter');
    const opened = await map.evaluate((element) => ({ ...element.querySelector('.picked').dataset, steps: element.querySelectorAll('.picked .step').length }));
    assert.equal(opened.utilisation, there.utilisation);
    assert.ok(opened.steps > 3, 'with its working');

    // A pointer reads where it is, without the keyboard.
    const frame = await (await map.$('svg')).boundingBox();
    await page.mouse.click(frame.x + frame.width * 0.9, frame.y + frame.height * 0.2);
    assert.equal((await reading(map)).standing, 'fails');

    // What is saved are all numbers, and they are those of the engine elsewhere, bit for bit.
    await map.evaluate((element) => {
      element.querySelector(':scope > details').open = true;
    });
    await until(page, 'the table is there', (element) => element.querySelector('.map-table'), map);
    await map.evaluate((element) => element.querySelector('[data-key="csv map"]').click());
    const [file] = await savedFiles(downloads, 1);
    const lines = (await readFile(file, 'utf8')).trimEnd().split('\r\n');
    assert.equal(lines[0], 'mass of all contents [kg],strength of the shaking [g],utilisation,how it stands,"what governs, or why not"');
    const points = lines.slice(1, 626).map((line) => line.split(','));
    assert.equal(lines.length, 626 + texts().cautions.length);
    const own = engine();
    const { text } = texts().demos.find((one) => one.file === '07-slab-edge.json');
    for (const [load, strength, utilisation] of [points[0], points[312], points[624]]) {
      const tree = JSON.parse(text);
      for (const { path, value } of own.map_edits(text, 'load', Number(load), 'strength', Number(strength))) {
        const [, place] = /^contents\[(\d+)\]\.mass_kg$/.exec(path) || [];
        if (place !== undefined) tree.contents[place].mass_kg = value;
        else tree.site.s_ds = value;
      }
      const { report } = own.assess(JSON.stringify(tree), 'si');
      assert.equal(report.checks[report.governs].utilisation, Number(utilisation), `${load} kg, ${strength} g`);
    }
  }));
}

test('a map is stopped half-way and gone on with, and a limit is asked of one check alone', () => visit({ from: 'alone', page: 'steadfoot.html#how-far' }, async ({ page }) => {
  const map = await partOf(page, 'map', '.limit-map');
  await map.evaluate((element) => {
    const fineness = element.querySelector('[data-key="map fineness"]');
    fineness.value = '100';
    fineness.dispatchEvent(new Event('change'));
  });
  await until(page, 'it is under way', (element) => element.dataset.points === '10000' && element.querySelector('progress')?.value > 100, map);
  await map.evaluate((element) => element.querySelector('[data-key="stop map"]').click());
  await until(page, 'it has stopped', (element) => element.getAttribute('aria-busy') === 'false', map);
  const known = Number(await map.evaluate((element) => element.dataset.shown));
  assert.ok(known > 100 && known < 10000, `${known}`);
  await map.evaluate((element) => element.querySelector('[data-key="stop map"]').click());
  await until(page, 'it goes on', (element, before) => element.querySelector('progress')?.value > before, map, known);
  await map.evaluate((element) => element.querySelector('[data-key="stop map"]').click());

  const study = await partOf(page, 'limits', '.study');
  await until(page, 'all limits are there', (element) => element.querySelectorAll('tbody tr').length > 10, study);
  await study.evaluate((element) => {
    const choice = element.querySelector('[data-key="check choice"]');
    choice.value = 'free.tipping';
    choice.dispatchEvent(new Event('change'));
  });
  await until(page, 'one check is asked', (element) => element.getAttribute('aria-busy') === 'false' && /Only one check was asked/.test(element.textContent), study);
  const rows = await study.evaluate((element) => [...element.querySelectorAll('tbody tr')].map((row) => [...row.cells].map((cell) => cell.textContent)));
  const shaking = rows.find(([name]) => /Design acceleration/.test(name));
  assert.match(shaking[5], /tipping/);
}));

test('a map stands on the page without scripts, too', () => visit({ page: 'how-far.html', scripts: 'off' }, async ({ page }) => {
  const seen = await page.$eval('.study[data-study="limit-map"]', (one) => ({ line: one.querySelectorAll('.contour.one').length, hatch: one.querySelectorAll('.beyond-hatch').length, words: one.textContent }));
  assert.ok(seen.line > 0 && seen.hatch > 0);
  assert.match(seen.words, /points that hold/);
}));
