import { Figures } from '@/app/look/facts';
import { LoadRule } from '@/app/look/load-rule';
import { SectionHead } from '@/app/look/section-head';
import { signed } from '@/app/look/words';
import type { Result } from '@/lib/matching/assess';
import { figure } from '@/lib/units/figure';

/** Where the motor and the pump would run together. */
export function PointFigures({ point }: { point: Result['operatingPoint'] }) {
  const text = (value: number | null, digits: number) => (value === null ? null : figure(value, digits));
  return (
    <section>
      <SectionHead title="Operating point" />
      <Figures
        cells={[
          { label: 'Motor', value: text(point.motorRpm, 0), unit: 'rpm' },
          { label: 'Pump', value: text(point.pumpRpm, 0), unit: 'rpm' },
          { label: 'Flow', value: point.flowChangePct === null ? null : signed(point.flowChangePct, 1), unit: '%' },
          { label: 'Motor output', value: text(point.motorKw, 2), unit: 'kW' },
          { label: 'Torque', value: text(point.torquePct, 0), unit: '%' },
          { label: 'Current', value: text(point.amps, 1), unit: 'A' },
        ]}
      />
      <LoadRule loadPct={point.loadPct} />
    </section>
  );
}
