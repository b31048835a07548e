import { fullStarterCards } from '@halfshaft/lifing';
import { emptyState, taskOf } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import type { JudgedCard } from '../service/judge-visit';
import { queueLooks } from './queue-list';

const CARDS = fullStarterCards('four', 'gravel');

function due(verdict: 'doNow' | 'leave'): JudgedCard[] {
  return CARDS.map((card) => ({
    card,
    judged: { cardId: card.id, verdict, doableHere: true, overdue: false, reasons: [] },
    lastDone: null,
    lastRead: new Map(),
    task: taskOf(
      emptyState,
      { entryId: 'e', serviceId: 'A', source: { kind: 'card', cardId: card.id } },
      null,
    ),
  }));
}

it('lists looks that are due and need nobody under the car, no wheel off and no bonnet up', () => {
  const names = queueLooks(due('doNow')).map(({ name }) => name);
  expect(names).toEqual(expect.arrayContaining(['Cockpit', 'Body and lamps']));
  const places = CARDS.filter(({ name }) => names.includes(name)).map(({ place }) => place);
  for (const place of ['underCar', 'engineBay', 'frontLeft', 'rearRight', 'allCorners']) {
    expect(places).not.toContain(place);
  }
  expect(queueLooks(due('leave'))).toEqual([]);
});
