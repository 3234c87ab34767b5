// The address carries the project: there and back, with units, into the next chapter, and garbage says what it is.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { closeBrowsers, PATIENCE_MS } from './browsers.mjs';
import { answerOf, checksOf, fieldValue, typeInto, untilSheet, worksheet } from './check-page.mjs';
import { checkPage, packed, sample, unpacked } from './projects.mjs';
import { inWords, until, visit } from './visit.mjs';

after(closeBrowsers);

const places = ['chromium', 'firefox'].flatMap((browser) => ['file', 'http', 'alone'].map((from) => ({ browser, from })));

const projectIn = (hash) => JSON.parse(unpacked(hash.replace(/^#1\./, '').split('.')[0]));

/** The address once it holds what is wanted; it follows the typing after a moment. */
async function addressWith(page, wanted, read = () => location.hash) {
  for (let waited = 0; waited < PATIENCE_MS; waited += 100) {
    const hash = await page.evaluate(read);
    if (hash?.startsWith('#1.') && wanted(projectIn(hash))) return hash;
    await new Promise((done) => { setTimeout(done, 100); });
  }
  throw new Error('the address never holds what was typed');
}

for (const where of places) {
  test(`what is typed stands in the address, and the address brings it back ${inWords(where)}`, async () => {
    let address = '';
    let before = null;
    await visit({ ...where, page: checkPage(where.from, sample()) }, async ({ page }) => {
      const root = await worksheet(page);
      await typeInto(page, root, 'contents[1].mass_kg', '222.5');
      address = await addressWith(page, (project) => project.contents[1].mass_kg === 222.5);
      before = { answer: await answerOf(root), checks: await checksOf(root) };
    });
    const expected = sample();
    expected.contents[1].mass_kg = 222.5;
    assert.deepEqual(projectIn(address), expected);
    await visit({ ...where, page: where.from === 'alone' ? address : `check.html${address}` }, async ({ page }) => {
      const root = await worksheet(page);
      assert.equal(await fieldValue(root, 'contents[1].mass_kg'), '222.5');
      assert.deepEqual({ answer: await answerOf(root), checks: await checksOf(root) }, before);
    });
  });

  test(`garbage in the address says so, and the page works ${inWords(where)}`, async () => {
    const garbage = ['1.AAAA', '1.%00%ff', '1.!!!', `1.${packed('no project')}`, `1.${packed('x'.repeat(3_000_000))}`, `1.${packed(JSON.stringify(sample())).slice(0, 200)}`, `1.${packed('{"format":')}`];
    for (const one of garbage) {
      const page_ = where.from === 'alone' ? `#${one}.check` : `check.html#${one}`;
      await visit({ ...where, page: page_ }, async ({ page }) => {
        const root = await worksheet(page);
        const said = await root.evaluate((shadow) => shadow.querySelector('[data-message]')?.textContent ?? '');
        assert.match(said, /address/i, `${one.slice(0, 40)}: "${said}"`);
      });
    }
    await visit({ ...where, page: where.from === 'alone' ? '#nowhere<script>' : 'check.html#nowhere<script>' }, ({ page }) => until(page, 'the page has started', () => document.querySelector('#not-started').hidden));
  });
}

for (const browser of ['chromium', 'firefox']) {
  test(`units travel with a project's address in ${browser}`, () => visit({ browser, from: 'alone', page: checkPage('alone', sample(), 'us') }, async ({ page }) => {
    const root = await worksheet(page);
    assert.equal(await page.$eval('[data-units="us"]', (button) => button.getAttribute('aria-pressed')), 'true');
    assert.equal(await fieldValue(root, 'cabinet.width_mm'), '39.3701');
  }));

  test(`a number comes back as typed after SI, US, SI in ${browser}`, () => visit({ browser, from: 'alone', page: checkPage('alone', sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    await typeInto(page, root, 'cabinet.height_mm', '2345.60');
    const press = async (system) => {
      await page.$eval(`[data-units="${system}"]`, (button) => button.click());
      await untilSheet(page, root, 'the units are those', (shadow, unit) => shadow.querySelector('[data-path="cabinet.height_mm"]').closest('.field').querySelector('.unit').textContent === unit, system === 'us' ? 'in' : 'mm');
    };
    await press('us');
    const us = await fieldValue(root, 'cabinet.height_mm');
    assert.equal(us, '92.3465');
    await press('si');
    assert.equal(await fieldValue(root, 'cabinet.height_mm'), '2345.60');
    await press('us');
    assert.equal(await fieldValue(root, 'cabinet.height_mm'), us);
  }));

  test(`a project too long for the address says to save a file in ${browser}`, () => visit({ browser, from: 'alone', page: checkPage('alone', sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    const project = sample();
    let seed = 1;
    const letters = () => Array.from({ length: 60 }, () => String.fromCharCode(97 + (seed = (seed * 48271) % 2147483647) % 26)).join('');
    for (let place = 0; place < 200; place += 1) project.contents.push({ ...project.contents[0], name: letters(), mass_kg: 1 });
    await page.evaluate((text) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], 'long.json'));
      document.body.dispatchEvent(new DragEvent('drop', { bubbles: true, cancelable: true, composed: true, dataTransfer: transfer }));
    }, JSON.stringify(project));
    await untilSheet(page, root, 'the page says to save a file', (shadow) => /save a file instead/i.test(shadow.querySelector('.sheet').innerText) || /save a file instead/i.test(document.body.innerText));
    assert.ok((await page.evaluate(() => location.hash)).length < 8300);
  }));

  test(`the cabinet travels to the next page by its links in ${browser}`, () => visit({ browser, from: 'http', page: checkPage('http', sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    await typeInto(page, root, 'contents[0].mass_kg', '456');
    await addressWith(page, (project) => project.contents[0].mass_kg === 456, () => document.querySelector('#top a.brand').hash);
    const without = await page.$$eval('a[href*=".html"]', (list) => list.map((link) => link.href).filter((href) => !/\.html#1\./.test(href)));
    assert.deepEqual(without, [], 'every link to a page of the guide takes it along');
  }));
}
