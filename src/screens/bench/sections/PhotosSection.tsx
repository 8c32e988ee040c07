import { useState } from 'preact/hooks';
import type { SheetPhoto, SheetShot } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { Banner, StateMark } from '../../parts/marks.tsx';
import { photoTitle } from '../../parts/photo/photo-words.ts';
import { RemovedPhotos } from '../../parts/photo/RemovedPhotos.tsx';
import { labelsOf, shotTitle } from '../names.ts';
import type { Lit } from '../state/lit.ts';
import { isSelected, type Target, toggle } from '../state/selection.ts';
import { AskTick } from './AskTick.tsx';
import { PhotoShown } from './PhotoShown.tsx';
import { Section } from './Section.tsx';

interface Props {
  job: OpenJob;
  piece: string;
  lit: Lit;
}

/** The pictures asked for, with their marks, then those that somebody took besides, at readings or freely. */
export function PhotosSection({ job, piece, lit }: Props) {
  const shots = job.sheet.shots.filter((shot) => shot.piece === piece);
  const asked = new Set(shots.flatMap((shot) => shot.photos));
  const others = job.sheet.photos.filter((photo) => photo.piece === piece && !asked.has(photo.id));
  const words = sayBench().photos;
  const [gone, setGone] = useState('');
  return (
    <Section at="photos">
      {gone && <Banner tone="note">{gone}</Banner>}
      {shots.length === 0 && others.length === 0 && <p class="quiet">{words.none}</p>}
      {shots.map((shot) => (
        <ShotShown key={shot.slot} shot={shot} job={job} lit={lit} onGone={setGone} />
      ))}
      {others.length > 0 && <h3>{words.other}</h3>}
      {others.map((photo) => (
        <OtherPhoto key={photo.id} photo={photo} job={job} lit={lit} onGone={setGone} />
      ))}
      <RemovedPhotos job={job} of={(photo) => photo.piece === piece} onGone={setGone} />
    </Section>
  );
}

interface Shown {
  job: OpenJob;
  lit: Lit;
  onGone: (message: string) => void;
}

/** What it was taken at leads to its reading or edge. */
function OtherPhoto({ photo, job, lit, onGone }: Shown & { photo: SheetPhoto }) {
  const words = sayBench().photos;
  const title = photoTitle(photo, job.sheet);
  const to = takenAt(photo);
  return (
    <div class={`bench-row stack ${to && (lit.readings.has(to.id) || lit.runs.has(to.id)) ? 'lit' : ''}`}>
      {title !== null && to && (
        <h4>
          <button
            type="button"
            class="bench-name-button"
            aria-pressed={isSelected(to.on, to.id)}
            onClick={() => toggle(to.on, to.id)}
          >
            {words.at(title)}
          </button>
        </h4>
      )}
      <PhotoShown photo={photo} job={job} title={title ?? words.other} lit={lit} onGone={onGone} />
    </div>
  );
}

function takenAt({ reading, run }: SheetPhoto): Target | null {
  if (reading !== undefined) return { on: 'reading', id: reading };
  return run === undefined ? null : { on: 'run', id: run };
}

function ShotShown({ shot, job, lit, onGone }: Shown & { shot: SheetShot }) {
  const words = sayBench().photos;
  const { sheet } = job;
  const title = shotTitle(sheet, shot.piece, shot.slot);
  const photos = sheet.photos.filter((photo) => shot.photos.includes(photo.id));
  const marked = new Set(photos.flatMap((photo) => photo.marks.map((mark) => mark.point)));
  const unmarked = shot.points.filter((point) => !marked.has(point));
  return (
    <div class={`bench-row stack ${lit.shots.has(shot.slot) ? 'lit' : ''}`} data-row={`shot:${shot.slot}`}>
      <h3>
        <button
          type="button"
          class="bench-name-button"
          aria-pressed={isSelected('shot', shot.slot)}
          onClick={() => toggle('shot', shot.slot)}
        >
          {title}
        </button>
      </h3>
      {photos.map((photo) => (
        <PhotoShown key={photo.id} photo={photo} job={job} title={title} lit={lit} onGone={onGone} />
      ))}
      {photos.length === 0 && <Without shot={shot} />}
      {photos.length > 0 && unmarked.length > 0 && (
        <p>
          <StateMark mark="doubt">{words.unmarked(labelsOf(sheet, unmarked))}</StateMark>
        </p>
      )}
      <AskTick sheet={sheet} piece={shot.piece} on="shot" id={shot.slot} name={title} />
    </div>
  );
}

function Without({ shot }: { shot: SheetShot }) {
  const words = sayBench().photos;
  const { answer } = shot;
  if (!answer) return <StateMark mark="open">{words.open}</StateMark>;
  const said = answer.answer === 'could-not' ? words.couldNot : words.noneHere;
  return (
    <p>
      {words.without(said, answer.reason)}{' '}
      <span class="small quiet">{say().general.signedBy(whoText(answer.who), dateText(answer.at))}</span>
    </p>
  );
}
