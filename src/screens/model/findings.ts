import type { Finding } from '../../core/check/index.ts';
import type { Sheet, SheetRun } from '../../core/job/index.ts';
import { type OpenJob, openJob } from './open-job.ts';
import { lengthText, pointLabel, readingName, runTitle, shotTitle, wordsOfPiece } from './words.ts';

/**
 * What the strip beside an entry says of a subject: what is there, not what is missing. While something is impossible
 * the lesser doubts keep quiet.
 */
export function findingsOn(job: OpenJob | null, on: Finding['subjects'][number]['on'], id: string): Finding[] {
  const { findings } = job ?? openJob.value ?? { findings: [] };
  const touching = findings.filter(
    (finding) =>
      finding.severity !== 'note' &&
      finding.accepted === null &&
      !isMissing(finding) &&
      finding.subjects.some((subject) => subject.on === on && subject.id === id),
  );
  const stops = touching.filter((finding) => finding.severity === 'stop');
  return stops.length > 0 ? stops : touching;
}

/** Findings of things not done yet: the walk itself shows them, the strip does not. */
export const isMissing = (finding: Finding): boolean =>
  finding.rule.startsWith('missing-') || finding.rule === 'asked-again' || finding.rule === 'unmeasured-reading';

/** What is said of an edge: of the run itself and of every fastener's place on it. */
export function findingsOnRun(job: OpenJob, run: SheetRun): Finding[] {
  const said = [...findingsOn(job, 'run', run.id), ...run.stations.flatMap((id) => findingsOn(job, 'reading', id))];
  const unique = [...new Map(said.map((finding) => [finding.id, finding])).values()];
  const stops = unique.filter((finding) => finding.severity === 'stop');
  return stops.length > 0 ? stops : unique;
}

/** The names of a finding's subjects, as people know them. */
export function subjectNames(finding: Finding, sheet: Sheet): string[] {
  const words = wordsOfPiece(sheet, finding.piece ?? '');
  return finding.subjects.map(({ on, id }) => {
    switch (on) {
      case 'reading': {
        const reading = sheet.readings.find((candidate) => candidate.id === id);
        return reading ? readingName(reading, sheet) : id;
      }
      case 'point':
        return pointLabel(sheet, id);
      case 'run': {
        const run = sheet.runs.find((candidate) => candidate.id === id);
        return run ? runTitle(sheet, run) : id;
      }
      case 'shot':
        return shotTitle(sheet, finding.piece ?? '', id);
      case 'question':
        return words?.questions[id]?.title ?? id;
      case 'piece':
        return sheet.pieces.find((piece) => piece.id === id)?.name ?? id;
      case 'obstruction':
        return sheet.obstructions.find((thing) => thing.id === id)?.label ?? id;
      default:
        return id;
    }
  });
}

/** A number of a finding as people read it: millimetres in the job's unit, words as they are. */
export function findingNumber(finding: Finding, key: string, sheet: Sheet): string {
  const value = finding.numbers[key];
  return typeof value === 'number' ? lengthText(value, sheet) : (value ?? '');
}
