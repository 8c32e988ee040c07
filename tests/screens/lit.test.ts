import { describe, expect, it } from 'vitest';
import { judge } from '../../src/core/check/index.ts';
import { litBy } from '../../src/screens/bench/state/lit.ts';
import type { OpenJob } from '../../src/screens/model/open-job.ts';
import { distances, Job, pieceId, pointId, readingId, runId, thingId, uuid } from '../core/check/build.ts';

const CORNERS: Record<string, [number, number, number]> = { A: [0, 0, 0], B: [2000, 0, 0], C: [1000, 1500, 0] };
const photoId = uuid('photo');

/** A triangle with a cleat that has a size, an edge with two fasteners, and a picture taken at A-B that shows C. */
function openJob(): OpenJob {
  const lengths = distances(CORNERS);
  const job = new Job().piece({
    flat: true,
    points: CORNERS,
    readings: Object.keys(lengths),
    runs: [{ name: 'edge', points: ['A', 'B'] }],
  });
  job.takes(lengths).fasteners('edge', [100, 1900]);
  job
    .thing('cleat', 'K', {}, true)
    .placeThing('K', [1000, 500, 0], { A: 1118, B: 1118 })
    .sizeThing('K', { width: 150 });
  job.add('photo.add', {
    photo: photoId,
    piece: pieceId(),
    slot: null,
    reading: readingId('A-B'),
    sha256: 'a'.repeat(64),
    width: 100,
    height: 80,
    mime: 'image/jpeg',
    size: 10,
    placeKept: false,
  });
  job.add('photo.mark', { photo: photoId, point: pointId('C'), x: 0.5, y: 0.5, text: '' });
  const sheet = job.sheet();
  expect(sheet.photos).toHaveLength(1);
  expect(sheet.obstructions).toHaveLength(1);
  return { sheet, findings: judge(sheet).findings, entries: job.entries } as unknown as OpenJob;
}

const job = openJob();
const by = (on: Parameters<typeof litBy>[0]) => litBy(on, job, pieceId());

describe('what belongs together lights up together', () => {
  it('a point: the readings that end there, and pictures that show it', () => {
    const lit = by({ on: 'point', id: pointId('C') });
    expect([...lit.readings].sort()).toEqual([readingId('A-C'), readingId('B-C')].sort());
    expect([...lit.photos]).toEqual([photoId]);
  });

  it('a reading: its ends, and pictures taken at it', () => {
    const lit = by({ on: 'reading', id: readingId('A-B') });
    expect([...lit.points].sort()).toEqual([pointId('A'), pointId('B')].sort());
    expect([...lit.photos]).toEqual([photoId]);
  });

  it('an edge: its points and its fasteners', () => {
    const lit = by({ on: 'run', id: runId('edge') });
    expect(lit.points.has(pointId('B'))).toBe(true);
    expect(lit.readings.has(readingId('edge 0')) && lit.readings.has(readingId('edge 1'))).toBe(true);
  });

  it('a thing in the way, by itself or by its middle: the point, its sizes, and what is said of it', () => {
    for (const target of [
      { on: 'obstruction', id: thingId('K') },
      { on: 'point', id: pointId('K') },
    ] as const) {
      const lit = by(target);
      expect(lit.points.has(pointId('K'))).toBe(true);
      expect(lit.readings.has(readingId('K width'))).toBe(true);
      const said = job.findings.filter(({ subjects }) => subjects.some(({ id }) => id === thingId('K')));
      expect(said.length).toBeGreaterThan(0);
      for (const { id } of said) expect(lit.findings.has(id)).toBe(true);
    }
  });

  it('a finding about a thing: its point', () => {
    const finding = job.findings.find(({ subjects }) => subjects.some(({ id }) => id === thingId('K')));
    expect(by({ on: 'finding', id: finding?.id ?? '' }).points.has(pointId('K'))).toBe(true);
  });

  it('a picture: the points it shows and the reading it was taken at', () => {
    const lit = by({ on: 'photo', id: photoId });
    expect(lit.points.has(pointId('C'))).toBe(true);
    expect(lit.readings.has(readingId('A-B'))).toBe(true);
    expect([...lit.photos]).toEqual([photoId]);
  });

  it('nothing where nothing is meant', () => {
    expect(by(null)).toMatchObject({ points: new Set(), photos: new Set(), readings: new Set() });
  });
});
