// With scripts off the guide still reads: the prose, the results worked out beforehand, the drawings, the cautions.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { flowing } from './paper.mjs';
import { ALONE, SITE, visit } from './visit.mjs';

after(closeBrowsers);

const PAGES = readdirSync(SITE).filter((name) => name.endsWith('.html')).sort();

for (const browser of ['chromium', 'firefox']) {
  for (const name of PAGES) {
    test(`${name} reads with scripts off, in ${browser}`, () => visit({ browser, from: name === ALONE ? 'alone' : 'file', page: name, scripts: 'off' }, async ({ page }) => {
      const seen = await page.evaluate(() => ({
        notice: document.querySelector('#scripts-off')?.getClientRects().length,
        alarm: document.querySelector('#not-started').getClientRects().length,
        articles: [...document.querySelectorAll('article')].map((article) => [article.id, article.innerText.trim().length, article.getClientRects().length]),
        cautions: document.querySelector('#cautions').innerText,
        undressed: [...document.querySelectorAll('steadfoot-worksheet')].filter((one) => !one.innerText.trim()).length,
      }));
      assert.ok(seen.notice > 0, 'it says that scripts are off');
      assert.equal(seen.alarm, 0, 'it does not say that the file was altered');
      assert.ok(seen.articles.length > 0);
      for (const [id, letters, boxes] of seen.articles) assert.ok(letters > 0 && boxes > 0, `${id} is empty`);
      assert.match(flowing(seen.cautions), /A licensed engineer and the local code govern/);
      assert.equal(seen.undressed, 0, 'every worksheet shows results that were worked out beforehand');
    }));
  }
}

for (const browser of ['chromium', 'firefox']) {
  test(`with scripts off a failing check's drawn position is read from the attributes of its drawing, in ${browser}`, () => visit({ browser, from: 'alone', scripts: 'off' }, async ({ page }) => {
    const rows = await page.evaluate(() => [...document.querySelectorAll('[data-check][data-utilisation]')].map((row) => {
      const pointer = row.querySelector('[data-pointer]');
      const svg = pointer.ownerSVGElement;
      const seen = pointer.getBoundingClientRect();
      const whole = svg.getBoundingClientRect();
      const [, , width] = svg.getAttribute('viewBox').split(' ').map(Number);
      return {
        id: row.dataset.check, status: row.dataset.status, utilisation: Number(row.dataset.utilisation), words: row.innerText,
        written: Number(/translate\(([\d.]+)/.exec(pointer.getAttribute('transform'))[1]),
        drawn: (((seen.left + seen.right) / 2 - whole.left) / whole.width) * width,
        style: pointer.getAttribute('style'),
      };
    }));
    assert.ok(rows.some((row) => row.status === 'fails'), 'there is a failing check somewhere in the guide');
    assert.ok(rows.some((row) => row.status === 'holds'));
    for (const row of rows) {
      assert.equal(row.style, null);
      if (row.utilisation <= 1.28) assert.ok(Math.abs(row.written - (8 + 150 * row.utilisation)) < 0.01, `${row.id} at ${row.written} for ${row.utilisation}`);
      else assert.equal(row.written, 214, row.id);
      assert.ok(Math.abs(row.drawn - row.written) < 1.5, `${row.id} is drawn at ${row.drawn}, written at ${row.written}`);
      assert.equal(row.status === 'fails', row.written > 158, `${row.id} stands on the side of its outcome`);
      assert.match(row.words, row.status === 'fails' ? /fails/ : /holds/, 'the outcome is a word, too');
    }
  }));

  test(`with scripts off the drawings are there in ${browser}`, () => visit({ browser, from: 'alone', scripts: 'off' }, async ({ page }) => {
    const views = await page.evaluate(() => [...document.querySelectorAll('svg[data-drawing]')].map((svg) => [svg.dataset.drawing, svg.querySelectorAll('*').length, svg.getClientRects().length]));
    for (const view of ['plan', 'elevation', 'rose']) assert.ok(views.some(([name, marks, boxes]) => name === view && marks > 8 && boxes > 0), `no ${view}: ${JSON.stringify(views)}`);
  }));
}
