import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { adjustedPlaces, judge, type PieceJudgement, shownShape } from '../../../src/core/check/index.ts';
import { sketchPiece } from '../../../src/core/cloth/index.ts';
import { guideOf } from '../../../src/core/guide/pieces/index.ts';
import type { PieceKind } from '../../../src/core/job/index.ts';
import {
  type Drawing,
  dxfOf,
  fastenersCsv,
  makePlan,
  pointsCsv,
  svgOf,
} from '../../../src/core/packet/drawing/index.ts';
import { drawing as words } from '../../../src/text/en/drawing.ts';
import { Measured } from '../../core/check/measured.ts';

const PYTHON = '/usr/bin/python3';
const available = spawnSync(PYTHON, ['-c', 'import ezdxf']).status === 0;
const of = { seal: 'ab12', entries: 33, latest: '2026-05-04T09:00:00Z', judged: null };

function measured(kind: PieceKind, job = 'A job') {
  const guide = guideOf(kind);
  if (!guide) throw new Error(`no guide ${kind}`);
  const made = new Measured(guide);
  made.job.add('job.shop', { hem: 30 });
  made.job.add('job.detail', { field: 'name', value: job });
  const sheet = made.job.sheet();
  const { pieces } = judge(sheet);
  const { places } = sketchPiece(sheet, made.piece.id, adjustedPlaces(pieces.get(made.piece.id)));
  const plan = makePlan({ sheet, piece: made.piece.id, places, adjusted: true, bent: false, without: [], of, words });
  if (!plan) throw new Error('nothing to draw');
  const shape = { shapeOf: (id: string) => shapeOf(pieces.get(id)), placesOf: () => places };
  return { sheet, pieces, places, shape, plan, piece: made.piece };
}

const shapeOf = (judgement: PieceJudgement | undefined) => (judgement ? shownShape(judgement, []) : null);

/** What ezdxf, a reader nobody here wrote, finds in a drawing, and the faults its audit names. */
const READER = `
import json, sys, ezdxf
from ezdxf import recover
doc, auditor = recover.readfile(sys.argv[1])
found = []
for e in doc.modelspace():
    kind = e.dxftype()
    item = {'kind': kind, 'layer': e.dxf.layer}
    if kind == 'LWPOLYLINE':
        item['points'] = [[p[0], p[1]] for p in e.get_points()]
        item['closed'] = bool(e.closed)
    elif kind == 'CIRCLE':
        item['at'] = [e.dxf.center.x, e.dxf.center.y]
        item['radius'] = e.dxf.radius
    elif kind == 'POINT':
        item['at'] = list(e.dxf.location)
    elif kind == 'TEXT':
        item['text'] = e.dxf.text
    found.append(item)
print(json.dumps({'errors': [str(e.message) for e in auditor.errors], 'unit': doc.units, 'version': doc.dxfversion,
                  'layers': [l.dxf.name for l in doc.layers], 'entities': found}))
`;

interface Found {
  errors: string[];
  unit: number;
  layers: string[];
  entities: { kind: string; layer: string; points?: number[][]; at?: number[]; text?: string; closed?: boolean }[];
}

