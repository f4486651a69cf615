import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import vm from 'node:vm';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { assess } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { assessCase } from '@/lib/plant/assess-case';
import { readJson } from '@/lib/plant/read-json';
import { iec, nema } from '../cases/whole-case';
import { printed } from '../contract/example';

const root = path.resolve(import.meta.dirname, '../..');

/** What every browser has and the language alone does not. */
const BROWSER = ['URL', 'TextEncoder', 'TextDecoder', 'atob', 'btoa', 'structuredClone'] as const;

/** Loads the engine from its source into a world that has the language, a browser's few names, and nothing of Node. */
function engineInABrowser(): (text: string) => string {
  const world = vm.createContext(Object.fromEntries(BROWSER.map((name) => [name, globalThis[name]])));
  const loaded = new Map<string, { exports: Record<string, unknown> }>();

  const load = (file: string): Record<string, unknown> => {
    const known = loaded.get(file);
    if (known) return known.exports;
    const module = { exports: {} };
    loaded.set(file, module);
    const source = readFileSync(file, 'utf8');
    const code = file.endsWith('.ts') ? ts.transpileModule(source, { compilerOptions }).outputText : source;
    const body = vm.runInContext(`(function (module, exports, require) {${code}\n})`, world, { filename: file });
    body(module, module.exports, (name: string) => load(placeOf(name, file)));
    return module.exports;
  };

  const { assess: judge } = load(path.join(root, 'lib/matching/assess.ts'));
  const { defaultSettings: settings } = load(path.join(root, 'lib/matching/default-settings.ts'));
  const { assessCase: schema } = load(path.join(root, 'lib/plant/assess-case.ts'));
  const { readJson: read } = load(path.join(root, 'lib/plant/read-json.ts'));
  Object.assign(world, { judge, settings, schema, read });
  return (text) => {
    world.text = text;
    return vm.runInContext('JSON.stringify(judge(read(schema, text).value, settings))', world);
  };
}

const compilerOptions = { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2023 };

/** A file of lib, or of zod: the engine has nothing else to ask for. */
function placeOf(name: string, from: string): string {
  if (from.includes('node_modules')) return createRequire(from).resolve(name);
  if (name === 'zod') return createRequire(path.join(root, 'package.json')).resolve(name);
  const place = name.startsWith('@/') ? path.join(root, name.slice(2)) : path.resolve(path.dirname(from), name);
  const file = [`${place}.ts`, path.join(place, 'index.ts')].find((one) => ts.sys.fileExists(one));
  if (file === undefined || !file.startsWith(path.join(root, 'lib')))
    throw new Error(`${from} asks for ${name}, which a browser does not have`);
  return file;
}

const caseOf = ({ motor, set }: typeof nema, candidates: object[]) =>
  JSON.stringify({
    set: { ...set, failed: { ...motor, id: 'M-0' } },
    candidates: candidates.map((differs, i) => ({ ...motor, id: `M-${i + 1}`, ...differs })),
  });

const judgedThere = engineInABrowser();

test.each([
  ['the documented example', JSON.stringify(printed())],
  ['a NEMA place', caseOf(nema, [{}, { frame: '182T' }, { frame: '213T' }, { frame: '112M' }, { poles: 2 }])],
  ['an IEC place', caseOf(iec, [{}, { frame: '100L' }, { frame: '132S', mounting: 'IM B35' }, { ratings: [] }])],
])('%s is judged in a browser as here, byte for byte', (_, text) => {
  const here = readJson(assessCase, text);
  if (!here.ok) throw new Error(JSON.stringify(here.problems));
  expect(judgedThere(text)).toBe(JSON.stringify(assess(here.value, defaultSettings)));
});
