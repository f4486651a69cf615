import { describe, expect, test } from 'vitest';
import { defaultSettings } from '@/lib/matching/default-settings';
import { COUNTED_TO, type CoveredSet, coverLost } from '@/lib/spares/cover-lost';
import { motor, set } from '../matching/easy';

const at = (tag: string, criticality: number | null, differs: Parameters<typeof set>[0] = {}): CoveredSet => ({
  ...{ setId: tag, service: null, criticality },
  set: set({ tag, ...differs }),
});
const lost = (sets: CoveredSet[], others: ReturnType<typeof motor>[] = []) =>
  coverLost(motor({ id: 'M-7' }), sets, others, defaultSettings, '2026-11-28');

const OTHER_VOLTS = { supply: { volts: 2_300 } };

describe('what a motor taken from the shelf leaves without cover', () => {
  test('is every set it could have gone into, those of most weight first', () => {
    const told = lost([at('P-3', null), at('P-2', 4), at('P-1', 1)]);
    expect(told.map(({ of, left }) => [of.tag, left])).toEqual([
      ['P-1', 0],
      ['P-2', 0],
      ['P-3', 0],
    ]);
    expect(told[0]?.verdict).not.toBe('unsuitable');
  });

  test('is no set it could not have gone into', () => {
    expect(lost([at('P-1', 1, OTHER_VOLTS)])).toEqual([]);
  });

  test('has the sets with none left before those with one, whatever their criticality', () => {
    // 3 hp is 2.24 kW: it carries 1.5 kW and not 3.1 kW.
    const small = motor({ id: 'M-8', ratings: [{ volts: 460, hertz: 60, hp: 3, rpm: 1750, amps: 4.2 }] });
    const heavy = { load: { shaftKw: 3.1 } };
    const light = { load: { shaftKw: 1.5 } };
    const told = lost([at('P-1', 1, light), at('P-2', 4, heavy)], [small]);
    expect(told.map(({ of, left }) => [of.tag, left])).toEqual([
      ['P-2', 0],
      ['P-1', 1],
    ]);
  });

  test('is nothing where enough are left', () => {
    const others = Array.from({ length: COUNTED_TO }, (_, i) => motor({ id: `M-${i + 20}` }));
    expect(lost([at('P-1', 1)], others)).toEqual([]);
    expect(lost([at('P-1', 1)], others.slice(1))).toMatchObject([{ left: COUNTED_TO - 1 }]);
  });

  test('does not count a motor whose winding reads too low', () => {
    // Below 5 MΩ at 460 V (IEEE 43): not offered (lib/matching/spare-state).
    expect(lost([at('P-1', 1)], [motor({ id: 'M-8', spare: { insulationMohm: 0.1 } })])).toMatchObject([{ left: 0 }]);
  });

  test('is the same whatever the order of sets and motors', () => {
    const sets = [at('P-1', 2), at('P-2', 1), at('P-3', 1, OTHER_VOLTS)];
    const others = [motor({ id: 'M-8' }), motor({ id: 'M-9', frame: '254T' })];
    expect(lost([...sets].reverse(), [...others].reverse())).toEqual(lost(sets, others));
  });
});
