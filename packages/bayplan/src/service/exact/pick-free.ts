import type { Chance } from '../../search/chance';
import type { CompiledService } from '../compile-service';
import type { Decided, Solution } from '../judge-work';

/** One of these with some share of the tasks done: any, those around some moment, or those of a few people. */
const KINDS = ['any', 'moment', 'people'] as const;

interface Done {
  task: number;
  middle: number;
  people: readonly number[];
}

/** Some of what a plan does, about such a share of it but at least two, that is to be planned anew while the rest stays. */
export function pickFree(
  service: CompiledService,
  { decided }: Solution,
  share: number,
  chance: Chance,
): ReadonlySet<number> {
  const done = shuffled(listDone(service, decided), chance);
  const wanted = Math.max(2, Math.round(share * done.length));
  const kind = KINDS[chance.below(KINDS.length)] ?? 'any';
  return new Set(
    inOrderOf(kind, service, done, chance)
      .slice(0, wanted)
      .map(({ task }) => task),
  );
}

function inOrderOf(
  kind: (typeof KINDS)[number],
  { service: { people } }: CompiledService,
  done: readonly Done[],
  chance: Chance,
): readonly Done[] {
  if (kind === 'moment') {
    const moment = done[0]?.middle ?? 0;
    return done.toSorted((one, other) => Math.abs(one.middle - moment) - Math.abs(other.middle - moment));
  }
  if (kind === 'any') return done;
  const turns = shuffled([...people.keys()], chance);
  const turnOf = (one: Done) => Math.min(...one.people.map((person) => turns.indexOf(person)));
  return done.toSorted((one, other) => turnOf(one) - turnOf(other));
}

function listDone({ tasks }: CompiledService, decided: readonly Decided[]): Done[] {
  return tasks.flatMap(({ number, ways }) => {
    const one = decided[number];
    if (!one) return [];
    const middle = one.start + (ways[one.way]?.duration ?? 0) / 2;
    return [{ task: number, middle, people: one.people.flat() }];
  });
}

/** Every order as likely (Fisher & Yates 1938). */
function shuffled<T>(items: readonly T[], chance: Chance): T[] {
  const all = [...items];
  for (let place = all.length - 1; place > 0; place -= 1) {
    const other = chance.below(place + 1);
    [all[place], all[other]] = [all[other] as T, all[place] as T];
  }
  return all;
}
