import { found, type ReadingFinding } from '../reading-finding';

/** Did it turn the way the pump needs? */
export const rotationFinding = (rotation: 'right' | 'wrong'): ReadingFinding => {
  const compared = {
    about: 'rotation',
    have: rotation,
    need: 'right',
    unit: null,
    cite: 'common practice, no source',
  } as const;
  return rotation === 'right'
    ? found('ok', compared, 'It turns the way the pump needs.')
    : found(
        'block',
        compared,
        'Isolate and prove dead, change any two of the three line leads, and check again before the pump is coupled.',
      );
};
