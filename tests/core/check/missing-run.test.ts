import { describe, expect, it } from 'vitest';
import { Job, pointId, runId } from './build.ts';

const key = 'missing-run';
const ALL = { line: 'fastener-line', type: 'snap', presence: 'there' };
function job(needed = true): Job {
  const whole = { name: 'whole', kind: 'girth' as const, points: ['A', 'B'], run: 'edge' };
  const runs = [{ name: 'edge', points: ['A', 'B'], whole: 'whole', needed }];
  return new Job().piece({ points: { A: null, B: null }, readings: [whole], runs });
}
const lacks = (made: Job) => made.of(key).map(({ numbers }) => numbers.lack);

describe(key, () => {
  it('says nothing about a run with its line and its fasteners', () => {
    expect(job().runDetails('edge', ALL).fasteners('edge', [30, 180, 330]).of(key)).toEqual([]);
  });
  it('lets the fasteners speak for their type and presence', () => {
    expect(job().runDetails('edge', { line: 'fastener-line' }).fasteners('edge', [30, 180]).of(key)).toEqual([]);
  });
  it('wants no stations of fasteners that are still to be fitted, only their number and what they go into', () => {
    const planned = job().runDetails('edge', { ...ALL, presence: 'planned' });
    expect(planned.of(key).map(({ numbers, severity }) => [numbers.lack, severity])).toEqual([
      ['count', 'doubt'],
      ['into', 'doubt'],
      ['setter', 'note'],
    ]);
    planned.runDetails('edge', { 'planned-count': '12' });
    planned.stretch('edge', 'A', { into: 'laminate', setter: 'shop' });
    expect(planned.of(key)).toEqual([]);
  });
  it('says nothing when the last fastener is near the end', () => {
    const made = job().runDetails('edge', ALL).fasteners('edge', [30, 180, 330]).takes({ whole: 500 });
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing about a bare end while a station is unmeasured', () => {
    const made = job().runDetails('edge', ALL).fasteners('edge', [30, null]).takes({ whole: 2000 });
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing about a bare end beyond the end of a track', () => {
    const made = job().runDetails('edge', ALL).fasteners('edge', [30, 900], { type: 'track-end' });
    expect(made.takes({ whole: 2000 }).of(key)).toEqual([]);
  });

  it('stops once at a run nobody has touched', () => {
    expect(job().of(key)).toMatchObject([
      {
        severity: 'stop',
        slot: 'edge',
        subjects: [
          { on: 'run', id: runId('edge') },
          { on: 'detail', id: 'stations' },
        ],
      },
    ]);
  });
  it('only notes it where the run was only wished for', () => {
    expect(job(false).of(key)).toMatchObject([{ severity: 'note' }]);
  });
  it('stops at each detail that is missing', () => {
    expect(lacks(job().runDetails('edge', { line: 'boat-edge' }))).toEqual(['presence', 'stations', 'type']);
    expect(lacks(job().fasteners('edge', [30]))).toEqual(['line']);
  });
  it('doubts a run whose fasteners stop well before its end', () => {
    const made = job().runDetails('edge', ALL).fasteners('edge', [30, 180, 330]).takes({ whole: 2000 });
    expect(made.of(key)).toMatchObject([{ severity: 'doubt', numbers: { lack: 'rest', rest: 1670, whole: 2000 } }]);
  });

  it('says once that a whole edge could not be measured, and asks whether there is really none', () => {
    const made = job();
    made.add('run.answer', { run: runId('edge'), answer: 'could-not', reason: 'weather' });
    expect(made.of(key)).toMatchObject([{ severity: 'stop', numbers: { lack: 'could-not', reason: 'weather' } }]);
    made.add('run.answer', { run: runId('edge'), answer: 'none-here', reason: 'no such edge' });
    expect(made.of(key)).toMatchObject([{ severity: 'doubt', numbers: { lack: 'none-here' } }]);
    made.runDetails('edge', ALL).fasteners('edge', [30, 180]);
    expect(made.of(key)).toEqual([]);
  });
});

/** An edge of 2 m by way of B, at 800 mm: snaps to B, then something else. */
function split(second: Record<string, string>, first: Record<string, string> = {}): Job {
  const whole = { name: 'whole', kind: 'girth' as const, points: ['A', 'C'], run: 'edge' };
  const made = new Job().piece({
    points: { A: [0, 0, 0], B: [800, 0, 0], C: [2000, 0, 0] },
    readings: [whole],
    runs: [{ name: 'edge', points: ['A', 'B', 'C'], whole: 'whole' }],
  });
  made.runDetails('edge', { line: 'fastener-line' }).takes({ whole: 2000 });
  made.stretch('edge', 'A', { closes: 'snap', presence: 'there', ...first });
  return made.stretch('edge', 'B', { begins: 'yes', ...second });
}
const SNAPS = [30, 180, 330, 480, 630, 770];

describe(`${key}, of an edge in stretches`, () => {
  it('wants nothing where nothing closes the edge', () => {
    expect(split({ closes: 'nothing' }).fasteners('edge', SNAPS).of(key)).toEqual([]);
  });
  it.each(['zip', 'track', 'boltrope'])('wants no row along a %s, only its ends and which way it pulls', (closes) => {
    const made = split({ closes, presence: 'there', pulls: 'aft' }).fasteners('edge', SNAPS);
    expect(lacks(made)).toEqual(['ends']);
    made.fasteners('edge', [...SNAPS.map(() => null), 830, 1960], { type: closes === 'zip' ? 'zip-end' : 'track-end' });
    expect(lacks(made)).toEqual([]);
  });
  it('wants hook-and-loop told and no more, and straps with a place each', () => {
    expect(split({ closes: 'hook-and-loop', presence: 'there' }).fasteners('edge', SNAPS).of(key)).toEqual([]);
    const straps = split({ closes: 'strap', presence: 'there' }).fasteners('edge', SNAPS);
    expect(lacks(straps)).toEqual(['stations']);
  });
  it('says nothing of planned snaps with number, ground and setter, whose rest stays bare until the fitting', () => {
    const told = { closes: 'snap', presence: 'planned', count: '8', into: 'wood', setter: 'yard' };
    expect(split(told).fasteners('edge', SNAPS).of(key)).toEqual([]);
  });

  it('stops at a stretch that says nothing of itself, and names where it is', () => {
    expect(split({}).fasteners('edge', SNAPS).of(key)).toMatchObject(
      ['presence', 'stations', 'type'].map((lack) => ({
        severity: 'stop',
        subjects: [
          { on: 'run', id: runId('edge') },
          { on: 'detail', id: lack },
          { on: 'point', id: pointId('B') },
        ],
        numbers: { lack, from: 'B', to: 'C' },
      })),
    );
  });
  it('stops at a row that is there and has no place in its own stretch, though the other one is taped', () => {
    const made = split({ closes: 'snap', presence: 'there' }).fasteners('edge', SNAPS);
    expect(made.of(key)).toMatchObject([{ severity: 'stop', numbers: { lack: 'stations', from: 'B' } }]);
  });
  it('stops at a zip that does not say which way it pulls', () => {
    const made = split({ closes: 'zip', presence: 'planned', setter: 'shop' }).fasteners('edge', SNAPS);
    expect(made.of(key)).toMatchObject([{ severity: 'stop', numbers: { lack: 'pulls', from: 'B', to: 'C' } }]);
  });
});
