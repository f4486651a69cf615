import { expect, test } from 'vitest';
import { workItems } from '@/app/sets/[tag]/work-items';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { WorkId } from '@/lib/plant/work';
import { motor, set } from '../matching/easy';
import { judged } from '../matching/plant-cases';

/** The easy motor's result, with these works asked by its first findings. */
function listed(works: readonly [WorkId, string, number][]) {
  const result = judged(set(), motor());
  const findings = works.map(([id, what, hours], i) => {
    const finding = result.findings[i];
    if (finding === undefined) throw new Error('fewer findings than works');
    return { ...finding, work: { id, what, hours } };
  });
  return workItems({ ...result, findings }, motor(), defaultSettings, '2026-11-25').filter(
    ({ id }) => id !== 'spare-test',
  );
}

const HUB = 'Fit a new hub bored 28 mm, with its key';
const SHORT_HUB = `${HUB}; the hub no longer than 60 mm`;

test.each([
  ['short first', [HUB, SHORT_HUB]],
  ['long first', [SHORT_HUB, HUB]],
  ['the same twice', [SHORT_HUB, SHORT_HUB]],
] as const)('what another finding of the same work already tells is told once: %s', (_, [first, second]) => {
  const items = listed([
    ['new-hub', first, 1],
    ['new-hub', second, 1.25],
  ]);
  expect(items).toEqual([{ id: 'new-hub', what: SHORT_HUB, hours: 1.25 }]);
});

test('two different things of one kind of work stand in one sentence', () => {
  const items = listed([
    ['drive-settings', 'Set the drive to 41 Hz for the duty', 0.5],
    ['drive-settings', 'Enter the new plate in the drive', 0.5],
  ]);
  expect(items.map(({ what }) => what)).toEqual([
    'Set the drive to 41 Hz for the duty; enter the new plate in the drive',
  ]);
});
