// The landing page comes with a first part of everything; the rest is fetched only when it is wanted.
import assert from 'node:assert/strict';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { inWords, SITE, until, visit } from './visit.mjs';

after(closeBrowsers);

const asked = (requests) => requests.some((url) => /later\.js/.test(url));

const WHERE = [{ browser: 'chromium', from: 'http' }, { browser: 'firefox', from: 'file' }];

for (const where of WHERE) {
  test(`the landing page needs no later part for its own cabinet ${inWords(where)}`, () => visit(where, async ({ page, requests }) => {
    await until(page, 'the answer is there', () => /holds|does_not_hold|cannot_be_said/.test(document.querySelector('steadfoot-worksheet').dataset.answer));
    assert.ok(!asked(requests), requests.join('\n'));
    assert.equal(await page.evaluate(() => document.querySelectorAll('script[src*="later"]').length), 0);
  }));
}
