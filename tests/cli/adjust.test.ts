import { describe, expect, it } from 'vitest';
import type { Adjusted } from '../../src/cli/adjust.ts';
import { call } from './world.ts';

const HEAD = 'kind,from,to,reading,sigma,baseline,direction,run,via';
const table = (...rows: string[]): string => `${[HEAD, ...rows].join('\n')}\n`;

async function adjust(text: string, words = '') {
  const { code, out, err } = await call(`adjust dir/file.csv --json${words}`, text);
  const [piece] = (JSON.parse(out) as Adjusted).pieces;
  if (!piece) throw new Error('no piece');
  const point = (label: string) => {
    const found = piece.points.find((one) => one.point === label);
    if (!found) throw new Error(`no point ${label}`);
    return found;
  };
  return { code, err, piece, point, unitError: piece.adjustment?.unitError ?? Number.NaN };
}

/** Rows of a published network, its lengths written in millimetres: the shape does not care what the unit is called. */
const known = (label: string, ...place: number[]): string => `known,${label},,${place.join(' ')} mm`;
const straight = (from: string, to: string, length: number, sigma: number): string =>
  `straight,${from},${to},${length} mm,${sigma} mm`;

/**
 * Collected in F. Krumm, Geodetic Network Adjustment Examples, Stuttgart 2020; read in cepek/sandbox-gama, commit
 * 3af74df8f32b46a207d7cb91390377c2591fbfdc. Lengths are metres (Ghilani: feet) there; they stand as millimetres here,
 * because a table takes no length over 200 m. Printed standard deviations are a posteriori.
 */
describe('published networks, as a table', () => {
  it('G. Strang, K. Borre, Linear Algebra, Geodesy, and GPS, 1997, example 10.1', async () => {
    const rows = [known('1', 170.71, 270.71), known('2', 100, 100), known('3', 241.42, 100), 'flat,*,,'];
    const three = [
      straight('1', 'P', 100.01, 0.01),
      straight('2', 'P', 100.02, 0.01),
      straight('3', 'P', 100.03, 0.01),
    ];
    const { code, piece, point, unitError } = await adjust(table(...rows, ...three));
    expect([code, piece.state, piece.adjustment?.dimension, piece.adjustment?.freedom]).toEqual([0, 'solved', 2, 1]);
    const { x, y, sigma } = point('P');
    expect([x.toFixed(4), y.toFixed(4)]).toEqual(['170.7029', '170.7234']);
    expect(((sigma?.x ?? 0) * unitError).toFixed(4)).toBe('0.0330');
    expect(((sigma?.y ?? 0) * unitError).toFixed(4)).toBe('0.0234');
    expect(unitError).toBeCloseTo(3.302932, 4);
    expect(piece.readings.map(({ residual }) => residual.toFixed(5))).toEqual(['-0.02336', '-0.01652', '-0.01651']);
    expect(piece.readings.map(({ redundancy }) => redundancy.toFixed(4))).toEqual(['0.5000', '0.2500', '0.2499']);
    // One spare cannot say which: the misfit is seen and nobody is singled out.
    expect(piece).toMatchObject({
      adjustment: { doubted: true, globalTest: { verdict: 'fails' } },
      slips: { verdict: 'tied' },
    });
    expect(point('1')).toMatchObject({ state: 'known', x: 170.71, y: 270.71, sigma: { x: 0, y: 0 } });
  });

  it('C. D. Ghilani, Adjustment Computations, 2010, example 14.5', async () => {
    const rows = [known('Bucky', 2411820, 386881.222), known('Badger', 2410000, 390000), 'flat,*,,'];
    const sides = ['side,Wisconsin,,forward port', 'side,Campus,,forward starboard'];
    const lengths = [
      straight('Badger', 'Wisconsin', 5870.302, 0.01),
      straight('Badger', 'Campus', 7297.588, 0.01),
      straight('Wisconsin', 'Campus', 3616.434, 0.01),
      straight('Wisconsin', 'Bucky', 5742.878, 0.01),
      straight('Campus', 'Bucky', 5123.76, 0.01),
    ];
    const { piece, point, unitError } = await adjust(table(...rows, ...sides, ...lengths));
    expect([piece.state, piece.adjustment?.freedom]).toEqual(['solved', 1]);
    const [wisconsin, campus] = [point('Wisconsin'), point('Campus')];
    expect([wisconsin.x.toFixed(4), wisconsin.y.toFixed(4)]).toEqual(['2415776.9044', '391043.2945']);
    expect([campus.x.toFixed(4), campus.y.toFixed(4)]).toEqual(['2416892.6955', '387603.2551']);
    expect(((wisconsin.sigma?.x ?? 0) * unitError).toFixed(5)).toBe('0.14879');
    expect(((campus.sigma?.y ?? 0) * unitError).toFixed(5)).toBe('0.27054');
    expect(unitError).toBeCloseTo(13.590536, 3);
    expect(piece.slips?.verdict).not.toBe('named');
  });

  it('H. Wolf, Ausgleichungsrechnung II, 1979, p. 87, in space: a side row settles the mirror image', async () => {
    const fixed = [
      known('1', 1200, 900, 900),
      known('2', 900, 600, 900),
      known('3', 600, 900, 900),
      known('4', 900, 1200, 900),
    ];
    const lengths = [499.99, 500, 500.01, 500.02].map((length, i) => straight(String(i + 1), 'P', length, 0.01));
    const above = await adjust(table(...fixed, ...lengths, 'side,P,,above'));
    expect([above.code, above.piece.state, above.piece.adjustment?.dimension]).toEqual([0, 'solved', 3]);
    const { x, y, z, sigma } = above.point('P');
    expect([x.toFixed(4), y.toFixed(4)]).toEqual(['900.0167', '899.9833']);
    expect(z).toBeCloseTo(1300.00625, 4);
    const sd = [sigma?.x, sigma?.y, sigma?.z].map((one) => ((one ?? 0) * above.unitError).toFixed(5));
    expect(sd.slice(0, 2)).toEqual(['0.01179', '0.01179']);
    expect(Number(sd[2])).toBeCloseTo(0.00625, 5);
    expect(above.piece.adjustment?.weightedSquare).toBeCloseTo(1, 3);
    const below = await adjust(table(...fixed, ...lengths, 'side,P,,below'));
    expect(below.point('P').z).toBeCloseTo(499.99375, 4);
  });
});

