// The chapter of the floor: its studies come to life, follow a changed field, and the page of questions can be printed.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { until, visit } from './visit.mjs';

after(closeBrowsers);

const STUDIES = ['ways-of-standing', 'stiffness', 'uneven-floor', 'row-of-cabinets', 'ask-the-owner'];
const where = { from: 'http', browser: 'chromium', page: 'floor.html' };

test('every study of the floor shows its tables in the chapter', () => visit(where, async ({ page }) => {
  await scrolledThrough(page);
  await until(page, 'all studies are shown', (ids) => {
    const shown = [...document.querySelectorAll('steadfoot-worksheet')].flatMap((one) => [...(one.shadowRoot?.querySelectorAll('.study[data-shown="true"]') ?? [])].map((study) => study.dataset.study));
    return ids.every((id) => shown.includes(id));
  }, STUDIES);
  const rows = await page.evaluate(() => [...document.querySelectorAll('steadfoot-worksheet')].flatMap((one) => [...(one.shadowRoot?.querySelectorAll('.study') ?? [])].map((study) => [study.dataset.study, study.querySelectorAll('tbody tr').length])));
  for (const [id, count] of rows) assert.ok(count > 0, `${id} has no rows`);
}));

test('a wide base presses less than a foot, and a foot less than a caster, as the page writes it', () => visit(where, async ({ page }) => {
  await scrolledThrough(page);
  const read = () => {
    const study = [...document.querySelectorAll('steadfoot-worksheet')].map((one) => one.shadowRoot?.querySelector('.study[data-study="ways-of-standing"][data-shown="true"]')).find(Boolean);
    return study && [...study.querySelector('table').querySelectorAll('tbody tr')].map((row) => Number(row.lastElementChild.dataset.value));
  };
  await until(page, 'the ways are shown', read);
  const [casters, feet, bases] = await page.evaluate(read);
  assert.ok(casters > feet && feet > bases && bases > 0, [casters, feet, bases].join(' '));
}));

/** Worksheets wake when they come near, so a reader's way down the page is gone. */
async function scrolledThrough(page) {
  await page.evaluate(async () => {
    for (let y = 0; y < document.documentElement.scrollHeight; y += 600) {
      window.scrollTo(0, y);
      await new Promise((done) => { setTimeout(done, 40); });
    }
  });
}
