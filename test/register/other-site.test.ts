import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { holdAsked } from '@/app/hold/asked-of';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { NOT_MEASURED } from '@/lib/energy/measured';
import { NO_READINGS } from '@/lib/job/readings';
import { addReadings } from '@/lib/register/commands/add-readings';
import { changeOwnUnits } from '@/lib/register/commands/change-own-units';
import { closeFault } from '@/lib/register/commands/close-fault';
import { invitePerson } from '@/lib/register/commands/invite-person';
import { keepPicture } from '@/lib/register/commands/keep-picture';
import { keepView } from '@/lib/register/commands/keep-view';
import { makeToken } from '@/lib/register/commands/make-token';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { reportFault } from '@/lib/register/commands/report-fault';
import { retirePicture } from '@/lib/register/commands/retire-picture';
import { tellMeasurement } from '@/lib/register/commands/tell-measurement';
import { ALL_MOTORS } from '@/lib/register/motor-filter';
import { areas } from '@/lib/register/queries/areas';
import { auditTrail, WHOLE_TRAIL } from '@/lib/register/queries/audit-trail';
import { byLabel } from '@/lib/register/queries/by-label';
import { chosenIds } from '@/lib/register/queries/chosen-ids';
import { colleagues } from '@/lib/register/queries/colleagues';
import { coverMatrix } from '@/lib/register/queries/cover-matrix';
import { coverOfMotors } from '@/lib/register/queries/cover-of-motors';
import { coverOfSets } from '@/lib/register/queries/cover-of-sets';
import { coveredSets } from '@/lib/register/queries/covered-sets';
import { doubts } from '@/lib/register/queries/doubts';
import { doubtsOf } from '@/lib/register/queries/doubts-of';
import { faultById } from '@/lib/register/queries/fault-by-id';
import { faultTimes } from '@/lib/register/queries/fault-times';
import { faults } from '@/lib/register/queries/faults';
import { findSets } from '@/lib/register/queries/find-sets';
import { groupOfSets } from '@/lib/register/queries/group-of-sets';
import { hold } from '@/lib/register/queries/hold';
import { importRows, importRowsAfter, refusedRows } from '@/lib/register/queries/import-rows';
import { importById, imports } from '@/lib/register/queries/imports';
import { jobOfSwap } from '@/lib/register/queries/job-of-swap';
import { labelLines } from '@/lib/register/queries/label-lines';
import { listMotors } from '@/lib/register/queries/list-motors';
import { listSets } from '@/lib/register/queries/list-sets';
import { measurements } from '@/lib/register/queries/measurements';
import { monthReport } from '@/lib/register/queries/month-report';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { motorHistory } from '@/lib/register/queries/motor-history';
import { motorNumber } from '@/lib/register/queries/motor-number';
import { nearestTags } from '@/lib/register/queries/nearest-tags';
import { openReadings } from '@/lib/register/queries/open-readings';
import { overview } from '@/lib/register/queries/overview';
import { ownSessions } from '@/lib/register/queries/own-sessions';
import { ownUnits } from '@/lib/register/queries/own-units';
import { ownViews } from '@/lib/register/queries/own-views';
import { packSince } from '@/lib/register/queries/pack';
import { people } from '@/lib/register/queries/people';
import { personById } from '@/lib/register/queries/person-by-id';
import { personLinks } from '@/lib/register/queries/person-links';
import { pictureById } from '@/lib/register/queries/picture-by-id';
import { picturesOf } from '@/lib/register/queries/pictures-of';
import { areasAfter, shelvesAfter } from '@/lib/register/queries/places-after';
import { previewChanges } from '@/lib/register/queries/preview-changes';
import { recentSets } from '@/lib/register/queries/recent-sets';
import { recordNow } from '@/lib/register/queries/record-now';
import { recordOn } from '@/lib/register/queries/record-on';
import { recordThen } from '@/lib/register/queries/record-then';
import { motorsAfter, motorWhole, setsAfter, setWhole } from '@/lib/register/queries/records-after';
import { lastRepair, repairs } from '@/lib/register/queries/repairs';
import { review } from '@/lib/register/queries/review';
import { reviewCharts } from '@/lib/register/queries/review-charts';
import { reviewMonth } from '@/lib/register/queries/review-month';
import { reviewOfSet } from '@/lib/register/queries/review-of-set';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { setHistory } from '@/lib/register/queries/set-history';
import { setTag } from '@/lib/register/queries/set-tag';
import { setsToHold } from '@/lib/register/queries/sets-to-hold';
import { shelfMotors } from '@/lib/register/queries/shelf-motors';
import { shelves } from '@/lib/register/queries/shelves';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { spareSets } from '@/lib/register/queries/spare-sets';
import { storePlaces } from '@/lib/register/queries/store-places';
import { swapById } from '@/lib/register/queries/swap-by-id';
import { swapOfKey } from '@/lib/register/queries/swap-of-key';
import { tokens } from '@/lib/register/queries/tokens';
import { keepReviewDay } from '@/lib/register/review/keep-review-day';
import { ALL_SETS } from '@/lib/register/set-filter';
import { sumOf } from '@/lib/review/list/grouped';
import { ALL_OPEN } from '@/lib/review/list/review-filter';
import { jpeg } from '../picture/made';
import { checkedFile } from './import';
import { got, settings, smallPlant, someone } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
let stranger: Actor;
let swapId: string;
let faultId: string;
let pictureId: string;
let runId: string;

