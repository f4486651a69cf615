// npm run -s assess -- FILE.json (or - for standard input): judges and orders the candidates of one set.
import { assess } from '../lib/matching/assess';
import { defaultSettings } from '../lib/matching/default-settings';
import { assessCase } from '../lib/plant/assess-case';
import { readJson } from '../lib/plant/read-json';
import { answer, textGiven } from './given';

const given = await textGiven('assess FILE.json (or - for standard input)');
const asked = given.ok ? readJson(assessCase, given.value) : given;
answer(asked.ok ? { ok: true, value: assess(asked.value, defaultSettings) } : asked);
