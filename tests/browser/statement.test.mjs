// The zone statement with its sheet, and another file beside this one.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { untilSheet, worksheet } from './check-page.mjs';
import { engine, texts } from './engine.mjs';
import { ROOT } from './native.mjs';
import { printed } from './paper.mjs';
import { checkPage } from './projects.mjs';
import { visit } from './visit.mjs';

after(closeBrowsers);

const DEMO = JSON.parse(readFileSync(join(ROOT, 'demo-configs', '02-full.json'), 'utf8'));
const bare = (words) => words.replace(/\s+/g, '');

test('every row of the zone statement is searched, and its sheet is printed with bolts, concrete, fingerprint and cautions', () => visit({ page: 'zone-statement.html' }, async ({ page }) => {
  const root = await worksheet(page);
  await untilSheet(page, root, 'it is worked out', (shadow) => {
    const study = shadow.querySelector('[data-study="zone-statement"]');
    return study && study.getAttribute('aria-busy') === 'false';
  });
  const rows = await root.evaluate((shadow) => [...shadow.querySelector('[data-study="zone-statement"] table').querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent)));
  assert.ok(rows.length > 80, `${rows.length} rows`);
  assert.ok(rows.every((row) => !row.includes('not tried')));
  assert.ok(rows.filter((row) => / to /.test(row[4])).length > 10, 'loads are told as intervals');
  await page.evaluate(() => {
    globalThis.print = () => { globalThis.wasPrinted = true; };
  });
  await root.evaluate((shadow) => shadow.querySelector('[data-key="print sheet"]').click());
  const all = bare((await printed(page, 'A4')).text);
  const { report } = engine().assess(JSON.stringify(DEMO), 'si');
  for (const words of [report.fingerprint, DEMO.title, DEMO.anchorage.bolt, 'Signature', 'UBC 1997', 'Zone statement', 'Steadfoot engine ' + report.engine, ...texts().cautions]) assert.ok(all.includes(bare(words)), words);
}));

test('another file beside this one: what differs, what moved, the way to a step, faults, and on paper', () => visit({ page: checkPage('file', DEMO) }, async ({ page }) => {
  const root = await worksheet(page);
  const folder = mkdtempSync(join(tmpdir(), 'steadfoot-compared-'));
  const file = (name, project) => {
    writeFileSync(join(folder, name), typeof project === 'string' ? project : JSON.stringify(project));
    return join(folder, name);
  };
  const yesterday = structuredClone(DEMO);
  yesterday.slab.strength_mpa = 21;
  yesterday.contents.reverse();
  const input = await root.$('[aria-label="File to compare with"]');
  await input.uploadFile(file('yesterday.json', yesterday));
  await untilSheet(page, root, 'it is compared', (shadow) => shadow.querySelector('[data-moved]'));
  const told = await root.evaluate((shadow) => ({
    inputs: [...shadow.querySelectorAll('[data-input]')].map((row) => [row.dataset.input, row.dataset.change, row.dataset.alone]),
    checks: [...shadow.querySelectorAll('[data-moved]')].map((one) => one.dataset.moved),
    steps: [...shadow.querySelectorAll('[data-moved="anchor.tension.breakout"] li')].map((one) => [one.dataset.atMoved.split('/').pop(), Number(one.dataset.before), Number(one.dataset.after), one.dataset.from, one.className]),
  }));
  assert.deepEqual(told.inputs.sort(), [['contents', 'moved', 'moves_nothing'], ['slab.strength_mpa', 'value', 'moves']].sort());
  const [was, is] = [yesterday, DEMO].map((project) => engine().assess(JSON.stringify(project), 'si').report.checks);
  const moved = is.filter((check) => ['value', 'limit', 'utilisation', 'status'].some((key) => was.find((one) => one.id === check.id)?.[key] !== check[key]));
  assert.deepEqual(told.checks, moved.map((check) => check.id));
  const strength = told.steps.find(([symbol, , , , enters]) => symbol === "f'_c" && enters === 'enters');
  assert.deepEqual(strength.slice(1, 4), [21, 28, '']);
  await root.evaluate((shadow) => {
    const [one] = [...shadow.querySelectorAll('[data-moved="anchor.tension.breakout"] li')].filter((li) => li.dataset.atMoved.endsWith('/N_b'));
    one.closest('details').open = true;
    one.querySelector('button').click();
  });
  assert.ok(await root.evaluate((shadow) => shadow.activeElement && shadow.activeElement.dataset.at.endsWith('tension-breakout/N_b')), 'the step itself has the focus');
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const paper = await root.evaluate((shadow) => shadow.querySelector('.paper').textContent);
  assert.ok(paper.includes('Changes since yesterday.json') && paper.replace(/\s+/g, ' ').includes('Strength of the concrete'));
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await input.uploadFile(file('faulty.json', JSON.stringify(yesterday).replace('"strength_mpa":21', '"strength_mpa":-1')));
  await untilSheet(page, root, 'its faults are told', (shadow) => /slab|strength/i.test(shadow.querySelector('.compared [data-message="faults"]')?.textContent || ''));
  assert.equal(await root.evaluate((shadow) => shadow.querySelectorAll('[data-moved]').length), 0);
}));
