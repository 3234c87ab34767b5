// A page on paper: printed to PDF, its text and its sizes read back, its sheets as pictures.
import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** Sheet sizes in points, as a PDF states them. */
export const PAPERS = { A4: [595, 842], Letter: [612, 792] };

/** Prints the page as it is now. The paper's size comes from the print dialogue, unless the page states one itself. */
export async function printed(page, paper) {
  const bytes = await page.pdf({ format: paper, printBackground: false, preferCSSPageSize: true, timeout: 0 });
  const folder = await mkdtemp(join(tmpdir(), 'steadfoot-paper-'));
  const file = join(folder, 'sheet.pdf');
  await writeFile(file, bytes);
  try {
    const { stdout: information } = await run('pdfinfo', ['-f', '1', '-l', '9999', file], { maxBuffer: 1 << 26 });
    const sizes = [...information.matchAll(/^Page\s+\d+ size:\s+([\d.]+) x ([\d.]+) pts/gm)].map((m) => [Number(m[1]), Number(m[2])]);
    const { stdout: text } = await run('pdftotext', ['-raw', file, '-'], { maxBuffer: 1 << 28 });
    const sheets = text.split('\f').slice(0, sizes.length);
    return { bytes, sizes, sheets, text };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Text with every run of blanks and line ends as one blank, so that wrapping does not hide a sentence. */
export function flowing(text) {
  return text.replace(/[\s\u00a0]+/g, ' ').trim();
}

/** Writes `bytes` as PDF and one PNG a sheet next to it; returns the PNGs' common prefix. */
export async function pictured(bytes, prefix) {
  await writeFile(`${prefix}.pdf`, bytes);
  await run('pdftoppm', ['-r', '80', '-png', `${prefix}.pdf`, prefix]);
  return prefix;
}
