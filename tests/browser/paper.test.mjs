// The printed calculation sheet holds everything that an engineer needs to follow it, on both papers.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { answerOf, checksOf, worksheet } from './check-page.mjs';
import { engine, texts } from './engine.mjs';
import { ROOT } from './native.mjs';
import { flowing, PAPERS, printed } from './paper.mjs';
import { checkPage, sample } from './projects.mjs';
import { visit } from './visit.mjs';

after(closeBrowsers);

const demo = (name) => readFileSync(join(ROOT, 'demo-configs', name), 'utf8');

/** Text without any blanks, so that no line break or column can hide a word. */
const bare = (text) => text.replace(/\s+/g, '').replaceAll('\u00ad', '');

function assertHolds(haystack, needle, words) {
  assert.ok(haystack.includes(bare(needle)), `${words} is not on the sheet: ${needle}`);
}

for (const [words, project] of [['the sample', JSON.stringify(sample())], ['the demo that must not pass', demo('09-must-not-pass.json')], ['the demo that cannot be said', demo('10-cannot-be-said.json')]]) {
  for (const [paper, [width, height]] of Object.entries(PAPERS)) {
    test(`the sheet of ${words} on ${paper} holds every check, every caution, page numbers, the fingerprint and the input`, () => visit({ page: checkPage('file', project) }, async ({ page }) => {
      const root = await worksheet(page);
      const { report } = engine().assess(project, 'si');
      const checks = await checksOf(root);
      assert.equal(checks.length, report.checks.length);
      const sheet = await printed(page, paper);
      const all = bare(sheet.text);
      for (const size of sheet.sizes) assert.ok(Math.abs(size[0] - width) < 1.5 && Math.abs(size[1] - height) < 1.5, `${size}`);
      assertHolds(all, JSON.parse(project).title, 'the title');
      for (const check of checks) assertHolds(all, check.title, 'a check');
      assert.ok(texts().cautions.length >= 3);
      for (const caution of texts().cautions) assertHolds(all, caution, 'a caution');
      assertHolds(all, report.fingerprint, 'the fingerprint');
      assertHolds(all, report.engine, 'the version of the engine');
      for (const [kind, id] of [['demand', report.demand_rule], ['anchor', report.anchor_rule]]) {
        if (id) assertHolds(all, texts().rules[kind].find((rule) => rule.id === id).title, 'the edition of a rule');
      }
      const count = sheet.sizes.length;
      assert.equal(sheet.sheets.length, count);
      for (const [place, text] of sheet.sheets.entries()) assert.match(flowing(text), new RegExp(`\\b${place + 1} of ${count}\\b`), `sheet ${place + 1} of ${count} has no number`);
      // The whole input stands there as text and can be typed off again.
      const input = sheet.text.replace(/\f/g, '\n').slice(sheet.text.indexOf('"format"') - 4);
      for (const content of JSON.parse(project).contents ?? []) assertHolds(bare(input), JSON.stringify(content.name), 'a content of the input');
      assertHolds(bare(input), '"format":"steadfoot1"', 'the input');
      // The answer, and the numbers of every check that was compared.
      for (const sentence of (await answerOf(root)).words.match(/[^;.]+/g).slice(0, 1)) assertHolds(all, sentence.trim(), 'the answer');
      for (const check of checks.filter((one) => one.utilisation !== null)) assertHolds(all, check.value, `the utilisation of ${check.id}`);
      assert.equal((sheet.text.match(/\bundefined\b|\bNaN\b|\[object/g) ?? []).length, 0);
    }));
  }
}

test('a paper that the reader chose on the page goes before that of the printer', () => visit({ page: checkPage('file', sample()) }, async ({ page }) => {
  const root = await worksheet(page);
  for (const [choice, size] of [['A4', PAPERS.A4], ['letter', PAPERS.Letter]]) {
    const select = await root.$('select[aria-label="Paper"]');
    await select.select(choice);
    const sheet = await printed(page, choice === 'A4' ? 'Letter' : 'A4');
    assert.ok(Math.abs(sheet.sizes[0][0] - size[0]) < 1.5, `${choice}: ${sheet.sizes[0]}`);
  }
}));

test('the sheet shows the working of each compared check with its clause', () => visit({ page: checkPage('file', sample()) }, async ({ page }) => {
  const root = await worksheet(page);
  const all = bare((await printed(page, 'A4')).text);
  const wasm = engine();
  const { report } = wasm.assess(JSON.stringify(sample()), 'si');
  const { rows } = texts();
  for (const check of report.checks.filter((one) => one.status === 'holds' || one.status === 'fails')) {
    assert.ok(check.at, `${check.id} was compared and opens to no working`);
    const sections = wasm.working(JSON.stringify(sample()), JSON.stringify(check.at));
    const own = sections[sections.length - 1].steps.filter((step) => !step.carried);
    assert.ok(own.length > 0, check.id);
    for (const step of own) {
      const row = rows[step.id];
      // Symbols within the words are typeset, so only what stands between them is looked for.
      for (const words of row.w.split(/\b(?:\w*_\w*|phi|psi|lambda|alpha|[A-Za-z])\b/)) assertHolds(all, words, `what a step of ${check.id} is`);
      if (row.c) assertHolds(all, row.c, `the clause of a step of ${check.id}`);
    }
  }
  // The sheet is made for printing and taken away afterwards.
  const typeset = await root.evaluate((shadow) => {
    dispatchEvent(new Event('beforeprint'));
    const count = shadow.querySelectorAll('.paper math').length;
    dispatchEvent(new Event('afterprint'));
    return count;
  });
  assert.ok(typeset > 20, 'formulas are typeset');
}));

test('a project with faults prints its faults and no result', () => visit({ page: checkPage('file', JSON.stringify({ ...sample(), slab: { ...sample().slab, thickness_mm: '12 m' } })) }, async ({ page }) => {
  await worksheet(page);
  const all = bare((await printed(page, 'A4')).text);
  assertHolds(all, '12 m', 'what was typed');
  assert.ok(!all.includes('utilisation0.') && !/holds0\.\d/.test(all));
}));

for (const name of ['index.html', 'load-out.html', 'sources.html', 'verification.html']) {
  test(`${name} prints with its cautions`, () => visit({ page: name }, async ({ page }) => {
    const all = bare((await printed(page, 'A4')).text);
    for (const caution of texts().cautions) assertHolds(all, caution, 'a caution');
  }));
}
