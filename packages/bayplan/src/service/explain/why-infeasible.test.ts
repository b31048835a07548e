import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyService } from '../fixtures';
import { bestByProgram } from '../program/fixtures';
import type { Service, ServiceTask } from '../service-model';
import { findOutPossible } from './find-out-possible';
import { dropReasons, listReasons, whyInfeasible } from './why-infeasible';

const MANY = { maxSchedules: 20_000 };
function task(
  id: string,
  minutes: number,
  skill: string | undefined,
  more: Partial<ServiceTask> = {},
): ServiceTask {
  const duration = { low: minutes, likely: minutes, high: minutes };
  const crew = [skill === undefined ? { count: 1 } : { skill, count: 1 }];
  return { id, car: 'car 7', mandatory: true, ways: [{ id: 'usual', duration, crew }], ...more };
}

function serviceWith(...tasks: ServiceTask[]): Service {
  return {
    cars: [{ id: 'car 7', inTime: 0, outTime: 20, hotUntil: 6 }],
    people: [
      { id: 'Ada', skills: ['gearbox'], hours: [{ from: 0, until: 20 }] },
      { id: 'Ben', skills: [], hours: [{ from: 0, until: 20 }] },
    ],
    places: [],
    tools: [],
    accesses: [],
    tasks,
  };
}

function sentencesFor(service: Service): string[] | undefined {
  return whyInfeasible(service, MANY)?.reasons.map(({ sentence }) => sentence);
}

describe('whyInfeasible', () => {
  it('has nothing to say of a service that has a plan', () => {
    expect(
      whyInfeasible(serviceWith(task('box', 12, 'gearbox'), task('lamps', 9, undefined)), MANY),
    ).toBeUndefined();
  });

  it('names who is missing, by when, and for what, and leaves out what has no part in it', () => {
    const service = serviceWith(
      task('box', 12, 'gearbox'),
      task('shafts', 9, 'gearbox'),
      task('lamps', 4, undefined),
    );
    expect(sentencesFor(service)).toEqual([
      'Only Ada can do gearbox.',
      'car 7 must be finished by 20.',
      'box must be done.',
      'shafts must be done.',
    ]);
  });

  it('names what only one task is too much for', () => {
    expect(
      sentencesFor(serviceWith(task('oil', 15, undefined, { cold: true }), task('lamps', 4, undefined))),
    ).toEqual([
      'oil needs a cold car, and car 7 is hot until 6.',
      'car 7 must be finished by 20.',
      'oil must be done.',
    ]);
    expect(sentencesFor(serviceWith(task('wiring', 3, 'electrics')))).toEqual([
      'Nobody can do electrics.',
      'wiring must be done.',
    ]);
  });

  it('names pins and waits that contradict each other', () => {
    const nuts = task('nuts', 2, undefined, { after: [{ task: 'pads', lag: 1 }], pin: { start: 4 } });
    expect(sentencesFor(serviceWith(task('pads', 6, undefined), nuts))).toEqual([
      'nuts waits 1 after pads.',
      'nuts is pinned to start at 4.',
      'pads must be done.',
      'nuts must be done.',
    ]);
  });

  it('gives reasons that rule out every plan by themselves, of which none can be spared', async () => {
    const services = fc.sample(anyService(), { numRuns: 60, seed: 4 });
    let explained = 0;
    for (const service of services) {
      const why = whyInfeasible(service, MANY);
      expect(why === undefined).toBe(findOutPossible(service, 20_000) === 'yes');
      if (!why) continue;
      explained += 1;
      expect(why.certain).toBe(true);
      const others = listReasons(service).filter(
        ({ sentence }) => !why.reasons.some((one) => one.sentence === sentence),
      );
      const core = dropReasons(service, others);
      expect(findOutPossible(core, 20_000)).toBe('no');
      // The integer program takes a step for every moment, so it is only asked where no time was made longer.
      if (explained % 8 === 0 && !others.some(({ kind }) => kind === 'latest')) {
        expect(await bestByProgram(core)).toBeUndefined();
      }
      for (const one of why.reasons) {
        const without = listReasons(service).filter(
          ({ sentence }) => sentence === one.sentence || others.some((other) => other.sentence === sentence),
        );
        expect(findOutPossible(dropReasons(service, without), 20_000)).toBe('yes');
      }
    }
    expect(explained).toBeGreaterThan(4);
  });
});
