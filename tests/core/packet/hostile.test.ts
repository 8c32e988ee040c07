import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { judge, shownPlaces, shownShape } from '../../../src/core/check/index.ts';
import { sketchPiece } from '../../../src/core/cloth/index.ts';
import { fold } from '../../../src/core/job/index.ts';
import { parseCsv } from '../../../src/core/packet/csv.ts';
import {
  type Drawing,
  type DrawingWords,
  dxfOf,
  fastenersCsv,
  fittingsCsv,
  makePlan,
  pointsCsv,
  scaledPlan,
  svgOf,
  tilePages,
  tilesFor,
} from '../../../src/core/packet/drawing/index.ts';
import { buildPacket, packetFileName, readPacket, writeTable } from '../../../src/core/packet/index.ts';
import { drawing as english, tiles as tileWords } from '../../../src/text/en/drawing.ts';
import { isolated, isolating } from '../../../src/text/isolated.ts';
import { HOSTILE, hostileJob } from './hostile.ts';
import { MADE, noFindings } from './sample.ts';

// Counted in texts, not in seconds.
vi.setConfig({ testTimeout: 60_000 });

function filesOf(text: string, words: DrawingWords = english) {
  const { entries, piece } = hostileJob(text);
  const sheet = fold(entries);
  const { findings, pieces } = judge(sheet);
  const shapeOf = (id: string) => {
    const judgement = pieces.get(id);
    return judgement ? shownShape(judgement, findings) : null;
  };
  const placesOf = (id: string) => sketchPiece(sheet, id, shownPlaces(shapeOf(id))).places;
  const shape = { shapeOf, placesOf };
  const of = { seal: 'ab12', entries: entries.length, latest: '2026-05-04T09:00:00Z', judged: null };
  const plan = makePlan({
    sheet,
    piece,
    places: placesOf(piece),
    adjusted: false,
    bent: false,
    without: [text],
    of,
    words,
  });
  if (!plan) throw new Error('nothing to draw');
  return {
    svg: svgOf(plan),
    dxf: dxfOf(plan, 'mm', words.unit('mm')),
    tiles: tilesOf(plan),
    scaled: scaledPlan(plan, { width: 190, height: 175 }, words, String).svg,
    tables: [pointsCsv(sheet, shape), fastenersCsv(sheet, shape), fittingsCsv(sheet), writeTable(sheet)],
    name: packetFileName(sheet, MADE),
  };
}

/** In real size, as if the piece were flat and its shape known. */
function tilesOf(plan: Drawing): string[] {
  const flat = { ...plan, flat: true, adjusted: true };
  const offer = tilesFor(flat, 'a4');
  return offer.ok ? tilePages(flat, offer.tiling, tileWords).map(({ svg }) => svg) : [];
}

/** What a spreadsheet makes of a cell it was not told is text. */
const COMPUTES = /^[=+\-@\t\r\n]/;
const NUMBER = /^[+-]?\d+(\.\d+)?$/;

function harmless(text: string): void {
  const { svg, tables, name, dxf } = filesOf(text);
  const tags = [...svg.matchAll(/<\/?([A-Za-z!]+)/g)].map(([, tag]) => tag);
  expect(new Set(tags)).toEqual(
    new Set(['svg', ...tags.filter((tag) => /^(text|circle|path|poly(gon|line)|g|line)$/.test(tag ?? ''))]),
  );
  expect(svg.replaceAll('\n', '')).not.toMatch(/\p{Cc}|\p{Surrogate}|\u202e/u);
  expect(dxf.replaceAll(/\r?\n/g, '')).not.toMatch(/\p{Cc}|\p{Surrogate}/u);
  for (const table of tables)
    for (const { cells, fault } of parseCsv(table, ',')) {
      expect(fault).toBeNull();
      for (const cell of cells) expect(cell.length).toBeLessThan(5000);
    }
  // As a spreadsheet reads it: quotes taken off, nothing else.
  for (const table of tables) for (const cell of rawCells(table)) if (COMPUTES.test(cell)) expect(cell).toMatch(NUMBER);
  expect(name).toMatch(/^[^\p{Cc}<>:"/\\|?*\u202e]{1,255}$/u);
}

/** Cells by RFC 4180 alone. */
function rawCells(csv: string): string[] {
  return [...csv.matchAll(/("(?:[^"]|"")*"|[^",\r\n]*)(,|\r\n|$)/g)].map(([, cell = '']) =>
    cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell,
  );
}

