import type { Page } from 'playwright-core';

/** Where the drawn boat is seen from. */
export type View = 'ahead' | 'side' | 'pole';

/** Fractions of the picture's width and height, from its top left. */
type Spot = readonly [number, number];
/** A filled shape, or a line where it has a width (pixels). */
interface Stroke {
  readonly colour: string;
  readonly wide?: number;
  readonly spots: readonly Spot[];
}

const [HULL, ROOF, GLASS, METAL, DARK, STRIPE, TAPE] = [
  '#e9e6dc',
  '#f6f4ee',
  '#27485c',
  '#8b9094',
  '#444b50',
  '#8b2f24',
  '#f2c84b',
];

const fill = (colour: string, ...spots: readonly Spot[]): Stroke => ({ colour, spots });
const line = (colour: string, wide: number, ...spots: readonly Spot[]): Stroke => ({ colour, wide, spots });
const row = (count: number, one: (index: number) => Stroke): Stroke[] =>
  Array.from({ length: count }, (_, index) => one(index));

const BEHIND: readonly Stroke[] = [
  fill('#c3d5de', [0, 0], [1, 0], [1, 0.42], [0, 0.42]),
  fill('#7d8f86', [0, 0.42], [0, 0.37], [0.3, 0.35], [0.55, 0.38], [0.8, 0.34], [1, 0.37], [1, 0.42]),
  fill('#56808f', [0, 0.42], [1, 0.42], [1, 1], [0, 1]),
  ...row(40, (i) => {
    const [x, y] = [((i * 37) % 100) / 100, 0.46 + ((i * 53) % 52) / 100];
    return line('#7398a4', 3, [x, y], [x + 0.05, y]);
  }),
];

const VIEWS: Readonly<Record<View, readonly Stroke[]>> = {
  ahead: [
    fill(HULL, [0.1, 0.6], [0.13, 0.74], [0.3, 0.9], [0.5, 0.99], [0.7, 0.9], [0.87, 0.74], [0.9, 0.6], [0.5, 0.5]),
    line(STRIPE, 14, [0.12, 0.7], [0.29, 0.86], [0.5, 0.95], [0.71, 0.86], [0.88, 0.7]),
    fill('#d9d2c2', [0.2, 0.57], [0.11, 0.62], [0.27, 0.76], [0.5, 0.84], [0.73, 0.76], [0.89, 0.62], [0.8, 0.57]),
    line(DARK, 10, [0.2, 0.57], [0.11, 0.62], [0.27, 0.76], [0.5, 0.84], [0.73, 0.76], [0.89, 0.62], [0.8, 0.57]),
    line(METAL, 14, [0.47, 0.74], [0.53, 0.74]),
    fill(GLASS, [0.2, 0.57], [0.5, 0.6], [0.8, 0.57], [0.74, 0.43], [0.5, 0.45], [0.26, 0.43]),
    line(HULL, 12, [0.2, 0.57], [0.26, 0.43], [0.5, 0.45], [0.74, 0.43], [0.8, 0.57], [0.5, 0.6], [0.2, 0.57]),
    line(HULL, 12, [0.5, 0.45], [0.5, 0.6]),
    line(METAL, 10, [0.25, 0.3], [0.25, 0.46]),
    line(METAL, 10, [0.75, 0.3], [0.75, 0.46]),
    fill(ROOF, [0.22, 0.25], [0.5, 0.22], [0.78, 0.25], [0.77, 0.3], [0.23, 0.3]),
    line(DARK, 12, [0.28, 0.3], [0.28, 0.31]),
    line(DARK, 12, [0.72, 0.3], [0.72, 0.31]),
    line(TAPE, 12, [0.36, 0.56], [0.42, 0.565]),
  ],
  side: [
    fill(HULL, [0.12, 0.56], [0.36, 0.53], [0.62, 0.51], [0.94, 0.47], [0.84, 0.72], [0.14, 0.76]),
    line(STRIPE, 16, [0.13, 0.66], [0.5, 0.65], [0.89, 0.6]),
    fill(GLASS, [0.3, 0.53], [0.4, 0.36], [0.46, 0.36], [0.42, 0.52]),
    line(ROOF, 12, [0.3, 0.53], [0.4, 0.36], [0.46, 0.36], [0.42, 0.52]),
    fill(ROOF, [0.1, 0.3], [0.46, 0.27], [0.46, 0.31], [0.1, 0.34]),
    line(METAL, 10, [0.18, 0.34], [0.18, 0.55]),
    line(DARK, 10, [0.36, 0.53], [0.62, 0.51], [0.94, 0.47]),
    ...row(12, (i) =>
      line('#cfd4d6', 12, [0.36 + i * 0.048, 0.545 - i * 0.0048], [0.361 + i * 0.048, 0.545 - i * 0.0048]),
    ),
    fill('#8a7356', [0, 0.86], [1, 0.84], [1, 1], [0, 1]),
    ...row(6, (i) => line('#6f5b43', 5, [(i + 1) / 7, 0.86], [(i + 1) / 7 - 0.05, 1])),
    line(TAPE, 12, [0.4, 0.9], [0.72, 0.885]),
  ],
  pole: [
    fill(HULL, [0, 0.78], [1, 0.72], [1, 1], [0, 1]),
    line('#d8d3c4', 10, [0, 0.8], [1, 0.74]),
    line(DARK, 30, [0.5, 0.82], [0.5, 0.74]),
    line('#b9bec1', 16, [0.5, 0.74], [0.5, 0.18]),
    line(ROOF, 8, [0.5, 0.18], [0, 0.3]),
    line(TAPE, 12, [0.56, 0.86], [0.82, 0.845]),
  ],
};

/** A drawn stand-in for a photo at the dock, as JPEG: an invented boat in a few plain shapes. */
export async function drawnDock(page: Page, view: View): Promise<Buffer> {
  return Buffer.from(await page.evaluate(draw, [...BEHIND, ...VIEWS[view]]), 'base64');
}

/** Runs in the page, so it can name nothing outside itself. */
function draw(strokes: readonly Stroke[]): string {
  const canvas = document.createElement('canvas');
  canvas.width = 1200;
  canvas.height = 900;
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('This browser cannot draw.');
  pen.lineCap = 'round';
  pen.lineJoin = 'round';
  for (const { colour, wide, spots } of strokes) {
    pen.beginPath();
    for (const [x, y] of spots) pen.lineTo(x * canvas.width, y * canvas.height);
    pen.fillStyle = colour;
    pen.strokeStyle = colour;
    pen.lineWidth = wide ?? 0;
    if (wide === undefined) pen.fill();
    else pen.stroke();
  }
  return canvas.toDataURL('image/jpeg', 0.85).replace(/^.*,/, '');
}
