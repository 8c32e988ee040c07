import { describe, expect, it } from 'vitest';
import { apart, type Job, pointId, readingId, runId, thingId } from './build.ts';
import { DECK, deck, toDeck } from './deck.ts';

const key = 'fastener-on-obstruction';
/** P to T is 2147 mm; the fastener at 1000 lies on that straight. */
const PLACES = [30, 180, 330, 480, 630, 780, 1000];
const HALF = 1000 / apart(DECK.P ?? [0, 0, 0], DECK.T ?? [0, 0, 0]);
const ON: [number, number, number] = [100 + HALF * 1900, 1000 - HALF * 1000, 0];
/** So far square inside the edge. */
function inside(mm: number): [number, number, number] {
  const [dx, dy] = [-1000 / Math.hypot(1000, 1900), -1900 / Math.hypot(1000, 1900)];
  return [ON[0] + dx * mm, ON[1] + dy * mm, 0];
}
function thing(at: [number, number, number], sizes: Record<string, number>, kind = 'cleat'): Job {
  const job = deck(PLACES).placeThing('C1', at, toDeck(at, ['W1', 'W2', 'F']));
  return job.thing(kind, 'C1', { treatment: 'cut-out' }, true).sizeThing('C1', sizes);
}

describe(key, () => {
  it('says nothing of a thing beside the row and clear of it', () => {
    expect(thing(inside(60), { length: 150, width: 60, clearance: 20 }).of(key)).toEqual([]);
    expect(thing(inside(12), {}).of(key)).toEqual([]);
  });
  it('goes by what is certainly covered: a long cleat may lie along the row', () => {
    expect(thing(inside(40), { length: 200, width: 50 }).of(key)).toEqual([]);
  });
  it('says nothing of a rail, which carries fasteners, nor of a way out for the cord', () => {
    for (const kind of ['rail', 'cord-exit']) expect(thing(ON, { diameter: 60 }, kind).of(key)).toEqual([]);
  });
  it('says nothing of a thing without a place, nor of a row that is planned elsewhere', () => {
    expect(deck(PLACES).thing('cleat', 'C1').sizeThing('C1', { diameter: 60 }).of(key)).toEqual([]);
    const made = thing(inside(60), { diameter: 60 });
    made.runDetails('edge', { type: 'snap', presence: 'planned', 'planned-count': '20' });
    expect(made.of(key)).toEqual([]);
  });

  it('doubts a fastener that lies on a thing', () => {
    expect(thing(ON, { length: 150, width: 60 }).of(key)).toMatchObject([
      {
        severity: 'doubt',
        slot: 'edge',
        subjects: [
          { on: 'reading', id: readingId('edge 6') },
          { on: 'obstruction', id: thingId('C1') },
        ],
        numbers: { on: 'thing', reach: 30, clearance: 0, planned: 'no' },
      },
    ]);
  });
  it('doubts a fastener within what must stay clear', () => {
    expect(thing(inside(45), { diameter: 60, clearance: 30 }).of(key)).toMatchObject([
      { severity: 'doubt', numbers: { on: 'clearance', reach: 30, clearance: 30 } },
    ]);
  });
  it('only notes a planned row that runs over a thing', () => {
    const made = thing(ON, { diameter: 60 }).stretch('edge', 'P', { closes: 'snap', presence: 'planned', count: '25' });
    expect(made.of(key).filter(({ severity }) => severity === 'note')).toMatchObject([
      {
        subjects: [
          { on: 'run', id: runId('edge') },
          { on: 'point', id: pointId('P') },
          { on: 'obstruction', id: thingId('C1') },
        ],
        numbers: { on: 'thing', planned: 'yes' },
      },
    ]);
  });
});
