// npm run -s plate -- FILE.txt (or - for standard input): the text of a nameplate as a motor, as far as it can be read.
import { readPlate } from '../lib/nameplate/read-plate';
import { answer, textGiven } from './given';

const MOST_BYTES = 64 * 1024;
const given = await textGiven('plate FILE.txt (or - for standard input)');
answer(given.ok ? refusedOrRead(given.value) : given);

function refusedOrRead(text: string) {
  if (text.replace(/^\uFEFF/, '').trim() === '')
    return {
      ok: false as const,
      problems: [{ path: '(whole)', value: null, says: 'is empty: must be the text of a nameplate' }],
    };
  if (Buffer.byteLength(text) > MOST_BYTES)
    return {
      ok: false as const,
      problems: [{ path: '(whole)', value: null, says: 'is larger than 64 kB: no nameplate is' }],
    };
  return { ok: true as const, value: readPlate(text) };
}
