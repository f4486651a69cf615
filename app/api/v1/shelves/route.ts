import { registerShelfIn } from '@/lib/register/commands/register-place';
import { shelfKnown, shelvesAfter } from '@/lib/register/queries/places-after';
import { askedBy } from '../asked-by';
import { makeSent } from '../make-sent';
import { listShelvesOp, makeShelfOp } from '../operations/places';
import { byNames, partSent } from '../part-sent';

export const GET = (request: Request) =>
  askedBy(request, listShelvesOp.action, (actor) =>
    partSent(request, listShelvesOp, {
      isPlace: byNames(2),
      find: (behind, take) => {
        const [store, shelf] = behind ?? [];
        return shelvesAfter(actor, store === undefined || shelf === undefined ? null : [store, shelf], take);
      },
      keysAt: ({ store, name }) => [store, name],
      told: (shelf) => shelf,
    }),
  );

export const POST = (request: Request) =>
  askedBy(request, makeShelfOp.action, (actor) =>
    makeSent(request, actor, makeShelfOp, 'The shelf cannot be added as it stands.', async (tx, { storeId, name }) => {
      const done = await registerShelfIn(tx, actor, storeId, name);
      return done.outcome === 'refused' ? done : { outcome: 'made', body: await shelfKnown(tx, actor, done.id) };
    }),
  );
