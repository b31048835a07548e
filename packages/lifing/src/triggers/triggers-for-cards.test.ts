import { describe, expect, it } from 'vitest';
import { fullStarterCards } from '../full-starter/full-starter-cards';
import { outsideServiceIds } from '../full-starter/outside-service-ids';
import { starterTriggers } from '../full-starter/starter-triggers';
import { crewCardIds, jobDoneTriggersForCards, triggersForCards } from './triggers-for-cards';

const saved = fullStarterCards('four', 'gravel').map((card) => ({ ...card, id: `own ${card.id}` }));

describe('triggersForCards', () => {
  it('names the cards of the car wherever the starter set names its own', () => {
    const named = JSON.stringify(triggersForCards(saved));
    const expected = JSON.stringify(starterTriggers('four', 'gravel')).replaceAll('starter:', 'own starter:');
    expect(named).toBe(expected);
  });

  it('lets a copied card be called too, and leaves out what the car has no card for', () => {
    const cards = [
      { id: 'one', starterId: 'starter:bleed-brakes', fitsNewPart: false },
      { id: 'two', starterId: 'starter:bleed-brakes', fitsNewPart: false },
      { id: 'own', starterId: null, fitsNewPart: false },
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

describe('a new part', () => {
  const lookAgain = { id: 'look', starterId: 'starter:look-at-new-part', fitsNewPart: false };
  const newPartOf = (...cards: Parameters<typeof triggersForCards>[0]) =>
    triggersForCards([lookAgain, ...cards]).find(({ id }) => id === 'new-part');

  it('calls for its look whatever its card began as: the card says whether it fits one', () => {
    const belt = { id: 'belt', starterId: null };
    const pads = { id: 'pads', starterId: 'starter:front-pads' };
    expect(newPartOf({ ...belt, fitsNewPart: true }, { ...pads, fitsNewPart: false })).toMatchObject({
      fittedCardIds: ['belt'],
      cardIds: ['look'],
    });
    expect(newPartOf({ ...belt, fitsNewPart: false }, { ...pads, fitsNewPart: true })).toMatchObject({
      fittedCardIds: ['pads'],
    });
  });
});

describe('jobDoneTriggersForCards', () => {
  it('has exactly the triggers that work on another card sets off', () => {
    const expected = triggersForCards(saved).filter(({ kind }) => kind === 'jobDone');
    expect(expected.length).toBeGreaterThan(2);
    expect(jobDoneTriggersForCards(saved)).toEqual(expected);
  });
});
