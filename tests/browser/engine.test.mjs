// The engine that the page carries, run in node and in both browsers.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { engine, firstAlone, texts } from './engine.mjs';
import { ROOT } from './native.mjs';
import { bothBrowsers, everywhere, inWords, until, visit } from './visit.mjs';

const DEMOS = join(ROOT, 'demo-configs');

after(closeBrowsers);

test('the engine and the texts name one version', () => assert.equal(engine().version(), texts().engine));

test('the first part alone answers as the whole engine does, or stops', async () => {
  const whole = engine();
  const stopped = [];
  for (const file of readdirSync(DEMOS).filter((name) => /^\d\d-.*\.json$/.test(name))) {
    const text = readFileSync(join(DEMOS, file), 'utf8');
    const first = await firstAlone();
    try {
      const told = JSON.stringify(first.assess(text, 'si'));
      assert.equal(told, JSON.stringify(whole.assess(text, 'si')), file);
      for (const which of ['plan', 'elevation', 'rose']) {
        assert.equal(JSON.stringify(first.drawings(text, 'si', 'null', 500, which)), JSON.stringify(whole.drawings(text, 'si', 'null', 500, which)), file);
      }
      assert.equal(JSON.stringify(first.limits(text)), JSON.stringify(whole.limits(text)), file);
    } catch (error) {
      if (error.name !== 'RuntimeError') throw error;
      stopped.push(file);
    }
  }
  assert.ok(stopped.includes('13-partial-factors.json'), 'another rule is not in the first part');
  assert.ok(!stopped.some((file) => /^0[1-5]/.test(file)), `${stopped}: the first part is enough for the cabinets of the landing page's kind`);
});

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

for (const where of bothBrowsers) {
  test(`a pool of workers gives out portions, tells what fails, and stops ${inWords(where)}`, () => visit({ ...where, page: 'check.html' }, async ({ page }) => {
    await until(page, 'the page has started', () => document.querySelector('#not-started').hidden);
    const said = await page.evaluate(async () => {
      const work = (own) => (portion) => {
        if (portion === 'bad') throw new Error('a bad portion');
        for (const until = Date.now() + (portion.wait || 0); Date.now() < until;);
        return own.version() + ' ' + portion.number;
      };
      const pool = new globalThis.steadfoot.EnginePool(work, 2);
      const whole = (portions, stopAfter) => new Promise((resolve) => {
        const told = { took: [], failed: [], progress: [] };
        pool.start(portions, {
          took: (answer, portion, place) => told.took.push([answer, portion.number, place]),
          failed: (error, portion, place) => told.failed.push([error, place]),
          progress: (done) => { told.progress.push(done); if (done === stopAfter) pool.stop(); },
          ended: (stopped) => resolve({ ...told, stopped, workers: pool.seats.length }),
        });
      });
      function* many() { for (let number = 0; number < 1e9; number += 1) yield { number, wait: 5 }; }
      const all = await whole([{ number: 0 }, { number: 1, wait: 200 }, 'bad', { number: 3 }, { number: 4 }, { number: 5 }]);
      const cut = await whole(many(), 3);
      const again = await whole([{ number: 7 }]);
      pool.close();
      return { all, cut, again, left: pool.seats.length };
    });
    const version = engine().version();
    assert.deepEqual(said.all.took.map(([answer]) => answer).sort(), [0, 1, 3, 4, 5].map((number) => `${version} ${number}`));
    assert.ok(said.all.took.every(([, number, place]) => number === place), 'each answer comes with the place of its portion');
    assert.equal(said.all.took.at(-1)[1], 1, 'a slow portion holds up no other');
    assert.match(said.all.failed[0][0], /a bad portion/);
    assert.deepEqual([said.all.failed.length, said.all.failed[0][1], said.all.stopped], [1, 2, false]);
    assert.deepEqual(said.all.progress, [1, 2, 3, 4, 5, 6]);
    assert.deepEqual([said.cut.took.length, said.cut.stopped], [3, true]);
    assert.deepEqual([said.again.took[0][1], said.again.stopped, said.left], [7, false, 0]);
  }));
}
