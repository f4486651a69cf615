import type { OutboxKind } from '@/lib/offline/outbox';
import type { Carrier } from './carrier';
import { faultCarrier, faultClosedCarrier } from './fault';
import { pictureCarrier } from './picture';
import { readingsCarrier } from './readings';
import { swapCarrier } from './swap';

/** Every kind of message: a file, a line here, and its body in lib/offline/outbox. */
export const CARRIERS: Readonly<Record<OutboxKind, Carrier>> = {
  swap: swapCarrier,
  fault: faultCarrier,
  'fault-closed': faultClosedCarrier,
  readings: readingsCarrier,
  picture: pictureCarrier,
};

export const OUTBOX_KINDS = Object.keys(CARRIERS) as OutboxKind[];
