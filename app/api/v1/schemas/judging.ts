import { z } from 'zod';
import { CRITERIA, GRADES } from '@/lib/matching/finding';
import { motor } from '@/lib/plant/motor';
import { asSent } from './as-sent';

const told = z.union([z.number(), z.string()]).nullable();
const figure = z.number().nullable();

export const finding = z
  .strictObject({
    criterion: z.enum(CRITERIA),
    grade: z.enum(GRADES),
    have: told,
    need: told,
    unit: z.string().nullable(),
    difference: figure,
    says: z.string(),
    work: z.strictObject({ id: z.string(), what: z.string(), hours: z.number() }).nullable(),
    by: z.enum(['reading', 'person']).nullable(),
    reading: z.string().nullable(),
    cite: z.string(),
  })
  .meta({ id: 'Finding' });

export const VERDICTS = ['straight-swap', 'swap-with-work', 'check-first', 'unsuitable'] as const;

export const result = z
  .strictObject({
    id: z.string().describe('The candidate’s plant number'),
    rank: z.number().int(),
    verdict: z.enum(VERDICTS),
    hours: z.number(),
    why: z.string().describe('Why it stands above the next'),
    operatingPoint: z.strictObject({
      motorRpm: figure,
      pumpRpm: figure,
      pumpKw: figure,
      motorKw: figure,
      loadPct: figure,
      torquePct: figure,
      amps: figure,
      flowChangePct: figure,
    }),
    findings: z.array(finding),
  })
  .meta({ id: 'Result' });

export const assessment = z.strictObject({ tag: z.string(), results: z.array(result) }).meta({ id: 'Assessment' });

export const candidates = z
  .strictObject({
    tag: z.string(),
    candidates: z.array(
      z.strictObject({
        from: z.enum(['shelf', 'set', 'buy']),
        motorId: z.uuid().nullable(),
        stops: z.string().nullable().describe('The set that would stop if its motor were taken'),
        result,
      }),
    ),
    unsuitableCount: z.number().int(),
  })
  .meta({ id: 'Candidates' });

const { id: _id, ...plate } = motor.shape;

export const plateAnswer = z
  .strictObject({
    motor: asSent('Plate', z.strictObject(plate)),
    unread: z.array(z.string()),
    problems: z.array(z.strictObject({ path: z.string(), value: z.string().nullable(), says: z.string() })),
  })
  .meta({ id: 'PlateReading' });

const dimension = z.strictObject({
  value: z.number().nullable(),
  plus: z.number().nullable(),
  minus: z.number().nullable(),
  alternatives: z.array(z.number()),
  origin: z.enum(['measured', 'standard', 'unknown']),
  status: z.string().nullable(),
  cite: z.string().nullable(),
});

export const frame = z
  .strictObject({
    frame: z.string(),
    system: z.enum(['NEMA', 'IEC']).nullable(),
    dimensions: z.record(z.string(), dimension),
    face: z
      .strictObject({
        name: z.string(),
        kind: z.string(),
        pitchCircleMm: z.number().nullable(),
        spigotMm: z.number().nullable(),
        outsideMm: z.number().nullable(),
        holes: z.number().nullable(),
        hole: z.union([z.strictObject({ throughMm: z.number() }), z.strictObject({ thread: z.string() })]).nullable(),
        shoulderToFaceMm: z.number().nullable(),
        optional: z.boolean(),
        status: z.string(),
        cite: z.string(),
      })
      .nullable(),
  })
  .meta({ id: 'Frame' });
