/** What a phone sends when the network is back. The server takes this version and the one before it. */
export const MESSAGE_VERSION = 2;

export type MessageKind = 'swap' | 'fault' | 'fault-closed' | 'readings' | 'picture';

export interface Message {
  version: number;
  kind: MessageKind;
  /** Made once on the phone: the same key is carried out once, however often it is sent. */
  key: string;
  userId: string;
  siteId: string;
  body: Record<string, unknown>;
}
