import type { Quantity } from '@/lib/job/quantities/quantity';

/** What the work is done to, in figures; what is not known leaves room to write it in, and says what to read. */
export function FiguresOfWork({ quantities }: { quantities: readonly Quantity[] }) {
  if (quantities.length === 0) return null;
  return (
    <section>
      <h2>Figures of the work</h2>
      <dl className="quantities">
        {quantities.map(({ id, name, value, detail }) => (
          <div key={id}>
            <dt>{name}</dt>
            <dd>
              {value === null ? <span className="blank" /> : <b>{value}</b>}
              {detail !== null && <span className="label block">{detail}</span>}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
