import { SectionHead } from '@/app/look/section-head';
import type { Demand, DemandGroup } from '@/lib/purchase/demand';

/** A purchase specification, group by group: what, why, and the value, or that it is to be told. */
export function DemandGroups({ groups }: { groups: readonly DemandGroup[] }) {
  return (
    <div className="spec">
      {groups.map(({ title, demands }) => (
        <section key={title}>
          <SectionHead title={title} />
          <dl className="kv">
            {demands.map((demand) => (
              <DemandRow key={demand.id} demand={demand} />
            ))}
          </dl>
        </section>
      ))}
    </div>
  );
}

function DemandRow({ demand: { label, value, why, bySet } }: { demand: Demand }) {
  return (
    <div>
      <dt>
        {label}
        <span className="label block">{why}</span>
      </dt>
      <dd>
        {value === null ? <b>to be told</b> : <bdi>{value}</bdi>}
        {bySet.map((one) => (
          <span key={one.tag} className="label block">
            <bdi>{one.tag}</bdi>: {one.value === null ? <b>to be told</b> : <bdi>{one.value}</bdi>}
          </span>
        ))}
      </dd>
    </div>
  );
}
