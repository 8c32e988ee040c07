import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { ensureBuilt, root } from '../../src/server/setup.mjs';

/** Addresses that name a vocabulary or stand in a licence; nothing is ever fetched from them. */
const NAMES_ONLY = [
  /^https?:\/\/www\.w3\.org\//,
  /^https?:\/\/json-schema\.org\//,
  /^https?:\/\/(www\.)?apache\.org\/licenses\//,
];

/** Addresses in a text that a browser could be sent to. */
function strangers(text: string): string[] {
  const found = text.match(/(?:https?|wss?):\/\/[^\s"'`<>)\\]+/g) ?? [];
  return found.filter((url) => !NAMES_ONLY.some((name) => name.test(url)));
}

describe('the built app', () => {
  beforeAll(async () => {
    await ensureBuilt({ options: { stdio: ['ignore', 'ignore', 'inherit'] } });
  }, 120_000);

  const read = (path: string) => readFileSync(join(root, 'dist', path), 'utf8');

  test('names no address but its own', () => {
    const files = readdirSync(join(root, 'dist'), { recursive: true, encoding: 'utf8' });
    const texts = files.filter((path) => /\.(js|css|html|webmanifest)$/.test(path));
    expect(texts).toContain('index.html');
    expect(texts.flatMap((path) => strangers(read(path)).map((url) => `${path}: ${url}`))).toEqual([]);
  });

  test('has its policy in the page and nothing the policy would block', () => {
    const page = read('index.html');
    expect(page).toMatch(/<meta http-equiv="Content-Security-Policy" content="default-src &#39;none&#39;/);
    expect(page.indexOf('Content-Security-Policy')).toBeLessThan(page.indexOf('<script'));
    expect(page).not.toMatch(/<style|\sstyle=|\son\w+=|<script(?![^>]*\ssrc=)/);
  });

  test('works under any path', () => {
    expect(read('index.html')).not.toMatch(/(?:src|href)="\//);
    const manifest: unknown = JSON.parse(read('manifest.webmanifest'));
    expect(manifest).toMatchObject({ start_url: './', scope: './' });
    expect(JSON.stringify(manifest)).not.toMatch(/"(?:src|action)":"\//);
  });

  test('keeps all it needs for offline use', () => {
    const worker = read('sw.js');
    const wanted = ['index.html', 'icon.svg', 'icon-192.png', 'apple-touch-icon.png', 'packet.schema.json'];
    const assets = readdirSync(join(root, 'dist/assets')).map((name) => `assets/${name}`);
    for (const path of [...wanted, 'manifest.webmanifest', ...assets]) expect(worker).toContain(`url:"${path}"`);
    expect(worker).toContain('createHandlerBoundToURL("index.html")');
    expect(worker).not.toContain('.vite/');
    const urls = [...worker.matchAll(/url:"([^"]+)"/g)].map(([, url]) => url);
    expect(urls).toHaveLength(new Set(urls).size);
  });
});

describe('the check for addresses', () => {
  test.each(['https://example.test/x.js', 'http://example.test', 'wss://example.test/live'])('finds %s', (url) => {
    expect(strangers(`fetch("${url}")`)).toEqual([url]);
  });

  test('leaves names of vocabularies alone', () => {
    expect(strangers('xmlns="http://www.w3.org/2000/svg" $id:"https://json-schema.org/draft/2020-12/schema"')).toEqual(
      [],
    );
  });
});
