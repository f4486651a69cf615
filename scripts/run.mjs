// A program of our own making as a child process, which does not outlive us.
import { spawn } from 'node:child_process';

const running = new Set();

/** Runs Node on a script. Resolves to its exit status; 1 when a signal ended it. */
export function runNode(args, { env = {}, cwd } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'inherit', 'inherit'],
    });
    running.add(child);
    child.once('error', reject);
    child.once('exit', (status) => {
      running.delete(child);
      resolve(status ?? 1);
    });
  });
}

/** Ends what still runs; resolves when it is gone. */
export async function stopChildren() {
  await Promise.all(
    [...running].map(
      (child) =>
        new Promise((resolve) => {
          child.once('exit', resolve);
          child.kill('SIGTERM');
          setTimeout(() => child.kill('SIGKILL'), 5_000).unref();
        }),
    ),
  );
}