describe('what a table says reaches the engine', () => {
  const SQUARE = ['straight,A,B,40', 'straight,B,C,30', 'straight,C,D,40', 'straight,A,D,30', 'straight,A,C,50'];
  const box = [...SQUARE, 'straight,B,D,50'];

  it('flat for the whole table: two dimensions; without it, three', async () => {
    expect((await adjust(table(...box, 'flat,*,,'))).piece).toMatchObject({
      state: 'solved',
      adjustment: { dimension: 2, freedom: 1 },
    });
    expect((await adjust(table(...box))).piece.adjustment?.dimension).toBe(3);
  });
  it('coordinates, exactly, and nothing of their height in a flat piece', async () => {
    const rows = ['known,A,,100 200 300 mm', 'known,B,,1116 200 900 mm', 'side,C,,port', 'side,D,,port', 'flat,*,,'];
    const { piece, point } = await adjust(table(...rows, ...box));
    expect(piece.state).toBe('solved');
    expect(point('A')).toMatchObject({ state: 'known', x: 100, y: 200, z: 0 });
    expect([point('C').x, point('C').y, point('C').z].map(Math.round)).toEqual([1116, 962, 0]);
  });
  it('on which side of its plane a height lies, which is typed without a sign', async () => {
    const heights = ['height,A,,12,,,below', 'height,B,,12,,,above', 'height,C,,12', 'height,D,,12'];
    const { piece } = await adjust(table(...box, ...heights));
    const observed = new Map(piece.readings.map(({ reading, observed: mm }) => [reading, mm]));
    expect([observed.get('height A'), observed.get('height B'), observed.get('height C')]).toEqual([
      -304.8, 304.8, 304.8,
    ]);
  });
  it('a standard deviation of its own for a reading', async () => {
    const { piece } = await adjust(table(...SQUARE, 'straight,B,D,50,7 mm', 'flat,*,,'));
    expect(piece.readings.find(({ reading }) => reading === 'straight B-D')?.sigma).toBe(7);
    expect(piece.readings.find(({ reading }) => reading === 'straight A-B')?.sigma).toBeCloseTo(1 + 0.3 * 1.016, 9);
  });
  it('two rows of one pair: two takes, read twice', async () => {
    const { piece } = await adjust(table(...box, 'straight,C,A,50 1/16', 'flat,*,,'));
    expect(piece.readings.find(({ reading }) => reading === 'straight A-C')).toMatchObject({
      texts: ['50', '50 1/16'],
      confirmed: true,
    });
  });
  it('what takes no part is said, with the reason', async () => {
    const { piece } = await adjust(table(...box, 'height,A,,12', 'flat,*,,'));
    expect(piece.leftOut).toEqual([{ reading: 'height A', why: 'says nothing in a flat piece' }]);
  });
});

