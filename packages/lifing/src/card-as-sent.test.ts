import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CardAsSent, completeCard } from './card-as-sent';
import { anyCard, EVERY_CAR } from './card-table/fixtures';
import { beganWithNewPart } from './full-starter/began-with-new-part';
import { fullStarterCards } from './full-starter/full-starter-cards';
import { starterCards } from './starter-cards';

const job = (more: Partial<CardAsSent>): CardAsSent => {
  const [nuts] = fullStarterCards('front', 'gravel');
  if (!nuts) throw new Error('There are no starter cards.');
  const { id: _id, fitsNewPart: _said, ...card } = nuts;
  return { ...card, starterId: null, ...more };
};

describe('completeCard', () => {
  it('takes what is said, whatever the card was and began as', () => {
    const pads = { starterId: 'starter:front-pads' };
    expect(completeCard(job({ ...pads, fitsNewPart: false }), { fitsNewPart: true }).fitsNewPart).toBe(false);
    expect(completeCard(job({ fitsNewPart: true }), { fitsNewPart: false }).fitsNewPart).toBe(true);
  });

  it('leaves a card as it was when an older page sends it without a word of it', () => {
    expect(completeCard(job({}), { fitsNewPart: true }).fitsNewPart).toBe(true);
    const pads = { starterId: 'starter:front-pads' };
    expect(completeCard(job(pads), { fitsNewPart: false }).fitsNewPart).toBe(false);
  });

  it('takes a new one that does not say it as the starter card it began as, and a team’s own as fitting none', () => {
    expect(completeCard(job({ starterId: 'starter:front-pads' }), null).fitsNewPart).toBe(true);
    expect(completeCard(job({ starterId: 'starter:wheel-nuts' }), null).fitsNewPart).toBe(false);
    expect(completeCard(job({}), null).fitsNewPart).toBe(false);
  });

  it('always says it, never of a round, and changes nothing else', () => {
    const before = fc.oneof(fc.constant(null), fc.record({ fitsNewPart: fc.boolean() }));
    fc.assert(
      fc.property(anyCard, before, fc.boolean(), (card, was, silent) => {
        const { fitsNewPart, ...rest } = card;
        const { fitsNewPart: kept, ...others } = completeCard(silent ? rest : card, was);
        expect(others).toEqual(rest);
        if (card.kind === 'round') expect(kept).toBe(false);
        else if (silent) expect(kept).toBe(was ? was.fitsNewPart : beganWithNewPart(card.starterId));
        else expect(kept).toBe(fitsNewPart);
      }),
    );
  });
});

describe('beganWithNewPart', () => {
  it.each(EVERY_CAR)('says of every starter card of $drive drive on $surface what it says itself', (car) => {
    const cards = [...starterCards(car.drive, car.surface), ...fullStarterCards(car.drive, car.surface)];
    for (const { starterId, fitsNewPart } of cards) {
      expect(beganWithNewPart(starterId), starterId ?? '').toBe(fitsNewPart);
    }
  });

  it('knows no starter card by another name', () => {
    expect(beganWithNewPart('starter:gone')).toBe(false);
    expect(beganWithNewPart(null)).toBe(false);
  });
});
