import { fullStarterCards, type JobCard } from '@halfshaft/lifing';
import { emptyState, taskOf } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { paperLayout } from './paper-layout';
import { type PersonShare, rowsWithSameLooks, type SheetRow } from './sheet-rows';

const CARDS = fullStarterCards('four', 'gravel');

function rowOf(id: string): SheetRow {
  const card = CARDS.find((each): each is JobCard => each.id === `starter:${id}`) ?? null;
  const source = { kind: 'card' as const, cardId: id };
  const task = taskOf(emptyState, { entryId: 'e', serviceId: 'B', source }, null);
  const work = { reason: '', lastRead: new Map(), seconds: 60, people: 1, mustDo: true, fallsDue: true };
  return { number: id, title: id, task, card, planned: null, ...work };
}

const share = (personId: string, ...ids: string[]): PersonShare => ({
  personId,
  seconds: 60,
  work: ids.map(rowOf),
  steps: [],
});
const widths = (...shares: PersonShare[]) => paperLayout(shares, rowsWithSameLooks(shares)).columns;

describe('paperLayout', () => {
  it('gives the wider column to the wordier jobs, within bounds', () => {
    const [wordy, brief] = [share('mia', 'front-left-corner', 'engine-bay'), share('kai', 'oil-level')];
    expect(widths(wordy, brief)).toBe('1.54fr 1fr');
    expect(widths(brief, wordy)).toBe('0.65fr 1fr');
    expect(widths(share('mia', 'walk-round'), share('kai', 'walk-round'))).toBe('1.00fr 1fr');
  });

  it('does not count looks that stand in another row already', () => {
    const shares = [share('mia', 'front-left-corner'), share('kai', 'front-right-corner')];
    expect([...rowsWithSameLooks(shares)].map(([row, first]) => [row.number, first])).toEqual([
      ['front-right-corner', 'front-left-corner'],
    ]);
    expect(widths(...shares)).toBe('1.54fr 1fr');
    expect(paperLayout(shares, new Map()).columns).toBe('1.00fr 1fr');
  });

  it('prints smaller where there is much to say', () => {
    const all = CARDS.map(({ id }) => id.replace('starter:', ''));
    const isDense = (...ids: string[]) => paperLayout([share('mia', ...ids)], new Map()).isDense;
    expect([isDense('oil-level', 'walk-round'), isDense(...all)]).toEqual([false, true]);
  });

  it('leaves one person, and more than two, as they are', () => {
    expect(widths(share('mia', 'oil-level'))).toBeUndefined();
    expect(widths(...['mia', 'kai', 'jo'].map((name) => share(name, 'oil-level')))).toBeUndefined();
  });
});
