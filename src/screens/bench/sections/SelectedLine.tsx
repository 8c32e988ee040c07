import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { pointLabel } from '../../model/words.ts';
import { findingText } from '../../parts/FindingLine.tsx';
import { photoTitle } from '../../parts/photo/photo-words.ts';
import { historyText } from '../history-words.ts';
import { readBy, readingTitle, readingValue, thingName } from '../names.ts';
import { litBy } from '../state/lit.ts';
import { selected, type Target } from '../state/selection.ts';

/** Below the drawing: what is selected, in words. */
export function SelectedLine({ job, piece }: { job: OpenJob; piece: string }) {
  const target = selected.value;
  // Not what the mouse happens to be over.
  const lit = litBy(target, job, piece);
  const words = sayBench().judge;
  return (
    <div class="row spread bench-selected" aria-live="polite">
      <p>
        {target ? <strong>{told(target, job, piece)}</strong> : <span class="quiet">{words.nothingSelected}</span>}
        {target && target.on !== 'finding' && lit.findings.size > 0 && ` ${words.selectedFindings(lit.findings.size)}.`}
      </p>
      {target && (
        <button
          type="button"
          class="button plain"
          onClick={() => {
            selected.value = null;
          }}
        >
          {words.letGo}
        </button>
      )}
    </div>
  );
}

function told({ on, id }: Target, job: OpenJob, piece: string): string {
  const words = sayBench().judge;
  const { sheet } = job;
  if (on === 'reading') {
    const reading = sheet.readings.find((candidate) => candidate.id === id);
    if (!reading) return '';
    const what = reading.value === null ? sayBench().readings.states[reading.state] : readingValue(reading, sheet);
    return `${words.selectedReading(readingTitle(sheet, id), [what, readBy(reading)].filter(Boolean).join(', '))}.`;
  }
  if (on === 'point') return `${words.selectedPoint(pointLabel(sheet, id))}.`;
  if (on === 'finding') {
    const finding = job.findings.find((candidate) => candidate.id === id);
    return finding ? findingText(finding, sheet) : '';
  }
  if (on === 'entry') {
    const entry = job.entries.find((candidate) => candidate.id === id);
    return entry ? `${historyText(entry, job)}.` : '';
  }
  if (on === 'photo') {
    const photo = sheet.photos.find((candidate) => candidate.id === id);
    return photo ? `${photoTitle(photo, sheet) ?? sayBench().photos.other}.` : '';
  }
  return `${thingName(sheet, piece, on, id)}.`;
}
