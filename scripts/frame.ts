/** npm run -s frame -- FRAME [MOUNTING] [--poles N] [--system NEMA|IEC]: the mounting of a frame as JSON. */
import { parseArgs } from 'node:util';
import type { Problem, Reading } from '../lib/plant/reading';
import { type FrameAnswer, frameAnswer } from '../lib/standards/frame-answer';

const answer = answerTo(process.argv.slice(2));
if (answer.ok) console.log(JSON.stringify(answer.value, null, 2));
else {
  for (const { path, value, says } of answer.problems)
    console.error([`${path}:`, ...(value === null ? [] : [shown(value)]), says].join(' '));
  process.exitCode = 2;
}

function answerTo(args: string[]): Reading<FrameAnswer> {
  // Not strict: what is wrong is told in our own words, all of it at once.
  const { positionals, values } = parseArgs({
    args,
    strict: false,
    options: { poles: { type: 'string' }, system: { type: 'string' } },
  });
  const [frame, mounting = null, ...others] = positionals;
  const problems: Problem[] = [];
  for (const [name, value] of Object.entries(values)) {
    if (name !== 'poles' && name !== 'system')
      problems.push({
        path: `--${name}`,
        value: null,
        says: 'is not an option known here: there is --poles, --system',
      });
    else if (typeof value !== 'string') problems.push({ path: name, value: null, says: `is missing after --${name}` });
  }
  // The word after an option not known here may be its value.
  if (problems.length === 0)
    problems.push(...others.map((value): Problem => ({ path: 'options', value, says: 'is one word too many' })));
  const poles = typeof values.poles === 'string' ? values.poles : null;
  if (poles !== null && !/^\d{1,2}$/.test(poles))
    problems.push({ path: 'poles', value: poles, says: 'must be an even number from 2 up' });
  const system = typeof values.system === 'string' ? values.system.toUpperCase() : null;
  if (system !== null && system !== 'NEMA' && system !== 'IEC')
    problems.push({ path: 'system', value: system, says: 'must be NEMA or IEC' });
  if (frame === undefined)
    problems.push({ path: 'frame', value: null, says: 'is missing: write a frame such as 184TC or 112M' });
  if (frame === undefined || problems.some(({ path }) => path === 'system')) return { ok: false, problems };
  const read = frameAnswer(frame, {
    mounting,
    poles: poles === null || problems.some(({ path }) => path === 'poles') ? null : Number(poles),
    system: system === 'NEMA' || system === 'IEC' ? system : null,
  });
  if (problems.length > 0) return { ok: false, problems: [...problems, ...(read.ok ? [] : read.problems)] };
  return read;
}

/** On one line whatever was typed. */
function shown(value: string): string {
  const quoted = JSON.stringify(value);
  return quoted.length > 80 ? `${quoted.slice(0, 76)}..."` : quoted;
}
