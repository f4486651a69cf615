import type { Motor } from '@/lib/plant/motor';
import { buildsOf } from './build';
import type { ListedPrice } from './price-list';

/** What one motor to buy is taken to cost, and which of the two told it. */
export type Priced = { amount: number; by: 'rule' } | { amount: number; by: 'list'; from: ListedPrice };

/** What a person told of prices: a list, and so much for each motor and for each kW of it. Null: not told. */
export interface ToldPrices {
  list: readonly ListedPrice[];
  each: number | null;
  perKw: number | null;
}

/**
 * The price of a motor to buy: of the lines that name it the one that tells most of it, of equals the upper one; where no
 * line does, by the rule. Null: neither tells it.
 */
export function priceOf(motor: Motor, { list, each, perKw }: ToldPrices): Priced | null {
  const lines = list.filter((line) => isOf(line, motor));
  const [from] = lines.sort((a, b) => toldBy(b) - toldBy(a) || a.line - b.line);
  if (from !== undefined) return { amount: from.price, by: 'list', from };
  const kw = motor.ratings[0]?.kw ?? null;
  return each === null || perKw === null || kw === null ? null : { amount: each + perKw * kw, by: 'rule' };
}

const toldBy = ({ poles, frame }: ListedPrice) => (poles === null ? 0 : 1) + (frame === null ? 0 : 1);

/** Powers as they are written: "0.33 hp" is a third. Standard ratings lie far further apart. */
const WRITTEN_SHORT = 0.011;

function isOf({ power, poles, frame, builds }: ListedPrice, motor: Motor): boolean {
  const [row] = motor.ratings;
  if (row === undefined) return false;
  const have = 'hp' in power ? row.hp : row.hp === null ? row.kw : null;
  const asked = 'hp' in power ? power.hp : power.kw;
  if (have === null || Math.abs(have / asked - 1) > WRITTEN_SHORT) return false;
  if (poles !== null && motor.poles !== poles) return false;
  if (frame !== null && motor.frame?.toUpperCase() !== frame) return false;
  // A washdown motor costs more than a plain one: a line of the one says nothing of the other.
  return buildsOf(motor).join() === builds.join();
}
