// When the floor moves: the rocking figure, a record that the reader opens, a study that can be stopped.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { visit, inWords } from './visit.mjs';

const folder = mkdtempSync(join(tmpdir(), 'steadfoot-motion-'));
after(async () => {
  await closeBrowsers();
  rmSync(folder, { recursive: true, force: true });
});

const PAGE = 'when-the-floor-moves.html';

/** A record of a few swings, in g. */
function record(strength) {
  const rows = Array.from({ length: 400 }, (_, place) => {
    const time = place * 0.02;
    return `${time.toFixed(2)},${(strength * Math.exp(-(((time - 3) / 1.5) ** 2)) * Math.sin(7 * time)).toFixed(6)}`;
  });
  return 'time,acc\n' + rows.join('\n') + '\n';
}

function fileOf(name, text) {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

/** One study of the chapter's worksheet, once it has answered. */
async function sheetOf(page, id) {
  const found = (word) => document.querySelector('steadfoot-worksheet[kind=rocking]')?.shadowRoot?.querySelector(`.study[data-study=${word}]`);
  await page.waitForFunction(`(${found})('${id}')?.getAttribute('aria-busy') === 'false'`, { timeout: 90_000 });
  return page.evaluateHandle(found, id);
}

/** Waits until a study of the sheet has answered, and gives its words. */
async function answered(page, root, done) {
  await page.waitForFunction((shadow, has) => {
    const study = shadow;
    return study.getAttribute('aria-busy') === 'false' && new RegExp(has).test(study.textContent);
  }, { timeout: 60_000 }, root, done);
  return root.evaluate((shadow) => shadow.textContent);
}

for (const where of [{ browser: 'chromium', from: 'file' }, { browser: 'firefox', from: 'file' }]) {
  test(`the cabinet turns about its edges as the slider goes ${inWords(where)}`, () => visit({ ...where, page: PAGE }, async ({ page }) => {
    const root = await sheetOf(page, 'rocking');
    const turned = (time) => root.evaluate((shadow, at) => {
      const slider = shadow.querySelector('.rocking input[type=range]');
      slider.value = at;
      slider.dispatchEvent(new Event('input'));
      const body = shadow.querySelector('svg.rocking g');
      return { angle: Number(body.dataset.angle), transform: body.getAttribute('transform'), said: shadow.querySelector('.rocking-time').textContent };
    }, time);
    assert.equal((await turned(0)).angle, 0);
    const seen = [];
    for (let time = 0.1; time < 3; time += 0.1) seen.push(await turned(time));
    assert.ok(seen.some(({ angle }) => angle > 0.02) && seen.some(({ angle }) => angle < -0.02), 'it rocks to both sides');
    for (const { angle, transform } of seen) {
      const [degrees, pivot] = transform.match(/-?[\d.]+(e-?\d+)?/g).map(Number);
      assert.ok(Math.abs(degrees - (angle * 180) / Math.PI) < 1e-6);
      assert.ok(Number.isFinite(pivot));
    }
    const pivots = new Set(seen.filter(({ angle }) => angle !== 0).map(({ transform, angle }) => `${Math.sign(angle)} ${transform.split(',')[1] ?? transform.split(' ')[1]}`));
    assert.equal(pivots.size, 2, 'each side has its own edge');
    const words = await root.evaluate((shadow) => shadow.textContent);
    for (const word of ['may fall', 'marginal', 'stands', 'comes to rest', 'falls over']) assert.ok(words.includes(word), word);
  }));

  test(`a record is opened, followed, refused and taken away ${inWords(where)}`, () => visit({ ...where, page: PAGE }, async ({ page }) => {
    const root = await sheetOf(page, 'rocking');
    const input = await root.evaluateHandle((shadow) => shadow.querySelector('.record input[type=file]'));
    await input.uploadFile(fileOf('swings.csv', record(0.5)));
    assert.ok((await answered(page, root, 'ASCE/SEI 43-05, approximate')).includes('swings.csv'));
    // The same record is there for the other studies.
    const spectrum = await sheetOf(page, 'response-spectrum');
    assert.ok((await answered(page, spectrum, 'Highest acceleration|highest acceleration')).includes('400'));
    assert.ok(await spectrum.evaluate((shadow) => shadow.querySelector('svg.plot .curve') !== null));
    await input.uploadFile(fileOf('broken.csv', record(0.5).replace('0.10,', '0.11,')));
    assert.match(await answered(page, root, 'even steps'), /do not rise in even steps/);
    await input.uploadFile(fileOf('other-unit.csv', record(9.81)));
    assert.match(await answered(page, root, 'unlikely'), /is the unit right/);
    await root.evaluate((shadow) => [...shadow.querySelectorAll('button')].find((button) => button.textContent === 'Take it away').click());
    assert.ok((await answered(page, root, 'Kaneko')).includes('Open a record of motion'));
    assert.match(await answered(page, spectrum, 'needs a record'), /needs a record of motion/);
  }));
}

test('a record may be dropped on its study, and a project still on the page', () => visit({ browser: 'chromium', page: PAGE }, async ({ page }) => {
  const root = await sheetOf(page, 'rocking');
  const drop = (name, text) => root.evaluate((shadow, file, content) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([content], file));
    shadow.dispatchEvent(new DragEvent('drop', { bubbles: true, cancelable: true, composed: true, dataTransfer: transfer }));
  }, name, text);
  await drop('dropped.txt', record(0.4));
  assert.ok((await answered(page, root, 'ASCE/SEI 43-05, approximate')).includes('dropped.txt'));
  await drop('cabinet.json', '{ "format": "steadfoot 9" }');
  await page.waitForFunction(() => [...document.querySelectorAll('steadfoot-worksheet')].some((one) => one.dataset.answer === 'faults' || one.shadowRoot.querySelector('[data-message=faults]')));
}));

