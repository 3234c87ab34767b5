// An empty network namespace: a process in it can reach itself over the loopback address and nothing else.
import { execFile, execFileSync } from 'node:child_process';
import { promisify } from 'node:util';

const ENTER = 'ip link set lo up && exec "$@"';

/** The words to put before a command so that it runs without a network, or null where this machine does not allow it. */
export function withoutNetwork() {
  for (const flags of ['-n', '-rn']) {
    try {
      execFileSync('unshare', [flags, 'sh', '-c', ENTER, 'sh', 'true'], { stdio: 'ignore' });
      return ['unshare', flags, 'sh', '-c', ENTER, 'sh'];
    } catch {
      // Not allowed in this way; the next way may be.
    }
  }
  return null;
}

/** Runs a command without a network; its output. */
export async function runWithoutNetwork(command) {
  const [program, ...rest] = [...withoutNetwork(), ...command];
  return promisify(execFile)(program, rest, { maxBuffer: 1 << 26 });
}
