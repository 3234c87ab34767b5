// Somebody with a cabinet of her own begins on the landing page, is told what is still to give, and loses nothing.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { closeBrowsers } from './browsers.mjs';
import { answerOf, fieldValue, focused, typeInto, untilSheet, worksheet } from './check-page.mjs';
import { visit } from './visit.mjs';

after(closeBrowsers);

const press = (root, key) => root.evaluate((shadow, which) => shadow.querySelector(`[data-key="${which}"]`).click(), key);
const steps = (root) => root.evaluate((shadow) => [...shadow.querySelectorAll('.next-steps button')].map((button) => button.dataset.key));
const choose = (root, path, word) => root.evaluate((shadow, [at, value]) => {
  const select = shadow.querySelector(`[data-path="${at}"]`);
  select.value = value;
  select.dispatchEvent(new Event('change', { bubbles: true }));
}, [path, word]);

for (const from of ['alone', 'http']) {
  test(`a bare cabinet begins on the landing page and says what is still to give, from ${from === 'http' ? 'the folder over http' : 'the one file'}`, () => visit({ from }, async ({ page }) => {
    await press(await worksheet(page), 'begin new');
    await page.waitForFunction(() => /check/.test(location.href) || document.querySelector('steadfoot-worksheet[kind="check"]')?.shadowRoot);
    await page.waitForFunction(() => [...document.querySelectorAll('steadfoot-worksheet')].some((one) => !one.closest('[hidden]') && one.shadowRoot?.querySelector('.next-steps button')));
    const root = await worksheet(page);
    assert.deepEqual(await steps(root), ['to foot', 'to slab', 'to site', 'to anchor', 'to anchorage']);
    if (from === 'http') return;

    await typeInto(page, root, 'cabinet.width_mm', '1600');
    // Contents come from the lines of a table, by rack units too; a comma is a decimal point between tabs.
    // Before three digits it may part thousands as well: nothing is guessed.
    const before = await fieldValue(root, 'contents[0].mass_kg').catch(() => null);
    for (const line of ['recorder\t1,250\tU1\t4U', 'recorder, 1,250, U1, 4U']) {
      await root.evaluate((shadow, text) => { shadow.querySelector('[data-key="paste"]').value = text; }, line);
      await press(root, 'take lines');
      assert.match(await root.evaluate((shadow) => shadow.querySelector('.paste [role="status"]').textContent), /Nothing was taken/);
      assert.equal(await fieldValue(root, 'contents[0].mass_kg').catch(() => null), before);
    }
    await root.evaluate((shadow) => {
      shadow.querySelector('[data-key="paste"]').value = 'name\tmass\tfrom\theight\nrecorder\t180,5\tU1\t4U\nbattery\t240\t500\t300\t450\t900\n';
    });
    await press(root, 'take lines');
    assert.match(await root.evaluate((shadow) => shadow.querySelector('.paste [role="status"]').textContent), /2 contents are taken, together 420\.5 kg/);
    const boxes = await Promise.all([0, 1].flatMap((place) => ['name', 'mass_kg', 'bottom_mm', 'size_mm[0]', 'size_mm[2]'].map((key) => fieldValue(root, `contents[${place}].${key}`))));
    assert.deepEqual(boxes, ['recorder', '180.5', '100', '600', '177.8', 'battery', '240', '500', '450', '300']);
    await press(root, 'set feet');
    assert.deepEqual(await Promise.all([0, 1, 2, 3].map((place) => fieldValue(root, `cabinet.feet[${place}].at_mm[0]`))), ['-700', '700', '700', '-700']);
    // A part that is given is asked at once, and only its rule is wanted until that is chosen.
    await press(root, 'give site');
    assert.equal((await focused(page)).path, 'site.rule');
    assert.deepEqual(await root.evaluate((shadow) => [...shadow.querySelectorAll('[data-fault]')].map((fault) => fault.dataset.fault)), ['site.rule']);
    await choose(root, 'site.rule', 'asce-7-16');
    for (const [key, text] of [['s_ds', '1.2'], ['importance_factor', '1.5'], ['attachment_height_m', '0']]) await typeInto(page, root, `site.${key}`, text);
    await choose(root, 'site.component', 'sheet-metal-cabinet');
    // Anchors are set about the feet although the anchorage is not whole yet.
    await press(root, 'give anchorage');
    await press(root, 'set pattern');
    await press(root, 'give slab');
    for (const [key, word] of [['rule', 'aci-318-19-si'], ['bolt', 'M16'], ['steel', 'iso-8.8'], ['anchor_kind', 'expansion-torque']]) await choose(root, `anchorage.${key}`, word);
    await typeInto(page, root, 'anchorage.embedment_mm', '100');
    await untilSheet(page, root, 'the report is asked for', (shadow) => shadow.querySelector('[data-key="want anchorage.anchor_category"]'));
    // What only an evaluation report gives is folded until the kind of anchor asks for it; forces are typed in kN.
    assert.deepEqual(await root.evaluate((shadow) => [...shadow.querySelectorAll('[data-part="anchorage"] .fold[open] summary')].map((one) => one.dataset.key)), ['fold Values of the evaluation report']);
    await press(root, 'want anchorage.anchor_category');
    assert.equal((await focused(page)).path, 'anchorage.anchor_category');
    await choose(root, 'anchorage.anchor_category', '1');
    for (const [key, text] of [['n_p_cr_n', '9'], ['n_p_eq_n', '0.3'], ['v_sa_eq_n', '12']]) await typeInto(page, root, `anchorage.${key}`, text);
    await untilSheet(page, root, 'it fails, and a remedy is offered', (shadow) => shadow.querySelector('[data-key="ask what-would-hold"]'));
    assert.equal((await answerOf(root)).verdict, 'does_not_hold');
    await press(root, 'ask what-would-hold');
    await untilSheet(page, root, 'the remedy is looked for', (shadow) => shadow.querySelector('[data-study="what-would-hold"] table'));

    await press(root, 'tool Reset');
    assert.equal((await answerOf(root)).verdict, 'holds');
    await press(root, 'message');
    assert.equal((await answerOf(root)).verdict, 'does_not_hold');
    assert.equal(await fieldValue(root, 'anchorage.n_p_eq_n'), '0.3');
  }));
}
