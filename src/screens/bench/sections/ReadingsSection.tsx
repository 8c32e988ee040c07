import type { SheetReading } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { engineView } from '../state/engine-view.ts';
import type { Lit } from '../state/lit.ts';
import { useWide } from '../use-wide.ts';
import { ReadingRow } from './ReadingRow.tsx';
import { Section } from './Section.tsx';

/** Every reading of the piece but those of fasteners, which stand with their edge. */
export function ReadingsSection({ job, piece, lit }: { job: OpenJob; piece: string; lit: Lit }) {
  const wide = useWide();
  const words = sayBench().readings;
  const engine = engineView(job, piece);
  const stations = new Set(job.sheet.runs.flatMap((run) => run.stations));
  const readings = inWalkingOrder(job, piece).filter((reading) => !stations.has(reading.id));
  return (
    <Section at="readings">
      {readings.length === 0 ? (
        <p class="quiet">{words.none}</p>
      ) : (
        <table class="bench-table">
          <caption class="sr-only">{words.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{words.name}</th>
              <th scope="col">{words.takes}</th>
              <th scope="col">{words.value}</th>
              {wide && <th scope="col">{words.who}</th>}
              {wide && <th scope="col">{words.state}</th>}
            </tr>
          </thead>
          <tbody>
            {readings.map((reading) => (
              <ReadingRow
                key={reading.id}
                reading={reading}
                job={job}
                wide={wide}
                lit={lit.readings.has(reading.id)}
                engine={engine}
              />
            ))}
          </tbody>
        </table>
      )}
    </Section>
  );
}

export function inWalkingOrder({ sheet }: OpenJob, piece: string): SheetReading[] {
  const walk = sheet.pieces.find(({ id }) => id === piece)?.walk ?? [];
  const rank = new Map(walk.map((slot, index) => [slot, index]));
  const rankOf = ({ slot }: SheetReading): number => rank.get(slot ?? '') ?? walk.length;
  return sheet.readings.filter((reading) => reading.piece === piece).sort((a, b) => rankOf(a) - rankOf(b));
}
