// Approval data: saved from the anchorage, opened again into it; what is wrong with a file is said beside the button.
import assert from 'node:assert/strict';
import { readFile, writeFile } from 'node:fs/promises';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { fieldValue, typeInto, untilSheet, worksheet } from './check-page.mjs';
import { checkPage, sample } from './projects.mjs';
import { bothBrowsers, inWords, savedFiles, visit } from './visit.mjs';

const folder = mkdtempSync(join(tmpdir(), 'steadfoot-approval-'));

after(async () => {
  await closeBrowsers();
  rmSync(folder, { recursive: true, force: true });
});

const RULE = 'en-1992-4-2018';
const data = { fastener: 'bonded', bolt: 'M16', steel: 'iso-8.8', embedment_mm: 125, gamma_inst: 1.2, tau_rk_cr_mpa: 6.5, tau_rk_ucr_mpa: 11 };

function european() {
  const project = sample();
  project.site = { rule: 'direct', format: 'limit-states', horizontal_coefficient: 0.2, vertical_coefficient: 0, gravity_heavy: 1, gravity_light: 1 };
  project.anchorage = { rule: RULE, ...data, n_rk_p_cr_n: 9000, holes: 'filled' };
  return project;
}

async function open(root, name, content) {
  const path = join(folder, name);
  await writeFile(path, typeof content === 'string' ? content : JSON.stringify(content));
  const input = await root.$('.approval-data input[type=file]');
  await input.uploadFile(path);
}

const said = (root) => root.evaluate((shadow) => [...shadow.querySelectorAll('[data-approval-faults] li')].map((line) => line.textContent));

for (const where of bothBrowsers) {
  test(`approval data are saved and opened again ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone', european()) }, async ({ page, downloads }) => {
    const root = await worksheet(page);
    await root.evaluate((shadow) => shadow.querySelector('[data-key="save approval"]').click());
    const [file] = await savedFiles(downloads, 1);
    const saved = JSON.parse(await readFile(file, 'utf8'));
    assert.equal(saved.format, 'steadfoot approval 1');
    assert.equal(saved.rule, RULE);
    for (const [key, value] of Object.entries({ ...data, n_rk_p_cr_n: 9000 })) assert.equal(saved.anchorage[key], value, key);
    assert.equal(saved.anchorage.holes, undefined, 'the project keeps what no assessment gives');

    await typeInto(page, root, 'anchorage.tau_rk_cr_mpa', '3');
    const { n_rk_p_cr_n: dropped, ...kept } = saved.anchorage;
    assert.equal(dropped, 9000);
    await open(root, 'bonded.json', { ...saved, anchorage: kept });
    await untilSheet(page, root, 'the value of the file is there', (shadow) => shadow.querySelector('[data-path="anchorage.tau_rk_cr_mpa"]').value === '6.5');
    assert.equal(await fieldValue(root, 'anchorage.n_rk_p_cr_n'), '', 'a value that the file leaves out does not stay');
    assert.equal(await fieldValue(root, 'anchorage.holes'), 'filled');
    assert.deepEqual(await said(root), []);
  }));

  test(`a file of another rule changes the rule, and a wrong file changes nothing ${inWords(where)}`, () => visit({ ...where, page: checkPage('alone', sample()) }, async ({ page }) => {
    const root = await worksheet(page);
    await open(root, 'wrong.json', { format: 'steadfoot approval 1', rule: RULE, anchorage: { ...data, gamma_inst: 2, maker: 'x' } });
    await untilSheet(page, root, 'the faults are told', (shadow) => shadow.querySelectorAll('[data-approval-faults] li').length === 2);
    const lines = (await said(root)).join('\n');
    assert.match(lines, /anchorage\.gamma_inst/);
    assert.match(lines, /anchorage\.maker/);
    assert.equal(await fieldValue(root, 'anchorage.rule'), 'aci-318-19-si');
    await open(root, 'no-json.json', 'approval');
    await untilSheet(page, root, 'no JSON is told', (shadow) => shadow.querySelectorAll('[data-approval-faults] li').length === 1);
    await open(root, 'right.json', { format: 'steadfoot approval 1', rule: RULE, title: 'a rod', anchorage: data });
    await untilSheet(page, root, 'the rule has changed', (shadow) => shadow.querySelector('[data-path="anchorage.rule"]').value === 'en-1992-4-2018');
    assert.equal(await fieldValue(root, 'anchorage.gamma_inst'), '1.2');
    assert.deepEqual(await said(root), []);
  }));
}
