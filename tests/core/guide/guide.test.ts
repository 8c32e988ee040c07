import { describe, expect, it } from 'vitest';
import { outlineOf } from '../../../src/core/geometry/index.ts';
import { declarePiece, nextOpen, stepsOf } from '../../../src/core/guide/index.ts';
import { guideOf, guides } from '../../../src/core/guide/pieces/index.ts';
import { fold, PieceDeclaration } from '../../../src/core/job/index.ts';
import { loadPieceWords, pieceWords } from '../../../src/text/guides.ts';
import { id, Phone } from '../job/support.ts';

const ids = () => {
  let n = 0;
  return () => {
    n += 1;
    return id(n, 99);
  };
};

describe.each(guides)('the guide of $kind', (guide) => {
  const piece = declarePiece(guide, 'a piece', ids());

  it('declares a piece its schema accepts, every id its own', () => {
    expect(PieceDeclaration.safeParse(piece).success).toBe(true);
    const all = [piece.id, ...[...piece.points, ...piece.readings, ...piece.runs].map((part) => part.id)];
    expect(new Set(all).size).toBe(all.length);
  });

  it('names no slot twice, and every point of the walk exists', () => {
    expect(new Set(piece.walk).size).toBe(piece.walk.length);
    const points = new Set(piece.points.map((point) => point.id));
    const used = piece.readings.flatMap((reading) => [...reading.points, ...(reading.baseline ?? [])]);
    for (const point of [
      ...used,
      ...piece.runs.flatMap((run) => run.points),
      ...piece.boxes.flat(),
      ...piece.pairs.flat(),
    ])
      expect(points).toContain(point);
  });

  it('asks for every pair of points at most once', () => {
    const pairs = piece.readings
      .filter((reading) => reading.kind === 'straight')
      .map((reading) => [...reading.points].sort().join());
    expect(new Set(pairs).size).toBe(pairs.length);
  });

  it('has words for every point, picture, question with all its choices, and run', async () => {
    await loadPieceWords([guide.kind]);
    const text = pieceWords(guide.kind);
    for (const point of guide.points) expect(text?.points[point.slot]).toBeDefined();
    for (const step of guide.walk) {
      if (step.on === 'shot') expect(text?.shots[step.slot]).toBeDefined();
      if (step.on === 'run') expect(text?.runs[step.slot]).toBeDefined();
      if (step.on === 'question')
        expect(Object.keys(text?.questions[step.slot]?.choices ?? {}).sort()).toEqual([...step.choices].sort());
    }
    const slots = new Set(guide.walk.map((step) => step.slot));
    for (const slot of Object.keys({ ...text?.mistakes, ...text?.readings })) expect(slots).toContain(slot);
    // A plain size has no point to hook on: only its own words say what is meant.
    for (const step of guide.walk)
      if (step.on === 'reading' && step.reading.kind === 'size') expect(text?.readings?.[step.slot]).toBeDefined();
  });

  it('asks under a condition only what an earlier question of its own decides, by a choice it has', () => {
    const before = new Map<string, readonly string[]>();
    for (const step of guide.walk) {
      for (const choice of step.when?.is ?? []) expect(before.get(step.when?.question ?? '')).toContain(choice);
      if (step.on === 'question') before.set(step.slot, step.choices);
    }
  });

  it('is walked in its own order, and nothing is done before anything was', () => {
    const phone = new Phone();
    phone.does('job.open', { name: '', system: 'metric', fraction: 16 });
    phone.does('piece.add', piece);
    const conditional = new Set(guide.walk.filter(({ when }) => when).map(({ slot }) => slot));
    const steps = stepsOf(fold(phone.entries), piece.id);
    expect(steps.map((step) => step.key)).toEqual(piece.walk.filter((slot) => !conditional.has(slot)));
    expect(new Set(steps.map((step) => step.state))).toEqual(new Set(['open']));
    expect(nextOpen(steps, -1)?.key).toBe(piece.walk[0]);
    expect(nextOpen(steps, steps.length - 1)?.key).toBe(piece.walk[0]);
  });
});

