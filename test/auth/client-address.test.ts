import { expect, test, vi } from 'vitest';

/** The trusted proxies are read once, when the server starts. */
async function addressWith(proxies: string, peer: string, forwardedFor: string | undefined): Promise<string> {
  vi.resetModules();
  vi.stubEnv('TRUSTED_PROXIES', proxies);
  const { clientAddress } = await import('../../scripts/client-address.mjs');
  vi.unstubAllEnvs();
  return clientAddress(peer, forwardedFor);
}

test.each([
  ['no proxy is trusted', '', '192.0.2.7', '203.0.113.9', '192.0.2.7'],
  ['the peer is no trusted proxy', '198.51.100.1', '192.0.2.7', '203.0.113.9', '192.0.2.7'],
  ['a trusted proxy tells', '198.51.100.0/24', '198.51.100.1', '203.0.113.9', '203.0.113.9'],
  [
    'a client puts an address before the proxy’s',
    '198.51.100.1',
    '198.51.100.1',
    '10.0.0.1, 203.0.113.9',
    '203.0.113.9',
  ],
  ['two proxies in a row', '198.51.100.0/24', '198.51.100.1', '203.0.113.9, 198.51.100.2', '203.0.113.9'],
  ['what is forwarded is no address', '198.51.100.1', '198.51.100.1', 'unknown', '198.51.100.1'],
  ['nothing is forwarded', '198.51.100.1', '198.51.100.1', undefined, '198.51.100.1'],
  ['an IPv4 address comes in IPv6 clothes', '', '::ffff:192.0.2.7', undefined, '192.0.2.7'],
])('S19 a client cannot choose its address: %s', async (_name, proxies, peer, forwardedFor, address) => {
  expect(await addressWith(proxies, peer, forwardedFor)).toBe(address);
});
