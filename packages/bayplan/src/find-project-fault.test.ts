import { describe, expect, it } from 'vitest';
import { findProjectFault } from './find-project-fault';
import type { Activity, Project } from './model';

function withActivities(...activities: Partial<Activity>[]): Project {
  const blank = { duration: 1, needs: [], after: [] };
  return {
    resources: [{ id: 'jack', capacity: 1 }],
    activities: activities.map((activity, number) => ({ id: `a${number}`, ...blank, ...activity })),
  };
}

const after = (activity: string) => ({ after: [{ activity }] });

describe('findProjectFault', () => {
  it.each<[string, Project]>([
    ['a is there twice.', withActivities({ id: 'a' }, { id: 'a' })],
    ['The duration of a0 is 1.5; it must be a whole number from 0.', withActivities({ duration: 1.5 })],
    [
      'The need of jack of a0 is -1; it must be a whole number from 0.',
      withActivities({ needs: [{ resource: 'jack', amount: -1 }] }),
    ],
    ['a0 needs gun, which is not a resource.', withActivities({ needs: [{ resource: 'gun', amount: 1 }] })],
    [
      'a0 needs 2 of jack, but there is only 1.',
      withActivities({ needs: [1, 1].map((amount) => ({ resource: 'jack', amount })) }),
    ],
    ['a0 waits for b, which is not an activity.', withActivities(after('b'))],
    [
      'a1 waits, directly or through others, for itself or for activities that wait in a circle.',
      withActivities({}, after('a2'), after('a1')),
    ],
  ])('says: %s', (sentence, project) => {
    expect(findProjectFault(project)?.sentence).toBe(sentence);
  });

  it('finds nothing wrong with activities in any order', () => {
    expect(findProjectFault(withActivities(after('a1'), {}))).toBeUndefined();
  });
});
