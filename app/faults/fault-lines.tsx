import Link from 'next/link';
import type { FaultAt } from '@/lib/register/fault-line';
import { standingText } from '../lasted';
import { Tag } from '../look/tag';
import { momentText } from '../moment';
import { faultPath } from '../paths';
import { FaultClosing, stoodText } from './fault-closing';

/** Faults as lines: the set and what was seen, where, and how long. The tag leads to the fault. */
export function FaultLines({ faults, timezone }: { faults: readonly FaultAt[]; timezone: string }) {
  return (
    <ul className="lines">
      {faults.map((fault) => (
        <li key={fault.faultId} className={fault.closedAt === null ? 'urgent' : undefined}>
          <p className="line-name">
            <Link href={faultPath(fault.faultId)}>
              <bdi>{fault.tag}</bdi>
            </Link>
          </p>
          <span className="line-aside">{stoodText(fault) ?? criticalityText(fault)}</span>
          <p className="line-below">
            <bdi>{fault.says}</bdi>
          </p>
          <p className="line-below">
            {whereText(fault)}, {fault.motor === null ? 'no motor in it' : <Tag>{fault.motor}</Tag>}
          </p>
          <p className="line-below">
            {fault.closedAt === null ? (
              <>
                <b>Failed</b> {standingText(fault.at, timezone)}
              </>
            ) : (
              <>
                Failed {momentText(fault.at, timezone)}. <FaultClosing fault={fault} timezone={timezone} />
              </>
            )}
          </p>
        </li>
      ))}
    </ul>
  );
}

const criticalityText = ({ criticality }: FaultAt) =>
  criticality === null ? 'criticality not told' : `criticality ${criticality} of 4`;

const whereText = ({ area, service }: FaultAt) => [area ?? 'area not told', service].filter(Boolean).join(', ');
