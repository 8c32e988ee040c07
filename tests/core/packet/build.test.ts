import { describe, expect, it } from 'vitest';
import { buildPacket, readPacket, sealOf } from '../../../src/core/packet/index.ts';
import { DEVICE, MADE, noFindings, PHOTOS, sampleJob, samplePacket, WHO } from './sample.ts';

const build = (entries = sampleJob().entries) =>
  buildPacket({ entries, made: MADE, photos: PHOTOS, check: noFindings });

describe('buildPacket', () => {
  it('holds the logbook sorted by id, whatever order it comes in', () => {
    const { entries } = sampleJob();
    const forwards = build(entries);
    expect(build(entries.toReversed())).toEqual(forwards);
    expect(forwards.logbook.map((entry) => entry.id)).toEqual(entries.map((entry) => entry.id).sort());
  });

  it('says the format, the version, the job and who made it', () => {
    const { format, version, job, made } = build();
    expect({ format, version, job, made }).toEqual({
      format: 'tapetrue-packet',
      version: { major: 1, minor: 2 },
      job: sampleJob().job,
      made: { at: MADE.at, device: DEVICE, by: WHO },
    });
  });

  it('holds the folded sheet and what the check says of it', () => {
    const finding = {
      id: 'carried:x',
      rule: 'carried' as const,
      severity: 'note' as const,
      piece: null,
      subjects: [],
      numbers: { count: 1 },
      basis: '',
      slot: null,
      accepted: null,
    };
    const packet = buildPacket({ entries: sampleJob().entries, made: MADE, photos: [], check: () => [finding] });
    expect(packet.sheet.details.boat).toBe('Grey Heron');
    expect(packet.findings).toEqual([finding]);
  });

  it('leaves out pictures that the logbook does not name', () => {
    const stranger = { sha256: 'e'.repeat(64), mime: 'image/png', size: 3 };
    const packet = buildPacket({
      entries: sampleJob().entries,
      made: MADE,
      photos: [...PHOTOS, stranger],
      check: noFindings,
    });
    expect(packet.photos.map((photo) => photo.sha256)).toEqual(PHOTOS.map((photo) => photo.sha256).sort());
  });

  it('leaves out pictures whose content was erased', () => {
    const scribe = sampleJob();
    const [photo] = scribe.entries.filter((entry) => entry.kind === 'photo.add');
    const erased = scribe.entries.map((entry) => (entry === photo ? { ...entry, payload: { erased: true } } : entry));
    expect(build(erased).photos.map((kept) => kept.sha256)).toEqual([PHOTOS[1]?.sha256]);
  });

  it('lets half a character in one text hold nothing up', () => {
    const scribe = sampleJob();
    scribe.add('note.add', { on: null, text: 'cut \ud83d short' });
    const packet = build(scribe.entries);
    expect(packet.sheet.notes[0]?.text).toBe('cut \ufffd short');
    expect(readPacket(JSON.stringify(packet))).toMatchObject({ ok: true });
  });

  it('keeps whole characters as they are', () => {
    const scribe = sampleJob();
    scribe.add('note.add', { on: null, text: 'boat 🛥 fine' });
    expect(build(scribe.entries).sheet.notes[0]?.text).toBe('boat 🛥 fine');
  });

  it('refuses no entries and entries of two jobs', () => {
    expect(() => build([])).toThrow(RangeError);
    const other = sampleJob().entries.map((entry) => ({ ...entry, job: DEVICE }));
    expect(() => build([...sampleJob().entries, ...other])).toThrow(RangeError);
  });
});

describe('sealOf', () => {
  it('is the same with the photos inside and beside', () => {
    const inside = samplePacket(noFindings, true);
    const beside = samplePacket(noFindings, false);
    expect(inside.photos.every((photo) => photo.data !== undefined)).toBe(true);
    expect(sealOf(inside)).toBe(sealOf(beside));
    expect(sealOf(inside)).toBe(inside.seal);
  });

  it('does not depend on the order of fields', () => {
    const packet = samplePacket();
    const turned = Object.fromEntries(Object.entries(packet).toReversed());
    expect(sealOf(turned)).toBe(packet.seal);
  });

  it('changes with any entry, with a field it does not know, and with a photo gone', () => {
    const packet = samplePacket();
    const seals = [
      sealOf({ ...packet, logbook: packet.logbook.slice(1) }),
      sealOf({ ...packet, more: 1 }),
      sealOf({ ...packet, photos: packet.photos.slice(1) }),
    ];
    expect(new Set([...seals, packet.seal]).size).toBe(4);
  });
});
