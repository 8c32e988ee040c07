import type { Finding, Subject } from '../../../core/check/index.ts';
import type { Sheet, SheetPhoto } from '../../../core/job/index.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { entrySubjects, readingOfTake } from './entry-subjects.ts';
import type { Target } from './selection.ts';

/** Everything that belongs to what is selected, by id (shots and questions by slot). */
export interface Lit {
  readings: ReadonlySet<string>;
  points: ReadonlySet<string>;
  runs: ReadonlySet<string>;
  shots: ReadonlySet<string>;
  photos: ReadonlySet<string>;
  questions: ReadonlySet<string>;
  findings: ReadonlySet<string>;
  entries: ReadonlySet<string>;
}

const NOTHING: Lit = {
  readings: new Set(),
  points: new Set(),
  runs: new Set(),
  shots: new Set(),
  photos: new Set(),
  questions: new Set(),
  findings: new Set(),
  entries: new Set(),
};

/** Findings that speak of a piece, or of the job as a whole. */
export const findingsOf = (findings: readonly Finding[], piece: string): Finding[] =>
  findings.filter((finding) => finding.piece === null || finding.piece === piece);

/** What lights up when something of a piece is selected. */
export function litBy(target: Target | null, job: OpenJob, piece: string): Lit {
  if (!target) return NOTHING;
  const seeds = withThings(
    seedsOf(target, job, piece).flatMap((seed) => asReading(seed, job)),
    job.sheet,
  );
  const things = new Set(seeds.flatMap(({ on, id }) => (on === 'obstruction' ? [id] : [])));
  const ids = (on: Subject['on']) => new Set(seeds.filter((seed) => seed.on === on).map((seed) => seed.id));
  const readings = ids('reading');
  const points = ids('point');
  const runs = ids('run');
  const shots = ids('shot');
  for (const reading of job.sheet.readings) {
    if (readings.has(reading.id)) for (const point of reading.points) points.add(point);
    else if (target.on === 'point' && reading.points.includes(target.id)) readings.add(reading.id);
    else if (reading.obstruction !== undefined && things.has(reading.obstruction)) readings.add(reading.id);
  }
  for (const run of job.sheet.runs)
    if (target.on === 'run' && run.id === target.id) {
      for (const id of [...run.stations, ...(run.whole === null ? [] : [run.whole])]) readings.add(id);
      for (const id of run.points) points.add(id);
    }
  // A picture that somebody speaks of without naming a point is about all the points it should show.
  if (points.size === 0)
    for (const shot of job.sheet.shots)
      if (shot.piece === piece && seeds.some(({ on, id }) => on === 'shot' && id === shot.slot))
        for (const point of shot.points) points.add(point);
  const keys = new Set(seeds.map(keyOf));
  const touches = (subjects: readonly Subject[]) =>
    subjects.flatMap((subject) => asReading(subject, job)).some((subject) => keys.has(keyOf(subject)));
  return {
    readings,
    points,
    runs,
    shots,
    photos: new Set(
      job.sheet.photos.filter((photo) => isShown(photo, target, { readings, points, runs, shots })).map(({ id }) => id),
    ),
    questions: ids('question'),
    findings: new Set(
      findingsOf(job.findings, piece)
        .filter(({ id, subjects }) => (target.on === 'finding' ? id === target.id : touches(subjects)))
        .map(({ id }) => id),
    ),
    entries: new Set(job.entries.filter((entry) => touches(entrySubjects(entry, job.sheet))).map(({ id }) => id)),
  };
}

/** A thing in the way and the point of its middle stand for one another. */
function withThings(seeds: readonly Subject[], { obstructions }: Sheet): Subject[] {
  const more = obstructions.flatMap(({ id, point }): Subject[] => {
    const named = seeds.some((seed) =>
      seed.on === 'obstruction' ? seed.id === id : seed.on === 'point' && seed.id === point,
    );
    return named ? [{ on: 'obstruction', id }, ...(point === null ? [] : [{ on: 'point' as const, id: point }])] : [];
  });
  const known = new Set(seeds.map(keyOf));
  return [...seeds, ...more.filter((seed) => !known.has(keyOf(seed)))];
}

/** A picture of what is lit: it carries its mark or its line, or was taken at it. */
function isShown(
  { id, slot, reading, run, marks, lines }: SheetPhoto,
  target: Target,
  lit: Pick<Lit, 'readings' | 'points' | 'runs' | 'shots'>,
): boolean {
  if (target.on === 'photo') return id === target.id;
  return (
    (slot !== null && lit.shots.has(slot)) ||
    (reading !== undefined && lit.readings.has(reading)) ||
    (run !== undefined && lit.runs.has(run)) ||
    marks.some(({ point }) => point !== null && lit.points.has(point)) ||
    lines.some((line) => line.run !== null && lit.runs.has(line.run))
  );
}

const keyOf = ({ on, id }: Subject): string => `${on}:${id}`;

/** The piece and details are not lit: everything belongs to them. */
function seedsOf(target: Target, job: OpenJob, piece: string): Subject[] {
  const told = (subjects: readonly Subject[]) => subjects.filter(({ on }) => on !== 'piece' && on !== 'detail');
  if (target.on === 'finding') return told(job.findings.find(({ id }) => id === target.id)?.subjects ?? []);
  if (target.on === 'photo') {
    const photo = job.sheet.photos.find(({ id, piece: own }) => id === target.id && own === piece);
    const points = photo?.marks.flatMap((mark) => (mark.point ? [{ on: 'point' as const, id: mark.point }] : [])) ?? [];
    const runs = photo?.lines.flatMap((line) => (line.run ? [{ on: 'run' as const, id: line.run }] : [])) ?? [];
    return [
      ...points,
      ...runs,
      ...(photo?.run ? [{ on: 'run' as const, id: photo.run }] : []),
      ...(photo?.slot ? [{ on: 'shot' as const, id: photo.slot }] : []),
      ...(photo?.reading ? [{ on: 'reading' as const, id: photo.reading }] : []),
    ];
  }
  if (target.on === 'entry') {
    const entry = job.entries.find(({ id }) => id === target.id);
    return entry ? told(entrySubjects(entry, job.sheet)) : [];
  }
  return [{ on: target.on, id: target.id }];
}

function asReading(subject: Subject, job: OpenJob): Subject[] {
  if (subject.on !== 'take') return [subject];
  const reading = readingOfTake(job.sheet, subject.id);
  return reading ? [{ on: 'reading', id: reading.id }] : [];
}
