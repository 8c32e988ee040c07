import { depthInside } from '../../geometry/index.ts';
import type { Obstruction } from '../../job/index.ts';
import { type Context, takeIds } from '../context.ts';
import { listSlot, mustBeFree, outlinePlaces, placeOfThing, treatmentOf } from '../in-the-way.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * A thing that must stay free lies under the cloth with no cut-out: a cleat of a boat tied up in the water, unless somebody
 * said otherwise; a cleat that is needed, a light that must be seen, because somebody said so. By what is done about it: stop
 * where both were said of the thing itself, for they cannot both be so; doubt where one is taken from the answers about berth
 * and cleats. By its place, inside the line round the piece although it is called outside: doubt.
 * Subjects: the thing. numbers: by ('treatment', 'place'), kind, depth (mm inside the line, or null).
 */
export const cleatCovered: Rule = {
  key: 'cleat-covered',
  find: (context) =>
    context.sheet.obstructions.flatMap((thing) => {
      if (!mustBeFree(context, thing)) return [];
      const treatment = treatmentOf(context, thing);
      if (treatment === 'covered') return [covered(context, thing)];
      return treatment === 'left-free' ? inside(context, thing) : [];
    }),
};

const about = (context: Context, { id, piece }: Obstruction): Pick<Draft, 'piece' | 'slot' | 'subjects'> => ({
  piece,
  slot: listSlot(context, piece),
  subjects: [{ on: 'obstruction', id }],
});

function covered(context: Context, thing: Obstruction): Draft {
  const { kind, treatment, needed } = thing;
  return {
    ...about(context, thing),
    severity: treatment === 'covered' && needed === 'yes' ? 'stop' : 'doubt',
    numbers: { by: 'treatment', kind, depth: null },
    basis: [`treatment=${treatment}`, `needed=${needed}`],
  };
}

function inside(context: Context, thing: Obstruction): Draft[] {
  const place = placeOfThing(context, thing);
  const outline = outlinePlaces(context, thing.piece);
  if (!place || !outline) return [];
  const [x, y] = place.position;
  const depth = depthInside([x, y], outline);
  if (depth <= place.sure + context.limits.tolerance.corner) return [];
  const own = context.sheet.readings.filter(({ points }) => points.includes(thing.point ?? ''));
  return [
    {
      ...about(context, thing),
      severity: 'doubt',
      numbers: { by: 'place', kind: thing.kind, depth },
      basis: [`treatment=${thing.treatment}`, ...takeIds(...own)],
    },
  ];
}
