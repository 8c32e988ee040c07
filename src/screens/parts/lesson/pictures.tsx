import type { ComponentChildren } from 'preact';
import type { sayLessons } from '../../../text/owner.ts';

export type LessonKey = keyof ReturnType<typeof sayLessons>['pairs'];

/** A stuck-on bit of masking tape with its cross. */
const Sticker = ({ x, y, name }: { x: number; y: number; name?: string }) => (
  <g transform={`translate(${x} ${y})`}>
    <rect class="sticker" x={-13} y={-13} width={26} height={26} />
    <path class="ink" d="M-6-6 6 6M6-6-6 6" />
    {name && (
      <text x={0} y={-17} text-anchor="middle">
        {name}
      </text>
    )}
  </g>
);
/** The end of a tape: a small hook. */
const Hook = ({ x, y, turn = 0 }: { x: number; y: number; turn?: number }) => (
  <path class="hook" transform={`translate(${x} ${y}) rotate(${turn})`} d="M0-8V8" />
);
const Tube = ({ x, y }: { x: number; y: number }) => (
  <>
    <circle class="solid" cx={x} cy={y} r={20} />
    <circle class="hole" cx={x} cy={y} r={9} />
    <path class="ink" d={`M${x - 5} ${y}h10M${x} ${y - 5}v10`} />
  </>
);
const Ground = () => <path class="ink" d="M6 88H154" />;
const Post = ({ x }: { x: number }) => <circle class="solid" cx={x} cy={55} r={13} />;
const Sheet = () => <rect class="paper" x={40} y={22} width={112} height={66} />;

/** Ticks along a level tape, so that it reads as one. */
const Ticks = ({ from, to, y }: { from: number; to: number; y: number }) => (
  <path
    class="tick"
    d={Array.from({ length: Math.floor((to - from) / 10) }, (_, i) => `M${from + 10 + i * 10} ${y}v-6`).join('')}
  />
);

/** What is drawn for each way of holding the tape: as it should be, and the usual slip beside it. */
export const PICTURES: Readonly<Record<LessonKey, { right: ComponentChildren; wrong: ComponentChildren }>> = {
  taut: {
    right: (
      <>
        <Sticker x={20} y={55} name="1" />
        <Sticker x={140} y={55} name="2" />
        <path class="tape" d="M20 55H140" />
        <Hook x={20} y={55} />
      </>
    ),
    wrong: (
      <>
        <Sticker x={20} y={45} name="1" />
        <Sticker x={140} y={45} name="2" />
        <path class="tape" d="M20 45Q80 118 140 45" />
        <Hook x={20} y={45} />
      </>
    ),
  },
  mark: {
    right: (
      <g transform="translate(60 60) scale(1.9)">
        <Sticker x={0} y={0} />
        <path class="tape" d="M0 0H50" />
        <Hook x={0} y={0} />
      </g>
    ),
    wrong: (
      <g transform="translate(60 60) scale(1.9)">
        <Sticker x={0} y={0} />
        <path class="tape" d="M13 0H50" />
        <Hook x={13} y={0} />
      </g>
    ),
  },
  centre: {
    right: (
      <g transform="translate(-8 0) scale(1.15)">
        <Tube x={45} y={50} />
        <path class="tape" d="M45 50H145" />
        <Hook x={45} y={50} />
      </g>
    ),
    wrong: (
      <g transform="translate(-8 0) scale(1.15)">
        <Tube x={45} y={50} />
        <path class="tape" d="M65 50H145" />
        <Hook x={65} y={50} />
      </g>
    ),
  },
  square: {
    right: (
      <>
        <path class="string" d="M8 84H152" />
        <Sticker x={80} y={26} />
        <path class="tape" d="M80 84V26" />
        <path class="ink" d="M80 72h12v12" />
      </>
    ),
    wrong: (
      <>
        <path class="string" d="M8 84H152" />
        <Sticker x={80} y={26} />
        <path class="tape" d="M132 84L80 26" />
      </>
    ),
  },
  surface: {
    right: (
      <>
        <path class="body" d="M10 96Q30 22 80 22T150 96Z" />
        <path class="tape" d="M11 93Q30 20 80 20T149 93" />
      </>
    ),
    wrong: (
      <>
        <path class="body" d="M10 96Q30 22 80 22T150 96Z" />
        <path class="tape" d="M11 93Q18 62 32 42L128 42Q142 62 149 93" transform="translate(0 -2)" />
        <path class="tape" d="M32 40L80 12L128 40" visibility="hidden" />
      </>
    ),
  },
  'one-end': {
    right: (
      <>
        <Ground />
        {[16, 58, 100, 142].map((x) => (
          <circle key={x} class="solid" cx={x} cy={78} r={7} />
        ))}
        <path class="tape" d="M16 54H142" />
        <Ticks from={16} to={142} y={54} />
        <Hook x={16} y={54} />
      </>
    ),
    wrong: (
      <>
        <Ground />
        {[16, 58, 100, 142].map((x) => (
          <circle key={x} class="solid" cx={x} cy={78} r={7} />
        ))}
        <path class="tape" d="M16 56H56M60 46H98M102 36H142" />
        <Hook x={16} y={56} />
        <Hook x={60} y={46} />
        <Hook x={102} y={36} />
      </>
    ),
  },
  free: {
    right: (
      <>
        <Post x={80} />
        <Sticker x={20} y={30} />
        <Sticker x={140} y={30} />
        <path class="tape" d="M20 30H140" />
        <Hook x={20} y={30} />
      </>
    ),
    wrong: (
      <>
        <Post x={80} />
        <Sticker x={20} y={60} />
        <Sticker x={140} y={60} />
        <path class="tape" d="M20 60L72 41Q80 38 88 41L140 60" />
        <Hook x={20} y={60} />
      </>
    ),
  },
  zero: {
    right: (
      <>
        <Sheet />
        <path class="tape" d="M40 96H152" />
        <Ticks from={40} to={152} y={96} />
        <Hook x={40} y={94} />
        <text x={40} y={14} text-anchor="middle">
          0
        </text>
        <path class="ink dashed" d="M40 18V88" />
      </>
    ),
    wrong: (
      <>
        <Sheet />
        <path class="tape" d="M14 96H152" />
        <Ticks from={14} to={152} y={96} />
        <Hook x={14} y={94} />
        <text x={40} y={14} text-anchor="middle">
          1
        </text>
        <path class="ink dashed" d="M40 18V88" />
      </>
    ),
  },
  across: {
    right: (
      <>
        <path class="body" d="M10 32H150V80H10Z" />
        <path class="tape" d="M80 32V80" />
        <path class="ink" d="M80 68h12v12" />
      </>
    ),
    wrong: (
      <>
        <path class="body" d="M10 32H150V80H10Z" />
        <path class="tape" d="M52 32L110 80" />
      </>
    ),
  },
  lean: {
    right: (
      <>
        <Ground />
        <path class="pole" d="M50 88L104 12" />
        <path class="gauge" d="M66 82L98 36L110 44L78 90Z" />
      </>
    ),
    wrong: (
      <>
        <Ground />
        <path class="pole" d="M50 88L104 12" />
        <path class="gauge" d="M80 54L134 44L138 58L84 68Z" />
      </>
    ),
  },
};
