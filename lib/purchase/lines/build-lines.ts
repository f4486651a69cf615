import type { Motor } from '@/lib/plant/motor';
import type { Auxiliary } from '@/lib/plant/motor-words';
import type { PumpSet } from '@/lib/plant/set';
import { areaInWords } from '@/lib/standards/area-order';
import type { Line } from '../demand';
import { ofAll, quantity } from '../quantity';

/** What surrounds it, and what it brings besides power. */
export const BUILD_LINES: readonly Line[] = [
  {
    ...{ id: 'enclosure', label: 'Enclosure', criterion: 'enclosure', of: 'asked' },
    value: ({ enclosure, ip }) => [ip, enclosure].filter((part) => part !== null).join(', ') || null,
    why: (_, set) =>
      set.surroundings.ip !== null
        ? 'the place asks for it'
        : set.failed?.ip == null
          ? 'neither place nor failed motor tells one: IP55 is usual (common practice, no source)'
          : 'as the failed motor had it',
  },
  {
    ...{ id: 'ambient', label: 'Ambient, up to', criterion: 'temperature-altitude', of: 'asked' },
    value: ({ ambientC }, { surroundings }) => (surroundings.ambientC === null ? null : quantity(ambientC, '°C', 0)),
    why: 'IEC 60034-1 and NEMA MG 1 rate for 40 °C: a hotter place is to be stamped on the plate',
  },
  {
    ...{ id: 'altitude', label: 'Altitude', criterion: 'temperature-altitude', of: 'each' },
    value: (_, { surroundings }) => heightText(surroundings.altitudeM),
    strictest: (sets) =>
      heightText(
        ofAll(
          sets.map(({ surroundings }) => surroundings.altitudeM),
          Math.max,
        ),
      ),
    why: 'rated up to 1000 m; above, the power is made up for',
  },
  {
    ...{ id: 'insulation', label: 'Insulation', criterion: 'temperature-altitude', of: 'asked' },
    value: ({ insulation }) => (insulation === null ? null : `class ${insulation}, temperature rise of class B`),
    why: 'a margin of one class: common practice, no source',
  },
  {
    ...{ id: 'area', label: 'Area classification', criterion: 'area-classification', of: 'asked' },
    isNothing: ({ classification }) => classification === null,
    value: ({ classification }, { surroundings }) =>
      classification !== null
        ? areaInWords(classification)
        : surroundings.classification === null
          ? 'unclassified'
          : null,
    why: 'a competent person approves mark and certificate',
  },
  {
    ...{ id: 'certificates', label: 'Certificates', criterion: 'area-classification', of: 'asked' },
    isNothing: ({ classification }) => classification === null,
    value: ({ classification }, { supply, surroundings }) =>
      classification === null
        ? surroundings.classification === null
          ? 'none for an area'
          : null
        : `for ${areaInWords(classification)}${supply.start === 'drive' ? ', naming this drive and its range of speed' : ''}`,
    why: 'before the order, in writing',
  },
  {
    ...{ id: 'washdown', label: 'Washdown', criterion: 'washdown', of: 'asked' },
    isNothing: ({ washdown }) => washdown === null || washdown === 'none',
    value: ({ washdown }, { surroundings }) =>
      washdown !== null && washdown !== 'none'
        ? `made to be washed, ${washdown}; drains low in this position`
        : surroundings.washdown === null
          ? null
          : 'not washed',
    why: 'declared by the maker: a degree of protection alone is not enough',
  },
  {
    ...{ id: 'auxiliaries', label: 'With', criterion: 'auxiliaries', of: 'asked' },
    value: ({ has }) => (has === null || has.length === 0 ? 'nothing besides' : has.join(', ')),
    why: 'what the set uses, and what the failed motor had',
  },
  ...auxiliary('brake', [
    {
      ...{ id: 'brake-torque', label: 'Brake, torque at least' },
      value: ({ brake }) => quantity(brake.torqueNm, 'N·m'),
    },
    { ...{ id: 'brake-volts', label: 'Brake, coil' }, value: ({ brake }) => quantity(brake.volts, 'V', 0) },
  ]),
  ...auxiliary('thermistor', [{ ...{ id: 'thermistor', label: 'Thermistor, kind for the relay' }, value: () => null }]),
  ...auxiliary('rtd', [{ ...{ id: 'rtd', label: 'RTD, kind and number' }, value: () => null }]),
  ...auxiliary('heater', [{ ...{ id: 'heater', label: 'Heater, volts and watts' }, value: () => null }]),
  ...auxiliary('encoder', [{ ...{ id: 'encoder', label: 'Encoder, pulses and signal' }, value: () => null }]),
];

const heightText = (metres: number | null) => quantity(metres, 'm', 0);

type Part = Pick<Line, 'id' | 'label' | 'value'>;

/** Lines that are asked only where it has that auxiliary. The register keeps little of them: that is to be told. */
function auxiliary(name: Auxiliary, parts: readonly Part[]): Line[] {
  const isAsked = ({ has }: Motor, _: PumpSet) => has?.includes(name) === true;
  return parts.map((part) => ({
    ...part,
    ...({ criterion: 'auxiliaries', of: 'asked' } as const),
    isAsked,
    why: `read it at the ${name === 'brake' ? 'brake' : 'relay, drive or terminal box'} there is`,
  }));
}
