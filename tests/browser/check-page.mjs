// The worksheet that a page shows, as a reader meets it: fields by their path, checks by their id, the answer in words.
import { until } from './visit.mjs';

/** The root of the worksheet that is shown, once it has an answer or says what is wrong. */
export async function worksheet(page) {
  await until(page, 'a worksheet shows an answer', () => {
    const shown = [...document.querySelectorAll('steadfoot-worksheet')].find((one) => !one.closest('[hidden]') && one.shadowRoot);
    return shown && shown.shadowRoot.querySelector('[data-answer]');
  });
  return page.evaluateHandle(() => [...document.querySelectorAll('steadfoot-worksheet')].find((one) => !one.closest('[hidden]') && one.shadowRoot).shadowRoot);
}

export const pathIs = (path) => `[data-path="${path.replaceAll('"', '\\"')}"]`;

/** The answer in words, and what it comes to. */
export function answerOf(root) {
  return root.evaluate((shadow) => {
    const answer = shadow.querySelector('[data-answer]');
    return { verdict: answer.getAttribute('data-answer'), words: [...answer.querySelectorAll('p[data-topic]')].map((one) => one.textContent).join(' ') };
  });
}

/** All checks as they stand in the list. */
export function checksOf(root) {
  return root.evaluate((shadow) => [...shadow.querySelectorAll('.results [data-check]')].map((row) => ({
    id: row.dataset.check, of: row.dataset.of, status: row.dataset.status, role: row.dataset.role,
    title: row.querySelector('.opener').textContent, utilisation: row.dataset.utilisation === undefined ? null : Number(row.dataset.utilisation),
    value: row.querySelector('.value').textContent,
  })));
}

export function fieldValue(root, path) {
  return root.evaluate((shadow, selector) => shadow.querySelector(selector).value, pathIs(path));
}

/** Replaces what stands in a field, with the keys that a reader would press. */
export async function typeInto(page, root, path, text) {
  const field = await root.$(pathIs(path));
  if (!field) throw new Error(`no field ${path}`);
  await field.focus();
  await page.keyboard.down('Control');
  await page.keyboard.press('a');
  await page.keyboard.up('Control');
  await page.keyboard.press('Delete');
  if (text !== '') await page.keyboard.type(text);
}

/** Waits for a claim about the worksheet. */
export function untilSheet(page, root, words, claim, ...given) {
  return until(page, words, claim, root, ...given);
}

/** What holds the keyboard's focus, seen through shadow roots. */
export function focused(page) {
  return page.evaluate(() => {
    let element = document.activeElement;
    while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
    if (!element) return null;
    return {
      path: element.dataset?.path ?? null, key: element.dataset?.key ?? null, role: element.getAttribute('role') ?? element.localName,
      name: element.getAttribute('aria-label') ?? element.textContent.trim(),
    };
  });
}

/** Presses Tab until the focus is on what is wanted. */
export async function tabTo(page, words, wanted, key = 'Tab') {
  let last = null;
  for (let presses = 0; presses < 600; presses += 1) {
    if (key === 'Shift+Tab') {
      await page.keyboard.down('Shift');
      await page.keyboard.press('Tab');
      await page.keyboard.up('Shift');
    } else {
      await page.keyboard.press('Tab');
    }
    last = await focused(page);
    if (last && wanted(last)) return last;
  }
  throw new Error(`the tab key never reaches ${words}; it ended on ${JSON.stringify(last)}`);
}
