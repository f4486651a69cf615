import { z } from 'zod';
import { set } from '@/lib/plant/set';
import { text } from '@/lib/plant/told';
import { asSent } from './as-sent';

export const areaAnswer = z
  .strictObject({ id: z.uuid(), name: z.string(), surroundings: asSent('Surroundings', set.shape.surroundings) })
  .meta({ id: 'Area' });

/** A part of the plant. Its surroundings hold for the sets in it that tell none of their own. */
export const newArea = z.strictObject({ name: text(80), surroundings: set.shape.surroundings });

export const newStore = z.strictObject({ name: text(80) });

export const storeAnswer = z.strictObject({ id: z.uuid(), name: z.string() }).meta({ id: 'Store' });

export const shelfAnswer = z
  .strictObject({ id: z.uuid(), name: z.string(), storeId: z.uuid(), store: z.string() })
  .meta({ id: 'Shelf' });

export const newShelf = z.strictObject({ storeId: z.uuid(), name: text(80) });