beforeAll(async () => {
  here = await smallPlant();
  stranger = await someone('administrator');
  const readings = { ...NO_READINGS, rotation: 'wrong' } as const;
  const done = await recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-7', { readings }), null);
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  swapId = done.swapId;
  await reportFault(here.actor, { setId: got(here.sets, 'P-102'), seen: [], says: 'Hums' });
  const reset = await reportFault(here.actor, { setId: got(here.sets, 'P-102'), seen: ['trip'] });
  if (reset.outcome !== 'saved') throw new Error(reset.outcome);
  faultId = reset.faultId;
  await closeFault(here.actor, { faultId, how: 'Reset' });
  const kept = await keepPicture(here.actor, { of: motorHere(), caption: null, bytes: await jpeg() });
  if (kept.outcome !== 'saved') throw new Error(kept.outcome);
  pictureId = kept.pictureId;
  runId = await checkedFile(here.actor, 'motors', 'Plant number;Frame;Volts\nM-91;184T;460\n;184T;460\n');
  await keepView(here.actor, { page: '/sets', name: 'Mine', query: '?q=pump' });
  const link = await invitePerson(asAdministrator(here.actor), {
    name: 'Bo',
    email: 'bo@example.com',
    role: 'planner',
  });
  if (link.outcome !== 'saved') throw new Error(link.outcome);
  const token = { name: 'Historian', scopes: ['read' as const], days: 30 };
  expect((await makeToken(asAdministrator(here.actor), token)).outcome).toBe('saved');
  // A maker's serial number that stands on two motors.
  await db.motor.updateMany({
    where: { siteId: here.actor.siteId, plantNumber: { in: ['M-2', 'M-8'] } },
    data: { maker: 'Quillmoor', serial: 'QU123456' },
  });
  const amps = { ...NOTHING_READ, ampsL1: 5 };
  const measured = { key: randomUUID(), setId: got(here.sets, 'P-102'), at: new Date(), figures: amps, note: null };
  expect(await tellMeasurement(here.actor, measured)).toMatchObject({ outcome: 'saved' });
  await changeOwnUnits(here.actor, 'us');
  await db.session.create({
    data: { id: 'one', token: 'one', userId: here.actor.userId, expiresAt: new Date(Date.now() + 3_600_000) },
  });
});

const motorHere = () => ({ thing: 'motor' as const, id: got(here.motors, 'M-7') });

const codeOf = async (tag: string) => {
  const { code } = await db.pumpSet.findFirstOrThrow({ where: { siteId: here.actor.siteId, tag } });
  return String(code);
};

const NOTHING_READ = {
  ...{ voltsL1L2: null, voltsL2L3: null, voltsL3L1: null, ampsL1: null, ampsL2: null, ampsL3: null },
  ...{ inputKw: null, powerFactor: null, rpm: null, hertz: null },
};
const EVERY_FAULT = { areaId: null, days: 30 };
const keyOfSwap = async () => (await db.swap.findFirstOrThrow({ where: { id: swapId } })).key;

const asAdministrator = (actor: Actor): Actor => ({ ...actor, role: 'administrator' });

