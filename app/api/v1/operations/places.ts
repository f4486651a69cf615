import { z } from 'zod';
import { JSON_TYPE, type Operation } from '../operation';
import { part, partOf } from '../schemas/part';
import { areaAnswer, newArea, newShelf, newStore, shelfAnswer, storeAnswer } from '../schemas/places';

export const listAreasOp = {
  action: 'register.read',
  ...{ method: 'get', path: '/areas', id: 'listAreas', summary: 'The areas, by name' },
  query: z.strictObject(part),
  answers: { 200: { says: 'A part of the list', schema: partOf(areaAnswer) } },
} as const satisfies Operation;

export const makeAreaOp = {
  action: 'set.edit',
  ...{ method: 'post', path: '/areas', id: 'makeArea', summary: 'Adds an area with its surroundings' },
  body: { schema: newArea, types: JSON_TYPE },
  once: 'may',
  answers: { 201: { says: 'It is in the register', schema: areaAnswer } },
} as const satisfies Operation;

export const listStoresOp = {
  action: 'register.read',
  ...{ method: 'get', path: '/stores', id: 'listStores', summary: 'The stores, by name' },
  query: z.strictObject(part),
  answers: { 200: { says: 'A part of the list', schema: partOf(storeAnswer) } },
} as const satisfies Operation;

export const makeStoreOp = {
  action: 'set.edit',
  ...{ method: 'post', path: '/stores', id: 'makeStore', summary: 'Adds a store' },
  body: { schema: newStore, types: JSON_TYPE },
  once: 'may',
  answers: { 201: { says: 'It is in the register', schema: storeAnswer } },
} as const satisfies Operation;

export const listShelvesOp = {
  action: 'register.read',
  ...{ method: 'get', path: '/shelves', id: 'listShelves', summary: 'The shelves of every store' },
  query: z.strictObject(part),
  answers: { 200: { says: 'A part of the list', schema: partOf(shelfAnswer) } },
} as const satisfies Operation;

export const makeShelfOp = {
  action: 'set.edit',
  ...{ method: 'post', path: '/shelves', id: 'makeShelf', summary: 'Adds a shelf to a store' },
  body: { schema: newShelf, types: JSON_TYPE },
  once: 'may',
  answers: { 201: { says: 'It is in the store', schema: shelfAnswer } },
} as const satisfies Operation;