describe('what it answers', () => {
  const BOX = [
    'straight,A,B,40',
    'straight,B,C,30',
    'straight,C,D,40',
    'straight,A,D,30',
    'straight,A,C,50',
    'flat,*,,',
  ];
  const SIDES = ['side,A,,aft', 'side,B,,forward starboard', 'side,C,,forward', 'side,D,,aft port'];
  const CLEAN = table(...BOX, 'straight,B,D,50');

  it('0 and a plain table for a good one', async () => {
    const { code, out, err } = await call('adjust dir/file.csv', CLEAN);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^file: solved\nflat, 1 spare, .* test passes\n\npoint +x +y/);
    expect(out.match(/^[ABCD] .*fixed$/gm)).toHaveLength(4);
    expect(out.match(/^straight .* checked$/gm)).toHaveLength(6);
    expect(out).toMatch(/No stop\.\n$/);
  });
  it('1 where nothing is spare, and the tape that would check it', async () => {
    const { code, piece } = await adjust(table(...BOX, ...SIDES));
    expect([code, piece.state]).toEqual([1, 'solved']);
    expect(piece).toMatchObject({ adjustment: { globalTest: { verdict: 'cannot tell' } } });
    expect(piece.advice?.set).toMatchObject([{ from: 'B', to: 'D' }]);
    expect(piece.advice?.clears).toBe(true);
    expect(piece.readings.map(({ control }) => control)).toEqual(Array(5).fill('unchecked'));
  });
  it('1 where a point floats, and in how many ways', async () => {
    const { code, piece } = await adjust(
      table('straight,A,B,40', 'straight,B,C,30', 'straight,A,C,50', 'straight,A,D,9', 'flat,*,,'),
    );
    expect([code, piece.state, piece.floating]).toEqual([1, 'not-enough-readings', [{ point: 'D', ways: 1 }]]);
  });
  it('1 where two shapes fit, and the tape that tells', async () => {
    const rows = [
      'straight,A,B,80',
      'straight,A,C,40',
      'straight,B,C,50',
      'straight,A,D,55',
      'straight,B,D,45',
      'flat,*,,',
    ];
    const { code, piece } = await adjust(table(...rows));
    expect([code, piece.state]).toEqual([1, 'two-shapes']);
    expect(piece.shapes?.tellsApart[0]).toMatchObject({ from: 'C', to: 'D' });
    expect((await call('adjust dir/file.csv', table(...rows))).out).toMatch(/C-D would tell: [\d.]+ or [\d.]+/);
  });
  it('ranked slips by label, where a reading does not fit', async () => {
    // Five points, every pair taped; A-D is read an inch too long.
    const places = { A: [0, 0], B: [52, 3], C: [61, 44], D: [25, 60], E: [-9, 37] } as const;
    const pairs = Object.entries(places).flatMap(([a, [ax, ay]], i) =>
      Object.entries(places)
        .slice(i + 1)
        .map(
          ([b, [bx, by]]) =>
            [`straight,${a},${b}`, (Math.round(Math.hypot(ax - bx, ay - by) * 16) / 16).toString()] as const,
        ),
    );
    const rows = pairs.map(([pair, text]) => `${pair},${pair === 'straight,A,D' ? text.replace('65', '66') : text}`);
    const { piece } = await adjust(table(...rows, 'flat,*,,'));
    expect(piece.adjustment?.doubted).toBe(true);
    expect(piece.slips?.readAgain[0]).toBe('straight A-D');
    expect(piece.slips?.explanations[0]?.slips).toMatchObject([{ reading: 'straight A-D', value: 65 * 25.4 }]);
    const plain = (await call('adjust dir/file.csv', table(...rows, 'flat,*,,'))).out;
    expect(plain).toMatch(/doubted \(named\); read again: straight A-D/);
  });
  it('nothing to adjust in a table that only asks', async () => {
    expect((await adjust(table('straight,A,B,'))).piece).toMatchObject({ state: 'nothing-to-adjust', points: [] });
  });
  it('packets too, and no identifier in what it prints', async () => {
    const packet = (await call('convert dir/file.csv', CLEAN)).out;
    const slipped = (await call('convert dir/file.csv', CLEAN.replace('40', '400'))).out;
    for (const [text, code] of [
      [packet, 0],
      [slipped, 1],
    ] as const) {
      const answer = await call('adjust -', '', text);
      expect([answer.code, answer.err]).toEqual([code, '']);
      expect(answer.out).not.toMatch(/[0-9a-f]{8}-[0-9a-f]{4}-/);
    }
  });
  it('a file where it is told to', async () => {
    const { out, files } = await call('adjust dir/file.csv --json --out place.json', CLEAN);
    expect(out).toBe('');
    expect(JSON.parse(files.get('place.json') ?? '')).toMatchObject({ unit: 'mm', stop: false });
  });
});
