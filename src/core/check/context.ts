import {
  type Fastener,
  type Instruments,
  instrumentsOf,
  type Sheet,
  type SheetPiece,
  type SheetPoint,
  type SheetReading,
  type SheetRun,
  type Take,
} from '../job/index.ts';
import type { Subject } from './finding.ts';
import type { Limits } from './limits.ts';
import type { PieceJudgement } from './piece-judgement.ts';
import { practiceFactors } from './practice.ts';
import { sigmaOf } from './sigma.ts';

/** A reading that has a value. */
export type Measured = SheetReading & { readonly value: number };

/** What the rules look things up in: the sheet indexed once. */
export interface Context {
  readonly sheet: Sheet;
  readonly limits: Limits;
  readonly readings: ReadonlyMap<string, SheetReading>;
  readonly points: ReadonlyMap<string, SheetPoint>;
  readonly pieces: ReadonlyMap<string, SheetPiece>;
  readonly runs: ReadonlyMap<string, SheetRun>;
  /** Fasteners by the reading that holds their place. */
  readonly fasteners: ReadonlyMap<string, Fastener>;
  takeSigma(reading: SheetReading, take: Take): number;
  /** Standard deviation of a reading's value, in its unit. */
  sigma(reading: SheetReading): number;
  /** What the engine makes of a piece; computed once, when a rule first asks. */
  judgement(piece: string): PieceJudgement | null;
  /** The step where a person deals with a reading: its own, or that of its run. */
  slotOf(reading: SheetReading): string | null;
}

export const isMeasured = (reading: SheetReading | undefined): reading is Measured =>
  reading !== undefined && reading.value !== null;

export const liveTakes = (reading: SheetReading): Take[] => reading.takes.filter((take) => take.struck === null);

/** Those that make the value: not struck out, and not outvoted by two others. */
export const countingTakes = (reading: SheetReading): Take[] =>
  liveTakes(reading).filter((take) => take.outvoted !== true);

export const takeIds = (...readings: readonly SheetReading[]): string[] =>
  readings.flatMap((reading) => liveTakes(reading).map((take) => take.id));

export const aboutReading = (reading: SheetReading): Subject => ({ on: 'reading', id: reading.id });

/** Several takes share the tape, the hand and the slack, so their mean is not trusted more than the worst of them. */
const worstOf = (reading: SheetReading, takeSigma: Context['takeSigma']): number =>
  Math.max(0, ...countingTakes(reading).map((take) => takeSigma(reading, take)));

type TakenBy = Pick<Sheet, 'practice' | 'fraction'>;

/** The spread of a take by who took it, with the shop's tapes. */
function byTakes({ practice, fraction }: TakenBy, instruments: Instruments): Context['takeSigma'] {
  const practised = practiceFactors(practice, instruments);
  return (reading, take) => sigmaOf(reading, take, take.who, instruments, fraction, practised(take.who));
}

/** Standard deviation of a reading's value by the people and tapes of the shop the job is for, in its unit. */
export const sigmaOfReading = (reading: SheetReading, sheet: TakenBy & Pick<Sheet, 'shop'>): number =>
  worstOf(reading, byTakes(sheet, instrumentsOf(sheet.shop)));

export type Judge = (context: Context, piece: string) => PieceJudgement | null;

export function makeContext(sheet: Sheet, limits: Limits, instruments: Instruments, judge: Judge): Context {
  const byId = <T extends { readonly id: string }>(list: readonly T[]) => new Map(list.map((item) => [item.id, item]));
  const runs = byId(sheet.runs);
  const sigmas = new Map<string, number>();
  const takeSigma = byTakes(sheet, instruments);
  const judged = new Map<string, PieceJudgement | null>();
  const context: Context = {
    sheet,
    limits,
    readings: byId(sheet.readings),
    points: byId(sheet.points),
    pieces: byId(sheet.pieces),
    runs,
    fasteners: new Map(sheet.fasteners.map((fastener) => [fastener.reading, fastener])),
    takeSigma,
    sigma(reading) {
      const known = sigmas.get(reading.id);
      if (known !== undefined) return known;
      const sigma = worstOf(reading, takeSigma);
      sigmas.set(reading.id, sigma);
      return sigma;
    },
    judgement(piece) {
      const before = judged.get(piece);
      if (before !== undefined) return before;
      const made = judge(context, piece);
      judged.set(piece, made);
      return made;
    },
    slotOf: (reading) => {
      const run = runs.get(reading.run ?? '');
      return reading.slot ?? (run && reading.points.length < 2 ? (run.slot ?? run.id) : reading.id);
    },
  };
  return context;
}
