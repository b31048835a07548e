import type { JobCard } from '@halfshaft/lifing';

/** As lists and sheets name a card: "Round: Front corners" · "Gearbox oil level". */
export function cardTitle({ kind, name }: Pick<JobCard, 'kind' | 'name'>): string {
  return kind === 'round' ? `Round: ${name}` : name;
}
