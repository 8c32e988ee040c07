import {
  distanceToChain,
  extentOf,
  type Point2,
  placeAlong,
  pointsAlong,
  stationsAlong,
} from '../../geometry/index.ts';
import type { Obstruction, SheetRun } from '../../job/index.ts';
import { aboutReading, type Context, takeIds } from '../context.ts';
import { placeOfThing } from '../in-the-way.ts';
import { solutionOf } from '../piece-judgement.ts';
import type { Draft, Rule } from '../rule.ts';

/** A thing whose size nobody took is at least as large as a screw's head, mm. */
const LEAST = 10;

/**
 * A fastener's place falls on a thing in the way, or within what must stay clear round it: doubt; one of the two was read
 * wrong, or they are in each other's way. Where a planned row runs over it: note, for its places are set at the fitting. By
 * the places of the engine's shape, and by what is certainly covered: the least reach of the thing. Rails carry fasteners, and
 * an exit for the cord is made with the edge; they are left out.
 * Subjects: the reading of the fastener's place (for a planned row: the run and the point where its stretch begins), the thing.
 * numbers: on ('thing', 'clearance'), distance (from the thing's middle), reach, clearance, planned ('yes', 'no').
 */
export const fastenerOnObstruction: Rule = {
  key: 'fastener-on-obstruction',
  find: (context) =>
    context.sheet.pieces.flatMap(({ id }) => {
      const things = thingsOf(context, id);
      const runs = things.length === 0 ? [] : context.sheet.runs.filter(({ piece }) => piece === id);
      return runs.flatMap((run) => [...measured(context, run, things), ...planned(context, run, things)]);
    }),
};

interface Thing {
  readonly thing: Obstruction;
  readonly at: Point2;
  readonly reach: number;
  readonly clearance: number;
}

const CARRY: ReadonlySet<Obstruction['kind']> = new Set(['rail', 'cord-exit']);

function thingsOf(context: Context, piece: string): Thing[] {
  return context.sheet.obstructions.flatMap((thing): Thing[] => {
    const place = thing.piece !== piece || CARRY.has(thing.kind) ? null : placeOfThing(context, thing);
    if (!place) return [];
    const { least, clearance } = extentOf(context.sheet, thing.id);
    return [{ thing, at: [place.position[0], place.position[1]], reach: Math.max(LEAST, least), clearance }];
  });
}

function placesOf(context: Context, piece: string) {
  const judgement = context.judgement(piece);
  const solution = judgement && solutionOf(judgement.adjustment);
  const places = new Map(solution?.points.map(({ id, position }) => [id, position]));
  return (point: string) => places.get(point);
}

function measured(context: Context, run: SheetRun, things: readonly Thing[]): Draft[] {
  const placeOf = placesOf(context, run.piece);
  const marks = pointsAlong(run, context.sheet, placeOf);
  if (!marks) return [];
  return stationsAlong(run, context.sheet).flatMap(({ reading: id, along }) => {
    const reading = context.readings.get(id);
    const place = placeAlong(run, marks, placeOf, along);
    if (!reading || !place || !context.fasteners.has(id)) return [];
    return things.flatMap((one) => {
      const distance = Math.hypot(place[0] - one.at[0], place[1] - one.at[1]);
      return met(run, one, distance, {
        severity: 'doubt',
        subjects: [aboutReading(reading)],
        planned: 'no',
        basis: takeIds(reading),
      });
    });
  });
}

function planned(context: Context, run: SheetRun, things: readonly Thing[]): Draft[] {
  const placeOf = placesOf(context, run.piece);
  return run.stretches
    .filter(({ presence, count }) => presence === 'planned' && count !== null)
    .flatMap(({ from, to, count }) => {
      const points = run.points.slice(run.points.indexOf(from), run.points.indexOf(to) + 1);
      const line = points.flatMap((point): Point2[] => {
        const place = placeOf(point);
        return place ? [[place[0], place[1]]] : [];
      });
      if (line.length < points.length) return [];
      return things.flatMap((one) =>
        met(run, one, distanceToChain(one.at, line), {
          severity: 'note',
          subjects: [
            { on: 'run', id: run.id },
            { on: 'point', id: from },
          ],
          planned: 'yes',
          basis: [`count=${count}`],
        }),
      );
    });
}

interface Meeting extends Pick<Draft, 'severity' | 'subjects' | 'basis'> {
  readonly planned: 'yes' | 'no';
}

function met(run: SheetRun, { thing, reach, clearance }: Thing, distance: number, meeting: Meeting): Draft[] {
  if (distance >= reach + clearance) return [];
  const { severity, subjects, basis } = meeting;
  return [
    {
      severity,
      piece: run.piece,
      slot: run.slot ?? run.id,
      subjects: [...subjects, { on: 'obstruction', id: thing.id }],
      numbers: { on: distance < reach ? 'thing' : 'clearance', distance, reach, clearance, planned: meeting.planned },
      basis,
    },
  ];
}
