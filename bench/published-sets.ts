import type { Motor } from '@/lib/plant/motor';
import { type PumpSet, set } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { nominalVoltages } from '@/lib/standards/tables/nominal-voltages';
import { torqueNmOf } from '@/lib/units/torque';
import { publishedPlates } from './published-plates';

export interface SetWithMotor {
  set: PumpSet;
  motor: Motor;
}

/**
 * A set for every row of every published plate, as its figures ask for: the nominal supply of its volts, a dial around its
 * amps, a hub of its shaft, its own load and speed. On the mains and, three-phase, on a drive.
 */
export function publishedSets(): SetWithMotor[] {
  return publishedPlates()
    .flatMap(({ motors }) => motors)
    .flatMap((motor) =>
      motor.ratings.length === 0
        ? [{ set: setOf(motor, null, false), motor }]
        : motor.ratings.flatMap((row) => [
            { set: setOf(motor, row, false), motor },
            ...(motor.phases === 1 ? [] : [{ set: setOf(motor, row, true), motor }]),
          ]),
    );
}

function setOf(motor: Motor, row: Motor['ratings'][number] | null, isOnDrive: boolean): PumpSet {
  const { holding, dimensions, face } = motorDimensions(motor);
  const bore = dimensions.shaftDiameterMm.value;
  const volts = row?.volts ?? null;
  const system = nominalVoltages.rows.find(({ plate }) => plate[0] === volts)?.system ?? volts;
  const nm = row?.kw == null || row.rpm === null ? null : torqueNmOf(row.kw, row.rpm);
  return set.parse({
    tag: `of ${motor.id}`,
    mounting: holding.feet === false || (holding.face === true && holding.feet !== true) ? 'face' : 'foot',
    seat: { face: holding.face === true && face !== null && face.pitchCircleMm !== null ? face.name : null },
    coupling: {
      type: 'coupling',
      ratio: 1,
      maxTorqueNm: nm,
      hub: bore === null ? null : { boreMm: bore, bushed: false },
    },
    supply: {
      phases: motor.phases,
      volts: system,
      hertz: row?.hertz ?? null,
      ...(isOnDrive
        ? { start: 'drive', drive: { outputVolts: volts, baseHertz: row?.hertz ?? null, maxHertz: row?.hertz ?? null } }
        : { start: 'direct', ...dialOf(row?.amps ?? null) }),
    },
    load: { kind: 'quadratic', shaftKw: row?.kw ?? null, atPumpRpm: row?.rpm ?? null, maxPumpRpm: row?.rpm ?? null },
  });
}

const dialOf = (amps: number | null) =>
  amps === null ? {} : { overloadIn: 'line', overloadMinA: amps * 0.8, overloadMaxA: amps * 1.25 };
