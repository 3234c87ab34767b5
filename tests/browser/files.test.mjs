// Project files: saved, opened, dropped; half-typed input survives; what is wrong with a file is said.
import assert from 'node:assert/strict';
import { readFile, writeFile } from 'node:fs/promises';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { answerOf, checksOf, fieldValue, typeInto, untilSheet, worksheet } from './check-page.mjs';
import { engine, texts } from './engine.mjs';
import { checkPage, sample } from './projects.mjs';
import { inWords, savedFiles, visit } from './visit.mjs';

const folder = mkdtempSync(join(tmpdir(), 'steadfoot-files-'));

after(async () => {
  await closeBrowsers();
  rmSync(folder, { recursive: true, force: true });
});

async function fileOf(name, content) {
  const path = join(folder, name);
  await writeFile(path, typeof content === 'string' || Buffer.isBuffer(content) ? content : JSON.stringify(content));
  return path;
}

/** Opens a file by the page's own button for it. */
async function open(root, path) {
  const input = await root.$('input[aria-label="Project file"]');
  await input.uploadFile(path);
}

/** Drops a file onto the page, as the browser would hand it over. */
async function drop(page, name, text) {
  await page.evaluate((file, content) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([content], file, { type: 'application/json' }));
    for (const kind of ['dragenter', 'dragover', 'drop']) {
      document.body.dispatchEvent(new DragEvent(kind, { bubbles: true, cancelable: true, composed: true, dataTransfer: transfer }));
    }
  }, name, text);
}

const save = async (page, root, downloads) => {
  const before = new Set(await savedFiles(downloads, 0));
  await root.evaluate((shadow) => [...shadow.querySelectorAll('button')].find((button) => button.textContent === 'Save').click());
  const files = await savedFiles(downloads, before.size + 1);
  return JSON.parse(await readFile(files.find((file) => !before.has(file)), 'utf8'));
};

const message = (root) => root.evaluate((shadow) => {
  const shown = shadow.querySelector('[data-message]');
  return shown && shown.getClientRects().length > 0 ? { kind: shown.dataset.message, text: shown.textContent } : null;
});

const titled = (root) => fieldValue(root, 'title');

