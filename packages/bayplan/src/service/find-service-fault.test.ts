import { describe, expect, it } from 'vitest';
import { findServiceFault } from './find-service-fault';
import type { Service, ServiceTask, Way } from './service-model';

const WAY: Way = { id: 'usual', duration: { low: 2, likely: 2, high: 2 }, crew: [{ count: 1 }] };
const LAMPS: ServiceTask = { id: 'lamps', car: 'car', mandatory: true, ways: [WAY] };
const UP: ServiceTask = { id: 'up', car: 'car', ways: [WAY] };
const SERVICE: Service = {
  cars: [{ id: 'car', inTime: 0, outTime: 20 }],
  people: [{ id: 'Ada', skills: [], hours: [{ from: 0, until: 20 }] }],
  places: [{ id: 'front', room: 2 }],
  tools: [{ id: 'gun', count: 1 }],
  accesses: [{ id: 'stands', car: 'car', opening: 'up' }],
  tasks: [LAMPS, UP],
};

function sentenceFor(more: Partial<Service>): string | undefined {
  return findServiceFault({ ...SERVICE, ...more })?.sentence;
}

function withLamps(more: Partial<ServiceTask>): string | undefined {
  return sentenceFor({ tasks: [{ ...LAMPS, ...more }, UP] });
}

function withWay(more: Partial<Way>): string | undefined {
  return withLamps({ ways: [{ ...WAY, ...more }] });
}

describe('findServiceFault', () => {
  it('finds nothing wrong with a service that makes sense', () => {
    expect(findServiceFault(SERVICE)).toBeUndefined();
  });

  it('finds what is there twice', () => {
    expect(sentenceFor({ tasks: [LAMPS, UP, LAMPS] })).toBe('lamps is there twice.');
    expect(withLamps({ ways: [WAY, WAY] })).toBe('usual is there twice.');
    expect(withLamps({ after: [{ task: 'up' }, { task: 'up', lag: 1 }] })).toBe('up is there twice.');
  });

  it('finds numbers that are none', () => {
    expect(sentenceFor({ tools: [{ id: 'gun', count: 1.5 }] })).toBe(
      'The count of gun is 1.5; it must be a whole number from 0.',
    );
    expect(withLamps({ after: [{ task: 'up', lag: -1 }] })).toBe(
      'The lag after up of lamps is -1; it must be a whole number from 0.',
    );
    expect(withWay({ duration: { low: 0, likely: 0, high: 0 } })).toBe(
      'The planned duration of lamps is 0; it must be a whole number from 1.',
    );
    expect(withWay({ duration: { low: 3, likely: 2, high: 4 } })).toContain(
      'must be from 0 and never get smaller',
    );
    expect(sentenceFor({ certainty: 1 })).toBe('The certainty 1 must be above 0 and below 1.');
    expect(sentenceFor({ cars: [{ id: 'car', inTime: 5, outTime: 4 }] })).toBe(
      'car comes in at 5, is due out at 4 and must leave by 4.',
    );
  });

  it('finds names of what is not there', () => {
    expect(withLamps({ car: 'other' })).toBe('lamps names other, which is not a car.');
    expect(withLamps({ after: [{ task: 'pads' }] })).toBe('lamps names pads, which is not a task.');
    expect(withLamps({ open: ['guard'] })).toBe('lamps names guard, which is not an access.');
    expect(withLamps({ pin: { people: ['Ben'] } })).toBe('lamps names Ben, which is not a person.');
    expect(withLamps({ pin: { way: 'quick' } })).toBe('lamps names quick, which is not one of its ways.');
    expect(withWay({ tools: ['jack'] })).toBe('lamps names jack, which is not a tool.');
    expect(withWay({ place: 'rear' })).toBe('lamps names rear, which is not a place.');
    expect(sentenceFor({ accesses: [{ id: 'stands', car: 'car', opening: 'lift' }] })).toBe(
      'stands names lift, which is not a task.',
    );
  });

  it('finds what contradicts itself', () => {
    expect(withLamps({ ways: [] })).toBe('lamps has no way of doing it.');
    expect(withLamps({ after: [{ task: 'lamps' }] })).toBe("lamps can't wait for itself.");
    expect(withLamps({ after: [{ task: 'up', lag: 3, maxLag: 2 }] })).toBe(
      'lamps must wait 3 after up, but at most 2.',
    );
    expect(sentenceFor({ tasks: [LAMPS, { ...UP, mandatory: true }] })).toBe(
      "up is done because of stands; it can't be mandatory.",
    );
    expect(sentenceFor({ tasks: [LAMPS, { ...UP, open: ['stands'] }] })).toBe(
      "up opens or closes stands, so it can't need it open or closed.",
    );
    const underWay = { since: 3, until: 3, way: 'usual', people: ['Ada'] };
    expect(withLamps({ underWay })).toBe('lamps is under way, but ends before it began.');
    const begun = { ...underWay, until: 5 };
    expect(
      sentenceFor({
        tasks: [
          { ...LAMPS, underWay: begun },
          { ...UP, underWay: begun },
        ],
      }),
    ).toBe("Ada can't be doing lamps and up at a time.");
    expect(withLamps({ underWay, pin: {} })).toBe('lamps is under way, so nothing of it can be pinned.');
  });
});
