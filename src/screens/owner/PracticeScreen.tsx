import { useSignal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { paperLength, practiceFactor, practiceSlip } from '../../core/check/index.ts';
import {
  instrumentsOf,
  type Payload,
  type PracticePaper,
  type PracticeReading,
  type PracticeSide,
} from '../../core/job/index.ts';
import { sayOwner } from '../../text/owner.ts';
import { act, type OpenJob, openJob } from '../model/open-job.ts';
import { go } from '../model/route.ts';
import { actor } from '../model/services.ts';
import { lengthText, readValue } from '../model/words.ts';
import { Lesson } from '../parts/lesson/Lesson.tsx';
import { Banner, StateMark } from '../parts/marks.tsx';
import { LengthPad } from '../parts/pad/LengthPad.tsx';
import { PadEntry } from '../parts/pad/PadEntry.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { PaperDrawing } from './PaperDrawing.tsx';
import { whereToGoOn } from './progress.ts';

const SIDES = ['long', 'short', 'diagonal'] as const satisfies readonly PracticeSide[];

/** A sheet of paper taped before the boat: its size is known, so a slip shows at once and costs nothing. */
export function PracticeScreen({ job }: { job: OpenJob }) {
  const [paper, setPaper] = useState<PracticePaper | null>(null);
  const [readings, setReadings] = useState<readonly PracticeReading[]>([]);
  const [at, setAt] = useState(0);
  const [over, setOver] = useState(false);
  const words = sayOwner().practice;
  const side = SIDES[at];
  // What was read is kept also where somebody leaves half-way; where the job itself was left, there is nothing to keep it in.
  const unkept = useRef<Payload<'practice.done'> | null>(null);
  const keep = async (): Promise<void> => {
    const done = unkept.current;
    unkept.current = null;
    if (done && openJob.value?.id === job.id) await act('practice.done', done);
  };
  useEffect(() => () => void keep().catch(() => undefined), []);
  const read = (reading: PracticeReading): void => {
    const all = [...readings, reading];
    setReadings(all);
    if (paper) unkept.current = { paper, readings: all };
  };
  const restart = (): void => {
    setPaper(null);
    setReadings([]);
    setAt(0);
    setOver(false);
  };
  if (over && paper) return <Over job={job} paper={paper} readings={readings} onAgain={restart} />;
  const onward = async (): Promise<void> => {
    if (at + 1 < SIDES.length) {
      setAt(at + 1);
      return;
    }
    await keep();
    setOver(true);
  };
  return (
    <div class="page step">
      <TopBar back={{ at: 'job', job: job.id }} title={words.heading}>
        {paper && <span class="number quiet">{words.place(at + 1, SIDES.length)}</span>}
      </TopBar>
      {paper && side ? (
        <Ask key={side} {...{ job, paper, side }} onRead={read} onward={() => void onward()} />
      ) : (
        <Choose onPaper={setPaper} job={job} />
      )}
    </div>
  );
}

function Choose({ onPaper, job }: { onPaper: (paper: PracticePaper) => void; job: OpenJob }) {
  const words = sayOwner().practice;
  return (
    <>
      <div class="owner-read stack">
        <p>{words.intro}</p>
        <Lesson lesson="zero" />
        <h2>{words.which}</h2>
      </div>
      <div class="owner-foot stack">
        {(['letter', 'a4'] as const).map((paper) => (
          <button key={paper} type="button" class="button main wide" onClick={() => onPaper(paper)}>
            {words.papers[paper]}
          </button>
        ))}
        <button type="button" class="button plain" onClick={() => toWork(job)}>
          {words.skip}
        </button>
      </div>
    </>
  );
}

interface AskProps {
  job: OpenJob;
  paper: PracticePaper;
  side: PracticeSide;
  onRead: (reading: PracticeReading) => void;
  onward: () => void;
}

/** One side of the sheet: read, told how close it was, read again where it was not. */
function Ask({ job, paper, side, onRead, onward }: AskProps) {
  const text = useSignal('');
  const [refusal, setRefusal] = useState('');
  const [read, setRead] = useState<number | null>(null);
  const words = sayOwner().practice;
  const next = (): void => {
    const typed = text.value.trim();
    const parsed = readValue(typed, 'straight', job.sheet);
    setRefusal(parsed.ok ? '' : parsed.refusal);
    if (!parsed.ok) return;
    onRead({ of: side, text: typed, unit: parsed.unit, value: parsed.value });
    setRead(parsed.value);
  };
  const again = (): void => {
    text.value = '';
    setRead(null);
  };
  if (read !== null) return <Said {...{ job, paper, side, read, again, onward }} />;
  return (
    <>
      <div class="step-read">
        <h2>{words.ask[side]}</h2>
        <p>{words.how[side]}</p>
        <PaperDrawing side={side} />
        {refusal && (
          <p role="status">
            <StateMark mark="stop">{refusal}</StateMark>
          </p>
        )}
      </div>
      <div class="step-foot">
        <PadEntry text={text} onEdit={() => setRefusal('')} sheet={job.sheet} kind="straight" halves={null} />
        <LengthPad
          text={text}
          onEdit={() => setRefusal('')}
          onNext={next}
          nextLabel={words.next}
          nextDisabled={text.value.trim() === ''}
          sheet={job.sheet}
        />
      </div>
    </>
  );
}

interface SaidProps extends Omit<AskProps, 'onRead'> {
  read: number;
  again: () => void;
}

/** How close a reading was, kindly, and what it looks like where it was not. */
function Said({ job, paper, side, read, again, onward }: SaidProps) {
  const words = sayOwner().practice;
  const length = paperLength(paper, side);
  const slip = practiceSlip(paper, { of: side, value: read });
  const off = lengthText(Math.abs(read - length), job.sheet);
  const close = slip === 'close';
  return (
    <>
      <div class="owner-read stack" role="status">
        <h2>{words.ask[side]}</h2>
        <PaperDrawing side={side} />
        <p>
          {words.yours(lengthText(read, job.sheet))} {words.size(lengthText(length, job.sheet))}
        </p>
        {close ? (
          <Banner tone="good">
            <StateMark mark="good">{Math.abs(read - length) < 1 ? words.good : words.close(off)}</StateMark>
          </Banner>
        ) : (
          <Banner tone="doubt">
            <StateMark mark="doubt">{words.off(off)}</StateMark>
            <p>{words.slips[slip]}</p>
          </Banner>
        )}
        {(slip === 'started-at-one' || slip === 'hook') && <Lesson lesson="zero" />}
      </div>
      <div class="owner-foot stack">
        {!close && (
          <button type="button" class="button main wide" onClick={again}>
            {words.again}
          </button>
        )}
        <button type="button" class={`button wide ${close ? 'main' : ''}`} onClick={onward}>
          {close ? words.next : words.leave}
        </button>
      </div>
    </>
  );
}

/** This person's own spread, and what it changes: nothing, or a little more room. */
function Over(props: {
  job: OpenJob;
  paper: PracticePaper;
  readings: readonly PracticeReading[];
  onAgain: () => void;
}) {
  const { job, paper, readings, onAgain } = props;
  const words = sayOwner().practice;
  const last = new Map(readings.map(({ of, value }) => [of, Math.abs(value - paperLength(paper, of))]));
  const slipped = SIDES.some((of) => {
    const value = readings.findLast((reading) => reading.of === of)?.value;
    return value !== undefined && practiceSlip(paper, { of, value }) !== 'close';
  });
  const wider = practiceFactor({ paper, readings: [...readings] }, actor.value, instrumentsOf(job.sheet.shop)) > 1;
  return (
    <div class="page owner-page">
      <TopBar back={{ at: 'job', job: job.id }} title={words.done} />
      <div class="owner-read stack">
        <p>{words.spread(lengthText(Math.max(0, ...last.values()), job.sheet))}</p>
        <p>{wider ? words.wider : slipped ? words.slipLeft : words.asUsual}</p>
      </div>
      <div class="owner-foot stack">
        <button type="button" class="button main wide" onClick={() => toWork(job)}>
          {words.toWork}
        </button>
        <button type="button" class="button plain" onClick={onAgain}>
          {words.onceMore}
        </button>
      </div>
    </div>
  );
}

/** On to the step that is wanted next; to the overview where nothing is. */
function toWork(job: OpenJob): void {
  const next = whereToGoOn(job.sheet, null);
  if (next) go({ at: 'step', job: job.id, piece: next.piece, step: next.step.key });
  else go({ at: 'job', job: job.id });
}
