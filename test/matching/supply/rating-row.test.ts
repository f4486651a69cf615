import { describe, expect, test } from 'vitest';
import { ratingRowOf } from '@/lib/matching/context/rating-row';
import { motor, set } from '../easy';

const drive = { outputVolts: 460, baseHertz: 60 };
const iec = { hertz: 50, kw: 7.5, rpm: 1460, amps: 14 };
const us = { hertz: 60, hp: 10, rpm: 1760 };

describe('the rating row', () => {
  test('of a 230/460 plate at 460 V is the 460 V row', () => {
    const candidate = motor({
      ratings: [
        { ...us, volts: 230, amps: 24 },
        { ...us, volts: 460, amps: 12 },
      ],
    });
    expect(ratingRowOf(set(), candidate)).toMatchObject({ kind: 'plated', amps: 12, phi: 1 });
    expect(ratingRowOf(set({ supply: { volts: 240 } }), candidate).amps).toBe(24);
  });

  test('takes measured volts before nominal ones', () => {
    const row = ratingRowOf(set({ supply: { volts: 480, measuredVolts: 437 } }), motor());
    expect(row.volts).toBe(437);
    expect(row.phi).toBeCloseTo(0.95, 10); // 437/460, arithmetic
  });

  test('for a star-delta starter is the delta row, though a star row fits the line as well', () => {
    const candidate = motor({
      ratings: [
        { ...iec, volts: 400, connection: 'star' },
        { ...iec, volts: 400, connection: 'delta' },
      ],
    });
    const supply = { volts: 400, hertz: 50, start: 'star-delta' } as const;
    expect(ratingRowOf(set({ supply }), candidate).plate?.connection).toBe('delta');
  });

  test('of a plate with only a range takes the supply itself inside it', () => {
    const candidate = motor({ ratings: [{ ...iec, voltsMin: 380, voltsMax: 415 }] });
    expect(ratingRowOf(set({ supply: { volts: 400, hertz: 50 } }), candidate).phi).toBe(1);
    // Moved to 60 Hz, 480 V asks for 400 V at 50 Hz, which the range has; 460 V asks for 383 V.
    expect(ratingRowOf(set({ supply: { volts: 480, hertz: 60 } }), candidate).phi).toBe(1);
    expect(ratingRowOf(set({ supply: { volts: 440, hertz: 60 } }), candidate).phi).toBeCloseTo(
      440 / 60 / (380 / 50),
      10,
    );
  });

  test('without one at that hertz is the row whose flux is nearest to its plate', () => {
    const candidate = motor({
      ratings: [
        { ...iec, volts: 230 },
        { ...iec, volts: 400 },
      ],
    });
    const row = ratingRowOf(set({ supply: { volts: 480, hertz: 60 } }), candidate);
    expect(row).toMatchObject({
      kind: 're-rated',
      phi: 1,
      serviceFactor: 1,
      synchronousRpm: 1800,
      slipRpm: 40,
      rpm: 1760,
    });
    expect(row.plate?.volts).toBe(400);
  });

  test('is none when either frequency is unknown, and nothing is worked out', () => {
    const nothing = { kind: 'none', phi: null, kw: null, rpm: null, amps: null };
    expect(ratingRowOf(set({ supply: { hertz: null } }), motor())).toMatchObject(nothing);
    expect(ratingRowOf(set(), motor({ ratings: [] }))).toMatchObject(nothing);
    expect(ratingRowOf(set(), motor({ ratings: [{ volts: 460, hp: 5, rpm: 1750 }] }))).toMatchObject(nothing);
  });

  test('knows no slip where the plate speed is synchronous, above it or missing', () => {
    for (const rpm of [1800, 1850, null])
      expect(ratingRowOf(set(), motor({ ratings: [{ volts: 460, hertz: 60, hp: 5, rpm }] }))).toMatchObject({
        slipRpm: null,
        rpm: null,
        synchronousRpm: 1800,
      });
  });

  test('of a motor that runs in step turns at synchronous speed', () => {
    const candidate = motor({ kind: 'permanent-magnet', ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1800 }] });
    expect(ratingRowOf(set({ supply: { start: 'drive', drive } }), candidate)).toMatchObject({
      slipRpm: null,
      rpm: 1800,
    });
  });

  test('takes the poles from the plate speed where they are not told', () => {
    const candidate = motor({ poles: null, ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1160 }] });
    expect(ratingRowOf(set(), candidate)).toMatchObject({ synchronousRpm: 1200, slipRpm: 40 });
  });

  test.each([
    ['unprinted is 1', { serviceFactor: null }, {}, 1],
    ['the row before the motor', { ratings: [{ ...us, volts: 460, serviceFactor: 1.25 }] }, {}, 1.25],
    ['the motor where the row has none', {}, {}, 1.15],
    ['on a drive 1', {}, { start: 'drive', drive } as const, 1],
    ['re-rated 1', {}, { volts: 380, hertz: 50 }, 1],
  ])('service factor: %s', (_, differs, supply, want) => {
    expect(ratingRowOf(set({ supply }), motor(differs)).serviceFactor).toBe(want);
  });

  test('on a drive has φ 1 and the drive’s output', () => {
    const supply = {
      phases: 1,
      volts: 230,
      hertz: 50,
      start: 'drive',
      drive: { outputVolts: 400, baseHertz: 60 },
    } as const;
    expect(ratingRowOf(set({ supply }), motor())).toMatchObject({ volts: 400, hertz: 60, phi: 1 });
    const untold = { volts: 480, hertz: 60, start: 'drive', drive: {} } as const;
    expect(ratingRowOf(set({ supply: untold }), motor())).toMatchObject({ volts: 480, hertz: 60, phi: 1 });
  });

  test.each([
    // 60 to 50 Hz: an application note's table (read in one text); five sixths at most (read in one text).
    ['460/60 closed on 380/50', 'TEFC', 460, 60, 380, 50, 0.8],
    ['460/60 closed on 400/50', 'TEFC', 460, 60, 400, 50, 0.75],
    ['460/60 closed on 415/50', 'TEFC', 460, 60, 415, 50, 0.7],
    ['460/60 open on 380/50, never above five sixths', 'ODP', 460, 60, 380, 50, 5 / 6],
    ['460/60 open on 415/50', 'ODP', 460, 60, 415, 50, 0.75],
    ['230/60 open on 200/50', 'ODP', 230, 60, 200, 50, 0.8],
    ['575/60 closed on 500/50', 'TEFC', 575, 60, 500, 50, 0.75],
    ['an enclosure not known takes the lower figure', null, 460, 60, 380, 50, 0.8],
    // 50 to 60 Hz: φ·f/fn, at most 1.15.
    ['400/50 on 480/60, capped', 'TEFC', 400, 50, 480, 60, 1.15],
    ['400/50 on 400/60', 'TEFC', 400, 50, 400, 60, 1],
    ['400/50 on 380/60', 'TEFC', 400, 50, 380, 60, 0.95],
  ])('power re-rated: %s', (_, enclosure, volts, hertz, lineVolts, lineHertz, share) => {
    const candidate = motor({ enclosure, ip: null, ratings: [{ volts, hertz, kw: 10, rpm: 1440 }] });
    expect(ratingRowOf(set({ supply: { volts: lineVolts, hertz: lineHertz } }), candidate).kw).toBeCloseTo(
      10 * share,
      9,
    );
  });

  test('power on a frequency with no rule is unknown', () => {
    const candidate = motor({ ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750 }] });
    expect(ratingRowOf(set({ supply: { volts: 460, hertz: 400 } }), candidate).kw).toBeNull();
  });
});
