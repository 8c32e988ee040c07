import { useEffect, useRef } from 'preact/hooks';
import type { SheetPhoto } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { Overlay } from '../../parts/photo/Overlay.tsx';
import { photoTitle } from '../../parts/photo/photo-words.ts';
import { usePhotoUrl } from '../../parts/photo/use-photo-url.ts';
import { OnPhoto } from '../sections/OnPhoto.tsx';
import { jumpTo } from '../sections/Section.tsx';
import { SelectedLine } from '../sections/SelectedLine.tsx';
import type { Lit } from '../state/lit.ts';
import { largePhoto, pointedAt, toggle } from '../state/selection.ts';
import { useSize } from './BenchDrawing.tsx';
import { Tools } from './Tools.tsx';
import { type PanZoom, usePanZoom } from './use-pan-zoom.ts';

/** One picture as large as there is room, to be enlarged and moved; its marks lead to their points, as on the plan. */
export function LargePhoto({ job, photo, lit }: { job: OpenJob; photo: SheetPhoto; lit: Lit }) {
  const box = useRef<HTMLDivElement>(null);
  const room = useSize(box);
  const panZoom = usePanZoom(box);
  const url = usePhotoUrl(photo.sha256);
  useMarks(box, photo, panZoom);
  const words = sayBench().photos;
  const title = photoTitle(photo, job.sheet) ?? words.other;
  const { zoom, x, y } = panZoom.look;
  const fitted = Math.min(room.width / photo.width, room.height / photo.height) * zoom;
  const [width, height] = [photo.width * fitted, photo.height * fitted];
  const place = {
    width: `${width}px`,
    height: `${height}px`,
    left: `${(room.width - width) / 2 + x}px`,
    top: `${(room.height - height) / 2 + y}px`,
  };
  const back = (): void => {
    largePhoto.value = null;
    requestAnimationFrame(() => jumpTo('plan'));
  };
  return (
    <div class="bench-plan">
      <div class="row spread">
        <p>
          <strong>{title}</strong>{' '}
          <span class="small quiet">{say().general.signedBy(whoText(photo.who), dateText(photo.at))}</span>
        </p>
        <button type="button" class="button" onClick={back}>
          {words.backToPlan}
        </button>
      </div>
      <div class={`bench-plan-box ${zoom > 1 ? 'held' : ''}`} ref={box}>
        {url === 'missing' && <p class="quiet">{sayPhotos().missing}</p>}
        <div class="bench-large" style={place}>
          {url && url !== 'missing' && <img src={url} alt={sayPhotos().alt(title)} draggable={false} />}
          <Overlay photo={photo} sheet={job.sheet} shown={width} lit={lit} tappable />
        </div>
      </div>
      <SelectedLine job={job} piece={photo.piece} />
      <Tools panZoom={panZoom} names={{ tools: words.move, whole: words.whole }} />
      <OnPhoto photo={photo} sheet={job.sheet} />
    </div>
  );
}

/** A mark that is tapped selects its point; under the pointer it lights up. By keyboard the names below do the same. */
function useMarks(box: { current: HTMLElement | null }, photo: SheetPhoto, { dragged }: PanZoom): void {
  useEffect(() => {
    const element = box.current;
    if (!element) return;
    const pointOf = (event: Event): string | null => {
      const part = event.target instanceof Element ? event.target.closest<SVGElement>('[data-on="mark"]') : null;
      return photo.marks.find((mark) => mark.id === part?.dataset.id)?.point ?? null;
    };
    const tap = (event: MouseEvent): void => {
      const point = pointOf(event);
      if (point !== null && !dragged()) toggle('point', point);
    };
    const over = (event: PointerEvent): void => {
      const point = event.pointerType === 'mouse' ? pointOf(event) : null;
      pointedAt.value = point === null ? null : { on: 'point', id: point };
    };
    const leave = (): void => {
      pointedAt.value = null;
    };
    element.addEventListener('click', tap);
    element.addEventListener('pointerover', over);
    element.addEventListener('pointerleave', leave);
    return () => {
      element.removeEventListener('click', tap);
      element.removeEventListener('pointerover', over);
      element.removeEventListener('pointerleave', leave);
      leave();
    };
  }, [photo]);
}
