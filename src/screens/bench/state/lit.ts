import type { Finding, Subject } from '../../../core/check/index.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { entrySubjects, readingOfTake } from './entry-subjects.ts';
import type { Target } from './selection.ts';

/** Everything that belongs to what is selected, by id (shots and questions by slot). */
export interface Lit {
  readings: ReadonlySet<string>;
  points: ReadonlySet<string>;
  runs: ReadonlySet<string>;
  shots: ReadonlySet<string>;
  questions: ReadonlySet<string>;
  findings: ReadonlySet<string>;
  entries: ReadonlySet<string>;
}

const NOTHING: Lit = {
  readings: new Set(),
  points: new Set(),
  runs: new Set(),
  shots: new Set(),
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
  const seeds = seedsOf(target, job, piece).flatMap((seed) => asReading(seed, job));
  const ids = (on: Subject['on']) => new Set(seeds.filter((seed) => seed.on === on).map((seed) => seed.id));
  const readings = ids('reading');
  const points = ids('point');
  for (const reading of job.sheet.readings) {
    if (readings.has(reading.id)) for (const point of reading.points) points.add(point);
    else if (target.on === 'point' && reading.points.includes(target.id)) readings.add(reading.id);
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
    runs: ids('run'),
    shots: ids('shot'),
    questions: ids('question'),
    findings: new Set(
      findingsOf(job.findings, piece)
        .filter(({ id, subjects }) => (target.on === 'finding' ? id === target.id : touches(subjects)))
        .map(({ id }) => id),
    ),
    entries: new Set(job.entries.filter((entry) => touches(entrySubjects(entry, job.sheet))).map(({ id }) => id)),
  };
}

const keyOf = ({ on, id }: Subject): string => `${on}:${id}`;

/** The piece and details are not lit: everything belongs to them. */
function seedsOf(target: Target, job: OpenJob, piece: string): Subject[] {
  const told = (subjects: readonly Subject[]) => subjects.filter(({ on }) => on !== 'piece' && on !== 'detail');
  if (target.on === 'finding') return told(job.findings.find(({ id }) => id === target.id)?.subjects ?? []);
  if (target.on === 'photo') {
    const photo = job.sheet.photos.find(({ id, piece: own }) => id === target.id && own === piece);
    const points = photo?.marks.flatMap((mark) => (mark.point ? [{ on: 'point' as const, id: mark.point }] : [])) ?? [];
    return [
      ...points,
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
