import { useState } from 'preact/hooks';
import type { Caution } from '../../../core/guide/index.ts';
import { sayCautions } from '../../../text/cautions.ts';
import { Banner } from '../../parts/marks.tsx';

/** Cautions understood since the app was opened: each is shown once a visit, at the step where it matters. */
const understood = new Set<Caution>();

export function CautionNote({ cautions }: { cautions: readonly Caution[] }) {
  const [open, setOpen] = useState(() => cautions.filter((caution) => !understood.has(caution)));
  if (open.length === 0) return null;
  const words = sayCautions();
  return (
    <Banner tone="stop">
      {open.map((caution) => (
        <p key={caution}>
          <strong>{words.heading}:</strong> {words.texts[caution]}
        </p>
      ))}
      <button
        type="button"
        class="button"
        onClick={() => {
          for (const caution of open) understood.add(caution);
          setOpen([]);
        }}
      >
        {words.understood}
      </button>
    </Banner>
  );
}
