import { starterCards } from '@halfshaft/lifing';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proposeVisit } from './propose-visit';
import { DOWN, UP } from './service-of-visit';
import type { VisitProposal } from './visit-proposal';
import type { VisitQuestion } from './visit-question';

const CARDS = starterCards('front', 'gravel');

function propose(question: VisitQuestion): VisitProposal {
  const planning = proposeVisit(question);
  for (;;) {
    const step = planning.next();
    if (step.done) return step.value;
  }
}

function planOf(question: VisitQuestion) {
  const proposal = propose(question);
  if (proposal.kind !== 'plan') throw new Error(proposal.sentences.join(' '));
  return proposal;
}

const ask = (people: string[], workSeconds: number, must: (place: number) => boolean): VisitQuestion => ({
  workSeconds,
  isRemote: false,
  people,
  work: CARDS.map((card, place) => ({ card, mustDo: must(place) })),
});

describe('proposeVisit', () => {
  it('does all that must be done, each card once, with nobody at two places, and says of the rest why not', () => {
    fc.assert(
      fc.property(
        fc.subarray(['mia', 'kai', 'ida', 'rob'], { minLength: 2 }),
        fc.integer({ min: 600, max: 2700 }),
        fc.infiniteStream(fc.boolean()),
        (people, workSeconds, flags) => {
          const must = CARDS.map(() => flags.next().value === true);
          const { rows, left } = planOf(ask(people, workSeconds, (place) => must[place] === true));
          const ids = rows.map(({ id }) => id);
          const cards = CARDS.map(({ id }) => id);
          expect(
            [...ids.filter((id) => id !== UP && id !== DOWN), ...left.map(({ id }) => id)].sort(),
          ).toEqual(cards.sort());
          CARDS.forEach(({ id }, place) => {
            if (must[place]) expect(ids).toContain(id);
          });
          for (const one of rows) {
            for (const other of rows) {
              if (one === other || other.start >= one.finish || one.start >= other.finish) continue;
              expect(one.people.filter((person) => other.people.includes(person))).toEqual([]);
            }
          }
        },
      ),
      { numRuns: 6 },
    );
  });

  it('gives the same answer to the same question', () => {
    const question = ask(['mia', 'kai'], 1200, (place) => place % 3 === 0);
    expect(propose(question)).toEqual(propose(JSON.parse(JSON.stringify(question))));
  });

  it('gives each row a last start no earlier than its own, and says by how much a car would be late', () => {
    const roomy = planOf(ask(['mia', 'kai', 'ida'], 3600, () => true));
    expect(roomy.spareSeconds).toBeGreaterThan(0);
    for (const { start, startBy } of roomy.rows) expect(startBy).toBeGreaterThanOrEqual(start);
    const tight = planOf(ask(['mia', 'kai'], 900, () => true));
    expect(tight.spareSeconds).toBeLessThan(0);
  });

  it('says who takes over where nobody stays on', () => {
    const { rows } = planOf(ask(['mia', 'kai', 'ida', 'rob'], 1200, () => true));
    const down = rows.find(({ id }) => id === DOWN);
    const nuts = rows.find(
      ({ id }) => CARDS.find((card) => card.id === id)?.starterId === 'starter:wheel-nuts',
    );
    const isHandedOver = !nuts?.people.some((person) => down?.people.includes(person));
    expect(nuts?.takesOverFrom).toEqual(isHandedOver ? down?.people : []);
    expect(nuts?.start).toBeGreaterThanOrEqual(down?.finish ?? Number.POSITIVE_INFINITY);
  });

  it('says in words why there is no plan', () => {
    const alone = propose(ask(['mia'], 1200, () => true));
    expect(alone).toMatchObject({ kind: 'noPlan' });
    expect(alone.kind === 'noPlan' && alone.sentences).toContain(
      'Wheel nuts: torque needs 2 people, and only 1 is there.',
    );
  });

  it('says what keeps the work from fitting in, even an hour late', () => {
    const [card] = CARDS.filter(({ people }) => people === 1);
    if (!card) throw new Error('The starter cards no longer have work for one.');
    const long = { ...card, seconds: 9000 };
    const proposal = propose({
      workSeconds: 1200,
      isRemote: true,
      people: ['mia'],
      work: [{ card: long, mustDo: true }],
    });
    // 9,000 s at best, 15,000 at the usual pace, 10,000 on average: 167 min, and 80 are there at the very most.
    expect(proposal).toEqual({ kind: 'noPlan', sentences: [`${card.name} alone takes 167 min.`] });
    const halves = [card, { ...card, id: 'again', name: 'Again' }].map((half) => ({
      ...half,
      seconds: 3000,
    }));
    const together = propose({
      workSeconds: 1200,
      isRemote: true,
      people: ['mia'],
      work: halves.map((half) => ({ card: half, mustDo: true })),
    });
    expect(together).toEqual({
      kind: 'noPlan',
      sentences: [
        'What must be done does not fit in, even an hour past the out-time.',
        // Twice 3,334 s, and the hour after 20 minutes.
        'It takes 112 person-minutes, and 1 person has 80 by then.',
      ],
    });
  });

  it('names what one tool has to do twice over', () => {
    const [card] = CARDS.filter(({ people }) => people === 1);
    if (!card) throw new Error('The starter cards no longer have work for one.');
    const wrench = { ...card, seconds: 3000, tools: ['torque wrench'] };
    const proposal = propose({
      workSeconds: 1200,
      isRemote: true,
      people: ['mia', 'kai', 'ida'],
      work: ['one', 'other'].map((id) => ({ card: { ...wrench, id, name: id }, mustDo: true })),
    });
    expect(proposal.kind === 'noPlan' && proposal.sentences).toEqual([
      'What must be done does not fit in, even an hour past the out-time.',
      'There is one torque wrench.',
      'one must be done.',
      'other must be done.',
    ]);
  });
});
