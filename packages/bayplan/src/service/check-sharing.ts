import type { BayPlanFault, DoneTask } from './check-bay-plan';
import type { Access, Service } from './service-model';

/** What is wrong with places, tools and the states of the cars. Part of `checkBayPlan`. */
export function findSharingFaults(service: Service, done: readonly DoneTask[]): BayPlanFault[] {
  return [
    ...service.tools.flatMap(({ id, count }) =>
      findOverloads(done, (one) => countTool(one, id), count).map(
        ([moment, used]): BayPlanFault => ({
          kind: 'tools',
          sentence: `At ${moment}, ${used} of ${id} are in use, but there are only ${count}.`,
        }),
      ),
    ),
    ...service.places.flatMap(({ id, room }) =>
      findOverloads(done, (one) => (wayOf(one)?.place === id ? one.work.people.length : 0), room).map(
        ([moment, used]): BayPlanFault => ({
          kind: 'room',
          sentence: `At ${moment}, ${used} people are at ${id}, which has room for ${room}.`,
        }),
      ),
    ),
    ...done.flatMap((one) => findAccessFaults(service, one, done)),
    ...findFuelFaults(done),
  ];
}

function wayOf({ task, work }: DoneTask) {
  return task.ways.find(({ id }) => id === work.way);
}

function countTool(one: DoneTask, tool: string): number {
  return wayOf(one)?.tools?.filter((id) => id === tool).length ?? 0;
}

/** Use only rises where something starts, so those moments are all that need looking at. */
function findOverloads(
  done: readonly DoneTask[],
  useOf: (one: DoneTask) => number,
  most: number,
): [moment: number, used: number][] {
  const moments = [...new Set(done.map(({ work }) => work.start))].toSorted((one, other) => one - other);
  return moments
    .map((moment): [number, number] => {
      const running = done.filter(({ work }) => work.start <= moment && moment < work.finish);
      return [moment, running.reduce((sum, one) => sum + useOf(one), 0)];
    })
    .filter(([, used]) => used > most);
}

function findAccessFaults(service: Service, one: DoneTask, done: readonly DoneTask[]): BayPlanFault[] {
  const say = (access: Access, state: string): BayPlanFault => ({
    kind: 'access',
    sentence: `${one.task.id} runs from ${one.work.start} to ${one.work.finish}, but ${access.id} is not ${state} all the time.`,
  });
  return service.accesses.flatMap((access) => {
    const { openedAt, openFrom, closingAt, closedFrom } = timesOf(access, done);
    const { start, finish } = one.work;
    const faults: BayPlanFault[] = [];
    const isOpen = start >= openFrom && finish <= closingAt;
    if (one.task.open?.includes(access.id) && !isOpen) faults.push(say(access, 'open'));
    const isClosed = finish <= openedAt || start >= closedFrom;
    if (one.task.closed?.includes(access.id) && !isClosed) faults.push(say(access, 'closed'));
    if (one.task.id === access.closing && start < openFrom) {
      const sentence = `${one.task.id} starts at ${start}, but ${access.id} is not open before ${openFrom}.`;
      faults.push({ kind: 'access', sentence });
    }
    return faults;
  });
}

/** When opening begins and ends, and when closing begins and ends. */
function timesOf({ opening, closing }: Access, done: readonly DoneTask[]) {
  const find = (id: string | undefined) => done.find(({ task }) => task.id === id)?.work;
  const opened = find(opening);
  const closed = find(closing);
  const never = Number.POSITIVE_INFINITY;
  const always = Number.NEGATIVE_INFINITY;
  if (opening !== undefined && !opened) {
    return { openedAt: never, openFrom: never, closingAt: never, closedFrom: never };
  }
  return {
    openedAt: opened?.start ?? always,
    openFrom: opened?.finish ?? always,
    closingAt: closed?.start ?? never,
    closedFrom: closed?.finish ?? never,
  };
}

function findFuelFaults(done: readonly DoneTask[]): BayPlanFault[] {
  return done
    .filter(({ task }) => task.fuelOpen)
    .flatMap((one) =>
      done
        .filter((other) => other !== one && other.task.car === one.task.car)
        .filter(({ work }) => work.start < one.work.finish && one.work.start < work.finish)
        .map((other) => ({
          kind: 'fuelOpen',
          sentence: `${other.task.id} runs while ${one.task.id} has fuel open.`,
        })),
    );
}
