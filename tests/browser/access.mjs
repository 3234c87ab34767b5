// What a machine can tell of whether everyone can use a page.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

const source = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Every violation that axe finds on the page as it is now, one sentence each with the place. */
export async function violations(page) {
  // A script tag would be refused by the page's security policy; evaluating goes round it and changes nothing on the page.
  // Without `preload: false` axe would ask for the style sheets once more, which the policy rightly refuses.
  await page.evaluate(`${source}; undefined`);
  const found = await page.evaluate(async () => {
    const { violations: list } = await globalThis.axe.run(document, { resultTypes: ['violations'], preload: false });
    return list.flatMap((rule) => rule.nodes.map((node) => ({
      rule: rule.id,
      help: rule.help,
      at: node.target.flat(3).join(' > '),
      why: (node.any[0] ?? node.all[0] ?? node.none[0])?.message ?? '',
    })));
  });
  return found.map(({ rule, help, at, why }) => `${rule} (${help}) at ${at}: ${why}`);
}
