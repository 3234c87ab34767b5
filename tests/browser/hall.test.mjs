// A hall full: a schedule is assessed on the page as on the command line, listed, drawn, opened, saved and printed.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { violations } from './access.mjs';
import { closeBrowsers } from './browsers.mjs';
import { untilSheet, worksheet } from './check-page.mjs';
import { commandLine, ROOT } from './native.mjs';
import { flowing, printed } from './paper.mjs';
import { bothBrowsers, inWords, savedFiles, visit } from './visit.mjs';

after(closeBrowsers);

const HALL = join(ROOT, 'demo-configs/hall/hall.json');
const SCHEDULE = join(ROOT, 'demo-configs/hall/schedule.csv');

const done = (page, root, rows) => untilSheet(page, root, 'every row is assessed', (shadow, count) => {
  const hall = shadow.querySelector('.hall-full');
  return hall.dataset.stage === 'done' && Number(hall.dataset.done) === count;
}, rows);

const fileOf = (name, text) => {
  const path = join(mkdtempSync(join(tmpdir(), 'steadfoot-hall-')), name);
  writeFileSync(path, text);
  return path;
};

const bring = async (root, path) => (await root.$('.hall-full input[type="file"]')).uploadFile(path);
const press = (root, key) => root.evaluate((shadow, one) => shadow.querySelector(`[data-key="${one}"]`).click(), key);

for (const where of bothBrowsers) {
  test(`the hall of the example comes out as on the command line, is drawn to scale, and its rows open ${inWords(where)}`, () => visit({ ...where, page: '#hall' }, async ({ page, downloads }) => {
    const root = await worksheet(page);
    await done(page, root, 48);
    const native = await commandLine(['--hall', HALL, SCHEDULE, '--csv']);
    const seen = await root.evaluate((shadow) => ({
      counts: Object.fromEntries([...shadow.querySelectorAll('.hall-summary li')].map((line) => [line.dataset.outcome, Number(line.dataset.count)])),
      drawn: Object.fromEntries([...shadow.querySelectorAll('.hall-plan [data-count]')].map((path) => [path.dataset.outcome, Number(path.dataset.count)])),
      rows: shadow.querySelector('[role="grid"]').getAttribute('aria-rowcount'),
      rowsThere: shadow.querySelectorAll('tr[data-row]').length,
    }));
    assert.deepEqual(seen.counts, { does_not_hold: 3, cannot_be_said: 2, faults: 1, holds: 42 });
    assert.deepEqual(seen.drawn, seen.counts);
    assert.equal(seen.rows, '49');
    assert.ok(seen.rowsThere < 48, 'only rows in sight are there');
    if (where.browser === 'chromium') {
      await press(root, 'hall Save as CSV');
      const [file] = await savedFiles(downloads);
      assert.deepEqual(readFileSync(file, 'utf8').split('\r\n').filter((line) => line !== ''), native);
    }
    // From row to row by keys, as far as the last one, and there it opens.
    await root.evaluate((shadow) => shadow.querySelector('tr[data-row="1"]').focus());
    await page.keyboard.press('End');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await untilSheet(page, root, 'the row is opened', (shadow) => shadow.querySelector('.hall-detail .onward a'));
    const opened = await root.evaluate((shadow) => ({ words: shadow.querySelector('.hall-detail').textContent, address: shadow.querySelector('.onward a').href, focus: shadow.activeElement.dataset.row }));
    assert.match(opened.words, /Place D11Holds/);
    assert.equal(opened.focus, '47');
    const fingerprint = native[47].split(',').find((cell) => /^[0-9a-f]{12}$/.test(cell));
    await page.goto(opened.address);
    await page.reload();
    const whole = await worksheet(page);
    await untilSheet(page, whole, 'the whole check of that row is shown', (shadow, one) => shadow.host.dataset.fingerprint === one, fingerprint);
  }));
}

test('rows sort and filter by key and word, faults stand by their rows, and the summary prints with its cautions', () => visit({ page: 'hall.html' }, async ({ page }) => {
  const root = await worksheet(page);
  await done(page, root, 48);
  assert.deepEqual(await violations(page), []);
  const places = () => root.evaluate((shadow) => [...shadow.querySelectorAll('tr[data-row] .place')].slice(0, 6).map((cell) => cell.textContent));
  await press(root, 'sort outcome');
  assert.deepEqual(await places(), ['D01', 'D02', 'D03', 'C11', 'C12', 'D05']);
  await press(root, 'outcome does_not_hold');
  await (await root.$('.hall-search input')).type('drilled');
  assert.deepEqual(await places(), ['C11', 'C12']);
  assert.equal(await root.evaluate((shadow) => shadow.querySelector('[role="grid"]').getAttribute('aria-rowcount')), '3');
  await (await root.$('.hall-search input')).evaluate((input) => {
    input.value = 'D05';
    input.dispatchEvent(new Event('input'));
  });
  await root.evaluate((shadow) => shadow.querySelector('tr[data-row]').click());
  assert.match(await root.evaluate((shadow) => shadow.querySelector('.hall-detail').textContent), /Has faults.*the number is too large: lowest 9.*Row 41, line 42 of the schedule: D05,recorder,lowest 9/);
  await page.evaluate(() => {
    window.print = () => {};
  });
  await press(root, 'hall Print a summary');
  const { text } = await printed(page, 'A4');
  assert.match(flowing(text), /A hall full Halvane Tide Survey, Orrin Sound/);
  assert.match(flowing(text), /A licensed engineer and the local code govern/);
  for (const place of ['D01', 'C11', 'D05']) assert.ok(text.includes(place));
}));

