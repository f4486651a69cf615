import type { Motor } from '@/lib/plant/motor';
import { AUXILIARIES, type Auxiliary } from '@/lib/plant/motor-words';
import type { PumpSet } from '@/lib/plant/set';
import type { Context } from '../../context';
import { block, type Compared, type Finding, needsWork, ok, toJudge, toRead, type Work } from '../../finding';

/**
 * Does the motor bring the brake, sensors, heater and encoder that the set uses? What the set states it needs, and what
 * the failed motor had, are asked for. Kept as bit masks, one bit per auxiliary, so that nothing is built for a plain set.
 * Not asked where nothing is needed, nothing was had and the candidate brings nothing that must be fed.
 */
export function auxiliaries(set: PumpSet, candidate: Motor, { settings }: Context): Finding | null {
  const stated = maskOf(set.needs);
  const had = set.failed === null || set.failed.has === null ? 0 : maskOf(set.failed.has);
  const wanted = stated | had;
  const have = candidate.has === null ? null : maskOf(candidate.has);
  const selfResets = candidate.kind === 'single-phase' && have !== null && (have & bit.thermostat) !== 0;
  const strayBrake = have !== null && (have & ~wanted & bit.brake) !== 0;
  if (wanted === 0 && !selfResets && !strayBrake) return null;

  const compared: Compared = {
    criterion: 'auxiliaries',
    have: have === null ? null : named(have),
    need: named(wanted),
    cite: CITE,
  };
  if (have === null) return toRead(compared, `Whether it has ${named(wanted)} is unknown.`, READING, 5);

  const lacks = wanted & ~have;
  const hours = settings.hours['auxiliary-wiring'];
  if ((lacks & stated & bit.brake) !== 0) return block(compared, 'The set needs a brake and this motor has none.');
  const work = workFor(lacks & stated, strayBrake, set, candidate, wanted & have, hours);

  const forPerson = lacks & ((had & ~stated) | (stated & JUDGED));
  if (forPerson !== 0) return toJudge(compared, saysLacks(forPerson, stated), work);
  if (selfResets)
    return toJudge(
      compared,
      'A protector that closes again by itself sits in the line: the pump could start on its own.',
      work,
    );
  if ((wanted & have & bit.brake) !== 0) {
    const brake = brakeFinding(set, candidate, compared, work);
    if (brake !== null) return brake;
  }
  if (work !== null) return needsWork(compared, `${work.what}.`, work);
  return ok(compared, `Brings ${named(wanted)}.`);
}

const CITE = 'common practice, no source';
const READING = 'Read the plate and look into the terminal box for extra leads';

const bit = Object.fromEntries(AUXILIARIES.map((name, i) => [name, 1 << i])) as Record<Auxiliary, number>;
/** Cannot be added at the pump; the relay or the drive must be made to suit, and never bridged. */
const JUDGED = bit.thermistor | bit.thermostat | bit.rtd | bit.encoder | bit['insulated-bearing'];

const masks = new WeakMap<readonly Auxiliary[], number>();
function maskOf(names: readonly Auxiliary[]): number {
  if (names.length === 0) return 0;
  const kept = masks.get(names);
  if (kept !== undefined) return kept;
  let mask = 0;
  for (const name of names) mask |= bit[name];
  masks.set(names, mask);
  return mask;
}

const named = (mask: number): string =>
  mask === 0
    ? 'none'
    : AUXILIARIES.filter((name) => (mask & bit[name]) !== 0)
        .map((name) => WORDS[name])
        .join(', ');

const WORDS: Record<Auxiliary, string> = {
  brake: 'brake',
  thermistor: 'thermistor',
  thermostat: 'thermostat',
  rtd: 'RTD',
  heater: 'heater',
  encoder: 'encoder',
  'insulated-bearing': 'insulated bearing',
  'shaft-ground': 'shaft ground',
};

function saysLacks(mask: number, stated: number): string {
  const whose = (mask & stated) === 0 ? 'the failed motor had it' : 'the set uses it';
  const relay = (mask & (bit.thermistor | bit.thermostat | bit.rtd)) === 0 ? '' : ' Do not bridge the relay.';
  return `Lacks ${named(mask)}; ${whose}.${relay}`;
}

/** What can be done at the pump: a clamp-on heater or ground ring, the brake's feed. */
function workFor(
  lacks: number,
  strayBrake: boolean,
  set: PumpSet,
  candidate: Motor,
  both: number,
  hours: number,
): Work | null {
  const parts: string[] = [];
  if ((lacks & bit.heater) !== 0) parts.push('fit a strap-on heater, or make the heater leads dead and safe');
  if ((lacks & bit['shaft-ground']) !== 0) parts.push('fit a shaft ground ring');
  if (strayBrake)
    parts.push(`feed the brake${set.supply.start === 'drive' ? ' ahead of the drive' : ''}, or take it off`);
  const from = set.failed === null ? null : set.failed.brake.volts;
  const to = candidate.brake.volts;
  if ((both & bit.brake) !== 0 && from !== null && to !== null && from !== to)
    parts.push(`feed the brake coil with ${to} V instead of ${from} V`);
  if (parts.length === 0) return null;
  const what = parts.join('; ');
  return { id: 'auxiliary-wiring', what: what.charAt(0).toUpperCase() + what.slice(1), hours };
}

/** Null: torque and volts of both brakes are known and the torque suffices. */
function brakeFinding(set: PumpSet, { brake }: Motor, compared: Compared, work: Work | null): Finding | null {
  const need = set.failed === null ? null : set.failed.brake;
  if (
    need === null ||
    need.torqueNm === null ||
    need.volts === null ||
    brake.torqueNm === null ||
    brake.volts === null
  ) {
    const says = 'Torque or coil volts of one of the brakes is unknown.';
    return { ...toRead(compared, says, 'Read torque and coil volts on both brake plates', 5), work };
  }
  if (brake.torqueNm >= need.torqueNm) return null;
  const held = { ...compared, have: brake.torqueNm, need: need.torqueNm, unit: 'N·m' };
  return toJudge(held, `The brake holds ${brake.torqueNm} N·m; the failed motor’s held ${need.torqueNm} N·m.`, work);
}
