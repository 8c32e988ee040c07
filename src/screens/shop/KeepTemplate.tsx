import { useState } from 'preact/hooks';
import { inTheBoat } from '../../core/cloth/index.ts';
import { templateOf } from '../../core/guide/again/index.ts';
import type { SheetPiece } from '../../core/job/index.ts';
import { uuid } from '../../device/clock.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { typedPieceName } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { changeTemplates, readShop } from '../model/shop.ts';
import { adjustedPlaces } from '../model/sureness.ts';
import { Banner } from '../parts/marks.tsx';

type State = { at: 'offered' } | { at: 'naming'; fault: string } | { at: 'kept'; name: string };

/** Keeps what a piece asks, under a name, for later jobs. */
export function KeepTemplate({ job, piece }: { job: OpenJob; piece: SheetPiece }) {
  const words = sayShop().templates;
  const [state, setState] = useState<State>({ at: 'offered' });
  const [name, setName] = useState(typedPieceName(piece));
  const keep = async (): Promise<void> => {
    const wanted = name.trim();
    const { templates } = await readShop();
    if (templates.some((template) => template.name === wanted)) {
      setState({ at: 'naming', fault: words.taken(wanted) });
      return;
    }
    const places = inTheBoat(job.sheet, piece.id, adjustedPlaces(job.pieces.get(piece.id)));
    const made = templateOf(job.entries, piece.id, { name: wanted, newId: uuid, places });
    if (!made) return;
    await changeTemplates((list) => [...list, made]);
    setState({ at: 'kept', name: wanted });
  };
  if (state.at === 'kept') return <Banner tone="good">{words.kept(state.name)}</Banner>;
  if (state.at === 'offered')
    return (
      <button type="button" class="button" onClick={() => setState({ at: 'naming', fault: '' })}>
        {words.keep}
      </button>
    );
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void keep().catch(() => setState({ at: 'naming', fault: sayShop().notSaved }));
      }}
    >
      <p class="quiet small">{words.keepHelp}</p>
      <label class="field">
        <span>{words.keepName}</span>
        <input
          value={name}
          maxLength={120}
          autocomplete="off"
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      {state.fault && (
        <p class="state stop" role="alert">
          {state.fault}
        </p>
      )}
      <div class="row">
        <button type="submit" class="button main" disabled={name.trim() === ''}>
          {words.keepNow}
        </button>
        <button type="button" class="button plain" onClick={() => setState({ at: 'offered' })}>
          {say().general.cancel}
        </button>
      </div>
    </form>
  );
}
