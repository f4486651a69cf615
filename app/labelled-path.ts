import type { Labelled } from '@/lib/register/queries/by-label';
import { motorPath, setPath } from './paths';

/** The page of what carries a label. */
export const labelledPath = (found: Labelled): string =>
  found.thing === 'set' ? setPath(found.tag) : motorPath(found.number);
