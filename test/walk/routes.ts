import type { Role } from '@/lib/auth/may';
import type { Scope } from '@/lib/auth/scopes';

export interface RouteDoor {
  /** "GET audit/export": the method and where it lies under app. */
  route: string;
  at: string;
  may: 'anybody' | readonly Role[];
  /** Any of these lets a token in; of a door open to anybody nothing is asked. */
  scopes?: readonly Scope[];
  /** What is sent, so that a refusal is about who asks and not about what is asked. */
  body?: unknown;
  type?: string;
  /** Of one record: at another site it is answered so. */
  elsewhere?: 403 | 404 | 422;
}

const everyone = ['technician', 'planner', 'reliability', 'administrator'] as const;
const desk = ['planner', 'reliability', 'administrator'] as const;
const read = { scopes: ['read'] } as const;
const write = { scopes: ['write'] } as const;
const judge = { scopes: ['assess', 'write'] } as const;
const JSON_TYPE = 'application/json';
const json = (body: unknown) => ({ body, type: JSON_TYPE });

/** Every route handler, method by method. */
export const ROUTE_DOORS: readonly RouteDoor[] = [
  { route: 'POST api/auth/[...all]', at: '/api/auth/sign-in/email', may: 'anybody', ...json({}) },
  { route: 'GET api/health', at: '/api/health', may: 'anybody' },
  { route: 'GET readyz', at: '/readyz', may: 'anybody' },
  { route: 'POST sign-in/submit', at: '/sign-in/submit', may: 'anybody' },
  { route: 'POST sign-out', at: '/sign-out', may: 'anybody' },
  { route: 'POST theme', at: '/theme', may: 'anybody' },
  { route: 'GET pump/[[...path]]', at: '/pump', may: 'anybody' }, // nothing in it is anybody's
  { route: 'GET api/v1/areas', ...read, at: '/api/v1/areas', may: everyone },
  {
    route: 'POST api/v1/areas',
    ...write,
    at: '/api/v1/areas',
    may: desk,
    ...json({ name: 'Walk' }),
  },
  {
    route: 'POST api/v1/assess',
    ...judge,
    at: '/api/v1/assess',
    may: everyone,
    ...json({ set: { tag: 'X', mounting: 'foot' }, candidates: [] }),
  },
  { route: 'GET api/v1/frames/[frame]', ...read, at: '/api/v1/frames/184T', may: everyone },
  {
    route: 'POST api/v1/imports',
    ...write,
    at: '/api/v1/imports?kind=sets',
    may: desk,
    body: 'Tag,Held by\nW-1,foot\n',
    type: 'text/csv',
  },
  { route: 'GET api/v1/imports/[id]', ...write, at: '/api/v1/imports/{import}', may: desk, elsewhere: 404 },
  { route: 'GET api/v1/imports/[id]/rows', ...write, at: '/api/v1/imports/{import}/rows', may: desk, elsewhere: 404 },
  {
    route: 'POST api/v1/imports/[id]/columns',
    ...write,
    at: '/api/v1/imports/{import}/columns',
    may: desk,
    elsewhere: 404,
    ...json({}),
  },
  {
    route: 'POST api/v1/imports/[id]/steps',
    ...write,
    at: '/api/v1/imports/{import}/steps',
    may: desk,
    elsewhere: 404,
    ...json({ step: 'cancel' }),
  },
  { route: 'GET api/v1/motors', ...read, at: '/api/v1/motors', may: everyone },
  {
    route: 'POST api/v1/motors',
    ...write,
    at: '/api/v1/motors',
    may: desk,
    ...json({ id: 'WALK-M', place: 'on-order' }),
  },
  { route: 'GET api/v1/motors/[number]', ...read, at: '/api/v1/motors/{motor}', may: everyone, elsewhere: 404 },
  {
    route: 'PATCH api/v1/motors/[number]',
    ...write,
    at: '/api/v1/motors/{motor}',
    may: desk,
    elsewhere: 404,
    ...json({ note: 'walked' }),
  },
  { route: 'GET api/v1/openapi.json', ...read, at: '/api/v1/openapi.json', may: everyone },
  { route: 'POST api/v1/plate', ...judge, at: '/api/v1/plate', may: everyone, ...json({ text: '5 HP 1750 RPM' }) },
  { route: 'GET api/v1/purchase', ...judge, at: '/api/v1/purchase?tag={set}', may: everyone, elsewhere: 404 },
  { route: 'GET api/v1/sets', ...read, at: '/api/v1/sets', may: everyone },
  { route: 'POST api/v1/sets', ...write, at: '/api/v1/sets', may: desk, ...json({ tag: 'WALK-S', mounting: 'foot' }) },
  { route: 'GET api/v1/sets/[tag]', ...read, at: '/api/v1/sets/{set}', may: everyone, elsewhere: 404 },
  {
    route: 'PATCH api/v1/sets/[tag]',
    ...write,
    at: '/api/v1/sets/{set}',
    may: desk,
    elsewhere: 404,
    ...json({ note: 'walked' }),
  },
  {
    route: 'GET api/v1/sets/[tag]/findings',
    ...judge,
    at: '/api/v1/sets/{set}/findings',
    may: everyone,
    elsewhere: 404,
  },
  { route: 'GET api/v1/shelves', ...read, at: '/api/v1/shelves', may: everyone },
  {
    route: 'POST api/v1/shelves',
    ...write,
    at: '/api/v1/shelves',
    may: desk,
    elsewhere: 422,
    ...json({ storeId: '{store}', name: 'Walk' }),
  },
  {
    ...{ route: 'POST api/v1/swaps', ...write, at: '/api/v1/swaps', may: everyone, elsewhere: 422 },
    ...json({
      ...{ setId: '{setId}', motorInId: '{motorId}', motorOutId: null, fromSetId: null, outTo: null },
      ...{ why: 'Walk', note: null, workDone: [], checks: [] },
    }),
  },
  { route: 'GET api/v1/stores', ...read, at: '/api/v1/stores', may: everyone },
  { route: 'POST api/v1/stores', ...write, at: '/api/v1/stores', may: desk, ...json({ name: 'Walk' }) },
  { route: 'GET audit/export', ...read, at: '/audit/export', may: desk },
  { route: 'GET cover/export', ...read, at: '/cover/export?of=motors', may: desk },
  { route: 'GET buy/export', ...judge, at: '/buy/export?tag={set}', may: everyone, elsewhere: 404 },
  { route: 'GET exports/[kind]', ...read, at: '/exports/sets', may: desk },
  { route: 'GET faults/export', ...read, at: '/faults/export?days=3650', may: desk },
  { route: 'GET reports/[month]/export', ...read, at: '/reports/now/export', may: desk },
  { route: 'GET review/export', ...read, at: '/review/export?state=all', may: desk },
  { route: 'GET imports/[id]/refused', ...write, at: '/imports/{import}/refused', may: desk, elsewhere: 404 },
  {
    route: 'POST imports/file',
    ...write,
    at: '/imports/file',
    may: desk,
    body: '',
    type: 'multipart/form-data; boundary=x',
  },
  {
    route: 'POST pictures',
    ...write,
    at: '/pictures',
    may: everyone,
    body: '',
    type: 'multipart/form-data; boundary=x',
  },
  {
    ...{ route: 'POST pump/outbox', at: '/pump/outbox', may: everyone, elsewhere: 403 },
    ...json({
      ...{ version: 2, kind: 'swap', key: '{setId}', userId: '{person}', siteId: '{siteId}' },
      body: { setId: '{setId}', motorInId: '{motorId}', motorOutId: null, outTo: null, why: 'Walk' },
    }),
  },
  { route: 'GET pump/pack', at: '/pump/pack', may: everyone }, // of whoever is signed in: no token opens it
  { route: 'GET pictures/[id]', ...read, at: '/pictures/{picture}', may: everyone, elsewhere: 404 },
];
