// Native equals WebAssembly: every number of every step to its last bit, every fault's text, every mark of a drawing.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { engine, texts } from './engine.mjs';
import { native, ROOT } from './native.mjs';

const WIDTH_PX = 400;
const RANDOM_PROJECTS = 200;

const demos = () => readdirSync(join(ROOT, 'demo-configs')).filter((name) => /^\d.*\.json$/.test(name)).sort()
  .map((name) => [name, readFileSync(join(ROOT, 'demo-configs', name), 'utf8')]);

/** What the shipped engine tells of a project, in the same order as the native program. */
function told(wasm, text) {
  const si = wasm.assess(text, 'si');
  const us = wasm.assess(text, 'us');
  if (!si.report) return { si, us, rest: null };
  return {
    si,
    us,
    rest: {
      checks: si.report.checks.map((check) => (check.at === null ? null : wasm.working(text, JSON.stringify(check.at)))),
      rose: si.report.rose.map((point) => wasm.working(text, JSON.stringify(point.at))),
      plan: wasm.drawings(text, 'us', 'null', WIDTH_PX, 'plan'),
      elevation: wasm.drawings(text, 'si', 'null', WIDTH_PX, 'elevation'),
      rose_drawn: wasm.drawings(text, 'si', 'null', WIDTH_PX, 'rose'),
      limits: wasm.limits(text),
    },
  };
}

/** Plain data: the bindings may leave out what the native text writes as null, and make maps of objects. */
function plain(value) {
  if (value instanceof Map) return plain(Object.fromEntries(value));
  if (Array.isArray(value)) return value.map(plain);
  if (value === undefined) return null;
  if (value !== null && typeof value === 'object') {
    return Object.fromEntries(Object.keys(value).sort().map((key) => [key, plain(value[key])]));
  }
  return value;
}

const bits = (number) => {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, number);
  return view.getBigUint64(0).toString(16).padStart(16, '0');
};

/** The first difference between two pieces of plain data, with the bits of numbers; null where there is none. */
function difference(left, right, path = '') {
  if (typeof left === 'number' && typeof right === 'number') {
    return bits(left) === bits(right) ? null : `${path}: ${left} (${bits(left)}) natively, ${right} (${bits(right)}) in WebAssembly`;
  }
  if (left === null || right === null || typeof left !== 'object' || typeof right !== 'object') {
    return left === right ? null : `${path}: ${JSON.stringify(left)} natively, ${JSON.stringify(right)} in WebAssembly`;
  }
  const keys = new Set([...Object.keys(left), ...Object.keys(right)]);
  for (const key of keys) {
    const found = difference(left[key] ?? null, right[key] ?? null, `${path}/${key}`);
    if (found !== null) return found;
  }
  return null;
}

function numbersIn(value) {
  if (typeof value === 'number') return 1;
  if (value === null || typeof value !== 'object') return 0;
  return Object.values(value).reduce((sum, one) => sum + numbersIn(one), 0);
}

async function compare(named) {
  const wasm = engine();
  const lines = await native('told', [], named.map(([, text]) => `${JSON.stringify(text)}\n`).join(''));
  assert.equal(lines.length, named.length);
  let numbers = 0;
  for (const [index, [name, text]] of named.entries()) {
    const [left, right] = [plain(JSON.parse(lines[index])), plain(told(wasm, text))];
    assert.equal(difference(left, right), null, name);
    numbers += numbersIn(right);
  }
  return numbers;
}

test('the comparison sees one bit', () => {
  assert.equal(difference({ a: [1, null] }, { a: [1, null] }), null);
  assert.match(difference({ a: [0.1 + 0.2] }, { a: [0.3] }), /a\/0: .*3fd3333333333334.*3fd3333333333333/);
  assert.match(difference({ a: 0 }, { a: -0 }), /8000000000000000/);
  assert.match(difference({ a: 'x' }, { b: 'x' }), /a/);
});

test('every demo gives the same bits natively and in WebAssembly', async () => {
  const named = demos();
  assert.ok(named.length >= 8, `${named.length} demos`);
  assert.equal(named.length, texts().demos.length, 'the page carries every demo');
  assert.ok(await compare(named) > 10_000);
});

test(`${RANDOM_PROJECTS} random projects give the same bits natively and in WebAssembly`, async () => {
  const lines = await native('random_projects', [RANDOM_PROJECTS, 20], '');
  assert.equal(lines.length, RANDOM_PROJECTS);
  assert.ok(await compare(lines.map((text, place) => [`random project ${place}: ${text}`, text])) > 100_000);
});

test('every fault has the same text natively and in WebAssembly', async () => {
  const folder = join(ROOT, 'tests/invalid');
  const files = readdirSync(folder).filter((name) => name.endsWith('.json') && !name.endsWith('.faults.json')).sort();
  assert.ok(files.length >= 60, `${files.length} invalid files`);
  await compare(files.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
});

test('the self check gives the same bits natively and in WebAssembly', async () => {
  const [line] = await native('self_check');
  assert.equal(Number(line), engine().self_check() >>> 0);
  assert.notEqual(Number(line), 0);
});
