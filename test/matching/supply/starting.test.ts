import { expect, test } from 'vitest';
import { starting } from '@/lib/matching/criteria/supply/starting';
import { motor, set } from '../easy';
import { asked } from './asked';

const row = (volts: number, connection: string | null = null) => ({
  volts,
  connection,
  hertz: 50,
  kw: 4,
  rpm: 1440,
  amps: 8,
});
const iec = (differs: object) => motor({ frame: '112M', leads: null, winding: null, ...differs });
const starDelta = { volts: 400, hertz: 50, start: 'star-delta' } as const;

// Leads and links: handbook of terminal connections (read in one text). The rule itself: from memory.
test.each([
  ['declared, single voltage', {}, { winding: 'star-delta-6', ratings: [row(400)] }, 'ok'],
  ['declared, twelve leads', {}, { winding: 'star-delta-12', ratings: [row(400)] }, 'ok'],
  ['declared, but in star at the line', {}, { winding: 'star-delta-6', ratings: [row(230), row(400)] }, 'block'],
  ['a 400/690 pair', {}, { ratings: [row(400), row(690)] }, 'ok'],
  ['a 400/690 pair with six leads', {}, { leads: 6, ratings: [row(400, 'delta'), row(690, 'star')] }, 'ok'],
  ['a 400/690 pair with three leads', {}, { leads: 3, ratings: [row(400), row(690)] }, 'block'],
  ['a 230/400 pair', {}, { leads: 6, ratings: [row(230, 'delta'), row(400, 'star')] }, 'block'],
  [
    'a 230/400 pair, direct allowed',
    { directAllowed: true },
    { ratings: [row(230, 'delta'), row(400, 'star')] },
    'work',
  ],
  ['six leads on IEC, delta at the line', {}, { leads: 6, ratings: [row(400, 'delta')] }, 'ok'],
  ['six leads on IEC, link unknown', {}, { leads: 6, ratings: [row(400)] }, 'check'],
  ['six leads on NEMA, delta at the line', {}, { frame: '184T', leads: 6, ratings: [row(400, 'delta')] }, 'check'],
  ['leads unknown', {}, { ratings: [row(400, 'delta')] }, 'check'],
  ['nine leads', {}, { leads: 9, ratings: [row(400)] }, 'block'],
  ['nine leads, direct allowed', { directAllowed: true }, { leads: 9, ratings: [row(400)] }, 'work'],
  ['nine leads, direct not allowed', { directAllowed: false }, { leads: 9, ratings: [row(400)] }, 'block'],
  ['a nine-lead star winding', {}, { winding: 'star-9', ratings: [row(400)] }, 'block'],
  ['a part-winding motor', {}, { winding: 'part-winding-6', leads: 6, ratings: [row(400)] }, 'block'],
  ['delta at another voltage', {}, { leads: 6, ratings: [row(230, 'delta')] }, 'block'],
  ['line voltage unknown', { volts: null }, { leads: 6, ratings: [row(400, 'delta')] }, 'check'],
])('star-delta: %s', (_, supply, differs, grade) => {
  expect(asked(starting, set({ supply: { ...starDelta, ...supply } }), iec(differs))?.grade).toBe(grade);
});

test('rewiring for direct start is work on the starter', () => {
  const supply = { ...starDelta, directAllowed: true };
  expect(asked(starting, set({ supply }), iec({ leads: 9, ratings: [row(400)] }))?.work?.id).toBe('rewire-starter');
});

// From memory: only a winding made for it.
test.each([
  ['declared', { winding: 'part-winding-6' }, 'ok'],
  ['declared otherwise', { winding: 'star-9' }, 'check'],
  ['not declared', { winding: null }, 'check'],
] as const)('part-winding: %s', (_, differs, grade) => {
  expect(asked(starting, set({ supply: { start: 'part-winding' } }), motor(differs))?.grade).toBe(grade);
});

// Common practice, no source.
test.each([
  ['direct, the failed motor itself', { start: 'direct' }, {}, 'work'],
  ['direct, another power', { start: 'direct' }, { ratings: [{ ...row(460), hertz: 60 }] }, 'work'],
  ['direct, amps unknown', { start: 'direct' }, { ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750 }] }, 'work'],
  ['soft', { start: 'soft' }, {}, 'block'],
  ['drive', { start: 'drive', drive: { outputVolts: 460, baseHertz: 60 } }, {}, 'block'],
] as const)('a capacitor at the motor: %s', (_, supply, differs, grade) => {
  const found = asked(starting, set({ supply: { ...supply, capacitorKvar: 2 } }), motor(differs as object));
  expect(found?.grade).toBe(grade);
  expect(found?.work?.id ?? null).toBe('power-factor-capacitor');
});

