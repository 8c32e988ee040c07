import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Drawing, FEW_TILES, type Paper, tilePages, tilesFor } from '../../../core/packet/drawing/index.ts';
import { sayTiles } from '../../../text/drawing.ts';
import { saySheet } from '../../../text/sheet.ts';
import type { Route } from '../../model/route.ts';
import { fitToScreen } from '../../paper/Pages.tsx';
import { Banner } from '../../parts/marks.tsx';
import { TopBar } from '../../parts/TopBar.tsx';
import { SvgShown } from './SvgShown.tsx';

interface Props {
  drawing: Drawing | null;
  judged: boolean;
  paper: Paper;
  back: Route;
  controls: ComponentChildren;
}

/** A flat piece in real size, sheet by sheet; where there are many, how many is said first. */
export function PieceTiles({ drawing, judged, paper, back, controls }: Props) {
  const words = saySheet();
  const [agreed, setAgreed] = useState<number | null>(null);
  const offer = useMemo(() => (drawing ? tilesFor(drawing, paper) : null), [drawing, paper]);
  const tiling = offer?.ok ? offer.tiling : null;
  const count = tiling?.tiles.length ?? 0;
  const waits = count > FEW_TILES && agreed !== count;
  const pages = useMemo(
    () => (drawing && tiling && !waits ? tilePages(drawing, tiling, sayTiles()) : []),
    [drawing, tiling, waits],
  );
  return (
    <>
      <div class="page paper-bar no-print">
        <TopBar back={back} title={words.tilesTitle} />
        <p class="quiet">{words.tilesHow}</p>
        {controls}
        {!drawing && <p class="quiet">{judged ? words.nothing : words.making}</p>}
        {offer && !offer.ok && <Banner tone="doubt">{sayTiles().refused(offer)}</Banner>}
        {tiling && <p data-testid="sheets">{waits ? words.many(count) : words.sheets(count)}</p>}
        {waits && (
          <button type="button" class="button main wide" onClick={() => setAgreed(count)} data-testid="show-all">
            {words.showAll(count)}
          </button>
        )}
        {pages.length > 0 && (
          <button type="button" class="button main wide" onClick={() => window.print()} data-testid="print">
            {words.print}
          </button>
        )}
      </div>
      {tiling && pages.length > 0 && (
        <TilesShown key={`${paper} ${tiling.lying}`} look={`tiles ${paper} ${tiling.lying ? 'lying' : 'upright'}`}>
          {pages.map(({ name, svg }) => (
            <section key={name} class="paper-page">
              <SvgShown svg={svg} label={name} />
            </section>
          ))}
        </TilesShown>
      )}
    </>
  );
}

function TilesShown({ look, children }: { look: string; children: ComponentChildren }) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => fitToScreen(box.current), []);
  return (
    <div class="paper-desk">
      <div class={`paper ${look}`} ref={box}>
        {children}
      </div>
    </div>
  );
}
