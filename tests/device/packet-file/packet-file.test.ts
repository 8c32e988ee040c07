import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildPacket, readPacket, sealOf } from '../../../src/core/packet/index.ts';
import { readPacketFile, writePacketFile } from '../../../src/device/packet-file/index.ts';
import { hashOf, MADE, noFindings, PHOTOS, PICTURES, sampleJob, samplePacket } from '../../core/packet/sample.ts';

const bytesOf = async (sha256: string): Promise<ArrayBuffer | null> => {
  const picture = PICTURES.find((bytes) => hashOf(bytes) === sha256);
  return picture ? Uint8Array.from(picture).buffer : null;
};
const beside = samplePacket(noFindings, false);
const inside = samplePacket(noFindings, true);
const read = (text: BlobPart, chunk?: number) =>
  readPacketFile(new Blob([text]), { check: noFindings, ...(chunk ? { chunk } : {}) });

describe('writePacketFile', () => {
  it('writes what readPacket takes, photos and seal and all', async () => {
    const file = await writePacketFile(beside, bytesOf);
    expect(file.type).toBe('application/json');
    expect(readPacket(await file.text(), { check: noFindings })).toEqual({ ok: true, packet: inside, notes: [] });
  });

  it('takes photos as Blobs, in many pieces', async () => {
    const large = Uint8Array.from({ length: 2_000_001 }, (_, index) => (index * 7919) >> 3);
    const photo = { sha256: hashOf(large), mime: 'image/jpeg', size: large.length };
    const scribe = sampleJob();
    const [piece] = beside.sheet.pieces;
    scribe.add('photo.add', {
      photo: scribe.newId(),
      ...photo,
      width: 1,
      height: 1,
      piece: piece?.id ?? '',
      slot: null,
      placeKept: false,
    });
    const packet = buildPacket({ entries: scribe.entries, made: MADE, photos: [photo], check: noFindings });
    const file = await writePacketFile(packet, async () => new Blob([large]));
    const reading = await readPacketFile(file, { check: noFindings });
    expect(
      reading.ok && reading.kind === 'packet' && reading.photos.map((one) => hashOf(new Uint8Array(one.bytes))),
    ).toEqual([photo.sha256]);
  });

  it('leaves out a photo that is missing, broken or unreadable, and says so', async () => {
    const [first, second] = beside.photos.map((photo) => photo.sha256);
    const left: string[] = [];
    const onLeftOut = (sha256: string, why: string): void => void left.push(`${why} ${sha256}`);
    const missing = await writePacketFile(beside, async () => null, { onLeftOut });
    await writePacketFile(beside, async (sha256) => (sha256 === first ? new ArrayBuffer(3) : bytesOf(sha256)), {
      onLeftOut,
    });
    await writePacketFile(
      beside,
      async (sha256) => (sha256 === second ? Promise.reject(new Error()) : bytesOf(sha256)),
      {
        onLeftOut,
      },
    );
    expect(left).toEqual([`missing ${first}`, `missing ${second}`, `damaged ${first}`, `unreadable ${second}`]);
    expect(await readPacketFile(missing, { check: noFindings })).toMatchObject({
      ok: true,
      missing: [first, second],
      photos: [],
    });
  });

  it('tells how far it is', async () => {
    const told: number[] = [];
    await writePacketFile(beside, bytesOf, { onProgress: (fraction) => told.push(fraction) });
    expect(told).toEqual([0, 0.5, 1]);
  });
});

