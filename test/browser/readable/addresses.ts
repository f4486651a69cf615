import type { Page } from '@playwright/test';
import type { Role } from '@/lib/auth/may';
import { PAGE_DOORS } from '../../walk/pages';
import type { Site } from '../../walk/site';
import { shelfCandidates } from '../candidates';
import { stateOf, type Who } from '../person';

/** What is asked in another way of pages that are in the list: errors, nothing found, long words, steps of a walk. */
const MORE: readonly string[] = [
  '/find',
  '/find?q=nothing%20like%20it',
  `/find?q=${'x'.repeat(200)}`,
  '/sets/OR-1155',
  '/frames/182%2F4T',
  '/frames/FF165',
  '/frames/no-frame',
  '/frames/measure?shaftHeightMm=113&holesAcrossMm=190&shaftDiameterMm=28&face=none',
  '/frames/measure?shaftHeightMm=wide',
  '/motors/no-plate',
  '/motors/no-plate?step=feet&shaftHeightMm=wide',
  '/motors/no-plate?step=face&shaftHeightMm=132',
  '/motors/no-plate?step=speed&rpm=1450&hertz=50&shaftHeightMm=wide',
  '/motors/no-plate?step=found&shaftHeightMm=132&holesAcrossMm=216&holesAlongMm=140&rpm=1450&hertz=50&leads=6&volts=400&amps=9',
  '/motors/none',
  '/motors/M-0511',
  '/swaps/none',
  '/faults?days=3650',
  '/faults/none',
  '/doubts?rule=speed',
  '/cover?state=none&sort=area',
  '/cover?q=nothing%20like%20it',
  '/cover/matrix',
  '/cover/matrix?q=nothing%20like%20it',
  '/cover/motors?state=idle',
  '/cover/motors?used=none',
  '/hold',
  '/hold?choose=1&criticality=1&days=30&seconds=2',
  '/hold?choose=1&aim=cheapest',
  '/hold?choose=1&criticality=1&aim=cheapest&checks=all&each=100&perKw=80&prices=5.5%20kW%3A%20640',
  '/hold?choose=1&days=soon&prices=5.5%20640',
  '/hold?tick=none&criticality=1&without=M-0511',
  '/hold?q=nothing%20like%20it',
  '/review?rule=speed&sort=money&group=rule',
  '/review?q=nothing%20like%20it',
  '/labels?tag={set}&paper=a4-2x4&first=wide',
  '/sets/{set}/candidates?from=buy',
  '/sets/{set}/candidates/{rating}',
  '/sets/{set}/next?price=0.15&hours=6000&years=10&discount=6&growth=wide&ie3=900&down=1200',
  '/reports/2020-02',
  '/reports/2020-13',
  '/buy',
  '/buy?tag={set}&tag=OR-115',
  '/buy?tag=none',
  '/nowhere',
];

/** The pages at the pump. */
export const AT_THE_PUMP: readonly string[] = [
  '/pump',
  '/pump/sets/{set}',
  '/pump/sets/{set}/candidates',
  '/pump/sets/{set}/candidates?from=buy',
  '/pump/sets/{set}/candidates/{best}',
  '/pump/sets/{set}/candidates/{rating}',
  '/pump/sets/{set}/job/{best}',
  '/pump/sets/{set}/swap/{best}',
  '/pump/sets/{set}/fault',
  '/pump/sets/none',
  '/pump/motors/{best}',
  '/pump/motors/none',
  '/pump/scan',
  '/pump/waiting',
  '/pump/find?q=syrup',
  '/pump/find?q=nothing%20like%20it',
  '/pump/l/NONE-NONE',
  '/pump/nowhere',
];

/** Who is the first of these to be let in; null: nobody need be signed in. */
const opener = (may: 'anybody' | readonly Role[], order: readonly Who[]): Who | null => {
  if (may === 'anybody') return null;
  const who = order.find((role) => may.includes(role));
  if (who === undefined) throw new Error(`nobody of these tests opens it: ${may}`);
  return who;
};

/** Every address of the register, by who opens it: the first of `order` that may. What leads elsewhere shows nothing itself. */
export const addressesOf = (who: Who | null, order: readonly Who[]): readonly string[] => {
  const theirs = PAGE_DOORS.filter(({ may, leadsTo }) => leadsTo === undefined && opener(may, order) === who);
  return [...theirs.map(({ at }) => at), ...MORE.filter((at) => openerOf(at, order) === who)];
};

/** Who opens a page shown by more than its address; what has no door of its own is everybody's. */
function openerOf(address: string, order: readonly Who[]): Who | null | undefined {
  const [path] = address.split('?');
  const door = PAGE_DOORS.find(({ at }) => at.split('?')[0] === path);
  return door === undefined ? order[0] : opener(door.may, order);
}

export const stateFor = (who: Who | null) => (who === null ? { cookies: [], origins: [] } : stateOf(who));

/** Tells the site what stands in the addresses and is found by the program alone. */
export async function fillIn(site: Site, page: Page): Promise<void> {
  const tag = site.value('set');
  const [best] = await shelfCandidates(page, tag);
  if (best === undefined) throw new Error(`nothing on the shelves fits ${tag}`);
  site.set('best', best);
  site.set('motor', best); // a motor of which there is something to say at this set
  await page.goto(`/sets/${tag}/candidates?from=buy`);
  const href = await page.locator('.cand').first().getByRole('link').getAttribute('href');
  const rating = href?.split('/').at(-1);
  if (rating === undefined) throw new Error(`no standard rating answers ${tag}`);
  site.set('rating', decodeURIComponent(rating));
}
