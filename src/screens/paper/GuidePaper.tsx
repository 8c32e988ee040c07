import { useEffect, useState } from 'preact/hooks';
import { blankJob } from '../../core/cloth/as-drawn.ts';
import { declarePiece } from '../../core/guide/index.ts';
import { guides } from '../../core/guide/pieces/index.ts';
import { now, uuid } from '../../device/clock.ts';
import type { Setting } from '../../device/store/index.ts';
import { loadPieceWords } from '../../text/guides.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { units } from '../model/services.ts';
import { TopBar } from '../parts/TopBar.tsx';
import { UnitsField } from '../parts/UnitsField.tsx';
import { Paper, type PaperPiece } from './Paper.tsx';

/** A guide as a blank sheet, in the units the shop likes. */
export function GuidePaper({ kind }: { kind: string }) {
  const guide = guides.find((one) => one.kind === kind);
  const [chosen, setChosen] = useState<Setting<'units'>>(units.value);
  const [piece, setPiece] = useState<PaperPiece | null>(null);
  useEffect(() => {
    if (!guide) return;
    const name = say().general.pieceKinds[guide.kind];
    const declared = declarePiece(guide, name, uuid);
    const entries = blankJob(declared, { ...chosen, newId: uuid, at: now() });
    // Without its words a sheet falls back on labels.
    void loadPieceWords([guide.kind]).then(() => setPiece({ entries, id: declared.id }));
  }, [guide, chosen.system, chosen.fraction]);
  if (!guide)
    return (
      <div class="page">
        <TopBar back={{ at: 'shop' }} title={sayShop().paper.noGuide} />
      </div>
    );
  return (
    <Paper piece={piece} back={{ at: 'shop' }}>
      <UnitsField value={chosen} onChange={setChosen} />
    </Paper>
  );
}
