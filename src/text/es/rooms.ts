import type { Rooms } from '../room-words.ts';
import { bench } from './bench.ts';
import { benchLinks } from './bench-links.ts';
import { benchSheet } from './bench-sheet.ts';
import { cautions } from './cautions.ts';
import { demo } from './demo.ts';
import { details } from './details.ts';
import { dockEdges } from './dock-edges.ts';
import { dockThings } from './dock-things.ts';
import { drawing, tiles } from './drawing.ts';
import { findings } from './findings.ts';
import { fitting } from './fitting.ts';
import { glossary } from './glossary.ts';
import { guide } from './guide.ts';
import { jobs } from './jobs.ts';
import { keep } from './keep.ts';
import { length } from './length.ts';
import { lessons } from './lessons.ts';
import { links } from './links.ts';
import { owner } from './owner.ts';
import { photos } from './photos.ts';
import { receipt } from './receipt.ts';
import { shop } from './shop.ts';
import { slips } from './slips.ts';
import { valueSpoken } from './spoken.ts';
import { takeIn } from './take-in.ts';
import { walk } from './walk.ts';
import { withdraw } from './withdraw.ts';

/** All that comes after the first screens. */
export const rooms: Rooms = {
  demo,
  length,
  guide,
  cautions,
  bench,
  benchLinks,
  benchSheet,
  details,
  dockEdges,
  dockThings,
  drawing,
  findings,
  fitting,
  glossary,
  jobs,
  keep,
  lessons,
  links,
  owner,
  photos,
  receipt,
  shop,
  slips,
  takeIn,
  tiles,
  valueSpoken,
  walk,
  withdraw,
};
