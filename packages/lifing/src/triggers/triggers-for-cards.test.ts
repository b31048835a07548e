import { describe, expect, it } from 'vitest';
import { fullStarterCards } from '../full-starter/full-starter-cards';
import { outsideServiceIds } from '../full-starter/outside-service-ids';
import { starterTriggers } from '../full-starter/starter-triggers';
import { crewCardIds, newPartCardIds, triggersForCards } from './triggers-for-cards';

const saved = fullStarterCards('four', 'gravel').map((card) => ({ ...card, id: `own ${card.id}` }));

describe('triggersForCards', () => {
  it('names the cards of the car wherever the starter set names its own', () => {
    const named = JSON.stringify(triggersForCards(saved));
    const expected = JSON.stringify(starterTriggers('four', 'gravel')).replaceAll('starter:', 'own starter:');
    expect(named).toBe(expected);
  });

  it('lets a copied card be called too, and leaves out what the car has no card for', () => {
    const cards = [
      { id: 'one', starterId: 'starter:bleed-brakes' },
      { id: 'two', starterId: 'starter:bleed-brakes' },
      { id: 'own', starterId: null },
    ];
    const triggers = triggersForCards(cards);
    expect(triggers.find(({ id }) => id === 'soft-pedal')).toMatchObject({ cardIds: ['one', 'two'] });
    expect(triggers.find(({ id }) => id === 'hard-landing')).toMatchObject({ cardIds: [] });
  });
});

describe('crewCardIds', () => {
  it('has the cards that began as one the crew can do', () => {
    expect(crewCardIds(saved)).toEqual(
      new Set(saved.filter(({ starterId }) => outsideServiceIds.has(starterId ?? '')).map(({ id }) => id)),
    );
    expect(crewCardIds([{ id: 'own', starterId: null }]).size).toBe(0);
  });
});

describe('newPartCardIds', () => {
  it('has the jobs that leave something new behind, and no look or round', () => {
    const ids = newPartCardIds(saved);
    expect(ids.has('own starter:front-pads')).toBe(true);
    expect(ids.has('own starter:driveshafts')).toBe(true);
    expect(ids.has('own starter:wheel-nuts')).toBe(false);
    expect(saved.filter((card) => ids.has(card.id) && card.kind === 'round')).toEqual([]);
    expect(newPartCardIds([{ id: 'own', starterId: null }]).size).toBe(0);
  });
});
