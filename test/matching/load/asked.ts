import { contextOf } from '@/lib/matching/context';
import type { OperatingPoint } from '@/lib/matching/context/operating-point';
import type { Criterion } from '@/lib/matching/criterion';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Finding } from '@/lib/matching/finding';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';

const by = (settings: SiteSettings) => ({ settings, asOf: null });

/** One criterion's answer, with the whole context. */
export const asked = (
  ask: Criterion,
  set: PumpSet,
  candidate: Motor,
  settings: Partial<SiteSettings> = {},
): Finding | null => ask(set, candidate, contextOf(set, candidate, by({ ...defaultSettings, ...settings })));

export const pointOf = (set: PumpSet, candidate: Motor): OperatingPoint =>
  contextOf(set, candidate, by(defaultSettings)).point;
