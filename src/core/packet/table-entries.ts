import type { Entry, EntryKind, Payload, Who } from '../job/index.ts';
import type { Plan } from './table-plan.ts';

/** The logbook of a job that was read from a table: each entry has seen the one before. */
export function entriesOf(
  plan: Plan,
  context: {
    name: string;
    units: 'in' | 'mm';
    who: Who;
    device: string;
    newId: () => string;
    now: () => string;
  },
): Entry[] {
  const job = context.newId();
  const entries: Entry[] = [];
  const add = <K extends EntryKind>(kind: K, payload: Payload<K>): void => {
    const before = entries.at(-1)?.id;
    entries.push({
      id: context.newId(),
      job,
      at: context.now(),
      who: context.who,
      device: context.device,
      seen: before === undefined ? [] : [before],
      kind,
      payload: { ...payload },
    });
  };
  add('job.open', { name: context.name, system: context.units === 'in' ? 'imperial' : 'metric', fraction: 16 });
  for (const piece of plan.pieces) add('piece.add', piece);
  for (const { run, manner } of plan.manners) add('run.detail', { run, field: 'manner', value: manner });
  for (const { declaration, values } of plan.readings) {
    for (const { value, sigma, note } of values) {
      if (value.state === 'answer')
        add('reading.answer', { reading: declaration.id, answer: value.answer, reason: note });
      else if (value.state === 'taken') {
        const { text, unit } = value;
        add('take.add', {
          reading: declaration.id,
          text,
          unit,
          value: value.value,
          ...(sigma === null ? {} : { sigma }),
        });
      }
    }
  }
  return entries;
}
