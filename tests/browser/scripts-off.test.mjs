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
