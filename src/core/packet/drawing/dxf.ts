import { DxfWriter, LWPolylineFlags, point3d, Units } from '@tarikjabiri/dxf';
import { type Drawing, type Entity, type Flat, LAYERS, type Layer, printable } from './drawing.ts';

/** AutoCAD colour index of each layer: 7 is black or white, whichever shows. */
const COLOURS: Record<Layer, number> = {
  OUTLINE: 7,
  EDGE: 5,
  POINT: 1,
  MARK: 3,
  FASTENER: 6,
  OBSTRUCTION: 30,
  DIMENSION: 8,
  ALLOWANCE: 4,
  TEXT: 7,
};

const MM_PER_INCH = 25.4;
/** Text that a DXF reader must take, characters. */
const LONGEST = 250;

/**
 * The drawing as DXF (AC1021) in inches or millimetres: outlines and edges as polylines, fasteners and points as circles,
 * every point once more in space as a POINT on a layer of its own. Text says what would otherwise only be in a header.
 */
export function dxfOf(drawing: Drawing, unit: 'in' | 'mm', unitText: string): string {
  const writer = new DxfWriter();
  writer.setUnits(unit === 'in' ? Units.Inches : Units.Millimeters);
  for (const layer of LAYERS) writer.addLayer(layer, COLOURS[layer], 'CONTINUOUS');
  writer.addLayer('POINT-3D', 2, 'CONTINUOUS');
  const factor = unit === 'in' ? 1 / MM_PER_INCH : 1;
  for (const entity of drawing.entities) put(writer, entity, factor);
  for (const { at } of drawing.space) {
    const [x, y, z] = at;
    writer.addPoint(-y * factor, x * factor, z * factor, { layerName: 'POINT-3D' });
  }
  putBlock(writer, drawing, factor, unitText);
  return writer.stringify();
}

const point = ([x, y]: Flat, factor: number) => point3d(x * factor, y * factor, 0);

function put(writer: DxfWriter, entity: Entity, factor: number): void {
  const layerName = entity.layer;
  switch (entity.type) {
    case 'line':
      writer.addLWPolyline(
        entity.points.map(([x, y]) => ({ point: { x: x * factor, y: y * factor } })),
        { layerName, flags: entity.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
      );
      break;
    case 'circle':
      writer.addCircle(point(entity.at, factor), entity.radius * factor, { layerName });
      break;
    case 'text':
      writer.addText(point(entity.at, factor), entity.height * factor, dxfText(entity.text), { layerName });
  }
}

function putBlock(writer: DxfWriter, drawing: Drawing, factor: number, unitText: string): void {
  const height = Math.max(...drawing.entities.map((entity) => (entity.type === 'text' ? entity.height : 0)), 8);
  const places = drawing.entities.flatMap((entity) => (entity.type === 'line' ? entity.points : [entity.at]));
  const left = Math.min(...places.map(([x]) => x));
  const bottom = Math.min(...places.map(([, y]) => y));
  for (const [i, line] of [...drawing.block, unitText].entries())
    writer.addText(point([left, bottom - height * (3 + i * 1.6)], factor), height * factor, dxfText(line), {
      layerName: 'TEXT',
    });
}

/**
 * One line of what DXF reads as it stands: nothing unprintable, its two escapes (%% and ^) taken apart, and whatever is not
 * ASCII as \\U+nnnn, which every reader knows whatever code page it takes the file for.
 */
function dxfText(text: string): string {
  let written = '';
  for (const sign of printable(text).replace(/%%/g, '% %').replace(/\^/g, '^ ')) {
    const next = Array.from({ length: sign.length }, (_, i) => asciiOf(sign.charCodeAt(i))).join('');
    if (written.length + next.length > LONGEST) break;
    written += next;
  }
  return written;
}

const asciiOf = (code: number): string =>
  code < 0x7f ? String.fromCharCode(code) : `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
