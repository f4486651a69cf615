import { SectionHead } from '@/app/look/section-head';
import type { Cautions } from './cautions';

/** The cautions of one moment after another, each once. */
export function CautionList({ cautions }: { cautions: readonly Cautions[] }) {
  return (
    <>
      {cautions.map(({ title, says }) => (
        <section key={title}>
          <SectionHead title={title} />
          <ul className="cautions">
            {says.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}
