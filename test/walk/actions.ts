import type { Role } from '@/lib/auth/may';
import type { Site } from './site';

export interface ActionDoor {
  /** "app/sets/save-set.ts saveSet". */
  action: string;
  /** A page on which its form stands. */
  at: string;
  may: 'anybody' | readonly Role[];
  /** It takes what it answered before, and then the form; else the form alone. */
  isAsked: boolean;
  /** What the first site's people would send, now; the proof that it does something is that it does it for them. */
  fields: (site: Site) => Promise<Record<string, string>>;
  /** It is about one's own alone: whom it may not, is told that there is no such thing. */
  isTheirOwn?: true;
  /** Where it is proved that it does what it should, when not here. */
  provenIn?: string;
}

const everyone = ['technician', 'planner', 'reliability', 'administrator'] as const;
const desk = ['planner', 'reliability', 'administrator'] as const;
const office = ['administrator'] as const;
const asked = { isAsked: true } as const;

/** A change that is one each time. */
const anew = () => crypto.randomUUID().slice(0, 8);

/** Every server action, in an order in which what one makes the next can use. */
export const ACTION_DOORS: readonly ActionDoor[] = [
  {
    ...{ action: 'app/sets/save-set.ts saveSet', at: '/sets/{set}/edit', may: desk, ...asked },
    fields: async (site) => ({ ...(await site.record('pump_set', 'setId')), service: `Walked ${anew()}` }),
  },
  {
    ...{ action: 'app/changes/undo-here.ts undoHere', at: '/sets/{set}', may: desk, isAsked: false },
    fields: async (site) => ({ change: await site.lastChange('set.change') }),
  },
  {
    ...{ action: 'app/motors/save-motor.ts saveMotor', at: '/motors/{motor}/edit', may: desk, ...asked },
    fields: async (site) => ({
      ...(await site.record('motor', 'motorId')),
      condition: `Walked ${anew()}`,
      where: `on-shelf ${site.value('shelf')}`,
    }),
  },
  {
    ...{ action: 'app/areas/save-area.ts saveArea', at: '/areas/{area}', may: desk, ...asked },
    fields: async (site) => ({ ...(await site.record('area', 'area')), name: `Area ${anew()}` }),
  },
  {
    ...{ action: 'app/stores/places/save-place.ts saveStore', at: '/stores/places/store/{store}', may: desk, ...asked },
    fields: async (site) => ({ ...(await site.record('store', 'store')), name: `Store ${anew()}` }),
  },
  {
    ...{ action: 'app/stores/places/save-place.ts saveShelf', at: '/stores/places/shelf/{shelf}', may: desk, ...asked },
    fields: async (site) => ({ ...(await site.record('shelf', 'shelf')), name: `Shelf ${anew()}` }),
  },
  {
    ...{ action: 'app/lists/change-many-here.ts changeManyHere', at: '/sets/bulk', may: desk, ...asked },
    fields: async (site) => {
      const { record, version } = await site.record('pump_set', 'setId');
      return {
        thing: 'set',
        path: '/sets',
        edit: JSON.stringify({ service: `Many ${anew()}` }),
        records: JSON.stringify([[record, Number(version)]]),
      };
    },
  },
  {
    ...{ action: 'app/record/retire-here.ts retireHere', at: '/areas/{area}', may: desk, ...asked },
    fields: async (site) => {
      const { record, version } = await site.emptyShelf();
      return { thing: 'shelf', record, version, path: '/stores/places' };
    },
  },
  {
    ...{ action: 'app/lists/keep-view-here.ts keepViewHere', at: '/sets', may: everyone, isAsked: false },
    fields: async () => ({ page: '/sets', name: 'Walk', query: '?q=syrup' }),
  },
  {
    ...{
      action: 'app/sets/[tag]/failed/report-fault-here.ts reportFaultHere',
      at: '/sets/{set}/failed',
      may: everyone,
    },
    ...asked,
    fields: async (site) => ({ tag: site.value('set'), says: 'It was walked past' }),
  },
  {
    ...{ action: 'app/faults/runs-again-here.ts runsAgainHere', at: '/sets/{set}', may: everyone, ...asked },
    fields: async (site) => ({ faultId: await site.madeFault(), how: 'Walked', to: '/faults' }),
  },
  {
    ...{ action: 'app/sets/[tag]/swap/[motor]/record-swap-here.ts recordSwapHere', at: '/sets/{set}/swap/{motor}' },
    ...{ may: everyone, ...asked },
    fields: (site) => site.swap(),
  },
  {
    ...{ action: 'app/motors/[number]/repair-here.ts tellRepairHere', at: '/motors/{motor}', may: desk, ...asked },
    fields: async (site) => ({ ...(await site.madeRepair()), repairCost: '100', decision: 'repair', why: 'Walked' }),
  },
  {
    ...{ action: 'app/motors/[number]/repair-here.ts endRepairHere', at: '/motors/{motor}', may: desk, ...asked },
    fields: async (site) => ({ motorId: await site.motorAtRepair(), to: site.value('shelf') }),
  },
  {
    ...{ action: 'app/swaps/[id]/readings/add-readings-here.ts addReadingsHere', at: '/swaps/{swap}/readings' },
    ...{ may: everyone, ...asked },
    fields: async (site) => ({ key: crypto.randomUUID(), swapId: site.value('swap'), rotation: 'right' }),
  },
  {
    ...{ action: 'app/site/save-settings.ts saveSettings', at: '/site', may: office, ...asked },
    fields: (site) => site.settings(),
  },
  {
    ...{ action: 'app/doubts/ask-doubts.ts acceptDoubtHere', at: '/doubts', may: desk, ...asked },
    fields: async (site) => ({ ...(await site.formOn('/doubts', 'figures')), reason: 'Walked, and looked at' }),
  },
  {
    ...{ action: 'app/doubts/ask-doubts.ts withdrawHere', at: '/doubts', may: desk, ...asked },
    fields: async (site) => ({ acceptance: await site.lastAcceptance(), back: '/doubts' }),
  },
  {
    ...{ action: 'app/review/ask-review.ts acceptFindingHere', at: '/review', may: desk, ...asked },
    fields: async (site) => ({
      ...(await site.formOn('/review', 'figures')),
      ...{ reason: 'Walked, and looked at', againOn: '2099-01-01' },
    }),
  },
  {
    ...{ action: 'app/review/ask-review.ts withdrawFindingHere', at: '/review?state=all', may: desk, ...asked },
    fields: async (site) => ({ acceptance: await site.lastReviewAcceptance(), back: '/review' }),
  },
  {
    ...{ action: 'app/sets/[tag]/measured/tell-measurement-here.ts tellMeasurementHere', at: '/sets/{set}/measured' },
    ...{ may: everyone, ...asked },
    fields: async (site) => ({
      ...{ key: crypto.randomUUID(), setId: site.value('setId') },
      ...{ day: '2026-01-05', time: '14:05', ampsL1: '5.1' },
    }),
  },
  {
    ...{ action: 'app/pictures/ask-pictures.ts retirePictureHere', at: '/motors/{motor}', may: desk, ...asked },
    fields: async (site) => ({ pictureId: await site.madePicture(), to: '/motors' }),
  },
  {
    ...{ action: 'app/imports/[id]/steer-here.ts readAnewHere', at: '/imports/{import}', may: desk, isAsked: false },
    fields: async (site) => ({ run: await site.readImport(), delimiter: ',', decimal: '.', encoding: 'utf-8' }),
  },
  {
    ...{ action: 'app/imports/[id]/confirm-here.ts confirmHere', at: '/imports/{import}', may: desk, ...asked },
    fields: async (site) => ({ run: await site.readImport(), 'column-0': 'tag', 'column-1': 'mounting' }),
  },
  {
    ...{ action: 'app/imports/[id]/steer-here.ts steerHere', at: '/imports/{import}', may: desk, isAsked: false },
    fields: async (site) => ({ run: await site.checkedImport(), step: 'cancel' }),
  },
  {
    ...{ action: 'app/tokens/ask-tokens.ts makeTokenHere', at: '/tokens', may: office, ...asked },
    fields: async (site) => ({ name: 'Walk', scopes: 'read', days: '3', ownerId: site.value('person') }),
  },
  {
    ...{ action: 'app/tokens/ask-tokens.ts revokeTokenHere', at: '/tokens', may: office, ...asked },
    fields: async (site) => ({ tokenId: await site.last('api_token') }),
  },
  {
    ...{ action: 'app/people/ask-people.ts inviteHere', at: '/people', may: office, ...asked },
    fields: async () => ({ name: 'Una Holm', email: `${crypto.randomUUID()}@example.com`, role: 'technician' }),
  },
  {
    ...{ action: 'app/link-forms.ts joinHere', at: '/join/x', may: 'anybody', ...asked, provenIn: 'people.spec.ts' },
    fields: async () => ({ link: 'nobody-has-this', password: 'heron-quarry-lantern' }),
  },
  {
    ...{ action: 'app/people/ask-people.ts revokeLinkHere', at: '/people', may: office, ...asked },
    fields: async (site) => ({ linkId: await site.last('person_link') }),
  },
  {
    ...{ action: 'app/people/ask-people.ts resetHere', at: '/people/{person}', may: office, ...asked },
    fields: async (site) => ({ userId: site.value('person') }),
  },
  {
    ...{
      action: 'app/link-forms.ts resetByLinkHere',
      at: '/reset/x',
      may: 'anybody',
      ...asked,
      provenIn: 'people.spec.ts',
    },
    fields: async () => ({ link: 'nobody-has-this', password: 'heron-quarry-lantern' }),
  },
  {
    // One's own, and an administrator anybody's.
    ...{
      action: 'app/people/ask-people.ts endSessionHere',
      at: '/person',
      may: ['reliability', 'administrator'],
      isTheirOwn: true,
      ...asked,
    },
    fields: async (site) => ({ sessionId: await site.sessionOf('reliability') }),
  },
  {
    ...{ action: 'app/people/ask-people.ts endSessionsHere', at: '/people/{person}', may: office, ...asked },
    fields: async (site) => ({ userId: await site.someoneSignedIn() }),
  },
  {
    ...{ action: 'app/person/ask-self.ts changeUnitsHere', at: '/person', may: everyone, ...asked },
    fields: async () => ({ units: 'us' }),
  },
  {
    ...{
      action: 'app/person/ask-self.ts changePasswordHere',
      at: '/person',
      may: everyone,
      ...asked,
      provenIn: 'people.spec.ts',
    },
    fields: async () => ({ old: 'not-the-password', password: 'heron-quarry-lantern' }),
  },
  {
    ...{ action: 'app/people/ask-people.ts changeRoleHere', at: '/people/{person}', may: office, ...asked },
    fields: async (site) => ({ userId: await site.extraPerson(), from: 'technician', role: 'planner' }),
  },
  {
    ...{ action: 'app/people/ask-people.ts retireHere', at: '/people/{person}', may: office, ...asked },
    fields: async (site) => ({ userId: await site.extraPerson(), sure: 'yes' }),
  },
  {
    ...{ action: 'app/people/ask-people.ts bringBackHere', at: '/people/{person}', may: office, ...asked },
    fields: async (site) => ({ userId: await site.extraPerson(true) }),
  },
  {
    ...{ action: 'app/people/ask-people.ts anonymiseHere', at: '/people/{person}', may: office, ...asked },
    fields: async (site) => ({ userId: await site.extraPerson(true), sure: 'yes' }),
  },
];
