import { useLayoutEffect, useState } from 'preact/hooks';
import type { PhotoLine, PhotoMark, Sheet, SheetPhoto } from '../../../core/job/index.ts';
import { placeLabels, shortLabel } from './label-places.ts';
import { lineText, markText } from './photo-words.ts';

/** A place on a picture: fractions of its width and height from the top left. */
export interface Place {
  x: number;
  y: number;
}

/** What belongs to what a person looks at. */
export interface LitOnPhoto {
  points: ReadonlySet<string>;
  runs: ReadonlySet<string>;
}

interface Props {
  photo: SheetPhoto;
  sheet: Sheet;
  /** The width at which the picture is shown, CSS px: rings and letters are as large on every picture. */
  shown: number;
  lit?: LitOnPhoto | undefined;
  /** A line that is being drawn. */
  path?: readonly Place[] | undefined;
  /** The mark that is being moved. */
  held?: string | null | undefined;
  /** Parts name what they are of in `data-on` and `data-id`, for a picture whose parts can be tapped. */
  tappable?: boolean | undefined;
}

/** Half a letter's height on the screen; it grows with the text a person has chosen. */
const rem = (): number => Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;

let pen: CanvasRenderingContext2D | null = null;

/** How wide a label is, in its size; the outline of its letters included. */
function widthOf(text: string): number {
  pen ??= document.createElement('canvas').getContext('2d');
  if (!pen) return text.length;
  pen.font = `700 100px ${getComputedStyle(document.body).fontFamily}`;
  return pen.measureText(text).width / 100 + 0.2;
}

/** The width an element is shown at, CSS px; 0 until it is known. */
export function useShownWidth(element: HTMLElement | null): number {
  const [width, setWidth] = useState(0);
  // Measured before the first paint, and what has no width for a moment keeps the one it had: marks never blink out.
  useLayoutEffect(() => {
    if (!element) return;
    const measure = (): void => setWidth((before) => element.clientWidth || before);
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [element]);
  return width;
}

/** Lines, rings and labels over a picture. Labels stay inside it. */
export function Overlay({ photo, sheet, shown, lit, path, held, tappable }: Props) {
  const { width, height } = photo;
  if (shown === 0) return null;
  const unit = (width / shown) * rem();
  const at = ({ x, y }: Place) => ({ x: x * width, y: y * height });
  const size = unit * 0.9;
  const spots = [
    ...photo.marks.map((mark) => ({ ...at(mark), text: shortLabel(markText(mark, sheet)) })),
    ...photo.lines.map((line) => ({ ...at(middleOf(line)), text: shortLabel(lineText(line, sheet)) })),
  ].map((spot) => ({ ...spot, wide: widthOf(spot.text) * size }));
  const places = placeLabels(spots, { width, height }, { size, ring: unit / 2 });
  const litOf = (part: PhotoMark | PhotoLine): boolean => isLit(part, lit) || held === part.id;
  return (
    <svg class="photo-marks" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      {photo.lines.map((line) => (
        <Drawn key={line.id} path={line.path.map(at)} unit={unit} lit={litOf(line)} ends={line.of === 'reference'} />
      ))}
      {path && path.length > 0 && <Drawn path={path.map(at)} unit={unit} lit ends />}
      {photo.marks.map((mark) => (
        <g key={mark.id} class={litOf(mark) ? 'lit' : ''} transform={`translate(${mark.x * width} ${mark.y * height})`}>
          <circle class="halo" r={unit / 2} stroke-width={unit / 5} />
          <circle class="ring" r={unit / 2} stroke-width={unit / 10} />
          {tappable && <circle class="hit" r={unit * 1.3} data-on="mark" data-id={mark.id} />}
        </g>
      ))}
      {[...photo.marks, ...photo.lines].map((part, i) => (
        <text
          key={part.id}
          class={litOf(part) ? 'lit' : ''}
          x={places[i]?.x ?? 0}
          y={places[i]?.y ?? 0}
          font-size={size}
          stroke-width={unit / 6}
        >
          {spots[i]?.text}
        </text>
      ))}
    </svg>
  );
}

function isLit(part: PhotoMark | PhotoLine, lit: LitOnPhoto | undefined): boolean {
  if (!lit) return false;
  if ('point' in part) return part.point !== null && lit.points.has(part.point);
  return part.run !== null && lit.runs.has(part.run);
}

const middleOf = ({ path }: PhotoLine): Place => {
  const [a = { x: 0, y: 0 }, b = a] = [path[Math.floor((path.length - 1) / 2)], path[Math.ceil((path.length - 1) / 2)]];
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
};

function Drawn({ path, unit, lit, ends }: { path: readonly Place[]; unit: number; lit: boolean; ends: boolean }) {
  const points = path.map(({ x, y }) => `${x},${y}`).join(' ');
  return (
    <g class={lit ? 'lit' : ''}>
      <polyline class="halo" points={points} stroke-width={unit / 4} />
      <polyline class="ring" points={points} stroke-width={unit / 9} />
      {ends &&
        path.map(({ x, y }) => (
          <circle key={`${x},${y}`} class="end" cx={x} cy={y} r={unit / 6} stroke-width={unit / 14} />
        ))}
    </g>
  );
}
