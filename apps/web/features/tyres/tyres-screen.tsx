'use client';

import { runsOf, tyresOf } from '@halfshaft/worklog';
import { useMemo, useState } from 'react';
import { Button } from '@/components/button';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { Sheet } from '@/components/sheet';
import { BayDock } from '../bay/bay-dock';
import { useRecordFor } from '../bay/use-record-for';
import { WhoSheet } from '../bay/who-sheet';
import { bayAddress } from '../events/addresses';
import type { Visit } from '../service/visit';
import { SettingSheet } from '../settings/setting-sheet';
import { carNameOf, serviceNameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { allowanceInWords } from './allowance-in-words';
import { TreadCaution } from './tread-caution';
import { TyreDialog, type TyreDialogKind } from './tyre-dialog';
import { TyreList } from './tyre-list';
import { TyrePlan } from './tyre-plan';
import styles from './tyres.module.css';

/** Which tyre is where, what each has gone through, and which settings of the car were changed. Prints on A4. */
export function TyresScreen({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica, state, teamId, eventId } = work;
  const { entryId, car } = visit.entry;
  const [by, setBy] = useRecordFor(work);
  const [dialog, setDialog] = useState<TyreDialogKind | null>(null);
  const tyres = useMemo(() => {
    const runs = runsOf(state.stages.values(), entryId);
    const { itinerary } = replica;
    return tyresOf({
      facts: state.facts.values(),
      entryId,
      itinerary,
      runs,
      untilIndex: visit.service.inIndex,
    });
  }, [state, replica, entryId, visit.service.inIndex]);
  const ids = { team: teamId, event: eventId, car: entryId, at: visit.service.id };
  const carName = carNameOf(replica, entryId);
  const here = serviceNameOf(replica, visit.service.id);
  return (
    <>
      <PageHeader
        above={`${replica.name} · ${carName}, ${car.name}`}
        title="Tyres and settings"
        facts={[`At ${here}`, `Stages before ${here} count, and later ones the crew confirmed`]}
        actions={
          <>
            <LinkButton href={bayAddress(ids)}>To the bay</LinkButton>
            <PrintButton foot={`Tyres and settings at ${here}, ${carName}, ${replica.name}`}>
              Print
            </PrintButton>
          </>
        }
      />
      <div className="screen-only">
        <WhoSheet work={work} by={by} onChoose={setBy} />
      </div>
      <TreadCaution tyres={tyres} />
      <div className={styles.sides}>
        <Sheet title="On the car">
          <TyrePlan tyres={tyres} onPlace={(place) => setDialog({ kind: 'place', place })} />
        </Sheet>
        <Sheet
          title="All tyres"
          aside={
            <Button className="screen-only" onClick={() => setDialog({ kind: 'add', place: 'service' })}>
              Add a tyre
            </Button>
          }
        >
          <p>{allowanceInWords(tyres, replica.tyreAllowance)}</p>
          <TyreList tyres={tyres} onMeasure={(tyreId) => setDialog({ kind: 'measure', tyreId })} />
        </Sheet>
      </div>
      <SettingSheet work={work} visit={visit} by={by} />
      <div className="screen-only">
        <BayDock work={work} />
      </div>
      {dialog === null ? null : (
        <TyreDialog
          {...{ work, visit, by, tyres, dialog }}
          onOpen={setDialog}
          onClose={() => setDialog(null)}
        />
      )}
    </>
  );
}
