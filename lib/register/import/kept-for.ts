import type { Tx } from '@/lib/db/client';
import type { State } from '@/lib/fields/state';
import type { Draft } from '@/lib/import/draft';
import type { Existing, KeptMotor, KeptSet } from '@/lib/import/kept';
import { plain } from '@/lib/import/same-value';
import { motorPartsOf, motorsStanding } from '../things/motor-thing';
import { setPartsOf, setsStanding } from '../things/set-thing';

/** A record with what it is known by; `isRetired`: to the planner it is not there, but its number is taken. */
export interface Known<T> {
  id: string;
  state: State;
  version: number;
  isRetired: boolean;
  kept: T;
}

/** What the register holds for a row. */
export interface KeptFor {
  set: Known<KeptSet> | null;
  motor: Known<KeptMotor> | null;
}

/** What the register holds for each of some rows. A tag is the same tag in small letters. */
export async function keptFor(tx: Tx, siteId: string, drafts: readonly Draft[]): Promise<KeptFor[]> {
  const tags = drafts.flatMap(({ key, set }) => (set === null || key === null ? [] : [key]));
  const numbers = drafts.flatMap((draft) => numberOf(draft) ?? []);
  const sets = await keptSets(tx, siteId, tags);
  const motors = await keptMotors(
    tx,
    siteId,
    numbers,
    [...sets.values()].map(({ id }) => id),
  );
  return drafts.map((draft) => {
    const set = draft.set === null || draft.key === null ? null : at(sets, draft.key);
    const number = numberOf(draft);
    const motor = number === null ? inSet(motors, set) : at(motors, number);
    return { set, motor };
  });
}

/** Sets with the motors in them, as an export tells them, in the order of the tags. */
export async function keptSetsNamed(tx: Tx, siteId: string, tags: readonly string[]): Promise<Existing[]> {
  const sets = await keptSets(tx, siteId, tags);
  const motors = await keptMotors(
    tx,
    siteId,
    [],
    [...sets.values()].map(({ id }) => id),
  );
  return tags.flatMap((tag) => {
    const set = at(sets, tag);
    return set === null ? [] : [{ set: set.kept, motor: inSet(motors, set)?.kept ?? null }];
  });
}

/** Motors as an export tells them, in the order of the numbers. */
export async function keptMotorsNamed(tx: Tx, siteId: string, numbers: readonly string[]): Promise<Existing[]> {
  const motors = await keptMotors(tx, siteId, numbers, []);
  return numbers.flatMap((number) => {
    const motor = at(motors, number);
    return motor === null ? [] : [{ set: null, motor: motor.kept }];
  });
}

/** The same as the planner takes it: what is retired is not there. */
export const existingOf = ({ set, motor }: KeptFor): Existing => ({
  set: set === null || set.isRetired ? null : set.kept,
  motor: motor === null || motor.isRetired ? null : motor.kept,
});

const numberOf = ({ motor, set, key }: Draft): string | null => motor?.motor.id ?? (set === null ? key : null);

function inSet(motors: Map<string, Known<KeptMotor>>, set: Known<KeptSet> | null): Known<KeptMotor> | null {
  return set?.kept.holds == null ? null : at(motors, set.kept.holds);
}

/** Sets by their tags in small letters, whatever the letters in which they are asked for. */
async function keptSets(tx: Tx, siteId: string, tags: readonly string[]): Promise<Map<string, Known<KeptSet>>> {
  const rows = await tx.$queryRaw<{ id: string; area: string | null; holds: string | null }[]>`
    SELECT s.id::text, a.name AS area, m.plant_number AS holds FROM pump_set AS s
    LEFT JOIN area AS a ON a.site_id = s.site_id AND a.id = s.area_id
    LEFT JOIN motor AS m ON m.site_id = s.site_id AND m.set_id = s.id
    WHERE s.site_id = ${siteId}::uuid AND lower(s.tag) = ANY (${lower(tags)}::text[])`;
  const standing = await setsStanding(
    tx,
    siteId,
    rows.map(({ id }) => id),
  );
  return byKey(
    rows.flatMap(({ id, area, holds }) => {
      const stands = standing.get(id);
      if (stands === undefined) return [];
      const { state } = stands;
      const { input, about } = setPartsOf(state);
      const { areaId: _a, pump, ...rest } = about;
      const kept: KeptSet = { set: input, ...rest, area, holds, pump: pump && keptPump(pump) };
      return [[String(state.tag), { id, ...stands, isRetired: state.retiredAt !== undefined, kept }] as const];
    }),
  );
}

const keptPump = ({
  description,
  kind,
  maker,
  serial,
}: NonNullable<ReturnType<typeof setPartsOf>['about']['pump']>) => ({
  description,
  kind: kind ?? null,
  maker: maker ?? null,
  serial: serial ?? null,
});

/** Motors by their plant numbers in small letters: those asked for and those in the sets. */
async function keptMotors(
  tx: Tx,
  siteId: string,
  numbers: readonly string[],
  setIds: readonly string[],
): Promise<Map<string, Known<KeptMotor>>> {
  const rows = await tx.$queryRaw<{ id: string; tag: string | null; shelf: string | null; store: string | null }[]>`
    SELECT m.id::text, s.tag, h.name AS shelf, t.name AS store FROM motor AS m
    LEFT JOIN pump_set AS s ON s.site_id = m.site_id AND s.id = m.set_id
    LEFT JOIN shelf AS h ON h.site_id = m.site_id AND h.id = m.shelf_id
    LEFT JOIN store AS t ON t.site_id = h.site_id AND t.id = h.store_id
    WHERE m.site_id = ${siteId}::uuid
      AND (lower(m.plant_number) = ANY (${lower(numbers)}::text[]) OR m.set_id = ANY (${[...setIds]}::uuid[]))`;
  const standing = await motorsStanding(
    tx,
    siteId,
    rows.map(({ id }) => id),
  );
  return byKey(
    rows.flatMap(({ id, tag, shelf, store }) => {
      const stands = standing.get(id);
      if (stands === undefined) return [];
      const { state } = stands;
      const { input, at, about } = motorPartsOf(state);
      const { maker, serial, condition, rewinds, note, unread } = about;
      const kept: KeptMotor = {
        ...{ motor: input, place: at.place, setTag: tag, store, shelf },
        ...{ maker: maker ?? null, serial: serial ?? null, condition: condition ?? null, rewinds: rewinds ?? null },
        ...{ note: note ?? null, unread: unread ?? null },
      };
      return [[String(state.id), { id, ...stands, isRetired: state.retiredAt !== undefined, kept }] as const];
    }),
  );
}

const lower = (names: readonly string[]) => [...new Set(names.flatMap((name) => [name.toLowerCase(), plain(name)]))];

/** By what they are called in small letters, and sign for sign where two differ by their letters only. */
const byKey = <T>(known: readonly (readonly [string, T])[]) =>
  new Map([...known.map(([key, one]) => [plain(key), one] as const), ...known]);
const at = <T>(known: ReadonlyMap<string, T>, key: string): T | null => known.get(key) ?? known.get(plain(key)) ?? null;
