'use client';

import { type KeyboardEvent, useState } from 'react';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { Notice } from '@/components/notice';
import { PageHeader } from '@/components/page-header';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { useDraft } from '../bay/use-draft';
import { logAddress, sheetAddress } from '../events/addresses';
import type { Visit } from '../service/visit';
import { visitTitle } from '../service/visit-facts';
import { carNameOf, nameOf } from '../work/names';
import { WorkNotices } from '../work/work-notices';
import type { LoadedWork } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import { focusNext } from './focus-next';
import { recordGroups, usePrintedSheet } from './printed-sheet';
import { RecordGate } from './record-gate';
import { RecordRow } from './record-row';
import { type PlacedRow, recordRows } from './record-rows';
import { EMPTY_ROW, type RowDraft, sheetDraft } from './row-draft';
import { useSheet } from './use-sheet';

/** A filled sheet, typed in row by row in the order of the paper; nothing is sent until "Record all". */
export function RecordScreen({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica, teamId, eventId } = work;
  const { entry, service } = visit;
  const { planned } = useSheet(work, visit);
  const [printed] = usePrintedSheet(visit);
  const [draft, setDraft] = useDraft(`sheet.${entry.entryId}.${service.id}`, sheetDraft, {});
  const [warned, setWarned] = useState(false);
  const [told, setTold] = useState('');
  if (!planned) return <LoadingState words="Working out the rows of the sheet …" />;
  const { snags } = planned.sheet;
  const { columns, rest } = recordGroups(planned.sheet, printed);
  const placed: PlacedRow[] = [
    ...columns.flatMap(({ personId, rows }) => rows.map((row) => ({ row, personId }))),
    ...[...snags, ...rest].map((row) => ({ row, personId: null })),
  ];
  const filled = placed.filter(({ row }) => (draft[row.task.id]?.what ?? '') !== '').length;
  const ids = { team: teamId, event: eventId, car: entry.entryId, at: service.id };

  function recordAll() {
    const { left, recorded } = recordRows(work, placed, draft);
    setDraft(left);
    const waiting = filled - recorded;
    setWarned(waiting > 0);
    const rows = recorded === 1 ? '1 row is' : `${recorded} rows are`;
    setTold(`${rows} in the log.${waiting > 0 ? ` ${waiting} not: see what stands beside them.` : ''}`);
  }

  function onEnter(event: KeyboardEvent<HTMLFormElement>) {
    if (event.key === 'Enter' && focusNext(event.currentTarget, event.target)) event.preventDefault();
  }

  const list = (rows: readonly PlacedRow[]) =>
    rows.map(({ row, personId }) => (
      <RecordRow
        key={row.task.id}
        work={work}
        row={row}
        columnPerson={personId}
        draft={draft[row.task.id] ?? EMPTY_ROW}
        warned={warned}
        onChange={(next: RowDraft) => {
          setTold('');
          setDraft({ ...draft, [row.task.id]: next });
        }}
      />
    ));

  return (
    <>
      <WorkTrouble work={work} />
      <WorkNotices work={work} />
      <PageHeader
        above={`${replica.name} · ${carNameOf(replica, entry.entryId)}, ${entry.car.name}`}
        title={`Record the sheet: ${visitTitle(replica, visit)}`}
        facts={[
          printed ? 'rows as printed on this device' : 'rows in the order of the paper',
          'Enter goes on',
          'kept on this device until recorded',
        ]}
        actions={<LinkButton href={sheetAddress(ids)}>The sheet, and who was there</LinkButton>}
      />
      <RecordGate work={work} visit={visit} />
      <form
        onKeyDown={onEnter}
        onSubmit={(event) => {
          event.preventDefault();
          recordAll();
        }}
      >
        <Stack gap="large">
          {columns.map(({ personId, rows }) => (
            <Sheet key={personId} title={nameOf(replica, personId)}>
              {rows.length === 0 ? <p>No row of their own.</p> : null}
              {list(rows.map((row) => ({ row, personId })))}
            </Sheet>
          ))}
          {snags.length > 0 ? (
            <Sheet title="Snags">{list(snags.map((row) => ({ row, personId: null })))}</Sheet>
          ) : null}
          <Sheet title="Rows that could wait">
            <Disclosure summary="Something was done that the sheet did not ask for">
              {list(rest.map((row) => ({ row, personId: null })))}
            </Disclosure>
          </Sheet>
          {told === '' ? null : (
            <Notice kind={warned ? 'warning' : 'info'} title={warned ? 'Not all' : 'Recorded'} spoken>
              <p>{told}</p>
              <p>
                <LinkButton href={logAddress(teamId, eventId)}>To the log</LinkButton>
              </p>
            </Notice>
          )}
          <Button look="main" wide type="submit" disabled={filled === 0}>
            {filled === 0 ? 'Nothing filled in yet' : `Record all (${filled})`}
          </Button>
        </Stack>
      </form>
    </>
  );
}
