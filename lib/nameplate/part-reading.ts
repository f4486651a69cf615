import type { Problem } from '@/lib/plant/reading';
import type { ReadingOfText } from '@/lib/units/reading-of-text';
import type { PlateMotor } from './plate-reading';

/** What one thing stamped says about the motor, or why it says nothing. */
export type PartReading = ReadingOfText<PlateMotor>;

export const partOf = (value: PlateMotor): PartReading => ({ ok: true, value, doubts: [] });

export const problemAt = (path: string, value: string, says: string): PartReading => ({
  ok: false,
  problems: [{ path, value, says }],
});

/** The problems of a reader that does not know where its text goes. */
export const problemsAt = (path: string, problems: readonly Problem[]): { ok: false; problems: Problem[] } => ({
  ok: false,
  problems: problems.map((one) => ({ ...one, path })),
});
