import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSchedule } from '../check-schedule';
import { allowedStart, anyProject, fits } from '../fixtures';
import type { Project, Schedule } from '../model';
import { PRIORITY_RULES } from './priorities';
import { type RuleOptions, scheduleByRule } from './schedule-by-rule';

const RULES = fc.constantFrom(...PRIORITY_RULES);
const SCHEMES = fc.constantFrom('serial', 'parallel') satisfies fc.Arbitrary<RuleOptions['scheme']>;

function startsOf({ activities }: Project, { starts }: Schedule): Map<string, number> {
  return new Map(activities.map(({ id }, number) => [id, starts[number] ?? Number.NaN]));
}

/** Two activities that want the one jack, and one that doesn't. */
const ONE_JACK: Project = {
  resources: [{ id: 'jack', capacity: 1 }],
  activities: [
    { id: 'front', duration: 3, needs: [{ resource: 'jack', amount: 1 }], after: [] },
    { id: 'rear', duration: 2, needs: [{ resource: 'jack', amount: 1 }], after: [] },
    { id: 'lamps', duration: 4, needs: [], after: [{ activity: 'rear', lag: 1 }] },
  ],
};

describe('scheduleByRule', () => {
  it('gives the smaller number to equal priorities', () => {
    const plan = scheduleByRule(ONE_JACK, { rule: 'activityNumber', scheme: 'serial' });
    expect(plan).toEqual({ starts: [0, 3, 6], makespan: 10 });
  });

  it('lets what is needed sooner go first by latest finish', () => {
    // Without scarcity the end is at 7 (rear 2, waiting 1, lamps 4), so rear must finish by 2 and front by 7.
    const plan = scheduleByRule(ONE_JACK, { rule: 'latestFinish', scheme: 'parallel' });
    expect(plan).toEqual({ starts: [2, 0, 3], makespan: 7 });
  });

  it('gives the greatest weight of itself and its direct followers the first place', () => {
    // Weights: front 3, rear 2 + 4, lamps 4.
    const plan = scheduleByRule(ONE_JACK, { rule: 'rankPositionalWeight', scheme: 'serial' });
    expect(plan.starts).toEqual([2, 0, 3]);
  });

  it('shortens by pushing late and then early', () => {
    const project: Project = {
      ...ONE_JACK,
      activities: ONE_JACK.activities.map((activity) => ({ ...activity })),
    };
    const plan = scheduleByRule(project, { rule: 'activityNumber', scheme: 'serial', justify: true });
    expect(plan).toEqual({ starts: [2, 0, 3], makespan: 7 });
  });

  it('keeps every rule of the project, whatever the priority rule and scheme', () => {
    fc.assert(
      fc.property(anyProject(), RULES, SCHEMES, fc.boolean(), (project, rule, scheme, justify) => {
        expect(checkSchedule(project, scheduleByRule(project, { rule, scheme, justify }))).toEqual([]);
      }),
    );
  });

  it('makes active schedules serially: nothing can start earlier with all else in place', () => {
    fc.assert(
      fc.property(anyProject(), RULES, fc.boolean(), (project, rule, justify) => {
        const starts = startsOf(project, scheduleByRule(project, { rule, scheme: 'serial', justify }));
        for (const activity of project.activities) {
          const start = starts.get(activity.id) ?? 0;
          for (let earlier = allowedStart(project, starts, activity); earlier < start; earlier += 1) {
            expect(fits(project, starts, activity, earlier)).toBe(false);
          }
        }
      }),
    );
  });

  it('makes non-delay schedules in parallel: nothing waits that could start beside what is under way', () => {
    fc.assert(
      fc.property(anyProject(), RULES, (project, rule) => {
        const starts = startsOf(project, scheduleByRule(project, { rule, scheme: 'parallel' }));
        for (const activity of project.activities) {
          const start = starts.get(activity.id) ?? 0;
          for (let now = allowedStart(project, starts, activity); now < start; now += 1) {
            const underWay = new Map([...starts].filter(([id, from]) => from <= now && id !== activity.id));
            expect(fits(project, underWay, activity, now)).toBe(false);
          }
        }
      }),
    );
  });

  it('never lengthens by justifying', () => {
    fc.assert(
      fc.property(anyProject(), RULES, SCHEMES, (project, rule, scheme) => {
        const plain = scheduleByRule(project, { rule, scheme });
        const justified = scheduleByRule(project, { rule, scheme, justify: true });
        expect(justified.makespan).toBeLessThanOrEqual(plain.makespan);
      }),
    );
  });
});
