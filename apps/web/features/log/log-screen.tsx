'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/components/button';
import { EmptyState } from '@/components/empty-state';
import { PageHeader } from '@/components/page-header';
import { SelectField } from '@/components/select-field';
import { Stack } from '@/components/stack';
import { PhotoTrouble } from '../photos/photo-trouble';
import { carNameOf } from '../work/names';
import { WorkNotices } from '../work/work-notices';
import type { LoadedWork } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import { filterLog } from './filter-log';
import { LogDays } from './log-days';
import { logLineOf } from './log-line';

const PAGE = 100;

/** Everything that was done at the event, newest first. */
export function LogScreen({ work }: { work: LoadedWork }) {
  const { replica, state, entries } = work;
  const [car, setCar] = useState('');
  const [person, setPerson] = useState('');
  const [most, setMost] = useState(PAGE);
  const shown = useMemo(
    () => filterLog(entries, { car: car || null, person: person || null }),
    [entries, car, person],
  );
  const lines = shown.slice(0, most).map((entry) => logLineOf(entry, replica, state));
  return (
    <>
      <WorkTrouble work={work} />
      <WorkNotices work={work} />
      <PhotoTrouble work={work} />
      <PageHeader above={replica.name} title="Log" facts={[countInWords(entries.length)]} />
      {entries.length === 0 ? (
        <EmptyState title="Nothing has been done yet">
          <p>What is taken, closed, found or left in the bay stands here, with who and when.</p>
        </EmptyState>
      ) : (
        <Stack>
          <Stack across>
            {replica.entries.length > 1 ? (
              <SelectField
                label="Car"
                unchosen="All cars"
                value={car}
                onChange={(event) => setCar(event.target.value)}
                options={replica.entries.map(({ entryId }) => ({
                  value: entryId,
                  label: carNameOf(replica, entryId),
                }))}
              />
            ) : null}
            <SelectField
              label="Person"
              unchosen="Everyone"
              value={person}
              onChange={(event) => setPerson(event.target.value)}
              options={replica.people.map(({ personId, name }) => ({ value: personId, label: name }))}
            />
          </Stack>
          {lines.length === 0 ? <p>No entry for this choice.</p> : <LogDays lines={lines} work={work} />}
          {shown.length > most ? (
            <div>
              <Button onClick={() => setMost(most + PAGE)}>Show {PAGE} more</Button>
            </div>
          ) : null}
        </Stack>
      )}
    </>
  );
}

function countInWords(count: number): string {
  return count === 1 ? '1 entry' : `${count} entries`;
}
