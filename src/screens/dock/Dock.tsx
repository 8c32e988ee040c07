import { bringFolding } from '../../device/store/index.ts';
import type { OpenJob } from '../model/open-job.ts';
import type { Route } from '../model/route.ts';
import { bring, Later } from '../parts/Later.tsx';
import { WithJob } from '../parts/WithJob.tsx';

const loadJob = () => import('./JobScreen.tsx').then((m) => m.JobScreen);
const loadWalk = () => import('./WalkScreen.tsx').then((m) => m.WalkScreen);
const loadTable = () => import('./table/TableScreen.tsx').then((m) => m.TableScreen);
const loadChange = () => import('./change/ChangeScreen.tsx').then((m) => m.ChangeScreen);
const loadStep = () => import('./step/StepScreen.tsx').then((m) => m.StepScreen);

/** Brings what follows the list of jobs before anybody has chosen one. */
export const bringSteps = (): Promise<unknown> =>
  Promise.all([bring(loadJob), bring(loadWalk), bring(loadStep), bringFolding()]);

type OfJob = Extract<Route, { job: string }>;

/** The dock's screens of one job, loaded behind the list of jobs. */
export function Dock({ at }: { at: OfJob }) {
  return <WithJob key={at.job} id={at.job} back={{ at: 'jobs' }} show={(job) => <DockScreen at={at} job={job} />} />;
}

function DockScreen({ at, job }: { at: OfJob; job: OpenJob }) {
  switch (at.at) {
    case 'walk':
      return <Later key="walk" load={loadWalk} props={{ job, piece: at.piece }} />;
    case 'step':
      return (
        <Later
          key="step"
          load={loadStep}
          props={{ job, piece: at.piece, stepKey: at.step, photos: at.photos === true }}
        />
      );
    case 'table': {
      const { piece, table, cell = null } = at;
      return <Later key={`table ${piece} ${table}`} load={loadTable} props={{ job, piece, table, cell }} />;
    }
    case 'change':
      return <Later key={`change ${at.what}`} load={loadChange} props={{ job, piece: at.piece, what: at.what }} />;
    case 'details':
      return (
        <Later key="details" load={() => import('./DetailsScreen.tsx').then((m) => m.DetailsScreen)} props={{ job }} />
      );
    case 'things':
      return (
        <Later
          key="things"
          load={() => import('./things/ThingsScreen.tsx').then((m) => m.ThingsScreen)}
          props={{ job, piece: at.piece, thing: at.thing }}
        />
      );
    case 'leave':
      return <Later key="leave" load={() => import('./LeaveScreen.tsx').then((m) => m.LeaveScreen)} props={{ job }} />;
    case 'send':
      return <Later key="send" load={() => import('./SendScreen.tsx').then((m) => m.SendScreen)} props={{ job }} />;
    default:
      return <Later key="job" load={loadJob} props={{ job }} />;
  }
}
