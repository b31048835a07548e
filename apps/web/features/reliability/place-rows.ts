import type { CarOutline } from '@halfshaft/contract';
import type { BarRow } from '@/components/bar-table';
import { capitalise } from '@/lib/capitalise';
import { placeInWords } from '../work/place-in-words';
import { timesInWords } from './seen-in-words';

const PLACES_OF_CORNERS: Readonly<Record<string, string>> = {
  FL: 'frontLeft',
  FR: 'frontRight',
  RL: 'rearLeft',
  RR: 'rearRight',
};

/** What failed, part by part, the most frequent first. */
export function partRows({ parts }: Pick<CarOutline, 'parts'>): BarRow[] {
  const rows = parts.map(({ partId, name, failures }) => ({
    key: partId,
    name: capitalise(name),
    amount: failures.length,
  }));
  return inOrder(rows);
}

/** Failures and snags together by place: the corner where it was said, else the place of the card. */
export function placeRows({ parts, snags }: Pick<CarOutline, 'parts' | 'snags'>): BarRow[] {
  const times = new Map<string, number>();
  const add = (place: string, more: number) => times.set(place, (times.get(place) ?? 0) + more);
  for (const { place, failures } of parts) {
    for (const { position } of failures) add(PLACES_OF_CORNERS[position?.split(' ')[0] ?? ''] ?? place, 1);
  }
  for (const { place, times: raised } of snags) add(place, raised);
  return inOrder([...times].map(([place, amount]) => ({ key: place, name: placeInWords(place), amount })));
}

function inOrder(rows: readonly { key: string; name: string; amount: number }[]): BarRow[] {
  return rows
    .toSorted((one, other) => other.amount - one.amount || one.name.localeCompare(other.name))
    .map((row) => ({ ...row, words: timesInWords(row.amount) }));
}
