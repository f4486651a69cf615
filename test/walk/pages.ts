import type { Role } from '@/lib/auth/may';

/** Who opens a page. `anybody`: without a sign-in. */
export interface PageDoor {
  /** As it lies under app. */
  page: string;
  /** An address of it, with what the first site has. */
  at: string;
  may: 'anybody' | readonly Role[];
  /** It shows one record of the site: at another site it is not there. */
  isOfOne?: true;
  /** It shows nothing itself: whom it lets in it leads there. */
  leadsTo?: string;
}

const everyone = ['technician', 'planner', 'reliability', 'administrator'] as const;
const desk = ['planner', 'reliability', 'administrator'] as const;
const office = ['administrator'] as const;

/** Every page. `{area}` and such are filled in by the walk. A page that is missing here fails the build's test. */
export const PAGE_DOORS: readonly PageDoor[] = [
  { page: '', at: '/', may: everyone },
  { page: 'api-docs', at: '/api-docs', may: everyone },
  { page: 'areas', at: '/areas', may: everyone },
  { page: 'areas/[id]', at: '/areas/{area}', may: desk, isOfOne: true },
  { page: 'areas/new', at: '/areas/new', may: desk },
  { page: 'audit', at: '/audit', may: desk },
  { page: 'cover', at: '/cover?area={area}', may: everyone },
  { page: 'cover/matrix', at: '/cover/matrix?criticality=1', may: everyone },
  { page: 'cover/motors', at: '/cover/motors?used={motor}', may: everyone },
  { page: 'buy', at: '/buy?tag={set}', may: everyone },
  { page: 'desk', at: '/desk', may: everyone },
  { page: 'doubts', at: '/doubts', may: everyone },
  { page: 'faults', at: '/faults?area={area}&days=90', may: everyone },
  { page: 'faults/[id]', at: '/faults/{fault}', may: everyone, isOfOne: true },
  { page: 'find', at: '/find?q=syrup', may: everyone },
  { page: 'frames', at: '/frames', may: everyone },
  { page: 'frames/[frame]', at: '/frames/184TC', may: everyone },
  { page: 'frames/measure', at: '/frames/measure?shaftHeightMm=112', may: everyone },
  { page: 'hold', at: '/hold?choose=1&area={area}', may: everyone },
  { page: 'imports', at: '/imports', may: desk },
  { page: 'imports/[id]', at: '/imports/{import}', may: desk, isOfOne: true },
  { page: 'join/[token]', at: '/join/nobody-has-this', may: 'anybody' },
  { page: 'l/[code]', at: '/l/{label}', may: everyone, isOfOne: true, leadsTo: '/sets/{set}' },
  { page: 'labels', at: '/labels?tag={set}&number={motor}', may: everyone },
  { page: 'motors', at: '/motors', may: everyone },
  { page: 'motors/[number]', at: '/motors/{motor}', may: everyone, isOfOne: true },
  { page: 'motors/[number]/edit', at: '/motors/{motor}/edit', may: desk, isOfOne: true },
  { page: 'motors/[number]/on', at: '/motors/{motor}/on', may: everyone, isOfOne: true },
  { page: 'motors/bulk', at: '/motors/bulk', may: desk },
  { page: 'motors/new', at: '/motors/new', may: desk },
  { page: 'motors/no-plate', at: '/motors/no-plate?step=found&rpm=1450&hertz=50', may: everyone },
  { page: 'people', at: '/people', may: office },
  { page: 'people/[id]', at: '/people/{person}', may: office, isOfOne: true },
  { page: 'person', at: '/person', may: everyone },
  { page: 'repairs', at: '/repairs', may: everyone },
  { page: 'reports/[month]', at: '/reports/now', may: everyone },
  { page: 'reset/[token]', at: '/reset/nobody-has-this', may: 'anybody' },
  { page: 'review', at: '/review?state=all&group=area', may: desk },
  { page: 'review/charts', at: '/review/charts', may: desk },
  { page: 'scan', at: '/scan', may: everyone },
  { page: 'sets', at: '/sets', may: everyone },
  { page: 'sets/[tag]', at: '/sets/{set}', may: everyone, isOfOne: true },
  { page: 'sets/[tag]/buy/[rating]', at: '/sets/{set}/buy/{rating}', may: everyone, isOfOne: true },
  { page: 'sets/[tag]/candidates', at: '/sets/{set}/candidates', may: everyone, isOfOne: true },
  { page: 'sets/[tag]/candidates/[motor]', at: '/sets/{set}/candidates/{motor}', may: everyone, isOfOne: true },
  { page: 'sets/[tag]/edit', at: '/sets/{set}/edit', may: desk, isOfOne: true },
  { page: 'sets/[tag]/failed', at: '/sets/{set}/failed', may: everyone, isOfOne: true },
  { page: 'sets/[tag]/job/[motor]', at: '/sets/{set}/job/{motor}', may: everyone, isOfOne: true },
  { page: 'sets/[tag]/next', at: '/sets/{set}/next', may: everyone, isOfOne: true },
  { page: 'sets/[tag]/measured', at: '/sets/{set}/measured', may: everyone, isOfOne: true },
  { page: 'sets/[tag]/on', at: '/sets/{set}/on', may: everyone, isOfOne: true },
  { page: 'sets/[tag]/swap/[motor]', at: '/sets/{set}/swap/{motor}', may: everyone, isOfOne: true },
  { page: 'sets/bulk', at: '/sets/bulk', may: desk },
  { page: 'sets/new', at: '/sets/new', may: desk },
  { page: 'sign-in', at: '/sign-in', may: 'anybody' },
  { page: 'site', at: '/site', may: everyone },
  { page: 'stores', at: '/stores', may: everyone },
  { page: 'stores/places', at: '/stores/places', may: desk },
  { page: 'stores/places/[thing]/[id]', at: '/stores/places/shelf/{shelf}', may: desk, isOfOne: true },
  { page: 'stores/places/new', at: '/stores/places/new', may: desk },
  { page: 'swaps/[id]', at: '/swaps/{swap}', may: everyone, isOfOne: true },
  { page: 'swaps/[id]/readings', at: '/swaps/{swap}/readings', may: everyone, isOfOne: true },
  { page: 'tokens', at: '/tokens', may: office },
];
