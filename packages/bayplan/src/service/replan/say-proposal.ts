import type { BayPlan } from '../bay-plan';
import type { Service } from '../service-model';
import type { Change } from './list-changes';

/** So many units are a minute. */
export type SayLength = (length: number) => string;

export function lengthsIn(unitsPerMinute: number): SayLength {
  return (length) => {
    const minutes = Math.round(length / unitsPerMinute);
    return minutes === 0 ? 'less than 1 min' : `${minutes} min`;
  };
}

/** What has gone most against the plan, if anything has: an overrun, or a start that is overdue. */
export function saySlip(fromNow: Service, old: BayPlan, now: number, say: SayLength): string {
  const slips = old.work.map(({ task: id, start, finish }) => {
    const underWay = fromNow.tasks.find((task) => task.id === id)?.underWay;
    if (!underWay) return { by: now - start, sentence: `${id} should have started ${say(now - start)} ago.` };
    const by = underWay.until - finish;
    const isOver = underWay.until <= now;
    const sentence = isOver
      ? `${id} was finished ${say(by)} late.`
      : `${id} will be finished ${say(by)} late.`;
    return { by, sentence };
  });
  const worst = slips.reduce((one, other) => (other.by > one.by ? other : one), { by: 0, sentence: '' });
  return worst.by > 0 ? worst.sentence : 'Work goes as planned.';
}

/** When the cars leave. */
export function sayLeaving({ objective: { late } }: BayPlan, { cars }: Service, say: SayLength): string {
  const [who, leaves] = cars.length === 1 ? ['the car', 'leaves'] : ['the cars', 'leave'];
  if (late === 0) return `${who} ${leaves} on time`;
  return `${who} ${leaves} ${say(late)} late${cars.length === 1 ? '' : ' altogether'}`;
}

export function sayChange(change: Change): string {
  const { task } = change;
  if (change.kind === 'left') return `Leave ${task}.`;
  if (change.kind === 'taken') {
    const who = change.people.length > 0 ? ` (${listNames(change.people)})` : '';
    return `Do ${task} as well${who}.`;
  }
  if (change.kind === 'way') return `Do ${task} as ${change.way}.`;
  if (change.kind === 'order') return `${change.person} does ${task} before ${change.before}.`;
  const { people, instead } = change;
  if (people.length === 0) return `${listNames(instead)} isn't needed for ${task}.`;
  const who = `${listNames(people)} ${people.length === 1 ? 'does' : 'do'} ${task}`;
  return instead.length === 0 ? `${who} as well.` : `${who} instead of ${listNames(instead)}.`;
}

function listNames(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
