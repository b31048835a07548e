'use client';

import { useState } from 'react';
import { Button } from '@/components/button';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { Sheet } from '@/components/sheet';
import { BayDock } from '../bay/bay-dock';
import { LaterDialog } from '../bay/later-dialog';
import type { OpenDialog } from '../bay/open-dialog';
import { StageSheet } from '../bay/stage-sheet';
import { stagesBefore } from '../bay/stages-before';
import { useRecordFor } from '../bay/use-record-for';
import { WhoSheet } from '../bay/who-sheet';
import { roadAddress } from '../events/addresses';
import { SnagList } from '../service/snag-list';
import { snagsOfCar } from '../service/snags-of-car';
import type { Visit } from '../service/visit';
import { OutSheet } from '../stopped/out-sheet';
import { carNameOf, serviceNameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { DebriefSheet } from './debrief-sheet';
import styles from './road.module.css';

/** The crew between two services, seconds to spare: the stage is done, something is wrong, and what they tell the scribe. */
export function RoadScreen({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica, state } = work;
  const { entry, service } = visit;
  const [by, setBy] = useRecordFor(work);
  const [dialog, setDialog] = useState<OpenDialog | null>(null);
  return (
    <>
      <PageHeader
        above={`${replica.name} · ${carNameOf(replica, entry.entryId)}, ${entry.car.name}`}
        title={`On the road to ${serviceNameOf(replica, service.id)}`}
      />
      <div className={styles.taps}>
        <StageTap work={work} visit={visit} onOpen={setDialog} />
        <Button wide className={styles.tap} onClick={() => setDialog({ kind: 'crewSnag' })}>
          Something is wrong
        </Button>
        <Button wide className={styles.tap} onClick={() => setDialog({ kind: 'happened' })}>
          Something happened
        </Button>
      </div>
      <DebriefSheet work={work} visit={visit} by={by} />
      <Sheet title="Snags">
        <SnagList snags={snagsOfCar(state, entry.entryId, service.id)} work={work} />
      </Sheet>
      <StageSheet work={work} visit={visit} by={by} onOpen={setDialog} />
      <OutSheet work={work} visit={visit} by={by} />
      <WhoSheet work={work} by={by} onChoose={setBy} />
      <BayDock work={work} />
      {dialog === null ? null : (
        <LaterDialog work={work} visit={visit} by={by} dialog={dialog} onClose={() => setDialog(null)} />
      )}
    </>
  );
}

interface StageTapProps {
  work: LoadedWork;
  visit: Visit;
  onOpen: (dialog: OpenDialog) => void;
}

/** The first stage on the way that nobody has spoken of; when all are said, the way on. */
function StageTap({ work, visit, onOpen }: StageTapProps) {
  const { entry, service, services, serviceIndex } = visit;
  const next = stagesBefore(work.replica, work.state, visit).find(({ said, isRecent }) => isRecent && !said);
  if (next) {
    const { id } = next.stage;
    return (
      <Button wide look="main" className={styles.tap} onClick={() => onOpen({ kind: 'stage', stageId: id })}>
        {id} done
      </Button>
    );
  }
  const following = services[serviceIndex + 1];
  return (
    <>
      <p>Every stage before {serviceNameOf(work.replica, service.id)} is said.</p>
      {following ? (
        <LinkButton
          href={roadAddress({
            team: work.teamId,
            event: work.eventId,
            car: entry.entryId,
            at: following.id,
          })}
        >
          On to {serviceNameOf(work.replica, following.id)}
        </LinkButton>
      ) : null}
    </>
  );
}
