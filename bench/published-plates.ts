import { type Motor, type MotorInput, motor } from '@/lib/plant/motor';
import { codeLetter } from '@/lib/standards/code-letter';
import { currentOfDesign } from '@/lib/standards/locked-rotor-current';
import { minimumTorque } from '@/lib/standards/minimum-torque';
import { synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { codeLetters } from '@/lib/standards/tables/code-letters';
import { customaryPairs } from '@/lib/standards/tables/customary-pairs';
import { efficiencyIec } from '@/lib/standards/tables/efficiency-iec';
import { efficiencyUs } from '@/lib/standards/tables/efficiency-us';
import { fullLoadCurrents } from '@/lib/standards/tables/full-load-currents';
import { iecFlanges } from '@/lib/standards/tables/iec-flanges';
import { iecFootFrames } from '@/lib/standards/tables/iec-foot-frames';
import { iecMountingCodes } from '@/lib/standards/tables/iec-mounting-codes';
import { iecOutputs } from '@/lib/standards/tables/iec-outputs';
import { nemaFaces } from '@/lib/standards/tables/nema-faces';
import { nemaFootFrames } from '@/lib/standards/tables/nema-foot-frames';
import { nemaOutputs } from '@/lib/standards/tables/nema-outputs';
import { kwOfHp } from '@/lib/units/power';

type Plate = Omit<MotorInput, 'id'>;

/** Plates put together from the printed tables alone, by the table that each varies. */
export function publishedPlates(): { from: string; motors: Motor[] }[] {
  const of = (from: string, plates: readonly Plate[]) => ({
    from,
    motors: plates.map((plate, i) => motor.parse({ id: `${from} ${i + 1}`, ...plate })),
  });
  return [
    of('NEMA MG 1 Part 13 × efficiencies × currents', nemaPlates()),
    of('EN 50347 outputs × classes', iecPlates()),
    of('NEC 430.248 and 430.250', currentPlates()),
    of('efficiency tables', efficiencyPlates()),
    of('frames and faces as printed', framePlates()),
    of('pairs of hp and kW', pairPlates()),
  ];
}

/** Slip at full load: the least and the greatest that is customary for a size, in per cent (from memory). */
const SLIPS = [
  { upToKw: 0.75, pct: [4, 8] },
  { upToKw: 3, pct: [2.5, 6] },
  { upToKw: 15, pct: [1.5, 3.5] },
  { upToKw: 75, pct: [1, 2] },
  { upToKw: 375, pct: [0.4, 1.3] },
] as const;
const slipsOf = (kw: number): readonly number[] => SLIPS.find(({ upToKw }) => kw <= upToKw)?.pct ?? [0.4];
const POLES = [2, 4, 6, 8] as const;
const VOLTS = [115, 200, 208, 230, 460, 575, 2300] as const;

const rpmOf = (poles: number, hertz: number, slipPct: number) =>
  Math.round(synchronousSpeed(poles, hertz) * (1 - slipPct / 100));

/** Every rating and frame of Part 13, at each slip and level of efficiency, with the table currents of 230 and 460 V. */
function nemaPlates(): Plate[] {
  return nemaOutputs.rows.flatMap(({ hp, rpm, enclosure, frame, beltFrame }) => {
    const kw = kwOfHp(hp);
    const poles = synchronousSpeed(1, 60) / rpm;
    const frames = [frame[0], ...(beltFrame === undefined ? [] : [beltFrame[0]])];
    const currents = fullLoadCurrents.rows.find((row) => row.phases === 3 && Math.abs(row.hp - hp) < 0.001);
    const efficiencies = efficiencyUs.rows.flatMap((row) =>
      row.hp === hp && row.build === (enclosure === 'ODP' ? 'open' : 'enclosed')
        ? (row.pct[poles / 2 - 1]?.[0] ?? [])
        : [],
    );
    return frames.flatMap((name) =>
      slipsOf(kw).flatMap((slip) =>
        efficiencies.map(
          (efficiencyPct): Plate => ({
            kind: 'cage',
            frame: name,
            phases: 3,
            poles,
            enclosure,
            design: 'B',
            serviceFactor: enclosure === 'ODP' ? 1.15 : 1,
            codeLetter: letterOf(kw),
            lockedRotorPct: minimumTorque('locked-rotor', 'B', kw, poles)?.pct ?? null,
            breakdownPct: minimumTorque('breakdown', 'B', kw, poles)?.pct ?? null,
            duty: 'S1',
            ratings: ([230, 460] as const).map((volts) => ({
              volts,
              hertz: 60,
              hp,
              rpm: rpmOf(poles, 60, slip),
              amps: currents?.amps[VOLTS.indexOf(volts)]?.[0] ?? null,
              efficiencyPct,
            })),
          }),
        ),
      ),
    );
  });
}

/** The letter of the greatest locked-rotor current that NEMA MG 1-12.35 allows a design B. */
function letterOf(kw: number): Plate['codeLetter'] {
  const most = currentOfDesign('B', kw, 230);
  if (most === null) return null;
  const kva = ((Math.sqrt(3) * 230 * most.amps) / 1000 / kw) * kwOfHp(1);
  const letters = codeLetters.rows.map(({ letter }) => letter as NonNullable<Plate['codeLetter']>);
  return letters.findLast((letter) => (codeLetter(letter)?.from ?? Number.POSITIVE_INFINITY) <= kva) ?? null;
}

/** Every output and frame of EN 50347, held each way, in each class, for 400 V 50 Hz and 460 V 60 Hz. */
function iecPlates(): Plate[] {
  return iecOutputs.rows.flatMap(({ kw, poles, frame }) =>
    efficiencyIec.rows
      .filter((row) => row.kw === kw)
      .flatMap((row) =>
        slipsOf(kw).map((slip, i): Plate => {
          const efficiencyPct = row.pct[poles / 2 - 1]?.[0] ?? null;
          return {
            kind: 'cage',
            frame: frame[0],
            mounting: ['IM B3', 'IM B5'][i] ?? null,
            phases: 3,
            poles,
            design: 'N',
            lockedRotorPct: minimumTorque('locked-rotor', 'N', kw, poles)?.pct ?? null,
            breakdownPct: minimumTorque('breakdown', 'N', kw, poles)?.pct ?? null,
            duty: 'S1',
            ratings: [
              { volts: 400, hertz: 50, kw, rpm: rpmOf(poles, 50, slip), efficiencyPct },
              { volts: 460, hertz: 60, kw, rpm: rpmOf(poles, 60, slip), efficiencyPct },
            ],
          };
        }),
      ),
  );
}

/** Every printed current: each voltage of each power. */
function currentPlates(): Plate[] {
  return fullLoadCurrents.rows.flatMap(({ phases, hp, amps }) =>
    amps.flatMap((cell, column): Plate[] =>
      cell === null
        ? []
        : [
            {
              kind: phases === 1 ? 'single-phase' : 'cage',
              phases,
              ratings: [{ volts: VOLTS[column] as number, hertz: 60, hp, amps: cell[0] }],
            },
          ],
    ),
  );
}

/** Every printed efficiency of either mains. */
function efficiencyPlates(): Plate[] {
  const cells = (row: { pct: readonly (readonly [number, ...unknown[]] | null)[] }, rating: object): Plate[] =>
    row.pct.flatMap((cell, i) =>
      cell === null
        ? []
        : [{ kind: 'cage' as const, poles: POLES[i] as number, ratings: [{ ...rating, efficiencyPct: cell[0] }] }],
    );
  return [
    ...efficiencyIec.rows.flatMap((row) => cells(row, { hertz: 50, kw: row.kw })),
    ...efficiencyUs.rows.flatMap((row) => cells(row, { hertz: 60, hp: row.hp })),
  ];
}

/** Every frame, face and flange as the tables name them, with the mounting codes that go with an IEC frame. */
function framePlates(): Plate[] {
  const codes = iecMountingCodes.rows.map(({ codeI }) => codeI);
  return [
    ...nemaFootFrames.rows.flatMap(({ frame }): Plate[] => [
      { frame, codeLetter: 'K' },
      { frame, codeLetter: 'K', mounting: 'F-1' },
    ]),
    ...nemaFaces.rows.map(({ frame }): Plate => ({ frame, codeLetter: 'K' })),
    ...iecFootFrames.rows.flatMap(({ frame }) => codes.map((mounting): Plate => ({ frame, mounting, design: 'N' }))),
    ...iecFlanges.rows.map(
      ({ flange, kind }): Plate => ({ frame: `112M ${flange}`, mounting: kind === 'FF' ? 'IM B5' : 'IM B14' }),
    ),
  ];
}

/** Plates with a row in hp and one in the kW the trade stamps for it. */
function pairPlates(): Plate[] {
  return customaryPairs.rows.map(
    ({ hp, kw }): Plate => ({
      kind: 'cage',
      ratings: [
        { hertz: 60, hp },
        { hertz: 60, kw: kw[0] },
      ],
    }),
  );
}
