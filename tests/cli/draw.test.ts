import { describe, expect, it } from 'vitest';
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

  it('lists points and fasteners', async () => {
    const { out } = await call('draw dir/file.csv --as points', FLAT);
    expect(out.split('\r\n').filter((line) => line.startsWith('lid,'))).toHaveLength(4);
    expect((await call('draw dir/file.csv --as fasteners', FLAT)).out).toMatch(/^piece,edge,number/);
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
