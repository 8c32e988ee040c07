import type { Step } from '../../../core/guide/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { type Route, routeHash } from '../../model/route.ts';
import { TopBar } from '../../parts/TopBar.tsx';
import { photosAt, stepTitle } from '../step-words.ts';
import { PhotoDesk } from './PhotoDesk.tsx';

interface Props {
  job: OpenJob;
  piece: string;
  step: Extract<Step, { on: 'reading' | 'run' }>;
}

/** Pictures taken at a reading or an edge, with its points to mark: witnesses nobody asked for. */
export function StepPhotos({ job, piece, step }: Props) {
  const words = sayPhotos();
  const title = stepTitle(step, job.sheet);
  const back: Route = { at: 'step', job: job.id, piece, step: step.key };
  const about = step.on === 'reading' ? { reading: step.reading.id } : { run: step.run.id };
  const points = step.on === 'reading' ? [...step.reading.points, ...(step.reading.via ?? [])] : step.run.points;
  return (
    <div class="page">
      <TopBar back={back} title={words.at(title)} />
      {photosAt(step, job.sheet).length === 0 && <p>{words.atHow}</p>}
      <PhotoDesk
        job={job}
        at={{ job: job.id, piece, step: step.key, slot: null, ...about }}
        photos={photosAt(step, job.sheet)}
        points={points}
        title={title}
      />
      <a class="button main wide" href={routeHash(back)}>
        {words.backTo(title)}
      </a>
    </div>
  );
}
