import { type Entity, type Flat, printable } from './drawing.ts';

/** How the lines of each layer are drawn: attributes of SVG. */
export type Look = Partial<Record<Entity['layer'], string>>;

const PLAIN = 'stroke="#111" stroke-width="1"';

/** One thing of a drawing; y goes down in SVG. */
export function shape(entity: Entity, looks: Look): string {
  const look = `class="${entity.layer}" fill="none" ${looks[entity.layer] ?? PLAIN}`;
  switch (entity.type) {
    case 'line': {
      const points = entity.points.map(([x, y]) => `${mm(x)},${mm(-y)}`).join(' ');
      return `<${entity.closed ? 'polygon' : 'polyline'} ${look} points="${points}"/>`;
    }
    case 'circle':
      return `<circle ${look} cx="${mm(entity.at[0])}" cy="${mm(-entity.at[1])}" r="${mm(entity.radius)}"/>`;
    case 'text': {
      const grey = entity.layer === 'DIMENSION' ? ' fill="#555"' : '';
      return `<text class="${entity.layer}"${grey} x="${mm(entity.at[0])}" y="${mm(-entity.at[1])}" font-size="${mm(entity.height)}" text-anchor="${entity.anchor}">${xml(entity.text)}</text>`;
    }
  }
}

/** A micrometre is less than anybody draws. Always a point, whatever the phone's own habit. */
export const mm = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

const ENTITIES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

export const xml = (text: string): string => printable(text).replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? '');

export const line = (from: Flat, to: Flat, pen: string): string =>
  `<line x1="${mm(from[0])}" y1="${mm(from[1])}" x2="${mm(to[0])}" y2="${mm(to[1])}" ${pen}/>`;

interface TextLook {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly grey?: boolean;
  /** Degrees, clockwise. */
  readonly turn?: number;
  /** Where it would take more, mm, it is drawn smaller. */
  readonly room?: number;
}

/** What a letter takes on the average of its height, in a sans-serif type; bold, and half of it capitals. */
const WIDTH = 0.56;
const BOLD = 0.66;

/** A line of text on paper; y goes down. */
export function text(said: string, [x, y]: Flat, height: number, look: TextLook = {}): string {
  const { anchor = 'start', bold = false, grey = false, turn = 0, room } = look;
  const wide = [...printable(said)].length * height * (bold ? BOLD : WIDTH);
  const size = room !== undefined && wide > room ? (height * room) / wide : height;
  const more = [
    anchor === 'start' ? '' : ` text-anchor="${anchor}"`,
    bold ? ' font-weight="bold"' : '',
    grey ? ' fill="#555"' : '',
    turn === 0 ? '' : ` transform="rotate(${mm(turn)} ${mm(x)} ${mm(y)})"`,
  ].join('');
  return `<text x="${mm(x)}" y="${mm(y)}" font-size="${mm(size)}"${more}>${xml(said)}</text>`;
}
