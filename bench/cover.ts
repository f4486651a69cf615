// npm run bench:cover: every verdict of a plant, and what a change costs, over plants of n, 2n and 4n.
import { judge } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { kindsOf } from '@/lib/matching/screen/kinds';
import { screenOf } from '@/lib/matching/screen/screen';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type Cover, coverOf } from '@/lib/spares/cover/cover';
import { plant } from './plant';

const RUNS = 3;
const CHANGES = 40;

interface Took {
  /** What the clock said, ms. */
  ms: number;
  /** What one core worked for it: on a busy machine the lesser, ms. */
  cpuMs: number;
}

function timed<T>(work: () => T): { took: Took; value: T } {
  const [began, cpu] = [performance.now(), process.cpuUsage()];
  const value = work();
  return { took: { ms: performance.now() - began, cpuMs: process.cpuUsage(cpu).user / 1000 }, value };
}
const shortest = (all: readonly Took[]): Took => ({
  ms: Math.min(...all.map(({ ms }) => ms)),
  cpuMs: Math.min(...all.map(({ cpuMs }) => cpuMs)),
});
const median = (all: readonly number[]) => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)] as number;
const ms = (figure: number) => `${figure.toFixed(figure < 100 ? 1 : 0)} ms`;

/** The screen and every finding of what it leaves, as a judgement for show takes it. */
function everyFinding(sets: readonly PumpSet[], motors: readonly Motor[]): number {
  const screen = screenOf(kindsOf(motors), defaultSettings);
  const by = { settings: defaultSettings, asOf: null };
  let fit = 0;
  for (const set of sets) for (const { one } of screen(set)) if (judge(set, one, by).verdict !== 'unsuitable') fit += 1;
  return fit;
}

type Plant = [sets: Map<string, { set: PumpSet }>, motors: Motor[]];

/** One change after another, each brought into the cover. */
function changes(
  cover: Cover,
  sets: Map<string, { set: PumpSet }>,
  motors: Motor[],
  change: (plant: Plant, i: number) => Plant,
): string {
  let plant: Plant = [sets, motors];
  let now = cover;
  const all = Array.from({ length: CHANGES }, (_, i) => {
    plant = change(plant, i);
    const { took, value } = timed(() => coverOf(plant[0], plant[1], defaultSettings, now));
    now = value;
    return took;
  });
  const [clock, cpu] = [median(all.map(({ ms }) => ms)), median(all.map(({ cpuMs }) => cpuMs))];
  return `${ms(clock)}, of one core ${ms(cpu)}, longest ${ms(Math.max(...all.map(({ ms }) => ms)))} (${CHANGES} changes, median)`;
}

function oneSet([sets, motors]: Plant, i: number): Plant {
  const [tag, { set }] = [...sets][(i * 31) % sets.size] as [string, { set: PumpSet }];
  const shaftKw = set.load.shaftKw === null ? 3 : set.load.shaftKw * 1.01;
  return [new Map(sets).set(tag, { set: { ...set, load: { ...set.load, shaftKw } } }), motors];
}

/** A plate like no other there: one corrected in amps. */
function onePlate([sets, motors]: Plant, i: number): Plant {
  const at = (i * 31) % motors.length;
  const changed = motors.map((motor, k) =>
    k === at
      ? { ...motor, ratings: motor.ratings.map((row) => ({ ...row, amps: row.amps === null ? 9 : row.amps * 1.01 })) }
      : motor,
  );
  return [sets, changed];
}

const oneUsed = ([sets, motors]: Plant, i: number): Plant => [
  sets,
  motors.filter((_, k) => k !== (i * 31) % motors.length),
];

for (const n of [1, 2, 4]) {
  const { sets, motors } = plant({ sets: 1_250 * n, spares: 750 * n });
  const byTag = new Map(sets.map((set) => [set.tag, { set }]));
  const runs = Array.from({ length: RUNS }, () => timed(() => coverOf(byTag, motors, defaultSettings)));
  const { value: cover } = runs.at(-1) as (typeof runs)[number];
  const anew = shortest(runs.map(({ took }) => took));
  const pairs = [...cover.sets.values()].reduce((sum, { serves }) => sum + serves.length, 0);
  console.log(
    `\n${sets.length} sets × ${motors.length} shelf motors: ${cover.kinds.size} kinds of plate, ${pairs} pairs of a set and a kind that could go in`,
  );
  console.log(`  every verdict          ${ms(anew.ms)}, of one core ${ms(anew.cpuMs)}`);
  const byFindings = timed(() => everyFinding(sets, motors));
  if (byFindings.value !== pairs) throw new Error(`every finding: ${byFindings.value} pairs, the cover: ${pairs}`);
  console.log(`  the same by findings   ${ms(byFindings.took.ms)}, of one core ${ms(byFindings.took.cpuMs)}`);
  console.log(`  one set changed        ${changes(cover, byTag, motors, oneSet)}`);
  console.log(`  one plate changed      ${changes(cover, byTag, motors, onePlate)}`);
  console.log(`  one motor used         ${changes(cover, byTag, motors, oneUsed)}`);
}
