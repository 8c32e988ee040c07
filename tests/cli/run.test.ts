import { describe, expect, it } from 'vitest';
import { samplePacket } from '../core/packet/sample.ts';
import { call } from './world.ts';

const TABLE = 'kind,from,to,reading,note\nstraight,A,B,30,\nstraight,B,C,40,\nstraight,A,C,50,\n';
/** A flat box with both diagonals: every reading is checked by the others. */
const CHECKED = `${TABLE}straight,C,D,30,\nstraight,A,D,40,\nstraight,B,D,50,\nflat,*,,,\n`;
const SLIPPED = TABLE.replace('50', '500');

describe('check', () => {
  it('finds no stop in a good table', async () => {
    expect(await call('check dir/file.csv', CHECKED)).toMatchObject({ code: 0, err: '' });
  });

  it('answers 1 to a triangle, which fits whatever was read', async () => {
    const { code, out } = await call('check dir/file.csv', TABLE);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject(Array(3).fill({ rule: 'reading-unchecked', severity: 'stop' }));
  });

  it('prints findings as JSON, with the labels of what they speak of, and answers 1 on a stop', async () => {
    const { code, out, err } = await call('check dir/file.csv', SLIPPED);
    expect([code, err]).toEqual([1, '']);
    expect(JSON.parse(out)).toMatchObject([
      {
        rule: 'impossible-triangle',
        severity: 'stop',
        subjects: expect.arrayContaining([{ on: 'reading', id: expect.anything(), label: 'straight A-C' }]),
      },
    ]);
  });

  it('reads packets too, and the standard input', async () => {
    const packet = (await call('convert dir/file.csv', CHECKED)).out;
    expect(await call('check -', '', packet)).toMatchObject({ code: 0, err: '' });
    const slipped = (await call('convert dir/file.csv', SLIPPED)).out;
    expect(await call('check -', '', slipped)).toMatchObject({ code: 1, err: '' });
  });

  it.each([
    ['a damaged packet', JSON.stringify(samplePacket()).replace('Grey', 'Gray'), /damaged.*seal/],
    ['half a packet', JSON.stringify(samplePacket()).slice(0, 900), /damaged/],
    ['other JSON', '{}', /not a packet/],
    ['a letter', 'Dear all,', /neither a packet nor a readings table/],
    [
      'a bad row',
      `${TABLE}straight,A,D,far,\n`,
      /^Line 5: the cell cannot be read \(column reading; not-a-length\)\.\n1 of 4 rows were refused/,
    ],
  ])('answers 2 and a sentence to %s', async (_, text, sentence) => {
    const { code, out, err } = await call('check dir/file.csv', text);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(sentence);
  });
});

describe('convert', () => {
  it('makes a packet that check reads', async () => {
    const { code, out, err } = await call('convert dir/file.csv', SLIPPED);
    expect([code, err]).toEqual([0, '']);
    expect(await call('check -', '', out)).toMatchObject({ code: 1 });
  });

  it('is the same each time, ids and clock apart', async () => {
    const first = await call('convert dir/file.csv', TABLE);
    expect(await call('convert dir/file.csv', TABLE)).toEqual(first);
  });

  it('names the job after its file or as told, and takes the unit it is told', async () => {
    const sheet = async (words: string) => JSON.parse((await call(words, TABLE)).out).sheet;
    expect(await sheet('convert dir/file.csv')).toMatchObject({
      details: { name: 'file' },
      system: 'imperial',
      readings: [{ value: 762 }, {}, {}],
    });
    expect(await sheet('convert --name Lid --units mm dir/file.csv')).toMatchObject({
      details: { name: 'Lid' },
      system: 'metric',
      readings: [{ value: 30 }, {}, {}],
    });
  });

  it('writes a file when told where', async () => {
    const { out, files } = await call('convert dir/file.csv --out job.json', TABLE);
    expect(out).toBe('');
    expect(JSON.parse(files.get('job.json') ?? '')).toMatchObject({ format: 'tapetrue-packet' });
  });

  it('takes the good rows when told to, and still names the others', async () => {
    const { code, out, err } = await call('convert dir/file.csv --keep-good', `${TABLE}straight,A,D,far,\n`);
    expect(code).toBe(0);
    expect(err).toMatch(/^Line 5: /);
    expect(JSON.parse(out).sheet.readings).toHaveLength(3);
  });

  it('leaves a packet alone', async () => {
    expect(await call('convert dir/file.csv', JSON.stringify(samplePacket()))).toMatchObject({ code: 2, out: '' });
  });
});

describe('table', () => {
  it('prints the readings of a packet', async () => {
    const packet = (await call('convert dir/file.csv', TABLE)).out;
    expect(await call('table -', '', packet)).toMatchObject({
      code: 0,
      err: '',
      out: [
        'kind,from,to,reading,note,piece,via,baseline,run,sequence,sigma,direction',
        'straight,A,B,30 in,,file,,,,,,',
        'straight,B,C,40 in,,file,,,,,,',
        'straight,A,C,50 in,,file,,,,,,',
        '',
      ].join('\r\n'),
    });
  });
});

describe('the call itself', () => {
  it('prints its usage when asked', async () => {
    for (const words of ['--help', 'check -h']) {
      const { code, out, err } = await call(words, '');
      expect([code, out.slice(0, 6), err]).toEqual([0, 'Usage:', '']);
    }
  });

  it.each([
    ['', 'There is no command'],
    ['measure x', 'There is no command measure'],
    ['check', 'check needs a file'],
    ['check a b', 'check takes one file'],
    ['check a --loud', '--loud'],
    ['check a --json', 'check does not take --json'],
    ['convert a --units ft', '--units is in or mm'],
    ['check nowhere.json', 'no such file nowhere.json'],
  ])('answers 2 to "%s"', async (words, sentence) => {
    const { code, out, err } = await call(words, '');
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(sentence);
  });
});
