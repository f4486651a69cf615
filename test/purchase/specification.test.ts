import { describe, expect, test } from 'vitest';
import { CRITERIA } from '@/lib/matching/finding';
import type { PumpSet } from '@/lib/plant/set';
import { specification } from '@/lib/purchase/specification';
import { easySet } from '../matching/buy/easy-set';
import { byId, firstToBuy } from './asked';

const AS_OF = '2026-11-29';
const groupsOf = (one: PumpSet) => {
  const own = firstToBuy(one);
  return specification([{ set: one, own }], own, AS_OF);
};
const valuesOf = (one: PumpSet) =>
  Object.fromEntries(Object.entries(byId(groupsOf(one))).map(([id, { value }]) => [id, value]));

describe('the purchase specification of a set', () => {
  test('tells a supplier rating, frame, shaft and surroundings', () => {
    expect(valuesOf(easySet())).toMatchObject({
      power: '5 hp (3.73 kW)', // 1 hp is 550 ft·lbf/s, 745.7 W
      load: '3.1 kW', // as the pump asks; a coupling loses nothing
      poles: '4, synchronous 1800 rpm', // n = 120 f / p
      rpm: '1750 rpm',
      supply: '3 × 460 V, 60 Hz', // NEC Table 430.250: 460 V motors on 480 V systems
      amps: '6.6 A',
      frame: '184T', // NEMA MG 1 Part 13: 5 hp, 1800 rpm, TEFC
      'shaft-height': '114.3 mm, +0 −1.524', // NEMA MG 1-2016 4.4.1: 4.50 in, +0.00 −0.06
      'foot-holes': '190.5 × 139.7 mm, holes 10.41 mm', // 4.4.1: 2E 7.50, 2F 5.50, H 0.41 in
      enclosure: 'IP55, TEFC',
      area: 'unclassified',
      bearings: 'ball bearing',
    });
  });

  test('a motor in kW is told in hp too, and one in hp in kW', () => {
    const metric = easySet(
      { supply: { phases: 3, volts: 400, hertz: 50, start: 'direct' }, load: { shaftKw: 3.1, atPumpRpm: 1440 } },
      {
        frame: '112M',
        mounting: 'IM B3',
        design: 'N',
        ratings: [{ volts: 400, hertz: 50, kw: 4, rpm: 1440, amps: 8.1 }],
      },
    );
    expect(valuesOf(metric)).toMatchObject({
      power: '4 kW (5.4 hp)',
      frame: '112M', // EN 50347: 4 kW, 4 poles
      shaft: '28 mm j6', // IEC 60072-1: D 28, j6 to 28 mm
      'shaft-length': '60 mm', // IEC 60072-1: E 60
      key: '8 mm', // IEC 60072-1: F 8
    });
  });

  test.each<[string, PumpSet, string, string | null]>([
    ['nobody told the classification', easySet({ surroundings: {} }), 'area', null],
    ['nor which certificate', easySet({ surroundings: {} }), 'certificates', null],
    ['nobody told the altitude', easySet(), 'altitude', null],
    ['nor how hot it gets', easySet({ surroundings: {} }), 'ambient', null],
    ['nobody told the position', easySet({ shaftDirection: null }), 'position', null],
    [
      'nobody told how it is started, so nor whether on a drive',
      easySet({ supply: { phases: 3, volts: 480, hertz: 60 } }),
      'drive',
      null,
    ],
    ['nobody measured the room', easySet(), 'length', null],
    ['nobody told the hub', easySet(), 'hub', null],
    ['the register keeps no starts', easySet(), 'starts', null],
    ['a thermistor of a kind nobody told', easySet({ needs: ['thermistor'] }), 'thermistor', null],
    [
      'a drive whose cable nobody measured',
      easySet({ supply: { phases: 3, volts: 480, hertz: 60, start: 'drive' } }),
      'drive-cable',
      null,
    ],
    [
      'a hub as told',
      easySet({ coupling: { type: 'coupling', hub: { boreMm: 28.575, lengthMm: 60 } } }),
      'hub',
      'a hub: bore 28.575 mm, 60 mm long',
    ],
    [
      'star-delta asks for six ends',
      easySet({ supply: { phases: 3, volts: 480, hertz: 60, start: 'star-delta' } }),
      'connection',
      'delta at line voltage, six ends out',
    ],
    [
      // 120 × 20 / 4 is 600 rpm, 120 × 60 / 4 is 1800; 60 / 20 is 3 : 1.
      'a drive tells the range of speed',
      easySet({
        supply: { phases: 3, volts: 480, hertz: 60, start: 'drive', drive: { minHertz: 20, maxHertz: 60, ratedA: 10 } },
      }),
      'drive-speeds',
      '20 to 60 Hz, 600 to 1800 rpm of the field, constant torque',
    ],
    [
      'and so the range at constant torque',
      easySet({ supply: { phases: 3, volts: 480, hertz: 60, start: 'drive', drive: { minHertz: 20, maxHertz: 60 } } }),
      'drive',
      'inverter duty, 3 : 1 at constant torque',
    ],
    [
      'a place for stainless motors',
      easySet({ surroundings: { washdown: true, classification: null } }, { washdown: 'stainless' }),
      'washdown',
      'made to be washed, stainless; drains low in this position',
    ],
    [
      'a zone',
      easySet({ surroundings: { classification: { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } } }),
      'certificates',
      'for Zone 22, IIIB, 125 °C',
    ],
    // NEMA MG 1-14.42: 184T, 5 hp at 1800 rpm, least sheave 3.0 in (76.2 mm).
    [
      'a belt asks for its bearing',
      easySet({ coupling: { type: 'belt', ratio: 2 } }),
      'bearings',
      "for a belt's pull, sheaves from 76 mm",
    ],
  ])('%s', (_, one, id, value) => {
    const values = valuesOf(one);
    expect(values).toHaveProperty(id);
    expect(values[id]).toBe(value);
  });

  test.each(['brake-volts', 'heater', 'drive-cable', 'face', 'locked-rotor'])(
    'a plain set is not asked for %s',
    (id) => {
      expect(valuesOf(easySet())).not.toHaveProperty([id]);
    },
  );

  test('every line says why, and the questions it names are those of the judgement', () => {
    const all = Object.values(byId(groupsOf(easySet())));
    expect(all.length).toBeGreaterThan(35);
    for (const { id, why, criterion, bySet } of all) {
      expect(why, id).not.toBe('');
      expect(bySet, id).toEqual([]);
      if (criterion !== null) expect(CRITERIA).toContain(criterion);
    }
  });
});
