import { expect, it } from 'vitest';
import { deepFreeze } from '../../fixtures';
import { type SERVICES, type Situation, triggersQuestion } from '../fixtures';
import { judgeTriggers } from '../judge-triggers';
import type { TriggerVerdict } from '../model';

/** For tests only: what the triggers say of one card in one situation; each row is read as a sentence. */

export type Said = 'nothing' | { now: string } | { late: string } | { notHere: string } | { tooLate: string };
export type Row = [
  sentence: string,
  service: keyof typeof SERVICES,
  card: string,
  situation: Situation,
  said: Said,
];

export function checkRows(rows: readonly Row[]): void {
  it.each(rows)('%s (Service %s, %s)', (_sentence, service, cardId, situation, said) => {
    const verdicts = judgeTriggers(deepFreeze(triggersQuestion(service, situation)));
    expect(saidOf(verdicts.find((each) => each.cardId === cardId))).toEqual(said);
  });
  it('has rows that call and rows that do not', () => {
    const calls = rows.filter((row) => row[4] !== 'nothing').length;
    expect(calls).toBeGreaterThan(2);
    expect(rows.length - calls).toBeGreaterThan(2);
  });
}

function saidOf(verdict: TriggerVerdict | undefined): Said {
  if (verdict === undefined) return 'nothing';
  const words = verdict.reasons.map((reason) => reason.words);
  if (!verdict.doableHere) {
    expect(verdict.verdict).toBe('leave');
    expect(words[0]).toContain('cannot be done at this service');
    const chance = (words[0] ?? '').replace('cannot be done at this service, ', '');
    return verdict.overdue ? { tooLate: words.slice(1).join('; ') } : { notHere: chance };
  }
  expect(verdict.verdict).toBe('doNow');
  return verdict.overdue ? { late: words.join('; ') } : { now: words.join('; ') };
}
