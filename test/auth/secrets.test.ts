import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { demoPassword, knownDemoPassword, secret } from '../../scripts/secrets.mjs';

let folder: string;
beforeEach(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'bedplate-secrets-'));
  vi.stubEnv('BEDPLATE_DATA', folder);
  vi.stubEnv('BETTER_AUTH_SECRET', undefined);
  vi.stubEnv('BEDPLATE_DEMO_PASSWORD', undefined);
});
afterEach(() => {
  vi.unstubAllEnvs();
  fs.rmSync(folder, { recursive: true, force: true });
});

test('S28 a secret is made once, long, and kept for its owner’s eyes only', () => {
  const made = secret({ mustBeGiven: false });
  expect(made.length).toBeGreaterThanOrEqual(32);
  expect(secret({ mustBeGiven: false })).toBe(made);
  expect(fs.statSync(path.join(folder, 'secret')).mode & 0o077).toBe(0);
});

test('S28 a short secret is refused, and so is none where one must be given', () => {
  expect(() => secret({ mustBeGiven: true })).toThrow(/BETTER_AUTH_SECRET must be too/);
  vi.stubEnv('BETTER_AUTH_SECRET', 'x'.repeat(31));
  expect(() => secret({ mustBeGiven: false })).toThrow(/too short/);
  vi.stubEnv('BETTER_AUTH_SECRET', 'x'.repeat(32));
  expect(secret({ mustBeGiven: true })).toBe('x'.repeat(32));
});

test('S20 the demonstration’s password is of this installation alone', () => {
  expect(knownDemoPassword()).toBeNull();
  const here = demoPassword();
  expect(knownDemoPassword()).toBe(here);
  expect(fs.statSync(path.join(folder, 'demo-password')).mode & 0o077).toBe(0);
  fs.rmSync(path.join(folder, 'demo-password'));
  expect(demoPassword()).not.toBe(here);
});
