import { gates } from '../../../core/check/index.ts';
import type { OpenJob } from '../../model/open-job.ts';

export type Grave = 'stop' | 'doubt';

/** What standing findings of a piece speak of, the gravest first. */
export interface Marked {
  readings: ReadonlyMap<string, Grave>;
  points: ReadonlyMap<string, Grave>;
  runs: ReadonlyMap<string, Grave>;
  any: { stop: boolean; doubt: boolean };
}

export function markedBy(job: OpenJob, piece: string): Marked {
  const marks = { reading: new Map<string, Grave>(), point: new Map<string, Grave>(), run: new Map<string, Grave>() };
  const any = { stop: false, doubt: false };
  for (const { severity, subjects } of gates(job.sheet, job.findings, piece).cut.standing) {
    if (severity === 'note') continue;
    for (const { on, id } of subjects) {
      if (on !== 'reading' && on !== 'point' && on !== 'run') continue;
      if (marks[on].get(id) !== 'stop') marks[on].set(id, severity);
      any[severity] = true;
    }
  }
  return { readings: marks.reading, points: marks.point, runs: marks.run, any };
}
