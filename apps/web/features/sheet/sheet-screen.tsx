'use client';

import { ChoiceGroup } from '@/components/choice-group';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { recordablePeople } from '../bay/use-record-for';
import { visitTimes } from '../control/visit-times';
import { recordSheetAddress } from '../events/addresses';
import type { Visit } from '../service/visit';
import { visitFacts, visitTitle } from '../service/visit-facts';
import { carNameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import { PersonPaper } from './person-paper';
import { PlanNotice } from './plan-notice';
import { useKeepPrinted } from './printed-sheet';
import styles from './sheet.module.css';
import { useSheet } from './use-sheet';

/** The sheet of one service by person: who is there is ticked on the screen, the paper is what is printed. */
export function SheetScreen({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica, state, teamId, eventId } = work;
  const { entry, service } = visit;
  const { people, setPeople, planned } = useSheet(work, visit);
  useKeepPrinted(visit, planned?.sheet ?? null);
  const title = visitTitle(replica, visit);
  const car = carNameOf(replica, entry.entryId);
  const ids = { team: teamId, event: eventId, car: entry.entryId, at: service.id };
  const choices = recordablePeople(replica.people);
  return (
    <>
      <div className="screen-only">
        <Stack gap="large">
          <WorkTrouble work={work} />
          <PageHeader
            above={`${replica.name} · ${car}, ${entry.car.name}`}
            title={`Sheet: ${title}`}
            facts={visitFacts(replica, visit, visitTimes(replica, state, visit)).slice(0, 3)}
            actions={
              <>
                {planned ? (
                  <PrintButton look="main" foot={`${title}, ${car}, ${replica.name}`}>
                    Print the sheet
                  </PrintButton>
                ) : null}
                <LinkButton href={recordSheetAddress(ids)}>Record a filled sheet</LinkButton>
              </>
            }
          />
          <Sheet title="Who is at this service?">
            <ChoiceGroup
              label="Each gets a column"
              pick="many"
              across
              choices={choices.map(({ personId, name }) => ({ value: personId, label: name }))}
              chosen={people}
              onChange={({ target }) =>
                setPeople(
                  target.checked ? [...people, target.value] : people.filter((each) => each !== target.value),
                )
              }
            />
          </Sheet>
          {planned ? <PlanNotice proposal={planned.proposal} /> : null}
        </Stack>
      </div>
      {planned ? (
        <PersonPaper work={work} visit={visit} planned={planned} />
      ) : (
        <LoadingState words="Working out who does what …" />
      )}
      <p className={`screen-only ${styles.hint}`}>
        The numbers before the rows are for recording: they stay the same when the list changes.
      </p>
    </>
  );
}
