// npm run bench: what the engine does in a second on one core, and the core predicate beside the same SQL.
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { judge } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { inOrder } from '@/lib/matching/order';
import { screenOf } from '@/lib/matching/screen/screen';
import type { Verdict } from '@/lib/matching/verdict';
import { startPostgres } from '../scripts/pg.mjs';
import { coreColumns } from './core-columns';
import { coreLoop } from './core-loop';
import { coreSql } from './core-sql';
import { plant } from './plant';

const SIZE = { sets: 5000, spares: 3000 };
const by = { settings: defaultSettings, asOf: null };
const seconds = (ms: number, digits = 2) => `${(ms / 1000).toFixed(digits)} s`;
const count = (n: number) => Math.round(n).toLocaleString('en').replaceAll(',', ' ');
const say = (what: string, figure: string, note = '') =>
  console.log(`${what.padEnd(52)} ${figure.padStart(16)}   ${note}`);

/** The shortest of several runs: what else the machine did does not count. */
function best<T>(runs: number, work: () => T): { ms: number; value: T } {
  let ms = Number.POSITIVE_INFINITY;
  let value!: T;
  for (let i = 0; i < runs; i += 1) {
    const start = performance.now();
    value = work();
    ms = Math.min(ms, performance.now() - start);
  }
  return { ms, value };
}

const { sets, motors } = plant(SIZE);
const pairs = sets.length * motors.length;
console.log(
  `${count(sets.length)} sets × ${count(motors.length)} shelf motors, one core, Node ${process.version}, ${os.cpus()[0]?.model}\n`,
);

const first = best(1, () => screenedPairs());
const screen = best(5, () => screenedPairs());
say(
  'Whole-plant screen, from nothing',
  `${screen.ms.toFixed(0)} ms`,
  `${count(pairs / (screen.ms / 1000))} pairs/s; cold ${first.ms.toFixed(0)} ms; ${count(screen.value)} pairs left`,
);

const whole = best(2, () => verdicts());
say(
  'Whole-plant verdicts: screen, then every finding',
  seconds(whole.ms),
  [...whole.value].map(([verdict, n]) => `${count(n)} ${verdict}`).join(', '),
);
say(
  'Full findings',
  `${count(screen.value / ((whole.ms - screen.ms) / 1000))} pairs/s`,
  'every criterion, verdict and hours',
);

const kept = screenOf(motors, defaultSettings);
for (const set of sets) kept(set);
const breakdowns = best(5, () => {
  for (let i = 0; i < sets.length; i += 50) breakdown(i);
});
say(
  'One breakdown against every shelf motor',
  `${(breakdowns.ms / (sets.length / 50)).toFixed(2)} ms`,
  'mean of 100: screen, findings of all that are left, best 50 in order',
);

const { setRows, motorRows } = coreColumns(sets, motors);
const loop = coreLoop(setRows, motorRows);
const inLoop = best(10, loop);
const dataDir = mkdtempSync(path.join(os.tmpdir(), 'bedplate-bench-'));
const server = await startPostgres({ dataDir, temporary: true });
try {
  const sql = await coreSql(server.url, setRows, motorRows);
  let ms = Number.POSITIVE_INFINITY;
  let passed = -1;
  for (let i = 0; i < 3; i += 1) {
    const start = performance.now();
    passed = await sql.run();
    ms = Math.min(ms, performance.now() - start);
  }
  await sql.end();
  if (passed !== inLoop.value) throw new Error(`the loop passes ${inLoop.value} pairs and the SQL ${passed}`);
  console.log(
    `\nCore predicate (phases, volts, hertz, poles, power, feet or face), ${count(setRows.length)} × ${count(motorRows.length)} rows, ${count(passed)} pairs pass`,
  );
  say('  typed arrays', `${inLoop.ms.toFixed(1)} ms`);
  say('  SQL, indexed, one worker', `${ms.toFixed(0)} ms`);
  say('  SQL over typed arrays', `${(ms / inLoop.ms).toFixed(0)} ×`);
  say(
    '  SQL over the whole screen',
    `${(ms / screen.ms).toFixed(1)} ×`,
    'the screen asks more and builds its columns first',
  );
} finally {
  await server.stop();
  if (existsSync(dataDir)) rmSync(dataDir, { recursive: true });
}

function screenedPairs(): number {
  const screen = screenOf(motors, defaultSettings);
  let left = 0;
  for (const set of sets) left += screen(set).length;
  return left;
}

function verdicts(): Map<Verdict, number> {
  const screen = screenOf(motors, defaultSettings);
  const counts = new Map<Verdict, number>();
  for (const set of sets)
    for (const i of screen(set)) {
      const motor = motors[i];
      if (motor === undefined) continue;
      const { verdict } = judge(set, motor, by);
      counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
    }
  return counts;
}

function breakdown(index: number): number {
  const set = sets[index];
  if (set === undefined) return 0;
  const judged = kept(set).flatMap((i) => {
    const motor = motors[i];
    return motor === undefined ? [] : [{ ...judge(set, motor, by), whereabouts: null }];
  });
  return inOrder(judged, null).slice(0, 50).length;
}
