import { registerAreaIn } from '@/lib/register/commands/register-place';
import { areaKnown, areasAfter } from '@/lib/register/queries/places-after';
import { askedBy } from '../asked-by';
import { makeSent } from '../make-sent';
import { listAreasOp, makeAreaOp } from '../operations/places';
import { byNames, partSent } from '../part-sent';
import { bareText } from '../record-of';

export const GET = (request: Request) =>
  askedBy(request, listAreasOp.action, (actor) =>
    partSent(request, listAreasOp, {
      isPlace: byNames(1),
      find: (behind, take) => areasAfter(actor, behind?.[0] ?? null, take),
      keysAt: ({ name }) => [name],
      told: (area) => area,
    }),
  );

export const POST = (request: Request) =>
  askedBy(request, makeAreaOp.action, (actor) =>
    makeSent(request, actor, makeAreaOp, 'The area cannot be added as it stands.', async (tx, _, sent) => {
      const done = await registerAreaIn(tx, actor, bareText(sent));
      return done.outcome === 'refused' ? done : { outcome: 'made', body: await areaKnown(tx, actor, done.id) };
    }),
  );
