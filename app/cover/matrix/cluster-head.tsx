import type { Cluster } from '@/lib/spares/cover/cluster';
import { figure } from '@/lib/units/figure';

/** What the sets of a row, or the motors of a column, are alike in. */
export function ClusterHead({ cluster }: { cluster: Cluster }) {
  const { system, shaftHeightMm, phases } = cluster;
  return (
    <>
      <span className="alike">
        {system ?? 'frame not known'} {shaftHeightMm === null ? 'height not known' : `${figure(shaftHeightMm)}\u00a0mm`}
      </span>{' '}
      {supplyTexts(cluster).join(' ')} {phases === 3 ? '' : phases === 1 ? '1-phase ' : 'phases not told '}
    </>
  );
}

/** So many frames are told one by one. */
const FRAMES = 3;

/** "213T, 215T": the frames of a row. */
export function framesText(frames: readonly string[]): string {
  const more = frames.length > FRAMES ? ` and ${frames.length - FRAMES} more` : '';
  return `${frames.slice(0, FRAMES).join(', ')}${more}`;
}

/** "230/460 V 60 Hz": the volts of each frequency together. A line may be broken behind a stroke, and before the hertz. */
function supplyTexts({ supplies }: Cluster): string[] {
  if (supplies.length === 0) return ['volts not told'];
  const hertzes = [...new Set(supplies.map(({ hertz }) => hertz))];
  return hertzes.map((hertz) => {
    const volts = supplies.flatMap((one) => (one.hertz === hertz && one.volts !== null ? [figure(one.volts)] : []));
    const ofVolts = volts.length === 0 ? 'volts not told' : `${volts.join('/\u200b')}\u00a0V`;
    return `${ofVolts} ${hertz === null ? 'hertz not told' : `${figure(hertz)}\u00a0Hz`}`;
  });
}
