import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import { gzipSync } from 'node:zlib';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
};

/** One file as it goes over the wire. `gzipped` is there only when it saves something. */
export interface ServedFile {
  readonly type: string;
  readonly etag: string;
  readonly bytes: Buffer;
  readonly gzipped?: Buffer;
}

/**
 * Reads a whole folder into memory, keyed by its path with forward slashes. The built app is small, and a file
 * that is not in this map cannot be asked for, whatever a path looks like. Dot files and dot folders stay out.
 */
export async function readFiles(dir: string): Promise<ReadonlyMap<string, ServedFile>> {
  const files = new Map<string, ServedFile>();
  const entries = await readdir(dir, { recursive: true, withFileTypes: true });
  for (const entry of entries) {
    if (!entry.isFile()) continue;
    const full = join(entry.parentPath, entry.name);
    const path = relative(dir, full).split(sep).join('/');
    if (path.split('/').some((part) => part.startsWith('.'))) continue;
    files.set(path, servedFile(path, await readFile(full)));
  }
  return files;
}

function servedFile(path: string, bytes: Buffer): ServedFile {
  const type = TYPES[extname(path)] ?? 'application/octet-stream';
  // Weak: the same tag stands for the plain and the compressed bytes.
  const etag = `W/"${createHash('sha256').update(bytes).digest('base64url').slice(0, 22)}"`;
  const gzipped = /charset/.test(type) ? gzipSync(bytes, { level: 9 }) : bytes;
  return gzipped.length < bytes.length ? { type, etag, bytes, gzipped } : { type, etag, bytes };
}