test('fragility says how far it is and keeps what it has when it is stopped', () => visit({ browser: 'chromium', page: PAGE }, async ({ page }) => {
  const root = await sheetOf(page, 'fragility');
  const whole = await root.evaluate((shadow) => shadow.querySelectorAll('svg.plot .curve').length);
  assert.ok(whole > 0);
  // A long record makes it slow enough to be seen at work.
  const rocking = await sheetOf(page, 'rocking');
  const input = await rocking.evaluateHandle((shadow) => shadow.querySelector('.record input[type=file]'));
  const long = Array.from({ length: 6000 }, (_, place) => `${(place * 0.01).toFixed(2)} ${(0.3 * Math.sin(place * 0.043) + 0.2 * Math.sin(place * 0.11)).toFixed(5)}`).join('\n');
  await input.uploadFile(fileOf('long.txt', long));
  const stop = await page.waitForFunction((shadow) => shadow.querySelector('.study-progress button'), { timeout: 90_000 }, root);
  const progress = await root.evaluate((shadow) => shadow.querySelector('progress')?.max ?? 200);
  assert.equal(progress, 200);
  await stop.evaluate((button) => button.click());
  await answered(page, root, 'Share of runs that fall');
  const width = await root.evaluate((shadow) => shadow.querySelector('svg.plot .curve').getBBox().width);
  assert.ok(width >= 0);
}));

test('who asked for less motion gets a still figure, others one that plays once it is seen', () => visit({ browser: 'chromium', page: PAGE }, async ({ page }) => {
  const angles = async () => {
    const root = await sheetOf(page, 'rocking');
    await root.evaluate((shadow) => shadow.querySelector('figure.rocking').scrollIntoView({ block: 'center' }));
    const seen = new Set();
    for (let look = 0; look < 8; look += 1) {
      await new Promise((done) => setTimeout(done, 150));
      seen.add(await root.evaluate((shadow) => shadow.querySelector('svg.rocking g').dataset.angle));
    }
    return { seen, still: await root.evaluate((shadow) => shadow.querySelector('figure.rocking').dataset.still), button: await root.evaluate((shadow) => shadow.querySelector('.rocking-bar button').textContent) };
  };
  const moving = await angles();
  assert.equal(moving.still, 'false');
  assert.ok(moving.seen.size > 2, 'it moves');
  await page.emulateMediaFeatures([{ name: 'prefers-reduced-motion', value: 'reduce' }]);
  await page.reload();
  const still = await angles();
  assert.deepEqual([still.still, still.seen.size, still.button], ['true', 1, 'Play']);
  assert.ok(Math.abs(Number([...still.seen][0])) > 0.02, 'it stands at its largest angle');
}));
