// The chapter on shaking: rules side by side, spectra and rig are live, and what is saved carries its notes and cautions.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { texts } from './engine.mjs';
import { bothBrowsers, inWords, savedFiles, until, visit } from './visit.mjs';

after(closeBrowsers);

/** The open root of the chapter's worksheet of a kind, brought into view and with its studies worked out. */
async function worksheetOf(page, kind) {
  await until(page, `the worksheet ${kind} is awake`, (one) => document.querySelector(`steadfoot-worksheet[kind="${one}"]`)?.shadowRoot, kind);
  await until(page, `the studies of ${kind} are worked out`, (one) => {
    const studies = [...document.querySelector(`steadfoot-worksheet[kind="${one}"]`).shadowRoot.querySelectorAll('.study')];
    return studies.length > 0 && studies.every((study) => study.dataset.shown !== undefined && study.getAttribute('aria-busy') === 'false');
  }, kind);
  return page.evaluateHandle((one) => document.querySelector(`steadfoot-worksheet[kind="${one}"]`).shadowRoot, kind);
}

const rowsOf = (root, study, caption) => root.evaluate((shadow, id, name) => {
  const table = [...shadow.querySelectorAll(`.study[data-study="${id}"] table`)].find((one) => one.caption.textContent.startsWith(name));
  return [...table.tBodies[0].rows].map((row) => [...row.cells].map((cell) => cell.textContent));
}, study, caption);

for (const where of bothBrowsers) {
  test(`every rule that can be chosen stands beside the others ${inWords(where)}`, () => visit({ ...where, page: 'steadfoot.html#demand' }, async ({ page }) => {
    const root = await worksheetOf(page, 'rules');
    const asked = await rowsOf(root, 'side-by-side', 'What each rule');
    assert.equal(asked.length, texts().rules.demand.length);
    const curves = await root.evaluate((shadow) => shadow.querySelectorAll('.study[data-study="floor-level"] .curve').length);
    assert.ok(curves >= 10, `${curves} lines over the height`);
  }));

  test(`a table of spectra is saved with its numbers, notes and cautions ${inWords(where)}`, () => visit({ ...where, page: 'steadfoot.html#shake-table' }, async ({ page, downloads }) => {
    const root = await worksheetOf(page, 'shake-table');
    const rows = await rowsOf(root, 'required-spectra', 'Telecom zones');
    await root.evaluate((shadow) => {
      const tables = [...shadow.querySelectorAll('.study[data-study="required-spectra"] .study-table')];
      tables.find((one) => one.querySelector('caption').textContent.startsWith('Telecom zones')).querySelector('button').click();
    });
    const [file] = await savedFiles(downloads, 1);
    const lines = (await readFile(file, 'utf8')).trimEnd().split('\r\n');
    assert.match(lines[0], /^frequency \[Hz\],zones 1 and 2 \[g\],zone 3 \[g\],zone 4 \[g\]$/);
    const numbers = lines.slice(1).filter((line) => /^[\d.]+,[\d.]+,[\d.]+,[\d.]+$/.test(line)).map((line) => line.split(',').map(Number));
    assert.equal(numbers.length, rows.length);
    assert.deepEqual(numbers.find(([frequency]) => frequency === 5), [5, 2, 3, 5]);
    assert.ok(lines.some((line) => line.includes('no force to design anchors for')), 'the note comes along');
    for (const caution of texts().cautions) assert.ok(lines.some((line) => line.includes(caution.slice(0, 40).replaceAll('"', '""'))), caution);
  }));

  test(`a rig that is described is compared, and says so in words ${inWords(where)}`, () => visit({ ...where, page: 'steadfoot.html#shake-table' }, async ({ page }) => {
    const root = await worksheetOf(page, 'shake-table');
    const used = await rowsOf(root, 'test-rig', 'How far the rig');
    assert.deepEqual(used.map((row) => [row[0], row[2]]).slice(0, 2), [['payload', 'holds'], ['overturning moment', 'fails']]);
  }));
}

test('the spectra stand on the page without scripts, too', () => visit({ page: 'shake-table.html', scripts: 'off' }, async ({ page }) => {
  const names = await page.$$eval('.study[data-study="required-spectra"] caption', (captions) => captions.map((one) => one.textContent));
  assert.ok(names.length >= 4, `${names}`);
  assert.ok((await page.$eval('.study[data-study="required-spectra"]', (one) => one.textContent)).includes('no force to design anchors for'));
}));
