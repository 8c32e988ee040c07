import type { Dispute } from '../../job/index.ts';
import { aboutReading, type Context, takeIds } from '../context.ts';
import type { Subject } from '../finding.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * Two people answered the same thing differently without knowing of each other: doubt, until one answers again.
 * Likewise a reading that has a value and, beside it, the answer that there is none.
 * numbers: about (what is disputed, such as 'question', 'run.line', 'detail.boat'), answers (how many),
 * first and second (two of them, as stored; for a reading with a value, first is the value in mm or radians).
 */
export const disputed: Rule = {
  key: 'disputed',
  find: (context) => [
    ...context.sheet.disputes.map((dispute) => fromDispute(context, dispute)),
    ...valueBesideAnswer(context),
  ],
};

function fromDispute(context: Context, dispute: Dispute): Draft {
  return {
    severity: 'doubt',
    piece: dispute.piece,
    slot: slotOf(context, dispute),
    subjects: subjectsOf(dispute),
    numbers: {
      about: dispute.on,
      answers: dispute.answers.length,
      first: dispute.answers[0]?.value ?? null,
      second: dispute.answers[1]?.value ?? null,
    },
    basis: dispute.answers.map((answer) => answer.entry),
  };
}

function subjectsOf({ on, piece, subject }: Dispute): Subject[] {
  const [thing = on, field = on] = on.split('.');
  const detail: Subject = { on: 'detail', id: field };
  if (subject === null) return [detail];
  const [part = subject, from] = subject.split(' ');
  if (thing === 'stretch' && from !== undefined) return [{ on: 'run', id: part }, { on: 'point', id: from }, detail];
  if (thing === 'obstruction') return [{ on: 'obstruction', id: subject }, detail];
  if (thing === 'run') return [{ on: 'run', id: subject }, detail];
  if (thing === 'reading') return [{ on: 'reading', id: subject }];
  if (thing !== 'shot' && thing !== 'question') return [detail, { on: 'detail', id: subject }];
  return [{ on: thing, id: subject }, ...(piece === null ? [] : [{ on: 'piece' as const, id: piece }])];
}

function slotOf(context: Context, { on, subject }: Dispute): string | null {
  if (subject === null) return null;
  if (on === 'shot' || on === 'question') return subject;
  const reading = context.readings.get(subject);
  const run = context.runs.get(subject.split(' ')[0] ?? '');
  return reading ? context.slotOf(reading) : (run?.slot ?? run?.id ?? null);
}

function valueBesideAnswer(context: Context): Draft[] {
  const already = new Set(context.sheet.disputes.map((dispute) => dispute.subject));
  return context.sheet.readings.flatMap((reading): Draft[] => {
    const { value, answer } = reading;
    if (value === null || answer === null || already.has(reading.id)) return [];
    return [
      {
        severity: 'doubt',
        piece: reading.piece,
        slot: context.slotOf(reading),
        subjects: [aboutReading(reading)],
        numbers: { about: 'reading', answers: 2, first: value, second: answer.answer },
        basis: [...takeIds(reading), `${answer.answer}@${answer.at}`],
      },
    ];
  });
}
