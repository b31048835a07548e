import type { RetirementFigures } from '@halfshaft/contract';
import { Sheet } from '@/components/sheet';
import { Table, type TableColumn } from '@/components/table';
import { growthInWords, partsInWords, rangeInWords, rateInWords } from './figures-in-words';
import { type RateRow, rateRows } from './rate-rows';

const COLUMNS: TableColumn<RateRow>[] = [
  { key: 'cause', heading: 'Cause', leads: true, cell: ({ name }) => name },
  { key: 'stops', heading: 'Stops', figures: true, cell: ({ rate }) => rate.stops },
  { key: 'unsure', heading: 'Of these unsure', figures: true, cell: ({ rate }) => rate.unsure },
  { key: 'rate', heading: 'Per 1,000 stage km', figures: true, cell: ({ rate }) => rateInWords(rate) },
  { key: 'range', heading: 'Most likely', figures: true, cell: ({ rate }) => rangeInWords(rate) },
];
const GROWTH: TableColumn<RateRow> = {
  key: 'growth',
  heading: 'From event to event',
  cell: ({ growth }) => growthInWords(growth),
};

export interface RateTableProps extends RetirementFigures {
  /** Over several events: whether it changes. */
  withGrowth?: boolean;
}

/** How often each cause stops a car, with how sure that is, and what broke. */
export function RateTable({ figures, parts, withGrowth = false }: RateTableProps) {
  return (
    <Sheet title="Stops per 1,000 stage km">
      <p>
        {Math.round(figures.rates.distance).toLocaleString('en')} stage km were driven by all cars together.
      </p>
      <Table
        caption="Stops per 1,000 stage km by cause"
        captionHidden
        columns={withGrowth ? [...COLUMNS, GROWTH] : COLUMNS}
        rows={rateRows(figures)}
        rowKey={({ name }) => name}
      />
      {parts.length > 0 ? <p>What broke: {partsInWords(parts)}.</p> : null}
      <p>
        “Most likely” holds the true figure 19 times in 20, if stops come by chance along the way. Who
        withdrew by choice is in no row, but the km driven until then count.
      </p>
      {withGrowth ? (
        <p>Events differ: a rough one stops more cars, however well they were prepared.</p>
      ) : null}
    </Sheet>
  );
}
