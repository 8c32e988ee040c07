import { describe, expect, it } from 'vitest';
import { judge, shownPlaces, shownShape, takenOnAs } from '../../../src/core/check/index.ts';
import { Job, pieceId, readingId } from './build.ts';
import { demoBow, guideNamed } from './demo-bow.ts';
import { Measured } from './measured.ts';

const bow = (typed: Record<string, string> = {}) =>
  new Measured(guideNamed('open-bow'), { typed: { ...demoBow, ...typed } });

function shapeOf(job: Job, piece: string) {
  const { findings, pieces } = judge(job.sheet());
  const judgement = pieces.get(piece);
  if (!judgement) throw new Error('nothing was judged');
  return { shape: shownShape(judgement, findings), findings, judgement };
}

/** A flat lid of four corners and a point in it, eight tapes: one to spare. */
const TAPES = {
  'A-B': 762,
  'B-C': 1016,
  'C-D': 762,
  'A-D': 1016,
  'A-E': Math.hypot(300, 250),
  'B-E': Math.hypot(462, 250),
  'C-E': Math.hypot(462, 766),
  'D-E': Math.hypot(300, 766),
};
const lid = (added: Record<string, number> = {}, tapes: Record<string, number> = TAPES) => {
  const points = { A: null, B: null, C: null, D: null, E: null };
  const taped = Object.entries(tapes).map(([name, value]) => [name, value + (added[name] ?? 0)] as const);
  return new Job().piece({ points, flat: true, readings: Object.keys(tapes) }).takes(Object.fromEntries(taped));
};

function acceptAll(job: Job): Job {
  for (const { id, basis, severity } of job.all())
    if (severity === 'doubt') job.add('finding.accept', { finding: id, basis, reason: 'the boat is built so' });
  return job;
}

describe('the shape that is shown', () => {
  it('is that of every reading where all fit', () => {
    for (const [job, piece] of [[lid(), pieceId()] as const, [bow().job, bow().piece.id] as const]) {
      const { shape, findings, judgement } = shapeOf(job, piece);
      expect(shape).toMatchObject({ bent: false, solved: true, without: [] });
      expect(shape.shown).toBe(shape.whole);
      expect(takenOnAs(findings, piece, judgement)).toBeNull();
    }
  });

  it('leaves out the one reading that is named, taken on or not, and its figures may be used', () => {
    const measured = bow({ 'W1-P1': '21 3/4' });
    const { shape } = shapeOf(measured.job, measured.piece.id);
    expect(shape).toMatchObject({ bent: false, without: [measured.reading('W1-P1')] });
    expect(shape.whole?.doubted).toBe(true);
    expect(shape.shown?.doubted).toBe(false);
    acceptAll(measured.job);
    const after = shapeOf(measured.job, measured.piece.id);
    expect(after.shape).toMatchObject({ bent: false, without: [measured.reading('W1-P1')] });
    expect(takenOnAs(after.findings, measured.piece.id, after.judgement)).toBe('without');
  });

  it('is bent where nobody can tell which reading is wrong, and stays so when that is taken on', () => {
    for (const job of [lid({ 'A-E': 60 }), acceptAll(lid({ 'A-E': 60 }))]) {
      const { shape } = shapeOf(job, pieceId());
      expect(shape).toMatchObject({ bent: true, without: [] });
      // It is still drawn: a picture.
      expect(shownPlaces(shape).size).toBe(5);
    }
    const { findings, judgement } = shapeOf(acceptAll(lid({ 'A-E': 60 })), pieceId());
    expect(takenOnAs(findings, pieceId(), judgement)).toBe('bent');
  });

  it('is bent where what is left without the one named fits two shapes', () => {
    // Folded over B-D the lid keeps every length but that of A-C.
    const middle = { 'A-E': 635, 'B-E': 635, 'C-E': 635, 'D-E': 635, 'A-C': 1270, 'B-D': 1270 };
    const job = lid({ 'A-C': 152.4 }, { ...TAPES, ...middle });
    expect(shapeOf(job, pieceId()).judgement.slips).toMatchObject({
      verdict: 'named',
      explanations: [{ slips: [{ reading: readingId('A-C') }] }],
    });
    const { shape } = shapeOf(job, pieceId());
    expect(shape).toMatchObject({ bent: true, without: [] });
  });

  it('is bent where two looks differ and nothing else says which is right, and not where others do', () => {
    const tapes = { 'A-B': 3000, 'B-C': 4000, 'A-C': 5000 };
    const job = new Job().piece({ points: { A: null, B: null, C: null }, flat: true, readings: Object.keys(tapes) });
    expect(shapeOf(job.takes(tapes), pieceId()).shape.bent).toBe(false);
    acceptAll(job.takes({ 'A-C': 5300 }));
    const hanging = shapeOf(job, pieceId());
    expect(hanging.shape.bent).toBe(true);
    expect(takenOnAs(hanging.findings, pieceId(), hanging.judgement)).toBe('bent');

    const checked = bow();
    checked.read('W1-P1', { typed: { ...demoBow, 'W1-P1': '12 3/4' } }).read('W1-P1', { typed: demoBow });
    expect(shapeOf(checked.job, checked.piece.id).shape.bent).toBe(false);
  });

  it('is the same object while nothing else was judged, so that a drawing is made once', () => {
    const { shape, findings, judgement } = shapeOf(lid({ 'A-E': 60 }), pieceId());
    expect(shownShape(judgement, findings)).toBe(shape);
  });
});
