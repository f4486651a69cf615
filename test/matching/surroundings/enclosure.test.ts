import { expect, test } from 'vitest';
import { enclosure } from '@/lib/matching/criteria/surroundings/enclosure';
import { motor, set } from '../easy';
import { asked } from './asked';

const place = (ip: string | null) => set({ surroundings: { ip } });
/** A place that states nothing; the failed motor's plate is all there is. */
const after = (failed: object | null) => ({
  ...set({ surroundings: { ip: null } }),
  failed: failed && motor({ ip: null, enclosure: null, ...failed }),
});

const RULE = 'IEC 60529 clause 6: 5 and 6 include what is below, 7 and 8 do not include 5 and 6 (read in two texts)';
const NINE = '9 says nothing on 5 to 8 (from memory)';
const NONE = 'not stated in the texts read (from memory)';
const X = 'X is not stated, neither zero nor enough (read in one text)';

test.each([
  ['the same', 'IP55', 'IP55', 'ok', RULE],
  ['both higher', 'IP54', 'IP66', 'ok', RULE],
  ['water lower', 'IP55', 'IP54', 'block', RULE],
  ['solids lower', 'IP65', 'IP56', 'block', RULE],
  ['one higher does not make up for the other', 'IP55', 'IP64', 'block', RULE],
  ['7 for 5', 'IP55', 'IP67', 'block', RULE],
  ['8 for 6', 'IP66', 'IP68', 'block', RULE],
  ['7 for 7', 'IP67', 'IP67', 'ok', RULE],
  ['6 for 7', 'IP67', 'IP66', 'block', RULE],
  ['8 for 7', 'IP67', 'IP68', 'ok', NONE],
  ['7 for 4', 'IP54', 'IP67', 'check', NONE],
  ['9 for 5', 'IP55', 'IP69', 'block', NINE],
  ['9 for 8', 'IP68', 'IP69', 'block', NINE],
  ['9 for 4', 'IP54', 'IP69', 'check', NONE],
  ['9K for 9', 'IP69', 'IP69K', 'ok', 'IPX9 is called 9K in ISO 20653 (from memory)'],
  ['X against solids', 'IP55', 'IPX5', 'check', X],
  ['X against water', 'IP55', 'IP5X', 'check', X],
  ['X and a lower digit', 'IP55', 'IPX4', 'block', RULE],
  ['the place asks nothing of solids', 'IPX5', 'IP45', 'ok', X],
  ['the place asks nothing of solids, nor does the plate say', 'IPX5', 'IPX5', 'ok', X],
])('enclosure: %s', (_, need, ip, grade, _source) => {
  expect(asked(enclosure, place(need), motor({ ip }))).toMatchObject({ grade, have: ip, need });
});

// Words promise only a least degree: open drip-proof IP22, totally enclosed IP54 (read in one text); the rest from memory.
test.each([
  ['TEFC promises IP54', 'TEFC', 'IP54', 'ok'],
  ['TEFC may or may not be IP55', 'TEFC', 'IP55', 'check'],
  ['TENV promises IP54', 'TENV', 'IP44', 'ok'],
  ['ODP promises IP22', 'ODP', 'IP22', 'ok'],
  ['ODP promises no more', 'ODP', 'IP23', 'check'],
  ['WP-II promises IP24', 'WP-II', 'IP23', 'ok'],
  ['a word not known promises nothing', 'ABCD', 'IP20', 'check'],
  ['no word and no code', null, 'IP20', 'check'],
])('without an IP code: %s', (_, word, need, grade) => {
  const found = asked(enclosure, place(need), motor({ ip: null, enclosure: word }));
  expect(found).toMatchObject({ grade, by: grade === 'check' ? 'reading' : null });
});

test('the code on the plate says more than the word beside it', () => {
  expect(asked(enclosure, place('IP55'), motor({ ip: 'IP23', enclosure: 'TEFC' }))?.grade).toBe('block');
});

test.each([
  ['a lower digit', { ip: 'IP66' }, { ip: 'IP55' }, 'check'],
  ['the same', { ip: 'IP66' }, { ip: 'IP66' }, 'ok'],
  ['no code known', { ip: 'IP66' }, { ip: null, enclosure: null }, 'check'],
  ['a word beside the failed one’s code', { ip: 'IP54' }, { ip: null, enclosure: 'TEFC' }, 'ok'],
  ['less than the failed one’s word', { enclosure: 'TEFC' }, { ip: 'IP23' }, 'check'],
  ['as much as the failed one’s word', { enclosure: 'TEFC' }, { ip: 'IP55' }, 'ok'],
])('where the place states none the failed motor is evidence: %s', (_, failed, differs, grade) => {
  expect(asked(enclosure, after(failed), motor(differs))?.grade).toBe(grade);
});

test('what the place states goes before what the failed motor had', () => {
  const stated = { ...place('IP54'), failed: motor({ ip: 'IP66' }) };
  expect(asked(enclosure, stated, motor({ ip: 'IP54' }))?.grade).toBe('ok');
});

test('is not asked where neither the place nor the failed motor tells of one', () => {
  expect(asked(enclosure, after(null), motor())).toBeNull();
  expect(asked(enclosure, after({}), motor())).toBeNull();
  expect(asked(enclosure, after({ enclosure: 'ABCD' }), motor({ ip: null }))).toBeNull();
});

// Cooling words: TEAO is cooled by the machine it stands in (read in two texts), TEBC by its own blower (read in one).
test.each([
  ['air-over where nothing blows', { enclosure: 'TEAO' }, null, 'check'],
  ['air-over for air-over', { enclosure: 'TEAO' }, { enclosure: 'TEAO', ip: 'IP55' }, 'ok'],
  ['a blower without a feed', { enclosure: 'TEBC' }, null, 'check'],
  ['a blower for a blower', { enclosure: 'TEBC' }, { enclosure: 'TEBC', ip: 'IP55' }, 'ok'],
  ['too low a degree before that', { enclosure: 'TEAO', ip: 'IP44' }, null, 'block'],
])('cooling: %s', (_, differs, failed, grade) => {
  const where = { ...place('IP55'), failed: failed && motor(failed) };
  expect(asked(enclosure, where, motor(differs))?.grade).toBe(grade);
});

test('an air-over motor is a check even where no degree is asked', () => {
  expect(asked(enclosure, after(null), motor({ enclosure: 'TEAO' }))).toMatchObject({ grade: 'check', by: 'person' });
});
