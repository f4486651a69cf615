import type { Metadata } from 'next';
import Link from 'next/link';
import { answerStatus } from '@/app/answer-status';
import { answered } from '@/app/answered';
import { lastedText } from '@/app/lasted';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { Facts } from '@/app/look/facts';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { dayText, momentText } from '@/app/moment';
import NotFound from '@/app/not-found';
import { candidatesPath, faultPath, motorPath, setPath, written } from '@/app/paths';
import { Photographs } from '@/app/pictures/photographs';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { faultById } from '@/lib/register/queries/fault-by-id';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { FaultClosing, stoodText } from '../fault-closing';
import { RunsAgain } from '../runs-again';

export const metadata: Metadata = { title: 'Fault' };

/** One fault: what was seen, its photographs, and how it ended. */
export default answered(async function FaultPage({ params, searchParams }: PageProps<'/faults/[id]'>) {
  const id = written((await params).id);
  const actor = await whoMay('register.read', faultPath(id));
  const [fault, { timezone }] = await Promise.all([faultById(actor, id), siteSettings(actor)]);
  if (fault === null) {
    answerStatus(404);
    return <NotFound />;
  }
  const isOpen = fault.closedAt === null;
  return (
    <Sheet person={personOf(actor)} back={{ href: setPath(fault.tag), words: fault.tag }}>
      <TitleBlock
        small
        tag={fault.tag}
        name={<bdi>{fault.says}</bdi>}
        cells={[
          { label: 'State', value: isOpen ? <b>Failed, open</b> : 'Closed' },
          {
            label: isOpen ? 'Standing' : 'From fault to running',
            value: stoodText(fault) ?? lastedText(Date.now() - fault.at.getTime()),
          },
          { label: 'Date', value: dayText(new Date(), timezone) },
        ]}
      />
      <Facts
        rows={[
          { label: 'Told', value: momentText(fault.at, timezone) },
          { label: 'By', value: <bdi>{fault.by}</bdi> },
          ...(fault.seenAt === null
            ? []
            : [{ label: 'Seen, by the phone’s clock', value: momentText(fault.seenAt, timezone) }]),
          {
            label: 'Motor in the set',
            value:
              fault.motor === null ? (
                'none'
              ) : (
                <Link className="to" href={motorPath(fault.motor)}>
                  <Tag>{fault.motor}</Tag>
                </Link>
              ),
          },
          ...(isOpen ? [] : [{ label: 'End', value: <FaultClosing fault={fault} timezone={timezone} /> }]),
        ]}
      />
      <Photographs
        actor={actor}
        of={{ thing: 'fault', id }}
        path={faultPath(id)}
        query={await searchParams}
        timezone={timezone}
      />
      {isOpen && may(actor, 'fault.close') && (
        <section className="screen-only">
          <RunsAgain of={{ faultId: id }} to={faultPath(id)} />
        </section>
      )}
      <ActionBar>
        {isOpen ? (
          <Action href={candidatesPath(fault.tag)}>What can go in?</Action>
        ) : (
          <Action href={setPath(fault.tag)}>To the set</Action>
        )}
      </ActionBar>
    </Sheet>
  );
});
