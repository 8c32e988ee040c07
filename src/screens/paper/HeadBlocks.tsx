import { sayEdges } from '../../text/edges.ts';
import { sayFitting } from '../../text/fitting.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { wordsOfPiece } from '../model/words.ts';
import { PieceDrawing } from '../parts/drawing/PieceDrawing.tsx';
import { fittingWhat, fittingWhere } from '../parts/fitting/fitting-words.ts';
import { Box, Line } from './PaperEdges.tsx';
import type { PaperContent } from './paper-content.ts';

/** Whose boat, when, by whom; and the piece with the names of its points. */
export function HeadBlock({ content }: { content: PaperContent }) {
  const words = sayShop().paper;
  const { customer, boat } = content.sheet.details;
  return (
    <div>
      <dl class="paper-facts">
        <Fact term={say().dock.begin.customer} value={customer} />
        <Fact term={say().dock.begin.boat} value={boat} />
        <Fact term={words.date} value="" />
        <Fact term={words.by} value="" />
      </dl>
      <div class="paper-drawing">
        <PieceDrawing sheet={content.drawn} piece={content.piece} width={700} height={330} />
      </div>
      <p>
        <small>{words.rules}</small>
      </p>
    </div>
  );
}

function Fact({ term, value }: { term: string; value: string }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{value || <Line />}</dd>
    </div>
  );
}

/** What each label stands for, said once for the whole sheet. */
export function PointsBlock({ content }: { content: PaperContent }) {
  const { sheet, piece } = content;
  const told = wordsOfPiece(sheet, piece)?.points;
  const points = sheet.points.filter(({ pieces }) => pieces.includes(piece));
  return (
    <ul class="paper-points">
      {points.map(({ id, label, slot }) => {
        const words = slot === null ? undefined : told?.[slot];
        return (
          <li key={id}>
            <strong>{label}</strong> {words ? sayShop().paper.point(words.name, words.where) : <Line />}
          </li>
        );
      })}
    </ul>
  );
}

/** Lines at the end of the sheet for what nobody thought of. */
const NOTES = 2;

export function EndBlock({ content }: { content: PaperContent }) {
  const words = sayShop().paper;
  const things = content.sheet.obstructions.filter(({ piece }) => piece === content.piece);
  const fittings = content.sheet.fittings.filter(({ piece }) => piece === content.piece);
  const { treatments } = sayEdges().names;
  return (
    <div class="paper-end">
      {fittings.length > 0 && (
        <>
          <h3>{sayFitting().heading}</h3>
          {fittings.map((note) => (
            <p key={note.id} class="paper-choices">
              <strong>{fittingWhere(content.sheet, note)}</strong> {fittingWhat(note)}
            </p>
          ))}
        </>
      )}
      <h3>{words.inTheWay}</h3>
      {things.map(({ id, label }) => (
        <p key={id} class="paper-choices">
          <strong>{label}</strong>{' '}
          {Object.entries(treatments).map(([key, treatment]) => (
            <Box key={key} label={treatment} />
          ))}
        </p>
      ))}
      <small>{words.inTheWayHow}</small>
      <Lines />
      <h3>{words.notes}</h3>
      <Lines />
    </div>
  );
}

const Lines = () => (
  <>
    {Array.from({ length: NOTES }, (_, row) => (
      <p key={row} class="paper-note">
        <Line long />
      </p>
    ))}
  </>
);