const QUERIES: Record<string, { asked: (actor: Actor) => Promise<unknown>; nothing: unknown }> = {
  areas: { asked: areas, nothing: [] },
  'audit-trail': {
    asked: async (actor) =>
      (await auditTrail(actor, WHOLE_TRAIL, { after: null, take: 500 })).entries.filter(
        ({ thing }) => thing.thing === 'motor' || thing.thing === 'set',
      ),
    nothing: [],
  },
  'by-label': { asked: async (actor) => byLabel(actor, await codeOf('P-101')), nothing: null },
  'label-lines': {
    asked: async (actor) => {
      const part = { skip: 0, take: 50 };
      const byName = { by: 'name', tags: ['P-101'], numbers: ['M-7'], codes: [await codeOf('P-102')] } as const;
      const ids = [got(here.sets, 'P-101')];
      return [
        ...(await labelLines(actor, byName, part)).lines,
        ...(await labelLines(actor, { by: 'sets', filter: ALL_SETS, ids }, part)).lines,
        ...(await labelLines(actor, { by: 'motors', filter: ALL_MOTORS, storeId: null, ids: null }, part)).lines,
      ];
    },
    nothing: [],
  },
  colleagues: {
    asked: async (actor) => (await colleagues(actor)).filter(({ userId }) => userId === here.actor.userId),
    nothing: [],
  },
  doubts: {
    asked: (actor) => doubts(actor, { rule: null, today: '2026-11-27' }, { page: 1, perPage: 50 }),
    nothing: { open: [], all: 0, accepted: [], acceptedAll: 0, counts: [], isAll: true },
  },
  'doubts-of': {
    asked: (actor) => doubtsOf(actor, [{ thing: 'motor', id: got(here.motors, 'M-8') }], '2026-11-27'),
    nothing: { open: [], accepted: [] },
  },
  'group-of-sets': {
    asked: async (actor) => (await groupOfSets(actor, { tags: ['P-101'], ids: [got(here.sets, 'P-102')] })).sets,
    nothing: [],
  },
  'sets-to-hold': {
    asked: async (actor) => (await setsToHold(actor, holdAsked({}, null))).sets,
    nothing: [],
  },
  hold: {
    asked: async (actor) => {
      const done = await hold(actor, holdAsked({ checks: 'all', hours: '40' }, null));
      return done.outcome === 'chosen' ? done.answer.lines : [];
    },
    nothing: [],
  },
  'month-report': {
    asked: async (actor) =>
      (await monthReport(actor, { from: new Date('2020-01-01'), to: new Date(Date.now() + 86_400_000) })).allFaults,
    nothing: 0,
  },
  'cover-matrix': {
    asked: (actor) => coverMatrix(actor, ALL_COVER, { rows: 9, columns: 9 }),
    nothing: { rows: [], columns: [], left: { rows: 0, sets: 0, columns: 0, motors: 0 }, sets: 0, motors: 0 },
  },
  'cover-of-motors': {
    asked: (actor) => coverOfMotors(actor, { q: null, state: null }, 'M-7', { page: 1, perPage: 50 }),
    nothing: { lines: [], all: 0, idle: 0, needed: 0, used: null },
  },
  'cover-of-sets': {
    asked: (actor) => coverOfSets(actor, ALL_COVER, { page: 1, perPage: 50 }),
    nothing: { lines: [], all: 0, counts: [], motors: 0, refused: [] },
  },
  'covered-sets': { asked: coveredSets, nothing: { sets: [], isAll: true } },
  repairs: {
    asked: async (actor) =>
      [...(await repairs(actor)).motors, (await lastRepair(actor, got(here.motors, 'M-1'))) ?? []].flat(),
    nothing: [],
  },
  'fault-by-id': { asked: (actor) => faultById(actor, faultId), nothing: null },
  'fault-times': { asked: (actor) => faultTimes(actor, EVERY_FAULT), nothing: [] },
  faults: {
    asked: (actor) => faults(actor, EVERY_FAULT),
    nothing: { open: [], closed: [], allOpen: 0, allClosed: 0 },
  },
  'find-sets': { asked: (actor) => findSets(actor, 'P-101'), nothing: [] },
  'chosen-ids': {
    asked: (actor) => chosenIds(actor, { thing: 'set', filter: ALL_SETS, ids: [got(here.sets, 'P-101')] }),
    nothing: { ids: [], all: 0 },
  },
  imports: {
    asked: async (actor) => [...(await imports(actor)), (await importById(actor, runId)) ?? []].flat(),
    nothing: [],
  },
  'import-rows': {
    asked: async (actor) => [
      ...(await importRows(actor, runId, null, { page: 1, perPage: 50 })).rows,
      ...(await importRowsAfter(actor, runId, null, 0, 50)),
      ...(await refusedRows(actor, runId)),
    ],
    nothing: [],
  },
  'job-of-swap': { asked: (actor) => jobOfSwap(actor, swapId), nothing: null },
  'list-motors': {
    asked: (actor) => listMotors(actor, ALL_MOTORS, { page: 1, perPage: 50 }),
    nothing: { motors: [], all: 0 },
  },
  'list-sets': {
    asked: (actor) => listSets(actor, ALL_SETS, { page: 1, perPage: 50 }),
    nothing: { sets: [], all: 0 },
  },
  measurements: { asked: (actor) => measurements(actor, got(here.sets, 'P-102')), nothing: [] },
  'motor-by-number': { asked: (actor) => motorByNumber(actor, 'M-7'), nothing: null },
  'motor-number': { asked: (actor) => motorNumber(actor, got(here.motors, 'M-7')), nothing: null },
  'motor-history': { asked: (actor) => motorHistory(actor, got(here.motors, 'M-7')), nothing: [] },
  'nearest-tags': { asked: (actor) => nearestTags(actor, 'P-101'), nothing: [] },
  'open-readings': { asked: (actor) => openReadings(actor, got(here.sets, 'P-101')), nothing: null },
  'own-sessions': { asked: ownSessions, nothing: [] },
  'own-units': { asked: ownUnits, nothing: 'metric' },
  'own-views': { asked: (actor) => ownViews(actor, '/sets'), nothing: [] },
  pack: {
    asked: async (actor) => {
      const told = await packSince(actor, { since: null, page: null });
      return [...(told?.sets ?? []), ...(told?.motors ?? []), ...(told?.shelves ?? [])];
    },
    nothing: [],
  },
  'picture-by-id': { asked: (actor) => pictureById(actor, pictureId), nothing: null },
  'pictures-of': { asked: (actor) => picturesOf(actor, motorHere()), nothing: [] },
  'places-after': {
    asked: async (actor) => [...(await areasAfter(actor, null, 50)), ...(await shelvesAfter(actor, null, 50))],
    nothing: [],
  },
  'preview-changes': {
    asked: (actor) => previewChanges(actor, 'motor', [got(here.motors, 'M-7')], { maker: 'Brandal' }),
    nothing: [],
  },
  'record-now': { asked: (actor) => recordNow(actor, 'motor', got(here.motors, 'M-7')), nothing: null },
  'set-tag': { asked: (actor) => setTag(actor, got(here.sets, 'P-101')), nothing: null },
  'store-places': { asked: storePlaces, nothing: [] },
  overview: {
    asked: overview,
    nothing: expect.objectContaining({ sets: 0, setsWithoutMotor: 0, openFaults: 0, swapsInThirtyDays: 0 }),
  },
  people: {
    asked: async (actor) =>
      (await people(asAdministrator(actor))).people.filter(({ userId }) => userId === here.actor.userId),
    nothing: [],
  },
  'person-by-id': { asked: (actor) => personById(asAdministrator(actor), here.actor.userId), nothing: null },
  'person-links': { asked: (actor) => personLinks(asAdministrator(actor)), nothing: [] },
  'record-on': {
    asked: (actor) => recordOn(actor, 'motor', got(here.motors, 'M-7'), new Date()),
    nothing: { outcome: 'unknown' },
  },
  'record-then': {
    asked: (actor) => recordThen(actor, 'set', got(here.sets, 'P-101'), new Date()),
    nothing: null,
  },
  'records-after': {
    asked: async (actor) =>
      [
        ...(await setsAfter(actor, { q: null, after: null, take: 50 })),
        ...(await motorsAfter(actor, { q: null, place: null, after: null, take: 50 })),
        (await setWhole(actor, got(here.sets, 'P-101'))) ?? [],
        (await motorWhole(actor, got(here.motors, 'M-7'))) ?? [],
      ].flat(),
    nothing: [],
  },
  'recent-sets': { asked: recentSets, nothing: [] },
  review: {
    asked: (actor) => review(actor, { filter: ALL_OPEN, today: '2026-11-27' }, { page: 1, perPage: 50 }),
    nothing: { rows: [], sum: sumOf([]), groups: null, sets: 0, empty: 0 },
  },
  'review-of-set': {
    asked: async (actor) => {
      const known = await setByTag(here.actor, 'P-102');
      const read = { ...NOT_MEASURED, volts: [400, 460, 520] as const };
      const by = { settings, read, isOfMotor: true, today: '2026-11-27' };
      return known === null ? [] : reviewOfSet(actor, known, by);
    },
    nothing: [],
  },
  'review-charts': {
    asked: async (actor) => (await reviewCharts(actor)).losses,
    nothing: [],
  },
  'review-month': {
    asked: async (actor) => {
      await keepReviewDay(here.actor.siteId);
      const today = new Date().toISOString().slice(0, 10);
      return (await reviewMonth(actor, { from: '2026-01-01', to: '2100-01-01' }, today)).days;
    },
    nothing: [],
  },
  'set-by-tag': { asked: (actor) => setByTag(actor, 'P-101'), nothing: null },
  'set-history': { asked: (actor) => setHistory(actor, got(here.sets, 'P-101')), nothing: [] },
  'shelf-motors': { asked: shelfMotors, nothing: { offered: [], isAll: true } },
  shelves: { asked: shelves, nothing: [] },
  'site-settings': {
    asked: async (actor) => (await siteSettings(actor)).name,
    nothing: expect.stringMatching(/^Site /),
  },
  'spare-sets': { asked: (actor) => spareSets(actor, got(here.sets, 'P-101')), nothing: [] },
  tokens: {
    asked: async (actor) => (await tokens(asAdministrator(actor))).tokens,
    nothing: [],
  },
  'swap-of-key': { asked: async (actor) => swapOfKey(actor, await keyOfSwap()), nothing: null },
  'swap-by-id': { asked: (actor) => swapById(actor, swapId), nothing: null },
};
const ALL_COVER = { q: null, areaId: null, criticality: null, state: null, sort: 'tag', isDown: false } as const;

