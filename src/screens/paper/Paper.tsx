import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { blankJob } from '../../core/cloth/as-drawn.ts';
import { paperSteps } from '../../core/guide/again/index.ts';
import { declarationOf } from '../../core/job/again/index.ts';
import { type Entry, fold } from '../../core/job/index.ts';
import { now, uuid } from '../../device/clock.ts';
import { sayShop } from '../../text/shop.ts';
import type { Route } from '../model/route.ts';
import { blocksOf } from './blocks.tsx';
import { type Frame, Pages } from './Pages.tsx';
import { PaperFoot, PaperTop } from './PaperEdges.tsx';
import { PrintBar } from './PrintBar.tsx';
import type { PaperContent } from './paper-content.ts';
import { ReadingHead } from './ReadingLine.tsx';
import { secondLooks } from './second-looks.ts';
import './paper.css';
import './paper-steps.css';

/** A piece in a logbook; for a guide one that was made for the sheet. */
export interface PaperPiece {
  readonly entries: readonly Entry[];
  readonly id: string;
}

interface Props {
  piece: PaperPiece | null;
  back: Route;
  children?: ComponentChildren;
}

/** The sheet of a piece, page by page as it will be printed, and the button that prints it. */
export function Paper({ piece, back, children }: Props) {
  const words = sayShop().paper;
  const [second, setSecond] = useState<ReadonlySet<string> | null>(null);
  useEffect(() => {
    if (piece) void secondLooks(piece.entries, piece.id).then(setSecond);
  }, [piece]);
  const content = useMemo(() => (piece && second ? contentOf(piece, second) : null), [piece, second]);
  return (
    <>
      <PrintBar words={{ ...words, title: words.sheet }} back={back} ready={content !== null}>
        {children}
      </PrintBar>
      {content && <Pages blocks={blocksOf(content)} frame={frameOf(content)} content={content} />}
    </>
  );
}

const frameOf = (content: PaperContent): Frame => ({
  paper: null,
  heads: { readings: () => <ReadingHead content={content} /> },
  top: () => <PaperTop content={content} />,
  foot: (page, of) => <PaperFoot page={page} of={of} />,
});

function contentOf({ entries, id }: PaperPiece, second: ReadonlySet<string>): PaperContent | null {
  const sheet = fold(entries);
  const declared = declarationOf(entries, id);
  if (!declared) return null;
  const { system, fraction } = sheet;
  return {
    sheet,
    piece: id,
    name: declared.name,
    steps: paperSteps(entries, id),
    // Drawn as if nothing had been taken: a value on the sheet would lead whoever reads the tape again.
    drawn: fold(blankJob(declared, { system, fraction, newId: uuid, at: now() })),
    second,
  };
}
