import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readVolts, type WrittenVolts } from '@/lib/units/read-volts';

type Connection = WrittenVolts['connection'];
const one = (volts: number, connection: Connection = null): WrittenVolts => ({
  volts,
  voltsMin: null,
  voltsMax: null,
  connection,
});
const range = (voltsMin: number, voltsMax: number, connection: Connection = null): WrittenVolts => ({
  volts: null,
  voltsMin,
  voltsMax,
  connection,
});

describe('voltages as stamped', () => {
  test.each([
    ['460', [one(460)]],
    ['460 V', [one(460)]],
    ['460V', [one(460)]],
    ['460 VOLTS', [one(460)]],
    ['460 VAC', [one(460)]],
    ['400 V~', [one(400)]],
    ['4,160 V', [one(4160)]],
    ['230/460', [one(230), one(460)]],
    ['230/460 V', [one(230), one(460)]],
    ['230 / 460', [one(230), one(460)]],
    ['230 V/460 V', [one(230), one(460)]],
    ['115/208-230', [one(115), range(208, 230)]],
    ['208-230/460', [range(208, 230), one(460)]],
    ['208-230/460 V', [range(208, 230), one(460)]],
    ['380-420', [range(380, 420)]],
    ['380 - 420 V', [range(380, 420)]],
    ['208/230/460', [one(208), one(230), one(460)]],
    ['400/690 V Δ/Y', [one(400, 'delta'), one(690, 'star')]],
    ['400/690 V D/Y', [one(400, 'delta'), one(690, 'star')]],
    ['230/400 Δ/Y', [one(230, 'delta'), one(400, 'star')]],
    ['Δ/Y 400/690 V', [one(400, 'delta'), one(690, 'star')]],
    ['400 ∆', [one(400, 'delta')]],
    ['400 △/690 Y', [one(400, 'delta'), one(690, 'star')]],
    ['400Δ/690Y', [one(400, 'delta'), one(690, 'star')]],
    ['400 VΔ', [one(400, 'delta')]],
    ['400 V Y', [one(400, 'star')]],
    ['380-420Y/220-240D', [range(380, 420, 'star'), range(220, 240, 'delta')]],
    ['220-240D/380-420Y V', [range(220, 240, 'delta'), range(380, 420, 'star')]],
    ['220-240 V D/380-420 V Y', [range(220, 240, 'delta'), range(380, 420, 'star')]],
    ['380-420/660-725 V Δ/Y', [range(380, 420, 'delta'), range(660, 725, 'star')]],
    ['230YY/460Y', [one(230, 'double-star'), one(460, 'star')]],
    ['230/460 V YY/Y', [one(230, 'double-star'), one(460, 'star')]],
    ['400 delta', [one(400, 'delta')]],
    ['400 V star', [one(400, 'star')]],
    ['480 V WYE', [one(480, 'star')]],
  ] as [string, WrittenVolts[]][])('%j', (text, value) => {
    expect(readVolts(text)).toEqual({ ok: true, value, doubts: [] });
  });
});

describe('voltages that are not taken, and why', () => {
  test.each([
    ['', ['has no figure for the voltage']],
    ['V', ['has no figure for the voltage']],
    ['4 V', ['is not between 5 and 15000']],
    ['20000', ['is not between 5 and 15000']],
    ['230/', ['is not a figure']],
    ['420-380', ['is not a range: the first voltage is not below the second']],
    ['400-400', ['is not a range: the first voltage is not below the second']],
    ['200-208-230', ['is not a voltage or a range of two']],
    ['46O V', ['is not a figure: it looks like 460; write it if the plate says so']],
    ['4l5', ['is not a figure: it looks like 415; write it if the plate says so']],
    ['230/46x', ['is not a figure']],
    ['400/690/500 V Δ/Y', ['names 2 connections for 3 voltages']],
    ['400 V Δ/Y', ['names 2 connections for 1 voltages']],
  ])('%j', (text, says) => {
    const read = readVolts(text);
    expect(read.ok ? null : read.problems.map((problem) => problem.says)).toEqual(says);
  });
});

test('every list of voltages and ranges is read back in the order written', () => {
  const volts = fc.integer({ min: 100, max: 999 });
  const written = fc.oneof(
    volts.map((v) => one(v)),
    fc.tuple(volts, fc.integer({ min: 1, max: 200 })).map(([low, more]) => range(low, low + more)),
  );
  fc.assert(
    fc.property(fc.array(written, { minLength: 1, maxLength: 4 }), fc.constantFrom('', ' V', 'V'), (all, unit) => {
      const text = all.map((w) => (w.volts === null ? `${w.voltsMin}-${w.voltsMax}` : `${w.volts}`)).join('/');
      expect(readVolts(text + unit)).toEqual({ ok: true, value: all, doubts: [] });
    }),
  );
});
