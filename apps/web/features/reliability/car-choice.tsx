import type { CarOutline } from '@halfshaft/contract';
import { Table, type TableColumn } from '@/components/table';
import { reliabilityAddress } from '../events/addresses';
import { RowLink } from '../events/row-link';
import { drivenInWords } from './amount-driven';
import { partRows } from './place-rows';

interface CarChoiceProps {
  teamId: string;
  cars: readonly CarOutline[];
  shownId: string;
}

/** The team's cars beside each other; one of them is shown below. */
export function CarChoice({ teamId, cars, shownId }: CarChoiceProps) {
  const columns: TableColumn<CarOutline>[] = [
    {
      key: 'name',
      heading: 'Car',
      leads: true,
      cell: ({ carId, name }) =>
        carId === shownId ? (
          `${name} (shown below)`
        ) : (
          <RowLink href={reliabilityAddress(teamId, carId)}>{name}</RowLink>
        ),
    },
    {
      key: 'driven',
      heading: 'In the log',
      cell: ({ stageMetres }) => drivenInWords('stageMetres', stageMetres),
    },
    { key: 'most', heading: 'Most often', cell: mostOften },
  ];
  return <Table caption="Cars" columns={columns} rows={cars} rowKey={({ carId }) => carId} />;
}

function mostOften(car: CarOutline): string {
  const [first] = partRows(car);
  return first ? `${first.name} (${first.words})` : 'nothing was out of order';
}
