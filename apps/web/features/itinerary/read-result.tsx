import { type Itinerary, servicesOf } from '@halfshaft/itinerary';
import { Table, type TableColumn } from '@/components/table';
import { type ReadPoint, readLegs, serviceInWords, totalsInWords } from './read-points';
import styles from './read-result.module.css';

const COLUMNS: readonly TableColumn<ReadPoint>[] = [
  {
    key: 'name',
    heading: 'First car, point',
    leads: true,
    // In one cell, so that a point takes two lines of a phone and not three.
    cell: (row) => (
      <span className={styles.point}>
        <span className={styles.clock}>{row.clock}</span>
        <span>{row.name}</span>
      </span>
    ),
  },
  { key: 'what', heading: 'What', cell: (row) => row.what },
];

/** What was understood, to be held beside the printed itinerary. */
export function ReadResult({ itinerary }: { itinerary: Itinerary }) {
  const services = servicesOf(itinerary);
  return (
    <>
      <p className={styles.totals}>{totalsInWords(itinerary)}</p>
      {services.length === 0 ? (
        <p>No service was found. A service needs two controls, “Service in” and “Service out”.</p>
      ) : (
        <ul className={styles.services} aria-label="Services">
          {services.map((service) => (
            <li key={service.id}>
              {serviceInWords(service)}, leg {service.leg}
            </li>
          ))}
        </ul>
      )}
      {readLegs(itinerary).map((leg) => (
        <Table
          key={leg.leg}
          caption={leg.title}
          columns={COLUMNS}
          rows={leg.points}
          rowKey={(point) => point.key}
        />
      ))}
    </>
  );
}
