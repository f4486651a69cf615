import { registerStoreIn } from '@/lib/register/commands/register-place';
import { storeKnown, storesAfter } from '@/lib/register/queries/places-after';
import { askedBy } from '../asked-by';
import { makeSent } from '../make-sent';
import { listStoresOp, makeStoreOp } from '../operations/places';
import { byNames, partSent } from '../part-sent';

export const GET = (request: Request) =>
  askedBy(request, listStoresOp.action, (actor) =>
    partSent(request, listStoresOp, {
      isPlace: byNames(1),
      find: (behind, take) => storesAfter(actor, behind?.[0] ?? null, take),
      keysAt: ({ name }) => [name],
      told: (store) => store,
    }),
  );

export const POST = (request: Request) =>
  askedBy(request, makeStoreOp.action, (actor) =>
    makeSent(request, actor, makeStoreOp, 'The store cannot be added as it stands.', async (tx, { name }) => {
      const done = await registerStoreIn(tx, actor, name);
      return done.outcome === 'refused' ? done : { outcome: 'made', body: await storeKnown(tx, actor, done.id) };
    }),
  );
