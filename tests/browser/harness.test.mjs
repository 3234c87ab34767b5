// The harness itself: that it sees what it is there to see. Each claim about the page rests on these.
import assert from 'node:assert/strict';
import { mkdtemp, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { createServer } from 'node:http';
import { violations } from './access.mjs';
import { closeBrowsers } from './browsers.mjs';
import { runWithoutNetwork, withoutNetwork } from './network.mjs';
import { flowing, PAPERS, printed } from './paper.mjs';
import { assertNoTrouble, bothBrowsers, everywhere, inWords, savedFiles, until, visit } from './visit.mjs';

let site;
let stranger;
let strangerAsked = 0;

const page = (head, body) => `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Fixture</title>
<link rel="icon" href="data:,">${head}</head><body><main>${body}</main></body></html>`;

const POLICY = "default-src 'none'; script-src 'self' file: 'unsafe-inline'; style-src 'self' file:; img-src data:";

before(async () => {
  stranger = createServer((request, response) => { strangerAsked += 1; response.end('x'); });
  await new Promise((done) => stranger.listen(0, '127.0.0.1', done));
  site = await mkdtemp(join(tmpdir(), 'steadfoot-fixture-'));
  await mkdir(join(site, 'inner'));
  const files = {
    'good.html': page(`<meta http-equiv="Content-Security-Policy" content="${POLICY}"><script src="part.js" defer></script>`,
      '<h1>Good</h1><p id="out">without scripts</p><label>Width <input id="width" value="10"></label><button id="save">Save</button>'),
    'part.js': `document.querySelector('#out').textContent = 'with scripts';
      document.querySelector('#width').addEventListener('input', (e) => { document.querySelector('#out').textContent = 'width ' + e.target.value; });
      document.querySelector('#save').addEventListener('click', () => {
        const a = document.createElement('a');
        a.href = URL.createObjectURL(new Blob(['{"a":1}'], { type: 'application/json' })); a.download = 'saved.json'; a.click(); });`,
    'shouts.html': page('', '<h1>Shouts</h1><script>console.error("a shout")</script>'),
    'throws.html': page('', '<h1>Throws</h1><script>setTimeout(() => { throw new Error("a slip") })</script>'),
    'asks.html': page('', `<h1>Asks</h1><script>fetch("http://127.0.0.1:${stranger.address().port}/x", { mode: "no-cors" }).catch(() => 0)</script>`),
    'styled.html': page(`<meta http-equiv="Content-Security-Policy" content="${POLICY}">`, '<h1 style="color:red">Styled</h1>'),
    'fetches.html': page('', '<h1>Fetches</h1><p id="out">waits</p><script>fetch("part.js").then(() => "read", () => "refused").then((t) => { document.querySelector("#out").textContent = t; })</script>'),
    'unlabelled.html': page('', '<h1>Unlabelled</h1><div id="host"></div><script>document.querySelector("#host").attachShadow({ mode: "open" }).innerHTML = "<input>"</script>'),
    'looks.html': page('', '<h1>Looks</h1><p id="out"></p><script>document.querySelector("#out").textContent = matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light"</script>'),
    'paper.html': page('', `<h1>Paper</h1><p>First sheet.</p><p>${'word '.repeat(40)}</p><p id="second">Second sheet.</p><link rel="stylesheet" href="paper.css">`),
    'paper.css': '@page { margin: 20mm; @bottom-center { content: "sheet " counter(page) " of " counter(pages) } } #second { break-before: page }',
  };
  files['steadfoot.html'] = files['good.html'].replace('<script src="part.js" defer></script>', '').replace('</main>', `<script>${files['part.js']}</script></main>`);
  for (const [name, text] of Object.entries(files)) await writeFile(join(site, name), text);
});

after(async () => {
  await closeBrowsers();
  await new Promise((done) => { stranger.close(done); stranger.closeAllConnections(); });
  await rm(site, { recursive: true, force: true });
});

const textOf = (opened, selector) => opened.$eval(selector, (element) => element.textContent);

for (const where of everywhere) {
  test(`a page that is in order is opened and typed into without a complaint ${inWords(where)}`, () => visit({ ...where, site, page: 'good.html' }, async ({ page: opened }) => {
    assert.equal(await textOf(opened, '#out'), 'with scripts');
    await opened.focus('#width');
    await opened.keyboard.press('End');
    await opened.keyboard.type('5');
    await until(opened, 'the answer follows the field', () => document.querySelector('#out').textContent === 'width 105');
  }));

  test(`scripts can be off ${inWords(where)}`, () => visit({ ...where, site, page: 'good.html', scripts: 'off' }, async ({ page: opened }) => {
    assert.equal(await textOf(opened, '#out'), 'without scripts');
  }));
}

for (const { browser } of bothBrowsers) {
  const expected = (name) => ({ browser, from: 'http', site, page: name, trouble: 'expected' });
  const complains = (name, words, from = 'http') => visit({ ...expected(name), from }, async ({ page: opened, trouble, asked }) => {
    for (let turn = 0; turn < 50 && !trouble.length; turn += 1) await opened.evaluate(() => new Promise((done) => setTimeout(done, 100)));
    assert.match(trouble.join('\n'), words);
    assert.throws(() => assertNoTrouble({ trouble }, asked));
  });

  test(`a console error is seen in ${browser}`, () => complains('shouts.html', /console error: a shout/));
  test(`an uncaught error is seen in ${browser}`, () => complains('throws.html', /a slip/));
  test(`a refusal by the security policy is seen in ${browser}, over http`, () => complains('styled.html', /security policy.*style-src/i));
  test(`a refusal by the security policy is seen in ${browser}, from disk`, () => complains('styled.html', /security policy.*style-src/i, 'file'));
  test(`a request to somebody else is seen in ${browser}`, async () => {
    const before_ = strangerAsked;
    await complains('asks.html', /asked for something else/);
    assert.ok(strangerAsked > before_, 'the request really went out');
  });
  test(`a missing file is seen in ${browser}`, () => visit({ ...expected('good.html'), page: 'nowhere.html' }, async ({ trouble, asked }) => {
    assert.throws(() => assertNoTrouble({ trouble }, asked), /not on the server/);
  }));
  test(`from disk ${browser} refuses to fetch a neighbouring file, as it does for readers`, () => visit({ ...expected('fetches.html'), from: 'file' }, async ({ page: opened }) => {
    await until(opened, 'the fetch ended', () => document.querySelector('#out').textContent !== 'waits');
    assert.equal(await textOf(opened, '#out'), 'refused');
  }));
  test(`axe sees into shadow roots in ${browser}`, () => visit({ ...expected('unlabelled.html') }, async ({ page: opened }) => {
    assert.match((await violations(opened)).join('\n'), /^label /m);
  }));
  test(`axe runs under the page's security policy in ${browser}`, () => visit({ browser, from: 'file', site, page: 'good.html' }, async ({ page: opened }) => {
    assert.deepEqual(await violations(opened), []);
  }));
  for (const look of ['light', 'dark']) {
    test(`the ${look} look reaches the page in ${browser}`, () => visit({ browser, site, page: 'looks.html', look }, async ({ page: opened }) => {
      assert.equal(await textOf(opened, '#out'), look);
    }));
  }
  test(`a saved file is found in ${browser}`, () => visit({ browser, from: 'alone', site }, async ({ page: opened, downloads }) => {
    await opened.click('#save');
    const [file] = await savedFiles(downloads);
    assert.equal(await readFile(file, 'utf8'), '{"a":1}');
  }));
}

for (const [paper, size] of Object.entries(PAPERS)) {
  test(`a page is printed on ${paper} and its text is read back with page numbers`, () => visit({ site, page: 'paper.html' }, async ({ page: opened }) => {
    const sheet = await printed(opened, paper);
    assert.equal(sheet.sizes.length, 2);
    for (const [index, side] of size.entries()) assert.ok(Math.abs(sheet.sizes[0][index] - side) < 1.5, `${sheet.sizes[0]}`);
    assert.match(flowing(sheet.sheets[0]), /First sheet/);
    assert.match(flowing(sheet.sheets[1]), /Second sheet/);
    assert.match(flowing(sheet.sheets[1]), /sheet 2 of 2/);
  }));
}

test('a process without a network reaches nobody', { skip: withoutNetwork() ? false : 'this machine allows no network namespace' }, async () => {
  const ask = `fetch('http://127.0.0.1:${stranger.address().port}/').then(() => console.log('reached'), () => console.log('nobody'))`;
  const { stdout } = await runWithoutNetwork([process.execPath, '-e', ask]);
  assert.equal(stdout.trim(), 'nobody');
});
