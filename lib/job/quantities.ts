import { contextOf, type JudgedBy } from '@/lib/matching/context';
import type { Finding } from '@/lib/matching/finding';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { overloadSettingOf } from './overload-setting';
import { bore, keySection } from './quantities/bore';
import { driveSettings } from './quantities/drive-settings';
import { overload } from './quantities/overload';
import type { Quantity } from './quantities/quantity';
import { sheave } from './quantities/sheave';
import { shims } from './quantities/shims';

/** What the work of this swap is done to, in figures: only what plates and findings know. */
export function quantitiesOf(set: PumpSet, motor: Motor, findings: readonly Finding[], by: JudgedBy): Quantity[] {
  const context = contextOf(set, motor, by);
  return [
    shims(set, context, findings),
    bore(context, findings),
    keySection(context, findings),
    sheave(findings),
    overload(overloadSettingOf(set, motor, context), set),
    ...driveSettings(set, motor, context),
  ].filter((one) => one !== null);
}
