import { describe, expect, it } from 'vitest';
import { check } from '../../../src/core/check/index.ts';
import { type Packet, readPacket, sealOf } from '../../../src/core/packet/index.ts';
import { asSent, DEVICE, noFindings, samplePacket, slippedPacket } from './sample.ts';

const sealed = (packet: Record<string, unknown>): Record<string, unknown> => ({ ...packet, seal: sealOf(packet) });
const read = (value: unknown) => readPacket(value, { check: noFindings });
const why = (value: unknown) => {
  const reading = read(value);
  return reading.ok ? 'ok' : reading.why;
};

describe('readPacket takes', () => {
  it('what buildPacket made, unchanged and without a note', () => {
    const packet = samplePacket();
    expect(read(JSON.stringify(packet))).toEqual({ ok: true, packet, notes: [] });
  });

  it('the same with the findings of the real check', () => {
    const packet = slippedPacket(check);
    expect(packet.findings).not.toEqual([]);
    expect(readPacket(JSON.stringify(packet))).toEqual({ ok: true, packet, notes: [] });
  });

  it('parsed JSON, white space and a byte order mark', () => {
    const packet = samplePacket();
    expect(why(packet)).toBe('ok');
    expect(why(`\ufeff${JSON.stringify(packet, null, 2)}\n`)).toBe('ok');
  });

  it('photos that travel beside it', () => {
    expect(read(samplePacket(noFindings, false))).toMatchObject({ ok: true, notes: [] });
  });

  it('a newer minor version with what it does not know', () => {
    const newer = sealed({
      ...samplePacket(),
      version: { major: 1, minor: 3, build: 'x' },
      weather: { wind: 4 },
      sheet: { ...samplePacket().sheet, tides: [] },
    });
    const reading = read(JSON.stringify(newer));
    expect(reading).toMatchObject({ ok: true, notes: [{ code: 'newer-minor', minor: 3 }] });
    expect(reading).toMatchObject({ packet: { weather: { wind: 4 }, version: { build: 'x' } } });
  });

  it('entries of a kind it does not know, and fields of entries it does not know', () => {
    const packet = samplePacket();
    const [first] = packet.logbook;
    const strange = { ...first, id: DEVICE, kind: 'tide.note', payload: { metres: 2 }, mood: 'wet' };
    const reading = read(sealed({ ...packet, logbook: [...packet.logbook, strange] }));
    expect(reading.ok && reading.packet.logbook.at(-1)).toEqual(strange);
    expect(reading.ok && reading.packet.sheet.carried).toEqual([
      { entry: DEVICE, kind: 'tide.note', why: 'unknown-kind' },
    ]);
  });

  it('a logbook in another order, and gives it back sorted', () => {
    const packet = samplePacket();
    const reading = read(sealed({ ...packet, logbook: packet.logbook.toReversed() }));
    expect(reading.ok && reading.packet.logbook).toEqual(packet.logbook);
  });

  it('numbers that differ by rounding, without a note', () => {
    const packet = asSent(samplePacket());
    const [reading] = packet.sheet.readings;
    if (reading?.value) reading.value += 1e-10;
    expect(read(sealed(packet))).toMatchObject({ ok: true, notes: [] });
  });
});

describe('readPacket notes', () => {
  it('a sheet that is not what the logbook amounts to, and gives its own', () => {
    const packet = asSent(samplePacket());
    const [reading] = packet.sheet.readings;
    if (reading?.value) reading.value += 25.4;
    packet.sheet.details.customer = 'Somebody Else';
    const result = read(sealed(packet));
    expect(result).toMatchObject({
      ok: true,
      notes: [{ code: 'sheet-differs', at: ['details/customer', 'readings/0/value'] }],
    });
    expect(result.ok && result.packet.sheet).toEqual(samplePacket().sheet);
  });

  it('findings the packet made up or left out', () => {
    const packet = samplePacket(noFindings);
    const made = sealed({ ...packet, findings: [{ id: 'x' }] });
    expect(read(made)).toMatchObject({
      ok: true,
      notes: [{ code: 'findings-differ', at: ['0'] }],
      packet: { findings: [] },
    });
  });

  it('a picture the logbook does not name', () => {
    const packet = samplePacket(noFindings, false);
    const photo = { sha256: 'd'.repeat(64), mime: 'image/png', size: 3 };
    const reading = read(sealed({ ...packet, photos: [...packet.photos, photo] }));
    expect(reading).toMatchObject({ ok: true, notes: [{ code: 'photo-not-named', sha256: photo.sha256 }] });
  });
});

