import type { JudgedGauge, Series } from '@halfshaft/lifing';
import { Table, type TableColumn } from '@/components/table';
import { bandInWords } from '../work/reading-in-words';
import { readInWords } from './read-in-words';
import styles from './readings.module.css';
import { expectationInWords, trendInWords } from './trend-in-words';

interface ReadingTableProps {
  judged: JudgedGauge;
  serviceName: (id: string) => string;
}

/** One reading: a row for each place, a column for each service it was read at, then how it goes on. */
export function ReadingTable({ judged, serviceName }: ReadingTableProps) {
  const { gauge, series } = judged;
  const { spec, card, remedy } = gauge;
  const limits = [bandInWords(spec), spec.kind === 'hint' ? 'a hint only' : ''].filter(Boolean);
  const facts = [
    `Read with ${card.name}`,
    ...limits,
    remedy.id === card.id ? '' : `put right by ${remedy.name}`,
  ].filter(Boolean);
  return (
    <section>
      <Table
        caption={spec.unit === '' ? spec.name : `${spec.name}, ${spec.unit}`}
        columns={columnsOf(judged, serviceName)}
        rows={series}
        rowKey={({ position }) => position ?? ''}
      />
      <p className={styles.facts}>{facts.join(' · ')}.</p>
    </section>
  );
}

function columnsOf({ gauge, series, judged }: JudgedGauge, serviceName: (id: string) => string) {
  const { spec } = gauge;
  const services = new Map(
    series
      .flatMap(({ readings }) => readings)
      .sort((one, other) => one.pointIndex - other.pointIndex)
      .map(({ serviceId }) => [serviceId, serviceName(serviceId)]),
  );
  const columns: TableColumn<Series>[] = [
    { key: 'place', heading: 'Place', leads: true, cell: ({ position }) => position ?? spec.name },
    ...[...services].map(([id, heading]) => ({
      key: id,
      heading,
      cell: (place: Series) => valuesAt(id, place, gauge),
    })),
    { key: 'trend', heading: 'Change', cell: (place) => trendInWords(spec, place, serviceName) },
  ];
  if (judged.length === 0) return columns;
  const expected = ({ position }: Series) => {
    const found = judged.find(({ reason }) => reason.position === position);
    return found ? expectationInWords(spec, found.reason, serviceName) : '–';
  };
  return [...columns, { key: 'expected', heading: 'Expected', cell: expected }];
}

/** Usually one; two where a part was changed. */
function valuesAt(serviceId: string, { readings }: Series, { spec }: JudgedGauge['gauge']): string {
  const here = readings.filter((each) => each.serviceId === serviceId);
  const parts = new Set(readings.map(({ part }) => part));
  const words = here.map((each) => {
    const isFirst = readings.find(({ part }) => part === each.part) === each;
    const isNew = each.part > 0 && isFirst && (parts.size > 1 || each.since !== null);
    return `${readInWords(spec, each.value)}${isNew ? ' (new part)' : ''}`;
  });
  return words.length === 0 ? '–' : words.join(', then ');
}
