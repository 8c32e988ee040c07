import './lesson.css';
import { useState } from 'preact/hooks';
import { say } from '../../../text/index.ts';
import { sayGlossary } from '../../../text/owner.ts';
import { BoatFromAbove, isBoatPart } from './BoatFromAbove.tsx';
import { heldTogether, type Term, termsIn, toldInWords } from './plain-words.ts';

/** A sentence whose trade's words can be tapped to see what they are. */
export function PlainText({ text, kind, class: look }: { text: string; kind: string | undefined; class?: string }) {
  const [open, setOpen] = useState<Term | null>(null);
  const told = heldTogether(toldInWords(text, kind));
  return (
    <>
      <p class={look}>
        {told.map(({ before, text: stretch, after, term }, i) =>
          term === null ? (
            stretch
          ) : (
            <span key={`${i} ${term}`} class="held">
              {before}
              <button
                type="button"
                class="plain-word"
                aria-expanded={open === term}
                onClick={() => setOpen(open === term ? null : term)}
              >
                {stretch}
              </button>
              {after}
            </span>
          ),
        )}
      </p>
      {open && <Explained term={open} onClose={() => setOpen(null)} />}
    </>
  );
}

/** The trade's words of a step, beneath it, where its own screen shows its texts. */
export function WordsHere({ texts, kind }: { texts: readonly string[]; kind: string | undefined }) {
  const [open, setOpen] = useState<Term | null>(null);
  const terms = termsIn(texts, kind);
  if (terms.length === 0) return null;
  const words = sayGlossary();
  return (
    <details class="words-here">
      <summary>{words.heading}</summary>
      <div class="row">
        {terms.map((term) => (
          <button
            key={term}
            type="button"
            class="button"
            aria-expanded={open === term}
            onClick={() => setOpen(open === term ? null : term)}
          >
            {words.names[term]}
          </button>
        ))}
      </div>
      {open && <Explained term={open} onClose={() => setOpen(null)} />}
    </details>
  );
}

function Explained({ term, onClose }: { term: Term; onClose: () => void }) {
  const words = sayGlossary();
  return (
    <div class="banner note explained-word" role="status">
      <p>
        <strong>{words.names[term]}:</strong> {words.terms[term]}
      </p>
      {isBoatPart(term) && <BoatFromAbove lit={[term]} alt={words.drawn(words.names[term])} />}
      <button type="button" class="button plain" onClick={onClose}>
        {say().general.close}
      </button>
    </div>
  );
}
