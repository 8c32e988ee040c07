import { saySheet } from '../../../text/sheet.ts';
import { jobTitle } from '../../model/job-words.ts';
import type { SheetContent } from './sheet-content.ts';

/** At the top of every page: which job and piece, and whether it may be cut. */
export function SheetTop({ content: { facts, job } }: { content: SheetContent }) {
  return (
    <header class="sheet-top">
      <div>
        <strong class="sheet-piece">{facts.piece}</strong>
        <span>{facts.job || jobTitle(job.sheet.details)}</span>
      </div>
      <strong class={`sheet-cleared ${facts.isCleared ? '' : 'not'}`}>{facts.cleared}</strong>
    </header>
  );
}

/** At the foot of every page: which state it was made of. */
export function SheetFoot({ content: { facts }, page, of }: { content: SheetContent; page: number; of: number }) {
  return (
    <footer class="sheet-foot">
      <div>
        <span>{[facts.demo, facts.state].filter(Boolean).join(' · ')}</span>
        <strong>{saySheet().page(page, of)}</strong>
      </div>
      <div class="sheet-seal">{facts.seal}</div>
    </footer>
  );
}
