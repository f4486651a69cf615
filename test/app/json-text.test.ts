import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonText } from '@/app/api-docs/json-text';

test('what fits on a line stands on one, and the rest is set in', () => {
  expect(jsonText({ tag: 'P-900', needs: [], supply: { phases: 3, volts: 400, hertz: 50 } })).toBe(
    '{\n  "tag": "P-900",\n  "needs": [],\n  "supply": { "phases": 3, "volts": 400, "hertz": 50 }\n}',
  );
  expect(jsonText({ tag: 'P-900', needs: [] })).toBe('{ "tag": "P-900", "needs": [] }');
  expect(jsonText([])).toBe('[]');
  expect(jsonText({})).toBe('{}');
});

test('it is JSON of the same value', () => {
  const same = (value: unknown) => JSON.stringify(JSON.parse(jsonText(value))) === JSON.stringify(value);
  fc.assert(fc.property(fc.jsonValue(), same));
});
