import { limitHertz } from '@/lib/matching/speed/limit-hertz';
import { changeSheave } from '@/lib/matching/speed/speed-work';
import { figure } from '@/lib/units/figure';
import type { ReviewCase } from '../review-case';
import type { Change } from './cure';

/** A drive's upper limit lowered to what the pump may turn at; on a belt the motor's sheave changed. */
export function rightSpeed({ set, motor, context, by }: ReviewCase): Change[] {
  const { drive } = set.supply;
  const hertz = set.supply.start === 'drive' ? limitHertz(set, { ...motor, maxRpm: null }, context.row) : null;
  if (hertz !== null && drive !== null && drive.maxHertz !== null) {
    const maxHertz = Math.floor(hertz * 10) / 10; // never above it
    return [
      {
        what: `Lower the drive’s upper limit from ${figure(drive.maxHertz, 1)} Hz to ${figure(maxHertz, 1)} Hz`,
        hours: by.settings.hours['drive-settings'],
        set: { ...set, supply: { ...set.supply, drive: { ...drive, maxHertz } } },
      },
    ];
  }
  const scale = context.point.restored?.by === 'sheave' ? context.point.restored.sheaveScale : null;
  const { ratio, sheave } = set.coupling;
  if (scale === null || ratio === null) return [];
  const { what, hours } = changeSheave(set, by.settings, scale);
  const pitchDiameterMm = sheave.pitchDiameterMm === null ? null : sheave.pitchDiameterMm * scale;
  return [
    {
      what: what.replace(/\.$/, ''),
      hours,
      set: { ...set, coupling: { ...set.coupling, ratio: ratio / scale, sheave: { ...sheave, pitchDiameterMm } } },
    },
  ];
}
