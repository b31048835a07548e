import type { PartOutline } from '@halfshaft/contract';
import { adviseLimit, type LimitAdvice } from '@halfshaft/reliability';
import { useMemo } from 'react';
import { CurveChart } from '@/components/curve-chart';
import { Disclosure } from '@/components/disclosure';
import { Table, type TableColumn } from '@/components/table';
import { COUNTER_UNITS } from '../cards/units';
import { drivenInFigures, drivenInWords } from './amount-driven';
import { leftOutInWords, unfitInWords } from './left-out-in-words';
import { drawLives, type LifePoint, shareInWords } from './life-points';
import { LimitAdviceNote } from './limit-advice-note';

interface LifeCurveProps {
  teamId: string;
  carId: string;
  part: PartOutline;
}

const LEVELS = [
  { at: 0, words: 'none' },
  { at: 0.5, words: 'half' },
  { at: 1, words: 'all good' },
];

/** How long the part lasts, once enough of them have been watched from new; else what is missing, in a sentence. */
export function LifeCurve({ teamId, carId, part }: LifeCurveProps) {
  const advice = useMemo(() => adviseLimit(part.lives.observations), [part]);
  const leftOut = leftOutInWords(part);
  if (!advice.ok) {
    return (
      <p>
        {unfitInWords(part, advice)} {leftOut}
      </p>
    );
  }
  return (
    <>
      <LimitAdviceNote teamId={teamId} carId={carId} part={part} advice={advice} />
      <Drawing part={part} advice={advice} />
      {leftOut === '' ? null : <p>{leftOut}</p>}
    </>
  );
}

function Drawing({ part, advice }: { part: PartOutline; advice: LimitAdvice }) {
  const { counter, every } = part;
  const { end, points, rows, marks } = useMemo(() => drawLives(part, advice), [part, advice]);
  const { lives, failures } = advice.fit;
  const limit = every !== null && every <= end ? [{ x: every, words: 'limit now' }] : [];
  return (
    <figure>
      <figcaption>
        How many are still good, of {lives} watched from new; {failures} of them failed. Filled: failed.
        Outlined: still good when last known. Hatched: where the line may lie.
      </figcaption>
      <CurveChart
        says={`Of ${lives} parts the share that is still good after a distance; the table below has the numbers.`}
        along={COUNTER_UNITS[counter].label}
        write={(amount) => (amount === 0 ? '0' : drivenInFigures(counter, amount))}
        end={end}
        top={1}
        levels={LEVELS}
        line={points}
        band={points}
        marks={marks}
        uprights={limit}
      />
      <Disclosure summary="The chart as a table" printOpen>
        <LifeTable part={part} rows={rows} />
      </Disclosure>
    </figure>
  );
}

function LifeTable({ part: { counter, name }, rows }: { part: PartOutline; rows: readonly LifePoint[] }) {
  const columns: TableColumn<LifePoint>[] = [
    { key: 'x', heading: 'After', leads: true, cell: ({ x }) => drivenInWords(counter, x) },
    { key: 'y', heading: 'Still good', cell: ({ y }) => `about ${shareInWords(y)}` },
    {
      key: 'bounds',
      heading: 'May be',
      cell: ({ low, high }) => `${shareInWords(low)} to ${shareInWords(high)}`,
    },
  ];
  return (
    <Table
      caption={`How long it lasts: ${name}`}
      captionHidden
      columns={columns}
      rows={rows}
      rowKey={({ x }) => String(x)}
    />
  );
}
