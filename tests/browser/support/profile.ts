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

/**
 * Removes a profile. The helpers of a killed browser may write to it for a while after it has gone, so this tries again,
 * and then leaves the rest in the system's temporary folder: what a test checks does not depend on it.
 */
export function removeProfile(profile: string): void {
  try {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  } catch (error) {
    console.warn(`Left behind: ${profile} (${error instanceof Error ? error.message : error})`);
  }
}
