import { useMemo } from 'preact/hooks';
import { takenOnAs } from '../../../core/check/index.ts';
import type { Clearance, Sheet } from '../../../core/job/index.ts';
import { shortState, stateOfPiece } from '../../../core/packet/state.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { Banner } from '../../parts/marks.tsx';
import { historyText } from '../history-words.ts';
import { orderOf } from '../state/answers-since.ts';

/** The clearance that counts for a piece: one that stands, otherwise the last that was given. */
export function clearanceOf(sheet: Sheet, piece: string): Clearance | null {
  const own = sheet.clearances.filter((clearance) => clearance.piece === piece);
  return own.findLast(({ voidedBy }) => voidedBy.length === 0) ?? own.at(-1) ?? null;
}

/** Who cleared it, when, and which state of the job that was; the job sheet says the same. */
export function Standing({ clearance, job }: { clearance: Clearance; job: OpenJob }) {
  const words = sayBench().decide;
  const { judged } = useMemo(() => stateOfPiece(job.entries, job.sheet, clearance.piece), [job, clearance]);
  return (
    <Banner tone="good">
      <p>
        <strong>{words.stands(whoText(clearance.who), dateText(clearance.at))}</strong>
      </p>
      <p>{words.basis[takenOnAs(job.findings, clearance.piece, job.pieces.get(clearance.piece)) ?? clearance.basis]}</p>
      {judged && <p class="small">{words.state(shortState(judged), judged.entries)}</p>}
    </Banner>
  );
}

const SHOWN = 6;

/** A clearance that something later, or not seen then, has overtaken. */
export function Voided({ clearance, job }: { clearance: Clearance; job: OpenJob }) {
  const words = sayBench().decide;
  const since = new Set(clearance.voidedBy);
  const changed = orderOf(job.entries).ordered.filter((entry) => since.has(entry.id));
  return (
    <Banner tone="doubt">
      <p>
        <strong>{words.voided(whoText(clearance.who), dateText(clearance.at))}</strong>
      </p>
      <ul>
        {changed.slice(-SHOWN).map((entry) => (
          <li key={entry.id}>
            {historyText(entry, job)}{' '}
            <span class="small">({say().general.signedBy(whoText(entry.who), dateText(entry.at))})</span>
          </li>
        ))}
      </ul>
      {changed.length > SHOWN && <p>{words.more(changed.length - SHOWN)}</p>}
    </Banner>
  );
}
