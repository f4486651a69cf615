import { z } from 'zod';
import { CRITERIA } from '@/lib/matching/finding';
import { motor } from '@/lib/plant/motor';
import { asSent } from './as-sent';
import { finding, VERDICTS } from './judging';

const ofSet = z.strictObject({ tag: z.string(), value: z.string().nullable().describe('Null: to be told') });

const demand = z
  .strictObject({
    id: z.string(),
    label: z.string(),
    value: z.string().nullable().describe('Null: nobody has told, and it is to be told before the order'),
    why: z.string(),
    criterion: z.enum(CRITERIA).nullable().describe('The question of the judgement that asks for it'),
    bySet: z.array(ofSet).describe('What each set asks, where they do not all ask the same'),
  })
  .meta({ id: 'Demand' });

export const purchase = z
  .strictObject({
    sets: z.array(z.string()),
    unanswered: z.array(z.string()).describe('Sets for which no standard rating answers'),
    options: z.array(
      z.strictObject({
        id: z.string(),
        serves: z.number().int().describe('Of the sets, those in which it is not unsuitable'),
        contradictions: z.number().int(),
      }),
    ),
    asked: asSent('MotorAsked', motor),
    groups: z.array(z.strictObject({ title: z.string(), demands: z.array(demand) })),
    contradictions: z.array(
      z.strictObject({ id: z.string(), label: z.string(), askedAs: z.string(), bySet: z.array(ofSet) }),
    ),
    served: z.array(
      z.strictObject({
        tag: z.string(),
        verdict: z.enum(VERDICTS),
        hours: z.number(),
        findings: z.array(finding).describe('Those that ask for something, worst first as the judgement has them'),
      }),
    ),
  })
  .meta({ id: 'Purchase' });
