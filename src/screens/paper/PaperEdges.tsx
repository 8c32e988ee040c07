import { sayShop } from '../../text/shop.ts';
import type { PaperContent } from './paper-content.ts';

/** At the top of every page: which piece of which job, so that a page alone is still known. */
export function PaperTop({ content }: { content: PaperContent }) {
  const words = sayShop().paper;
  const { details } = content.sheet;
  return (
    <header class="paper-top">
      <strong>{content.name}</strong>
      <span class="paper-job">
        {words.job}: {details.name || <Line />}
      </span>
    </header>
  );
}

export function PaperFoot({ page, of }: { page: number; of: number }) {
  const words = sayShop().paper;
  return (
    <footer class="paper-foot">
      <span>{words.foot}</span>
      <span>{words.page(page, of)}</span>
    </footer>
  );
}

/** Room to write. */
export function Line({ long = false }: { long?: boolean }) {
  return <span class={`paper-line ${long ? 'long' : ''}`} />;
}

/** A box to tick and what it stands for. */
export function Box({ label }: { label: string }) {
  return (
    <span class="paper-choice">
      <span class="paper-box" /> {label}
    </span>
  );
}
