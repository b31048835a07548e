import { describe, expect, it } from 'vitest';
import type { Drive, Surface } from '../job-card';
import { twoDays } from '../triggers/fixtures';
import { judgeTriggers } from '../triggers/judge-triggers';
import { type Fact, INCIDENT_CODES, type Trigger } from '../triggers/model';
import { fullStarterCards } from './full-starter-cards';
import { ONLY_WHEN_CALLED } from './parts';
import { starterTriggers } from './starter-triggers';

const EVERY_SET = (['front', 'rear', 'four'] as Drive[]).flatMap((drive) =>
  (['gravel', 'tarmac', 'snow'] as Surface[]).map((surface): [Drive, Surface] => [drive, surface]),
);

function called(trigger: Trigger): string[] {
  switch (trigger.kind) {
    case 'nextConditions':
      return [...trigger.onCardIds, ...trigger.offCardIds];
    default:
      return trigger.cardIds;
  }
}

function dueAtServiceC(drive: Drive, surface: Surface, facts: Fact[]): string[] {
  return judgeTriggers({
    ...twoDays(),
    runs: new Map(),
    plannedConditions: new Map(),
    serviceIndex: 2,
    position: 1,
    cards: fullStarterCards(drive, surface),
    triggers: starterTriggers(drive, surface),
    facts,
  })
    .filter((verdict) => verdict.verdict === 'doNow')
    .map((verdict) => verdict.cardId);
}

describe('starterTriggers', () => {
  it.each(EVERY_SET)(
    '%s drive on %s: names only cards of its set, and every incident calls for one',
    (drive, surface) => {
      const ids = fullStarterCards(drive, surface).map((card) => card.id);
      const triggers = starterTriggers(drive, surface);
      expect(new Set(triggers.map((trigger) => trigger.id)).size).toBe(triggers.length);
      expect(triggers.flatMap(called).filter((id) => !ids.includes(id))).toEqual([]);
      for (const code of INCIDENT_CODES) {
        expect(dueAtServiceC(drive, surface, [{ kind: 'incident', code, pointIndex: 9 }]), code).not.toEqual(
          [],
        );
      }
    },
  );

  it.each(EVERY_SET)(
    '%s drive on %s: whatever no counter brings up, a trigger does, but for fuel',
    (drive, surface) => {
      const calledFor = new Set(starterTriggers(drive, surface).flatMap(called));
      const silent = fullStarterCards(drive, surface)
        .filter((card) => JSON.stringify(card.intervals) === JSON.stringify(ONLY_WHEN_CALLED))
        .filter((card) => !calledFor.has(card.id));
      // Begun by a person: fuel is reckoned in "Hear the crew".
      expect(silent.map((card) => card.id)).toEqual(['starter:refuel']);
    },
  );

  it('wheels off: nuts', () => {
    const facts: Fact[] = [{ kind: 'done', cardId: 'starter:bleed-brakes', pointIndex: 12 }];
    expect(dueAtServiceC('front', 'tarmac', facts)).toEqual(['starter:wheel-nuts']);
  });

  it('two fords in a day: throttle, hubs and, where there is one, the differential', () => {
    const facts: Fact[] = [3, 9].map((pointIndex) => ({ kind: 'incident', code: 'ford', pointIndex }));
    const front = ['starter:hub-play', 'starter:throttle', 'starter:after-a-ford'];
    expect(dueAtServiceC('front', 'gravel', facts)).toEqual(front);
    expect(dueAtServiceC('four', 'gravel', facts)).toContain('starter:differential-oil');
  });

  it('has no tyres for the wet on snow', () => {
    expect(starterTriggers('four', 'snow').map((trigger) => trigger.id)).not.toContain('wet-stages');
    expect(starterTriggers('four', 'tarmac').map((trigger) => trigger.id)).toContain('wet-stages');
  });
});
