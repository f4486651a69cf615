import type { MotorRow, SetRow } from './core-columns';

/** The core predicate over typed arrays, every pair looked at. Gives the number of pairs that pass. */
export function coreLoop(sets: readonly SetRow[], motors: readonly MotorRow[]): () => number {
  const column = (key: keyof MotorRow) => Float64Array.from(motors, (motor) => motor[key]);
  const same = Int32Array.from(motors, (motor) => sameOf(motor));
  const low = column('lowVolts');
  const high = column('highVolts');
  const kw = column('kw');
  const feet = Int32Array.from(motors, (motor) => motor.feet);
  const face = Int32Array.from(motors, (motor) => motor.face);
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

/** Phases, hertz and poles in one number: all three must be equal. */
const sameOf = ({ phases, hertz, poles }: Pick<SetRow, 'phases' | 'hertz' | 'poles'>) =>
  phases * 1_000_000 + Math.round(hertz) * 1_000 + poles;
