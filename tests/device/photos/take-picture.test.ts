import { describe, expect, it, vi } from 'vitest';
import type { PictureTools } from '../../../src/device/photos/canvas.ts';
import { hasLocation, sha256Of, takePicture } from '../../../src/device/photos/index.ts';
import { exif, jpeg } from './jpeg.ts';

const withPlace = jpeg(exif({ orientation: 6, gpsEntries: 4 }));
const encoded = jpeg();
const fileOf = (bytes: Uint8Array, type = 'image/jpeg'): Blob => new Blob([bytes.slice()], { type });

/** A browser that decodes everything to 4000 by 3000 grey pixels and encodes to a bare JPEG. */
function tools(changes: Partial<PictureTools> = {}) {
  const close = vi.fn();
  const drawn: [number, number][] = [];
  const made: PictureTools = {
    decode: async () => ({ width: 4000, height: 3000, source: {} as CanvasImageSource, close }),
    isHonest: () => true,
    draw: (_decoded, width, height) => {
      drawn.push([width, height]);
      return {
        pixels: () => ({ data: new Uint8ClampedArray(width * height * 4).fill(120), width, height }),
        jpeg: async () => fileOf(encoded),
      };
    },
    ...changes,
  };
  return { tools: made, close, drawn };
}

describe('a picture the browser can decode', () => {
  it('becomes a JPEG of at most 2048 pixels, hashed', async () => {
    const browser = tools();
    const result = await takePicture(fileOf(withPlace), { tools: browser.tools });
    expect(result).toEqual({
      ok: true,
      picture: {
        bytes: encoded.buffer,
        sha256: sha256Of(encoded.buffer as ArrayBuffer),
        mime: 'image/jpeg',
        width: 2048,
        height: 1536,
        size: encoded.length,
        placeKept: false,
      },
    });
    expect(browser.drawn).toEqual([[2048, 1536]]);
    expect(browser.close).toHaveBeenCalledOnce();
  });

  it('loses its place, unless that is to be kept', async () => {
    const { tools: given } = tools();
    const file = fileOf(withPlace);
    const stripped = await takePicture(file, { tools: given });
    const kept = await takePicture(file, { tools: given, keepPlace: true });
    if (!stripped.ok || !kept.ok) throw new Error('refused');
    expect(hasLocation(stripped.picture.bytes)).toBe(false);
    expect(hasLocation(kept.picture.bytes)).toBe(true);
    expect(new Uint8Array(kept.picture.bytes)).toEqual(withPlace);
    expect(kept.picture).toMatchObject({ placeKept: true, mime: 'image/jpeg', width: 4000, height: 3000 });
  });

  it('of a type not every browser shows is made a JPEG even then, and says that the place is gone', async () => {
    const heic = fileOf(
      Uint8Array.from('\0\0\0\x18ftypheic', (c) => c.charCodeAt(0)),
      'image/heic',
    );
    const result = await takePicture(heic, { tools: tools().tools, keepPlace: true });
    expect(result).toMatchObject({ ok: true, picture: { placeKept: false, mime: 'image/jpeg' } });
  });

  it('is told by content, not by what the file claims', async () => {
    const result = await takePicture(fileOf(withPlace, 'image/png'), { tools: tools().tools, keepPlace: true });
    expect(result).toMatchObject({ ok: true, picture: { mime: 'image/jpeg', placeKept: true } });
  });
});

describe('a picture that cannot be had', () => {
  const fail = (): never => {
    throw new Error('no');
  };
  const unreadable = Object.assign(fileOf(withPlace), { arrayBuffer: () => Promise.reject(new Error('gone')) });
  it.each([
    ['empty', new Blob([]), {}],
    ['unreadable', unreadable, {}],
    ['undecodable', fileOf(withPlace), { decode: fail }],
    ['canvas-blocked', fileOf(withPlace), { isHonest: () => false }],
    ['failed', fileOf(withPlace), { draw: fail }],
    [
      'failed',
      fileOf(withPlace),
      { draw: () => ({ ...tools().tools.draw({} as never, 1, 1), jpeg: async () => null }) },
    ],
  ] as const)('is refused by name: %s', async (code, file, changes) => {
    const browser = tools(changes);
    expect(await takePicture(file, { tools: browser.tools })).toEqual({ ok: false, code });
  });

  it('gives the decoded memory back all the same', async () => {
    const browser = tools({ draw: fail });
    await takePicture(fileOf(withPlace), { tools: browser.tools });
    expect(browser.close).toHaveBeenCalledOnce();
  });
});

it('hashes as FIPS 180-4 does: its example "abc"', () => {
  expect(sha256Of(new TextEncoder().encode('abc').slice().buffer)).toBe(
    'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  );
});
