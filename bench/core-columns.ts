import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';

/** One row a set, as the core predicate reads it. Codes stand for feet patterns and faces; 0 is "none". */
export interface SetRow {
  phases: number;
  volts: number;
  hertz: number;
  poles: number;
  kw: number;
  feet: number;
  face: number;
}
export interface MotorRow extends Omit<SetRow, 'volts'> {
  lowVolts: number;
  highVolts: number;
}

/** Numbers for names, the same for sets and motors. */
function coder() {
  const codes = new Map<string, number>();
  return (name: string | null) => {
    if (name === null) return 0;
    const known = codes.get(name);
    if (known !== undefined) return known;
    codes.set(name, codes.size + 1);
    return codes.size;
  };
}

/** The core predicate's columns; sets and motors that lack one of them are left out and counted. */
export function coreColumns(sets: readonly PumpSet[], motors: readonly Motor[]) {
  const feetCode = coder();
  const faceCode = coder();
  const mountOf = (motor: Motor) => {
    const { dimensions, face, holding } = motorDimensions(motor);
    const { shaftHeightMm, holesAcrossMm, holesAlongMm } = dimensions;
    const pattern = [shaftHeightMm.value, holesAcrossMm.value, holesAlongMm.value];
    return {
      feet: holding.feet === false || pattern.includes(null) ? 0 : feetCode(pattern.join('/')),
      face: faceCode(face?.name ?? null),
    };
  };
  const setRows: SetRow[] = [];
  for (const { failed, supply, mounting } of sets) {
    if (failed === null) continue;
    const row = failed.ratings.find(({ hertz }) => hertz === supply.hertz);
    const { phases, volts, hertz } = supply;
    if (!row?.kw || !failed.poles || !phases || !volts || !hertz) continue;
    const mount = mountOf(failed);
    const feet = mounting === 'face' ? 0 : mount.feet;
    const face = mounting === 'foot' ? 0 : mount.face;
    if (feet + face > 0) setRows.push({ phases, volts, hertz, poles: failed.poles, kw: row.kw, feet, face });
  }
  const motorRows: MotorRow[] = [];
  for (const motor of motors) {
    for (const { volts, hertz, kw } of motor.ratings) {
      const { phases, poles } = motor;
      if (!volts || !hertz || !kw || !phases || !poles) continue;
      motorRows.push({ phases, hertz, poles, kw, lowVolts: volts * 0.9, highVolts: volts * 1.1, ...mountOf(motor) });
    }
  }
  return { setRows, motorRows };
}
