import './owner.css';
import { useEffect } from 'preact/hooks';
import { stepsOf } from '../../core/guide/steps.ts';
import { say } from '../../text/index.ts';
import type { OpenJob } from '../model/open-job.ts';
import type { Route } from '../model/route.ts';
import { Later } from '../parts/Later.tsx';
import { WithJob } from '../parts/WithJob.tsx';
import { AgainScreen } from './AgainScreen.tsx';
import { Before } from './Before.tsx';
import { led } from './led.ts';
import { OwnerHome } from './OwnerHome.tsx';
import { readTold, told, wantsMarks } from './told.ts';

type OfJob = Extract<Route, { job: string }>;

const loadStep = () => import('../dock/step/StepScreen.tsx').then((m) => m.StepScreen);
const loadPractice = () => import('./PracticeScreen.tsx').then((m) => m.PracticeScreen);
const loadOffer = () => import('./MarksOffer.tsx').then((m) => m.MarksOffer);
const loadMarks = () => import('./MarksScreen.tsx').then((m) => m.MarksScreen);

/** What an owner sees of a job: its overview, what to know first, practice, marks, and the steps with a look before each. */
export function OwnerRoom({ at }: { at: OfJob }) {
  return <WithJob key={at.job} id={at.job} back={{ at: 'jobs' }} show={(job) => <OwnerScreen at={at} job={job} />} />;
}

function OwnerScreen({ job, at }: { job: OpenJob; at: OfJob }) {
  useEffect(() => void readTold(), []);
  if (at.at === 'owner' && at.page === 'practice') return <Later key="practice" load={loadPractice} props={{ job }} />;
  if (at.at === 'owner' && at.page === 'marks') return <Later key="marks" load={loadMarks} props={{ job }} />;
  if (at.at === 'owner' && at.page === 'again') return <AgainScreen job={job} />;
  if (at.at === 'owner') return <Before job={job} />;
  if (at.at !== 'step') return <OwnerHome job={job} />;
  if (told.value === null) return <p class="page quiet">{say().general.loading}</p>;
  if (!told.value.includes(job.id)) return <Before job={job} />;
  const { piece, step, photos = false } = at;
  const first = stepsOf(job.sheet, piece).find(({ key }) => key === step);
  if (first && wantsMarks(job.sheet, piece, first))
    return <Later key="offer" load={loadOffer} props={{ job, at, step: first }} />;
  return <Later key="step" load={loadStep} props={{ job, piece, stepKey: step, photos, led }} />;
}
