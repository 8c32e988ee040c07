import type { Sheet } from '../../core/job/index.ts';
import { sayWalk } from '../../text/walk.ts';
import { dateText, whoText } from '../model/job-words.ts';
import { readingName } from '../model/words.ts';

/** What is not asked any more, with what was read: nothing measured is lost. */
export function SetAside({ sheet, piece }: { sheet: Sheet; piece: string }) {
  const words = sayWalk().change;
  const own = sheet.setAside.filter(({ reading }) => reading.piece === piece);
  if (own.length === 0) return null;
  const read = own.filter(({ reading }) => reading.takes.length > 0 || reading.answer !== null);
  return (
    <section class="stack">
      <h2>{words.aside}</h2>
      <ul class="list">
        {read.map(({ reading, reason, who, at }) => (
          <li key={reading.id} class="item">
            <span class="grow">
              {readingName(reading, sheet)}
              <span class="quiet small answer">{words.why(reason, whoText(who), dateText(at))}</span>
            </span>
            <span class="number">{reading.takes.map(({ text }) => text).join(' / ')}</span>
          </li>
        ))}
        {read.length < own.length && <li class="quiet small item">{words.asideNone(own.length - read.length)}</li>}
      </ul>
    </section>
  );
}
