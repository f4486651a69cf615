import { AUXILIARIES, type Auxiliary } from '@/lib/plant/motor-words';
import type { Words } from '../field';

/**
 * The few words that some columns hold, and how people write them. English trade words; German, French and Spanish
 * ones from memory. Compared in small letters and digits only.
 */
export const FOOTING_WORDS: Words = {
  foot: [
    'foot',
    'feet',
    'foot mounted',
    'base',
    'base mounted',
    'rigid',
    'rigid base',
    'fuss',
    'füße',
    'pattes',
    'patas',
  ],
  face: [
    'face',
    'flange',
    'flanged',
    'face mounted',
    'flange mounted',
    'flansch',
    'bride',
    'brida',
    'c-face',
    'footless',
  ],
  'foot-and-face': [
    'foot and face',
    'face and foot',
    'foot and flange',
    'feet and flange',
    'foot/face',
    'foot + face',
    'foot & face',
    'foot & flange',
    'fuss und flansch',
  ],
};

export const DIRECTION_WORDS: Words = {
  horizontal: ['horizontal', 'horiz', 'hor', 'h', 'horizontale', 'waagerecht'],
  down: ['down', 'vertical down', 'vertical shaft down', 'shaft down'],
  up: ['up', 'vertical up', 'vertical shaft up', 'shaft up'],
};
export const DIRECTION_VAGUE = { vertical: 'could be shaft down or shaft up', v: 'could be shaft down or shaft up' };

export const SIDE_WORDS: Words = {
  left: ['left', 'f-1', 'lh', 'left hand', 'links', 'gauche', 'izquierda'],
  right: ['right', 'f-2', 'rh', 'right hand', 'rechts', 'droite', 'derecha'],
  top: ['top', 'f-3', 'oben', 'dessus', 'arriba'],
};

export const COUPLING_WORDS: Words = {
  coupling: ['coupling', 'direct', 'coupled', 'direct coupled', 'flexible coupling', 'kupplung', 'accouplement'],
  'close-coupled': ['close coupled', 'closecoupled', 'monobloc'],
  gear: ['gear', 'gearbox', 'gear reducer', 'reducer', 'geared', 'getriebe', 'réducteur', 'reductor'],
  belt: ['belt', 'v-belt', 'belts', 'belt drive', 'riemen', 'keilriemen', 'courroie', 'correa'],
};

export const INPUT_WORDS: Words = {
  hub: ['hub', 'coupling half', 'sheave'],
  quill: ['quill', 'hollow bore', 'hollow input'],
  'pump-shaft': ['pump shaft', 'pump-shaft'],
};

export const START_WORDS: Words = {
  direct: ['direct', 'dol', 'd.o.l.', 'direct on line', 'across the line', 'full voltage', 'direkt', 'fvnr', 'directo'],
  'star-delta': [
    'star delta',
    'star/delta',
    'y/d',
    'yd',
    'wye delta',
    'y-delta',
    'stern dreieck',
    'étoile triangle',
    's/d',
  ],
  'part-winding': ['part winding', 'part-winding'],
  soft: ['soft', 'soft start', 'soft starter', 'sanftanlauf', 'démarreur progressif', 'arrancador suave'],
  drive: ['drive', 'vfd', 'vsd', 'inverter', 'frequency converter', 'asd', 'fu', 'umrichter', 'variateur', 'variador'],
};

export const LOAD_WORDS: Words = {
  'constant-torque': ['constant torque', 'ct', 'positive displacement', 'pd', 'rotary', 'reciprocating'],
  quadratic: ['quadratic', 'variable torque', 'vt', 'centrifugal', 'kreiselpumpe', 'centrifuge', 'centrífuga'],
};

export const OVERLOAD_WORDS: Words = { line: ['line', 'in line'], phase: ['phase', 'in phase', 'phase leg'] };

export const PHASE_WORDS: Words = {
  1: ['1', '1~', '1 ph', '1 phase', 'single', 'single phase', 'one', '1φ', 'einphasig', 'monophasé', 'monofásico'],
  3: ['3', '3~', '3 ph', '3 phase', 'three', 'three phase', '3φ', 'dreiphasig', 'drehstrom', 'triphasé', 'trifásico'],
};

export const CRITICALITY_WORDS: Words = { 1: ['1'], 2: ['2'], 3: ['3'], 4: ['4'] };