describe('a packet with hostile text in every field', () => {
  it.each(HOSTILE.map((text) => [text.slice(0, 24), text] as const))(
    '%j is taken in, told apart, and says the same twice',
    (_, text) => {
      const { entries, photos } = hostileJob(text);
      const packet = buildPacket({ entries, made: MADE, photos, check: noFindings });
      const read = readPacket(JSON.parse(JSON.stringify(packet)), { check: noFindings });
      expect(read.ok).toBe(true);
      const sheet = fold(entries);
      expect(sheet.carried.map(({ why }) => why).sort()).toEqual(['unknown-kind', 'unreadable']);
      expect(sheet.pieces).toHaveLength(1);
    },
  );

  it.each(HOSTILE.map((text) => [text.slice(0, 24), text] as const))('%j runs in no file it goes into', (_, text) =>
    harmless(text),
  );

  it('nor does any mixture of them', () => {
    const part = fc.oneof(fc.constantFrom(...HOSTILE.map((text) => text.slice(0, 60))), fc.string({ unit: 'binary' }));
    const mixed = fc.array(part, { minLength: 1, maxLength: 4 }).map((parts) => parts.join('') || 'x');
    fc.assert(fc.property(mixed, harmless), { numRuns: 60 });
  });
});

/** Marks that the screen puts round what was typed, and those like them. */
const ISOLATES = /[\u2066-\u2069]/;
const TURNED = [
  'דנה',
  'قارب',
  'A דנה B',
  'דנה (1)',
  'x\u2067y',
  '\u2068דנה',
  'a\u2069\u2069b',
  '\u202eevil',
  '\u200fדנה',
];

describe('the marks by which the screen keeps a name from turning its sentence', () => {
  it.each(TURNED)('are put round %j on the screen and stand in no drawing', (text) => {
    expect(isolated('דנה')).toMatch(ISOLATES);
    const told = filesOf(text, isolating(english));
    // The same to the letter as with words that put nothing round a name: no mark, and no blank where one was.
    expect(told).toEqual(filesOf(text));
    for (const file of [told.svg, told.dxf, told.scaled, ...told.tiles]) expect(file).not.toMatch(ISOLATES);
    expect(told.tiles.length).toBeGreaterThan(1);
    expect(told.dxf).not.toMatch(/\\U\+206[6-9]/);
    expect(told.name).not.toMatch(ISOLATES);
  });

  it('and none is added to a table, in which what was typed stays as it was', () => {
    for (const text of TURNED) {
      const { tables } = filesOf(text);
      const cells = tables.flatMap((table) => parseCsv(table, ',').flatMap((record) => record.cells));
      expect(cells).toContain(text);
      const marks = (of: string): number => of.match(/[\u2066-\u2069]/g)?.length ?? 0;
      for (const cell of cells) expect(marks(cell)).toBe(marks(text) * (cell.split(text).length - 1));
    }
  });

  it('whatever the name', () => {
    const sign = fc.constantFrom('א', 'ب', 'a', '1', ' ', '\u2066', '\u2067', '\u2068', '\u2069', '\u202b', '(', '-');
    fc.assert(
      fc.property(fc.string({ unit: sign, minLength: 1, maxLength: 8 }), (text) => {
        expect(filesOf(text, isolating(english))).toEqual(filesOf(text));
      }),
      { numRuns: 40 },
    );
  });
});

const PYTHON = '/usr/bin/python3';
const available = spawnSync(PYTHON, ['-c', 'import ezdxf']).status === 0;
const AUDIT = `
import sys, xml.dom.minidom
from ezdxf import recover
for name in sys.argv[1:]:
    if name.endswith('.svg'):
        xml.dom.minidom.parse(name)
    else:
        doc, auditor = recover.readfile(name)
        print(len(auditor.errors), len(doc.modelspace()))
`;

describe.runIf(available)('programs nobody here wrote', () => {
  it('read every such drawing without fault', () => {
    const folder = mkdtempSync(join(tmpdir(), 'tapetrue-hostile-'));
    try {
      const paths = HOSTILE.flatMap((text, at) => {
        const { svg, dxf } = filesOf(text);
        const [one, other] = [join(folder, `${at}.svg`), join(folder, `${at}.dxf`)];
        writeFileSync(one, svg);
        writeFileSync(other, dxf);
        return [one, other];
      });
      const read = spawnSync(PYTHON, ['-c', AUDIT, ...paths], { encoding: 'utf8' });
      expect(read.stderr).toBe('');
      const found = read.stdout.trim().split('\n');
      expect(found).toHaveLength(HOSTILE.length);
      for (const line of found) expect(line).toMatch(/^0 [1-9]/);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
