// The guide: each chapter's worksheet is live, carries the reader's cabinet along and can be reset; examples open.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { answerOf, typeInto, untilSheet, worksheet } from './check-page.mjs';
import { engine, texts } from './engine.mjs';
import { checkPage, sample } from './projects.mjs';
import { bothBrowsers, inWords, SITE, until, visit } from './visit.mjs';

after(closeBrowsers);

const html = (name) => readFileSync(join(SITE, name), 'utf8');
const CHAPTERS = readdirSync(SITE).filter((name) => name.endsWith('.html') && /class="leaf chapter"/.test(html(name))).filter((name) => name !== 'steadfoot.html').sort();

test('every chapter has one question and a worksheet', () => {
  assert.ok(CHAPTERS.length >= 6, `${CHAPTERS}`);
  for (const name of CHAPTERS) {
    assert.equal((html(name).match(/<p class="question">/g) ?? []).length, 1, name);
    assert.ok((html(name).match(/<steadfoot-worksheet /g) ?? []).length >= 1, name);
  }
});

// The schedule of a hall is dropped onto its chapter, which has no field of one cabinet.
for (const name of CHAPTERS.filter((one) => !html(one).includes('kind="hall"'))) {
  test(`what is typed into the worksheet of ${name} travels in its links, and can be reset`, () => visit({ page: name }, async ({ page }) => {
    const root = await worksheet(page);
    const path = await root.evaluate((shadow) => [...shadow.querySelectorAll('input[data-path]')].find((input) => input.classList.contains('number') && /^\d/.test(input.value))?.dataset.path);
    assert.ok(path, 'there is a number to change');
    const value = await root.evaluate((shadow, one) => shadow.querySelector(`[data-path="${one}"]`).value, path);
    await typeInto(page, root, path, String(Number(value) * 1.25));
    await until(page, 'the address carries the changed cabinet', () => [...document.querySelectorAll('#top a')].some((link) => link.hash.startsWith('#1.')));
    await root.evaluate((shadow) => shadow.querySelector('[data-key="reset"]').click());
    await untilSheet(page, root, 'the number is back', (shadow, one, text) => shadow.querySelector(`[data-path="${one}"]`).value === text, path, value);
  }));
}

for (const where of bothBrowsers) {
  test(`a cabinet travels through the chapters of the one file, and back ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone', sample()) }, async ({ page }) => {
    const first = await worksheet(page);
    await typeInto(page, first, 'contents[0].mass_kg', '432');
    for (const name of CHAPTERS) {
      const id = name.replace('.html', '');
      await page.evaluate((place) => [...document.querySelectorAll('a')].find((link) => link.getAttribute('href').endsWith(place) && link.closest('#pages')).click(), id);
      await until(page, `${id} is shown alone`, (place) => [...document.querySelectorAll('article.leaf')].filter((leaf) => !leaf.hidden).map((leaf) => leaf.id).join() === place, id);
    }
    await page.evaluate(() => [...document.querySelectorAll('#pages a')].find((link) => link.getAttribute('href').endsWith('load-out')).click());
    await until(page, 'the load-out is shown', () => !document.getElementById('load-out').hidden);
    const root = await worksheet(page);
    assert.equal(await root.evaluate((shadow) => shadow.querySelector('[data-path="contents[0].mass_kg"]')?.value), '432');
  }));

  test(`every example opens and gives the engine's own verdict ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone') }, async ({ page }) => {
    const root = await worksheet(page);
    const { demos } = texts();
    assert.ok(demos.length >= 8, `${demos.length} examples`);
    const wasm = engine();
    for (const [place, demo] of demos.entries()) {
      const select = await root.$('select.examples');
      await select.select(String(place));
      const { title } = JSON.parse(demo.text);
      await untilSheet(page, root, `${demo.file} is there`, (shadow, wanted) => shadow.querySelector('[data-path="title"]').value === wanted, title);
      const { report } = wasm.assess(demo.text, 'si');
      assert.ok(report, `${demo.file} has faults`);
      assert.equal((await answerOf(root)).verdict, report.verdict, demo.file);
      assert.equal(await root.evaluate((shadow) => shadow.querySelectorAll('.results [data-check]').length), report.checks.length, demo.file);
    }
  }));

  test(`the live numbers of the landing page can be dragged, and the drawings follow ${inWords(where)}`, () => visit({ ...where, page: '#index' }, async ({ page }) => {
    const root = await worksheet(page);
    await untilSheet(page, root, 'the drawings are there', (shadow) => shadow.querySelectorAll('svg[data-drawing]').length >= 3);
    const state = () => root.evaluate((shadow) => [shadow.querySelector('[data-answer] .answer-body').textContent, [...shadow.querySelectorAll('svg[data-drawing]')].map((one) => one.outerHTML).join('')]);
    const before = await state();
    const live = await root.$('[data-live="load"]');
    await live.scrollIntoView();
    const box = await live.boundingBox();
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 90, box.y + box.height / 2, { steps: 6 });
    const during = await state();
    await page.mouse.up();
    assert.notEqual(during[0], before[0]);
    assert.notEqual(during[1], before[1]);
    assert.equal((await state())[0], during[0]);
  }));

  test(`a point of the rose opens its own working by pointer ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone', sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    await untilSheet(page, root, 'the rose is drawn', (shadow) => shadow.querySelector('.results svg[data-drawing="rose"] [data-direction-deg]'));
    const points = await root.$$('.results svg[data-drawing="rose"] [data-direction-deg]');
    const seen = new Set();
    for (const place of [1, Math.floor(points.length / 3), Math.floor((2 * points.length) / 3)]) {
      const [fresh] = (await root.$$('.results svg[data-drawing="rose"] [data-direction-deg]')).slice(place);
      const direction = Number(await fresh.evaluate((element) => element.getAttribute('data-direction-deg')));
      await fresh.evaluate((element) => element.dispatchEvent(new MouseEvent('click', { bubbles: true, composed: true })));
      await untilSheet(page, root, 'its working is open', (shadow, degrees) => new RegExp(`${Math.round(degrees)}°`).test(shadow.querySelector('.picked').textContent) && shadow.querySelectorAll('.picked [data-at]').length > 5, direction);
      seen.add(await root.evaluate((shadow) => shadow.querySelector('.picked').textContent));
    }
    assert.equal(seen.size, 3, 'each direction has a working of its own');
  }));

  test(`the look can be chosen and stays on the next page ${inWords(where)}`, () => visit({ ...where, page: '#index' }, async ({ page }) => {
    await worksheet(page);
    const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    const light = await paper();
    await page.$eval('[data-look="dark"]', (button) => button.click());
    assert.notEqual(await paper(), light);
    assert.equal(await page.$eval('[data-look="dark"]', (button) => button.getAttribute('aria-pressed')), 'true');
    await page.reload({ waitUntil: 'load' });
    await until(page, 'the page has started', () => document.querySelector('#not-started').hidden);
    assert.notEqual(await paper(), light);
  }));
}
