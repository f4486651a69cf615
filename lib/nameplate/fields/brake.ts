import { readNumber } from '@/lib/units/read-number';
import { nmOfLbft } from '@/lib/units/torque';
import { type PartReading, partOf, problemsAt } from '../part-reading';

/** "20 Nm 230 V", "15 LB-FT 460 V": torque and coil volts of a brake, as far as they are told. */
export function brake(text: string): PartReading {
  const torque = TORQUE.exec(text);
  const volts = VOLTS.exec(text);
  const nm = torque ? readNumber(torque[1] as string, { min: 0.1, max: 100_000 }) : null;
  const coil = volts ? readNumber(volts[1] as string, { min: 5, max: 1_000 }) : null;
  if (nm?.ok === false) return problemsAt('brake.torqueNm', nm.problems);
  if (coil?.ok === false) return problemsAt('brake.volts', coil.problems);
  const isFeet = /L/i.test(torque?.[2] ?? 'N');
  const torqueNm = nm === null ? null : isFeet ? Math.round(nmOfLbft(nm.value) * 100) / 100 : nm.value;
  const told = { ...(torqueNm === null ? {} : { torqueNm }), ...(coil === null ? {} : { volts: coil.value }) };
  return partOf({ has: ['brake'], ...(Object.keys(told).length === 0 ? {} : { brake: told }) });
}

const TORQUE = /([\d.,]+)\s?(N\.?\s?m|lbf?[-·. ]?ft|ft[-·. ]?lbf?)/i;
const VOLTS = /([\d.,]+)\s?(?:V|VAC|VDC|VOLTS?)(?![A-Za-z])/i;
