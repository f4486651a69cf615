import { AskForm } from '@/app/ask-form';
import { lastedText } from '@/app/lasted';
import { Facts } from '@/app/look/facts';
import { SectionHead } from '@/app/look/section-head';
import { Tag } from '@/app/look/tag';
import { momentText } from '@/app/moment';
import { type Actor, may } from '@/lib/auth/may';
import type { Motor } from '@/lib/plant/motor';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { Whereabouts } from '@/lib/plant/whereabouts';
import type { KnownRepair } from '@/lib/register/queries/repairs';
import type { ShelfPlace } from '@/lib/register/queries/shelves';
import { repairCaseOf } from '@/lib/repair/repair-case';
import { figureFields } from './repair-fields';
import { endRepairHere, tellRepairHere } from './repair-here';
import { RepairWorkedOut } from './repair-worked-out';

/** Why a motor is or was at repair, what it would cost, what was decided, and the way back. */
export function RepairPart(props: {
  actor: Actor;
  motor: Motor;
  at: Whereabouts;
  repair: KnownRepair | null;
  settings: SiteSettings;
  shelves: readonly ShelfPlace[];
  timezone: string;
}) {
  const { actor, motor, at, repair, settings, shelves, timezone } = props;
  const isHere = at.place === 'at-repair';
  if (repair === null && !isHere) return null;
  const isOpen = isHere && repair !== null && repair.endedAt === null;
  return (
    <section id="repair">
      <SectionHead title="Repair" aside={isHere ? 'at repair' : 'the last one'} />
      {repair === null ? (
        <p className="pt-3">Nobody told why it is at repair, or since when.</p>
      ) : (
        <Facts rows={factsOf(repair, timezone)} />
      )}
      {isOpen && <RepairWorkedOut {...repairCaseOf(motor, repair.figures, settings)} currency={settings.currency} />}
      {isOpen && may(actor, 'repair.decide') && <Told repair={repair} currency={settings.currency} />}
      {isHere && may(actor, 'motor.move') && (
        <AskForm
          id="repair-ends"
          action={endRepairHere}
          folded="It is back, or scrapped"
          button="Keep where it is now"
          fields={[
            { kind: 'hidden', name: 'motorId', value: at.motorId },
            {
              kind: 'list',
              name: 'to',
              label: 'Where it goes',
              options: [
                ...shelves.map(({ shelfId, store, shelf }) => ({
                  value: shelfId,
                  words: `to shelf ${store} / ${shelf}`,
                })),
                { value: 'scrapped', words: 'to scrap' },
              ],
            },
          ]}
        />
      )}
    </section>
  );
}

function factsOf({ at, by, reason, setTag, decision, decidedWhy, decider, endedAt }: KnownRepair, timezone: string) {
  const until = endedAt ?? new Date();
  return [
    { label: 'Why', value: <bdi>{reason}</bdi> },
    ...(setTag === null ? [] : [{ label: 'Came out of', value: <Tag>{setTag}</Tag> }]),
    { label: 'Since', value: `${momentText(at, timezone)}, ${by}` },
    { label: endedAt === null ? 'Waits' : 'Took', value: lastedText(until.getTime() - at.getTime()) },
    {
      label: 'Decided',
      value:
        decision === null ? (
          'not yet'
        ) : (
          <bdi>
            {[decision === 'scrap' ? 'to scrap it' : 'to repair it', decidedWhy, decider].filter(Boolean).join(', ')}
          </bdi>
        ),
    },
  ];
}

function Told({ repair, currency }: { repair: KnownRepair; currency: string | null }) {
  const { repairId, version, figures, decision, decidedWhy } = repair;
  return (
    <AskForm
      id="repair-told"
      action={tellRepairHere}
      folded="Tell figures, and decide"
      button="Keep figures and decision"
      fields={[
        { kind: 'hidden', name: 'repairId', value: repairId },
        { kind: 'hidden', name: 'version', value: String(version) },
        ...figureFields(figures, currency),
        {
          ...{ kind: 'list', name: 'isRewind', label: 'What is renewed' },
          options: [
            { value: '', words: 'not told' },
            { value: 'yes', words: 'the winding' },
            { value: 'no', words: 'bearings or other parts alone' },
          ],
          value: figures.isRewind === null ? '' : figures.isRewind ? 'yes' : 'no',
        },
        {
          ...{ kind: 'list', name: 'decision', label: 'The decision' },
          options: [
            { value: '', words: 'not decided' },
            { value: 'repair', words: 'to repair it' },
            { value: 'scrap', words: 'to scrap it' },
          ],
          value: decision ?? '',
        },
        { kind: 'text', name: 'why', label: 'Why', ...(decidedWhy !== null && { value: decidedWhy }) },
      ]}
    />
  );
}
