import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Debian's Chromium under test: no sandbox (it runs as root), and nothing that calls home. */
export const CHROMIUM_ARGS: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A new empty profile folder. Everything a person has stored lives in it; hand it on to start the same phone again. */
export function newProfile(): string {
  return mkdtempSync(join(tmpdir(), 'tapetrue-profile-'));
}

/** Removes a profile. The browser's helpers still write to it for a moment after it has gone, so this tries again. */
export function removeProfile(profile: string): void {
  rmSync(profile, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
}
