import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { mountingCode } from '@/lib/standards/mounting-code';
import type { Context } from '../../context';
import { type Finding, needsWork, note, ok, toRead } from '../../finding';

/**
 * Is the terminal box where the cable comes in? Sides are seen from the drive end, feet down: F-1 left, F-2 right, F-3
 * top. Not asked where the set states no cable entry.
 */
export function terminalBox(set: PumpSet, candidate: Motor, { fit, settings }: Context): Finding | null {
  const need = set.base.cableEntry;
  if (need === null) return null;

  const have = boxOf(candidate);
  const compared = { criterion: 'terminal-box', have, need, cite: CITE } as const;
  if (have === need) return ok(compared, `The box is on the cable’s side (${need}).`);
  if (set.mounting === 'face' && fit.holding.feet !== true)
    return note(compared, `Held by its face alone: turn the motor on its bolt circle until the box is ${WHERE[need]}.`);
  if (have === null)
    return toRead(compared, `Side of the box unknown; the cable comes in from the ${need}.`, READING, 2);
  return needsWork(compared, `The box is ${WHERE[have]}, the cable comes in from the ${need}.`, {
    id: 'terminal-box',
    what: `Bring the cable from the ${need} to the box ${WHERE[have]}, or turn the box where the frame allows it`,
    hours: settings.hours['terminal-box'],
  });
}

const CITE = 'NEMA MG 1-2016 Figure 4-6: F-1 left, F-2 right, F-3 top (F-2 from memory)';
const READING = 'Look at this motor from the drive end, feet down: on which side is the terminal box';
const WHERE = { left: 'on the left', right: 'on the right', top: 'on top' } as const;

// An assembly symbol (F-1) tells the side too; reading it is no work for every pair.
const kept = new WeakMap<Motor, Motor['terminalBox']>();

function boxOf(motor: Motor): Motor['terminalBox'] {
  if (motor.terminalBox !== null || motor.mounting === null) return motor.terminalBox;
  const known = kept.get(motor);
  if (known !== undefined) return known;
  const code = mountingCode(motor.mounting);
  const side = code.ok ? code.value.terminalBox : null;
  kept.set(motor, side);
  return side;
}
