import type { Tx } from '@/lib/db/client';
import { objectOf, type State, stateOf } from '@/lib/fields/state';
import { type MotorInput, motor as schema } from '@/lib/plant/motor';
import { type Problem, read } from '@/lib/plant/reading';
import { PLACES } from '@/lib/plant/whereabouts';
import { type AboutMotor, type MotorPlace, motorColumns, plateColumns, ratingColumns } from '../motor-columns';
import { day } from '../motor-row';
import { aboutProblems } from './about-problems';
import { retiredOf } from './place-things';
import type { Stands, Thing } from './thing';

/** A motor with its plate and its ratings, as one record. Its plant number is `id`, as in the contract. */
export const motorThing: Thing = {
  standing: motorsStanding,

  async locked(tx, siteId, ids) {
    await tx.$queryRaw`
      SELECT id FROM motor WHERE site_id = ${siteId}::uuid AND id = ANY (${[...ids]}::uuid[])
      ORDER BY id FOR NO KEY UPDATE`;
    return motorsStanding(tx, siteId, ids);
  },

  async problems(tx, siteId, id, state) {
    const { input, about } = motorPartsOf(state);
    const told = read(schema, input);
    const plantNumber = told.ok ? told.value.id : String(state.id ?? '');
    const others = await tx.motor.count({ where: { siteId, plantNumber, id: { not: id } } });
    return [
      ...(told.ok ? [] : told.problems),
      ...aboutProblems(about, MOTOR_TEXTS),
      ...rewindProblems(state),
      ...(others > 0 ? [{ path: 'id', value: plantNumber, says: 'is already a motor of this site' }] : []),
      ...(await placeProblems(tx, siteId, id, state)),
    ];
  },

  async write(tx, siteId, id, state) {
    const { input, at, about } = motorPartsOf(state);
    const whole = { motor: schema.parse(input), at, ...about };
    const plate = plateColumns(whole);
    await tx.motor.update({
      where: { siteId_id: { siteId, id } },
      data: { ...motorColumns(whole), retiredAt: retiredOf(state), changedAt: new Date() },
    });
    await tx.nameplate.upsert({
      where: { siteId_motorId: { siteId, motorId: id } },
      create: { siteId, motorId: id, ...plate },
      update: plate,
    });
    await tx.rating.deleteMany({ where: { siteId, motorId: id } });
    await tx.rating.createMany({ data: ratingColumns(whole.motor).map((row) => ({ siteId, motorId: id, ...row })) });
  },
};

/** Motors as they stand, without a lock. */
export async function motorsStanding(tx: Tx, siteId: string, ids: readonly string[]): Promise<Map<string, Stands>> {
  const rows = await tx.motor.findMany({
    where: { siteId, id: { in: [...ids] } },
    include: { nameplate: { include: { ratings: { orderBy: { line: 'asc' } } } } },
  });
  return new Map(
    rows.map(({ id, version, nameplate, ...row }) => {
      const { plantNumber, maker, serial, condition, rewinds, note, place, setId, shelfId, measured, retiredAt } = row;
      const spare = { shelvedOn: day(row.shelvedOn), testedOn: day(row.testedOn), insulationMohm: row.insulationMohm };
      const { siteId: _s, motorId: _m, brakeTorqueNm, brakeVolts, ratings, ...plate } = nameplate ?? NO_PLATE;
      const state = stateOf({
        ...{
          id: plantNumber,
          maker,
          serial,
          condition,
          rewinds,
          note,
          place,
          setId,
          shelfId,
          measured,
          retiredAt,
          spare,
        },
        ...plate,
        brake: { torqueNm: brakeTorqueNm, volts: brakeVolts },
        ratings: Object.fromEntries(
          ratings.map(({ siteId: _s, motorId: _m, line, ...rating }) => [String(line - 1), rating]),
        ),
      });
      return [id, { version, state }];
    }),
  );
}

const NO_PLATE = { siteId: null, motorId: null, brakeTorqueNm: null, brakeVolts: null, ratings: [] };

/** What of a state is the contract's, where the motor is, and what the register keeps beside. */
export function motorPartsOf(state: State): { input: MotorInput; at: MotorPlace; about: AboutMotor } {
  const {
    maker,
    serial,
    condition,
    rewinds,
    note,
    unread,
    place,
    setId,
    shelfId,
    retiredAt: _r,
    ...input
  } = objectOf(state);
  return {
    input: input as MotorInput,
    at: { place, ...(setId !== undefined && { setId }), ...(shelfId !== undefined && { shelfId }) } as MotorPlace,
    about: { maker, serial, condition, rewinds, note, unread } as AboutMotor,
  };
}

/** The longest that each text beside the contract may be. */
export const MOTOR_TEXTS = { maker: 80, serial: 60, condition: 200, note: 2_000, unread: 4_000 };

function rewindProblems({ rewinds }: State): Problem[] {
  if (rewinds === undefined || (Number.isInteger(rewinds) && Number(rewinds) >= 0 && Number(rewinds) <= 50)) return [];
  return [{ path: 'rewinds', value: String(rewinds), says: 'must be a whole number from 0 to 50' }];
}

/** A motor is in one place, and a set holds one motor. */
async function placeProblems(tx: Tx, siteId: string, id: string, state: State): Promise<Problem[]> {
  const { place, setId, shelfId } = state;
  const told = (value: unknown) => (value === undefined ? null : String(value));
  if (!PLACES.some((known) => known === place))
    return [{ path: 'place', value: told(place), says: `must be one of ${PLACES.join(', ')}` }];
  if ((place === 'in-set') !== (setId !== undefined))
    return [{ path: 'setId', value: told(setId), says: 'is told for a motor in a set, and only then' }];
  if ((place === 'on-shelf') !== (shelfId !== undefined))
    return [{ path: 'shelfId', value: told(shelfId), says: 'is told for a motor on a shelf, and only then' }];
  if (retiredOf(state) !== null && place !== 'scrapped')
    return [{ path: 'retiredAt', value: null, says: 'cannot be: only a scrapped motor is retired' }];
  if (
    shelfId !== undefined &&
    (await tx.shelf.count({ where: { siteId, id: String(shelfId), retiredAt: null } })) === 0
  )
    return [{ path: 'shelfId', value: told(shelfId), says: 'is not a shelf of this site' }];
  if (setId === undefined) return [];
  // Locked, so that nobody else puts a motor into it meanwhile.
  const [set] = await tx.$queryRaw<{ tag: string }[]>`
    SELECT tag FROM pump_set WHERE site_id = ${siteId}::uuid AND id = ${String(setId)}::uuid AND retired_at IS NULL
    FOR NO KEY UPDATE`;
  if (!set) return [{ path: 'setId', value: told(setId), says: 'is not a set of this site' }];
  const other = await tx.motor.findFirst({
    where: { siteId, setId: String(setId), id: { not: id } },
    select: { plantNumber: true },
  });
  return other === null
    ? []
    : [{ path: 'setId', value: set.tag, says: `holds ${other.plantNumber}: move that first, or record a swap` }];
}
