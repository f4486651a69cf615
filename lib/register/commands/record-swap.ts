import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { Prisma } from '@/lib/db/generated/client';
import { readingFindings } from '@/lib/job/reading-findings';
import type { Result } from '@/lib/matching/assess';
import type { Finding } from '@/lib/matching/finding';
import type { Problem } from '@/lib/plant/reading';
import { predictedFor } from '../predicted-for';
import { closeStep } from './close-step';
import { type LockedMotor, lockSwap } from './lock-swap';
import { moveStep } from './move-step';
import { openRepairStep } from './repair-step';
import { type SwapBefore, type SwapVerdict, sumOf, swapBeforeIn } from './swap-before';
import type { SwapRequest } from './swap-request';
import { type Taken, whoWasFirst } from './who-was-first';

/** How the candidate was judged, kept with the swap as it stood. */
export interface Judgement {
  verdict: SwapVerdict;
  hours: number | null;
  findings: readonly Finding[];
  operatingPoint: Result['operatingPoint'] | null;
}

export type SwapOutcome = SwapBefore | Taken | { outcome: 'refused'; problems: Problem[] };

/**
 * Records that one motor took another's place: both move, the swap is kept with its judgement, and the audit is
 * written, in one transaction. Of two that take the same motor or fill the same set, one is saved and the other told
 * who was first. `judgement` null: put in without one.
 */
export async function recordSwap(
  actor: Actor,
  request: SwapRequest,
  judgement: Judgement | null,
): Promise<SwapOutcome> {
  must(actor, 'swap.record');
  const problem = contradiction(request);
  if (problem) return { outcome: 'refused', problems: [problem] };
  return db.$transaction(async (tx) => {
    const before = await swapBeforeIn(tx, actor, request);
    if (before) return before;
    const places = await lockSwap(tx, actor, request);
    if ('path' in places) return { outcome: 'refused', problems: [places] };
    const { set, motorIn, motorOut } = places;
    if (set.motorId !== request.motorOutId) return whoWasFirst(tx, actor, 'set', set.id, request.motorOutId);
    const isThere =
      request.fromSetId === null
        ? motorIn.place === 'on-shelf' || motorIn.place === 'on-order'
        : motorIn.set_id === request.fromSetId;
    if (!isThere) return whoWasFirst(tx, actor, 'motor', motorIn.id);

    if (motorOut) await moveOut(tx, actor, motorOut, request);
    const told = withReadings(request);
    await moveIn(tx, actor, motorIn, told);
    await noteShims(tx, actor, told);
    const swapId = await keep(tx, actor, told, judgement, motorIn, motorOut, sumOf(request));
    return { outcome: 'saved', swapId, verdict: judgement?.verdict ?? null, isRepeat: false };
  });
}

function contradiction(request: SwapRequest): Problem | null {
  const { motorInId, motorOutId, outTo, fromSetId, setId } = request;
  if (motorInId === motorOutId) return { path: 'motorInId', value: motorInId, says: 'is the motor that comes out' };
  if ((motorOutId === null) !== (outTo === null))
    return { path: 'outTo', value: outTo?.place ?? null, says: 'must say where the motor that came out went' };
  const twice = readTwice(request);
  if (twice !== null) return twice;
  if (fromSetId === setId) return { path: 'fromSetId', value: fromSetId, says: 'is the set itself' };
  return null;
}

/** Insulation and overload may be told beside the readings as well as in them, but not otherwise. */
function readTwice({ readings, ...request }: SwapRequest): Problem | null {
  for (const one of ['insulationMohm', 'overloadA'] as const) {
    const [beside, within] = [request[one], readings === null ? null : readings[one]];
    if (beside !== null && within !== null && beside !== within)
      return { path: `readings.${one}`, value: String(within), says: `is told twice, and ${one} is ${beside}` };
  }
  return null;
}

/** The request with what its readings tell told beside them too. */
function withReadings(request: SwapRequest): SwapRequest {
  const { readings, insulationMohm, overloadA } = request;
  if (readings === null) return request;
  return {
    ...request,
    insulationMohm: insulationMohm ?? readings.insulationMohm,
    overloadA: overloadA ?? readings.overloadA,
  };
}

async function moveOut(tx: Tx, actor: Actor, motor: LockedMotor, { outTo }: SwapRequest) {
  if (outTo === null) return;
  const { place } = outTo;
  const shelfId = place === 'on-shelf' ? outTo.shelfId : null;
  await moveStep(tx, actor, motor, {
    place,
    setId: null,
    shelfId,
    shelvedOn: place === 'on-shelf' ? new Date() : null,
  });
}

async function moveIn(tx: Tx, actor: Actor, motor: LockedMotor, { setId, insulationMohm }: SwapRequest) {
  const tested = insulationMohm === null ? {} : { insulationMohm, testedOn: new Date() };
  await moveStep(tx, actor, motor, { place: 'in-set', setId, shelfId: null, shelvedOn: null, ...tested });
}

const SHIMS = 'base.shimsPresentMm';

async function noteShims(tx: Tx, actor: Actor, { setId, shimsPresentMm }: SwapRequest) {
  if (shimsPresentMm === null) return;
  const [changed] = await tx.$queryRaw<{ before: number | null }[]>`
    UPDATE pump_set AS s SET base = s.base || jsonb_build_object('shimsPresentMm', ${shimsPresentMm}::float8)
    FROM pump_set AS old
    WHERE s.site_id = ${actor.siteId}::uuid AND s.id = ${setId}::uuid AND old.site_id = s.site_id AND old.id = s.id
    RETURNING (old.base ->> 'shimsPresentMm')::float8 AS before`;
  await record(tx, actor, {
    action: 'set.shim',
    thing: 'set',
    thingId: setId,
    before: { [SHIMS]: changed ? changed.before : null },
    after: { [SHIMS]: shimsPresentMm },
  });
}

async function keep(
  tx: Tx,
  actor: Actor,
  request: SwapRequest,
  judgement: Judgement | null,
  motorIn: LockedMotor,
  motorOut: LockedMotor | null,
  bodySha256: string,
) {
  const { siteId, userId } = actor;
  const { outTo, shimsPresentMm: _noted, doneAt, readings, ...told } = request;
  const said = readings === null ? [] : readingFindings(readings, await predictedFor(tx, actor, request));
  const { id } = await tx.swap.create({
    data: {
      ...told,
      siteId,
      byId: userId,
      outTo: outTo?.place ?? null,
      doneAt,
      verdict: judgement?.verdict ?? null,
      hours: judgement?.hours ?? null,
      findings: json(judgement === null ? [] : judgement.findings),
      operatingPoint: judgement?.operatingPoint ? json(judgement.operatingPoint) : Prisma.DbNull,
      readings: readings === null ? {} : json(readings),
      readingFindings: json(said),
      bodySha256,
    },
    select: { id: true },
  });
  await closeStep(tx, actor, { setId: request.setId, faultId: null }, { by: 'swap', swapId: id });
  if (motorOut && (outTo?.place === 'at-repair' || outTo?.place === 'scrapped'))
    await openRepairStep(tx, actor, {
      ...{ motorId: motorOut.id, swapId: id, reason: request.why },
      isScrapped: outTo.place === 'scrapped',
    });
  await record(tx, actor, {
    action: 'swap.record',
    thing: 'set',
    thingId: request.setId,
    before: { motor: motorOut?.plant_number ?? null },
    after: { motor: motorIn.plant_number, swapId: id, verdict: judgement?.verdict ?? null },
  });
  return id;
}

/** Plain data as the column takes it. */
const json = (value: object) => JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;
