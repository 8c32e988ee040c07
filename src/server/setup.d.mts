import type { SpawnOptions } from 'node:child_process';

export const root: string;
export function requireNode(): void;
export function run(command: string, args: readonly string[], options?: SpawnOptions): Promise<number>;
export function isInstalled(folder?: string): boolean;
export function ensureInstalled(): Promise<void>;
export function ensureBuilt(how?: { always?: boolean; options?: SpawnOptions }): Promise<void>;
export function runTyped(file: string, args: readonly string[], options?: SpawnOptions): Promise<number>;
