import type { MotorRow, SetRow } from './core-columns';

/** The core predicate over typed arrays, every pair looked at. Gives the number of pairs that pass. */
export function everyPair(sets: readonly SetRow[], motors: readonly MotorRow[]): () => number {
  const { same, low, high, kw, feet, face } = columnsOf(motors);
  return () => {
    let passed = 0;
    for (const set of sets) {
      const code = sameOf(set);
      const { volts, kw: need, feet: setFeet, face: setFace } = set;
      for (let i = 0; i < same.length; i += 1) {
        if (same[i] !== code) continue;
        if ((kw[i] as number) < need || volts < (low[i] as number) || volts > (high[i] as number)) continue;
        if ((setFeet !== 0 && feet[i] === setFeet) || (setFace !== 0 && face[i] === setFace)) passed += 1;
      }
    }
    return passed;
  };
}

/** The same, with the motors grouped by what must be equal: only pairs of one group are looked at. */
export function grouped(sets: readonly SetRow[], motors: readonly MotorRow[]): () => number {
  const groups = new Map<string, ReturnType<typeof columnsOf>>();
  const gather = (by: 'feet' | 'face') => {
    const lists = new Map<string, MotorRow[]>();
    for (const motor of motors) {
      if (motor[by] === 0) continue;
      const key = `${by} ${motor[by]} ${sameOf(motor)}`;
      const list = lists.get(key);
      if (list === undefined) lists.set(key, [motor]);
      else list.push(motor);
    }
    for (const [key, list] of lists) groups.set(key, columnsOf(list));
  };
  gather('feet');
  gather('face');
  return () => {
    let passed = 0;
    for (const set of sets) {
      const same = sameOf(set);
      passed += passing(groups.get(`feet ${set.feet} ${same}`), set, 0);
      // A motor that fits by its feet is not counted again for its face.
      passed += passing(groups.get(`face ${set.face} ${same}`), set, set.feet);
    }
    return passed;
  };
}

function passing(
  group: ReturnType<typeof columnsOf> | undefined,
  { volts, kw: need }: SetRow,
  notFeet: number,
): number {
  if (group === undefined) return 0;
  const { low, high, kw, feet } = group;
  let passed = 0;
  for (let i = 0; i < kw.length; i += 1) {
    if ((kw[i] as number) < need || volts < (low[i] as number) || volts > (high[i] as number)) continue;
    if (notFeet === 0 || feet[i] !== notFeet) passed += 1;
  }
  return passed;
}

function columnsOf(motors: readonly MotorRow[]) {
  const column = (key: keyof MotorRow) => Float64Array.from(motors, (motor) => motor[key]);
  return {
    same: Int32Array.from(motors, sameOf),
    low: column('lowVolts'),
    high: column('highVolts'),
    kw: column('kw'),
    feet: Int32Array.from(motors, (motor) => motor.feet),
    face: Int32Array.from(motors, (motor) => motor.face),
  };
}

/** Phases, hertz and poles in one number: all three must be equal. */
const sameOf = ({ phases, hertz, poles }: Pick<SetRow, 'phases' | 'hertz' | 'poles'>) =>
  phases * 1_000_000 + Math.round(hertz) * 1_000 + poles;
