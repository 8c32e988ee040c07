import { useState } from 'preact/hooks';
import { type Obstruction, type SizeOf, Treatment } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayThings } from '../../../text/things.ts';
import { findingsOn } from '../../model/findings.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { go, routeHash } from '../../model/route.ts';
import { sureText } from '../../model/sureness.ts';
import { lengthText, readingName, valueText } from '../../model/words.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';
import { TopBar } from '../../parts/TopBar.tsx';
import { CautionNote } from '../step/CautionNote.tsx';
import { Choice, Picked } from '../step/edge/Choice.tsx';
import { StepLayout } from '../step/StepLayout.tsx';
import { PlaceAsk } from './PlaceAsk.tsx';
import { Pointing } from './Pointing.tsx';
import { ThingPad, type Wanted } from './ThingPad.tsx';
import { drop } from './thing-acts.ts';
import { askedNext, asksNeed, photoSlot, placeReadings, sizeReading, sizesOf } from './thing-view.ts';

interface Props {
  job: OpenJob;
  thing: Obstruction;
}

const YES_NO = ['yes', 'no'] as const;

/** One thing in the way: where about it lies, what the cloth does about it, where exactly, how large. */
export function ThingPage({ job, thing }: Props) {
  const { sheet } = job;
  const words = sayThings();
  const [again, setAgain] = useState(false);
  const [of, setOf] = useState<SizeOf | null>(null);
  const [dropping, setDropping] = useState(false);
  const asked = again ? 'near' : askedNext(sheet, thing);
  const open = placeReadings(sheet, thing).find(({ state }) => state === 'open');
  const wanted: Wanted | null = of ? { of } : asked === null && open ? { reading: open } : null;
  const toList = () => go({ at: 'things', job: job.id, piece: thing.piece, thing: null });
  if (dropping)
    return (
      <ReasonPicker
        question={words.dropWhy}
        reasons={words.dropReasons}
        onCancel={() => setDropping(false)}
        onReason={(reason) => void drop(sheet, thing, reason).then(toList)}
      />
    );
  const key = wanted === null ? '' : 'of' in wanted ? wanted.of : wanted.reading.id;
  return (
    <div class="page step">
      <TopBar
        back={{ at: 'things', job: job.id, piece: thing.piece, thing: null }}
        title={words.named(words.names.obstructions[thing.kind], thing.label)}
      />
      <StepLayout
        foot={
          wanted ? (
            <ThingPad key={key} sheet={sheet} thing={thing} wanted={wanted} onDone={() => setOf(null)} />
          ) : (
            <button type="button" class="button main wide" onClick={toList} data-testid="thing-done">
              {words.toList}
            </button>
          )
        }
      >
        {thing.kind === 'light' && <CautionNote cautions={['lights-and-view']} />}
        {findingsOn(job, 'obstruction', thing.id).map((finding) => (
          <FindingLine key={finding.id} finding={finding} sheet={sheet} />
        ))}
        {asked === 'near' ? (
          <NearAsk job={job} thing={thing} onDone={() => setAgain(false)} />
        ) : (
          !wanted && (
            <PieceDrawing
              judgement={job.pieces.get(thing.piece)}
              sheet={sheet}
              piece={thing.piece}
              width={360}
              height={200}
              askedPoints={thing.point === null ? [] : [thing.point]}
            />
          )
        )}
        <Asks job={job} thing={thing} asked={asked} />
        <Place job={job} thing={thing} />
        {asked === null && <Sizes job={job} thing={thing} of={of} onOf={setOf} />}
        <Told thing={thing} />
        <div class="row">
          {asked !== 'near' && (
            <button type="button" class="button plain" onClick={() => setAgain(true)}>
              {words.pointAgain}
            </button>
          )}
          <button type="button" class="button plain" onClick={() => setDropping(true)}>
            {words.drop}
          </button>
        </div>
      </StepLayout>
    </div>
  );
}

