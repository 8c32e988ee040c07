import { CAUTIONS } from '../../../core/guide/index.ts';
import type { SheetPiece } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { sayCautions } from '../../../text/cautions.ts';
import { say } from '../../../text/index.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { Section } from './Section.tsx';

/** What somebody wrote down besides. */
export function NotesSection({ job }: { job: OpenJob }) {
  const { details, photos } = job.sheet;
  // Notes on a picture stand beside it.
  const onPhotos = new Set(photos.map((photo) => photo.id));
  const notes = job.sheet.notes.filter(({ on }) => on === null || !onPhotos.has(on));
  if (notes.length === 0 && details.note === '') return null;
  return (
    <Section at="notes">
      {details.note !== '' && <p class="bench-said">{details.note}</p>}
      {notes.map((note) => (
        <p key={note.id}>
          <span class="bench-said">{note.text}</span>{' '}
          <span class="small quiet">{say().general.signedBy(whoText(note.who), dateText(note.at))}</span>
        </p>
      ))}
    </Section>
  );
}

/** Entries that came with the packet and do nothing here, counted by kind and reason. */
export function CarriedSection({ job }: { job: OpenJob }) {
  const { carried } = job.sheet;
  if (carried.length === 0) return null;
  const counts = new Map<string, { kind: string; why: (typeof carried)[number]['why']; count: number }>();
  for (const { kind, why } of carried) {
    const key = `${why}:${kind}`;
    counts.set(key, { kind, why, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  const words = sayBench().carried;
  return (
    <Section at="carried">
      <ul>
        {[...counts].map(([key, { kind, why, count }]) => (
          <li key={key} class="bench-said">
            {words.line(count, kind, words.why[why])}
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** What can hurt somebody with this piece; each once. */
export function CautionsSection({ piece }: { piece: SheetPiece }) {
  const keys = new Set(piece.cautions.flatMap((caution) => caution.keys));
  const cautions = CAUTIONS.filter((caution) => keys.has(caution));
  if (cautions.length === 0) return null;
  return (
    <Section at="cautions">
      <ul class="stack">
        {cautions.map((caution) => (
          <li key={caution}>{sayCautions().texts[caution]}</li>
        ))}
      </ul>
    </Section>
  );
}
