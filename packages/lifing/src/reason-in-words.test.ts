import { describe, expect, it } from 'vitest';
import { at, reasonWith } from './fixtures';
import type { VerdictReason } from './model';
import { reasonInWords } from './reason-in-words';

const names = {
  clock: (seconds: number) =>
    `${String(Math.floor(seconds / 3600)).padStart(2, '0')}:${String(Math.floor((seconds % 3600) / 60)).padStart(2, '0')}`,
  serviceName: (id: string) => `Service ${id}`,
};

function words(own: Partial<VerdictReason>): string {
  return reasonInWords(reasonWith(own), names);
}

describe('reasonInWords', () => {
  it('says where and when the limit is passed, kilometres cut', () => {
    expect(words({})).toBe("won't reach Service C: 60 stage km is passed on SS9 at km 84.2, about 14:32");
    expect(words({ nextChance: null })).toBe(
      "won't reach the finish: 60 stage km is passed on SS9 at km 84.2, about 14:32",
    );
  });

  it('says what is within its tolerance, on a road too', () => {
    const passedAt = { stageId: null, pointIndex: 3, routeMetres: 60_000, at: at(9, 5) };
    expect(words({ code: 'withinTolerance', passedAt })).toBe(
      'may be overrun to Service C: 60 stage km is passed on the road at km 60.0, about 09:05',
    );
  });

  it('says what is past', () => {
    expect(words({ code: 'past' })).toBe('60 stage km was passed on SS9 at km 84.2, about 14:32');
    expect(words({ code: 'past', passedAt: null })).toBe('60 stage km was passed before this event');
    expect(words({ code: 'past', counter: 'services', limit: 1 })).toBe('every service');
    expect(words({ code: 'past', counter: 'days', limit: 1 })).toBe('every day');
    expect(words({ code: 'past', counter: 'services', limit: 2, passedAt: null })).toBe(
      '2 services were passed before this event',
    );
    expect(words({ code: 'past', counter: 'events', limit: 1, passedAt: null })).toBe('every event');
    expect(words({ counter: 'stages', limit: 3 })).toBe(
      "won't reach Service C: 3 stages are passed on SS9 at km 84.2, about 14:32",
    );
  });

  it('says what lasts', () => {
    expect(words({ code: 'reaches' })).toBe(
      'lasts to Service C: 60 stage km is passed on SS9 at km 84.2, about 14:32',
    );
    const services = { code: 'reaches' as const, counter: 'services' as const, wearAtNextChance: 1 };
    expect(words({ ...services, limit: 1 })).toBe('lasts to Service C and is due there');
    expect(words({ ...services, limit: 2 })).toBe('lasts to Service C');
    expect(words({ code: 'reaches', limit: 60_000, wearAtNextChance: 60_000 })).toBe(
      'lasts to Service C and is due there',
    );
    expect(words({ code: 'lasts', passedAt: null })).toBe('lasts to the finish');
    expect(words({ code: 'lasts', counter: null, limit: null, passedAt: null })).toBe(
      'has no limit of its own',
    );
  });

  it('says what a date does', () => {
    const date = { counter: 'date' as const, limit: at(12, 0), passedAt: null };
    expect(words({ ...date, code: 'past' })).toBe('its date has passed: due 12:00');
    expect(words({ ...date, code: 'dateFalls' })).toBe('its date comes before Service C: due 12:00');
    expect(words({ ...date, code: 'reaches' })).toBe('lasts to Service C: due 12:00');
  });

  it('says that this is not the place', () => {
    const bare = { counter: null, limit: null, wearNow: null, wearAtNextChance: null, passedAt: null };
    expect(words({ ...bare, code: 'notHere' })).toBe('cannot be done at this service, next chance Service C');
    expect(words({ ...bare, code: 'notHere', nextChance: null })).toBe(
      'cannot be done at this service, and no later one will do',
    );
  });
});
