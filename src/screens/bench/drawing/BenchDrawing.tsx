import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { wordsOfPiece } from '../../model/words.ts';
import { faceOfPiece, seenFrom } from '../../parts/drawing/face.ts';
import type { View } from '../../parts/drawing/project.ts';
import { bringRow } from '../sections/Section.tsx';
import { SelectedLine } from '../sections/SelectedLine.tsx';
import { engineView } from '../state/engine-view.ts';
import type { Lit } from '../state/lit.ts';
import { toggle } from '../state/selection.ts';
import { WIDE } from '../use-wide.ts';
import { DrawnLines } from './DrawnLines.tsx';
import { DrawnOvals, DrawnPoints } from './DrawnPoints.tsx';
import { markedBy } from './marked.ts';
import { PlanNote } from './PlanNote.tsx';
import { makeScene, sketchOf } from './scene.ts';
import { Tools } from './Tools.tsx';
import { usePanZoom } from './use-pan-zoom.ts';

/** The piece to scale with every value that has room; a tap on a line, a point or a fastener selects it. */
export function BenchDrawing({ job, piece, lit }: { job: OpenJob; piece: string; lit: Lit }) {
  const box = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(box);
  const panZoom = usePanZoom(box);
  const [slant, setSlant] = useState(false);
  const { sheet } = job;
  const face = faceOfPiece(sheet, piece);
  const view: View = slant && face === 'plan' ? 'slant' : face;
  const engine = engineView(job, piece);
  const drawn = useMemo(() => sketchOf(sheet, piece, engine), [sheet, piece, engine]);
  const frame = { width, height, view, look: panZoom.look };
  const marked = useMemo(() => markedBy(job, piece), [job, piece]);
  const scene = makeScene(sheet, piece, drawn, frame, { lit, marked, engine });
  const declared = sheet.pieces.find(({ id }) => id === piece);
  useTaps(box, panZoom.dragged);
  const words = sayBench().plan;
  return (
    <div class="bench-plan">
      <div class={`bench-plan-box ${panZoom.look.zoom > 1 ? 'held' : ''}`} ref={box}>
        <svg
          class="drawing bench-drawing"
          viewBox={`0 0 ${width} ${height}`}
          width={width}
          height={height}
          role="img"
          aria-label={words.label(declared?.name ?? '', scene.labels.length + scene.hidden)}
        >
          <DrawnOvals scene={scene} />
          <DrawnLines scene={scene} lit={lit} marked={marked} />
          <DrawnPoints scene={scene} lit={lit} marked={marked} />
          <text x={width / 2} y={18} text-anchor="middle" class="bench-bow">
            {seenFrom(view, wordsOfPiece(sheet, piece))}
          </text>
        </svg>
      </div>
      <SelectedLine job={job} piece={piece} lit={lit} />
      <Tools panZoom={panZoom} slant={slant} onSlant={declared?.flat || face !== 'plan' ? null : setSlant} />
      <PlanNote job={job} scene={scene} engine={engine} marked={marked} />
    </div>
  );
}

/** The room there is for the drawing, px. */
export function useSize(box: { current: HTMLElement | null }): { width: number; height: number } {
  const [size, setSize] = useState({ width: 640, height: 480 });
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      const room = entry?.contentRect;
      if (room && room.width > 0 && room.height > 0) setSize({ width: room.width, height: room.height });
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return size;
}

/** What a tap on the drawing selects is written on its parts; by keyboard the same things are selected in the lists. */
function useTaps(box: { current: HTMLElement | null }, dragged: () => boolean): void {
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const tap = (event: MouseEvent): void => {
      const part = event.target instanceof Element ? event.target.closest<SVGElement>('[data-on]') : null;
      const { on, id } = part?.dataset ?? {};
      if (dragged() || id === undefined) return;
      if (on !== 'reading' && on !== 'point' && on !== 'run') return;
      toggle(on, id);
      // Side by side the row comes into sight; one below the other the drawing would be scrolled away.
      if (matchMedia(WIDE).matches) requestAnimationFrame(() => bringRow(on, id));
    };
    element.addEventListener('click', tap);
    return () => element.removeEventListener('click', tap);
  }, []);
}
