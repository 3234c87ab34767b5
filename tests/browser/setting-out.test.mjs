// From the sheet to the drill: the sheet's numbers, its circles, holes as drilled, its print, and patterns of anchors.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { answerOf, typeInto, untilSheet, worksheet } from './check-page.mjs';
import { engine, texts } from './engine.mjs';
import { ROOT } from './native.mjs';
import { PAPERS, printed } from './paper.mjs';
import { checkPage, sample } from './projects.mjs';
import { bothBrowsers, inWords, until, visit } from './visit.mjs';

after(closeBrowsers);

const DEMO = JSON.parse(readFileSync(join(ROOT, 'demo-configs', '07-slab-edge.json'), 'utf8'));

const settled = (page, root, id) => untilSheet(page, root, `${id} is worked out`, (shadow, one) => {
  const study = shadow.querySelector(`[data-study="${one}"]`);
  return study && study.getAttribute('aria-busy') === 'false';
}, id);

const rowsOf = (root, id, number) => root.evaluate((shadow, one, place) => {
  const table = shadow.querySelectorAll(`[data-study="${one}"] table`)[place];
  const names = [...table.querySelectorAll('thead th')].map((head) => head.textContent);
  return [...table.querySelectorAll('tbody tr')].map((row) => Object.fromEntries([...row.children].map((cell, at) => [names[at], cell.dataset.value === undefined ? cell.textContent : Number(cell.dataset.value)])));
}, id, number);

for (const where of bothBrowsers) {
  test(`the sheet tells the file's own numbers and draws its circles to scale ${inWords(where)}`, () => visit({ ...where, page: '#drill' }, async ({ page }) => {
    const root = await worksheet(page);
    await settled(page, root, 'setting-out');
    const rows = await rowsOf(root, 'setting-out', 0);
    assert.equal(rows.length, DEMO.cabinet.anchors.length);
    for (const [place, anchor] of DEMO.cabinet.anchors.entries()) {
      assert.equal(rows[place].hole, place + 1);
      assert.deepEqual([rows[place]['to the right of the middle'], rows[place]['to the rear of the middle']], anchor.at_mm);
      assert.equal(rows[place].embedment, DEMO.anchorage.embedment_mm);
      assert.equal(rows[place].torque, "from the maker's data");
    }
    const circles = await root.evaluate((shadow) => {
      const svg = shadow.querySelector('[data-study="setting-out"] svg');
      return [...svg.querySelectorAll('circle.dashed')].map((circle) => Number(circle.getAttribute('r')) * Number(svg.dataset.mmPerUnit));
    });
    const off = await rowsOf(root, 'setting-out', 1);
    assert.equal(circles.length, DEMO.cabinet.anchors.length);
    for (const [place, radius] of circles.entries()) assert.ok(Math.abs(radius - off[place]['holds when off by']) < 0.05 * radius + 0.1, `${radius} for ${off[place]['holds when off by']}`);
  }));
}

test('a hole drilled towards the edge turns the answer, and both rounds stand side by side', () => visit({ page: 'drill.html' }, async ({ page }) => {
  const root = await worksheet(page);
  await settled(page, root, 'setting-out');
  const [first] = DEMO.cabinet.anchors;
  await typeInto(page, root, 'cabinet.anchors[0].as_built_mm[0]', String(first.at_mm[0]));
  await typeInto(page, root, 'cabinet.anchors[0].as_built_mm[1]', String(first.at_mm[1] - 12));
  await untilSheet(page, root, 'it does not hold any more', (shadow) => shadow.querySelector('[data-answer]').dataset.answer === 'does_not_hold');
  await untilSheet(page, root, 'both rounds are told', (shadow) => {
    const study = shadow.querySelector('[data-study="as-built"]');
    return study.getAttribute('aria-busy') === 'false' && study.dataset.shown === 'true';
  });
  const [all] = await rowsOf(root, 'as-built', 0);
  assert.equal(all['outcome as planned'], 'holds');
  assert.equal(all['outcome as drilled'], 'does not hold');
  // Twelve millimetres more and it is another hole's: a fault beside its field.
  await typeInto(page, root, 'cabinet.anchors[0].as_built_mm[1]', String(first.at_mm[1] + 400));
  await untilSheet(page, root, 'the fault is told', (shadow) => shadow.querySelector('[data-answer]').dataset.answer === 'faults');
}));

