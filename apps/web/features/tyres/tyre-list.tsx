import { isOnCar, TYRE_PLACES, type TyreId, type TyreUse, tyrePlaceInWords } from '@halfshaft/worklog';
import { Button } from '@/components/button';
import { EmptyState } from '@/components/empty-state';
import { Table, type TableColumn } from '@/components/table';
import { barInWords, distanceInWords, measureInWords, treadInWords, tyreName } from './tyre-words';
import styles from './tyres.module.css';

interface TyreListProps {
  tyres: readonly TyreUse[];
  onMeasure: (tyreId: TyreId) => void;
}

/** Every tyre, those on the car first; on paper with room to write what is measured. */
export function TyreList({ tyres, onMeasure }: TyreListProps) {
  if (tyres.length === 0) {
    return (
      <EmptyState title="No tyre written down yet">
        <p>Add each tyre with what is written on it. Its stages, tread and pressures then stand here.</p>
      </EmptyState>
    );
  }
  const ordered = [...tyres].sort(
    (one, other) => TYRE_PLACES.indexOf(one.place) - TYRE_PLACES.indexOf(other.place),
  );
  return (
    <Table
      caption="All tyres of the car"
      captionHidden
      columns={columnsOf(onMeasure)}
      rows={ordered}
      rowKey={({ tyreId }) => tyreId}
    />
  );
}

/** What stands before the comma, and below it the rest: the columns stay narrow and nothing is cut in two. */
function TwoLines({ text }: { text: string }) {
  const [first, second] = text.split(', ');
  return (
    <>
      <span className={styles.value}>{first}</span> <span className={styles.where}>{second}</span>
    </>
  );
}

function columnsOf(onMeasure: (tyreId: TyreId) => void): TableColumn<TyreUse>[] {
  return [
    { key: 'tyre', heading: 'Tyre', leads: true, cell: tyreName },
    { key: 'place', heading: 'Where', cell: ({ place }) => tyrePlaceInWords(place) },
    { key: 'driven', heading: 'Driven', cell: (tyre) => <TwoLines text={distanceInWords(tyre)} /> },
    {
      key: 'tread',
      heading: 'Tread',
      cell: ({ tread }) => <TwoLines text={measureInWords(tread, treadInWords)} />,
    },
    {
      key: 'cold',
      heading: 'Cold',
      cell: ({ cold }) => <TwoLines text={measureInWords(cold, barInWords)} />,
    },
    { key: 'hot', heading: 'Hot', cell: ({ hot }) => <TwoLines text={measureInWords(hot, barInWords)} /> },
    {
      key: 'measure',
      heading: 'Measure',
      cell: (tyre) => (
        <>
          <Button
            className="screen-only"
            look={isOnCar(tyre.place) ? 'plain' : 'quiet'}
            aria-label={`Measure ${tyreName(tyre)}, ${tyrePlaceInWords(tyre.place)}`}
            onClick={() => onMeasure(tyre.tyreId)}
          >
            Measure
          </Button>
          <span className="print-only">
            <TwoLines text="_____ mm, cold _____ hot _____" />
          </span>
        </>
      ),
    },
  ];
}
