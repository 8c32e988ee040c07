import type { PieceKind } from '../../core/job/index.ts';

interface DemoPiece {
  /** Inches by step. */
  readings: Record<string, number>;
  answers: Record<string, string>;
  /** Inches from the start of the edge. */
  fasteners: readonly number[];
}

/** Invented: taken from a made-up shape with a steady hand, to the nearest sixteenth. For the demo only. */
export const demoReadings: Partial<Record<PieceKind, DemoPiece>> = {
  'tension-shade': {
    readings: {
      'A-B': 75.6875,
      'A-C': 91.8125,
      'A-D': 113.312,
      'B-D': 90.5625,
      'B-C': 112.812,
      'C-D': 59.125,
      'h-A': 75.0625,
      'h-B': 74.75,
      'h-C': 66.5,
      'h-D': 67,
    },
    answers: {
      over: 'foredeck',
      poles: 'real-poles',
      holders: 'through-bolted',
      rain: 'taken-down',
      berth: 'water',
      speed: 'at-rest',
      wind: 'breeze',
      cloth: 'coated',
      bag: 'wanted',
      'in-the-way': 'nothing',
    },
    fasteners: [],
  },
  'open-bow': {
    readings: {
      'W1-W2': 70.25,
      'W1-F': 67.75,
      'W2-F': 67.875,
      'W1-P1': 9.75,
      'W1-P2': 35.9375,
      'W1-P3': 65.75,
      'W1-T': 94.5625,
      'W1-S3': 89.5625,
      'W1-S2': 83,
      'W1-S1': 78.5,
      'W2-S1': 9.4375,
      'W2-S2': 35.5625,
      'W2-S3': 65.3125,
      'W2-T': 94.4375,
      'W2-P3': 89.625,
      'W2-P2': 83,
      'W2-P1': 78.5625,
      'F-P1': 68.25,
      'F-P2': 45.5625,
      'F-P3': 72.1875,
      'F-T': 29.6875,
      'F-S3': 27.875,
      'F-S2': 46.25,
      'F-S1': 68.75,
      'P1-P2': 30.625,
      'P2-P3': 32.4375,
      'P3-T': 34.9375,
      'T-S3': 35.1875,
      'S3-S2': 32.3125,
      'S2-S1': 30.625,
      'P1-S1': 86.5625,
      'h-G': 10.5625,
      'edge-whole': 199.438,
    },
    answers: {
      line: 'fastener-line',
      glass: 'up-glass',
      crown: 'flat',
      berth: 'water',
      'dock-side': 'port',
      cord: 'aft',
      cleats: 'outside',
      'in-the-way': 'nothing',
      fits: 'owner-alone',
      'fits-from': 'dock',
      cloth: 'breathable',
      bag: 'wanted',
    },
    fasteners: [
      1.4375, 8.0, 14.4375, 21.0625, 27.75, 34.0, 40.6875, 47.3125, 53.8125, 60.4375, 66.9375, 73.375, 80.125, 86.6875,
      93.25, 99.8125, 106.3125, 112.8125, 119.3125, 126.0, 132.4375, 139.0, 145.5, 152.0625, 158.6875, 165.375, 171.625,
      178.25, 184.9375, 191.5625, 198.0625,
    ],
  },
};
