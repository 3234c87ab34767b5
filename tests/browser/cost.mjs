// Reports what the shipped engine costs in node: `node cost.mjs FILE`. Nothing is gated here; instructions are counted
// elsewhere, because time differs from run to run.
import { readFileSync } from 'node:fs';
import { engine } from './engine.mjs';

const wasm = engine();
const text = readFileSync(process.argv[2], 'utf8');
const { report } = wasm.assess(text, 'si');
const at = JSON.stringify(report.checks[report.governs].at);

/** The least of many runs, in microseconds. */
function told(what, run) {
  let least = Infinity;
  for (const end = performance.now() + 1000; performance.now() < end;) {
    const start = performance.now();
    run();
    least = Math.min(least, 1000 * (performance.now() - start));
  }
  console.log(`${what.padEnd(24)} ${least.toFixed(1).padStart(10)} microseconds in WebAssembly`);
}

told('read and assess', () => wasm.assess(text, 'si'));
told('working', () => wasm.working(text, at));
told('limits', () => wasm.limits(text));
told('pressure of 8 feet', () => wasm.pressure_check());
told('rocking, 30 s record', () => wasm.rocking_check());
told('self check', () => wasm.self_check());
