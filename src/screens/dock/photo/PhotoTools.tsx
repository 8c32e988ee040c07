import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { SheetPhoto } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { pointLabel } from '../../model/words.ts';
import { edgeName } from '../../parts/photo/photo-words.ts';
import { RemovePhoto } from '../../parts/photo/RemovePhoto.tsx';
import { ReferenceTool } from './ReferenceTool.tsx';
import type { HandTools } from './use-hand.ts';

interface Props {
  job: OpenJob;
  photo: SheetPhoto;
  /** The points asked for here, offered first. */
  points: readonly string[];
  tools: HandTools;
  open: string | null;
  onOpen: (which: string | null) => void;
  onGone: (message: string) => void;
}

/** What else can be put on a picture; one thing at a time is open. */
export function PhotoTools(props: Props) {
  const { job, photo, open, onOpen, tools } = props;
  const words = sayPhotos();
  const edges = job.sheet.runs.filter((run) => run.piece === photo.piece);
  const close = (): void => onOpen(null);
  const drawEdge = (run: string): void => {
    close();
    tools.take({ on: 'edge', run, path: [] });
  };
  if (open === 'mark') return <OtherMark {...props} onClose={close} />;
  if (open === 'edge')
    return (
      <Panel heading={words.whichEdge} onClose={close}>
        <div class="choices">
          {edges.map((run) => (
            <button key={run.id} type="button" class="button choice" onClick={() => drawEdge(run.id)}>
              {edgeName(job.sheet, run.id)}
            </button>
          ))}
        </div>
      </Panel>
    );
  if (open === 'reference')
    return (
      <Panel heading={words.whichReference} onClose={close}>
        <ReferenceTool
          sheet={job.sheet}
          onReady={(reference) => {
            close();
            tools.take({ on: 'reference', path: [], ...reference });
          }}
        />
      </Panel>
    );
  if (open === 'note') return <NoteTool photo={photo} onClose={close} />;
  if (open === 'remove') return <RemovePhoto job={job} photo={photo} onClose={close} onGone={props.onGone} />;
  const [onlyEdge] = edges;
  return (
    <fieldset class="row photo-tools">
      <legend class="sr-only">{words.tools}</legend>
      <Tool name={words.markOther} onClick={() => onOpen('mark')} />
      {onlyEdge && (
        <Tool name={words.edge} onClick={() => (edges.length === 1 ? drawEdge(onlyEdge.id) : onOpen('edge'))} />
      )}
      <Tool name={words.reference} onClick={() => onOpen('reference')} />
      <Tool name={words.note} onClick={() => onOpen('note')} />
      <Tool name={words.remove} onClick={() => onOpen('remove')} />
    </fieldset>
  );
}

const Tool = ({ name, onClick }: { name: string; onClick: () => void }) => (
  <button type="button" class="button" onClick={onClick}>
    {name}
  </button>
);

function Panel(props: { heading: string; onClose: () => void; children: ComponentChildren }) {
  const panel = useRef<HTMLElement>(null);
  useEffect(() => panel.current?.scrollIntoView({ block: 'nearest' }), []);
  return (
    <section ref={panel} class="stack photo-panel" aria-label={props.heading}>
      <h2>{props.heading}</h2>
      {props.children}
      <button type="button" class="button plain" onClick={props.onClose}>
        {say().general.cancel}
      </button>
    </section>
  );
}

/** Any other point of the piece, or a note at a place. */
function OtherMark({ job, photo, points, tools, onClose }: Props & { onClose: () => void }) {
  const [text, setText] = useState('');
  const { sheet } = job;
  const words = sayPhotos();
  const marked = new Set(photo.marks.map((mark) => mark.point));
  const all = sheet.points.filter((point) => point.pieces.includes(photo.piece)).map((point) => point.id);
  const offered = [...points, ...all.filter((id) => !points.includes(id))].filter((id) => !marked.has(id));
  const take = (point: string | null): void => {
    onClose();
    tools.take({ on: 'mark', point, text: point === null ? text.trim() : '', moves: null });
  };
  return (
    <Panel heading={words.whichPoint} onClose={onClose}>
      <div class="row">
        {offered.map((id) => (
          <button key={id} type="button" class="button" onClick={() => take(id)}>
            {pointLabel(sheet, id)}
          </button>
        ))}
      </div>
      <label class="field">
        <span>{words.otherText}</span>
        <input value={text} maxLength={120} onInput={(event) => setText(event.currentTarget.value)} />
        <span class="quiet small">{words.otherTextHelp}</span>
      </label>
      <button type="button" class="button main" disabled={text.trim() === ''} onClick={() => take(null)}>
        {words.otherPlace}
      </button>
    </Panel>
  );
}

function NoteTool({ photo, onClose }: { photo: SheetPhoto; onClose: () => void }) {
  const [text, setText] = useState('');
  const words = sayPhotos();
  return (
    <Panel heading={words.noteOn} onClose={onClose}>
      <label class="field">
        <span class="sr-only">{words.noteOn}</span>
        <textarea rows={3} value={text} maxLength={2000} onInput={(event) => setText(event.currentTarget.value)} />
      </label>
      <button
        type="button"
        class="button main"
        disabled={text.trim() === ''}
        onClick={() => void act('note.add', { on: photo.id, text: text.trim() }).then(onClose)}
      >
        {say().general.save}
      </button>
    </Panel>
  );
}