for (const browser of ['chromium', 'firefox']) {
  const where = { browser, from: 'alone' };

  test(`what was saved opens again as it was ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone', sample()) }, async ({ page, downloads }) => {
    const root = await worksheet(page);
    await typeInto(page, root, 'title', 'saved and opened');
    await typeInto(page, root, 'contents[0].mass_kg', '333.25');
    const before = { answer: await answerOf(root), checks: await checksOf(root) };
    const saved = await save(page, root, downloads);
    const expected = { ...sample(), title: 'saved and opened' };
    expected.contents[0].mass_kg = 333.25;
    const { written_by: writer, last_answer: answer, ...rest } = saved;
    assert.deepEqual(rest, expected, 'the file holds the project and nothing else');
    assert.equal(writer, texts().engine ?? texts().version);
    if (answer !== undefined) assert.equal(typeof answer, 'string');
    await typeInto(page, root, 'contents[0].mass_kg', '1');
    await open(root, await fileOf('saved.json', saved));
    await untilSheet(page, root, 'the file is there', (shadow) => shadow.querySelector('[data-path="contents[0].mass_kg"]').value === '333.25');
    assert.deepEqual({ answer: await answerOf(root), checks: await checksOf(root) }, before);
    assert.equal(await message(root), null, 'the same version has nothing to say');
  }));

  test(`a half-typed number survives saving and opening, with its fault beside it ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone', sample()) }, async ({ page, downloads }) => {
    const root = await worksheet(page);
    await typeInto(page, root, 'slab.thickness_mm', '12 m');
    await untilSheet(page, root, 'the fault is told', (shadow) => shadow.querySelector('[data-answer]').dataset.answer === 'faults');
    const fault = await root.evaluate((shadow) => {
      const input = shadow.querySelector('[data-path="slab.thickness_mm"]');
      const described = (input.getAttribute('aria-describedby') ?? '').split(' ').map((id) => shadow.getElementById(id)).filter(Boolean);
      return { invalid: input.getAttribute('aria-invalid'), beside: described.map((one) => one.textContent).join(' '), own: shadow.querySelector('[data-fault-of="slab.thickness_mm"]')?.getClientRects().length };
    });
    assert.equal(fault.invalid, 'true');
    assert.ok(fault.own > 0 && /number/.test(fault.beside), JSON.stringify(fault));
    const saved = await save(page, root, downloads);
    assert.equal(saved.slab.thickness_mm, '12 m');
    await typeInto(page, root, 'slab.thickness_mm', '250');
    await untilSheet(page, root, 'the fault is gone', (shadow) => shadow.querySelector('[data-answer]').dataset.answer !== 'faults');
    await open(root, await fileOf('half.json', saved));
    await untilSheet(page, root, 'the half-typed text is back', (shadow) => shadow.querySelector('[data-path="slab.thickness_mm"]').value === '12 m');
    assert.equal((await answerOf(root)).verdict, 'faults');
  }));

  test(`a file is taken by dropping it ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone', sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    await drop(page, 'dropped.json', JSON.stringify({ ...sample(), title: 'dropped' }));
    await untilSheet(page, root, 'the dropped project is there', (shadow) => shadow.querySelector('[data-path="title"]').value === 'dropped');
  }));

  test(`a dropped file of 10 MB gives a fault, and the project stays ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone', sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    const before = await answerOf(root);
    await page.evaluate(() => {
      const transfer = new DataTransfer();
      transfer.items.add(new File(['{"format":"steadfoot 1","title":"', 'x'.repeat(10_000_000), '"}'], 'giant.json', { type: 'application/json' }));
      document.body.dispatchEvent(new DragEvent('drop', { bubbles: true, cancelable: true, composed: true, dataTransfer: transfer }));
    });
    await untilSheet(page, root, 'the fault is told', (shadow) => shadow.querySelector('[data-message="faults"]'));
    const said = await message(root);
    assert.match(said.text, /1 MB/);
    assert.deepEqual(await answerOf(root), before);
    assert.equal(await titled(root), 'sample');
  }));

  test(`a file that is no project says why, with line and column, and the project stays ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone', sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    await drop(page, 'broken.json', '{"format": "steadfoot 1",\n "title": }');
    await untilSheet(page, root, 'the fault is told', (shadow) => shadow.querySelector('[data-message="faults"]'));
    assert.match((await message(root)).text, /line 2, column 11/i);
    assert.equal(await titled(root), 'sample');
  }));

  test(`duplicate and unknown keys are told of, and the rest is kept ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone') }, async ({ page }) => {
    const root = await worksheet(page);
    const text = JSON.stringify({ ...sample(), colour: 'green' }).replace('"title":"sample"', '"title":"first","title":"second"');
    const faults = engine().assess(text, 'si').faults.map((fault) => fault.sentence);
    assert.equal(faults.length, 2, `${faults}`);
    await drop(page, 'twice.json', text);
    await untilSheet(page, root, 'the faults are told', (shadow) => shadow.querySelector('[data-answer]').dataset.answer === 'faults' || shadow.querySelector('[data-message="faults"]'));
    const all = await root.evaluate((shadow) => shadow.querySelector('.sheet').innerText);
    assert.match(all, /colour/);
    assert.match(all, /title/);
  }));

  test(`a file of another engine version whose answer was another says that the numbers moved ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone') }, async ({ page, downloads }) => {
    const root = await worksheet(page);
    await drop(page, 'old.json', JSON.stringify({ ...sample(), title: 'old', written_by: '0.0.1' }));
    await untilSheet(page, root, 'the old file is there', (shadow) => shadow.querySelector('[data-path="title"]').value === 'old');
    const said = await message(root);
    assert.equal(said?.kind, 'numbers-moved');
    assert.match(said.text, /0\.0\.1/);
    // A file that tells its last answer lets the page say whether the numbers moved.
    const saved = await save(page, root, downloads);
    if (saved.last_answer === undefined) return;
    await drop(page, 'moved.json', JSON.stringify({ ...saved, title: 'moved', written_by: '0.0.1', last_answer: 'holds, 0.01' }));
    await untilSheet(page, root, 'the moved file is there', (shadow) => shadow.querySelector('[data-path="title"]').value === 'moved');
    const moved = await message(root);
    assert.equal(moved?.kind, 'numbers-moved');
    assert.match(moved.text, /holds, 0\.01/);
    await drop(page, 'kept.json', JSON.stringify({ ...saved, title: 'kept', written_by: '0.0.1' }));
    await untilSheet(page, root, 'the kept file is there', (shadow) => shadow.querySelector('[data-path="title"]').value === 'kept');
    assert.notEqual((await message(root))?.kind, 'numbers-moved');
  }));
}
