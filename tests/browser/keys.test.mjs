// The keyboard alone suffices: every step of this walk is made of key presses.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { answerOf, checksOf, fieldValue, focused, tabTo, untilSheet, worksheet } from './check-page.mjs';
import { checkPage, sample } from './projects.mjs';
import { inWords, savedFiles, until, visit } from './visit.mjs';

after(closeBrowsers);

const places = ['chromium', 'firefox'].flatMap((browser) => ['file', 'alone'].map((from) => ({ browser, from })));

const names = (root) => root.evaluate((shadow) => [...shadow.querySelectorAll('[data-list="contents"] tr[data-row] [data-path$=".name"]')].map((input) => input.value));

async function press(page, ...keys) {
  for (const key of keys) await page.keyboard.press(key);
}

async function pressWith(page, modifier, key) {
  await page.keyboard.down(modifier);
  await page.keyboard.press(key);
  await page.keyboard.up(modifier);
}

for (const where of places) {
  test(`keys alone change a number, add, move and remove a row, open a working, switch units, save and undo ${inWords(where)}`, () => visit({ ...where, page: checkPage(where.from, sample()) }, async ({ page, downloads }) => {
    const root = await worksheet(page);
    const first = await answerOf(root);

    // A number.
    await tabTo(page, 'the mass of tray 3', (at) => at.path === 'contents[2].mass_kg');
    await pressWith(page, 'Control', 'a');
    await page.keyboard.type('777');
    await untilSheet(page, root, 'the answer follows the number', (shadow, words) => [...shadow.querySelectorAll('[data-answer] p[data-topic]')].map((one) => one.textContent).join(' ') !== words, first.words);
    assert.equal((await focused(page)).path, 'contents[2].mass_kg', 'the focus stays where one types');

    // A row: added, moved, duplicated, removed.
    await tabTo(page, 'the button that adds a content', (at) => /^Add a content/.test(at.name));
    await press(page, 'Enter');
    await untilSheet(page, root, 'a fourth row is there', (shadow) => shadow.querySelectorAll('[data-list="contents"] tr[data-row]').length === 4);
    const added = (await names(root))[3];
    assert.ok(added && !['tray 1', 'tray 2', 'tray 3'].includes(added), `the new row has a name of its own: ${added}`);
    await tabTo(page, 'the button that moves the new row up', (at) => at.name === `Move ${added} up`);
    await press(page, 'Enter');
    assert.deepEqual(await names(root), ['tray 1', 'tray 2', added, 'tray 3']);
    assert.equal((await focused(page)).name, `Move ${added} up`, 'the focus goes with the row');
    await press(page, ' ');
    assert.deepEqual(await names(root), ['tray 1', added, 'tray 2', 'tray 3']);
    await tabTo(page, 'the button that removes the new row', (at) => at.name === `Remove ${added}`);
    await press(page, 'Enter');
    assert.deepEqual(await names(root), ['tray 1', 'tray 2', 'tray 3']);
    assert.ok((await focused(page)).key, 'the focus does not fall to the top of the page');

    // Undo brings the row back, and once more everything before it.
    await tabTo(page, 'Undo', (at) => at.name === 'Undo', 'Shift+Tab');
    await press(page, 'Enter');
    assert.deepEqual(await names(root), ['tray 1', added, 'tray 2', 'tray 3']);
    for (let step = 0; step < 4; step += 1) await press(page, 'Enter');
    assert.deepEqual(await names(root), ['tray 1', 'tray 2', 'tray 3']);
    assert.equal(await fieldValue(root, 'contents[2].mass_kg'), '120', 'a typed number is one step');
    assert.equal((await answerOf(root)).words, first.words);

    // Saving.
    await tabTo(page, 'Save', (at) => at.name === 'Save');
    await press(page, 'Enter');
    const saved = (await savedFiles(downloads)).pop();
    assert.equal(JSON.parse(await readFile(saved, 'utf8')).contents[2].mass_kg, 120);

    // A working.
    const compared = (await checksOf(root)).find((check) => check.utilisation !== null);
    const key = `check ${compared.id} ${compared.of}`;
    await tabTo(page, 'a check that was compared', (at) => at.key === key, 'Shift+Tab');
    await press(page, 'Enter');
    await untilSheet(page, root, 'its working stands open', (shadow, wanted) => {
      const opener = [...shadow.querySelectorAll('.opener')].find((one) => one.dataset.key === wanted);
      return opener.getAttribute('aria-expanded') === 'true' && opener.closest('[data-check]').querySelectorAll('[data-at]').length > 0;
    }, key);
    assert.equal((await focused(page)).key, key);

    // Units.
    const before = await root.evaluate((shadow) => shadow.querySelector('[data-answer]').textContent);
    await tabTo(page, 'the switch to US units', (at) => at.name === 'US', 'Shift+Tab');
    await press(page, 'Enter');
    await untilSheet(page, root, 'the answer is told in US units', (shadow, words) => shadow.querySelector('[data-answer]').textContent !== words && / lb/.test(shadow.querySelector('[data-answer]').textContent.replaceAll('\u00a0', ' ')), before);
    await press(page, 'Enter');
    await pressWith(page, 'Shift', 'Tab');
    await press(page, 'Enter');
    await untilSheet(page, root, 'the first units are back', (shadow, words) => shadow.querySelector('[data-answer]').textContent === words, before);
  }));

  test(`a live number of the answer is turned by keys, and Escape restores it ${inWords(where)}`, () => visit({ ...where, page: checkPage(where.from, sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    const first = await answerOf(root);
    await tabTo(page, 'a live number', (at) => at.role === 'spinbutton');
    const { key } = await focused(page);
    await press(page, 'ArrowUp', 'ArrowUp', 'PageUp');
    const turned = await answerOf(root);
    assert.notEqual(turned.words, first.words);
    assert.equal((await focused(page)).key, key, 'the number keeps the focus while it turns');
    await press(page, 'Escape');
    assert.equal((await answerOf(root)).words, first.words);
  }));

  test(`a point of the rose opens its own working by keys ${inWords(where)}`, () => visit({ ...where, page: checkPage(where.from, sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    await until(page, 'the rose is drawn', (shadow) => shadow.querySelector('svg[data-drawing="rose"] [data-direction-deg]'), root);
    await tabTo(page, 'the rose', (at) => at.key?.startsWith('rose '));
    const { key } = await focused(page);
    await press(page, 'ArrowRight', 'ArrowRight', 'ArrowRight');
    const point = await focused(page);
    assert.notEqual(point.key, key);
    await press(page, 'Enter');
    await untilSheet(page, root, 'a working of that direction is open', (shadow) => !shadow.querySelector('.picked').hidden && shadow.querySelectorAll('.picked [data-at]').length > 0);
    const direction = point.name.match(/^\d+/)[0];
    assert.match(await root.evaluate((shadow) => shadow.querySelector('.picked').textContent), new RegExp(`\\b${direction}°`));
  }));
}

test('every focusable thing of the whole check shows that it has the focus', () => visit({ page: checkPage('file', sample()) }, async ({ page }) => {
  await worksheet(page);
  const seen = new Set();
  for (let presses = 0; presses < 250; presses += 1) {
    await page.keyboard.press('Tab');
    const state = await page.evaluate(() => {
      let element = document.activeElement;
      while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
      const style = getComputedStyle(element);
      const box = element.getBoundingClientRect();
      if (element === document.body) return null;
      return {
        name: `${element.localName} ${element.getAttribute('aria-label') ?? element.textContent.slice(0, 30)} ${element.dataset.key ?? ''}`,
        visible: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) > 0 || style.boxShadow !== 'none',
        svg: element instanceof SVGElement, size: box.width * box.height,
      };
    });
    if (state === null || seen.has(state.name)) continue;
    seen.add(state.name);
    assert.ok(state.svg || state.visible, `${state.name} shows no focus`);
    assert.ok(state.size > 0, `${state.name} has no size`);
  }
  assert.ok(seen.size > 60, `${seen.size} stops`);
}));

test('the checks are listed in words as well as in numbers', () => visit({ page: checkPage('file', sample()) }, async ({ page }) => {
  const root = await worksheet(page);
  for (const check of await checksOf(root)) assert.ok(check.title.length > 3 && ['holds', 'fails', 'not_needed', 'not_covered'].includes(check.status));
}));
