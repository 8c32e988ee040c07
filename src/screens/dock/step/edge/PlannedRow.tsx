import { useState } from 'preact/hooks';
import { limitsOf } from '../../../../core/check/index.ts';
import {
  type EvenRow,
  evenRow,
  isUsual,
  MOST_FASTENERS,
  rowSpaced,
  type SpacingLimits,
  usualRow,
} from '../../../../core/cloth/index.ts';
import type { Sheet, SheetRun } from '../../../../core/job/index.ts';
import { sayEdges } from '../../../../text/edges.ts';
import { lengthText, readLength } from '../../../model/words.ts';
import { tell } from './edge-acts.ts';
import type { Part } from './edge-view.ts';

/** Without a length to go by, a number to begin with. */
const SOME = 6;

interface Props {
  sheet: Sheet;
  run: SheetRun;
  part: Part;
}

/** How many are to be fitted, spread evenly: the number gives the spacing, the spacing the number. */
export function PlannedRow({ sheet, run, part }: Props) {
  const { stretch, length, name } = part;
  const limits = spacingLimits(sheet);
  // Straps stand where they must, not one beside the next.
  const spread = length !== null && stretch.closes !== 'strap' ? length : null;
  const first = stretch.count ?? (spread === null ? SOME : usualRow(spread, limits).count);
  const [count, setCount] = useState<number | null>(first);
  const words = sayEdges().row;
  const row = spread === null || count === null ? null : evenRow(spread, count, limits);
  const take = (): void => {
    if (count === null) return;
    const spacing = row && row.count > 1 ? [{ field: 'spacing' as const, value: row.spacing.toFixed(3) }] : [];
    void tell(run, stretch.from, { field: 'count', value: String(count) }, ...spacing);
  };
  return (
    <section class="stack planned-row">
      {length === null && <p class="quiet">{words.noLength}</p>}
      {spread !== null && <p class="quiet">{words.length(name, lengthText(spread, sheet))}</p>}
      <NumberField count={count} setCount={setCount} />
      {spread !== null && <SpacingField {...{ sheet, row, limits, length: spread, setCount }} />}
      {(count === null || count !== stretch.count) && (
        <button type="button" class="button main wide" disabled={count === null} onClick={take} data-testid="plan">
          {words.take(count ?? first)}
        </button>
      )}
      <p class="quiet small">{words.help}</p>
    </section>
  );
}

function spacingLimits(sheet: Sheet): SpacingLimits {
  const { fastenerGap, fastenerEnd } = limitsOf(sheet.shop);
  return { ...fastenerGap, end: fastenerEnd };
}

interface NumberProps {
  count: number | null;
  setCount: (count: number | null) => void;
}

/** null: what is typed is no number of fasteners; the field says so and keeps it. */
function NumberField({ count, setCount }: NumberProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const words = sayEdges().row;
  const set = (to: number): void => {
    setTyped(null);
    setCount(Math.min(MOST_FASTENERS, Math.max(1, to)));
  };
  return (
    <>
      <div class="row planned-number">
        <button type="button" class="button" aria-label={words.fewer} onClick={() => set((count ?? 1) - 1)}>
          −
        </button>
        <label class="field grow">
          <span>{words.number}</span>
          <input
            inputMode="numeric"
            maxLength={6}
            value={typed ?? String(count ?? '')}
            onInput={(event) => {
              const text = event.currentTarget.value;
              setTyped(text);
              const number = /^\s*\d+\s*$/.test(text) ? Number(text) : 0;
              setCount(number >= 1 && number <= MOST_FASTENERS ? number : null);
            }}
          />
        </label>
        <button type="button" class="button" aria-label={words.more} onClick={() => set((count ?? 0) + 1)}>
          +
        </button>
      </div>
      {count === null && (
        <p class="state stop" role="alert">
          {words.badNumber}
        </p>
      )}
    </>
  );
}

interface SpacingProps {
  sheet: Sheet;
  row: EvenRow | null;
  limits: SpacingLimits;
  length: number;
  setCount: (count: number) => void;
}

function SpacingField({ sheet, row, limits, length, setCount }: SpacingProps) {
  const [bad, setBad] = useState(false);
  // What was typed gives way to what whole fasteners make of it.
  const [typings, setTypings] = useState(0);
  const words = sayEdges().row;
  const shown = row && row.count > 1 ? lengthText(row.spacing, sheet) : '';
  const usual = usualText(sheet, limits);
  const spaceBy = (text: string): void => {
    const read = readLength(text, sheet);
    const fits = read.ok && read.mm > 0;
    setBad(!fits);
    if (!fits) return;
    setCount(rowSpaced(length, read.mm, limits).count);
    setTypings(typings + 1);
  };
  return (
    <>
      <label class="field">
        <span>{words.spacing}</span>
        <input
          key={`${typings} ${shown}`}
          defaultValue={shown}
          onChange={(event) => spaceBy(event.currentTarget.value)}
        />
      </label>
      {bad && <p class="state stop">{words.badSpacing}</p>}
      {row && row.count > 1 && (
        <p class={isUsual(row, limits) ? 'quiet' : 'state doubt'}>
          {words.ends(lengthText(row.end, sheet))}{' '}
          {isUsual(row, limits) ? words.usual(...usual) : words.unusual(...usual)}
        </p>
      )}
    </>
  );
}

const HALF_INCH = 12.7;

/** The usual figures are round in either system; a shop's own are shown as it set them. */
function usualText(sheet: Sheet, { min, max }: SpacingLimits): [string, string] {
  const round = sheet.system === 'imperial' && sheet.shop?.fastenerGap === undefined;
  const shown = (mm: number): string => lengthText(round ? Math.round(mm / HALF_INCH) * HALF_INCH : mm, sheet);
  return [shown(min), shown(max)];
}