test('what cannot be read is told with its place, what can is assessed, and a long list neither blocks the page nor fills it', () => visit({ page: 'hall.html' }, async ({ page }) => {
  const root = await worksheet(page);
  await done(page, root, 48);
  const faults = () => root.evaluate((shadow) => [...shadow.querySelectorAll('.hall-body > [role="alert"] li')].map((line) => line.textContent));
  await bring(root, fileOf('wrong.csv', 'name,type\nA,relay\n'));
  await untilSheet(page, root, 'the head is refused', (shadow) => shadow.querySelector('.hall-full').dataset.stage === 'refused');
  assert.match((await faults())[0], /^name \(line 1, column 1\): there is no such key here/);
  await bring(root, fileOf('mixed.csv', '\ufeffplace;type;slab.thickness_mm\r\nA;relay;250\r\nA;relay;250\r\nB;relay;10 in\r\nC;"relay;250\r\nD;relay;\r\n'));
  await done(page, root, 5);
  const outcomes = await root.evaluate((shadow) => [...shadow.querySelectorAll('tr[data-row]')].map((row) => [row.dataset.outcome, row.querySelector('.why').textContent]));
  assert.deepEqual(outcomes.map(([outcome]) => outcome), ['holds', 'faults', 'faults', 'faults', 'holds']);
  assert.match(outcomes[1][1], /the name is used twice: A/);
  assert.match(outcomes[2][1], /the unit is not that of its column: 10 in/);
  assert.match(outcomes[3][1], /a quote is never closed/);
  const lines = Array.from({ length: 1500 }, (_, at) => `P${at},relay,${250 + at / 100}`);
  await page.evaluate(() => {
    window.longTasks = [];
    new PerformanceObserver((list) => window.longTasks.push(...list.getEntries().map((task) => task.duration))).observe({ type: 'longtask' });
  });
  await bring(root, fileOf('long.csv', ['place,type,cabinet.frame.mass_kg', ...lines].join('\n')));
  await done(page, root, 1500);
  const long = await root.evaluate((shadow) => ({ rows: shadow.querySelectorAll('tr[data-row]').length, outcomes: [...new Set([...shadow.querySelectorAll('tr[data-row]')].map((row) => row.dataset.outcome))], count: shadow.querySelector('[role="grid"]').getAttribute('aria-rowcount'), tasks: window.longTasks }));
  assert.equal(long.count, '1501');
  assert.ok(!long.outcomes.includes('faults'), `${long.outcomes}`);
  assert.ok(long.rows < 60, `${long.rows} rows are there`);
  assert.deepEqual(long.tasks.filter((milliseconds) => milliseconds > 150), [], 'nothing holds the page up');
  // Stopped half way, what was done stays. So long that the middle is not missed.
  const many = Array.from({ length: 20000 }, (_, at) => `P${at},relay,${250 + at / 1000}`);
  await bring(root, fileOf('many.csv', ['place,type,cabinet.frame.mass_kg', ...many].join('\n')));
  await untilSheet(page, root, 'some are assessed', (shadow) => shadow.querySelector('.hall-full').dataset.stage === 'assessing' && Number(shadow.querySelector('.hall-full').dataset.done) > 30);
  await press(root, 'hall Stop');
  const kept = await root.evaluate((shadow) => ({ stage: shadow.querySelector('.hall-full').dataset.stage, words: shadow.querySelector('.hall-told').textContent }));
  assert.equal(kept.stage, 'stopped');
  assert.match(kept.words, /^\d+ of 20000 rows were assessed before it was stopped/);
}));

test('with scripts off the table and the plan of the example are there', () => visit({ page: 'hall.html', scripts: 'off' }, async ({ page }) => {
  const seen = await page.evaluate(() => ({
    rows: document.querySelectorAll('.hall-table tr[data-row]').length,
    drawn: [...document.querySelectorAll('.hall-plan [data-count]')].map((path) => Number(path.dataset.count)),
    fault: document.querySelector('tr[data-row="41"] .why').textContent,
  }));
  assert.equal(seen.rows, 48);
  assert.deepEqual(seen.drawn, [3, 2, 1, 42]);
  assert.match(seen.fault, /the number is too large: lowest 9/);
}));