// Code letter G, 20 hp, 460 V: 125.8 kVA, 158 A (worked example on NEC 430.7(B)); 12.35 B at 20 hp: 290 A at 230 V.
const twenty = { ratings: [{ volts: 460, hertz: 60, hp: 20, rpm: 1765, amps: 24 }] };
const onePhase = {
  kind: 'single-phase',
  phases: 1,
  codeLetter: 'K',
  ratings: [{ volts: 230, hertz: 60, hp: 1, rpm: 1730, amps: 8 }],
};
test.each([
  ['code letter G, trip above', 160, { ...twenty, codeLetter: 'G' }, 'ok'],
  ['code letter G, trip below', 155, { ...twenty, codeLetter: 'G' }, 'check'],
  ['design B without a code letter, trip above', 146, { ...twenty, codeLetter: null, design: 'B' }, 'ok'],
  ['design B without a code letter, trip below', 144, { ...twenty, codeLetter: null, design: 'B' }, 'check'],
  ['design A has no ceiling', 1000, { ...twenty, codeLetter: null, design: 'A' }, 'check'],
  ['IEC design N, 9 × plate amps below the trip', 220, { ...twenty, codeLetter: null, design: 'N' }, 'ok'],
  ['IEC design N, 9 × plate amps above the trip', 200, { ...twenty, codeLetter: null, design: 'N' }, 'check'],
  ['the open band V', 1000, { ...twenty, codeLetter: 'V' }, 'check'],
  ['nothing on the plate', 1000, { ...twenty, codeLetter: null, design: null }, 'check'],
  ['the failed motor itself, trip below', 10, {}, 'check'],
  // 1 hp, code letter K, 230 V single-phase: 8.99 kVA/230 V = 39.1 A, no √3 (NEC 430.7(B)).
  ['single-phase by code letter, trip above', 40, onePhase, 'ok'],
  ['single-phase by code letter, trip below', 39, onePhase, 'check'],
  ['single-phase without a code letter', 1000, { ...onePhase, codeLetter: null }, 'check'],
])('inrush: %s', (_, instantaneousTripA, differs, grade) => {
  const volts = 'phases' in differs ? 230 : 460;
  expect(asked(starting, set({ supply: { volts, instantaneousTripA } }), motor(differs as object))?.grade).toBe(grade);
});

test('inrush no higher than the failed motor’s could be says so', () => {
  expect(asked(starting, set({ supply: { instantaneousTripA: 10 } }), motor())?.says).toContain('The failed motor');
  const harder = motor({ codeLetter: 'L' });
  expect(asked(starting, set({ supply: { instantaneousTripA: 10 } }), harder)?.says).not.toContain('The failed motor');
});

test('a soft starter and a drive hold the inrush down', () => {
  for (const supply of [{ start: 'soft' }, drive] as const)
    expect(asked(starting, set({ supply: { ...supply, instantaneousTripA: 10 } }), motor())?.grade).toBe('ok');
});

test('a star-delta start takes a third of the inrush: from memory', () => {
  const candidate = motor({ ...twenty, codeLetter: 'G', winding: 'star-delta-6' });
  const at = (instantaneousTripA: number) =>
    asked(starting, set({ supply: { start: 'star-delta', instantaneousTripA } }), candidate)?.grade;
  expect([at(54), at(52)]).toEqual(['ok', 'check']); // 158 / 3 = 52.6
});

const drive = { start: 'drive', drive: { outputVolts: 460, baseHertz: 60 } } as const;
const pm = { kind: 'permanent-magnet', ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1800, amps: 6 }] } as const;

// Permanent-magnet and reluctance motors do not start on the mains; the rest common practice: all from memory.
test.each([
  ['permanent-magnet, direct', { start: 'direct' }, pm, 'block'],
  ['reluctance, direct', { start: 'direct' }, { ...pm, kind: 'reluctance' }, 'block'],
  ['permanent-magnet, soft', { start: 'soft' }, pm, 'block'],
  ['reluctance, star-delta', { start: 'star-delta' }, { ...pm, kind: 'reluctance' }, 'block'],
  ['permanent-magnet, drive', drive, pm, 'check'],
  ['permanent-magnet, start unknown', { start: null }, pm, 'check'],
  ['wound-rotor, direct', { start: 'direct' }, { kind: 'wound-rotor' }, 'check'],
  ['wound-rotor, star-delta', { start: 'star-delta' }, { kind: 'wound-rotor', winding: 'star-delta-6' }, 'block'],
  ['two-speed, direct', { start: 'direct' }, { kind: 'two-speed' }, 'check'],
  ['single-phase, direct', { start: 'direct' }, { kind: 'single-phase' }, 'ok'],
  ['single-phase, soft', { start: 'soft' }, { kind: 'single-phase' }, 'block'],
  ['single-phase, drive', drive, { kind: 'single-phase' }, 'block'],
  ['single-phase, star-delta', { start: 'star-delta' }, { kind: 'single-phase' }, 'block'],
  ['unknown kind, slip on the plate', { start: 'direct' }, { kind: null }, 'ok'],
  ['unknown kind, synchronous plate speed', { start: 'direct' }, { ...pm, kind: null }, 'check'],
  ['cage, soft', { start: 'soft' }, {}, 'ok'],
  ['cage, direct', { start: 'direct' }, {}, 'ok'],
] as const)('kind: %s', (_, supply, differs, grade) => {
  expect(asked(starting, set({ supply }), motor(differs as object))?.grade).toBe(grade);
});

test.each(['two-speed', 'wound-rotor'] as const)(
  'a cage motor for a failed %s motor is a check; the same one is not',
  (kind) => {
    const supply = { start: 'direct' } as const;
    const failedSet = set({
      supply,
      failed: { ...motor(), kind, ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }] },
    });
    expect(asked(starting, failedSet, motor())?.grade).toBe('check');
    const same = motor({ kind, ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }] });
    expect(asked(starting, failedSet, same)?.grade).toBe('ok');
  },
);

test('is not asked of a cage motor when the set states no start, no capacitor and no trip', () => {
  expect(asked(starting, set({ supply: { start: null } }), motor())).toBeNull();
});
