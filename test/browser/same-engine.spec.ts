import { expect, test } from '@playwright/test';
import { demoMotors, demoSets } from '../../bench/demo-plant';
import { assess } from '../../lib/matching/assess';
import { defaultSettings } from '../../lib/matching/default-settings';

test('a third of the demonstration’s sets with every motor are judged the same in the browser, byte for byte', async ({
  page,
}) => {
  const [sets, motors] = [demoSets(), demoMotors()];
  await page.goto('/pump');
  // The page's own worker, by the file that it was started from.
  const path = await page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const look = () => {
          const found = performance.getEntriesByType('resource').find(({ name }) => /\/phone\/worker-/.test(name));
          if (found === undefined) setTimeout(look, 50);
          else resolve(found.name);
        };
        look();
      }),
  );
  const told = sets.filter((_set, i) => i % 3 === 0).map((set) => ({ set, candidates: motors, asOf: '2026-11-28' }));
  const here = told.map((one) => JSON.stringify(assess(one, defaultSettings), null, 2));
  const there = await page.evaluate(
    ({ path, told }) =>
      new Promise<string[]>((resolve, reject) => {
        const worker = new Worker(path, { type: 'module' });
        const answers: string[] = [];
        worker.onmessage = ({ data }) => {
          if (data.failed !== undefined) reject(new Error(data.failed));
          if (data.id === undefined) return;
          answers[data.id] = data.answer;
          if (answers.filter((one) => one !== undefined).length === told.length) resolve(answers);
        };
        told.forEach((one, id) => {
          worker.postMessage({ id, ask: 'assess', told: { case: one } });
        });
      }),
    { path, told },
  );
  expect(there.length).toBe(here.length);
  for (const [i, text] of here.entries()) expect(there[i]).toBe(text);
});
