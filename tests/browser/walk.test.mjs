// The main job, wherever the page was opened from: a field is edited and the answer, the checks and the drawings follow.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { answerOf, checksOf, fieldValue, typeInto, untilSheet, worksheet } from './check-page.mjs';
import { checkPage, sample } from './projects.mjs';
import { everywhere, inWords, visit } from './visit.mjs';

after(closeBrowsers);

for (const where of everywhere) {
  test(`a heavier load changes the answer, the checks and the drawings ${inWords(where)}`, () => visit({ ...where, page: checkPage(where.from, sample()) }, async ({ page, requests }) => {
    const root = await worksheet(page);
    assert.equal(await fieldValue(root, 'contents[2].mass_kg'), '120');
    const before = { answer: await answerOf(root), checks: await checksOf(root), picture: await picture(root) };
    assert.ok(before.answer.words.length > 40, before.answer.words);
    assert.ok(before.checks.length > 3);
    const asked = requests.length;
    await typeInto(page, root, 'contents[2].mass_kg', '900');
    await untilSheet(page, root, 'the answer follows', (shadow, words) => [...shadow.querySelectorAll('[data-answer] p[data-topic]')].map((one) => one.textContent).join(' ') !== words, before.answer.words);
    const after_ = { answer: await answerOf(root), checks: await checksOf(root), picture: await picture(root) };
    assert.notDeepEqual(after_.checks, before.checks);
    assert.notEqual(after_.picture, before.picture);
    assert.notEqual(after_.answer.words, before.answer.words);
    await typeInto(page, root, 'contents[2].mass_kg', '120');
    await untilSheet(page, root, 'the first answer is back', (shadow, words) => [...shadow.querySelectorAll('[data-answer] p[data-topic]')].map((one) => one.textContent).join(' ') === words, before.answer.words);
    assert.deepEqual(await checksOf(root), before.checks);
    const later = requests.slice(asked).filter((url) => !/^(data|blob):/.test(url));
    assert.deepEqual(later, [], 'nothing is asked for while one works');
  }));

  test(`how far it can go is worked out ${inWords(where)}`, () => visit({ ...where, page: checkPage(where.from, sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    await untilSheet(page, root, 'the limits are there', (shadow) => shadow.querySelectorAll('[data-limit]').length > 0);
    const limits = await root.evaluate((shadow) => [...shadow.querySelectorAll('[data-limit]')].map((row) => [row.dataset.limit, row.dataset.ending, Number(row.dataset.low), Number(row.dataset.high)]));
    assert.ok(limits.some(([of]) => of === 'bolted demand') && limits.some(([of]) => of === 'free load'), JSON.stringify(limits));
    for (const [of, ending, low, high] of limits.filter((limit) => limit[1] === 'bracketed')) assert.ok(low <= high && low >= 0, `${of} ${ending} ${low} ${high}`);
  }));
}

const picture = (root) => root.evaluate((shadow) => [...shadow.querySelectorAll('.results svg[data-drawing]')].map((one) => one.outerHTML).join(''));
