import { describe, expect, it, vi } from 'vitest';
import { canShareFiles, type SharePlatform, saveFile, shareFile } from '../../src/device/share.ts';

const blob = new Blob(['{"packet":1}'], { type: 'application/json' });
const NAME = 'wind-rose.json';

/** A browser that says it can share files of these endings, and does what it is told when asked to. */
function platform(endings: string[], share: (file: File) => void = () => undefined) {
  const downloads: File[] = [];
  const shares: File[] = [];
  const made: SharePlatform = {
    canShare: ({ files }) => files.every((file) => endings.some((ending) => file.name.endsWith(ending))),
    share: async ({ files }) => {
      const [file] = files;
      if (!file) throw new TypeError('no file');
      share(file);
      shares.push(file);
    },
    download: (file) => void downloads.push(file),
  };
  return { made, downloads, shares };
}
const refusing =
  (name: string, ending = '') =>
  (file: File) => {
    if (file.name.endsWith(ending)) throw new DOMException('', name);
  };

describe('sharing', () => {
  it('gives the very file where JSON can be shared', async () => {
    const { made, shares, downloads } = platform(['.json', '.txt']);
    expect(await shareFile(blob, NAME, made)).toBe('shared');
    expect(shares.map(({ name, type }) => [name, type])).toEqual([[NAME, 'application/json']]);
    expect(downloads).toEqual([]);
  });

  it('gives the same bytes as text where JSON is not on the list', async () => {
    const { made, shares } = platform(['.txt']);
    expect(await shareFile(blob, NAME, made)).toBe('shared');
    expect(shares.map(({ name, type }) => [name, type])).toEqual([['wind-rose.json.txt', 'text/plain']]);
    expect(await shares[0]?.text()).toBe('{"packet":1}');
  });

  it('gives text where JSON was promised and then refused', async () => {
    const { made, shares } = platform(['.json', '.txt'], refusing('NotAllowedError', '.json'));
    expect(await shareFile(blob, NAME, made)).toBe('shared');
    expect(shares.map(({ name }) => name)).toEqual(['wind-rose.json.txt']);
  });

  it('calls share before anything is awaited, while the tap still counts', () => {
    const { made, shares } = platform(['.txt']);
    void shareFile(blob, NAME, made);
    expect(shares).toHaveLength(1);
  });

  it('does not go on when the person closed the sheet, nor when one is open already', async () => {
    for (const [error, outcome] of [
      ['AbortError', 'cancelled'],
      ['InvalidStateError', 'failed'],
    ] as const) {
      const { made, downloads } = platform(['.json', '.txt'], refusing(error));
      expect(await shareFile(blob, NAME, made)).toBe(outcome);
      expect(downloads).toEqual([]);
    }
  });
});

describe('downloading', () => {
  it.each([
    ['nothing can be shared', platform([])],
    ['sharing is refused both ways', platform(['.json', '.txt'], refusing('NotAllowedError'))],
  ])('is the way out when %s', async (_name, { made, downloads }) => {
    expect(await shareFile(blob, NAME, made)).toBe('downloaded');
    expect(downloads.map(({ name, type }) => [name, type])).toEqual([[NAME, 'application/json']]);
  });

  it('is the way out where the browser has no share sheet, or one without files', async () => {
    const download = vi.fn();
    expect(await shareFile(blob, NAME, { download })).toBe('downloaded');
    expect(await shareFile(blob, NAME, { download, share: () => Promise.resolve() })).toBe('downloaded');
    expect(download).toHaveBeenCalledTimes(2);
  });

  it('fails by name', () => {
    const download = (): never => {
      throw new Error('no');
    };
    expect(saveFile(blob, NAME, { download })).toBe('failed');
  });
});

it('knows beforehand whether there will be a sheet', () => {
  expect(canShareFiles(NAME, platform([]).made)).toBe(false);
  expect(canShareFiles(NAME, { download: () => undefined })).toBe(false);
  expect(canShareFiles(NAME, platform(['.txt']).made)).toBe(true);
});
