import type { Metadata } from 'next';
import Link from 'next/link';
import { areas } from '@/lib/register/queries/areas';
import { listSets } from '@/lib/register/queries/list-sets';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { ActionButton } from '../look/action';
import { SelectField } from '../look/field';
import { Sheet } from '../look/sheet';
import { SetList } from '../set-list';
import { personOf, whoIsHere } from '../who-is-here';

export const metadata: Metadata = { title: 'Sets' };

const PER_PAGE = 50;

export default answered(async function SetsPage({ searchParams }: PageProps<'/sets'>) {
  const asked = await searchParams;
  const actor = await whoIsHere('/sets');
  const places = await areas(actor);
  const area = places.find(({ areaId }) => areaId === asked.area) ?? null;
  const page = pageOf(asked.page);
  const [{ sets, all }, { timezone }] = await Promise.all([
    listSets(actor, { areaId: area === null ? null : area.areaId, page, perPage: PER_PAGE }),
    siteSettings(actor),
  ]);
  const first = (page - 1) * PER_PAGE + 1;
  const hrefOf = (to: number) => `/sets?${area === null ? '' : `area=${area.areaId}&`}page=${to}`;
  return (
    <Sheet wide current="/sets" person={personOf(actor)}>
      <h1 className="page">Sets</h1>
      <form action="/sets" className="filters">
        <SelectField
          label="Area"
          name="area"
          empty="All areas"
          options={places.map(({ areaId, name }) => ({ value: areaId, words: name }))}
          defaultValue={area === null ? '' : area.areaId}
        />
        <ActionButton second>Show</ActionButton>
      </form>
      {sets.length === 0 ? (
        <p className="pt-3">{all === 0 ? 'No set stands here yet.' : 'The list ends before this page.'}</p>
      ) : (
        <SetList sets={sets} timezone={timezone} />
      )}
      <p className="below-table label">
        {sets.length > 0 && (
          <span>
            Sets {first} to {first + sets.length - 1} of {all}
          </span>
        )}
        <span>
          {page > 1 && (
            <Link className="to" href={hrefOf(page - 1)}>
              Previous {PER_PAGE}
            </Link>
          )}{' '}
          {first + sets.length - 1 < all && sets.length > 0 && (
            <Link className="to" href={hrefOf(page + 1)}>
              Next {PER_PAGE}
            </Link>
          )}
        </span>
      </p>
    </Sheet>
  );
});

/** Anything that is no page of a list is its first. */
const pageOf = (asked: string | string[] | undefined) =>
  typeof asked === 'string' && /^[1-9]\d{0,3}$/.test(asked) ? Number(asked) : 1;
