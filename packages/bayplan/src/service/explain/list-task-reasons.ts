import type { Pin, Service, ServiceTask } from '../service-model';
import { type Reason, withTask } from './reason';

/** What each task of a service asks for. */
export function listTaskReasons(service: Service): Reason[] {
  return service.tasks.flatMap((task) => [
    ...linkReasons(task),
    ...stateReasons(service, task),
    ...pinReasons(task),
    ...dutyReasons(task),
  ]);
}

/** A link is one reason with all it says, since a lag means nothing without its order. */
function linkReasons({ id, after = [] }: ServiceTask): Reason[] {
  return after.map(({ task: other, lag = 0, maxLag, together }) => {
    const wait = lag === 0 ? '' : ` ${lag}`;
    const atMost = maxLag === undefined ? '' : `, but at most ${maxLag}`;
    const both = together ? ', and neither is done without the other' : '';
    const drop = withTask(id, (task) => ({
      ...task,
      after: (task.after ?? []).filter((link) => link.task !== other),
    }));
    return { kind: 'waits', id, sentence: `${id} waits${wait} after ${other}${atMost}${both}.`, drop };
  });
}

function stateReasons({ cars }: Service, task: ServiceTask): Reason[] {
  const { id, notBefore, cold, fuelOpen, open = [], closed = [] } = task;
  const reasons: Reason[] = [];
  const add = (kind: Reason['kind'], sentence: string, change: (one: ServiceTask) => ServiceTask) =>
    reasons.push({ kind, id, sentence, drop: withTask(id, change) });
  const without = (list: readonly string[] | undefined, one: string) =>
    (list ?? []).filter((each) => each !== one);
  const hot = cars.find((car) => car.id === task.car)?.hotUntil;
  if (notBefore !== undefined) {
    add('notBefore', `${id} can't start before ${notBefore}.`, ({ notBefore: _, ...one }) => one);
  }
  if (cold && hot !== undefined) {
    add('cold', `${id} needs a cold car, and ${task.car} is hot until ${hot}.`, (one) => ({
      ...one,
      cold: false,
    }));
  }
  if (fuelOpen) {
    add('fuelOpen', `While ${id} has fuel open, nobody else works at ${task.car}.`, (one) => ({
      ...one,
      fuelOpen: false,
    }));
  }
  for (const access of open) {
    add('open', `${id} needs ${access} open.`, (one) => ({ ...one, open: without(one.open, access) }));
  }
  for (const access of closed) {
    add('closed', `${id} needs ${access} closed.`, (one) => ({
      ...one,
      closed: without(one.closed, access),
    }));
  }
  return reasons;
}

function pinReasons({ id, pin }: ServiceTask): Reason[] {
  if (!pin) return [];
  const sentences: Partial<Record<keyof Pin, string>> = {
    ...(pin.start === undefined ? {} : { start: `${id} is pinned to start at ${pin.start}.` }),
    ...(pin.way === undefined ? {} : { way: `${id} is pinned to be done as ${pin.way}.` }),
    ...(pin.people === undefined
      ? {}
      : { people: `${id} is pinned to be done by ${pin.people.join(', ')}.` }),
    ...(pin.done === undefined ? {} : { done: `${id} is pinned to be ${pin.done ? 'done' : 'left'}.` }),
  };
  return (['start', 'way', 'people', 'done'] as const).flatMap((what): Reason[] => {
    const sentence = sentences[what];
    if (sentence === undefined) return [];
    return [{ kind: 'pin', id, sentence, drop: withTask(id, (task) => withoutPin(task, what)) }];
  });
}

function withoutPin({ pin, ...task }: ServiceTask, what: keyof Pin): ServiceTask {
  if (!pin) return task;
  const { [what]: _, ...rest } = pin;
  return { ...task, pin: rest };
}

function dutyReasons({ id, mandatory }: ServiceTask): Reason[] {
  if (!mandatory) return [];
  const drop = withTask(id, (task) => ({ ...task, mandatory: false }));
  return [{ kind: 'mustBeDone', id, sentence: `${id} must be done.`, drop }];
}
