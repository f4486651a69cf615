import { expect, test } from 'vitest';
import { judged, near, nema, standing } from './whole-case';

// IEC 60529 clauses 5 and 6: the first numeral is of solids, the second of water, each judged alone.
test.each([
  ['IP55', 'IP55', 'ok'],
  ['IP66', 'IP55', 'ok'],
  ['IP65', 'IP55', 'ok'],
  ['IP56', 'IP65', 'block'],
  ['IP44', 'IP55', 'block'],
  // 7 and 8 are immersion, and do not include the jets of 5 and 6 (clause 6).
  ['IP67', 'IP65', 'block'],
  ['IP67', 'IP67', 'ok'],
  ['IPX5', 'IP55', 'check'],
] as const)('%s where %s is asked: %s', (ip, need, grade) => {
  const found = judged(nema, { motor: { ip }, set: { surroundings: { ip: need } } });
  expect(found.of('enclosure')).toMatchObject({ grade, have: ip, need });
});

test('an enclosure word promises only its least degree, and nothing at all is for a reading', () => {
  // TEFC is at least IP54 (table of enclosures), which is less than IP55
  const tefc = judged(nema, { motor: { ip: null } });
  expect(tefc.of('enclosure')).toMatchObject({ grade: 'check', by: 'reading', have: 'TEFC', need: 'IP55' });
  const bare = judged(nema, { motor: { ip: null, enclosure: null } });
  expect(bare.of('enclosure')).toMatchObject({ grade: 'check', by: 'reading', have: null });
});

test('50 °C: 92 % of the rating is left, and 3 kW still go', () => {
  // An application manual for NEMA motors, read in one text (no standard has the factors): 0.92 at 50 °C up to 1000 m; 0.92 × 3.7285 = 3.43022; need 3.0167
  const found = judged(nema, { set: { surroundings: { ambientC: 50 } } });
  expect(found.of('temperature-altitude')).toMatchObject({ grade: 'note', have: 40, need: 50 });
  expect(found.of('power')).toMatchObject({ grade: 'ok', have: near(3.4302, 2), need: near(3.0167, 2) });
  const built = judged(nema, { motor: { ambientC: 50 }, set: { surroundings: { ambientC: 50 } } });
  expect(built.of('temperature-altitude')?.grade).toBe('ok');
  expect(built.of('power')).toMatchObject({ grade: 'ok', have: near(3.7285) });
});

test('65 °C is in no table: a person decides, and power never passes', () => {
  const found = judged(nema, { set: { surroundings: { ambientC: 65 } } });
  expect(found.of('temperature-altitude')).toMatchObject({ grade: 'check', by: 'person' });
  expect(found.of('power')?.grade).not.toBe('ok');
});

const dust = { scheme: 'NEC', class: 2, division: 1, groups: ['G'], tempCode: 'T4' };
test('grain dust: a motor for it is for a person, one for vapours is out, so is one with no mark', () => {
  const set = { surroundings: { classification: dust } };
  const marked = judged(nema, { motor: { classification: dust }, set });
  // Even a mark that covers is confirmed by a competent person (NEC 500.8).
  expect(marked.of('area-classification')).toMatchObject({ grade: 'check', by: 'person' });
  const vapour = { ...dust, class: 1, groups: ['D'] };
  const other = judged(nema, { motor: { classification: vapour }, set });
  expect(other.of('area-classification')?.grade).toBe('block');
  expect(other.verdict).toBe('unsuitable');
  const untold = judged(nema, { motor: { classification: null }, set });
  expect(untold.of('area-classification')).toMatchObject({ grade: 'block', have: null });
});

test('hosed down: declared duty goes, an IP code alone is for a person, no proof against jets is out', () => {
  const set = { surroundings: { washdown: true, ip: 'IP44' } };
  expect(judged(nema, { motor: { washdown: 'stainless' }, set }).of('washdown')?.grade).toBe('ok');
  expect(judged(nema, { motor: { ip: 'IP66' }, set }).of('washdown')).toMatchObject({ grade: 'check', by: 'person' });
  expect(judged(nema, { motor: { ip: 'IP44' }, set }).of('washdown')?.grade).toBe('block');
  expect(judged(nema, { motor: { washdown: null }, set }).of('washdown')).toMatchObject({
    grade: 'check',
    by: 'reading',
  });
});

test('a thermistor that the set uses cannot be put in at the pump; a ground ring can', () => {
  const set = { needs: ['thermistor'] };
  expect(judged(nema, { set }).of('auxiliaries')).toMatchObject({ grade: 'check', by: 'person', need: 'thermistor' });
  expect(judged(nema, { both: { has: ['thermistor'] }, set }).of('auxiliaries')?.grade).toBe('ok');
  const ring = judged(nema, { set: { needs: ['shaft-ground'] } });
  expect(ring.of('auxiliaries')).toMatchObject({ grade: 'work', work: { id: 'auxiliary-wiring' } });
  expect(judged(nema, { set: { needs: ['brake'] } }).of('auxiliaries')?.grade).toBe('block');
});

test.each([
  ['cw', 'ok'],
  ['either', 'ok'],
  ['ccw', 'block'],
  [null, 'check'],
] as const)('the pump turns clockwise, the motor %s: %s', (rotation, grade) => {
  expect(judged(nema, { motor: { rotation }, set: { rotation: 'cw' } }).of('rotation')?.grade).toBe(grade);
});

test('a belt on a 184T of 5 hp, four poles: a sheave of 3.0 in at least', () => {
  // NEMA MG 1 14.42: 184T, 5 hp at 1800 rpm: V-belt sheave of 3.0 in pitch diameter = 76.2 mm
  const belt = (pitchDiameterMm: number | null, changeable: boolean | null) =>
    judged(nema, { set: { coupling: { type: 'belt', sheave: { pitchDiameterMm, changeable } } } }).of('bearings');
  expect(belt(90, false)).toMatchObject({ grade: 'ok', have: 90, need: near(76.2, 1) });
  expect(belt(70, true)).toMatchObject({ grade: 'work', work: { id: 'sheave' } });
  expect(belt(70, false)?.grade).toBe('block');
  expect(belt(null, true)).toMatchObject({ grade: 'check', by: 'reading' });
});

test('every question of the surroundings at once, each answered: a straight swap', () => {
  const found = judged(nema, {
    both: { washdown: 'stainless', ip: 'IP66', has: ['thermistor'], rotation: 'cw' },
    set: { rotation: 'cw', needs: ['thermistor'], surroundings: { washdown: true, ip: 'IP66', ambientC: 30 } },
  });
  expect(standing(found)).toEqual([]);
  expect(found.verdict).toBe('straight-swap');
});
