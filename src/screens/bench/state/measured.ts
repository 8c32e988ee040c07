import {
  type Measure,
  measureAngle,
  measureArea,
  measureDistance,
  measureRun,
  type Shape,
  SIGMAS_95,
  shapeToMeasure,
} from '../../../core/cloth/index.ts';
import type { Sheet } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { lengthText, pointLabel } from '../../model/words.ts';
import { boundText } from '../engine-words.ts';
import { runTitle } from '../names.ts';
import type { EngineView } from './engine-view.ts';
import type { Measuring } from './measuring.ts';

/** The shape that is drawn, to be measured on: with its joint covariance where the engine has it. */
export function shapeOf(sheet: Sheet, piece: string, engine: EngineView | null): Shape {
  if (!engine?.solved || !engine.shown) return shapeToMeasure(sheet, piece, null);
  const { network, things } = engine.judgement;
  return shapeToMeasure(sheet, piece, {
    network: { ...network, readings: network.readings.filter(({ id }) => !engine.without.includes(id)) },
    places: new Map(engine.shown.points.map(({ id, position }) => [id, position])),
    things: new Map([...things].map(([id, { position }]) => [id, position])),
  });
}

/** A line of what was measured: what it is, how much, and how sure or why not. */
export interface Row {
  name: string;
  value: string;
  sure: string;
}

export interface Measured {
  rows: Row[];
  notes: string[];
}

/** What was measured, in words; null while something is still to be chosen. */
export function measuredOn(shape: Shape, now: Measuring): Measured | null {
  switch (now.kind) {
    case 'distance':
      return distance(shape, now);
    case 'edge':
      return now.run === null ? null : edge(shape, now.run);
    case 'angle':
      return angle(shape, now);
    case 'area':
      return area(shape);
  }
}

const words = () => sayBench().measure;
const refused = (note: string): Measured => ({ rows: [], notes: [note] });

function distance(shape: Shape, { spots: [from, to] }: Measuring): Measured | null {
  if (!from || !to) return null;
  const found = measureDistance(shape, from, to);
  if (!found) return refused(words().notPlaced);
  const { rows } = words();
  const { straight, plan, rise, along } = found;
  const run = along ? runTitle(shape.sheet, along.run) : '';
  const list = [
    lengthRow(rows.straight, straight, shape),
    ...(plan ? [lengthRow(rows.plan, plan, shape)] : []),
    ...(rise ? [lengthRow(rows.rise, { ...rise, value: Math.abs(rise.value) }, shape)] : []),
    ...(along ? [lengthRow(rows.along(run), along.length, shape)] : []),
    ...(along?.taped ? [lengthRow(rows.taped(run), along.taped, shape)] : []),
  ];
  return { rows: list, notes: along ? [words().notes.chords] : [] };
}

function edge(shape: Shape, id: string): Measured {
  const found = measureRun(shape, id);
  if (!found) return refused(words().notPlaced);
  const { rows, notes } = words();
  const whole = shape.sheet.runs.find((run) => run.id === id)?.whole;
  const taped = shape.sheet.readings.find((reading) => reading.id === whole)?.value ?? null;
  const own = { name: rows.edgeTaped, value: taped === null ? '' : lengthText(taped, shape.sheet), sure: '' };
  return { rows: [lengthRow(rows.edge, found, shape), ...(taped === null ? [] : [own])], notes: [notes.chords] };
}

function angle(shape: Shape, { spots: [arm, corner, other] }: Measuring): Measured | null {
  if (!arm || !corner || !other) return null;
  const found = measureAngle(shape, arm, corner, other);
  if (!found) return refused(words().notPlaced);
  return { rows: [row(words().rows.angle, found, degreesText)], notes: [] };
}

function area(shape: Shape): Measured {
  const found = measureArea(shape);
  if (!found) return refused(words().noOutline);
  const { rows, notes, crossed } = words();
  const { sheet, flat } = shape;
  const [first, last] = [found.points[0] ?? '', found.points.at(-1) ?? ''];
  const inArea = (value: number, bound: boolean): string => areaText(value, bound, sheet);
  return {
    rows: [
      ...(found.area ? [row(flat ? rows.area : rows.planArea, found.area, inArea)] : []),
      lengthRow(flat ? rows.perimeter : rows.planPerimeter, found.perimeter, shape),
      ...(found.round ? [lengthRow(rows.round, found.round, shape)] : []),
    ],
    notes: [
      ...(found.area ? [] : [crossed]),
      ...(flat ? [] : [notes.planArea]),
      notes.chords,
      ...(found.open ? [notes.open(pointLabel(sheet, last), pointLabel(sheet, first))] : []),
    ],
  };
}

/** bound: rounded up, so that it never promises more than was worked out. */
type Said = (value: number, bound: boolean) => string;

function row(name: string, { value, sigma, why }: Measure, said: Said): Row {
  const sure = sigma === null ? words().unsure[why ?? 'not-adjusted'] : words().within(said(SIGMAS_95 * sigma, true));
  return { name, value: said(value, false), sure };
}

const lengthRow = (name: string, measure: Measure, { sheet }: Shape): Row =>
  row(name, measure, (value, bound) => (bound ? boundText(value, sheet) : lengthText(value, sheet)));

const upTo = (value: number, decimals: number, bound: boolean): string =>
  (bound ? Math.ceil(value * 10 ** decimals - 1e-6) / 10 ** decimals : value).toFixed(decimals);

const degreesText: Said = (value, bound) => `${upTo((value * 180) / Math.PI, 1, bound)}°`;

const SQUARE_FOOT = 304.8 ** 2;
const SQUARE_METRE = 1000 ** 2;

function areaText(value: number, bound: boolean, { system }: Pick<Sheet, 'system'>): string {
  const unit = words().units.area[system];
  return system === 'metric'
    ? `${upTo(value / SQUARE_METRE, 3, bound)} ${unit}`
    : `${upTo(value / SQUARE_FOOT, 2, bound)} ${unit}`;
}
