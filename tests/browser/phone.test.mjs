// A phone of 320 px: nothing scrolls sideways, drawings of very wide and very deep cabinets are legible.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { violations } from './access.mjs';
import { closeBrowsers } from './browsers.mjs';
import { untilSheet, worksheet } from './check-page.mjs';
import { checkPage, sample, stretched } from './projects.mjs';
import { visit } from './visit.mjs';

after(closeBrowsers);

const SMALLEST_TEXT_PX = 12;

/** Each drawing as it appears: whether it is scaled down, its texts with their boxes on the screen. */
function drawings(root) {
  return root.evaluate((shadow) => [...shadow.querySelectorAll('.results svg[data-drawing]')].map((svg) => {
    const frame = svg.getBoundingClientRect();
    const [, , width] = svg.getAttribute('viewBox').split(' ').map(Number);
    return {
      view: svg.dataset.drawing,
      scale: frame.width / width,
      frame: { left: frame.left, right: frame.right, top: frame.top, bottom: frame.bottom },
      texts: [...svg.querySelectorAll('text')].map((text) => {
        // The letters alone: the box that a browser gives for the screen may hold the halo around them.
        const { x, y, width: wide, height } = text.getBBox();
        const corners = [[x, y], [x + wide, y], [x, y + height], [x + wide, y + height]].map(([px, py]) => new DOMPoint(px, py).matrixTransform(text.getScreenCTM()));
        const [xs, ys] = [corners.map((corner) => corner.x), corners.map((corner) => corner.y)];
        const box = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
        return { words: text.textContent, size: parseFloat(getComputedStyle(text).fontSize), box };
      }),
      marks: [...svg.querySelectorAll('[data-of^="foot"], [data-of^="anchor"]')].length,
    };
  }));
}

/** How far the letters of two texts reach into each other; the box of a line holds some air above and below them. */
function overlap(one, other) {
  const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const tall = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
  return Math.min(wide, tall - 5);
}

const cabinets = { 'an ordinary cabinet': sample(), 'a cabinet three times as wide as deep': stretched(3), 'a cabinet three times as deep as wide': stretched(1 / 3) };

for (const browser of ['chromium', 'firefox']) {
  for (const [words, project] of Object.entries(cabinets)) {
    test(`${words} is legible at 320 px in ${browser}`, () => visit({ browser, from: 'alone', size: 'small', page: checkPage('alone', project) }, async ({ page }) => {
      const root = await worksheet(page);
      await untilSheet(page, root, 'all is drawn', (shadow) => shadow.querySelectorAll('.results svg[data-drawing]').length === 3);
      const all = await drawings(root);
      assert.deepEqual(all.map((one) => one.view), ['plan', 'elevation', 'rose']);
      for (const { view, scale, frame, texts } of all) {
        assert.ok(scale > 0.99, `the ${view} is scaled down by ${scale}`);
        assert.ok(frame.left >= 0 && frame.right <= 320.5, `the ${view} reaches from ${frame.left} to ${frame.right}`);
        assert.ok(texts.length > 2, `the ${view} has ${texts.length} texts`);
        for (const text of texts) {
          assert.ok(text.size * scale >= SMALLEST_TEXT_PX - 0.01, `"${text.words}" in the ${view} is ${text.size * scale} px`);
          const { box } = text;
          assert.ok(box.left >= frame.left - 2 && box.right <= frame.right + 2 && box.top >= frame.top - 2 && box.bottom <= frame.bottom + 2, `"${text.words}" leaves the ${view}`);
        }
        for (const [place, one] of texts.entries()) {
          for (const other of texts.slice(place + 1)) {
            assert.ok(overlap(one.box, other.box) < 2, `"${one.words}" and "${other.words}" stand on each other in the ${view}`);
          }
        }
      }
      const plan = all[0];
      assert.ok(plan.marks >= 8, 'feet and anchors are drawn');
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= 320, `${wide} px of content`);
    }));
  }

  test(`axe finds nothing on the whole check with an open working on a small phone in ${browser}`, () => visit({ browser, from: 'alone', size: 'small', page: checkPage('alone', sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    await root.evaluate((shadow) => shadow.querySelector('.results [data-utilisation] .opener').click());
    await untilSheet(page, root, 'a working is open', (shadow) => shadow.querySelector('.results [data-check] [data-at]'));
    assert.deepEqual(await violations(page), []);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth) <= 320, 'nothing but a formula scrolls sideways, in its own box');
  }));
}

for (const browser of ['chromium', 'firefox']) {
  for (const look of ['light', 'dark']) {
    test(`axe finds nothing on the whole check in use, with faults and open workings, ${look}, in ${browser}`, () => visit({ browser, from: 'file', look, page: checkPage('file', sample()) }, async ({ page }) => {
      const root = await worksheet(page);
      await untilSheet(page, root, 'the limits are there', (shadow) => shadow.querySelectorAll('[data-limit]').length > 0);
      await root.evaluate((shadow) => [...shadow.querySelectorAll('.results [data-utilisation] .opener')].slice(0, 3).forEach((one) => shadow.querySelector(`[data-key="${one.dataset.key}"]`).click()));
      assert.deepEqual(await violations(page), []);
      await root.evaluate((shadow) => {
        const input = shadow.querySelector('[data-path="slab.thickness_mm"]');
        input.value = '12 m';
        input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
      });
      await untilSheet(page, root, 'the fault is told', (shadow) => shadow.querySelector('[data-answer]').dataset.answer === 'faults');
      assert.deepEqual(await violations(page), []);
    }));
  }
}
