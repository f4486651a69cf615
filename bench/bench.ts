// npm run bench: what the engine does in a second on one core, and the core predicate beside the same SQL.
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { judge } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { inOrder } from '@/lib/matching/order';
import { kindsOf, type MotorKind } from '@/lib/matching/screen/kinds';
import { screenOf } from '@/lib/matching/screen/screen';
import type { Verdict } from '@/lib/matching/verdict';
import type { PumpSet } from '@/lib/plant/set';
import { startPostgres } from '../scripts/pg.mjs';
import { coreColumns } from './core-columns';
import { everyPair, grouped } from './core-loop';
import { coreSql } from './core-sql';
import { plant } from './plant';

const SIZE = { sets: 5000, spares: 3000 };
const by = { settings: defaultSettings, asOf: null };
const seconds = (ms: number, digits = 2) => `${(ms / 1000).toFixed(digits)} s`;
const count = (n: number) => Math.round(n).toLocaleString('en').replaceAll(',', ' ');
const say = (what: string, figure: string, note = '') =>
  console.log(`${what.padEnd(52)} ${figure.padStart(16)}   ${note}`);

/** The shortest of several runs: what else the machine did does not count. */
function best<T>(runs: number, work: () => T): { ms: number; firstMs: number; value: T } {
  const times: number[] = [];
  let value!: T;
  for (let i = 0; i < runs; i += 1) {
    const start = performance.now();
    value = work();
    times.push(performance.now() - start);
  }
  return { ms: Math.min(...times), firstMs: times[0] as number, value };
}

const { sets, motors } = plant(SIZE);
const pairs = sets.length * motors.length;
console.log(
  `${count(sets.length)} sets × ${count(motors.length)} shelf motors, one core, Node ${process.version}, ${os.cpus()[0]?.model}\n`,
);

const whole = best(3, () => screenedPairs());
say(
  'Whole-plant screen, plates to kinds included',
  `${whole.ms.toFixed(0)} ms`,
  `${count(pairs / (whole.ms / 1000))} pairs/s; first run ${whole.firstMs.toFixed(0)} ms; ${count(whole.value)} pairs left`,
);
const kinds = kindsOf(motors);
const screen = best(3, () => screenedPairs(kinds));
say(
  'Whole-plant screen, kinds kept',
  `${screen.ms.toFixed(0)} ms`,
  `${count(pairs / (screen.ms / 1000))} pairs/s; ${count(motors.length)} motors are ${count(kinds.length)} kinds of plate`,
);

const verdicts = best(3, () => wholePlantVerdicts());
say(
  'Whole-plant verdicts: screen, then every finding',
  seconds(verdicts.ms),
  [...verdicts.value.counts].map(([verdict, n]) => `${count(n)} ${verdict}`).join(', '),
);
say(
  '  full findings asked',
  `${count(verdicts.value.judged)}`,
  'one for each set and kind of plate left: it stands for all motors of the kind',
);
const kept = screenOf(kinds, defaultSettings);
for (const set of sets) kept(set);
const findings = best(3, () => someFindings());
say(
  'Full findings of pairs the screen left',
  `${count(findings.value / (findings.ms / 1000))} pairs/s`,
  'every criterion, verdict and hours',
);

const breakdowns = best(5, () => {
  for (let i = 0; i < sets.length; i += 50) breakdown(i);
});
say(
  'One breakdown against every shelf motor',
  `${(breakdowns.ms / (sets.length / 50)).toFixed(2)} ms`,
  'mean of 100: screen, findings of all that are left, the best 50 in order',
);

const { setRows, motorRows } = coreColumns(sets, motors);
const inLoop = best(10, everyPair(setRows, motorRows));
const inGroups = best(10, grouped(setRows, motorRows));
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
  if (passed !== inLoop.value || passed !== inGroups.value)
    throw new Error(`arrays pass ${inLoop.value} and ${inGroups.value} pairs, the SQL ${passed}`);
  console.log(
    `\nCore predicate (phases, volts, hertz, poles, power, feet or face), ${count(setRows.length)} × ${count(motorRows.length)} rows, ${count(passed)} pairs pass`,
  );
  say('  typed arrays, every pair looked at', `${inLoop.ms.toFixed(1)} ms`);
  say('  typed arrays, grouped by what must be equal', `${inGroups.ms.toFixed(1)} ms`);
  say('  SQL, indexed, one worker', `${ms.toFixed(0)} ms`);
  say('  SQL over every pair looked at', `${(ms / inLoop.ms).toFixed(0)} ×`);
  say('  SQL over grouped', `${(ms / inGroups.ms).toFixed(0)} ×`, 'the SQL has an index on the same columns');
  say(
    '  SQL over the whole screen',
    `${(ms / screen.ms).toFixed(1)} ×`,
    'the screen asks more and builds its columns first',
  );
} finally {
  await server.stop();
  if (existsSync(dataDir)) rmSync(dataDir, { recursive: true });
}

/** Pairs left; from the motors' plates, or from kinds gathered before. */
function screenedPairs(kinds: readonly MotorKind[] = kindsOf(motors)): number {
  const screen = screenOf(kinds, defaultSettings);
  let left = 0;
  for (const set of sets) for (const { members } of screen(set)) left += members.length;
  return left;
}

function wholePlantVerdicts(): { counts: Map<Verdict, number>; judged: number } {
  const screen = screenOf(kindsOf(motors), defaultSettings);
  const counts = new Map<Verdict, number>();
  let judged = 0;
  for (const set of sets)
    for (const { one, members } of screen(set)) {
      const { verdict } = judge(set, one, by);
      judged += 1;
      counts.set(verdict, (counts.get(verdict) ?? 0) + members.length);
    }
  return { counts, judged };
}

function someFindings(): number {
  let n = 0;
  for (let i = 0; i < sets.length; i += 25) {
    const set = sets[i] as PumpSet;
    for (const { one } of kept(set)) {
      judge(set, one, by);
      n += 1;
    }
  }
  return n;
}

function breakdown(index: number): number {
  const set = sets[index] as PumpSet;
  const judged = kept(set).flatMap(({ members }) =>
    members.map((motor) => ({ ...judge(set, motor, by), whereabouts: null })),
  );
  return inOrder(judged, null).slice(0, 50).length;
}
