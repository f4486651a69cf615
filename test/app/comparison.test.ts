import { expect, test } from 'vitest';
import { comparison } from '@/app/sets/[tag]/candidates/[motor]/comparison';
import { mountViews } from '@/lib/drawing/mount-views';
import { assess } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { assessCase } from '@/lib/plant/assess-case';
import { iec, nema } from '../cases/whole-case';

// The base case of test/cases: a 184T (NEMA MG 1 4.4.1: D 4.5 in = 114.3) above 1.5 mm of shims, limit 6.

/** What the findings ask for by word, and what the drawing shows of it. */
function drawn(candidate: object, base: object) {
  const { set, candidates } = assessCase.parse({
    set: { ...nema.set, base: { ...(nema.set.base as object), ...base }, failed: { ...nema.motor, id: 'M-0' } },
    candidates: [candidate],
  });
  const [motor] = candidates;
  const [result] = assess({ set, candidates, asOf: null }, defaultSettings).results;
  if (motor === undefined || result === undefined) throw new Error('no result');
  const { incoming, outgoing, facts } = comparison(set, motor, result.findings);
  const views = mountViews(incoming, outgoing, facts);
  return {
    facts,
    work: result.findings.flatMap(({ work }) => (work === null ? [] : [work.what])),
    labels: views.flatMap(({ labels }) => labels.map(({ text }) => text)),
    parts: new Set(views.flatMap(({ shapes }) => shapes.map(({ part }) => part))),
  };
}

test('shims: as thick as the finding says, with those that are there', () => {
  // IEC 60072-1: 112M stands 112 high, 2.3 less.
  const shown = drawn({ ...nema.motor, frame: '112M', mounting: 'IM B3', codeLetter: null, design: 'N' }, {});
  expect(shown.work).toContain('Shim each foot by 2.3 mm');
  expect(shown.labels).toContain('shims 3.8');
  expect(shown.parts).toContain('shim');
  expect(shown.facts.together).toBe('holes');
});

test('ground blocks: the whole height in place of the shims', () => {
  // IEC 60072-1: 100L stands 100 high, 14.3 less: 15.8 in all, over the 6 of the limit.
  const shown = drawn({ ...iec.motor, frame: '100L' }, { slotting: true });
  expect(shown.work).toContain('Fit a ground block of 15.8 mm under each foot, with longer bolts');
  expect(shown.labels).toContain('blocks 15.8');
  expect(shown.parts).toContain('block');
});

test('a transition base: its height, its new holes, and the shaft end where the old one was', () => {
  // A 56 stands 3.5 in = 88.9 high: 1.5 + 25.4 = 26.9. Its shaft ends 117.6 from the holes, the old one 139.7.
  const shown = drawn({ ...nema.motor, frame: '56' }, { transitionBase: true });
  expect(shown.work).toContain('Make a transition base 26.9 mm high');
  expect(shown.labels).toEqual(expect.arrayContaining(['plate 26.9', 'plate, new holes']));
  expect(shown.facts.together).toBe('shaft-ends');
  expect(shown.parts).toContain('new-hole');
});

test('the twin of the failed motor shows nothing to act on', () => {
  const shown = drawn({ ...nema.motor, id: 'M-2' }, {});
  expect(shown.work).toEqual([]);
  expect(shown.facts.act).toEqual([]);
  for (const part of ['shim', 'block', 'plate', 'new-hole', 'slot', 'spacer'] as const)
    expect(shown.parts).not.toContain(part);
});
