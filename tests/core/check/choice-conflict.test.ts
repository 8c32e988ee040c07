import { describe, expect, it } from 'vitest';
import { choiceConflicts } from '../../../src/core/check/choice-conflicts.ts';
import type { Finding } from '../../../src/core/check/index.ts';
import { declarePiece } from '../../../src/core/guide/index.ts';
import { guideOf, guides } from '../../../src/core/guide/pieces/index.ts';
import type { PieceKind } from '../../../src/core/job/index.ts';
import { findings as sentences } from '../../../src/text/en/findings.ts';
import { Job, uuid } from './build.ts';

const key = 'choice-conflict';
type Answers = Readonly<Record<string, string>>;

/** A piece of a guide with these answers and nothing measured. */
function answered(kind: PieceKind, answers: Answers): Job {
  const guide = guideOf(kind);
  if (!guide) throw new Error(`no guide of ${kind}`);
  let count = 0;
  const job = new Job();
  job.add(
    'piece.add',
    declarePiece(guide, 'Piece', () => uuid(`${kind} ${count++}`)),
  );
  return answer(job, kind, answers);
}

function answer(job: Job, kind: PieceKind, answers: Answers): Job {
  const piece = job.sheet().pieces.find((one) => one.kind === kind)?.id ?? '';
  for (const [slot, choice] of Object.entries(answers)) job.add('question.answer', { piece, slot, choice, text: '' });
  return job;
}

const said = (job: Job): unknown[] =>
  job.of(key).map(({ severity, slot, numbers }) => [severity, slot, numbers.conflict]);

/** What goes well together: nobody is bothered. */
const QUIET: readonly [PieceKind, Answers][] = [
  ['tension-shade', {}],
  ['tension-shade', { holders: 'through-bolted', rain: 'taken-down', cloth: 'coated', speed: 'slow', wind: 'breeze' }],
  ['tension-shade', { holders: 'to-be-fitted', rain: 'taken-down', cloth: 'mesh', speed: 'at-rest' }],
  ['tension-shade', { rain: 'stays-up', cloth: 'mesh', poles: 'sticks' }],
  ['tension-shade', { rain: 'could-not-tell', speed: 'could-not-tell', holders: 'could-not-tell' }],
  ['open-bow', { berth: 'water', cleats: 'outside', rain: 'stays-on', cloth: 'breathable' }],
  ['open-bow', { berth: 'water', cleats: 'cut-outs', rain: 'taken-off', cloth: 'coated', vents: 'none' }],
  ['open-bow', { berth: 'lift', cleats: 'under-cover' }],
  ['open-bow', { berth: 'trailer', cleats: 'under-cover', rain: 'stays-on', cloth: 'coated', vents: 'wanted' }],
  ['open-bow', { rain: 'stays-on', cloth: 'coated' }],
  ['open-bow', { rain: 'stays-on', cloth: 'coated', vents: 'shop-decides' }],
  ['open-bow', { rain: 'taken-off', cloth: 'mesh' }],
];

const LOUD: readonly [PieceKind, Answers, [Finding['severity'], string, string]][] = [
  ['tension-shade', { holders: 'screwed' }, ['doubt', 'holders', 'holders-screwed']],
  ['tension-shade', { poles: 'not-yet' }, ['doubt', 'poles', 'no-poles']],
  ['tension-shade', { rain: 'stays-up' }, ['doubt', 'rain', 'shade-in-rain']],
  ['tension-shade', { rain: 'stays-up', cloth: 'coated' }, ['doubt', 'rain', 'shade-in-rain']],
  ['tension-shade', { speed: 'faster' }, ['doubt', 'speed', 'shade-at-speed']],
  ['tension-shade', { wind: 'strong' }, ['doubt', 'wind', 'shade-in-wind']],
  ['open-bow', { berth: 'water', cleats: 'under-cover' }, ['doubt', 'cleats', 'cleats-covered']],
  ['open-bow', { rain: 'stays-on', cloth: 'coated', vents: 'none' }, ['doubt', 'vents', 'coated-unvented']],
  ['open-bow', { rain: 'stays-on', cloth: 'mesh' }, ['note', 'cloth', 'mesh-in-rain']],
];

describe(key, () => {
  it.each(QUIET)('says nothing of a %s with %j', (kind, answers) => {
    expect(said(answered(kind, answers))).toEqual([]);
  });

  it.each(LOUD)('of a %s with %j', (kind, answers, expected) => {
    expect(said(answered(kind, answers))).toEqual([expected]);
  });

  it('does not mix the answers of one piece with those of another', () => {
    const job = answered('open-bow', { berth: 'lift', cleats: 'under-cover' });
    let count = 0;
    const shade = guideOf('tension-shade');
    if (shade)
      job.add(
        'piece.add',
        declarePiece(shade, 'Shade', () => uuid(`beside ${count++}`)),
      );
    expect(said(answer(job, 'tension-shade', { berth: 'water' }))).toEqual([]);
  });

  it('is taken on with a reason, until an answer changes', () => {
    const job = answered('tension-shade', { rain: 'stays-up' });
    const [finding] = job.of(key);
    job.add('finding.accept', { finding: finding?.id ?? '', basis: finding?.basis ?? '', reason: 'it is pitched' });
    expect(job.of(key)[0]?.accepted?.reason).toBe('it is pitched');
    answer(job, 'tension-shade', { rain: 'taken-down' });
    expect(job.of(key)).toEqual([]);
  });

  describe('the table', () => {
    it('has a sentence for every key, and each key once', () => {
      const keys = choiceConflicts.map((conflict) => conflict.key);
      expect(new Set(keys).size).toBe(keys.length);
      for (const conflict of keys) {
        const text = sentences[key]({ names: ['port cleat'], show: () => '', numbers: { conflict } });
        expect(text).toMatch(/^.{20,}[.?]$/);
      }
    });

    it('names no question and no choice that no guide has', () => {
      const choices = new Map<string, Set<string>>();
      for (const { walk } of guides)
        for (const step of walk)
          if (step.on === 'question')
            choices.set(step.slot, new Set([...(choices.get(step.slot) ?? []), ...step.choices]));
      for (const { asked, unless } of choiceConflicts)
        for (const [slot, is] of [...Object.entries(asked), ...Object.entries(unless ?? {})])
          for (const choice of is) expect([...(choices.get(slot) ?? [])]).toContain(choice);
    });

    it('has no two rows for the same questions of one kind, whose findings would be one', () => {
      const same = choiceConflicts.map(({ asked, kinds }) => `${Object.keys(asked).sort()} ${kinds ?? ''}`);
      expect(new Set(same).size).toBe(same.length);
    });
  });
});
