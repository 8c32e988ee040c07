import type { SheetPiece } from '../../core/job/index.ts';
import { sayBench } from '../../text/bench.ts';
import { lastUndoable, type OpenJob, undo } from '../model/open-job.ts';
import { FittingSection } from '../parts/fitting/FittingSection.tsx';
import { historyText } from './history-words.ts';
import { AnswersSection } from './sections/AnswersSection.tsx';
import { AskPanel } from './sections/AskPanel.tsx';
import { AsksSection } from './sections/AsksSection.tsx';
import { CompareSection } from './sections/CompareSection.tsx';
import { DecideSection } from './sections/DecideSection.tsx';
import { DisputesSection } from './sections/DisputesSection.tsx';
import { DrawingsSection } from './sections/DrawingsSection.tsx';
import { FindingsSection } from './sections/FindingsSection.tsx';
import { HistorySection } from './sections/HistorySection.tsx';
import { KeepSection } from './sections/KeepSection.tsx';
import { LimitsSection } from './sections/LimitsSection.tsx';
import { PhotosSection } from './sections/PhotosSection.tsx';
import { ReadingsSection } from './sections/ReadingsSection.tsx';
import { CarriedSection, CautionsSection, NotesSection } from './sections/RemarksSections.tsx';
import { RemoveSection } from './sections/RemoveSection.tsx';
import { RunsSection } from './sections/RunsSection.tsx';
import { jumpTo } from './sections/Section.tsx';
import { SlipsSection } from './sections/SlipsSection.tsx';
import { SureSection } from './sections/SureSection.tsx';
import { TapesSection } from './sections/TapesSection.tsx';
import { ThingsSection } from './sections/ThingsSection.tsx';
import type { Lit } from './state/lit.ts';

interface Props {
  job: OpenJob;
  piece: SheetPiece | null;
  lit: Lit;
  /** By what is selected, whatever the mouse is over. */
  kept: Lit;
}

/** Everything beside the drawing: the decision first, then what it rests on. */
export function Details({ job, piece, lit, kept }: Props) {
  return (
    <div class="bench-details">
      {piece && (
        <>
          <DecideSection job={job} piece={piece} lit={lit} />
          <UndoLast job={job} />
          <LimitsSection job={job} />
          <SlipsSection job={job} piece={piece.id} lit={lit.readings} />
          <SureSection job={job} piece={piece} lit={lit} />
          <TapesSection job={job} piece={piece.id} />
          <FindingsSection job={job} piece={piece.id} lit={lit} />
          <DisputesSection job={job} piece={piece.id} />
          <ReadingsSection job={job} piece={piece.id} lit={lit} />
          <RunsSection job={job} piece={piece.id} lit={lit} />
          <ThingsSection job={job} piece={piece.id} lit={lit} />
          <PhotosSection job={job} piece={piece.id} lit={lit} />
          <AnswersSection job={job} piece={piece.id} lit={lit} />
          <AsksSection job={job} piece={piece.id} />
          <CautionsSection piece={piece} />
          <FittingSection key={`fitting ${piece.id}`} job={job} piece={piece.id} />
          <KeepSection key={piece.id} job={job} piece={piece} />
        </>
      )}
      <NotesSection job={job} />
      <CarriedSection job={job} />
      {piece && <DrawingsSection job={job} piece={piece} />}
      {piece && <CompareSection job={job} piece={piece.id} />}
      <HistorySection job={job} lit={lit} kept={kept} />
      <RemoveSection key={job.id} job={job} />
      {piece && <AskPanel job={job} piece={piece.id} onMade={() => jumpTo('asks')} />}
    </div>
  );
}

/** The shop's own last act can be taken back; it stays in the history. */
function UndoLast({ job }: { job: OpenJob }) {
  const entry = lastUndoable.value;
  if (!entry) return null;
  return (
    <div>
      <button type="button" class="button plain" onClick={() => void undo(entry)} data-testid="undo">
        {sayBench().judge.undo(historyText(entry, job))}
      </button>
    </div>
  );
}
