import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { sayShop } from '../../text/shop.ts';
import type { Block } from './blocks.tsx';
import { PaperFoot, PaperTop } from './PaperEdges.tsx';
import { paginate } from './paginate.ts';
import type { PaperContent } from './paper-content.ts';
import { ReadingHead } from './ReadingLine.tsx';

interface Props {
  blocks: readonly Block[];
  content: PaperContent;
}

/** Blocks are measured first, at the width of the paper, and then put on pages that fit A4 and Letter alike. */
export function Pages({ blocks, content }: Props) {
  const [measured, setMeasured] = useState<{ of: PaperContent; pages: readonly number[][] } | null>(null);
  if (measured?.of === content) return <PrintedPages blocks={blocks} content={content} pages={measured.pages} />;
  return <Measure blocks={blocks} content={content} onMeasured={(pages) => setMeasured({ of: content, pages })} />;
}

/** Everything once, unseen, to learn how high it is. */
function Measure({ blocks, content, onMeasured }: Props & { onMeasured: (pages: number[][]) => void }) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const parts = [...(box.current?.children ?? [])].map((part) => part.getBoundingClientRect().height);
    const [page = 0, head = 0, top = 0, foot = 0, ...heights] = parts;
    const items = blocks.map((block, index) => ({
      height: heights[index] ?? 0,
      head: block.columns ? head : 0,
      keep: block.keep,
    }));
    onMeasured(paginate(items, page - top - foot));
  }, []);
  return (
    <div class="paper paper-measure" ref={box} aria-hidden="true">
      <div class="paper-page" />
      <ReadingHead content={content} />
      <PaperTop content={content} />
      <PaperFoot content={content} page={1} of={1} />
      {blocks.map((block) => (
        <div key={block.key} class="paper-block">
          {block.show()}
        </div>
      ))}
    </div>
  );
}

function PrintedPages({ blocks, content, pages }: Props & { pages: readonly number[][] }) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => fitToScreen(box.current), []);
  return (
    <div class="paper-desk">
      <div class="paper" ref={box}>
        {pages.map((page, index) => (
          <section key={page.join()} class="paper-page" aria-label={sayShop().paper.page(index + 1, pages.length)}>
            <PaperTop content={content} />
            <div class="paper-body">
              {page.map((at, place) => {
                const block = blocks[at];
                const before = blocks[page[place - 1] ?? -1];
                return (
                  block && (
                    <div key={block.key} class="paper-block">
                      {block.columns && !before?.columns && <ReadingHead content={content} />}
                      {block.show()}
                    </div>
                  )
                );
              })}
            </div>
            <PaperFoot content={content} page={index + 1} of={pages.length} />
          </section>
        ))}
      </div>
    </div>
  );
}

/** Room left and right of a page on the screen, px. */
const FRAME = 16;

/** A phone is narrower than paper: the pages are shown smaller, and printed as they are. */
function fitToScreen(paper: HTMLDivElement | null): (() => void) | undefined {
  const desk = paper?.parentElement;
  if (!paper || !desk) return undefined;
  const shrink = (): void => {
    paper.style.setProperty('--shown', '1');
    const share = Math.min(1, desk.clientWidth / (paper.offsetWidth + 2 * FRAME));
    paper.style.setProperty('--shown', String(share));
  };
  shrink();
  addEventListener('resize', shrink);
  return () => removeEventListener('resize', shrink);
}
