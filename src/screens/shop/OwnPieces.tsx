import { useEffect } from 'preact/hooks';
import { redeclare } from '../../core/guide/again/index.ts';
import type { PieceDeclaration } from '../../core/job/index.ts';
import { uuid } from '../../device/clock.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { readShop, shop } from '../model/shop.ts';

/** The pieces the shop keeps; one that is chosen is declared anew. */
export function OwnPieces({ onChosen }: { onChosen: (piece: PieceDeclaration) => Promise<void> }) {
  useEffect(() => void readShop().catch(() => undefined), []);
  const templates = shop.value?.templates ?? [];
  if (templates.length === 0) return null;
  const words = sayShop().templates;
  return (
    <>
      <h3>{words.yours}</h3>
      <div class="choices">
        {templates.map(({ id, name, piece }) => (
          <button
            key={id}
            type="button"
            class="button choice"
            onClick={() => void onChosen({ ...redeclare(piece, uuid), name })}
          >
            <span>
              {name}
              <br />
              <span class="small quiet">{words.what(say().general.pieceKinds[piece.kind], piece.walk.length)}</span>
            </span>
          </button>
        ))}
      </div>
    </>
  );
}
