import type { Classification } from '@/lib/plant/classification';
import { customaryPair } from '@/lib/standards/customary-pair';
import { enclosureMinimum } from '@/lib/standards/enclosure-minimum';
import { frameName } from '@/lib/standards/frame-name';
import { mountingCode } from '@/lib/standards/mounting-code';
import { kwOfHp } from '@/lib/units/power';
import type { Field } from './field';

/** Whether two values of a field say the same, however they are spelt or rounded. */
export function isSameValue(field: Field, a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (a === null || b === null || a === undefined || b === undefined) return false;
  if (typeof a === 'number' && typeof b === 'number') return isSameFigure(field, a, b);
  if (typeof a === 'string' && typeof b === 'string')
    return plain(a) === plain(b) || plain(read(field, a)) === plain(read(field, b));
  if (field.shape.as === 'auxiliaries') return set(a) === set(b);
  if (field.shape.as === 'classification') return areaText(a as Classification) === areaText(b as Classification);
  return false;
}

/** A figure that was converted is rounded: what no tape and no scale can tell apart is the same. */
function isSameFigure({ shape }: Field, a: number, b: number): boolean {
  const apart = Math.abs(a - b);
  if (apart <= 1e-9 * Math.max(Math.abs(a), Math.abs(b))) return true;
  return shape.as === 'figure' && apart <= (TOLERANCE[shape.quantity] ?? 0);
}
const TOLERANCE: Readonly<Record<string, number>> = { length: 0.006, mass: 0.006, temperature: 0.06, power: 0.0005 };

/** hp and kW as stamped: 5 hp and 3.7 kW are one power. */
export function isSamePower(a: Power, b: Power): boolean {
  const [hp, other] = [a.hp ?? null, b.hp ?? null];
  if (hp !== null && other !== null) return Math.abs(hp / other - 1) < 1e-9;
  const [kw, otherKw] = [kwOf(a), kwOf(b)];
  if (kw === null || otherKw === null) return kw === otherKw;
  // One in hp, one in kW, each written short; 5.5 hp beside 4 kW is the usual pair of IEC frame 112M.
  const near = hp === other ? 1e-9 : WRITTEN_SHORT;
  return Math.abs(kw / otherKw - 1) <= near || (hp !== other && customaryPair(kw, otherKw));
}

export interface Power {
  hp?: number | null | undefined;
  kw?: number | null | undefined;
}
const kwOf = ({ hp, kw }: Power): number | null => (hp == null ? (kw ?? null) : kwOfHp(hp));
const WRITTEN_SHORT = 0.01;

/** Blanks, capitals and kinds of dashes apart. */
export const plain = (text: string): string =>
  text
    .normalize('NFKC')
    .replaceAll(/[\u2010-\u2015\u2212]/g, '-')
    .replaceAll(/[\s\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')
    .trim()
    .toLowerCase();

/** A word of the plate as its reader would write it. */
function read({ id }: Field, text: string): string {
  if (id === 'frame') {
    const name = frameName(text);
    return name.ok && name.value.name.system !== 'IEC' ? name.value.name.frame : text.replaceAll(/\s/g, '');
  }
  if (id === 'im') {
    const code = mountingCode(text);
    return code.ok ? code.value.name : text;
  }
  return id === 'enclosure' ? (enclosureMinimum(text)?.word ?? text) : text;
}

const set = (list: unknown): string => (Array.isArray(list) ? [...new Set(list as string[])].sort().join() : '');

function areaText(area: Classification): string {
  if (area.scheme === 'IEC')
    return `IEC ${area.zone} ${area.group ?? ''} ${area.tempC === null || area.tempC === undefined ? '' : area.tempC.toPrecision(9)}`;
  return `NEC ${area.class} ${area.division} ${set(area.groups ?? [])} ${area.tempCode ?? ''}`;
}
