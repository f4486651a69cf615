// npm run -s plate -- FILE.txt (or - for standard input): the text of a nameplate as a motor, as far as it can be read.
import { readPlate } from '../lib/nameplate/read-plate';
import type { Reading } from '../lib/plant/reading';
import { answer, textGiven } from './given';

const given = await textGiven('plate FILE.txt (or - for standard input)');
answer(given.ok ? plateOf(given.value) : given);

/** A text that is no plate at all is bad input; what a plate leaves open is part of the answer. */
function plateOf(text: string): Reading<unknown> {
  const plate = readPlate(text);
  const isRefused = plate.problems.some(({ path }) => path === '(whole)');
  return isRefused ? { ok: false, problems: plate.problems } : { ok: true, value: plate };
}
