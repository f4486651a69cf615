import type { Metadata } from 'next';
import Link from 'next/link';
import { type OfferedMotor, shelfMotors } from '@/lib/register/queries/shelf-motors';
import { answered } from '../answered';
import { Empty } from '../look/empty';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { NoPlateLinks } from '../motors/no-plate-links';
import { personOf, whoMay } from '../who-is-here';
import { ShelfLines } from './shelf-lines';

export const metadata: Metadata = { title: 'Stores' };

/** Every motor that waits for a set, store by store. */
export default answered(async function StoresPage() {
  const actor = await whoMay('register.read', '/stores');
  const { offered, isAll } = await shelfMotors(actor);
  const stores = byStore(offered);
  return (
    <Sheet wide current="/stores" person={personOf(actor)}>
      <h1 className="page">Stores</h1>
      <NoPlateLinks />
      {offered.length === 0 && (
        <Empty
          title="No motor waits for a set"
          says="None stands on a shelf, and none is on order. What runs is found by its set."
          next={[
            {
              words: 'Every set with its motor',
              link: (
                <Link className="to" href="/sets">
                  Sets
                </Link>
              ),
            },
          ]}
        />
      )}
      {!isAll && <p className="mt-2">The first {offered.length} motors are shown.</p>}
      {[...stores].map(([store, motors]) => (
        <section key={store}>
          <SectionHead title={<bdi>{store}</bdi>} aside={motors.length === 1 ? '1 motor' : `${motors.length} motors`} />
          <ShelfLines motors={motors} />
        </section>
      ))}
    </Sheet>
  );
});

function byStore(offered: readonly OfferedMotor[]): Map<string, OfferedMotor[]> {
  const stores = new Map<string, OfferedMotor[]>();
  for (const one of offered) {
    const name = one.whereabouts.place === 'on-order' ? 'On order' : (one.whereabouts.store ?? 'Store not told');
    const motors = stores.get(name);
    if (motors === undefined) stores.set(name, [one]);
    else motors.push(one);
  }
  return new Map(
    [...stores].sort(([a], [b]) => Number(a === 'On order') - Number(b === 'On order') || (a < b ? -1 : 1)),
  );
}