describe('steps', () => {
  const [guide] = guides;
  if (!guide) throw new Error('there is no guide');
  const piece = declarePiece(guide, 'a piece', ids());
  const begun = () => {
    const phone = new Phone();
    phone.does('job.open', { name: '', system: 'metric', fraction: 16 });
    phone.does('piece.add', piece);
    return phone;
  };
  const first = piece.readings[0];

  it('come back as asked again, with the shop’s words, and close when somebody who knew answers', () => {
    const phone = begun();
    const take = { reading: first?.id ?? '', text: '1000', unit: 'mm', value: 1000 } as const;
    phone.does('take.add', take);
    const state = () => stepsOf(fold(phone.entries), piece.id).find((step) => step.key === first?.slot);
    expect(state()?.state).toBe('done');
    phone.does('ask.again', {
      piece: piece.id,
      note: 'all of it',
      items: [{ on: 'reading', id: take.reading, note: 'this one' }],
    });
    expect([state()?.state, state()?.askedNote]).toEqual(['asked-again', 'this one']);
    phone.does('take.add', take);
    expect([state()?.state, state()?.askedNote]).toEqual(['done', null]);
  });

  it('of readings added later follow the walk', () => {
    const phone = begun();
    const added = {
      id: id(5, 98),
      slot: null,
      kind: 'straight',
      points: piece.points.slice(0, 2).map((p) => p.id),
      needed: false,
    } as const;
    phone.does('reading.add', { piece: piece.id, reading: { ...added, points: [...added.points] } });
    expect(stepsOf(fold(phone.entries), piece.id).at(-1)?.key).toBe(added.id);
  });

  it('do not include the readings of single fasteners: those belong to their run', () => {
    const edged = guideOf('open-bow');
    if (!edged) throw new Error('there is no guide with an edge');
    const cover = declarePiece(edged, 'a cover', ids());
    const phone = new Phone();
    phone.does('job.open', { name: '', system: 'metric', fraction: 16 });
    phone.does('piece.add', cover);
    const before = stepsOf(fold(phone.entries), cover.id).map(({ key }) => key);
    const [reading, run] = [id(6, 98), cover.runs[0]?.id ?? ''];
    const fastener = { fastener: id(7, 98), run, reading, rank: 1, type: 'snap', presence: 'there' } as const;
    phone.does('fastener.add', fastener);
    const sheet = fold(phone.entries);
    expect(sheet.readings.map((one) => one.id)).toContain(reading);
    expect(stepsOf(sheet, cover.id).map(({ key }) => key)).toEqual(before);
  });
});

describe('the line round a piece as its guide declares it', () => {
  const round = (kind: (typeof guides)[number]['kind'], answers: Record<string, string> = {}): string[] => {
    const guide = guideOf(kind);
    if (!guide) throw new Error(`no guide of ${kind}`);
    const piece = declarePiece(guide, 'a piece', ids());
    const phone = new Phone();
    phone.does('job.open', { name: '', system: 'metric', fraction: 16 });
    phone.does('piece.add', piece);
    for (const [slot, choice] of Object.entries(answers))
      phone.does('question.answer', { piece: piece.id, slot, choice, text: '' });
    const sheet = fold(phone.entries);
    const outline = outlineOf(sheet, piece.id)?.points ?? [];
    return outline.map((point) => sheet.points.find((one) => one.id === point)?.label ?? '?');
  };

  it.each([
    ['folding-top', { bows: 'two' }, ['P1', 'S1', 'S2', 'P2']],
    ['folding-top', { bows: 'three' }, ['P1', 'S1', 'S3', 'P3']],
    ['folding-top', { bows: 'four' }, ['P1', 'S1', 'S4', 'P4']],
    ['box-cover', {}, ['B1', 'B2', 'B3', 'B4']],
    ['cushion', { outline: 'two-tapes' }, ['L', 'E1', 'E2', 'E3', 'E4', 'E5', 'E6', 'R']],
    ['cushion', { front: 'belly', hinge: 'one' }, ['L', 'E1', 'E2', 'E3', 'E4', 'E5', 'E6', 'R', 'N']],
  ] as const)('%s %j', (kind, answers, labels) => {
    expect(round(kind, answers)).toEqual(labels);
  });
});
