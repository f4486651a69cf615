import type { Prisma } from '@/lib/db/generated/client';
import type { ToldChange } from '@/lib/fields/told-changes';
import { faultText } from '@/lib/plant/fault';

/** A swap as a line of a history. */
export interface SwapLine {
  kind: 'swap';
  swapId: string;
  at: Date;
  by: string;
  setTag: string;
  motorIn: string;
  motorOut: string | null;
  outTo: string | null;
  fromSetTag: string | null;
  why: string;
  verdict: string | null;
  hours: number | null;
}

export interface FaultLine {
  kind: 'fault';
  faultId: string;
  at: Date;
  by: string;
  setTag: string;
  motor: string | null;
  says: string;
  /** When the set ran again, by the server's clock; null: it is open. */
  closedAt: Date | null;
  /** swap or repair; null: open, or closed before that was told. */
  closedBy: string | null;
  closedHow: string | null;
}

export interface ChangeLine {
  kind: 'change';
  at: Date;
  by: string | null;
  action: string;
  /** What was changed; of a record that was entered, nothing: it stands on the page. */
  changes: readonly ToldChange[];
}

export type HistoryLine = SwapLine | FaultLine | ChangeLine;

export const SWAP_LINE = {
  by: { select: { name: true } },
  set: { select: { tag: true } },
  fromSet: { select: { tag: true } },
  motorIn: { select: { plantNumber: true } },
  motorOut: { select: { plantNumber: true } },
} as const satisfies Prisma.SwapInclude;

export function swapLineOf(row: Prisma.SwapGetPayload<{ include: typeof SWAP_LINE }>): SwapLine {
  const { id, at, by, set, fromSet, motorIn, motorOut, outTo, why, verdict, hours } = row;
  return {
    kind: 'swap',
    swapId: id,
    at,
    by: by.name,
    setTag: set.tag,
    fromSetTag: fromSet?.tag ?? null,
    motorIn: motorIn.plantNumber,
    motorOut: motorOut?.plantNumber ?? null,
    outTo,
    why,
    verdict,
    hours,
  };
}

export const FAULT_LINE = {
  by: { select: { name: true } },
  set: { select: { tag: true } },
  motor: { select: { plantNumber: true } },
} as const satisfies Prisma.FaultInclude;

export function faultLineOf(row: Prisma.FaultGetPayload<{ include: typeof FAULT_LINE }>): FaultLine {
  const { id, at, by, set, motor, closedAt, closedBy, closedHow } = row;
  return {
    kind: 'fault',
    faultId: id,
    at,
    by: by.name,
    setTag: set.tag,
    motor: motor?.plantNumber ?? null,
    says: faultText(row),
    closedAt,
    closedBy,
    closedHow,
  };
}
