import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dimensionsOf, readFrame } from '@/lib/standards/dimensions-of';
import { mountingCode } from '@/lib/standards/mounting-code';

/** Texts near real frames, and any text at all. */
const pieces = fc.constantFrom(
  ...'182 184 56 254 225 90 112 132 T U S C D H J JM JP VP Z Y R V L M / - FF FT 165 IM B3 B35 B5 4 2 NEMA IEC'.split(
    ' ',
  ),
);
const near = fc.array(fc.oneof(pieces, fc.constant(' ')), { maxLength: 9 }).map((parts) => parts.join(''));
const anyText = fc.oneof(near, fc.string({ maxLength: 80 }), fc.string({ unit: 'grapheme', maxLength: 80 }));
const anyPoles = fc.option(fc.oneof(fc.integer({ min: -2, max: 20 }), fc.double()), { nil: null });
const anySystem = fc.constantFrom('NEMA' as const, 'IEC' as const, null);

test('no text makes the reader throw; a problem always says where and what', () => {
  fc.assert(
    fc.property(anyText, fc.option(anyText, { nil: null }), anyPoles, anySystem, (frame, mounting, poles, system) => {
      const read = readFrame(frame, { mounting, poles, system });
      if (!read.ok) {
        expect(read.problems.length).toBeGreaterThan(0);
        for (const { path, says } of read.problems) {
          expect(['frame', 'mounting', 'poles']).toContain(path);
          expect(says).toMatch(/\S/);
        }
      }
    }),
    { numRuns: 2_000 },
  );
});

test('a canonical name reads to itself in its own system', () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const first = readFrame(text);
      if (!first.ok) return;
      const { frame, system } = first.value;
      const again = readFrame(frame, { system: frame.startsWith('F') ? null : system });
      expect(again.ok && again.value.frame).toBe(frame);
      expect(again.ok && again.value.system).toBe(system);
    }),
    { numRuns: 4_000 },
  );
});

test('a frame refused is unknown, never a figure, and says why', () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const read = readFrame(text);
      if (read.ok || read.problems.some(({ path }) => path !== 'frame')) return;
      const { dimensions, system, face } = dimensionsOf(text);
      expect(system).toBeNull();
      expect(face).toBeNull();
      for (const { value, origin, cite } of Object.values(dimensions)) {
        expect(value).toBeNull();
        expect(origin).toBe('unknown');
        expect(cite).toMatch(/\S/);
      }
    }),
    { numRuns: 1_000 },
  );
});

test('a mounting read is read again from its own name', () => {
  fc.assert(
    fc.property(fc.oneof(near, fc.stringMatching(/^(IM )?[BV]\d{1,2}(\/[BV]?\d{1,2})?$/)), (text) => {
      const first = mountingCode(text);
      if (first.ok) expect(mountingCode(first.value.name)).toEqual(first);
    }),
    { numRuns: 2_000 },
  );
});

test('a very long text is refused for its length, before any pattern is tried on it', () => {
  const long = 'B3/'.repeat(100_000);
  const read = readFrame(long, { mounting: long });
  expect(read.ok).toBe(false);
  if (read.ok) return;
  expect(read.problems.map(({ path, says }) => `${path} ${says}`)).toEqual([
    'frame is longer than any frame: at most 60 characters',
    'mounting is longer than any mounting code',
  ]);
  for (const { value } of read.problems) expect(value?.length).toBeLessThanOrEqual(60);
});
