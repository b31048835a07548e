import { readStartList, retirementListCells } from '@halfshaft/itinerary';
import { useQuery } from '@tanstack/react-query';
import { Button } from '@/components/button';
import { api } from '@/lib/api';

export interface BeginFromStartListProps {
  own: { organiserId: string; publishedEventId: string };
  onBegin: (text: string) => void;
}

/** Writes the headings and a row for each car of the start list, so that only what happened is left to type. */
export function BeginFromStartList({ own, onBegin }: BeginFromStartListProps) {
  const { data } = useQuery(api.startList.list.queryOptions(own));
  const [first] = data?.lists ?? [];
  if (!first) return null;
  const { starters } = readStartList(first.source, first.section);
  const records = starters.map(({ carNumber }) => ({
    carNumber,
    className: '',
    outcome: 'finished' as const,
    stop: null,
    reached: null,
    backFromSection: null,
  }));
  const text = retirementListCells(records)
    .map((cells) => cells.join('\t'))
    .join('\n');
  return <Button onClick={() => onBegin(text)}>Begin with the start list, all finished</Button>;
}
