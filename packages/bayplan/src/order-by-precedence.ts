import type { Activity } from './model';

/**
 * The numbers of the activities so that each comes after those it waits for, the smallest possible number first: an order
 * that already is one stays as it is. Activities in a circle, and those waiting for them, are left out.
 */
export function orderByPrecedence(activities: readonly Activity[]): number[] {
  const numbers = new Map(activities.map(({ id }, number) => [id, number]));
  const waiting = activities.map(({ after }) => after.length);
  const followers: number[][] = activities.map(() => []);
  activities.forEach(({ after }, number) => {
    for (const { activity } of after) followers[numbers.get(activity) ?? -1]?.push(number);
  });
  const order: number[] = [];
  const free = new Set(activities.flatMap((_, number) => (waiting[number] === 0 ? [number] : [])));
  while (free.size > 0) {
    const number = Math.min(...free);
    free.delete(number);
    order.push(number);
    for (const follower of followers[number] ?? []) {
      const left = (waiting[follower] ?? 0) - 1;
      waiting[follower] = left;
      if (left === 0) free.add(follower);
    }
  }
  return order;
}
