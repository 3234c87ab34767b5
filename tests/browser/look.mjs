// Pictures of pages for people to look at:
//   node tests/browser/look.mjs FOLDER PAGE... [--from file|http|alone] [--browser chromium|firefox] [--sizes 1280,390,320] [--do STEPS.mjs] [--site DIST]
// For each page: light and dark at each width, in pieces where it is long, and the print on A4 as PDF and pictures.
// STEPS.mjs may export a default async function that brings the page into a state: it gets { page }.
import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { closeBrowsers } from './browsers.mjs';
import { pictured, printed } from './paper.mjs';
import { SITE, visit } from './visit.mjs';

const PIECE_PX = 1600;
const SETTLE_MS = 1200;

const options = { from: 'file', browser: 'chromium', sizes: '1280,390,320', do: '', site: SITE };
const words = [];
for (let at = 2; at < process.argv.length; at += 1) {
  const name = process.argv[at].replace(/^--/, '');
  if (process.argv[at].startsWith('--') && name in options) options[name] = process.argv[(at += 1)];
  else words.push(process.argv[at]);
}
const [folder, ...pages] = words;
if (!folder || !pages.length) {
  console.error('use: node look.mjs FOLDER PAGE... [--from file|http|alone] [--browser chromium|firefox] [--sizes 1280,390,320] [--do STEPS.mjs]');
  process.exit(2);
}
const steps = options.do ? (await import(pathToFileURL(resolve(options.do)))).default : async () => {};
await mkdir(folder, { recursive: true });

try {
  for (const name of pages) {
    const stem = join(folder, name.replace(/#.*/, '').replace(/\.html$/, '').replace(/[^\w.-]+/g, '-') || 'steadfoot');
    for (const width of options.sizes.split(',').map(Number)) {
      for (const look of ['light', 'dark']) {
        await visited(name, { width, height: width > 600 ? 900 : 844 }, look, async (page) => {
          await pieces(page, `${stem}-${width}-${look}`, width);
          if (look === 'light' && width > 600) {
            const { bytes, sizes } = await printed(page, 'A4');
            await pictured(bytes, `${stem}-print`);
            console.log(`${stem}-print-*.png (${sizes.length} sheets)`);
          }
        });
      }
    }
  }
} finally {
  await closeBrowsers();
}

function visited(name, size, look, body) {
  return visit({ ...options, page: name, size, look, trouble: 'expected', site: resolve(options.site) }, async (opened) => {
    await settled(opened.page);
    await steps(opened);
    await body(opened.page);
    for (const one of new Set(opened.trouble)) console.log(`  trouble on ${name}: ${one}`);
  });
}

/** Worksheets come to life after the page has loaded, and what is worked out beside the answer comes a little later. */
async function settled(page) {
  await page.waitForFunction(() => [...document.querySelectorAll('steadfoot-worksheet')]
    .filter((one) => !one.closest('[hidden]'))
    .every((one) => one.shadowRoot?.querySelector('[data-answer]')), { timeout: 5000 }).catch(() => console.log('  a worksheet shows no answer'));
  await new Promise((done) => { setTimeout(done, SETTLE_MS); });
}

async function pieces(page, prefix, width) {
  const [height, wide] = await page.evaluate(() => [document.documentElement.scrollHeight, document.documentElement.scrollWidth]);
  if (wide > width) console.log(`  ${prefix}: scrolls sideways, ${wide} px wide`);
  const count = Math.ceil(height / PIECE_PX);
  for (let piece = 0; piece < count; piece += 1) {
    const y = piece * PIECE_PX;
    const path = count === 1 ? `${prefix}.png` : `${prefix}-${piece + 1}.png`;
    const clip = { x: 0, y, width, height: Math.min(PIECE_PX, height - y) };
    await page.screenshot({ path, clip, captureBeyondViewport: true });
    console.log(path);
  }
}
