'use client';

import type { ToldShares as Told } from '@halfshaft/contract';
import { formatKilometres } from '@halfshaft/itinerary';
import { useQuery } from '@tanstack/react-query';
import { Disclosure } from '@/components/disclosure';
import { LoadingState } from '@/components/loading-state';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { Table, type TableColumn } from '@/components/table';
import { api } from '@/lib/api';
import { LoadTrouble } from '../events/trouble';
import { CountedCars } from './counted-cars';
import { type CountedLine, countedLines } from './counts-in-words';

type Pool = Told['pools'][number];

/** What teams agreed to share of their logs, never about fewer than five of them. */
export function ToldShares({ organiserId }: { organiserId: string }) {
  const told = useQuery(api.share.told.queryOptions({ organiserId }));
  if (told.isPending) return <LoadingState words="Fetching what teams share …" />;
  if (told.data === undefined) {
    return <LoadTrouble error={told.error} onTryAgain={() => told.refetch()} />;
  }
  const { pools, isWaiting } = told.data;
  return (
    <Sheet title="What teams share of their logs">
      {pools.length === 0 ? (
        <p>
          Nothing yet. Each team decides for each event, and nothing is shown before five teams share:
          otherwise it could be told whose it is.
        </p>
      ) : null}
      {pools.map((pool) => (
        <SharedPool key={pool.eventNames.join()} pool={pool} />
      ))}
      {isWaiting ? (
        <p>
          Some of it is held back, since a few teams’ alone could be worked out from it. It is shown once more
          teams share.
        </p>
      ) : null}
    </Sheet>
  );
}

function SharedPool({ pool: { eventNames, teams, totals, cars } }: { pool: Pool }) {
  const per1000 = (times: number) =>
    totals.stageMetres > 0 ? ((times * 1_000_000) / totals.stageMetres).toFixed(1) : '–';
  const columns: TableColumn<CountedLine>[] = [
    { key: 'which', heading: 'What', leads: true, cell: ({ what, which }) => `${what}: ${which}` },
    { key: 'times', heading: 'Times', figures: true, cell: ({ times }) => String(times) },
    { key: 'rate', heading: 'In 1,000 stage km', figures: true, cell: ({ times }) => per1000(times) },
  ];
  return (
    <Stack>
      <h3>{eventNames.join(', ')}</h3>
      <p>
        {teams} teams, {formatKilometres(totals.stageMetres)} stage km together.
      </p>
      <Table
        caption={`What was found at ${eventNames.join(', ')}`}
        captionHidden
        columns={columns}
        rows={countedLines(totals)}
        rowKey={({ what, which }) => `${what} ${which}`}
      />
      {cars.length > 0 ? (
        <Disclosure summary={`${cars.length} cars, without names`}>
          <CountedCars caption="Each car that may be listed" cars={cars} />
        </Disclosure>
      ) : null}
    </Stack>
  );
}