describe('readPacket refuses', () => {
  const packet = samplePacket();
  const [first, second] = packet.logbook;
  const [photo] = packet.photos;

  it.each([
    ['nothing', '', 'not-json'],
    ['a table', 'kind,from,to,reading,note\r\n', 'not-json'],
    ['a packet that was cut off', JSON.stringify(packet).slice(0, -40), 'damaged'],
    ['a number', '12', 'foreign'],
    ['null', 'null', 'foreign'],
    ['a list', '[]', 'foreign'],
    ['undefined', undefined, 'foreign'],
    ['another format', { ...packet, format: 'other' }, 'foreign'],
    ['a newer major version', sealed({ ...packet, version: { major: 2, minor: 0 } }), 'newer'],
    ['a version before the first', sealed({ ...packet, version: { major: 0, minor: 9 } }), 'damaged'],
    ['no version', sealed({ ...packet, version: undefined }), 'damaged'],
    ['no entries', sealed({ ...packet, logbook: [] }), 'empty'],
    ['no logbook', sealed({ ...packet, logbook: undefined }), 'damaged'],
    ['a wrong seal', { ...packet, seal: '0'.repeat(64) }, 'damaged'],
    ['no seal', { ...packet, seal: undefined }, 'damaged'],
    ['an altered sheet', { ...packet, sheet: { ...packet.sheet, demo: true } }, 'damaged'],
    ['entries of another job', sealed({ ...packet, logbook: [first, { ...second, job: DEVICE }] }), 'two-jobs'],
    ['a job that is not its entries’', sealed({ ...packet, job: DEVICE }), 'two-jobs'],
    ['an entry twice', sealed({ ...packet, logbook: [first, second, first] }), 'damaged'],
    ['a photo that is not base64', sealed({ ...packet, photos: [{ ...photo, data: 'A===' }] }), 'damaged'],
    ['a photo with other bytes', sealed({ ...packet, photos: [{ ...photo, data: 'AQIDBAY=' }] }), 'damaged'],
    ['a photo of another size', sealed({ ...packet, photos: [{ ...photo, size: 99 }] }), 'damaged'],
    ['numbers that are not finite', { ...packet, weight: Number.NaN }, 'damaged'],
  ])('%s', (_, value, expected) => {
    expect(why(value)).toBe(expected);
  });

  it('an entry that does not parse, and says which', () => {
    const broken = { ...second, at: 'yesterday' };
    expect(read(sealed({ ...packet, logbook: [first, broken] }))).toEqual({
      ok: false,
      why: 'damaged',
      detail: { at: 'logbook/1/at', id: second?.id },
    });
  });

  it('a newer version, and says which', () => {
    expect(read(sealed({ ...packet, version: { major: 7, minor: 2 } }))).toMatchObject({ detail: { version: '7.2' } });
  });

  it('a key by which the object would be less than its text', () => {
    const text = JSON.stringify(packet).replace('"payload":{', '"payload":{"__proto__":{"a":1},');
    expect(why(text)).toBe('damaged');
  });

  it('nesting without end', () => {
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    expect(why(JSON.stringify(packet).replace('{', `{"more":${deep},`))).toBe('unreadable');
  });

  it('objects that bite when they are looked at', () => {
    const trap = new Proxy({} as Packet, {
      get: () => {
        throw new Error('trap');
      },
    });
    expect(why(trap)).toBe('unreadable');
    const ring: Record<string, unknown> = { ...packet };
    ring.self = ring;
    expect(why(ring)).toBe('unreadable');
  });
});