export const KIND_WORDS: Words = {
  cage: ['cage', 'squirrel cage', 'scim', 'cage induction', 'induction'],
  'permanent-magnet': ['permanent magnet', 'pm', 'pmsm', 'pmac'],
  reluctance: ['reluctance', 'synchronous reluctance', 'synrm'],
  'wound-rotor': ['wound rotor', 'slip ring', 'slipring', 'schleifringläufer'],
  'single-phase': ['single phase'],
  'two-speed': ['two speed', '2 speed', 'dahlander'],
};

const words = (...values: string[]): Words => Object.fromEntries(values.map((value) => [value, [value]]));
export const WINDING_WORDS = words('star-delta-6', 'part-winding-6', 'star-9', 'delta-9', 'star-delta-12');
export const DESIGN_WORDS = words('A', 'B', 'C', 'D', 'E', 'N', 'NE', 'NY', 'NEY', 'H', 'HE', 'HY', 'HEY');
export const CODE_WORDS = words(...'ABCDEFGHJKLMNPRSTUV');

export const DRIVE_DUTY_WORDS: Words = {
  none: ['none', 'no', 'not suitable'],
  general: ['general', 'general purpose', 'mg 1 part 30', 'part 30'],
  inverter: ['inverter', 'inverter duty', 'vfd duty', 'mg 1 part 31', 'part 31'],
};
export const DRIVE_DUTY_VAGUE = { yes: 'could be general (MG 1 part 30) or inverter (MG 1 part 31)' };

export const WASHDOWN_WORDS: Words = {
  none: ['none', 'no'],
  painted: ['painted', 'painted washdown', 'white', 'white washdown', 'epoxy'],
  stainless: ['stainless', 'stainless steel', 'ss', 'stainless washdown'],
};
export const WASHDOWN_VAGUE = {
  yes: 'could be painted or stainless steel: look at the motor',
  washdown: 'could be painted or stainless steel: look at the motor',
};

export const CONNECTION_WORDS: Words = {
  star: ['star', 'y', 'wye', 'stern', 'étoile', 'estrella'],
  delta: ['delta', 'd', 'δ', 'dreieck', 'triangle', 'triángulo'],
  'series-star': ['series star', 'series-star', 'series wye'],
  'parallel-star': ['parallel star', 'parallel-star', 'yy', '2y', 'parallel wye'],
  'series-delta': ['series delta', 'series-delta'],
  'parallel-delta': ['parallel delta', 'parallel-delta', 'δδ', 'dd', '2d'],
};

export const PLACE_WORDS: Words = {
  'on-shelf': ['on shelf', 'on-shelf', 'shelf', 'in store', 'store', 'stores', 'stock', 'in stock', 'lager', 'spare'],
  'at-repair': ['at repair', 'at-repair', 'repair', 'in repair', 'under repair', 'rewinder', 'workshop', 'reparatur'],
  'on-order': ['on order', 'on-order', 'ordered', 'bestellt', 'en commande', 'pedido'],
  scrapped: ['scrapped', 'scrap', 'schrott', 'verschrottet'],
};
export const PLACE_VAGUE = Object.fromEntries(
  ['in set', 'in-set', 'installed', 'in use', 'running', 'in service'].map((word) => [
    word,
    'says that the motor is in a set: motors in sets come with the list of sets',
  ]),
);

/** Which auxiliary is meant where the plate's own words do not say it. */
export const AUXILIARY_WORDS: Readonly<Record<Auxiliary, readonly string[]>> = {
  brake: ['brake', 'bremse', 'frein', 'freno'],
  thermistor: ['thermistor', 'thermistors', 'ptc', 'kaltleiter'],
  thermostat: ['thermostat', 'thermostats'],
  rtd: ['rtd', 'rtds', 'pt100', 'pt 100'],
  heater: ['heater', 'heaters', 'space heater', 'anti-condensation heater', 'stillstandsheizung'],
  encoder: ['encoder', 'drehgeber'],
  'insulated-bearing': ['insulated bearing', 'insulated bearings'],
  'shaft-ground': ['shaft ground', 'shaft grounding', 'grounding ring', 'shaft earthing'],
};
/** In the order of the contract, so that a list is always written the same. */
export const auxiliariesInOrder = (told: Iterable<Auxiliary>): Auxiliary[] => {
  const set = new Set(told);
  return AUXILIARIES.filter((one) => set.has(one));
};