/** Steps of other queries, which pass their actor on. */
const STEPS = ['changes-of'];
/** Asked by whoever holds a link, signed in or not (test/auth/links.test.ts). */
const BY_LINK = ['link-by-secret'];

test('S26 every query is asked here', () => {
  const files = fs.readdirSync('lib/register/queries').map((file) => file.replace('.ts', ''));
  expect(files.filter((file) => ![...STEPS, ...BY_LINK].includes(file)).sort()).toEqual(Object.keys(QUERIES).sort());
});

test.each(Object.entries(QUERIES))(
  'S26 %s tells a stranger nothing of this site, and its own people something',
  async (name, { asked, nothing }) => {
    expect(await asked(stranger)).toEqual(nothing);
    if (!['areas', 'site-settings', 'own-units'].includes(name)) expect(await asked(here.actor)).not.toEqual(nothing);
  },
);

test('S26 S27 a stranger changes nothing of this site', async () => {
  const before = await db.auditEntry.count();
  expect(await recordSwap(stranger, here.swap('P-101', 'M-7', 'M-8'), null)).toMatchObject({ outcome: 'refused' });
  expect(await reportFault(stranger, { setId: got(here.sets, 'P-101'), seen: [], says: 'Hums' })).toMatchObject({
    outcome: 'refused',
  });
  expect(await closeFault(stranger, { setId: got(here.sets, 'P-102'), how: 'Reset' })).toMatchObject({
    outcome: 'refused',
  });
  const readings = { ...NO_READINGS, rotation: 'right' } as const;
  expect(await addReadings(stranger, { key: randomUUID(), swapId, readings, takenAt: null })).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'swapId' }],
  });
  expect(await keepPicture(stranger, { of: motorHere(), caption: null, bytes: await jpeg() })).toMatchObject({
    outcome: 'refused',
  });
  expect(await retirePicture(stranger, pictureId)).toMatchObject({ outcome: 'refused' });
  expect(await db.auditEntry.count()).toBe(before);
});
