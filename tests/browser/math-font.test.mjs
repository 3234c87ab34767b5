// The cut math font draws what the uncut one draws. A font whose glyphs were renumbered beneath its table of
// mathematical measures would still load, and its roots and brackets would fall apart.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { closeBrowsers } from './browsers.mjs';
import { texts } from './engine.mjs';
import { SITE, visit } from './visit.mjs';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '../..');
const shipped = existsSync(join(SITE, 'math.woff2'));
const skip = shipped ? false : 'no math font is shipped';

const row = (inside) => `<mrow>${inside}</mrow>`;
const tower = '<mfrac><mi>a</mi><mfrac><mi>b</mi><mfrac><mi>c</mi><mi>d</mi></mfrac></mfrac></mfrac>';
const FORMULAS = {
  'a root': `<msqrt>${row("<msubsup><mi>f</mi><mi>c</mi><mo>′</mo></msubsup>")}</msqrt>`,
  'a tall root': `<msqrt>${row(tower)}</msqrt>`,
  'a fraction': `<mfrac>${row('<mi>P</mi><mo>+</mo><mn>0.75</mn>')}${row('<msub><mi>A</mi><mi>Nc</mi></msub>')}</mfrac>`,
  'a tall bracket': `<mrow><mo>(</mo>${tower}<mo>)</mo></mrow>`,
  'a tall square bracket and bars': `<mrow><mo>[</mo>${tower}<mo>]</mo><mo>|</mo>${tower}<mo>|</mo><mo>{</mo>${tower}<mo>}</mo></mrow>`,
  'a sum with limits': '<munderover><mo>∑</mo><mrow><mi>i</mi><mo>=</mo><mn>1</mn></mrow><mi>n</mi></munderover><msub><mi>m</mi><mi>i</mi></msub>',
  'Greek and comparisons': '<mi>φ</mi><mi>ψ</mi><mi>λ</mi><mi>Ω</mi><mo>≤</mo><mo>≥</mo><mo>×</mo><mo>−</mo><mo>·</mo>',
};

const SYMBOLS_A_ROW = 12;

let site;

// The cut leaves out kerning and the alternate shapes for small scripts, so both are drawn without them. Only its prime has always the
// form that it has in scripts, for which the uncut font has to be asked; Firefox does so, Chromium asks no font about a
// sign, so there the prime is left to the test that compares outlines.
const STYLE = 'math{font-family:"Test Math";font-size:28px;font-kerning:none;font-feature-settings:"ssty" 0}.prime{font-feature-settings:"ssty" 1}p{margin:0;height:110px;overflow:hidden}body{background:#fff;color:#000}';
// Chromium takes the height of a small Greek letter from its upright form, which formulas never show and the cut leaves
// out; so the italic form, which is what is drawn, is written here.
const italic = (formula) => formula.replace(/[α-ω]/g, (letter) => String.fromCodePoint(letter.codePointAt(0) - 0x3b1 + 0x1d6fc));
const PRIME = '<mo>′</mo>';
const primes = { firefox: '<mo class="prime">′</mo>', chromium: '<mo>*</mo>' };

const page = (font, formulas) => `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Formulas</title><link rel="icon" href="data:,">
<style>@font-face{font-family:"Test Math";src:url(${font})}${STYLE}</style></head>
<body>${formulas.map((formula) => `<p><math display="block"><mrow>${formula}</mrow></math></p>`).join('\n')}</body></html>`;

before(() => {
  if (!shipped) return;
  site = mkdtempSync(join(tmpdir(), 'steadfoot-fonts-'));
  copyFileSync(join(SITE, 'math.woff2'), join(site, 'cut.woff2'));
  execFileSync('cargo', ['run', '--quiet', '-p', 'steadfoot-tests', '--example', 'uncut_math_font', '--', join(site, 'uncut.otf')], { cwd: ROOT, stdio: ['ignore', 'ignore', 'pipe'] });
  const symbols = Object.values(texts().symbols);
  const rows = Array.from({ length: Math.ceil(symbols.length / SYMBOLS_A_ROW) }, (_, place) => symbols.slice(place * SYMBOLS_A_ROW, (place + 1) * SYMBOLS_A_ROW).join('<mspace width="1em"></mspace>'));
  const all = [...Object.values(FORMULAS), ...rows];
  for (const [browser, prime] of Object.entries(primes)) {
    const formulas = all.map((formula) => italic(formula).replaceAll(PRIME, prime));
    for (const [name, font] of [['cut', 'cut.woff2'], ['uncut', 'uncut.otf'], ['none', 'data:font/woff2;base64,AAAA']]) {
      writeFileSync(join(site, `${browser}-${name}.html`), page(font, formulas));
    }
  }
});

after(async () => {
  await closeBrowsers();
  if (site) rmSync(site, { recursive: true, force: true });
});

/** A picture of each formula, as text, and how wide it came out. */
async function pictures(browser, name) {
  const pictured = [];
  await visit({ browser, site, page: `${browser}-${name}.html`, trouble: name === 'none' ? 'expected' : 'none' }, async ({ page: opened }) => {
    const loaded = await opened.evaluate(async () => {
      await document.fonts.ready;
      return document.fonts.check('28px "Test Math"');
    });
    assert.equal(loaded, name !== 'none');
    for (const formula of await opened.$$('p')) {
      const shot = await formula.screenshot({ encoding: 'base64' });
      pictured.push(shot);
    }
  });
  return pictured;
}

for (const browser of ['chromium', 'firefox']) {
  test(`root, fraction, tall bracket and every symbol look the same with the cut and the uncut font, in ${browser}`, { skip }, async () => {
    const [cut, uncut] = [await pictures(browser, 'cut'), await pictures(browser, 'uncut')];
    const names = Object.keys(FORMULAS);
    assert.equal(cut.length, uncut.length);
    for (const [index, picture] of cut.entries()) assert.ok(picture === uncut[index], `${names[index] ?? `the row of symbols ${index - names.length}`} differs`);
  });

  test(`without the font the formulas look otherwise, in ${browser}, so the comparison can fail`, { skip }, async () => {
    const [cut, none] = [await pictures(browser, 'cut'), await pictures(browser, 'none')];
    for (const [index, name] of Object.keys(FORMULAS).entries()) assert.notEqual(cut[index], none[index], `${name} does not depend on the font`);
  });
}
