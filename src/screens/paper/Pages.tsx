import type { JSX } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Paper } from '../../core/packet/drawing/index.ts';
import { sayShop } from '../../text/shop.ts';
import type { Block } from './blocks.tsx';
import { paginate } from './paginate.ts';

/** What stands round the blocks on every page. paper: null for pages that fit A4 and Letter alike. */
export interface Frame {
  readonly paper: Paper | null;
  /** Column heads by name, anew above the first of their blocks on every page. */
  readonly heads: Readonly<Record<string, () => JSX.Element>>;
  readonly top: () => JSX.Element;
  readonly foot: (page: number, of: number) => JSX.Element;
}

interface Props {
  blocks: readonly Block[];
  frame: Frame;
  /** What the blocks were made of: when it is another, they are measured anew. */
  content: object;
}

/** Blocks are measured first, at the width of the paper, and then put on pages. */
export function Pages({ blocks, frame, content }: Props) {
  const [measured, setMeasured] = useState<{ of: object; pages: readonly number[][] } | null>(null);
  if (measured?.of === content) return <PrintedPages blocks={blocks} frame={frame} pages={measured.pages} />;
  return (
    <Measure
      key={frame.paper}
      blocks={blocks}
      frame={frame}
      onMeasured={(pages) => setMeasured({ of: content, pages })}
    />
  );
}

type Made = Omit<Props, 'content'>;

/** Everything once, unseen, to learn how high it is. */
function Measure({ blocks, frame, onMeasured }: Made & { onMeasured: (pages: number[][]) => void }) {
  const box = useRef<HTMLDivElement>(null);
  const heads = Object.entries(frame.heads);
  useLayoutEffect(() => {
    const parts = [...(box.current?.children ?? [])].map((part) => part.getBoundingClientRect().height);
    const [page = 0, top = 0, foot = 0, ...rest] = parts;
    const high = new Map(heads.map(([name], index) => [name, rest[index] ?? 0]));
    const items = blocks.map((block, index) => ({
      height: rest[heads.length + index] ?? 0,
      head: high.get(block.columns ?? '') ?? 0,
      keep: block.keep,
    }));
    onMeasured(paginate(items, page - top - foot));
  });
  return (
    <div class={`paper paper-measure ${frame.paper ?? ''}`} ref={box} aria-hidden="true">
      <div class="paper-page" />
      {frame.top()}
      {frame.foot(1, 1)}
      {heads.map(([name, head]) => (
        <div key={name} class="paper-block">
          {head()}
        </div>
      ))}
      {blocks.map((block) => (
        <div key={block.key} class="paper-block">
          {block.show()}
        </div>
      ))}
    </div>
  );
}

function PrintedPages({ blocks, frame, pages }: Made & { pages: readonly number[][] }) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => fitToScreen(box.current), []);
  return (
    <div class="paper-desk">
      <div class={`paper ${frame.paper ?? ''}`} ref={box}>
        {pages.map((page, index) => (
          <section key={page.join()} class="paper-page" aria-label={sayShop().paper.page(index + 1, pages.length)}>
            {frame.top()}
            <div class="paper-body">
              {page.map((at, place) => {
                const block = blocks[at];
                const before = blocks[page[place - 1] ?? -1];
                return (
                  block && (
                    <div key={block.key} class="paper-block">
                      {block.columns !== null && before?.columns !== block.columns && frame.heads[block.columns]?.()}
                      {block.show()}
                    </div>
                  )
                );
              })}
            </div>
            {frame.foot(index + 1, pages.length)}
          </section>
        ))}
      </div>
    </div>
  );
}

/** Room left and right of a page on the screen, px. */
const FRAME = 16;

/** A phone is narrower than paper: the pages are shown smaller, and printed as they are. */
export function fitToScreen(paper: HTMLDivElement | null): (() => void) | undefined {
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
