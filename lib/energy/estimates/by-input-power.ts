import { partLoad } from '@/lib/standards/part-load';
import { figure } from '@/lib/units/figure';
import { type LoadEstimate, type NotMade, notMade } from './estimate';
import type { ReadingCase } from './reading-case';

/** How far a portable power meter may be off: common practice, no source. */
const METER_OFF = 0.02;
/** The losses of one motor may be a fifth above or below the plate's: NEMA MG 1 12.59, from memory. */
const LOSSES_OFF = 0.2;

const BAND = `meter ±${100 * METER_OFF} % (common practice, no source), losses ±${100 * LOSSES_OFF} % of the plate’s (NEMA MG 1 12.59, from memory)`;

/**
 * Input power read over the input power at full load. Reads high where efficiency has fallen with the load, so its
 * band goes down to what the output then is.
 */
export function byInputPower(read: ReadingCase): LoadEstimate | NotMade {
  const ready = readyOf('input-power', read);
  if ('made' in ready) return ready;
  const { inputKw, ratedKw, efficiency } = ready;
  const ratedInputKw = ratedKw / efficiency;
  const load = inputKw / ratedInputKw;
  const off = offOf(efficiency);
  const output = outputLoad(ready);
  // Where no efficiency is printed the output could be next to nothing.
  const low = output === null ? 0 : Math.min(load, output) * (1 - off);
  return {
    made: true,
    method: 'input-power',
    loadPct: 100 * load,
    lowPct: 100 * low,
    highPct: 100 * load * (1 + off),
    arithmetic: `${figure(inputKw, 2)} kW / (${figure(ratedKw, 2)} kW / ${figure(efficiency, 3)}) = ${figure(inputKw, 2)} / ${figure(ratedInputKw, 2)} = ${figure(100 * load, 1)} %`,
    cite: `load by input power: DOE load fact sheet (from memory); band: ${BAND}, down to the output that is left`,
    caveats: [...caveatsOf(read), 'Input over input: where efficiency has fallen, the shaft gives less.'],
  };
}

/** The shaft's power itself: input × efficiency at that load, over rated power; solved until both agree. */
export function byOutput(read: ReadingCase): LoadEstimate | NotMade {
  const ready = readyOf('output', read);
  if ('made' in ready) return ready;
  const { inputKw, ratedKw, efficiency } = ready;
  const load = outputLoad(ready);
  if (load === null)
    return notMade('output', 'The load is below a tenth of rated: no efficiency is printed there anywhere.');
  const at = (load * ratedKw) / inputKw;
  const off = offOf(efficiency);
  return {
    made: true,
    method: 'output',
    loadPct: 100 * load,
    lowPct: 100 * load * (1 - off),
    highPct: 100 * load * (1 + off),
    arithmetic: `${figure(inputKw, 2)} kW × ${figure(at, 3)} (efficiency at that load) = ${figure(inputKw * at, 2)} kW; ${figure(inputKw * at, 2)} kW / ${figure(ratedKw, 2)} kW = ${figure(100 * load, 1)} %`,
    cite: `output = input × η(load), solved: a compressor library after the DOE load fact sheet (read in one text); part load: its Figure 1 (read in one text); band: ${BAND}`,
    caveats: caveatsOf(read),
  };
}

interface Ready {
  inputKw: number;
  ratedKw: number;
  /** Per unit. */
  efficiency: number;
}

function readyOf(method: 'input-power' | 'output', read: ReadingCase): Ready | NotMade {
  const { inputKw, row, ratedEfficiencyPct } = read;
  if (inputKw.value === null) return notMade(method, inputKw.why);
  if (inputKw.value === 0) return notMade(method, 'No power goes in: it does not run.');
  if (row.plate?.kw == null) return notMade(method, 'The plate’s power at this supply is not known.');
  if (ratedEfficiencyPct.value === null) return notMade(method, ratedEfficiencyPct.why);
  return { inputKw: inputKw.value, ratedKw: row.plate.kw, efficiency: ratedEfficiencyPct.value / 100 };
}

const offOf = (efficiency: number): number => METER_OFF + LOSSES_OFF * (1 - efficiency);

const ENOUGH_ROUNDS = 200;
const SAME = 1e-10;

/** Load = Pi·η(load)/P, per unit; null where it falls below what any efficiency is printed for. */
function outputLoad({ inputKw, ratedKw, efficiency }: Ready): number | null {
  let load = (inputKw * efficiency) / ratedKw;
  for (let round = 0; round < ENOUGH_ROUNDS; round++) {
    const ratio = partLoad(ratedKw / efficiency, load);
    if (ratio === null) return null;
    const next = (inputKw * efficiency * ratio) / ratedKw;
    if (Math.abs(next - load) < SAME) return next;
    load = next;
  }
  return load;
}

const caveatsOf = ({ isDriveFed, measured, caveats }: ReadingCase): string[] => [
  ...(isDriveFed ? ['Fed by a drive: read ahead of it, the figure holds what the drive loses too.'] : []),
  ...(measured.inputKw === null ? caveats.ofAmps : []),
  ...caveats.ofRow,
];