describe('readPacketFile', () => {
  it('gives the packet without base64, and the photos as bytes', async () => {
    const reading = await readPacketFile(await writePacketFile(beside, bytesOf), { check: noFindings });
    const photos = inside.photos.map(({ data, ...photo }) => ({
      ...photo,
      bytes: Uint8Array.from(Buffer.from(data ?? '', 'base64')).buffer,
    }));
    expect(reading).toEqual({ ok: true, kind: 'packet', packet: beside, notes: [], photos, missing: [] });
  });

  const turned = Object.fromEntries(Object.entries(inside).toReversed());
  it.each([
    ['spread over lines', JSON.stringify(inside, null, 2)],
    ['with its fields turned round', JSON.stringify(turned)],
    ['with a byte order mark', `\ufeff${JSON.stringify(inside)}`],
    ['with escaped keys', JSON.stringify(inside).replaceAll('"data"', '"d\\u0061ta"')],
    ['with escapes in the base64', JSON.stringify(inside).replace('"data":"A', '"data":"\\u0041')],
    ['with white space about its signs', JSON.stringify(inside).replaceAll('"data":"', '"data" : \n "')],
  ])('reads a packet %s', async (_, text) => {
    const reading = await read(text);
    expect(reading).toMatchObject({ ok: true, packet: beside, missing: [] });
    expect(reading.ok && reading.kind === 'packet' && reading.photos).toHaveLength(2);
  });

  it('reads the same wherever the pieces of the file are cut', async () => {
    const text = JSON.stringify(turned, null, 1);
    const expected = await read(text);
    expect(expected.ok).toBe(true);
    for (const chunk of [4, 20, 1000]) expect(await read(text, chunk)).toEqual(expected);
  });

  it('does not mistake other fields called data for photos', async () => {
    const data = 'QUJD'.repeat(100);
    const other = { ...inside, more: { photos: [{ data }] }, lists: [[{ data }]], data };
    const reading = await read(JSON.stringify({ ...other, seal: sealOf(other) }));
    expect(reading).toMatchObject({ ok: true, packet: { more: { photos: [{ data }] }, lists: [[{ data }]], data } });
  });

  it.each([
    ['kind,from,to,reading,note\r\nstraight,A,B,3755,\r\n'],
    ['\ufeffFrom;To;Kind;Reading\nA;B;straight;375,5 cm\n'],
  ])('knows a readings table by its first line', async (text) => {
    expect(await read(text)).toEqual({ ok: true, kind: 'table', text: text.replace('\ufeff', '') });
  });

  it('reads a table in the encodings spreadsheets write', async () => {
    const text = 'kind\tfrom\tto\treading\r\nstraight\tA\tB\t12½ in\r\n';
    const utf16 = Uint8Array.from([0xff, 0xfe, ...Buffer.from(text, 'utf16le')]);
    const windows = Uint8Array.from(Buffer.from(text, 'latin1'));
    for (const bytes of [utf16, windows]) expect(await read(bytes)).toEqual({ ok: true, kind: 'table', text });
  });

  it.each([
    ['nothing', '', 'not-json'],
    ['a letter', 'Dear customer,', 'not-json'],
    ['other JSON', '{"a":1}', 'foreign'],
    ['a list', '[1]', 'foreign'],
    ['a packet that was cut off', JSON.stringify(inside).slice(0, -9), 'damaged'],
    ['a packet cut off inside a photo', JSON.stringify(inside).slice(0, -24), 'damaged'],
    ['a photo with other bytes', JSON.stringify(inside).replace(/"data":"..../, '"data":"AAAA'), 'damaged'],
    ['a photo that is longer', JSON.stringify(inside).replace('"data":"', '"data":"AAAA'), 'damaged'],
    ['a photo that is no base64', JSON.stringify(inside).replace(/"data":"./, '"data":"*'), 'damaged'],
    ['a photo with nothing in it', JSON.stringify(inside).replace(/"data":"[^"]*"/, '"data":""'), 'damaged'],
    ['data twice, the second none', JSON.stringify(inside).replace(/("data":"[^"]*")/, '$1,"data":5'), 'damaged'],
  ])('refuses %s', async (_, text, why) => {
    expect(await read(text)).toMatchObject({ ok: false, why });
  });

  it('refuses a file that cannot be read', async () => {
    const gone = { size: 10, slice: () => ({ arrayBuffer: () => Promise.reject(new Error('gone')) }) };
    expect(await readPacketFile(gone as unknown as Blob)).toMatchObject({ ok: false, why: 'unreadable' });
  });

  it('never lets an altered packet through, wherever a letter changes', async () => {
    const text = JSON.stringify(inside);
    const change = fc.record({
      at: fc.nat(text.length - 1),
      put: fc.constantFrom('', '0', '"', '{', '}', ',', 'A', '='),
    });
    await fc.assert(
      fc.asyncProperty(change, fc.constantFrom(512, 4096), async ({ at, put }, chunk) => {
        const reading = await read(text.slice(0, at) + put + text.slice(at + 1), chunk);
        if (!reading.ok || reading.kind !== 'packet') return;
        expect(reading.packet).toEqual(beside);
        for (const photo of reading.photos)
          expect(PHOTOS.map((one) => one.sha256)).toContain(hashOf(new Uint8Array(photo.bytes)));
      }),
      { numRuns: 150 },
    );
  }, 30_000);

  it('tells how far it is, and ends at 1', async () => {
    const told: number[] = [];
    await readPacketFile(new Blob([JSON.stringify(inside)]), { onProgress: (fraction) => told.push(fraction) });
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect([told[0], told.at(-1)]).toEqual([0, 1]);
  });
});
