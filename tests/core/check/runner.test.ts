import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { check, defaultLimits, Finding, RuleKey, rules } from '../../../src/core/check/index.ts';
import { distances, Job, owner, readingId } from './build.ts';

const ROOM = new URL('../../../src/core/check/rules/', import.meta.url);
const POINTS = { A: null, B: null, C: null };
const SIDES = ['A-B', 'B-C', 'A-C'];
const disagreeing = () => {
  const job = new Job().piece({ points: POINTS, readings: SIDES });
  return job.takes({ 'A-B': 3000, 'B-C': 4000, 'A-C': 5000 }).takes({ 'A-B': 3030 });
};
const accept = (job: Job, finding: Finding | undefined) =>
  job.add('finding.accept', { finding: finding?.id, basis: finding?.basis, reason: 'old mark' }, { who: owner });

describe('the list of rules', () => {
  const keys = rules.map((rule) => rule.key);
  it('holds each permanent key once', () => {
    expect([...keys].sort()).toEqual([...RuleKey.options].sort());
  });
  it('has one file and one test for each, named by its key', () => {
    const files = readdirSync(ROOM).map((name) => name.replace(/\.ts$/, ''));
    expect(files.sort()).toEqual([...keys].sort());
    for (const key of keys) expect(existsSync(new URL(`./${key}.test.ts`, import.meta.url)), key).toBe(true);
  });
});

describe('check', () => {
  it('says nothing about a measured job that is sound', () => {
    const job = new Job().piece({ points: POINTS, readings: SIDES });
    expect(job.takes({ 'A-B': 3000, 'B-C': 4000, 'A-C': 5000 }).findings()).toEqual([]);
  });
  it('finds the same thing under the same id and basis, run after run', () => {
    const job = disagreeing();
    expect(job.findings()).toHaveLength(1);
    expect(job.all()).toEqual(check(structuredClone(job.sheet())));
  });
  it('does not change the sheet', () => {
    const sheet = disagreeing().sheet();
    const before = structuredClone(sheet);
    check(sheet);
    expect(sheet).toEqual(before);
  });
  it('gives findings that survive the packet', () => {
    const job = disagreeing().piece({ name: 'second', readings: ['A-B'], questions: [{ slot: 'rain' }] });
    const travelled: unknown = JSON.parse(JSON.stringify(job.findings()));
    expect(z.parse(z.array(Finding), travelled)).toEqual(job.findings());
  });
  it('names a finding by its rule and its sorted subjects', () => {
    for (const finding of disagreeing().findings()) {
      const ids = finding.subjects.map(({ id }) => id).sort();
      expect(finding.id).toBe(`${finding.rule}:${ids.join('+')}`);
    }
  });
  it('does not find a missing value and a wrong value in one place', () => {
    const job = new Job().piece({ points: POINTS, readings: SIDES });
    const findings = job.takes({ 'A-B': 1000, 'B-C': 9000 }).findings();
    expect(findings.map(({ rule }) => rule)).toEqual(['missing-reading']);
  });
  it('goes by the limits it is given', () => {
    const limits = { ...defaultLimits, takeSigmas: 20 };
    expect(disagreeing().findings({ limits })).toEqual([]);
  });
});

describe('accepting a doubt', () => {
  it('holds while nothing under it has changed', () => {
    const job = disagreeing();
    accept(job, job.findings()[0]);
    expect(job.findings()[0]?.accepted).toMatchObject({ reason: 'old mark', who: owner });
  });
  it('survives takes of other readings', () => {
    const job = disagreeing();
    accept(job, job.findings()[0]);
    expect(job.takes({ 'B-C': 4001 }).findings()[0]?.accepted).not.toBeNull();
  });
  it('lapses with another take of the same reading', () => {
    const job = disagreeing();
    accept(job, job.findings()[0]);
    expect(
      job
        .takes({ 'A-B': 3015 })
        .findings()
        .map(({ accepted }) => accepted),
    ).toEqual([null]);
  });
  it('lapses when it is taken back', () => {
    const job = disagreeing();
    job.add('undo', { entry: accept(job, job.findings()[0]) });
    expect(job.findings()[0]?.accepted).toBeNull();
  });
  it('is not possible for a stop', () => {
    const job = new Job().piece({ points: POINTS, readings: SIDES });
    job.takes({ 'A-B': 1000, 'B-C': 1000, 'A-C': 4000 });
    accept(job, job.findings()[0]);
    expect(job.findings()).toMatchObject([{ severity: 'stop', accepted: null }]);
  });
});

describe('one slip, one stop', () => {
  it('says a wrong reading of a well-taped net once, and points at it', () => {
    const net = distances({
      A: [0, 0, 0],
      B: [2000, 0, 0],
      C: [2200, 1500, 0],
      D: [1000, 2100, 0],
      E: [-200, 1400, 0],
    });
    const points = { A: null, B: null, C: null, D: null, E: null };
    const job = new Job().piece({ points, readings: Object.keys(net), boxes: [['A', 'B', 'C', 'E']] });
    const findings = job.takes({ ...net, 'B-E': 5000 }).findings();
    expect(findings).toMatchObject([{ severity: 'stop', numbers: { suspect: readingId('B-E') } }]);
  });
});
