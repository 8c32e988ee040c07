import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serve } from '../../src/server/serve.ts';
import { ask } from './ask.ts';
import { selfSigned } from './self-signed.ts';

const PAGE = '<!doctype html><title>The app</title>'.padEnd(2000, ' ');
const FILES: Record<string, string> = {
  'index.html': PAGE,
  'sw.js': '// worker',
  'assets/main-abc123.js': `const words = "${'measure '.repeat(200)}";`,
  'icon.png': 'not really a picture',
  'manifest.webmanifest': '{}',
  '.vite/manifest.json': '{"secret":true}',
  'a name.txt': 'spaced',
  'shop/index.html': 'the app of another shop',
};

let outside: string;
let served: Served;

beforeAll(async () => {
  outside = await mkdtemp(join(tmpdir(), 'tapetrue-serve-'));
  await writeFile(join(outside, 'private.txt'), 'private');
  const dir = join(outside, 'dist');
  for (const [path, text] of Object.entries(FILES)) {
    await mkdir(join(dir, path, '..'), { recursive: true });
    await writeFile(join(dir, path), text);
  }
  served = await serve({ dir });
});

afterAll(async () => {
  await served.close();
  await rm(outside, { recursive: true });
});

describe('what is served', () => {
  test.each([
    ['/', 'text/html; charset=utf-8', PAGE],
    ['/index.html?from=home', 'text/html; charset=utf-8', PAGE],
    ['/sw.js', 'text/javascript; charset=utf-8', '// worker'],
    ['/manifest.webmanifest', 'application/manifest+json; charset=utf-8', '{}'],
    ['/icon.png', 'image/png', 'not really a picture'],
    ['/shop/', 'text/html; charset=utf-8', 'the app of another shop'],
    ['/a%20name.txt', 'text/plain; charset=utf-8', 'spaced'],
  ])('%s as %s', async (path, type, text) => {
    const { status, headers, body } = await ask(served.url, path);
    expect([status, headers['content-type'], body.toString()]).toEqual([200, type, text]);
  });

  test('a page nobody made ends at the app', async () => {
    const { status, headers } = await ask(served.url, '/jobs/deep/down');
    expect([status, headers.location]).toEqual([302, '/']);
    expect(await (await fetch(new URL('jobs/deep/down', served.url))).text()).toBe(PAGE);
  });

  test.each(['/missing.js', '/assets/main-gone.js', '/icon.png/', '/.env', '/.vite/manifest.json'])(
    '%s is a plain 404',
    async (path) => {
      const { status, headers } = await ask(served.url, path);
      expect([status, headers['content-type']]).toEqual([404, 'text/plain; charset=utf-8']);
    },
  );
});

describe('what is refused', () => {
  test.each([
    '/../private.txt',
    '/..%2fprivate.txt',
    '/%2e%2e/private.txt',
    '/assets/../../private.txt',
    '//../private.txt',
    '/..\\private.txt',
    '/..%5cprivate.txt',
  ])('%s does not climb out of the folder', async (path) => {
    const { status, body } = await ask(served.url, path);
    expect(status).toBe(404);
    expect(body.toString()).not.toContain('private');
  });

  test.each(['/%', '/%E0%A4%A'])('%s cannot be read', async (path) => {
    expect((await ask(served.url, path)).status).toBe(400);
  });

  test.each(['POST', 'PUT', 'DELETE', 'OPTIONS'])('%s', async (method) => {
    const { status, headers } = await ask(served.url, '/', { method });
    expect([status, headers.allow]).toEqual([405, 'GET, HEAD']);
  });
});

describe('headers', () => {
  test('security headers are on every answer, the refused ones too', async () => {
    for (const path of ['/', '/sw.js', '/missing.js', '/%', '/deep/page']) {
      const { headers } = await ask(served.url, path);
      expect(headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'referrer-policy': 'no-referrer',
        'cross-origin-opener-policy': 'same-origin',
      });
      expect(headers['permissions-policy']).toContain('camera=(self)');
      expect(headers['content-security-policy']).toMatch(/default-src 'none'.*frame-ancestors 'none'/);
      expect(headers['content-security-policy']).not.toMatch(/unsafe|https?:/);
    }
  });

  test('only files with a hash in their name are kept for good', async () => {
    const kept = async (path: string) => (await ask(served.url, path)).headers['cache-control'];
    expect(await kept('/assets/main-abc123.js')).toContain('immutable');
    for (const path of ['/', '/index.html', '/sw.js', '/manifest.webmanifest', '/missing.js']) {
      expect(await kept(path)).toBe('no-cache');
    }
  });

  test('HEAD says the same as GET and sends nothing', async () => {
    const get = await ask(served.url, '/');
    const head = await ask(served.url, '/', { method: 'HEAD' });
    const bare = ({ date: _date, ...headers }: Record<string, unknown>) => headers;
    expect(head.status).toBe(200);
    expect(bare(head.headers)).toEqual(bare(get.headers));
    expect(head.body).toHaveLength(0);
  });

  test('what a browser already has is not sent again', async () => {
    const { etag = '' } = (await ask(served.url, '/')).headers;
    expect(etag).not.toBe('');
    const again = (tag: string) => ask(served.url, '/', { headers: { 'If-None-Match': tag } });
    for (const tag of [etag, `"old", ${etag}`, etag.replace('W/', ''), '*']) {
      const { status, body } = await again(tag);
      expect([status, body.length]).toEqual([304, 0]);
    }
    expect((await again('"old"')).status).toBe(200);
  });
});

describe('compression', () => {
  const gzipped = async (path: string, accept: string) => {
    const { headers, body } = await ask(served.url, path, { headers: { 'Accept-Encoding': accept } });
    expect(Number(headers['content-length'])).toBe(body.length);
    return headers['content-encoding'] === 'gzip' ? gunzipSync(body).toString() : undefined;
  };

  test.each(['gzip', 'br, gzip;q=0.8', 'GZIP'])('for "%s"', async (accept) => {
    expect(await gzipped('/', accept)).toBe(PAGE);
  });

  test.each(['', 'br', 'gzip;q=0', 'identity', 'notgzip'])('not for "%s"', async (accept) => {
    expect(await gzipped('/', accept)).toBeUndefined();
  });

  test('not where it saves nothing', async () => {
    expect(await gzipped('/manifest.webmanifest', 'gzip')).toBeUndefined();
    expect(await gzipped('/icon.png', 'gzip')).toBeUndefined();
  });
});

describe('listening', () => {
  test('with a certificate it speaks HTTPS', async () => {
    const secure = await serve({ dir: join(outside, 'dist'), tls: selfSigned() });
    try {
      expect(secure.url).toMatch(/^https:\/\/127\.0\.0\.1:\d+\/$/);
      expect((await ask(secure.url, '/')).body.toString()).toBe(PAGE);
    } finally {
      await secure.close();
    }
  });

  test('a taken port is an error', async () => {
    await expect(serve({ dir: join(outside, 'dist'), port: served.port })).rejects.toMatchObject({
      code: 'EADDRINUSE',
    });
  });

  test('a folder that is not there is an error', async () => {
    await expect(serve({ dir: join(outside, 'nothing') })).rejects.toMatchObject({ code: 'ENOENT' });
  });

  test('after close nobody answers', async () => {
    const short = await serve({ dir: join(outside, 'dist') });
    await short.close();
    await expect(ask(short.url, '/')).rejects.toMatchObject({ code: 'ECONNREFUSED' });
  });
});
