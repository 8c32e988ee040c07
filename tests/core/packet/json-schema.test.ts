import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { check } from '../../../src/core/check/index.ts';
import { packetJsonSchema } from '../../../src/core/packet/json-schema.ts';
import { noFindings, samplePacket, slippedPacket } from './sample.ts';

// Formats are annotations in draft 2020-12 unless a vocabulary asks for them; the schema's patterns do the work.
const ajv = new Ajv2020({ strict: true, strictTypes: false, strictTuples: false, validateFormats: false });
const validate = ajv.compile(packetJsonSchema());

describe('the JSON Schema of a packet', () => {
  it('names its draft', () => {
    expect(packetJsonSchema().$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });

  it.each([
    ['with photos', samplePacket(noFindings, true)],
    ['without photos', samplePacket(noFindings, false)],
    ['with findings', slippedPacket(check)],
    ['of a newer minor version', { ...samplePacket(), version: { major: 1, minor: 9 }, tides: [1] }],
  ])('takes a packet %s', (_, packet) => {
    expect(validate(packet), JSON.stringify(validate.errors)).toBe(true);
  });

  it('has real findings to look at', () => {
    expect(slippedPacket(check).findings.length).toBeGreaterThan(0);
  });

  const packet = samplePacket();
  const [entry] = packet.logbook;
  it.each([
    ['another format', { ...packet, format: 'x' }],
    ['another major version', { ...packet, version: { major: 2, minor: 0 } }],
    ['no seal', { ...packet, seal: undefined }],
    ['a seal in capitals', { ...packet, seal: 'A'.repeat(64) }],
    ['no entries', { ...packet, logbook: [] }],
    ['an entry without a kind', { ...packet, logbook: [{ ...entry, kind: undefined }] }],
    ['an entry without a proper id', { ...packet, logbook: [{ ...entry, id: '7' }] }],
    ['a photo of no size', { ...packet, photos: [{ ...packet.photos[0], size: 0 }] }],
    ['a sheet without readings', { ...packet, sheet: { ...packet.sheet, readings: undefined } }],
    ['findings of no known rule', { ...packet, findings: [{ id: 'x', rule: 'x' }] }],
  ])('refuses %s', (_, broken) => {
    expect(validate(JSON.parse(JSON.stringify(broken)))).toBe(false);
  });

  it('describes what each kind of entry carries', () => {
    expect(packetJsonSchema()).toMatchObject({
      $defs: { payloads: { properties: { 'take.add': { properties: { text: { maxLength: 400 } } } } } },
    });
  });
});
