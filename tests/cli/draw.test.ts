import { describe, expect, it } from 'vitest';
import { check } from '../../src/core/check/index.ts';
import { buildPacket } from '../../src/core/packet/index.ts';
import { MADE, Scribe, triangle } from '../core/packet/sample.ts';
import { call } from './world.ts';

const FLAT = [
  'kind,from,to,reading,piece',
  'straight,A,B,30,lid',
  'straight,B,C,40,lid',
  'straight,C,D,30,lid',
  'straight,A,D,40,lid',
  'straight,A,C,50,lid',
  'straight,B,D,50,lid',
  'flat,*,,,lid',
  '',
].join('\n');
const TWO = `${FLAT}straight,E,F,10,other\n`;

/** How many places a DXF holds in space. */
const placesIn3d = (dxf: string): number => dxf.replaceAll('\r', '').match(/\n *0\nPOINT\n/g)?.length ?? 0;

describe('draw', () => {
  it('writes a piece in real size as SVG', async () => {
    const { code, out, err } = await call('draw dir/file.csv', FLAT);
    expect([code, err]).toEqual([0, '']);
    const [, width = '0'] = /width="([\d.]+)mm"/.exec(out) ?? [];
    expect(Number(width)).toBeGreaterThan(30 * 25.4);
    expect(out).toContain('NOT CLEARED TO CUT');
  });

  it('writes DXF to a file, in inches unless told otherwise', async () => {
    const { code, files } = await call('draw dir/file.csv --as dxf --out lid.dxf', FLAT);
    expect(code).toBe(0);
    const text = files.get('lid.dxf') ?? '';
    expect(text).toContain('Unit of this drawing: inches');
    expect(text.trimEnd().endsWith('EOF')).toBe(true);
  });

  it('marks a shape that contradictions bend, and writes none of its places down', async () => {
    const bent = FLAT.replace('A,C,50', 'A,C,56');
    const says = 'NOT TO BE USED: readings contradict each other';
    expect((await call('draw dir/file.csv', FLAT)).out).not.toContain('NOT TO BE USED');
    expect((await call('draw dir/file.csv', bent)).out).toContain(says);
    const dxf = (await call('draw dir/file.csv --as dxf', bent)).out;
    expect(dxf).toContain(says);
    expect([placesIn3d(dxf), placesIn3d((await call('draw dir/file.csv --as dxf', FLAT)).out)]).toEqual([0, 4]);
    const rows = (await call('draw dir/file.csv --as points', bent)).out.split('\r\n').slice(1, -1);
    expect(rows).toHaveLength(4);
    for (const row of rows)
      expect(row).toMatch(/^lid,[A-D],[^,]*,,,,,,not to be used: readings contradict each other$/);
    const { files } = await call('draw dir/file.csv --as tiles --out lid.svg', bent);
    expect(files.size).toBeGreaterThan(1);
    for (const text of files.values()) expect(text).toContain(says);
    expect((await call('adjust dir/file.csv', bent)).out).toContain('NOT TO BE USED');
    expect((await call('adjust dir/file.csv', FLAT)).out).not.toContain('NOT TO BE USED');
  });

  it('leaves out of every file the one reading that does not fit, and says so', async () => {
    const five = `${FLAT}straight,A,E,25,lid\nstraight,B,E,25,lid\nstraight,C,E,25,lid\nstraight,D,E,25,lid\n`;
    const wrong = five.replace('A,E,25', 'A,E,29');
    expect((await call('draw dir/file.csv', wrong)).out).toContain('Drawn without straight A-E');
    expect((await call('draw dir/file.csv', five)).out).not.toContain('Drawn without');
    const rows = (await call('draw dir/file.csv --as points', wrong)).out.split('\r\n').slice(1, -1);
    const [a = [], , c = []] = rows.map((row) => row.split(',').slice(4, 7).map(Number));
    expect(Math.hypot(...a.map((x, axis) => x - (c[axis] ?? 0)))).toBeCloseTo(50 * 25.4, 0);
  });

  it('lists points and fasteners', async () => {
    const { out } = await call('draw dir/file.csv --as points', FLAT);
    expect(out.split('\r\n').filter((line) => line.startsWith('lid,'))).toHaveLength(4);
    expect((await call('draw dir/file.csv --as fasteners', FLAT)).out).toMatch(/^piece,edge,number/);
  });

  it('lists what was noted at the fitting, out of a packet', async () => {
    const scribe = new Scribe();
    scribe.add('job.open', { name: 'A job', system: 'imperial', fraction: 16 });
    const piece = triangle(scribe.newId);
    scribe.add('piece.add', piece);
    scribe.add('fitting.note', { piece: piece.id, where: null, change: -10, text: '-10 mm', why: '=slack' });
    const packet = JSON.stringify(
      buildPacket({ entries: scribe.entries, made: MADE, photos: [], check: (sheet) => check(sheet) }),
    );
    const { code, out } = await call('draw - --as fittings', '', packet);
    expect(code).toBe(0);
    expect(out.split('\r\n')[0]).toBe('piece,on,place,change mm,change,why,from boat,noted by,role,at');
    expect(out.split('\r\n')[1]).toContain(",piece,,-10,'-10 mm,'=slack,,");
    expect((await call('draw dir/file.csv --as fittings', FLAT)).out.split('\r\n')).toHaveLength(2);
  });

  it('writes a flat piece in real size on sheets, an SVG of the very size of the paper each', async () => {
    const { code, err, files } = await call('draw dir/file.csv --as tiles --paper a4 --out lid.svg', FLAT);
    expect([code, err]).toEqual([0, '']);
    // 40 by 30 in between marks that are 178 by 234 mm apart upright, or 265 by 147 lying.
    expect(files.size).toBe(1 + 24);
    expect([...files.keys()].slice(0, 3)).toEqual(['lid-map.svg', 'lid-A1.svg', 'lid-A2.svg']);
    for (const text of files.values()) {
      expect(text).toMatch(/^<svg [^>]*width="(210mm" height="296.5mm"|297mm" height="209.5mm")/);
      expect(text).toContain('NOT CLEARED TO CUT');
      expect(text).toContain('100 mm on a true print');
    }
  });

  it('does not put a piece that is not flat on sheets, and says why', async () => {
    const bent = FLAT.split('\n').slice(0, -2).join('\n');
    const made = await call('draw dir/file.csv --as tiles --out lid', bent);
    expect(made).toMatchObject({ code: 2, err: expect.stringContaining('not flat') });
    expect(made.files.size).toBe(0);
  });

  it('wants to know where many sheets go, and on which paper', async () => {
    expect((await call('draw dir/file.csv --as tiles', FLAT)).err).toContain('--out');
    expect((await call('draw dir/file.csv --as tiles --out lid --paper a3', FLAT)).err).toContain('a4 or letter');
  });

  it('asks which piece where there is more than one', async () => {
    expect(await call('draw dir/file.csv', TWO)).toMatchObject({
      code: 2,
      err: 'Say which piece with --piece: lid, other.\n',
    });
    expect((await call('draw dir/file.csv --piece lid', TWO)).code).toBe(0);
    expect((await call('draw dir/file.csv --piece lad', TWO)).code).toBe(2);
  });

  it('knows its own forms only', async () => {
    expect(await call('draw dir/file.csv --as pdf', FLAT)).toMatchObject({ code: 2, out: '' });
  });
});
