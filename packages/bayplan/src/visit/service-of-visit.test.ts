import { starterCards } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { DOWN, serviceOfVisit, UP } from './service-of-visit';
import type { PlannedCard, VisitQuestion } from './visit-question';

const plain: PlannedCard = {
  id: 'plain',
  name: 'Plain',
  starterId: null,
  place: 'cockpit',
  seconds: 60,
  people: 1,
  tools: [],
};
const ask = (cards: Partial<PlannedCard>[], more: Partial<VisitQuestion> = {}) =>
  serviceOfVisit({
    workSeconds: 1200,
    isRemote: false,
    people: ['mia', 'kai', 'ida'],
    work: cards.map((card, place) => ({
      card: { ...plain, id: `card ${place}`, ...card },
      mustDo: place === 0,
    })),
    ...more,
  });
const taskOf = (service: ReturnType<typeof ask>, id: string) => service.tasks.find((task) => task.id === id);

describe('serviceOfVisit', () => {
  it('asks for stands at corners and below, not in the cockpit, and for nothing of that in a remote service', () => {
    const cards = [{ place: 'underCar' }, { place: 'cockpit' }, { place: 'frontLeft' }] as const;
    const service = ask([...cards]);
    expect(['card 0', 'card 1', 'card 2'].map((id) => taskOf(service, id)?.open)).toEqual([
      ['stands'],
      [],
      ['stands'],
    ]);
    expect(service.accesses).toEqual([{ id: 'stands', car: 'car', opening: UP, closing: DOWN }]);
    const remote = ask([...cards], { isRemote: true });
    expect(remote.accesses).toEqual([]);
    expect(remote.tasks.map(({ id, open = [] }) => [id, open.length])).toEqual([
      ['card 0', 0],
      ['card 1', 0],
      ['card 2', 0],
    ]);
  });

  it('has wheel nuts torqued once the car is down, and what concerns the whole car after all else', () => {
    const service = ask([
      { place: 'wholeCar' },
      { starterId: 'starter:wheel-nuts', place: 'allCorners' },
      { place: 'boot' },
    ]);
    expect(taskOf(service, 'card 1')).toMatchObject({ closed: ['stands'], after: [{ task: DOWN }] });
    expect(taskOf(service, 'card 0')?.after).toEqual([{ task: 'card 1' }, { task: 'card 2' }]);
  });

  it('keeps everyone away while fuel is open, gives out the one torque wrench, and leaves torches alone', () => {
    const service = ask([{ starterId: 'starter:refuel' }, { tools: ['torch', 'torque wrench'] }]);
    expect(service.tasks.map(({ fuelOpen }) => fuelOpen === true)).toEqual([false, false, true, false]);
    expect(taskOf(service, 'card 1')?.ways[0]?.tools).toEqual(['torque wrench']);
    expect(service.tools).toContainEqual({ id: 'torque wrench', count: 1 });
  });

  it('takes a card its own time at best and at the usual pace at worst, and values the more urgent more', () => {
    const service = ask([{ seconds: 60 }, { seconds: 120 }, { seconds: 0 }]);
    // 60 % is the pace of `usableMinutes`, common practice, no source: 120 s become 200 s.
    expect(taskOf(service, 'card 1')?.ways[0]?.duration).toEqual({ low: 120, likely: 120, high: 200 });
    const values = service.tasks.slice(2).map(({ ways, mandatory }) => [mandatory, ways[0]?.value]);
    expect(values).toEqual([
      [true, 0],
      [false, 2],
      [false, 1],
    ]);
  });

  it('finds room for a card that needs more people than a place usually holds', () => {
    const service = ask([{ place: 'boot', people: 3 }]);
    expect(service.places.find(({ id }) => id === 'boot')?.room).toBe(3);
  });

  it('does not change the cards', () => {
    const cards = starterCards('front', 'gravel');
    const before = JSON.parse(JSON.stringify(cards));
    ask(cards);
    expect(cards).toEqual(before);
  });
});
