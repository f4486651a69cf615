/** npm run -s frame -- FRAME [MOUNTING] [--poles N] [--system NEMA|IEC]: the mounting of a frame as JSON. */
import { parseArgs } from 'node:util';
import type { Problem } from '../lib/plant/reading';
import { type FrameAnswer, frameAnswer } from '../lib/standards/frame-answer';

const answer = answerTo(process.argv.slice(2));
if (Array.isArray(answer)) {
  for (const { path, value, says } of answer) console.error(`${path}: ${value === null ? '' : `"${value}" `}${says}`);
  process.exitCode = 2;
} else console.log(JSON.stringify(answer, null, 2));

function answerTo(args: string[]): FrameAnswer | Problem[] {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    return [{ path: 'options', value: null, says: error instanceof Error ? error.message : String(error) }];
  }
  const { positionals, values } = parsed;
  const [frame, mounting = null, ...others] = positionals;
  const problems: Problem[] = others.map((value) => ({ path: 'options', value, says: 'is one word too many' }));
  const poles = values.poles === undefined ? null : Number(values.poles);
  if (poles !== null && !Number.isInteger(poles))
    problems.push({ path: 'poles', value: values.poles ?? null, says: 'must be an even number from 2 up' });
  const system = values.system?.toUpperCase() ?? null;
  if (system !== null && system !== 'NEMA' && system !== 'IEC')
    return [...problems, { path: 'system', value: values.system ?? null, says: 'must be NEMA or IEC' }];
  if (frame === undefined)
    return [...problems, { path: 'frame', value: null, says: 'write a frame such as 184TC or 112M' }];
  if (problems.length > 0) return problems;
  const read = frameAnswer(frame, { mounting, poles, system });
  return read.ok ? read.value : read.problems;
}

function parse(args: string[]) {
  return parseArgs({
    args,
    allowPositionals: true,
    options: { poles: { type: 'string' }, system: { type: 'string' } },
  });
}
