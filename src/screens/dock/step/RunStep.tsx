import { useState } from 'preact/hooks';
import type { SheetRun } from '../../../core/job/index.ts';
import { sayEdges } from '../../../text/edges.ts';
import { say } from '../../../text/index.ts';
import { findingsOnRun } from '../../model/findings.ts';
import { act } from '../../model/open-job.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { Banner } from '../../parts/marks.tsx';
import { runWords } from '../step-words.ts';
import { CautionFirst, CautionNote, notUnderstood } from './CautionNote.tsx';
import { EdgeAsk, EdgeFacts, Splits } from './edge/EdgeAsk.tsx';
import { askedNext, isCounted, isScrewed, isTaped, lineOf, type Part, partAt, partsOf } from './edge/edge-view.ts';
import { FastenerList, FastenerPad, useFasteners } from './edge/FastenerRows.tsx';
import { Kept } from './edge/Kept.tsx';
import { PlannedRow } from './edge/PlannedRow.tsx';
import { isOpen, StretchTabs } from './edge/StretchTabs.tsx';
import { NoValueStep } from './NoValueStep.tsx';
import { StepLayout } from './StepLayout.tsx';
import type { StepProps } from './step-props.ts';
import './edge/edge.css';

/** An edge: in stretches, what closes each, asked one tap at a time; then where its fasteners are, or how many are planned. */
export function RunStep(props: StepProps<'run'>) {
  const { job, step, onward } = props;
  const [without, setWithout] = useState(false);
  const parts = partsOf(job, step.run);
  const [picked, setPicked] = useState(() => (parts.find(isOpen) ?? parts[0])?.stretch.from ?? '');
  const part = partAt(parts, step.run, picked);
  if (!part) return null;
  if (without)
    return (
      <NoValueStep
        words={sayEdges()}
        onCancel={() => setWithout(false)}
        onAnswer={(answer, reason) => void act('run.answer', { run: step.run.id, answer, reason }).then(onward)}
      />
    );
  return (
    <EdgeStep
      key={part.stretch.from}
      {...props}
      parts={parts}
      part={part}
      onPick={({ stretch }) => setPicked(stretch.from)}
      onWithout={() => setWithout(true)}
    />
  );
}

interface Props extends StepProps<'run'> {
  parts: readonly Part[];
  part: Part;
  onPick: (part: Part) => void;
  onWithout: () => void;
}

function EdgeStep({ job, piece, step, onward, head, moves, led, parts, part, onPick, onWithout }: Props) {
  const { run } = step;
  const { sheet } = job;
  const line = lineOf(sheet, run);
  const asked = askedNext(line, part);
  const taping = isTaped(line, part);
  const fasteners = useFasteners(sheet, run, parts, part);
  // Once fasteners come in, the latest of them stand where the drawing was.
  const begun = taping && fasteners.rows.length > 0;
  const drills = part.stretch.presence === 'planned' && isScrewed(part.stretch) && !step.cautions.includes('drilling');
  const careful = led && drills ? notUnderstood(['drilling']) : [];
  if (careful.length > 0) return <CautionFirst cautions={careful} moves={moves} />;
  const tabs = <StretchTabs parts={parts} at={part} onPick={onPick} />;
  return (
    <StepLayout
      foot={
        <>
          <div class="row spread beside">
            {moves}
            <button type="button" class="button plain" onClick={onWithout}>
              {sayEdges().noValue}
            </button>
          </div>
          {taping && <FastenerPad fasteners={fasteners} sheet={sheet} />}
        </>
      }
    >
      {head}
      {drills && <CautionNote key="drilling" cautions={['drilling']} />}
      <Answered run={run} />
      {taping && !begun && <p>{runWords(sheet, piece, step.key)?.how}</p>}
      {!begun && <EdgeDrawing {...{ job, piece, run, part }} />}
      {begun ? parts.length > 1 && <strong>{part.name}</strong> : tabs}
      {findingsOnRun(job, run).map((finding) => (
        <FindingLine key={finding.id} finding={finding} sheet={sheet} />
      ))}
      {asked !== null && <EdgeAsk {...{ sheet, run, part, line, asked }} />}
      <Kept part={part} />
      {asked === null && <Onward {...{ parts, part, onPick, onward }} />}
      {taping && <FastenerList fasteners={fasteners} run={run} sheet={sheet} />}
      {begun && tabs}
      {asked === null && part.stretch.count !== null && part.stretch.presence === 'planned' && (
        <PlannedRow sheet={sheet} run={run} part={part} />
      )}
      {part.stretch.closes !== null && <EdgeFacts run={run} part={part} line={line} />}
      {asked !== 'closes' && <Splits sheet={sheet} run={run} />}
    </StepLayout>
  );
}

interface DrawingProps {
  job: Props['job'];
  piece: string;
  run: SheetRun;
  part: Part;
}

function EdgeDrawing({ job, piece, run, part }: DrawingProps) {
  const { from, to } = part.stretch;
  const points = run.points.slice(run.points.indexOf(from), run.points.indexOf(to) + 1);
  return (
    <PieceDrawing
      judgement={job.pieces.get(piece)}
      sheet={job.sheet}
      piece={piece}
      width={360}
      height={180}
      askedPoints={points}
      askedEdge={points}
    />
  );
}

type OnwardProps = Pick<Props, 'parts' | 'part' | 'onPick' | 'onward'>;

/** On to the stretch that still wants something, or out of the edge once there is none. */
function Onward({ parts, part, onPick, onward }: OnwardProps) {
  const words = sayEdges();
  if (isOpen(part)) return null;
  const next = parts.find((other) => other !== part && isOpen(other));
  if (next)
    return (
      <button type="button" class="button main wide" onClick={() => onPick(next)} data-testid="stretch-done">
        {words.goOnTo(next.name)}
      </button>
    );
  return (
    <button type="button" class="button main wide" onClick={onward} data-testid="run-done">
      {isCounted(part.stretch) && part.stretch.presence !== 'planned' ? words.finished : say().dock.step.goOn}
    </button>
  );
}

/** What was answered instead of taping; whatever is told of the edge now replaces it. */
function Answered({ run }: { run: SheetRun }) {
  const { answer } = run;
  if (!answer) return null;
  const words = sayEdges();
  const said = answer.answer === 'none-here' ? words.noneHere : words.couldNot;
  return (
    <Banner tone="note">
      <p>{say().dock.step.answered(said, answer.reason)}</p>
    </Banner>
  );
}
