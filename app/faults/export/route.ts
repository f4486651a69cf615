import { askedBy } from '@/app/api/v1/asked-by';
import { fileAnswer } from '@/app/file-answer';
import { exportFaults } from '@/lib/register/commands/export-faults';
import type { FaultAt } from '@/lib/register/fault-line';
import { faultsAsked } from '../faults-asked';

/** The faults as they are asked for, one a row, open ones first. */
export async function GET(request: Request): Promise<Response> {
  return askedBy(request, 'register.export', async (actor) => {
    const filter = faultsAsked(Object.fromEntries(new URL(request.url).searchParams));
    return fileAnswer('faults', 'csv', [HEAD, ...(await exportFaults(actor, filter)).map(rowOf)]);
  });
}

const HEAD = [
  ...['Tag', 'Area', 'Criticality', 'Motor', 'What was seen', 'Failed (UTC)', 'Told by', 'Seen, phone’s clock (UTC)'],
  ...['Ran again (UTC)', 'Minutes from fault to running', 'Closed by', 'What was done', 'Closed by whom'],
];

function rowOf(fault: FaultAt): (string | number | null)[] {
  const { tag, area, criticality, motor, says, at, by, seenAt, closedAt, closedBy, closedHow, closer } = fault;
  const minutes = closedAt === null ? null : Math.round((closedAt.getTime() - at.getTime()) / 60_000);
  return [
    ...[tag, area, criticality, motor, says, at.toISOString(), by, moment(seenAt)],
    ...[moment(closedAt), minutes, closedBy, closedHow, closer],
  ];
}

const moment = (at: Date | null) => (at === null ? null : at.toISOString());
