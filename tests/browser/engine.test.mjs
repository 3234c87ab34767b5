// The engine that the page carries, run in node and in both browsers.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { engine, texts } from './engine.mjs';
import { everywhere, inWords, until, visit } from './visit.mjs';

after(closeBrowsers);

test('the engine and the texts name one version', () => assert.equal(engine().version(), texts().engine));

for (const where of everywhere) {
  test(`the page's engine answers ${inWords(where)}`, () => visit({ ...where, page: 'check.html' }, async ({ page }) => {
    await until(page, 'the page has started', () => document.querySelector('#not-started').hidden);
    assert.equal(await page.evaluate(() => globalThis.steadfoot.openEngine().version()), engine().version());
  }));

  test(`a worker with an engine of its own answers ${inWords(where)}`, () => visit({ ...where, page: 'check.html' }, async ({ page }) => {
    await until(page, 'the page has started', () => document.querySelector('#not-started').hidden);
    const answer = await page.evaluate(() => new Promise((resolve, reject) => {
      const worker = globalThis.steadfoot.engineWorker((own) => { self.onmessage = (event) => self.postMessage(event.data + own.version()); });
      worker.onmessage = (event) => resolve(event.data);
      worker.onerror = () => reject(new Error('the worker failed'));
      worker.postMessage('version ');
    }));
    assert.equal(answer, `version ${engine().version()}`);
  }));
}
