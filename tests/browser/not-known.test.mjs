// What is not known, on the page: switched at a field, tried in a worker, told first, kept by address and undo, printed.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { answerOf, typeInto, untilSheet, worksheet } from './check-page.mjs';
import { checkPage, sample } from './projects.mjs';
import { visit } from './visit.mjs';

after(closeBrowsers);

const EMBEDMENT = 'anchorage.embedment_mm';
const host = (page) => page.evaluate(() => ({ ...document.querySelector('steadfoot-worksheet').dataset }));
const isTried = (shadow) => shadow.host.dataset.tried !== undefined;
const pressed = (root, key) => root.evaluate((shadow, selector) => shadow.querySelector(selector).click(), `[data-key="${key}"]`);

test('a field that is not known gets two ends, and the answer is that of everything tried', () => visit({ from: 'http', browser: 'chromium', page: checkPage('http', sample()) }, async ({ page }) => {
  const root = await worksheet(page);
  const before = await host(page);
  await pressed(root, `open ${EMBEDMENT}`);
  // Two ends that are one are the number itself.
  assert.equal((await host(page)).sentence, before.sentence);
  assert.equal((await host(page)).fingerprint, before.fingerprint);
  await typeInto(page, root, `${EMBEDMENT}.between[0]`, '40');
  await untilSheet(page, root, 'it was tried', isTried);
  const { verdict, words } = await answerOf(root);
  assert.equal(verdict, 'cannot_be_said');
  assert.match(words, /^With 1 of the inputs not known it depends: of \d+ ways in which they may be, it holds once bolted in \d+ and does not hold in \d+\./);
  assert.notEqual((await host(page)).fingerprint, before.fingerprint);
  const told = await root.evaluate((shadow) => ({
    settles: shadow.querySelector('[data-settles]')?.dataset.settles,
    standIns: shadow.querySelectorAll('[data-stand-in]').length,
    lives: shadow.querySelectorAll('.answer .live').length,
    standing: shadow.querySelector('.standing .words').textContent,
  }));
  assert.equal(told.settles, EMBEDMENT);
  assert.ok(told.standIns >= 1, 'what stands for one way only says so');
  assert.equal(told.lives, 0, 'no number of one way can be turned');
  assert.match(told.standing, /^Not known: holds in \d+ of \d+ ways tried$/);

  // The wrong way round is a fault beside the field.
  await typeInto(page, root, `${EMBEDMENT}.between[0]`, '400');
  await untilSheet(page, root, 'a fault stands beside the field', (shadow) => [...shadow.querySelectorAll('.field [data-fault-of="anchorage.embedment_mm.between"]')].some((fault) => !fault.hidden));
  assert.equal((await host(page)).answer, 'faults');
  await typeInto(page, root, `${EMBEDMENT}.between[0]`, '40');
  await untilSheet(page, root, 'it was tried again', isTried);

  // The nearest way that does not hold can be looked at, and undone.
  await pressed(root, 'take nearest');
  assert.equal((await host(page)).answer, 'does_not_hold');
  await pressed(root, 'tool Undo');
  await untilSheet(page, root, 'the range is back', isTried);

  // The printed sheet says it too.
  const paper = await root.evaluate((shadow) => {
    dispatchEvent(new Event('beforeprint'));
    const sheet = shadow.querySelector('.paper');
    const said = { words: sheet.textContent, opens: sheet.querySelectorAll('[data-open]').length };
    dispatchEvent(new Event('afterprint'));
    return said;
  });
  assert.equal(paper.opens, 1);
  assert.match(paper.words, /With 1 of the inputs not known it depends/);
  assert.match(paper.words, /"between"/);

  // The address carries it.
  await page.waitForFunction(() => location.hash.startsWith('#1.'));
  await new Promise((done) => { setTimeout(done, 600); });
  await page.reload();
  const again = await worksheet(page);
  await untilSheet(page, again, 'it was tried after the reload', isTried);
  assert.equal(await again.evaluate((shadow) => shadow.querySelector('[data-path="anchorage.embedment_mm.between[0]"]').value), '40');

  // In a table a range is typed; a choice gets a tick for each word, and one tick is none too many.
  await typeInto(page, again, 'contents[0].mass_kg', '500 to 700');
  await pressed(again, 'open slab.cracked');
  await untilSheet(page, again, 'three are open', (shadow) => shadow.querySelectorAll('[data-open]').length >= 3 && shadow.host.dataset.tried !== undefined);
  assert.equal(await again.evaluate((shadow) => shadow.querySelector('[data-path="contents[0].mass_kg"]').value), '500 to 700');
  await pressed(again, 'slab.cracked false');
  await untilSheet(page, again, 'one word is no set', (shadow) => shadow.host.dataset.answer === 'faults');
  await pressed(again, 'open slab.cracked');
  await untilSheet(page, again, 'it is known again', (shadow) => shadow.host.dataset.answer === 'cannot_be_said' && shadow.host.dataset.tried !== undefined);
}));

const STUDIES = ['not-known', 'what-matters', 'what-to-move-down'];

test('the three questions of the chapter are answered', () => visit({ from: 'http', browser: 'chromium', page: 'not-known.html' }, async ({ page }) => {
  await page.waitForFunction((ids) => {
    window.scrollBy(0, 400);
    const shown = [...document.querySelectorAll('steadfoot-worksheet')].flatMap((one) => [...(one.shadowRoot?.querySelectorAll('.study[data-shown="true"]') ?? [])]);
    return ids.every((id) => shown.some((study) => study.dataset.study === id && study.querySelectorAll('tbody tr').length > 0));
  }, { timeout: 30000, polling: 200 }, STUDIES);
  // Inputs are called by the labels of their fields, in the table and above the bars alike.
  const [rows, bars] = await page.evaluate(() => {
    const studies = [...document.querySelectorAll('steadfoot-worksheet')].flatMap((one) => [...one.shadowRoot.querySelectorAll('.study[data-study="what-matters"]')]);
    return ['tbody td:first-child', 'svg text'].map((places) => [...studies[0].querySelectorAll(places)].map((one) => one.textContent.replaceAll('_', '')));
  });
  assert.ok(rows.includes('Site, Design acceleration SDS'), rows.join('; '));
  assert.ok(rows.slice(0, 5).every((name) => /^[A-Z][^:]*, [A-Z]/.test(name) && bars.includes(name)), bars.join('; '));
}));
