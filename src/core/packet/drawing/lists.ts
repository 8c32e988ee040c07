import type { ShownShape } from '../../check/index.ts';
import { type Place, stationsOn } from '../../cloth/index.ts';
import type { Sheet } from '../../job/index.ts';
import { writeCsv } from '../csv.ts';
import { digits, edgeOf } from './cells.ts';

/** Of a shape that contradictions bend no place is written, so that no program takes one for a measure. */
const BENT = 'not to be used: readings contradict each other';

/** What is known of a piece's shape, and where its points lie. */
export interface ListedShape {
  readonly shapeOf: (piece: string) => ShownShape | null;
  readonly placesOf: (piece: string) => ReadonlyMap<string, Place>;
}

/**
 * Every point of a job's pieces as CSV: label, role, x forward, y port, z up in mm as the piece lies in the boat, how sure it is
 * (mm at 95 %, relative to its marks and neighbours) and whether the readings fix it. Cells a spreadsheet would compute are
 * written so that it does not.
 */
export function pointsCsv(sheet: Sheet, { shapeOf, placesOf }: ListedShape): string {
  const rows = sheet.pieces.flatMap(({ id: piece, name }) => {
    const shape = shapeOf(piece);
    const places = placesOf(piece);
    const results = new Map(shape?.shown?.points.map((result) => [result.id, result]));
    return sheet.points
      .filter((point) => point.pieces.includes(piece))
      .map(({ id, label, role, sides }) => {
        const result = results.get(id);
        const bent = shape?.bent && result !== undefined && result.state !== 'known';
        const placed = result && result.state !== 'floating' && !bent;
        const place = (placed && places.get(id)?.map(digits)) || ['', '', ''];
        const sure = bent ? null : (result?.relative95 ?? null);
        return [
          name,
          label,
          role,
          sides.join(' '),
          ...place,
          sure === null ? '' : digits(sure),
          bent ? BENT : (result?.state ?? 'not measured'),
        ];
      });
  });
  return writeCsv([['piece', 'point', 'role', 'sides', 'x mm', 'y mm', 'z mm', 'sure mm 95 %', 'state'], ...rows]);
}

/** Every fastener with its place along its edge and, where the shape is known, in the piece's frame, mm. */
export function fastenersCsv(sheet: Sheet, { shapeOf, placesOf }: ListedShape): string {
  const readings = new Map(sheet.readings.map((reading) => [reading.id, reading]));
  const rows = sheet.runs.flatMap((run) => {
    const places = new Map(stationsOn(run, sheet, placesOf(run.piece)).map(({ reading, place }) => [reading, place]));
    const piece = sheet.pieces.find(({ id }) => id === run.piece)?.name ?? '';
    const bent = shapeOf(run.piece)?.bent ?? false;
    return run.stations.map((id, index) => {
      const fastener = sheet.fasteners.find(({ reading }) => reading === id);
      const value = readings.get(id)?.value ?? null;
      return [
        piece,
        edgeOf(sheet, run.points),
        String(index + 1),
        fastener?.type ?? '',
        fastener?.presence ?? '',
        run.manner,
        value === null ? '' : digits(value),
        ...((bent ? undefined : places.get(id)?.map(digits)) ?? ['', '', '']),
        bent ? BENT : places.has(id) ? 'placed' : 'not placed',
      ];
    });
  });
  const heads = ['piece', 'edge', 'number', 'type', 'presence', 'taped', 'reading mm', 'x mm', 'y mm', 'z mm', 'state'];
  return writeCsv([heads, ...rows]);
}
