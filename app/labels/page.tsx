import type { Metadata } from 'next';
import Link from 'next/link';
import { labelPath } from '@/lib/plant/label-code';
import { areas } from '@/lib/register/queries/areas';
import { labelLines } from '@/lib/register/queries/label-lines';
import { storePlaces } from '@/lib/register/queries/store-places';
import { answered } from '../answered';
import { linkHere } from '../link-here';
import { ActionBar } from '../look/action-bar';
import { Sheet } from '../look/sheet';
import { personOf, whoMay } from '../who-is-here';
import { chosenWords } from './chosen-words';
import { LabelForm } from './label-form';
import { LabelSheets } from './label-sheets';
import { whoseLabels } from './labels-asked';
import { partOf, printAsked } from './print-asked';
import { PrintButton } from './print-button';
import { qr } from './qr';
import { questionOf } from './question-of';
import { WhereTheyLead } from './where-they-lead';

export const metadata: Metadata = { title: 'Labels' };

/** Labels for sets and motors: chosen, shown as they come out, printed by the browser. */
export default answered(async function LabelsPage({ searchParams }: PageProps<'/labels'>) {
  const query = await searchParams;
  const actor = await whoMay('register.read', `/labels${questionOf(query)}`);
  const whose = whoseLabels(query);
  const { print, problems } = printAsked(query);
  const part = partOf(print);
  const [base, places, stores, found] = await Promise.all([
    linkHere('/'),
    areas(actor),
    storePlaces(actor),
    whose.asked === null ? { lines: [], all: 0 } : labelLines(actor, whose.asked, part),
  ]);
  const { lines, all } = found;
  const linkOf = (code: string) => new URL(labelPath(code), base).href;
  const to = (other: number) => `/labels${questionOf({ ...query, part: String(other) })}`;
  const isReady = problems.length === 0 && lines.length > 0;
  return (
    <Sheet wide person={personOf(actor)} back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page screen-only">Labels</h1>
      <LabelForm
        whose={whose}
        chosen={chosenWords(whose, all)}
        print={print}
        problems={problems}
        areas={places}
        stores={stores}
      />
      {whose.asked !== null && all === 0 && <p className="mt-4 screen-only">Nothing in the register is like this.</p>}
      {isReady && (
        <>
          <WhereTheyLead base={base} paper={print.paper} modules={qr(linkOf('00000000')).size} />
          {all > part.take && (
            <p className="below-table label screen-only">
              <span>
                Labels of {part.skip + 1} to {part.skip + lines.length} of {all}
              </span>
              <span>
                {print.part > 1 && (
                  <Link className="to" href={to(print.part - 1)}>
                    Those before
                  </Link>
                )}{' '}
                {part.skip + lines.length < all && (
                  <Link className="to" href={to(print.part + 1)}>
                    Those after
                  </Link>
                )}
              </span>
            </p>
          )}
          <LabelSheets lines={lines} linkOf={linkOf} paper={print.paper} start={part.start} copies={print.copies} />
          <ActionBar>
            <PrintButton />
          </ActionBar>
        </>
      )}
    </Sheet>
  );
});
