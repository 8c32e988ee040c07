import { useEffect, useRef, useState } from 'preact/hooks';
import type { Guide } from '../../../core/guide/index.ts';
import { guides } from '../../../core/guide/pieces/index.ts';
import { sayBenchLinks } from '../../../text/bench-links.ts';
import { loadPieceWords, pieceWords } from '../../../text/guides.ts';
import { say } from '../../../text/index.ts';
import { Banner } from '../../parts/marks.tsx';
import { answered, questionsOf, ticked, type Wanted } from './wanted.ts';

interface Props {
  wanted: Wanted;
  onChange: (wanted: Wanted) => void;
  /** Somebody went on without choosing any. */
  missing: boolean;
}

/** Which pieces are to be measured, and what the shop knows of them already. */
export function WantedPieces({ wanted, onChange, missing }: Props) {
  const list = useRef<HTMLFieldSetElement>(null);
  const [, shown] = useState(false);
  useEffect(() => void loadPieceWords(guides.map(({ kind }) => kind)).then(() => shown(true)), []);
  useEffect(() => {
    if (!missing) return;
    list.current?.scrollIntoView({ block: 'nearest' });
    list.current?.querySelector('input')?.focus();
  }, [missing]);
  return (
    <fieldset class="wanted-pieces stack" ref={list} aria-invalid={missing}>
      <legend>{sayBenchLinks().pieces}</legend>
      {missing && <Banner tone="stop">{sayBenchLinks().noPiece}</Banner>}
      {guides.map((guide) => {
        const answers = wanted.get(guide.kind);
        return (
          <div key={guide.kind} class="stack">
            <label class="bench-tick">
              <input
                type="checkbox"
                checked={answers !== undefined}
                onChange={(event) => onChange(ticked(wanted, guide.kind, event.currentTarget.checked))}
              />
              <span>{say().general.pieceKinds[guide.kind]}</span>
            </label>
            {answers && <KnownAlready guide={guide} answers={answers} wanted={wanted} onChange={onChange} />}
          </div>
        );
      })}
    </fieldset>
  );
}

function KnownAlready(props: Omit<Props, 'missing'> & { guide: Guide; answers: Readonly<Record<string, string>> }) {
  const { guide, answers, wanted, onChange } = props;
  const words = sayBenchLinks();
  const asked = pieceWords(guide.kind)?.questions ?? {};
  return (
    <details class="known">
      <summary>{words.known}</summary>
      <p class="small quiet">{words.knownHelp}</p>
      {questionsOf(guide, answers).map(({ slot, choices }) => (
        <label key={slot} class="field">
          <span>{asked[slot]?.title ?? slot}</span>
          <select
            value={answers[slot] ?? ''}
            onChange={(event) => onChange(answered(wanted, guide.kind, slot, event.currentTarget.value))}
          >
            <option value="">{words.open}</option>
            {choices.map((choice) => (
              <option key={choice} value={choice}>
                {asked[slot]?.choices[choice] ?? choice}
              </option>
            ))}
          </select>
        </label>
      ))}
    </details>
  );
}
