// The chapter of the floor: its studies come to life, follow a changed field, and the page of questions can be printed.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { worksheet } from './check-page.mjs';
import { texts } from './engine.mjs';
import { ROOT } from './native.mjs';
import { PAPERS, printed } from './paper.mjs';
import { until, visit } from './visit.mjs';

after(closeBrowsers);

const STUDIES = ['ways-of-standing', 'stiffness', 'uneven-floor', 'row-of-cabinets'];
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
    return study && [...study.querySelector('table').querySelectorAll('tbody tr')].map((row) => Number(row.children[4].dataset.value));
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

const ASKED = JSON.parse(readFileSync(join(ROOT, 'demo-configs', '41-raised-floor.json'), 'utf8'));

for (const paper of Object.keys(PAPERS)) {
  test(`what to ask the owner is one page on ${paper}: every field, what may stand there, what waits, what the file says`, () => visit({ ...where, page: 'ask-the-owner.html' }, async ({ page }) => {
    const root = await worksheet(page);
    const rows = () => root.evaluate((shadow) => [...shadow.querySelectorAll('.owner-questions tbody tr')].map((row) => ({ is_open: row.classList.contains('marked'), cells: [...row.children].map((cell) => cell.textContent) })));
    const told = await rows();
    const { asked, not_of_site, parts, rules } = texts();
    const isPut = (one) => one.put !== 'on-ground';
    const rule = rules.demand.find((one) => one.id === ASKED.site.rule);
    const site = rule.fields.filter((field) => !not_of_site.some((head) => field.key.startsWith(head)));
    const questions = told.filter(({ cells }) => cells.length === 5);
    assert.equal(questions.length, asked.filter(isPut).length + site.length, 'one row a question');
    const row = (label) => questions.find(({ cells }) => cells[0].endsWith(label));
    for (const one of asked.filter(isPut)) {
      const part = parts.find(({ id }) => id === one.part);
      const field = part.fields.find(({ key }) => key === one.key);
      assert.ok(row(field ? field.label : part.title), `${one.part}.${one.key} is asked`);
    }
    assert.deepEqual(row('Live load on the aisles').cells.slice(1), ['0 to 100 kPa', 'area load', '2.4 kPa', '']);
    assert.equal(row('Rating of a pedestal').is_open, true);
    assert.equal(row('Span').is_open, false);
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    const { text, sizes } = await printed(page, paper);
    assert.equal(sizes.length, 1, `${sizes.length} sheets`);
    const bare = (words) => words.replace(/\s+/g, '');
    // Symbols are set as formulas, whose letters a PDF has in its own order.
    for (const { cells } of questions.filter(({ cells: [label] }) => !/[A-Z][A-Za-z]?$/.test(label))) assert.ok(bare(text).includes(bare(cells[0])), cells[0]);
    for (const caution of texts().cautions) assert.ok(bare(text).includes(bare(caution)), caution);
    // The reader's units follow.
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await page.click('#switches [data-units="us"]');
    await until(page, 'psf', () => [...document.querySelectorAll('steadfoot-worksheet')].some((one) => one.shadowRoot?.textContent.includes('psf')));
  }));
}
