import { say } from '../../../text/index.ts';
import { saySheet } from '../../../text/sheet.ts';
import { whoText } from '../../model/job-words.ts';
import { SvgShown } from './SvgShown.tsx';
import type { SheetContent } from './sheet-content.ts';

/** Whose boat, who measured, and the piece to scale with what its lines stand for. */
export function PlanBlock({ content }: { content: SheetContent }) {
  const words = saySheet();
  const { drawing, plan, piece, job } = content;
  const { customer, boat, place } = job.sheet.details;
  const facts = [
    [words.kind, say().general.pieceKinds[piece.kind]],
    [words.customer, customer],
    [words.boat, boat],
    [words.place, place],
    [words.measuredBy, measuredBy(content)],
  ].filter(([, value]) => value !== '');
  return (
    <div>
      <dl class="sheet-facts">
        {facts.map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {plan && drawing ? (
        <>
          <SvgShown svg={plan.svg} label={drawing.block.join('. ')} />
          <p class="sheet-legend">
            {[...drawing.legend, ...(plan.leftOut > 0 ? [words.leftOut(plan.leftOut)] : [])]
              .map((one) => one.replace(/\.$/, ''))
              .join('. ')}
            .
          </p>
        </>
      ) : (
        <p>{words.nothing}</p>
      )}
    </div>
  );
}

function measuredBy({ job, piece }: SheetContent): string {
  const takes = job.sheet.readings.filter((reading) => reading.piece === piece.id).flatMap(({ takes: all }) => all);
  return [...new Set(takes.filter(({ struck }) => !struck).map(({ who }) => whoText(who)))].join(', ');
}
