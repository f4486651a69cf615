// Runs every check and every test, and closes with one line: how many passed, how many failed.
// A check that is no test (types, lint ...) counts as one.
import fs from 'node:fs';
import net from 'node:net';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, generate } from './prepare.mjs';
import { runNode, stopChildren } from './run.mjs';

process.chdir(path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..'));
const quick = process.argv.includes('--quick');
const results = 'test-results';
const browserData = '.data/browser-test';
const colours = process.stdout.isTTY ? [] : ['--colors=off'];

// A developer's own settings must not decide what the tests see.
for (const name of Object.keys(process.env))
  if (/^(BEDPLATE_|BETTER_AUTH_|DATABASE_URL$|PORT$|HOST$|SEED$|TRUSTED_PROXIES$|NODE_ENV$)/.test(name))
    delete process.env[name];
process.env.NEXT_TELEMETRY_DISABLED = '1';
process.env.BEDPLATE_TEST_PORT = String(await freePort());

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'])
  process.on(signal, () => stopChildren().then(() => process.exit(1)));

const tool =
  (script, ...args) =>
  async () => {
    const status = await runNode([script.startsWith('scripts/') ? script : `node_modules/${script}`, ...args]);
    if (status !== 0) throw new Error(`${path.basename(script)} ended with ${status}`);
  };
const empty = (folder) => () => fs.rmSync(folder, { recursive: true, force: true });
const vitest = (project) => ({
  name: project,
  counted: `${results}/${project}.json`,
  parts: [
    tool(
      ...['vitest/vitest.mjs', 'run', '--project', project],
      ...['--reporter=default', '--reporter=json', `--outputFile.json=${results}/${project}.json`],
    ),
  ],
});
const check = (name, ...parts) => ({ name, counted: null, parts });

const steps = [
  check('client', empty(results), generate),
  check('lint', tool('@biomejs/biome/bin/biome', 'ci', '--error-on-warnings', ...colours, '.')),
  check('types', tool('next/dist/bin/next', 'typegen'), tool('typescript/bin/tsc', '--noEmit')),
  check(
    'rooms',
    tool('dependency-cruiser/bin/dependency-cruise.mjs', '--output-type', 'err', 'app', 'lib', 'seed', 'proxy.ts'),
  ),
  check('unused code', tool('knip/bin/knip.js')),
  check('migrations', tool('scripts/migrate.mjs', 'check')),
  vitest('unit'),
  vitest('database'),
];
if (!quick) {
  steps.push(check('build', build));
  steps.push({
    name: 'browser',
    counted: `${results}/browser.json`,
    parts: [empty(browserData), tool('@playwright/test/cli.js', 'test'), empty(browserData)],
  });
}

const told = [];
const sum = { passed: 0, failed: 0 };
for (const { name, counted, parts } of steps) {
  const start = Date.now();
  console.log(`\n== ${name}`);
  let problem = null;
  try {
    for (const part of parts) await part();
  } catch (error) {
    problem = error.message;
    console.log(`${name} failed: ${problem}`);
  }
  const count = countOf(counted, problem);
  for (const key of Object.keys(sum)) sum[key] += count[key];
  const outcome = counted === null ? (problem ? 'failed' : 'passed') : `${count.passed} passed, ${count.failed} failed`;
  told.push(`  ${name}: ${outcome} (${((Date.now() - start) / 1000).toFixed(1)} s)`);
}

console.log(`\nA check that is no test counts as one:\n${told.join('\n')}`);
console.log(`${sum.passed} passed, ${sum.failed} failed`);
process.exit(sum.failed === 0 ? 0 : 1);

/** A run that ended badly has failed, even when no single test of it did. A test that was skipped shows nothing: failed. */
function countOf(file, problem) {
  if (file === null) return { passed: problem ? 0 : 1, failed: problem ? 1 : 0 };
  if (!fs.existsSync(file)) return { passed: 0, failed: 1 };
  const { stats, ...vitest } = JSON.parse(fs.readFileSync(file, 'utf8'));
  const [passed, failed] = stats
    ? [stats.expected, stats.unexpected + stats.flaky + stats.skipped]
    : [vitest.numPassedTests, vitest.numFailedTests + vitest.numPendingTests + vitest.numTodoTests];
  return { passed, failed: problem === null ? failed : Math.max(failed, 1) };
}

function freePort() {
  return new Promise((resolve, reject) => {
    const probe = net.createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}
