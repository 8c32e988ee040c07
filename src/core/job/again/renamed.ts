import type { PieceDeclaration } from '../declarations.ts';

/**
 * The same piece under other ids: every id that names a piece, a point, a reading, an edge or a thing in the way goes through
 * `idOf`, wherever it stands. Slots, which are no ids, stay. A step that was added later is walked by its id, so the walk goes
 * along.
 */
export function renamed(piece: PieceDeclaration, idOf: (id: string) => string): PieceDeclaration {
  const all = (ids: readonly string[]): string[] => ids.map(idOf);
  const walkedById = new Set([...piece.readings, ...piece.runs].flatMap(({ id, slot }) => (slot === null ? [id] : [])));
  const stepOf = (key: string): string => (walkedById.has(key) ? idOf(key) : key);
  return {
    ...piece,
    id: idOf(piece.id),
    points: piece.points.map((point) => ({
      ...point,
      id: idOf(point.id),
      sides: [...point.sides],
      nominal: point.nominal === null ? null : [...point.nominal],
      ...(point.replaces === undefined ? {} : { replaces: idOf(point.replaces) }),
    })),
    readings: piece.readings.map((reading) => ({
      ...reading,
      id: idOf(reading.id),
      points: all(reading.points),
      ...(reading.via ? { via: all(reading.via) } : {}),
      ...(reading.baseline ? { baseline: all(reading.baseline) } : {}),
      ...(reading.run === undefined ? {} : { run: idOf(reading.run) }),
      ...(reading.obstruction === undefined ? {} : { obstruction: idOf(reading.obstruction) }),
    })),
    runs: piece.runs.map((run) => ({
      ...run,
      id: idOf(run.id),
      points: all(run.points),
      whole: run.whole === null ? null : idOf(run.whole),
    })),
    shots: piece.shots.map((shot) => ({ ...shot, points: all(shot.points) })),
    questions: piece.questions.map((question) => ({ ...question, choices: [...question.choices] })),
    boxes: piece.boxes.map(([a, b, c, d]) => [idOf(a), idOf(b), idOf(c), idOf(d)]),
    pairs: piece.pairs.map(([port, starboard]) => [idOf(port), idOf(starboard)]),
    walk: piece.walk.map(stepOf),
    ...(piece.cautions
      ? { cautions: piece.cautions.map(({ slot, keys }) => ({ slot: stepOf(slot), keys: [...keys] })) }
      : {}),
  };
}

/** A new id for each old one, always the same for the same. */
export function freshIds(newId: () => string): (id: string) => string {
  const known = new Map<string, string>();
  return (id) => {
    const before = known.get(id);
    if (before !== undefined) return before;
    const made = newId();
    known.set(id, made);
    return made;
  };
}
