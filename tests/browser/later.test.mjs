// The landing page comes with a first part of everything; the rest is fetched only when it is wanted.
import assert from 'node:assert/strict';
import { cp, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { engine } from './engine.mjs';
import { ROOT } from './native.mjs';
import { packed } from './projects.mjs';
import { inWords, SITE, until, visit } from './visit.mjs';

after(closeBrowsers);

const LATER = /later\.js/;
const WHERE = [{ browser: 'chromium', from: 'http' }, { browser: 'firefox', from: 'file' }];
const demo = (name) => readFile(join(ROOT, 'demo-configs', name), 'utf8');
const landingWith = (text) => `index.html#1.${packed(text)}`;

/** Waits until the landing page's worksheet has an answer that is one. */
const answered = (page) => until(page, 'the answer is there', () => /^(holds|does_not_hold|cannot_be_said)$/.test(document.querySelector('steadfoot-worksheet').dataset.answer));

const told = (page) => page.evaluate(() => {
  const { answer, utilisation, fingerprint, sentence } = document.querySelector('steadfoot-worksheet').dataset;
  return { answer, utilisation: Number(utilisation), fingerprint, sentence };
});

for (const where of WHERE) {
  test(`the landing page needs no more than its first part for its own cabinet ${inWords(where)}`, () => visit(where, async ({ page, requests }) => {
    await answered(page);
    const before = await told(page);
    const root = await page.evaluateHandle(() => document.querySelector('steadfoot-worksheet').shadowRoot);
    // Its numbers are turned, far and back; its units are changed; a direction of the rose opens to its working.
    for (const [live, ...values] of [['load', '1000', '5000'], ['strength', '0.1', '1.5']]) {
      const number = await root.$(`[data-live="${live}"]`);
      await number.focus();
      for (const key of ['PageUp', 'PageUp', 'PageDown', 'ArrowDown', 'Escape']) await page.keyboard.press(key);
      for (const typed of values) {
        await (await root.$(`[data-live="${live}"]`)).focus();
        for (const key of [...typed, 'Enter']) await page.keyboard.press(key);
        await answered(page);
      }
    }
    assert.notDeepEqual(await told(page), before, 'the turned numbers count');
    await page.click('[data-units="us"]');
    await page.click('[data-look="dark"]');
    await until(page, 'the units are US', () => document.querySelector('steadfoot-worksheet').dataset.units === 'us');
    const point = await root.$('.rose [role="button"]');
    await point.evaluate((element) => element.focus());
    await page.keyboard.press('Enter');
    await until(page, 'the working is open', () => document.querySelector('steadfoot-worksheet').shadowRoot.querySelectorAll('.picked .step').length > 3);
    assert.deepEqual(requests.filter((url) => LATER.test(url)), []);
    assert.equal(await page.evaluate(() => globalThis.steadfoot.later), 'away');
  }));

  test(`a cabinet by another rule brings the rest, and then the right answer and its working ${inWords(where)}`, async () => {
    const text = await demo('13-partial-factors.json');
    const { report } = engine().assess(text, 'si');
    await visit({ ...where, page: landingWith(text) }, async ({ page, requests }) => {
      await answered(page);
      const root = await page.evaluateHandle(() => document.querySelector('steadfoot-worksheet').shadowRoot);
      await until(page, 'the rose is drawn', (shadow) => shadow.querySelector('.rose [role="button"]'), root);
      // Picked before its texts are there, the direction opens once they are.
      await root.evaluate((shadow) => shadow.querySelector('.rose [role="button"]').dispatchEvent(new MouseEvent('click', { bubbles: true })));
      await until(page, 'the working is open', (shadow) => shadow.querySelectorAll('.picked .step').length > 3, root);
      assert.equal(await page.evaluate(() => globalThis.steadfoot.later), 'here');
      const now = await told(page);
      assert.deepEqual([now.answer, now.fingerprint], [report.verdict, report.fingerprint]);
      if (report.governs !== null) assert.equal(now.utilisation, report.checks[report.governs].utilisation);
      // Firefox tells nobody of what a page asks for on disk.
      if (where.from === 'http') assert.equal(requests.filter((url) => LATER.test(url)).length, 1);
      assert.equal(await root.evaluate((shadow) => shadow.querySelector('.later-note')), null);
    });
  });

  test(`where the rest cannot be had the page says so, shows nothing else, and goes on when it can ${inWords(where)}`, async () => {
    const site = await mkdtemp(join(tmpdir(), 'steadfoot-first-'));
    try {
      await cp(SITE, site, { recursive: true });
      await rename(join(site, 'later.js'), join(site, 'away.js'));
      const text = await demo('50-nobody-knows.json');
      await visit({ ...where, site, page: landingWith(text), trouble: 'expected' }, async ({ page }) => {
        await until(page, 'it is said', () => document.querySelector('steadfoot-worksheet').shadowRoot?.querySelector('[data-later="missing"]'));
        const seen = await page.evaluate(() => {
          const { shadowRoot, dataset } = document.querySelector('steadfoot-worksheet');
          return { answer: dataset.answer, sentence: dataset.sentence ?? null, words: shadowRoot.querySelector('.answer').innerText, results: getComputedStyle(shadowRoot.querySelector('.results')).display };
        });
        assert.equal(seen.answer, 'waiting');
        assert.equal(seen.sentence, null);
        assert.match(seen.words, /later\.js/);
        assert.equal(seen.results, 'none');
        const again = () => page.evaluate(() => document.querySelector('steadfoot-worksheet').shadowRoot.querySelector('[data-later] button').click());
        // What a browser has kept of another build does not fit.
        const whole = await readFile(join(site, 'away.js'), 'utf8');
        const other = whole.replace(/build:"[0-9a-f]{12}"/, 'build:"000000000000"');
        assert.notEqual(other, whole);
        await writeFile(join(site, 'later.js'), other);
        await again();
        await until(page, 'it has come and is not taken', () => globalThis.steadfootLater === undefined && globalThis.steadfoot.later === 'missing');
        assert.equal((await told(page)).sentence, undefined);
        await rename(join(site, 'away.js'), join(site, 'later.js'));
        await again();
        await answered(page);
        const { report } = engine().assess(text, 'si');
        assert.equal((await told(page)).fingerprint, report.fingerprint);
      });
      await rename(join(site, 'later.js'), join(site, 'away.js'));
      // A chapter says so above the results that were worked out for it beforehand, which stay.
      await visit({ ...where, site, page: 'demand.html', trouble: 'expected' }, async ({ page }) => {
        await until(page, 'it is said', () => /later\.js/.test(document.querySelector('steadfoot-worksheet').innerText));
        assert.equal(await page.evaluate(() => document.querySelectorAll('steadfoot-worksheet')[0].shadowRoot), null);
      });
    } finally {
      await rm(site, { recursive: true, force: true });
    }
  });
}
