// Every page of the site, however it is opened: it starts, it asks for nothing, it says the cautions, everyone can use it.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { violations } from './access.mjs';
import { closeBrowsers } from './browsers.mjs';
import { flowing } from './paper.mjs';
import { ALONE, everywhere, inWords, SITE, until, visit } from './visit.mjs';

after(closeBrowsers);

const PAGES = readdirSync(SITE).filter((name) => name.endsWith('.html') && name !== ALONE).sort();

/** What every page has to say, in the words that carry it; design section "Cautions". */
const CAUTIONS = [/estimates for checking and discussion/, /licensed engineer and the local code govern/, /[Aa]nchors need approval data and inspection/, /texts of rules here are transcriptions/];

const pagesOf = (from) => (from === 'alone' ? [ALONE] : PAGES);

test('there are pages to test', () => assert.ok(PAGES.includes('index.html') && PAGES.includes('check.html'), `${PAGES}`));

for (const where of everywhere) {
  for (const name of pagesOf(where.from)) {
    test(`${name} starts, asks for nothing and says the cautions ${inWords(where)}`, () => visit({ ...where, page: name }, async ({ page, requests, address }) => {
      await until(page, 'the page has started', () => document.querySelector('#not-started').hidden);
      const foot = flowing(await page.$eval('#cautions', (element) => element.innerText));
      for (const caution of CAUTIONS) assert.match(foot, caution);
      if (where.from === 'alone') {
        const foreign = requests.filter((url) => !/^(data|blob|about):/.test(url) && url !== address);
        assert.deepEqual(foreign, [], 'the one file needs nothing beside itself');
      }
    }));
  }
}

for (const browser of ['chromium', 'firefox']) {
  for (const look of ['light', 'dark']) {
    for (const [from, names] of [['file', PAGES], ['alone', [ALONE]]]) {
      for (const name of names) {
        test(`axe finds nothing on ${name} in the ${look} look, ${inWords({ browser, from })}`, () => visit({ browser, from, page: name, look }, async ({ page }) => {
          await until(page, 'the page has started', () => document.querySelector('#not-started').hidden);
          assert.deepEqual(await violations(page), []);
        }));
      }
    }
  }
}

for (const size of ['phone', 'small']) {
  for (const name of PAGES) {
    test(`nothing scrolls sideways on ${name} at the width of a ${size === 'small' ? 'small ' : ''}phone`, () => visit({ page: name, size }, async ({ page }) => {
      const [wide, shown] = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
      assert.ok(wide <= shown, `${wide} px of content in ${shown} px`);
    }));
  }
}

for (const name of [...PAGES, ALONE]) {
  test(`every link of ${name} inside the site leads somewhere`, () => visit({ from: name === ALONE ? 'alone' : 'file', page: name }, async ({ page, address }) => {
    const links = await page.$$eval('a[href]', (list) => [...new Set(list.map((link) => link.href))]);
    assert.ok(links.length > 3, `${links}`);
    const base = address.replace(/[^/]*$/, '');
    for (const link of links.filter((one) => one.startsWith(base))) {
      const [file, id] = link.slice(base.length).split('#');
      const html = await readFile(join(SITE, file), 'utf8').catch(() => assert.fail(`${link} is not there`));
      if (id) assert.ok(html.includes(`id="${id}"`), `${link} names a place that is not there`);
    }
  }));
}
