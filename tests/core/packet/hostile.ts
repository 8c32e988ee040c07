import { createHash } from 'node:crypto';
import { heads, type PieceDeclaration } from '../../../src/core/job/index.ts';
import { counter, Scribe, triangle } from './sample.ts';

/** What somebody might put where a name is expected. */
export const HOSTILE = [
  '<script>window.ran=1</script>',
  '<img src=x onerror="window.ran=1">',
  '"><svg onload=window.ran=1>',
  'javascript:window.ran=1',
  '</text></svg><script>window.ran=1</script>',
  '&lt;&amp;&#60; ]]> <!-- -->',
  '\u202egpj.exe\u2066\u2069\u200f',
  'a\u0000b\u0007c\u001b[31m\u0085d',
  'half \ud800 a letter \udfff',
  '=1+1',
  '+SUM(A1)',
  '@cmd',
  "-2+3|'/bin'!A0",
  '\t=1+1',
  'one\r\ntwo, "three"; four\'',
  '%%c%%d ^J \\P {\\fArial;x}',
  '$1 {{x}} $& __proto__ constructor',
  'W'.repeat(10_000),
  'ab '.repeat(3_333),
  '\u0301'.repeat(300),
] as const;

/** A picture of one dot. */
const DOT = Uint8Array.from(
  atob('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=='),
  (letter) => letter.charCodeAt(0),
);
const HASH = createHash('sha256').update(DOT).digest('hex');
const MM = { unit: 'mm', value: 1000 } as const;

/** A job with this text in every field that takes text, as long as the field takes; once more too long, to be carried. */
export function hostileJob(text: string, start = 0) {
  const scribe = new Scribe(counter(start));
  const { newId } = scribe;
  const [line, label, prose] = [text.slice(0, 400), text.slice(0, 40), text.slice(0, 4000)];
  scribe.add('job.open', { name: line, system: 'metric', fraction: 16 });
  for (const field of ['customer', 'contact', 'boat', 'place', 'note'] as const)
    scribe.add('job.detail', { field, value: prose });
  const piece: PieceDeclaration = triangle(newId);
  const named: PieceDeclaration = {
    ...piece,
    name: line,
    points: piece.points.map((point, at) => ({ ...point, label: `${at}${label}`.slice(0, 40), note: line })),
    readings: piece.readings.map((reading) => ({ ...reading, note: line })),
    runs: [
      {
        id: newId(),
        slot: null,
        points: piece.points.slice(0, 2).map(({ id }) => id),
        whole: piece.readings[0]?.id ?? null,
        needed: true,
        note: line,
      },
    ],
  };
  scribe.add('piece.add', named);
  const [first, second, third] = named.readings.map(({ id }) => id);
  const [run] = named.runs;
  const [point] = named.points;
  for (const reading of [first, second]) if (reading) scribe.add('take.add', { reading, text: line, ...MM });
  const struck = scribe.add('take.add', { reading: first ?? '', text: line, ...MM });
  scribe.add('take.strike', { take: struck, reason: line });
  scribe.add('reading.answer', { reading: third ?? '', answer: 'could-not', reason: line });
  scribe.add('reading.expect', { reading: second ?? '', value: 900, text: line, from: line });
  scribe.add('run.answer', { run: run?.id ?? '', answer: 'could-not', reason: line });
  const thing = newId();
  scribe.add('obstruction.add', {
    obstruction: thing,
    piece: named.id,
    kind: 'cleat',
    label,
    point: point?.id ?? null,
  });
  scribe.add('obstruction.set', { obstruction: thing, field: 'note', value: line });
  const photo = newId();
  const size = { size: DOT.length, width: 1, height: 1 };
  const about = { photo, sha256: HASH, mime: 'image/png', ...size, piece: named.id, slot: null, placeKept: false };
  scribe.add('photo.add', about);
  scribe.add('photo.mark', { photo, x: 0.5, y: 0.5, point: null, text: line });
  scribe.add('note.add', { on: photo, text: prose });
  scribe.add('note.add', { on: null, text: prose });
  scribe.add('note.add', { on: null, text: `${text}${'x'.repeat(4000)}` });
  scribe.add('finding.accept', { finding: line, basis: line, reason: line });
  const items = [{ on: 'reading' as const, id: first ?? '', note: line }];
  scribe.add('ask.again', { piece: named.id, note: prose, items });
  const where = { on: 'run', id: run?.id ?? '' } as const;
  scribe.add('fitting.note', { piece: named.id, where, change: -10, text: line, why: prose });
  scribe.add('fitting.note', { piece: named.id, where: null, change: null, text: line, why: prose, from: line });
  scribe.add('piece.clear', { piece: named.id, judged: heads(scribe.entries), basis: 'rules' });
  const entries = scribe.entries.map((entry) => ({ ...entry, who: { ...entry.who, name: line } }));
  const last = entries.at(-1);
  if (last) entries.push({ ...last, id: newId(), seen: [last.id], kind: text.slice(0, 60) || 'x', payload: { text } });
  const photos = [{ sha256: HASH, mime: 'image/png', size: DOT.length }];
  return { job: scribe.job, entries, photos, piece: named.id, who: { name: line, role: 'installer' as const } };
}
