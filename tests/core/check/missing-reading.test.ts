import { describe, expect, it } from 'vitest';
import { Job, readingId } from './build.ts';

const key = 'missing-reading';
const job = () => new Job().piece({ points: { A: null, B: null }, readings: ['A-B'] });

describe(key, () => {
  it('says nothing about a reading that has a value', () => {
    expect(job().takes({ 'A-B': 1000 }).of(key)).toEqual([]);
  });
  it('says nothing once it is answered without a value', () => {
    const answered = job();
    answered.add('reading.answer', { reading: readingId('A-B'), answer: 'none-here', reason: '' });
    expect(answered.of(key)).toEqual([]);
  });
  it('says nothing about a declared fact', () => {
    expect(new Job().piece({ points: { A: null }, readings: [{ name: 'A', kind: 'flat' }] }).of(key)).toEqual([]);
  });
  it('says nothing about an empty job', () => {
    expect(new Job().findings()).toEqual([]);
  });
  it('says nothing about the place of a planned fastener beyond a note', () => {
    const planned = new Job().piece({ points: { A: null, B: null }, runs: [{ name: 'edge', points: ['A', 'B'] }] });
    planned.fasteners('edge', [null], { presence: 'planned' });
    expect(planned.of(key).map((finding) => finding.severity)).toEqual(['note']);
  });
  it('notes an open reading that was only wished for', () => {
    const wished = new Job().piece({ points: { A: null, B: null }, readings: [{ name: 'A-B', needed: false }] });
    expect(wished.of(key)).toMatchObject([{ severity: 'note' }]);
  });
  it('stops at an open reading the cloth depends on, at its own step', () => {
    expect(job().of(key)).toMatchObject([
      { id: `${key}:${readingId('A-B')}`, severity: 'stop', slot: 'A-B', numbers: { kind: 'straight' }, basis: '' },
    ]);
  });
  it('stops again when the only take is struck out', () => {
    const struck = job();
    const take = struck.take('A-B', 1000);
    struck.add('take.strike', { take, reason: 'slack' });
    expect(struck.of(key)).toMatchObject([{ severity: 'stop' }]);
  });
  it('sends a fastener without a place to the step of its run', () => {
    const there = new Job().piece({ points: { A: null, B: null }, runs: [{ name: 'edge', points: ['A', 'B'] }] });
    expect(there.fasteners('edge', [null]).of(key)).toMatchObject([{ severity: 'stop', slot: 'edge' }]);
  });
});
