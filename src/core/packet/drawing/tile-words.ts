import type { TilesRefusal } from './tiles.ts';

/** What stands on the sheets of a piece in real size. */
export interface TileWords {
  readonly howTo: string;
  readonly tile: (name: string) => string;
  readonly page: (page: number, of: number) => string;
  readonly fullSize: string;
  readonly joins: (tile: string) => string;
  readonly bar: (mm: number) => string;
  readonly square: { readonly inner: string; readonly outer: string };
  /** The steps, one sentence or two each. */
  readonly steps: (sheets: number) => readonly string[];
  /** Why a piece is not printed in real size. */
  readonly refused: (refusal: TilesRefusal) => string;
}
