import { isOfClosure } from '../../../../core/job/index.ts';
import { sayEdges } from '../../../../text/edges.ts';
import { say } from '../../../../text/index.ts';
import { Banner } from '../../../parts/marks.tsx';
import type { Part } from './edge-view.ts';

/** What was taped before the answers changed is kept, and what that means is said. */
export function Kept({ part: { stretch, fasteners } }: { part: Part }) {
  const { closes, presence } = stretch;
  const words = sayEdges();
  const others = closes === null ? [] : fasteners.filter(({ type }) => !isOfClosure(type, closes));
  const [other] = others;
  if (presence === 'planned' && fasteners.length > 0)
    return (
      <Banner tone="note">
        <p>{words.kept(fasteners.length)}</p>
      </Banner>
    );
  if (!other) return null;
  return (
    <Banner tone="note">
      <p>{words.keptOther(others.length, say().general.fasteners[other.type])}</p>
    </Banner>
  );
}
