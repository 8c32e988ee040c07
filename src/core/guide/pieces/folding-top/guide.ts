import type { When } from '../../../job/index.ts';
import type { Guide, GuidePoint, GuideStep } from '../../guide.ts';
import { ask, heightOf, shot, sizeOf, tape, whenIs } from '../asking.ts';
import {
  bagQuestion,
  berthQuestion,
  clothQuestion,
  inTheWayQuestion,
  speedQuestion,
  towQuestion,
  withCautions,
} from '../make-questions.ts';

/** Where a frame bow usually stands, mm: forward of the third, how high its hips are, how wide. Invented. */
const BOWS = [
  { bow: 1, x: 1700, hip: 1780, half: 900 },
  { bow: 2, x: 850, hip: 1860, half: 950 },
  { bow: 3, x: 0, hip: 1780, half: 950 },
  { bow: 4, x: -800, hip: 1650, half: 920 },
] as const;
/** How far the middle of a bow stands over a string from hip to hip, mm. */
const CROWN = 110;

const points: GuidePoint[] = BOWS.flatMap(({ bow, x, hip, half }) => {
  const on = (side: 'P' | 'C' | 'S', sides: GuidePoint['sides'], y: number, z: number): GuidePoint => ({
    slot: `${side}${bow}`,
    label: `${side}${bow}`,
    // On a tube the cloth is pulled over, not on a line of fasteners: as sure as a corner on a cord.
    role: 'corner',
    sides: bow === 1 ? [...sides, 'forward'] : sides,
    nominal: [x, y, z],
  });
  return [on('P', ['port'], half, hip), on('C', ['centre'], 0, hip + CROWN), on('S', ['starboard'], -half, hip)];
});

/** Bows are counted from forward: the third is there on a frame of three, the fourth on one of four. */
const FROM: Readonly<Record<number, { when?: When }>> = {
  3: whenIs('bows', 'three', 'four'),
  4: whenIs('bows', 'four'),
};
const onlyWith = (bow: number): { when?: When } => FROM[bow] ?? {};

/** One bow: its width and halves, its crown over a string from hip to hip, and heights over the deck. */
function acrossBow(bow: number): GuideStep[] {
  const [port, middle, starboard, when] = [`P${bow}`, `C${bow}`, `S${bow}`, onlyWith(bow)];
  return [
    tape(port, starboard, when),
    tape(port, middle, when),
    ...(bow === 1 ? [] : [tape(middle, starboard, when)]),
    heightOf(`crown-${bow}`, middle, [port, starboard], when),
    heightOf(`h-${port}`, port, [], when),
    heightOf(`h-${middle}`, middle, [], when),
    heightOf(`h-${starboard}`, starboard, [], when),
  ];
}

/** From one bow to the next: both sides and the middle, and a diagonal in either half. */
function toNext(fore: number, aft: number): GuideStep[] {
  const when = onlyWith(aft);
  return [
    tape(`P${fore}`, `P${aft}`, when),
    tape(`C${fore}`, `C${aft}`, when),
    tape(`S${fore}`, `S${aft}`, when),
    tape(`C${fore}`, `P${aft}`, when),
    tape(`S${fore}`, `C${aft}`, when),
  ];
}

/** A string along either side, past a bow: how long it is, and how far the bow between stands over it. */
function past(bow: number): GuideStep[] {
  const [fore, aft, when] = [bow - 1, bow + 1, onlyWith(bow + 1)];
  return ['P', 'S'].flatMap((side) => [
    tape(`${side}${fore}`, `${side}${aft}`, when),
    heightOf(`rise-${side}${bow}`, `${side}${bow}`, [`${side}${fore}`, `${side}${aft}`], when),
  ]);
}

/**
 * A top over a frame of two, three or four bows, measured with the frame up and its straps tight. Between two bows the sides,
 * the middle and a diagonal in either half fix the plan, the width of each bow and its halves check it; heights over the
 * deck, crowns over a string across and rises over a string along fix the shape in space and check each other. The
 * crown's own offset is asked because widths hardly feel it: 10 mm of crown are 2 mm of half a width. Straps have a
 * slide, so their lengths are wished for, not needed. Common practice, no source.
 */
export const foldingTop: Guide = {
  kind: 'folding-top',
  flat: false,
  points,
  walk: [
    ask('line', ['finished-edge', 'tube-outside', 'tube-centre'], { cautions: ['engine-off', 'footing'] }),
    ask('bows', ['three', 'two', 'four']),
    ...acrossBow(1),
    ...acrossBow(2),
    ...toNext(1, 2),
    tape('P1', 'S2', whenIs('bows', 'two')),
    tape('S1', 'P2', whenIs('bows', 'two')),
    ...acrossBow(3),
    ...toNext(2, 3),
    ...past(2),
    ...acrossBow(4),
    ...toNext(3, 4),
    ...past(3),
    ask('straps', ['four', 'forward-pair', 'aft-pair', 'none']),
    sizeOf('strap-forward-port', 'length', ['P1'], { ...whenIs('straps', 'four', 'forward-pair'), needed: false }),
    sizeOf('strap-forward-starboard', 'length', ['S1'], { ...whenIs('straps', 'four', 'forward-pair'), needed: false }),
    sizeOf('strap-aft-port', 'length', [], { ...whenIs('straps', 'four', 'aft-pair'), needed: false }),
    sizeOf('strap-aft-starboard', 'length', [], { ...whenIs('straps', 'four', 'aft-pair'), needed: false }),
    ask('folds', ['aft', 'forward', 'stays-up']),
    sizeOf('fold-room', 'clearance', [], { ...whenIs('folds', 'aft', 'forward'), needed: false }),
    shot('photo-side', ['P1', 'P2']),
    shot('photo-ahead', ['C1', 'S1']),
    shot('photo-aft', ['C2', 'S2']),
    ask('headroom', ['as-it-stands', 'higher', 'lower'], { words: true }),
    ask('sleeves', ['zipped', 'slid-on', 'shop-decides'], { needed: false }),
    ask('hangs', ['nothing', 'panels-now', 'panels-later'], { cautions: ['carbon-monoxide'] }),
    withCautions(inTheWayQuestion, 'lights-and-view'),
    berthQuestion,
    towQuestion,
    speedQuestion,
    clothQuestion,
    bagQuestion,
  ],
  // The whole top first: what is drawn round it is the widest box whose bows are there.
  boxes: [
    ['P1', 'S1', 'S4', 'P4'],
    ['P1', 'S1', 'S3', 'P3'],
    ['P1', 'S1', 'S2', 'P2'],
  ],
  pairs: BOWS.map(({ bow }) => [`P${bow}`, `S${bow}`] as const),
};
