import type { ReadingKind } from '../model.ts';
import { along } from './along.ts';
import { centre } from './centre.ts';
import { flat } from './flat.ts';
import { girth } from './girth.ts';
import { height } from './height.ts';
import type { Kind } from './kind.ts';
import { known } from './known.ts';
import { lean } from './lean.ts';
import { level } from './level.ts';
import { mirror } from './mirror.ts';
import { out } from './out.ts';
import { plumb } from './plumb.ts';
import { running } from './running.ts';
import { straight } from './straight.ts';

/** One declaration per reading kind. */
export const KINDS: Readonly<Record<ReadingKind, Kind>> = {
  straight,
  girth,
  height,
  along,
  out,
  running,
  lean,
  centre,
  mirror,
  level,
  plumb,
  flat,
  known,
};