function readBack(dxf: string): Found {
  const folder = mkdtempSync(join(tmpdir(), 'tapetrue-dxf-'));
  try {
    writeFileSync(join(folder, 'plan.dxf'), dxf);
    const read = spawnSync(PYTHON, ['-c', READER, join(folder, 'plan.dxf')], { encoding: 'utf8' });
    if (read.status !== 0) throw new Error(read.stderr);
    return JSON.parse(read.stdout) as Found;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const near = (a: readonly number[] | undefined, b: readonly number[]): boolean =>
  a !== undefined && a.length === b.length && a.every((v, i) => Math.abs(v - (b[i] ?? 0)) < 1e-6);

describe.runIf(available)('a drawing read back by ezdxf', () => {
  it.each([
    ['in', 1, 25.4],
    ['mm', 4, 1],
  ] as const)('in %s is without fault, and every line and point lies where it was drawn', (unit, code, per) => {
    const { plan, places, sheet } = measured('open-bow');
    const found = readBack(dxfOf(plan, unit, words.unit(unit)));
    expect(found.errors).toEqual([]);
    expect(found.unit).toBe(code);
    const lines = plan.entities.filter((entity) => entity.type === 'line');
    for (const line of lines) {
      const same = found.entities.find(
        (one) =>
          one.layer === line.layer &&
          one.points?.length === line.points.length &&
          one.points.every((p, i) =>
            near(
              p,
              (line.points[i] ?? []).map((v) => v / per),
            ),
          ),
      );
      expect(same?.closed).toBe(line.closed);
    }
    for (const [id, [x, y, z]] of places) {
      const label = sheet.points.find((point) => point.id === id)?.label;
      const point = found.entities.find(
        (one) => one.layer === 'POINT-3D' && near(one.at, [-y / per, x / per, z / per]),
      );
      expect(point, label).toBeDefined();
    }
    const circles = found.entities.filter(({ kind, layer }) => kind === 'CIRCLE' && layer === 'FASTENER');
    expect(circles).toHaveLength(sheet.fasteners.length);
    expect(found.entities.some(({ text }) => text === words.unit(unit))).toBe(true);
  });

  it('keeps text that would mean something to it, and never a control character', () => {
    const hostile = 'line\none %%c ^J \u202egnp.exe é <script> \u0007';
    const { plan } = measured('open-bow', hostile);
    const found = readBack(dxfOf(plan, 'mm', words.unit('mm')));
    expect(found.errors).toEqual([]);
    const title = found.entities.find(({ text }) => text?.includes('line one'))?.text ?? '';
    expect(title).toContain('é <script>');
    expect(title).not.toMatch(/\p{Cc}|%%|\u202e/u);
  });
});

const texts = (plan: Drawing): string[] => plan.block.map((line) => line);

describe('a drawing', () => {
  it('of a piece that is not flat says so, gives its points in space, and has no allowance to cut by', () => {
    const { plan } = measured('tension-shade');
    expect(texts(plan)).toContain(words.notFlat);
    expect(plan.space.map(({ label }) => label)).toEqual(['A', 'B', 'C', 'D']);
    expect(plan.entities.some(({ layer }) => layer === 'ALLOWANCE')).toBe(false);
  });

  it('keeps the shop’s allowance apart from what was measured, and says how wide it is', () => {
    const { plan, places, sheet } = measured('open-bow');
    const outline = plan.entities.find((entity) => entity.type === 'line' && entity.layer === 'OUTLINE');
    const edge = sheet.runs[0]?.points.map((id) => places.get(id)).map((p) => [-(p?.[1] ?? 0), p?.[0] ?? 0]);
    expect(outline).toMatchObject({ points: edge });
    expect(plan.entities.filter(({ layer }) => layer === 'ALLOWANCE')).toHaveLength(1);
    expect(texts(plan)).toContain(words.allowance('1 3/16"'));
  });

  it('carries job, state and seal, and says that nobody has cleared it', () => {
    const { plan } = measured('open-bow');
    expect(texts(plan)).toEqual(
      expect.arrayContaining([words.notCleared, words.seal('ab12'), words.state('ab12', 33, '2026-05-04 09:00 UTC')]),
    );
    expect(texts(plan)[0]).toContain('A job');
  });

  it('of a piece that hangs is seen from outside, as wide and as high as it is', () => {
    const { plan, sheet } = measured('drop-curtain');
    expect(texts(plan)).toContain(words.seen.astern);
    const corners = plan.entities.find((entity) => entity.type === 'line' && entity.layer === 'OUTLINE');
    const round = corners?.type === 'line' ? corners.points : [];
    const layout = sheet.points.flatMap(({ nominal, role, pieces }) =>
      nominal && role !== 'mark' && pieces.length > 0 ? [nominal] : [],
    );
    const reach = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
    expect(reach(round.map(([x]) => x))).toBeCloseTo(reach(layout.map(([, y]) => y)), -1);
    expect(reach(round.map(([, y]) => y))).toBeCloseTo(reach(layout.map(([, , z]) => z)), -1);
  });

  it('as SVG is as large as the piece: one user unit is one millimetre', () => {
    const { plan } = measured('open-bow');
    const svg = svgOf(plan);
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
    const [, box] = /viewBox="([^"]+)"/.exec(svg) ?? [];
    const [, , w, h] = (box ?? '').split(' ');
    expect([w, h]).toEqual([width, height]);
    const xs = plan.entities.flatMap((entity) => (entity.type === 'line' ? entity.points.map(([x]) => x) : []));
    expect(Number(width)).toBeGreaterThan(Math.max(...xs) - Math.min(...xs));
  });

  it('as SVG shows hostile text as text', () => {
    const { plan } = measured('open-bow', '</text><script>alert(1)</script>\u0000\u202eevil');
    const svg = svgOf(plan);
    expect(svg).not.toContain('<script>');
    expect(svg).toContain('&lt;script&gt;');
    expect(svg).not.toContain('\u0000');
    expect(svg).not.toContain('\u202e');
  });

  it('comes with lists that no spreadsheet computes', () => {
    const { sheet, shape } = measured('open-bow');
    const points = pointsCsv(sheet, shape).split('\r\n');
    const own = sheet.points.filter((point) => point.pieces.length > 0);
    expect(points).toHaveLength(own.length + 2);
    expect(points[1]).toMatch(/^Piece,W1,mark,port aft,/);
    const fasteners = fastenersCsv(sheet, shape).split('\r\n');
    expect(fasteners).toHaveLength(sheet.fasteners.length + 2);
    expect(pointsCsv({ ...sheet, pieces: sheet.pieces.map((p) => ({ ...p, name: '=1+1' })) }, shape)).toContain(
      "'=1+1",
    );
  });
});
