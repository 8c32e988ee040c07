import type { Finding } from '../../../core/check/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { findingsOf, type Lit } from '../state/lit.ts';
import { FindingRow } from './FindingRow.tsx';
import { Section } from './Section.tsx';

/** What the rules say besides what stands in the way: doubts that were accepted, and notes. */
export function FindingsSection({ job, piece, lit }: { job: OpenJob; piece: string; lit: Lit }) {
  const others = findingsOf(job.findings, piece)
    .filter(({ severity, accepted }) => severity === 'note' || (severity === 'doubt' && accepted !== null))
    .sort((a, b) => weight(a) - weight(b));
  return (
    <Section at="findings">
      {others.length === 0 ? (
        <p class="quiet">{sayBench().findings.none}</p>
      ) : (
        <ul class="list">
          {others.map((finding) => (
            <FindingRow key={finding.id} finding={finding} job={job} lit={lit.findings.has(finding.id)} />
          ))}
        </ul>
      )}
    </Section>
  );
}

const weight = ({ severity }: Finding): number => (severity === 'doubt' ? 0 : 1);
