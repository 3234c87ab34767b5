// The native engine, through the small programs beside the Rust tests.
import { spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '../..');

/** Runs an example of the tests' package with arguments and standard input; its standard output as lines. */
export async function native(example, given = [], input = '') {
  return run(['run', '--quiet', '-p', 'steadfoot-tests', '--example', example, '--', ...given], input);
}

/** The command line of the engine. */
export async function commandLine(given, input = '') {
  return run(['run', '--quiet', '-p', 'steadfoot-core', '--example', 'check', '--', ...given], input, [0, 1]);
}

function run(words, input, codes = [0]) {
  return new Promise((resolve, reject) => {
    const child = spawn('cargo', words, { cwd: ROOT, stdio: ['pipe', 'pipe', 'pipe'] });
    const out = [];
    const err = [];
    child.stdout.on('data', (piece) => out.push(piece));
    child.stderr.on('data', (piece) => err.push(piece));
    child.on('error', reject);
    child.on('close', (code) => {
      if (!codes.includes(code)) return reject(new Error(`cargo ${words.join(' ')} ended with ${code}:\n${Buffer.concat(err)}`));
      return resolve(Buffer.concat(out).toString('utf8').split('\n').filter((line) => line !== ''));
    });
    child.stdin.end(input);
  });
}
