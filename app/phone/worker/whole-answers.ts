import { comparison } from '@/app/sets/[tag]/candidates/[motor]/comparison';
import { mountOfMotor } from '@/lib/drawing/mount';
import { jobOf } from '@/lib/job/job';
import { assess } from '@/lib/matching/assess';
import { buyable } from '@/lib/matching/buy/buyable';
import { ratingRowOf } from '@/lib/matching/context/rating-row';
import { defaultSettings } from '@/lib/matching/default-settings';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import {
  candidateInHand,
  motorIn,
  motorNumbered,
  setInHand,
  setTagged,
  whereaboutsInHand,
} from '@/lib/offline/plant-in-hand';
import type { AssessCase } from '@/lib/plant/assess-case';
import type { Motor } from '@/lib/plant/motor';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import type { AskName, CandidateHere } from '../asked';
import { todayAt } from '../today-at';
import type { Answers } from './answers';
import { type BriefAsk, briefAnswers } from './brief-answers';
import { held, wipe } from './held';
import { now } from './now';
import { listOf, makeReady, missesFor } from './offers';
import { change, keep } from './outbox';
import { sendAndBringUp } from './send-and-bring-up';
import { store } from './store';
import { tellPage } from './tell-page';
import { whenIdle } from './when-idle';

/** What the page may ask once the whole snapshot is in hand. */
export const wholeAnswers: Answers<Exclude<AskName, BriefAsk>> = {
  set: ({ tag }) => {
    const set = setTagged(held.plant, tag);
    if (set === null) return null;
    const pumpSet = setInHand(held.plant, set);
    const motor = motorIn(held.plant, set.id);
    // Its list is asked for next.
    whenIdle(() => makeReady(set.tag));
    return {
      set,
      pumpSet,
      motor,
      mount: motor === null ? null : mountOf(motor.motor),
      atSupply: motor === null ? null : ratingRowOf(pumpSet, motor.motor).plate,
      waiting: held.waiting.filter((one) => one.tag === set.tag),
    };
  },
  motor: ({ number }) => {
    const motor = motorNumbered(held.plant, number);
    if (motor === null) return null;
    return { motor, mount: mountOf(motor.motor), at: whereaboutsInHand(held.plant, motor) };
  },
  label: ({ code }) => {
    for (const set of held.plant.sets.values()) if (set.code === code) return { thing: 'set', name: set.tag };
    for (const motor of held.plant.motors.values())
      if (motor.code === code) return { thing: 'motor', name: motor.number };
    return null;
  },
  ranked: ({ tag, whole }) => listOf(tag, whole),
  misses: ({ tag }) => missesFor(tag),
  candidate,
  shelves: () => held.about?.shelves ?? [],
  keep: async ({ waiting }) => {
    const kept = await keep(waiting);
    if (kept.outcome === 'kept') void sendAndBringUp().then(tellPage);
    return kept;
  },
  outbox: () => held.waiting.filter(({ message }) => message.userId === held.about?.userId),
  again: async ({ key }) => {
    await change(key, { state: 'waiting', told: null });
    await sendAndBringUp();
    return null;
  },
  drop: async ({ key }) => {
    await change(key, null);
    return null;
  },
  draft: async ({ name }) => (await (await store()).get('drafts', name)) ?? null,
  keepDraft: async ({ name, value }) => {
    const db = await store();
    if (value === null) await db.delete('drafts', name);
    else await db.put('drafts', value, name);
    return null;
  },
  bringUp: async () => {
    await sendAndBringUp();
    return briefAnswers.status({});
  },
  wipe: async () => {
    await wipe({ outboxToo: true });
    return null;
  },
  // The very text that the command line prints.
  assess: ({ case: told }) => JSON.stringify(assess(told as AssessCase, defaultSettings), null, 2),
};

const mountOf = (motor: Motor) => mountOfMotor(motor.id, motorDimensions(motor), motor.terminalBox);

const today = () => (held.about === null ? now().toISOString().slice(0, 10) : todayAt(held.about));

function candidate({ tag, number }: { tag: string; number: string }): CandidateHere | null {
  const set = setTagged(held.plant, tag);
  if (set === null || held.about === null) return null;
  const pumpSet = setInHand(held.plant, set);
  const motorOutId = motorIn(held.plant, set.id)?.id ?? null;
  const motor = motorNumbered(held.plant, number);
  const here =
    motor === null ? bought() : { ...candidateInHand(held.plant, set, motor), motorId: motor.id as string | null };
  if (here === null) return null;
  const result = judgeAlone(here.candidate, pumpSet, held.about.site.settings, today());
  const drawing = comparison(pumpSet, here.candidate.motor, result.findings);
  const by = { settings: held.about.site.settings, asOf: today() };
  const job = jobOf(pumpSet, here.candidate.motor, result.findings, by);
  return { set, pumpSet, motorOutId, result, drawing, job, about: held.about, ...here };

  function bought() {
    const found = buyable(pumpSet).find(({ id }) => id === number);
    return found === undefined
      ? null
      : { candidate: { from: 'buy' as const, motor: found }, unoffered: null, motorId: null };
  }
}
