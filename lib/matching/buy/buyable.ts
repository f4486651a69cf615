import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorAskedFor } from './motor-asked-for';
import { ratingsAskedFor } from './ratings-asked-for';

/** Standard ratings that could be bought for a set, each as the motor a purchase would ask for. */
export const buyable = (set: PumpSet): Motor[] =>
  ratingsAskedFor(set).map(({ system, rating }) => motorAskedFor(set, system, rating));
