import { spawnSync } from 'node:child_process';

/** Whether Debian's poppler-utils are here, which read our prints back. */
export const canReadPdf = ['pdftotext', 'pdftoppm', 'pdfinfo'].every(
  (tool) => spawnSync(tool, ['-v']).error === undefined,
);

function run(tool: string, args: readonly string[]): Buffer {
  const done = spawnSync(tool, args, { maxBuffer: 1 << 28 });
  if (done.status !== 0) throw new Error(`${tool} failed: ${done.stderr?.toString() ?? done.error?.message}`);
  return done.stdout;
}

const MM_PER_POINT = 25.4 / 72;

/** Sizes of the pages of a PDF, mm, as the file itself has them. */
export function pageSizes(path: string): { width: number; height: number }[] {
  const said = run('pdfinfo', ['-f', '1', '-l', '1000', path]).toString();
  return [...said.matchAll(/^Page +\d+ size: +([\d.]+) x ([\d.]+) pts/gm)].map(([, width, height]) => ({
    width: Number(width) * MM_PER_POINT,
    height: Number(height) * MM_PER_POINT,
  }));
}

/** What can be read on each page, in one line. */
export function pageTexts(path: string): string[] {
  const pages = run('pdftotext', [path, '-']).toString().split('\f').slice(0, -1);
  return pages.map((page) => page.replace(/\s+/g, ' '));
}

/** A page as rows of grey, 0 black to 255 white. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly dotsPerMm: number;
  at(x: number, y: number): number;
}

/** A page as a printer of so many dots to the inch would set it. */
export function pageAsDots(path: string, page: number, dpi: number): Grey {
  const pgm = run('pdftoppm', ['-r', String(dpi), '-gray', '-f', String(page), '-l', String(page), path]);
  const [head = '', width = '', height = ''] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.toString('latin1', 0, 64)) ?? [];
  if (head === '') throw new Error('Not a grey picture.');
  const wide = Number(width);
  return {
    width: wide,
    height: Number(height),
    dotsPerMm: dpi / 25.4,
    at: (x, y) => pgm[head.length + y * wide + x] ?? 255,
  };
}

/** Where dark lines cross a straight way over a page, mm from its left or upper edge: the middle of each. */
export function darkLines(grey: Grey, along: 'across' | 'down', at: number): number[] {
  const fixed = Math.round(at * grey.dotsPerMm);
  const length = along === 'across' ? grey.width : grey.height;
  const lines: number[] = [];
  let [sum, weight] = [0, 0];
  for (let i = 0; i <= length; i += 1) {
    const ink = i === length ? 0 : 255 - (along === 'across' ? grey.at(i, fixed) : grey.at(fixed, i));
    if (ink > 64) {
      sum += (i + 0.5) * ink;
      weight += ink;
    } else if (weight > 0) {
      lines.push(sum / weight / grey.dotsPerMm);
      [sum, weight] = [0, 0];
    }
  }
  return lines;
}
