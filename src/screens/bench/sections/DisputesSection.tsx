import { type Dispute, payloads, type Sheet } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import { actAll, type Deed, type OpenJob } from '../../model/open-job.ts';
import { StateMark } from '../../parts/marks.tsx';
import { choiceText, edgeWord, labelsOf, thingName } from '../names.ts';
import { Section } from './Section.tsx';

/** Two people answered one thing differently without knowing of each other: both are shown, and one can be made to hold. */
export function DisputesSection({ job, piece }: { job: OpenJob; piece: string }) {
  const disputes = job.sheet.disputes.filter((dispute) => dispute.piece === null || dispute.piece === piece);
  if (disputes.length === 0) return null;
  return (
    <Section at="disputes">
      {disputes.map((dispute) => (
        <DisputeShown key={`${dispute.on}:${dispute.subject}`} dispute={dispute} sheet={job.sheet} />
      ))}
    </Section>
  );
}

function DisputeShown({ dispute, sheet }: { dispute: Dispute; sheet: Sheet }) {
  const words = sayBench().disputes;
  const values = [...new Set(dispute.answers.map(({ value }) => value))];
  return (
    <div class="bench-row stack">
      <h3>
        <StateMark mark="doubt">{aboutWhat(dispute, sheet)}</StateMark>
      </h3>
      <ul>
        {dispute.answers.map(({ entry, value, who, at }) => (
          <li key={entry}>{words.said(valueWords(dispute, value, sheet), whoText(who), dateText(at))}</li>
        ))}
      </ul>
      <div class="row">
        {values.map((value) => {
          const settling = settle(dispute, value);
          return (
            settling && (
              <button key={value} type="button" class="button" onClick={() => void actAll([settling])}>
                {words.holds(valueWords(dispute, value, sheet))}
              </button>
            )
          );
        })}
      </div>
    </div>
  );
}

function aboutWhat({ on, piece, subject }: Dispute, sheet: Sheet): string {
  const [thing = on, field = ''] = on.split('.');
  const { details } = sayBench().history;
  if (thing === 'detail') return details[field as keyof typeof details] ?? field;
  const kind = sayBench().disputes.about[thing] ?? thing;
  if (subject === null || (thing !== 'question' && thing !== 'reading' && thing !== 'shot' && thing !== 'run'))
    return kind;
  return `${kind}: ${thingName(sheet, piece ?? '', thing, subject)}`;
}

function valueWords({ on, piece, subject }: Dispute, value: string, sheet: Sheet): string {
  if (on === 'question') return choiceText(sheet, { piece: piece ?? '', slot: subject ?? '' }, value);
  const { manners, lines, fasteners, presence } = say().general;
  const known: Record<string, string | undefined> = {
    ...manners,
    ...lines,
    ...fasteners,
    ...presence,
    ...sayBench().readings.states,
  };
  if (on === 'run.points') return labelsOf(sheet, value.split(' '));
  return on.startsWith('detail') ? value : (known[value] ?? edgeWord(value));
}

/** The entry by which the shop says that an answer holds; null where it cannot be made. */
function settle({ on, piece, subject }: Dispute, value: string): Deed | null {
  const [thing = '', field] = on.split('.');
  const [run, from] = (subject ?? '').split(' ');
  const made = {
    detail: { kind: 'job.detail', payload: { field, value } },
    run:
      field === 'points'
        ? { kind: 'run.points', payload: { run: subject, points: value.split(' ') } }
        : field === 'answer'
          ? { kind: 'run.answer', payload: { run: subject, answer: value, reason: '' } }
          : { kind: 'run.detail', payload: { run: subject, field, value } },
    stretch: { kind: 'stretch.set', payload: { run, from, field, value } },
    obstruction: { kind: 'obstruction.set', payload: { obstruction: subject, field, value } },
    question: { kind: 'question.answer', payload: { piece, slot: subject, choice: value, text: '' } },
    reading: { kind: 'reading.answer', payload: { reading: subject, answer: value, reason: '' } },
    shot: { kind: 'photo.answer', payload: { piece, slot: subject, answer: value, reason: '' } },
  } satisfies Record<string, Deed>;
  const deed = Object.hasOwn(made, thing) ? made[thing as keyof typeof made] : null;
  return deed && payloads[deed.kind].safeParse(deed.payload).success ? deed : null;
}