function NearAsk({ job, thing, onDone }: Props & { onDone: () => void }) {
  return (
    <section class="stack">
      <h2>{sayThings().point}</h2>
      <Pointing
        job={job}
        piece={thing.piece}
        onPoint={([x, y, z]) =>
          void act('obstruction.set', { obstruction: thing.id, field: 'near', value: [x, y, z] }).then(onDone)
        }
      />
    </section>
  );
}

function Asks({ job, thing, asked }: Props & { asked: ReturnType<typeof askedNext> }) {
  const words = sayThings();
  const { id, kind } = thing;
  if (asked === 'treatment')
    return (
      <Choice
        question={words.treatment}
        values={Treatment.options}
        names={words.names.treatments}
        value={thing.treatment}
        choose={(value) => void act('obstruction.set', { obstruction: id, field: 'treatment', value })}
      />
    );
  if (asked === 'needed' && asksNeed(kind))
    return (
      <Choice
        question={words.needed[kind]}
        values={YES_NO}
        names={words.neededAnswers}
        value={thing.needed}
        choose={(value) => void act('obstruction.set', { obstruction: id, field: 'needed', value })}
      />
    );
  return asked === 'place' ? <PlaceAsk job={job} thing={thing} /> : null;
}

/** The readings that place it and how sure that is, or that only a photo does. */
function Place({ job, thing }: Props) {
  const { sheet } = job;
  const words = sayThings();
  const readings = placeReadings(sheet, thing).filter(({ value }) => value !== null);
  const slot = photoSlot(sheet, thing);
  const placed = job.pieces.get(thing.piece)?.things.get(thing.point ?? '');
  if (slot !== null && readings.length === 0)
    return (
      <section class="stack">
        <p>{words.photoOnly}</p>
        <a class="button wide" href={routeHash({ at: 'step', job: job.id, piece: thing.piece, step: slot })}>
          {words.takePhoto}
        </a>
      </section>
    );
  if (readings.length === 0) return null;
  return (
    <section class="stack">
      <ul>
        {readings.map((reading) => (
          <li key={reading.id} class="row spread">
            <a class="button plain" href={routeHash({ at: 'step', job: job.id, piece: thing.piece, step: reading.id })}>
              {readingName(reading, sheet)}
            </a>
            <span class="number">{valueText(reading.value ?? 0, reading.kind, sheet)}</span>
          </li>
        ))}
      </ul>
      {readings.length > 1 && (
        <p class="quiet">{placed ? words.placed(sureText(placed.sure, sheet)) : words.notPlaced}</p>
      )}
    </section>
  );
}

function Sizes({ job, thing, of, onOf }: Props & { of: SizeOf | null; onOf: (of: SizeOf | null) => void }) {
  const { sheet } = job;
  return (
    <section class="stack">
      <h2>{sayThings().sizes}</h2>
      <div class="row">
        {sizesOf(thing.kind).map((size) => {
          const value = sizeReading(sheet, thing.id, size)?.value ?? null;
          const name = say().general.sizes[size];
          return (
            <button
              key={size}
              type="button"
              class="button"
              aria-pressed={size === of}
              onClick={() => onOf(size === of ? null : size)}
            >
              {value === null ? name : `${name} ${lengthText(value, sheet)}`}
            </button>
          );
        })}
      </div>
    </section>
  );
}

/** What was answered, each to be changed in place. */
function Told({ thing }: { thing: Obstruction }) {
  const words = sayThings();
  const { id, kind } = thing;
  return (
    <div class="stack">
      <Picked
        label={words.treatment}
        values={Treatment.options}
        names={words.names.treatments}
        value={thing.treatment}
        choose={(value) => void act('obstruction.set', { obstruction: id, field: 'treatment', value })}
      />
      {asksNeed(kind) && (
        <Picked
          label={words.needed[kind]}
          values={YES_NO}
          names={words.neededTold[kind]}
          value={thing.needed}
          choose={(value) => void act('obstruction.set', { obstruction: id, field: 'needed', value })}
        />
      )}
    </div>
  );
}
