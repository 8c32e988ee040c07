import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Caution } from '../../../core/guide/index.ts';
import { sayCautions } from '../../../text/cautions.ts';
import { Banner } from '../../parts/marks.tsx';
import { StepLayout } from './StepLayout.tsx';

/** Cautions understood since the app was opened: each is shown in full once a visit, at the step where it matters. */
const understood = signal<ReadonlySet<Caution>>(new Set());

const understand = (cautions: readonly Caution[]): void => {
  understood.value = new Set([...understood.value, ...cautions]);
};

/** Those that nobody has said were understood. */
export const notUnderstood = (cautions: readonly Caution[]): readonly Caution[] =>
  cautions.filter((caution) => !understood.value.has(caution));

/** At the head of a step: in full until it was understood, then in one line that opens at a tap. */
export function CautionNote({ cautions }: { cautions: readonly Caution[] }) {
  const fresh = notUnderstood(cautions);
  const words = sayCautions();
  const known = cautions.filter((caution) => !fresh.includes(caution));
  return (
    <>
      {fresh.length > 0 && (
        <Banner tone="stop">
          <InFull cautions={fresh} />
          <button type="button" class="button" onClick={() => understand(fresh)}>
            {words.understood}
          </button>
        </Banner>
      )}
      {known.length > 0 && (
        <details class="caution-line">
          <summary>
            <strong>{words.heading}:</strong>{' '}
            {known.map((caution) => (
              <span key={caution}>{words.texts[caution]} </span>
            ))}
          </summary>
        </details>
      )}
    </>
  );
}

/** Before the step of whoever is led: what is dangerous there, by itself, so that it takes no room from what is done. */
export function CautionFirst({ cautions, moves }: { cautions: readonly Caution[]; moves: ComponentChildren }) {
  return (
    <StepLayout
      onlyRead
      foot={
        <>
          <div class="row spread beside">{moves}</div>
          <div class="caution">
            <button type="button" class="button main wide" onClick={() => understand(cautions)}>
              {sayCautions().understood}
            </button>
          </div>
        </>
      }
    >
      <Banner tone="stop">
        <InFull cautions={cautions} />
      </Banner>
    </StepLayout>
  );
}

const InFull = ({ cautions }: { cautions: readonly Caution[] }) => (
  <>
    {cautions.map((caution) => (
      <p key={caution}>
        <strong>{sayCautions().heading}:</strong> {sayCautions().texts[caution]}
      </p>
    ))}
  </>
);
