import { describe, expect, test } from 'vitest';
import { defaultSettings } from '@/lib/matching/default-settings';
import { kindsOf } from '@/lib/matching/screen/kinds';
import { screenOf } from '@/lib/matching/screen/screen';
import type { Motor } from '@/lib/plant/motor';
import type { Cured } from '@/lib/review/cure/cure';
import { curesOf } from '@/lib/review/cure/cures-of';
import type { ReviewRuleId } from '@/lib/review/finding';
import type { ReviewCase } from '@/lib/review/review-case';
import { reviewOf } from '@/lib/review/review-of';
import { motor } from '../../matching/easy';
import { FOR_DRIVE, inPlace, onDrive, row } from '../in-place';

const shelfOf = (motors: readonly Motor[]) => screenOf(kindsOf(motors), defaultSettings);

/** The cures of one finding of a case; throws where it is not raised. */
function cured(asked: ReviewCase, rule: ReviewRuleId, ...shelf: Motor[]): Cured {
  const finding = reviewOf(asked).find((one) => one.rule === rule);
  if (finding === undefined) throw new Error(`${rule} is not raised`);
  return curesOf(asked, finding, shelfOf(shelf));
}
const kinds = ({ cures }: Cured) => cures.map(({ kind }) => kind);
const what = ({ cures }: Cured) => cures.flatMap((one) => (one.kind === 'work' ? [one.what] : []));

const standing = { base: { transitionBase: true }, supply: { overloadMaxA: 14 } };
const sevenHp = motor({ id: 'M-7', frame: '184T', ...row({ hp: 7.5, rpm: 1760, amps: 9.7 }) });
const threeHp = motor({ id: 'M-3', ...row({ hp: 3, rpm: 1755, amps: 4.2 }), frame: '184T' });

describe('another motor', () => {
  test('a larger one on a shelf carries what the motor there does not', () => {
    const done = cured(inPlace({ ...standing, load: { shaftKw: 4.8 } }), 'overloaded', sevenHp, threeHp);
    const [shelf] = done.cures;
    // 4.8 kW of 7.5 hp, 5.59 kW, are 86 %, and it turns half a per cent faster.
    expect(shelf).toMatchObject({ kind: 'shelf', motor: 'M-7', runs: 'loaded to 87 %' });
    expect(kinds(done)).toEqual(['shelf']);
  });

  test('a smaller one is loaded as it should be', () => {
    // 1.4 kW of 3 hp, 2.24 kW, are 63 %.
    const done = cured(inPlace({ load: { shaftKw: 1.4 }, supply: { overloadMinA: 3 } }), 'oversized', sevenHp, threeHp);
    expect(done.cures[0]).toMatchObject({ kind: 'shelf', motor: 'M-3', verdict: 'straight-swap' });
  });

  test('one of which the load cannot be told is no cure', () => {
    const unknown = motor({ id: 'M-9', frame: '184T', ...row({ hp: null, kw: null }) });
    expect(kinds(cured(inPlace({ load: { shaftKw: 1.4 } }), 'oversized', unknown))).toEqual([]);
  });

  test('one that would lean on its service factor is no cure', () => {
    // 2.4 kW of 3 hp with 1.15.
    const asked = inPlace({ load: { shaftKw: 2.4, breakawayPct: null } }, row({ hp: 10, rpm: 1760, amps: 12.6 }));
    expect(cured(asked, 'oversized', threeHp).cures.filter(({ kind }) => kind === 'shelf')).toEqual([]);
  });

  test('a motor declared for the drive', () => {
    const declared = motor({ id: 'M-5', ...FOR_DRIVE });
    const done = cured(inPlace(onDrive({ minHertz: 30, maxHertz: 60, cableM: 60 })), 'drive-duty', declared);
    expect(done.cures).toContainEqual(expect.objectContaining({ kind: 'shelf', motor: 'M-5' }));
  });

  test('an area mark is a cure that a person still confirms', () => {
    const mark = { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } as const;
    const marked = motor({ id: 'M-6', classification: mark });
    const done = cured(inPlace({ surroundings: { classification: mark } }), 'classification', marked);
    expect(done.cures[0]).toMatchObject({ kind: 'shelf', motor: 'M-6', verdict: 'check-first' });
  });

  test('one whose winding reads too low is not offered', () => {
    // Below the least insulation resistance, IEEE 43: 5 MΩ for a small random winding.
    const low = motor({ id: 'M-8', ...row({ hp: 7.5, rpm: 1760, amps: 9.7 }), spare: { insulationMohm: 0.5 } });
    expect(kinds(cured(inPlace({ ...standing, load: { shaftKw: 4.8 } }), 'overloaded', low))).not.toContain('shelf');
  });
});

