/** name: the point in a few words. where: from where exactly. */
export interface PointWords {
  name: string;
  where: string;
}

/**
 * What a person at the boat reads for a piece, by the guide's slots. readings: a name and a sentence of its own where the
 * usual "hook on, taut to" does not serve. mistakes: the usual slip, by step, where there is one. seen: from where a piece
 * is drawn, where the layout does not say it.
 */
export interface PieceWords {
  about: string;
  seen?: string;
  points: Record<string, PointWords>;
  readings?: Record<string, { title: string; how: string }>;
  mistakes: Record<string, string>;
  heights: string;
  shots: Record<string, { title: string; how: string }>;
  questions: Record<string, { title: string; help: string; choices: Record<string, string> }>;
  runs: Record<string, { title: string; how: string }>;
}
