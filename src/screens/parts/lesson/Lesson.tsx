import './lesson.css';
import { sayLessons } from '../../../text/owner.ts';
import { StateMark } from '../marks.tsx';
import { type LessonKey, PICTURES } from './pictures.tsx';

/** As it should be and the usual slip, side by side: sign and word, never colour alone. */
export function Lesson({ lesson }: { lesson: LessonKey }) {
  const words = sayLessons();
  const pair = words.pairs[lesson];
  return (
    <div class="lesson">
      <figure>
        <svg viewBox="0 0 160 110" role="img" aria-label={`${words.right}: ${pair.rightAlt}`}>
          {PICTURES[lesson].right}
        </svg>
        <figcaption>
          <StateMark mark="good">{words.right}</StateMark>
          <span class="small">{pair.right}</span>
        </figcaption>
      </figure>
      <figure>
        <svg viewBox="0 0 160 110" role="img" aria-label={`${words.wrong}: ${pair.wrongAlt}`}>
          {PICTURES[lesson].wrong}
        </svg>
        <figcaption>
          <span class="state stop">
            <svg viewBox="0 0 20 20" aria-hidden="true">
              <path d="M4 4l12 12M16 4L4 16" fill="none" stroke="currentColor" stroke-width="2.5" />
            </svg>
            {words.wrong}
          </span>
          <span class="small">{pair.wrong}</span>
        </figcaption>
      </figure>
    </div>
  );
}
