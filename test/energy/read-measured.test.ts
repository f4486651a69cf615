import { expect, test } from 'vitest';
import { MEASURED_FIELDS, type MeasuredField, measuredOf, readMeasured } from '@/lib/energy/read-measured';

const read = (typed: Partial<Record<MeasuredField, string>>) => readMeasured((name) => typed[name] ?? '');

test('what was typed is read, and what stays empty was not read', () => {
  const found = read({ voltsL1L2: '461', voltsL2L3: ' 458,5 ', ampsL1: '6.2', powerFactor: '.84', inputKw: '4' });
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  expect(measuredOf(found.value)).toEqual({
    ...{ volts: [461, 458.5, null], amps: [6.2, null, null], inputKw: 4, powerFactor: 0.84, rpm: null, hertz: null },
  });
});

test('every field that cannot be read is told', () => {
  const found = read({ voltsL1L2: 'about 460', ampsL2: '-3', powerFactor: '84', rpm: '1,755' });
  expect(found.ok ? [] : found.problems.map(({ path }) => path)).toEqual(['voltsL1L2', 'ampsL2', 'powerFactor']);
});

test('nothing at all is refused', () => {
  expect(read({ rpm: '  ' })).toMatchObject({ ok: false, problems: [{ path: 'figures' }] });
});

test.each(MEASURED_FIELDS.map((field) => [field.name, field] as const))(
  '%s ends at its bounds',
  (name, { min, max }) => {
    expect(read({ [name]: String(min) }).ok && read({ [name]: String(max) }).ok).toBe(true);
    expect(read({ [name]: String(max * 1.1) }).ok).toBe(false);
  },
);