for (const paper of Object.keys(PAPERS)) {
  test(`the sheet is printed by itself on ${paper}, with its fingerprint and the cautions`, () => visit({ page: 'drill.html' }, async ({ page }) => {
    const root = await worksheet(page);
    await settled(page, root, 'setting-out');
    await page.evaluate(() => {
      globalThis.print = () => { globalThis.wasPrinted = true; };
    });
    await root.evaluate((shadow) => shadow.querySelector('[data-key="print sheet"]').click());
    assert.equal(await page.evaluate(() => globalThis.wasPrinted), true);
    const { text, sizes } = await printed(page, paper);
    const bare = (words) => words.replace(/\s+/g, '');
    const all = bare(text);
    const { report } = engine().assess(JSON.stringify(DEMO), 'si');
    assert.ok(all.includes(bare(report.fingerprint)), 'the fingerprint');
    assert.ok(all.includes(bare(DEMO.title)), 'the title');
    for (const caution of texts().cautions) assert.ok(all.includes(bare(caution)), caution);
    for (const anchor of DEMO.cabinet.anchors) assert.ok(all.includes(bare(anchor.name)), anchor.name);
    assert.ok(!all.includes(bare('How the circle is earned')), 'the chapter around it is not printed');
    assert.ok(sizes.length <= 3, `${sizes.length} sheets`);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    assert.equal(await page.evaluate(() => 'printing' in document.documentElement.dataset), false);
  }));
}

test('what would hold is told below the anchors, and every line of it holds', () => visit({ page: 'anchors.html' }, async ({ page }) => {
  const root = await worksheet(page);
  await settled(page, root, 'what-would-hold');
  const lines = await rowsOf(root, 'what-would-hold', 1);
  assert.ok(lines.length > 0);
  for (const line of lines) {
    assert.ok(line.utilisation <= 1, JSON.stringify(line));
    if (line.bolts !== DEMO.cabinet.anchors.length || line['edge that is nearest now, from the nearest bolt'] !== 130) continue;
    const changed = structuredClone(DEMO);
    Object.assign(changed.anchorage, { bolt: line.bolt, embedment_mm: line.embedment });
    changed.slab.strength_mpa = line['strength of the concrete'];
    assert.equal(engine().assess(JSON.stringify(changed), 'si').report.verdict, 'holds', JSON.stringify(line));
  }
}));

test('anchors are set about every foot in one stroke, and undo brings the old ones back', () => visit({ page: checkPage('file', sample()) }, async ({ page }) => {
  const root = await worksheet(page);
  const count = () => root.evaluate((shadow) => shadow.querySelectorAll('[data-row^="cabinet.anchors["]').length);
  assert.equal(await count(), 4);
  const before = await answerOf(root);
  await root.evaluate((shadow) => {
    shadow.querySelector('[data-key="pattern"]').value = 'corners';
    shadow.querySelector('[data-key="set pattern"]').click();
  });
  await until(page, 'sixteen anchors stand there', (shadow) => shadow.querySelectorAll('[data-row^="cabinet.anchors["]').length === 16, root);
  const place = await root.evaluate((shadow) => [0, 1].map((axis) => shadow.querySelector(`[data-path="cabinet.anchors[0].at_mm[${axis}]"]`).value));
  assert.deepEqual(place, ['-550', '-700'], 'sixty clear of a foot of 120 at -430, -580');
  await root.evaluate((shadow) => [...shadow.querySelectorAll('.toolbar button')].find((button) => button.textContent === 'Undo').click());
  await until(page, 'the four stand there again', (shadow) => shadow.querySelectorAll('[data-row^="cabinet.anchors["]').length === 4, root);
  assert.deepEqual(await answerOf(root), before);
}));
