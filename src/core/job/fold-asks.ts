import { type Gathered, signed } from './gather.ts';
import type { Ask } from './sheet.ts';

/** What the shop asked again. An item is open until somebody who knew of the asking has answered it. */
export function foldAsks(gathered: Gathered): Ask[] {
  const responses = answeringEntries(gathered);
  return gathered.of('ask.again').map(({ entry, payload }) => ({
    id: entry.id,
    piece: payload.piece,
    note: payload.note,
    items: payload.items.map((item) => {
      const given = responses.get(responseKey(item.on, payload.piece, item.id)) ?? [];
      return { ...item, open: !given.some((id) => gathered.causality.saw(id, entry.id)) };
    }),
    ...signed(entry),
  }));
}

const responseKey = (on: string, piece: string, id: string): string =>
  on === 'shot' || on === 'question' ? `${on}:${piece}:${id}` : `${on}:${id}`;

function answeringEntries(gathered: Gathered): Map<string, string[]> {
  const responses = new Map<string, string[]>();
  const add = (key: string, entry: string): void => {
    const list = responses.get(key);
    if (list) list.push(entry);
    else responses.set(key, [entry]);
  };
  const runOfReading = new Map<string, string>();
  for (const { entry, payload } of gathered.of('fastener.add')) {
    runOfReading.set(payload.reading, payload.run);
    add(`run:${payload.run}`, entry.id);
  }
  for (const { entry, payload } of gathered.of('take.add')) {
    add(`reading:${payload.reading}`, entry.id);
    const run = runOfReading.get(payload.reading);
    if (run) add(`run:${run}`, entry.id);
  }
  for (const { entry, payload } of gathered.of('reading.answer')) add(`reading:${payload.reading}`, entry.id);
  for (const { entry, payload } of gathered.of('run.detail')) add(`run:${payload.run}`, entry.id);
  for (const { entry, payload } of gathered.of('stretch.set')) add(`run:${payload.run}`, entry.id);
  for (const { entry, payload } of gathered.of('photo.answer')) add(`shot:${payload.piece}:${payload.slot}`, entry.id);
  for (const { entry, payload } of gathered.of('photo.add'))
    if (payload.slot !== null) add(`shot:${payload.piece}:${payload.slot}`, entry.id);
  for (const { entry, payload } of gathered.of('question.answer'))
    add(`question:${payload.piece}:${payload.slot}`, entry.id);
  return responses;
}
