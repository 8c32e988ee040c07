import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Face, turnedBy } from '../../../core/geometry/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { pieceName } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { wordsOfPiece } from '../../model/words.ts';
import { faceOfPiece, seenFrom } from '../../parts/drawing/face.ts';
import type { Flat } from '../../parts/drawing/project.ts';
import { bringRow } from '../sections/Section.tsx';
import { SelectedLine } from '../sections/SelectedLine.tsx';
import { engineView } from '../state/engine-view.ts';
import type { Lit } from '../state/lit.ts';
import { shapeOf } from '../state/measured.ts';
import { chooseRun, measuring, stopMeasuring, tapSpot } from '../state/measuring.ts';
import { targetOf } from '../state/pointed.ts';
import { toggle } from '../state/selection.ts';
import { WIDE } from '../use-wide.ts';
import { AxesHint } from './AxesHint.tsx';
import { DrawnLines } from './DrawnLines.tsx';
import { DrawnEnds, DrawnWay, nearestRun, nearestSpot } from './DrawnMeasure.tsx';
import { DrawnOvals, DrawnPoints } from './DrawnPoints.tsx';
import { MeasurePanel } from './MeasurePanel.tsx';
import { markedBy } from './marked.ts';
import { PlanNote } from './PlanNote.tsx';
import { makeScene, type Scene, sketchOf } from './scene.ts';
import { Tools } from './Tools.tsx';
import { usePanZoom } from './use-pan-zoom.ts';
import { useTurnKeys } from './use-turn-keys.ts';
import { ViewChoice } from './ViewChoice.tsx';
import { isTurned, START, type ViewKey, viewsOf } from './views.ts';

/** The piece to scale with every value that has room; a tap on a line, a point or a fastener selects it, or measures from it. */
export function BenchDrawing({ job, piece, lit }: { job: OpenJob; piece: string; lit: Lit }) {
  const box = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(box);
  const { sheet } = job;
  const declared = sheet.pieces.find(({ id }) => id === piece);
  const { view, views, looked, setView, onTurn } = useView(faceOfPiece(sheet, piece), declared?.flat ?? false);
  const panZoom = usePanZoom(box, onTurn);
  useTurnKeys(box, onTurn);
  const engine = engineView(job, piece);
  const drawn = useMemo(() => sketchOf(sheet, piece, engine), [sheet, piece, engine]);
  const now = measuring.value;
  const shape = useMemo(() => (now ? shapeOf(sheet, piece, engine) : null), [now !== null, sheet, piece, engine]);
  const marked = useMemo(() => markedBy(job, piece), [job, piece]);
  const frame = { width, height, view: looked, look: panZoom.look };
  const scene = makeScene(sheet, piece, drawn, frame, { lit, marked, engine });
  useEffect(() => stopMeasuring, []);
  useParts(box, scene, panZoom.dragged);
  const words = sayBench().plan;
  const turned = isTurned(looked);
  return (
    <div class="bench-plan">
      <ViewChoice views={views} view={view} onView={setView} />
      <div class={`bench-plan-box ${panZoom.look.zoom > 1 || turned ? 'held' : ''}`} ref={box}>
        <svg
          class="drawing bench-drawing"
          viewBox={`0 0 ${width} ${height}`}
          width={width}
          height={height}
          role="img"
          aria-label={words.label(declared ? pieceName(declared) : '', scene.labels.length + scene.hidden)}
        >
          <DrawnOvals scene={scene} />
          {now && <DrawnWay scene={scene} sheet={sheet} piece={piece} now={now} />}
          <DrawnLines scene={scene} lit={lit} marked={marked} />
          <DrawnPoints scene={scene} lit={lit} marked={marked} />
          {now && <DrawnEnds scene={scene} now={now} />}
          {turned && <AxesHint turn={looked} height={height} />}
          <text x={width / 2} y={18} text-anchor="middle" class="bench-bow">
            {view === views[0] ? seenFrom(faceOfPiece(sheet, piece), wordsOfPiece(sheet, piece)) : words.seen[view]}
          </text>
        </svg>
      </div>
      {shape ? <MeasurePanel shape={shape} engine={engine} /> : <SelectedLine job={job} piece={piece} />}
      <Tools panZoom={panZoom} onTurn={onTurn} measuring={now !== null} />
      {!now && <PlanNote job={job} scene={scene} engine={engine} marked={marked} />}
    </div>
  );
}

/** What is being looked at from where; another piece begins at its own face. */
function useView(face: Face, flat: boolean) {
  const [view, setView] = useState<ViewKey>(face);
  const [turn, setTurn] = useState(START);
  const views = viewsOf(face, flat);
  const onTurn = (x: number, y: number): void => setTurn((now) => turnedBy(now, -x * EACH_PX, y * EACH_PX));
  return { view, views, setView, looked: view === 'turned' ? turn : view, onTurn: view === 'turned' ? onTurn : null };
}

/** rad a drag turns for each px: half round over the width of a phone. */
const EACH_PX = Math.PI / 390;

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

/**
 * What a tap on the drawing selects, and what lights up under the mouse, is written on its parts; by keyboard the same things
 * are selected in the lists. While somebody measures, a tap takes what is nearest to it.
 */
function useParts(box: { current: HTMLElement | null }, scene: Scene, dragged: () => boolean): void {
  const drawn = useRef(scene);
  drawn.current = scene;
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const tap = (event: MouseEvent): void => {
      if (dragged()) return;
      if (measuring.value) {
        const { left, top } = element.getBoundingClientRect();
        measureAt(drawn.current, [event.clientX - left, event.clientY - top]);
        return;
      }
      const part = targetOf(event);
      if (!part) return;
      toggle(part.on, part.id);
      // Side by side the row comes into sight; one below the other the drawing would be scrolled away.
      if (matchMedia(WIDE).matches) requestAnimationFrame(() => bringRow(part.on, part.id));
    };
    element.addEventListener('click', tap);
    return () => element.removeEventListener('click', tap);
  }, []);
}

function measureAt(scene: Scene, at: Flat): void {
  if (measuring.value?.kind === 'edge') {
    const run = nearestRun(scene, at);
    if (run !== null) chooseRun(run);
    return;
  }
  const spot = nearestSpot(scene, at);
  if (spot) tapSpot(spot);
}
