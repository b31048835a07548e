import { type CompiledLink, type CompiledService, isBegun } from '../compile-service';
import { type Draft, isFalse, isTrue } from './draft';
import type { Orders, TaskNumbers } from './encode-service';

/** What waits for what, and the states of the cars. */
export function encodeLinks(
  draft: Draft,
  { service, links }: CompiledService,
  tasks: readonly TaskNumbers[],
  orders: Orders,
): void {
  for (const link of links) encodeLink(draft, link, tasks);
  for (const access of service.accesses) {
    const { id, opening, closing } = access;
    const numberOf = (end: string | undefined) => tasks.find(({ task }) => task.id === end);
    const users = tasks.filter((one) => service.tasks[one.task.number]?.open?.includes(id));
    const opener = numberOf(opening);
    const closer = numberOf(closing);
    // The closing of what is open already, and both ends of what is begun, are done anyway.
    if (opener && !isBegun(access, service.tasks)) {
      for (const end of closer ? [opener, closer] : [opener]) encodeWhenUsed(draft, end, users);
    }
    // With users it follows; what is begun is closed without them too.
    if (opener && closer) draft.order(opener.finish, closer.start, 0, closer.done);
    for (const user of users) {
      if (opener) draft.order(opener.finish, user.start, 0, user.done);
      if (closer) draft.order(user.finish, closer.start, 0, user.done);
    }
    for (const one of tasks) {
      if (service.tasks[one.task.number]?.closed?.includes(id))
        encodeClosed(draft, one, opener, closer, orders);
    }
  }
}

function encodeLink(draft: Draft, link: CompiledLink, tasks: readonly TaskNumbers[]): void {
  const before = tasks[link.before];
  const after = tasks[link.after];
  if (!before || !after) return;
  if (link.together) {
    draft.whenAll([isTrue(before.done)], isTrue(after.done));
    draft.whenAll([isTrue(after.done)], isTrue(before.done));
  }
  const both = draft.flag();
  draft.whenAll([isTrue(before.done), isTrue(after.done)], isTrue(both));
  draft.order(before.finish, after.start, link.lag, both);
  if (link.maxLag !== undefined) draft.order(after.start, before.finish, -link.maxLag, both);
}

function encodeWhenUsed(draft: Draft, end: TaskNumbers, users: readonly TaskNumbers[]): void {
  for (const user of users) draft.whenAll([isTrue(user.done)], isTrue(end.done));
  draft.whenAll([isTrue(end.done)], ...users.map(({ done }) => isTrue(done)));
}

/** Before the opening or after the closing. What was open already is never closed before; what stays open never after. */
function encodeClosed(
  draft: Draft,
  { task, done }: TaskNumbers,
  opener: TaskNumbers | undefined,
  closer: TaskNumbers | undefined,
  orders: Orders,
): void {
  const ways = [];
  if (opener) ways.push(isTrue(orders.flag(task.number, opener.task.number)));
  if (closer) ways.push(isTrue(orders.flag(closer.task.number, task.number)));
  if (opener) ways.push(isFalse(opener.done));
  draft.whenAll([isTrue(done)], ...ways);
}