describe('work at the set', () => {
  test('the drive’s upper limit comes down to what the pump may turn at', () => {
    const asked = inPlace(onDrive({ minHertz: 30, maxHertz: 75 }, { load: { maxPumpRpm: 1900 } }), {
      ...FOR_DRIVE,
      maxRpm: 3600,
    });
    // 1900 rpm and a slip of about 49 are 64.9 Hz of four poles: n = 120 f/p.
    expect(what(cured(asked, 'speed'))).toEqual(['Lower the drive’s upper limit from 75 Hz to 64.9 Hz']);
  });

  test('a belt gets another sheave', () => {
    const belt = { type: 'belt', ratio: 2, sheave: { pitchDiameterMm: 120 } } as const;
    const done = cured(inPlace({ load: { atPumpRpm: 800, maxPumpRpm: 820 }, coupling: belt }), 'speed');
    // 800 of 876 rpm: 120 mm become 109.6 mm, less what the motor gains at the lower load.
    expect(what(done)[0]).toMatch(/^Fit a motor sheave of 109\.\d mm/);
  });

  test('too weak at both ends of a drive’s range, both are drawn in', () => {
    const asked = inPlace(onDrive({ minHertz: 10, maxHertz: 90 }), { driveDuty: 'inverter', maxRpm: 3600 });
    expect(what(cured(asked, 'drive-torque'))[0]).toMatch(
      /^Lower the drive’s upper limit from 90 Hz to [\d.]+ Hz, and raise the drive’s lower limit from 10 Hz to [\d.]+ Hz$/,
    );
  });

  test('a stronger coupling', () => {
    // 20.35 N·m of 5 hp at 1750 rpm: T = 9550 P/n.
    expect(what(cured(inPlace({ coupling: { maxTorqueNm: 18 } }), 'train-torque'))[0]).toContain('at least 21 N·m');
  });

  test('a start in star that is too weak is made direct, where the supply allows it', () => {
    const delta = { ...row({ connection: 'delta' }), leads: 6, winding: 'star-delta-6', lockedRotorPct: 200 } as const;
    const asked = (directAllowed: boolean | null) => inPlace({ supply: { start: 'star-delta', directAllowed } }, delta);
    expect(what(cured(asked(true), 'start'))[0]).toContain('which this supply allows');
    expect(what(cured(asked(null), 'start'))[0]).toContain('if whoever runs the supply allows it');
    expect(what(cured(asked(false), 'start'))).toEqual([]);
  });

  test('of overload, contactor and cable what is too small, and no more', () => {
    expect(what(cured(inPlace({ supply: { overloadMinA: 3, overloadMaxA: 5 } }), 'protection'))).toEqual([
      'Fit an overload whose dial takes 6.6 A and set it so',
    ]);
    expect(what(cured(inPlace({ supply: { contactorA: 6, cableA: 7 } }), 'protection'))).toEqual([
      'Fit a contactor for at least 6.6 A; lay a cable for at least 8.3 A',
    ]);
  });

  test('a filter against the peaks of the drive', () => {
    const asked = inPlace(onDrive({ minHertz: 30, maxHertz: 60, cableM: 60 }), { constantTorqueRange: 4 });
    expect(what(cured(asked, 'drive-duty'))[0]).toContain('filter');
  });

  test('uneven volts are evened', () => {
    const asked = inPlace({ supply: { unbalancePct: 3 }, load: { shaftKw: 3.6 } });
    expect(what(cured(asked, 'derated'))).toEqual(['Bring the unbalance of the volts from 3 % down to 1 %']);
  });

  test('a sheave below the frame’s least is made larger', () => {
    const belt = { type: 'belt', ratio: 2, sheave: { pitchDiameterMm: 60 } } as const;
    expect(what(cured(inPlace({ coupling: belt, load: { atPumpRpm: 875 } }), 'mount'))[0]).toContain('at least 76 mm');
  });
});

test('what a reading decides asks for the reading and offers nothing', () => {
  const done = cured(inPlace({ surroundings: { ip: 'IP66' } }, { ip: null }), 'enclosure', sevenHp);
  expect(done.cures).toEqual([{ kind: 'look', reading: 'Read the IP code on the plate (2 min)' }]);
});

describe('where nothing puts it right it says what stands against the nearest', () => {
  test('a base that takes no other frame', () => {
    const { cures, why } = cured(inPlace({ load: { shaftKw: 5.2 } }), 'overloaded');
    expect(cures).toEqual([]);
    expect(why).toMatch(/^The nearest, 213T 7\.5 hp 4-pole, does not go in: Shaft is 19\.05 mm too high/);
  });

  test('a pump that needs the size to start', () => {
    const asked = inPlace({ load: { shaftKw: 1.2, breakawayPct: 500 }, supply: { overloadMinA: 2 } });
    expect(cured(asked, 'oversized', threeHp).why).toMatch(
      /^The pump needs its size\. The nearest, .* does not go in:/,
    );
  });

  test('figures of the pump that exclude each other', () => {
    expect(cured(inPlace({ load: { maxPumpRpm: 1700 } }), 'speed').why).toContain('must be put right first');
  });
});
