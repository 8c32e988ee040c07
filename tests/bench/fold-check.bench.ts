/** Fold and check of a job with a thousand entries: what happens after every take, in the worst job we expect. */
import { performance } from 'node:perf_hooks';
import { check } from '../../src/core/check/index.ts';
import { declarePiece } from '../../src/core/guide/index.ts';
import { guides } from '../../src/core/guide/pieces/index.ts';
import { type Entry, type EntryKind, fold, heads, type Payload } from '../../src/core/job/index.ts';

const ENTRIES = 1000;
const ROUNDS = 30;
const ORIGIN: readonly [number, number, number] = [0, 0, 0];

let count = 0;
const newId = (): string => {
  count += 1;
  return `${count.toString(16).padStart(8, '0')}-0000-7000-8000-000000000000`;
};

function job(): Entry[] {
  const entries: Entry[] = [];
  const add = <K extends EntryKind>(kind: K, payload: Payload<K>): void => {
    const last = entries.at(-1)?.id;
    entries.push({
      id: newId(),
      job: '00000000-0000-7000-8000-000000000001',
      at: '2026-05-04T09:00:00+00:00',
      who: { name: 'Sam', role: 'installer' },
      device: '00000000-0000-7000-8000-000000000002',
      seen: last === undefined ? [] : [last],
      kind,
      payload: { ...payload },
    });
  };
  add('job.open', { name: 'bench', system: 'metric', fraction: 16 });
  const pieces = Array.from({ length: 8 }, (_, i) => {
    const guide = guides[i % guides.length];
    if (!guide) throw new Error('no guide');
    const piece = declarePiece(guide, `piece ${i}`, newId);
    add('piece.add', piece);
    return piece;
  });
  const straights = pieces.flatMap((piece) => {
    const at = new Map(piece.points.map((point) => [point.id, point.nominal ?? ORIGIN]));
    return piece.readings.map((reading) => {
      const [a, b] = reading.points.map((id) => at.get(id) ?? ORIGIN);
      const value = a && b ? Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) : (a?.[2] ?? 0);
      return { reading: reading.id, value: reading.kind === 'girth' ? value * 3 : value };
    });
  });
  for (let i = 0; entries.length < ENTRIES; i += 1) {
    const { reading, value } = straights[i % straights.length] ?? { reading: '', value: 0 };
    add('take.add', { reading, text: value.toFixed(0), unit: 'mm', value: Math.round(value) });
  }
  return entries;
}

const median = (times: number[]): number => times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;

function time<T>(work: () => T): { ms: number; result: T } {
  let result = work();
  const times = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    result = work();
    return performance.now() - start;
  });
  return { ms: median(times), result };
}

const entries = job();
const folded = time(() => fold(entries));
const checked = time(() => check(folded.result));
console.log(`| job of ${entries.length} entries, ${folded.result.pieces.length} pieces | median of ${ROUNDS}, ms |`);
console.log('| --- | --- |');
console.log(`| fold | ${folded.ms.toFixed(2)} |`);
console.log(`| check (${checked.result.length} findings) | ${checked.ms.toFixed(2)} |`);
console.log(`| heads | ${time(() => heads(entries)).ms.toFixed(2)} |`);
