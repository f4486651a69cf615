import type { FieldName } from '@/lib/nameplate/field-name';
import type { Field, Shape, Thing, Words } from '../field';
import { normalHeading } from '../normal-heading';
import type { Quantity } from '../quantity';
import { likely } from './likely';

/** A field as the tables below tell it: id, label, where it is kept, other headings people use for it. */
type Told = [id: string, label: string, path: string | null, ...names: string[]];

/** Fields of one thing of the register; `root` is put before every path. */
export function fieldsOfThing(thing: Thing, root: string) {
  const field = (shape: Shape, unit: string | null, [id, label, path, ...names]: Told): Field => ({
    id,
    label,
    unit,
    names: [...new Set([label, id, ...names].map(normalHeading))],
    thing,
    path: path === null ? null : `${root}${path}`.split('.'),
    shape,
    holds: likely(id, shape),
  });
  const figure =
    (quantity: Quantity, unit: string | null) =>
    (...told: Told) =>
      field({ as: 'figure', quantity }, unit, told);
  return {
    text: (most: number, ...told: Told) => field({ as: 'text', most, isLong: false }, null, told),
    longText: (most: number, ...told: Told) => field({ as: 'text', most, isLong: true }, null, told),
    name: (most: number, ...told: Told) => field({ as: 'name', most }, null, told),
    word: (words: Words, vague: Record<string, string>, ...told: Told) =>
      field({ as: 'word', words, vague, isNumber: false }, null, told),
    numberWord: (words: Words, ...told: Told) => field({ as: 'word', words, vague: {}, isNumber: true }, null, told),
    yesNo: (...told: Told) => field({ as: 'yes-no' }, null, told),
    day: (...told: Told) => field({ as: 'day' }, null, told),
    auxiliaries: (...told: Told) => field({ as: 'auxiliaries' }, null, told),
    rotation: (...told: Told) => field({ as: 'rotation' }, null, told),
    classification: (mayBeUnclassified: boolean, ...told: Told) =>
      field({ as: 'classification', mayBeUnclassified }, null, told),
    plate: (fact: FieldName, unit: string, ...told: Told) =>
      field({ as: 'plate', fact, unit }, unit === '' ? null : unit, told),
    plateText: (...told: Told) => field({ as: 'plate-text' }, null, told),
    mm: figure('length', 'mm'),
    kg: figure('mass', 'kg'),
    kw: figure('power', 'kW'),
    nm: figure('torque', 'Nm'),
    celsius: figure('temperature', '°C'),
    metres: figure('distance', 'm'),
    volts: figure('volts', 'V'),
    amps: figure('amps', 'A'),
    hertz: figure('hertz', 'Hz'),
    rpm: figure('rpm', 'rpm'),
    percent: figure('percent', '%'),
    megohms: figure('megohms', 'Mohm'),
    kvar: figure('kvar', 'kvar'),
    poles: figure('poles', null),
    ratio: figure('ratio', null),
    number: figure('number', null),
    ratedHp: figure('hp', 'hp'),
    ratedKw: figure('kw', 'kW'),
  };
}
