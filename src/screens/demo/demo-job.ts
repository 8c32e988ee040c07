import { declarePiece } from '../../core/guide/index.ts';
import { guideOf } from '../../core/guide/pieces/index.ts';
import type { PieceDeclaration, PieceKind } from '../../core/job/index.ts';
import { nearestFraction } from '../../core/length/index.ts';
import { uuid } from '../../device/clock.ts';
import { sayDemo } from '../../text/demo.ts';
import { say } from '../../text/index.ts';
import { beginJob, type Deed, deed } from '../model/open-job.ts';
import { demoReadings } from './demo-readings.ts';

/** Invented boat, invented people: a shade measured whole, and a bow cover with two steps left and one slip in it. */
export async function loadDemoJob(): Promise<string> {
  const words = sayDemo();
  return beginJob([
    deed('job.open', { name: words.name, system: 'imperial', fraction: 16, demo: true }),
    deed('job.detail', { field: 'customer', value: words.customer }),
    deed('job.detail', { field: 'boat', value: words.boat }),
    ...measured('tension-shade'),
    ...measured('open-bow'),
  ]);
}

function measured(kind: PieceKind): Deed[] {
  const guide = guideOf(kind);
  const values = demoReadings[kind];
  if (!guide || !values) return [];
  const piece = declarePiece(guide, say().general.pieceKinds[kind], uuid);
  return [
    deed('piece.add', piece),
    ...Object.entries(values.readings).flatMap(([slot, inches]) => take(piece, slot, inches)),
    ...Object.entries(values.answers).map(([slot, choice]) =>
      deed('question.answer', { piece: piece.id, slot, choice, text: '' }),
    ),
    ...fasteners(piece, values.fasteners),
  ];
}

function take(piece: PieceDeclaration, slot: string, inches: number): Deed[] {
  const reading = piece.readings.find((candidate) => candidate.slot === slot);
  return reading
    ? [deed('take.add', { reading: reading.id, text: asTyped(inches), unit: 'in', value: inches * 25.4 })]
    : [];
}

function fasteners(piece: PieceDeclaration, places: readonly number[]): Deed[] {
  const run = piece.runs[0];
  if (!run || places.length === 0) return [];
  return [
    deed('run.detail', { run: run.id, field: 'presence', value: 'there' }),
    deed('run.detail', { run: run.id, field: 'line', value: 'fastener-line' }),
    deed('run.detail', { run: run.id, field: 'type', value: 'snap' }),
    ...places.flatMap((inches, i) => {
      const reading = uuid();
      return [
        deed('fastener.add', { fastener: uuid(), run: run.id, reading, rank: i + 1, type: 'snap', presence: 'there' }),
        deed('take.add', { reading, text: asTyped(inches), unit: 'in', value: inches * 25.4 }),
      ];
    }),
  ];
}

/** Inches as a person types them: 47 5/8. */
function asTyped(inches: number): string {
  const { feet, inches: whole, numerator, denominator } = nearestFraction(inches * 25.4, 16);
  const total = feet * 12 + whole;
  return numerator === 0 ? String(total) : `${total} ${numerator}/${denominator}`;
}
