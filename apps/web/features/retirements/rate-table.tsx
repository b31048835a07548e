import type { RetirementFigures } from '@halfshaft/contract';
import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import { Table, type TableColumn } from '@/components/table';
import { growthInWords, noneInWords, partsInWords, rangeInWords, rateInWords } from './figures-in-words';
import { RateBar, topOfRates } from './rate-bar';
import { type RateRow, rateRows } from './rate-rows';

const CAUSE: TableColumn<RateRow> = { key: 'cause', heading: 'Cause', leads: true, cell: ({ name }) => name };
const STOPS: TableColumn<RateRow> = {
  key: 'stops',
  heading: 'Stops',
  figures: true,
  cell: ({ rate }) => rate.stops,
};
const EVERY_FIGURE: TableColumn<RateRow>[] = [
  CAUSE,
  STOPS,
  { key: 'unsure', heading: 'Of these unsure', figures: true, cell: ({ rate }) => rate.unsure },
  { key: 'rate', heading: 'Rate', figures: true, cell: ({ rate }) => rateInWords(rate) },
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

/** How often each cause stops a car, drawn with how sure that is; what broke; every figure of it behind. */
export function RateTable({ figures, parts, withGrowth = false }: RateTableProps) {
  const rows = rateRows(figures);
  const [all, ...causes] = rows;
  // A phone shows what did stop cars; what did not is said in a line.
  const shown = rows.filter((row) => row === all || row.rate.stops > 0);
  const none = causes.filter(({ rate }) => rate.stops === 0);
  const top = topOfRates(shown.map(({ rate }) => rate));
  const drawn: TableColumn<RateRow> = {
    key: 'drawn',
    heading: 'Per 1,000 stage km',
    cell: ({ rate }) => <RateBar rate={rate} top={top} />,
  };
  return (
    <Sheet title="Stops per 1,000 stage km">
      {withGrowth ? <p>From event to event: {growthInWords(figures.growth.all)}.</p> : null}
      <Table
        caption="Stops per 1,000 stage km by cause"
        captionHidden
        columns={[CAUSE, STOPS, drawn]}
        rows={shown}
        rowKey={({ name }) => name}
      />
      {none.length > 0 ? <p>{noneInWords(none)}</p> : null}
      {parts.length > 0 ? <p>What broke: {partsInWords(parts)}.</p> : null}
      <Disclosure summary="Every figure, and how to read it" printOpen>
        <p>
          {Math.round(figures.rates.distance).toLocaleString('en')} stage km were driven by all cars together.
          In brackets, and drawn as the wide bar, is what most likely holds the true figure: 19 times in 20,
          if stops come by chance along the way. Who withdrew by choice is in no row, but the km driven until
          then count.
        </p>
        {withGrowth ? (
          <p>Events differ: a rough one stops more cars, however well they were prepared.</p>
        ) : null}
        <Table
          caption="Every figure by cause"
          captionHidden
          columns={withGrowth ? [...EVERY_FIGURE, GROWTH] : EVERY_FIGURE}
          rows={rows}
          rowKey={({ name }) => name}
        />
      </Disclosure>
    </Sheet>
  );
}
