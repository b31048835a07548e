'use client';

import { cardIdsThatFit } from '@halfshaft/lifing';
import { useMemo, useState } from 'react';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { Sheet } from '@/components/sheet';
import { LaterBulletinNotice } from '../bulletins/later-bulletin-notice';
import { ControlSheet } from '../control/control-sheet';
import { visitTimes } from '../control/visit-times';
import { WayHere, WayHome } from '../control/way-sheets';
import { readingsAddress, serviceAddress, tyresAddress } from '../events/addresses';
import { judgeVisit } from '../service/judge-visit';
import { snagsOfCar } from '../service/snags-of-car';
import { reasonNamesOf } from '../service/time-in-words';
import type { Visit } from '../service/visit';
import { VisitClock } from '../service/visit-clock';
import { visitFacts, visitTitle } from '../service/visit-facts';
import { LaterOutNotice } from '../stopped/later-out-notice';
import { carNameOf, nameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import styles from './bay.module.css';
import { BayDock } from './bay-dock';
import { bayTaskOfCard, bayTaskOfSnag } from './bay-task';
import { CarGate } from './car-gate';
import { LaterDialog } from './later-dialog';
import type { OpenDialog } from './open-dialog';
import { RepairSheet } from './repair-sheet';
import { StageSheet } from './stage-sheet';
import { TaskList } from './task-list';
import { useRecordFor } from './use-record-for';
import { WhoSheet } from './who-sheet';

/** The bay on a phone: take, do, close; what is wrong, what was measured, what cannot be done. */
export function BayScreen({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica, state } = work;
  const { entry, service } = visit;
  const [by, setBy] = useRecordFor(work);
  const [dialog, setDialog] = useState<OpenDialog | null>(null);
  const cards = useMemo(() => judgeVisit(replica, state, visit), [replica, state, visit]);
  const names = reasonNamesOf(replica, visit.inAt);
  const of = (verdict: 'doNow' | 'ifTime' | 'leave') =>
    cards.filter(({ judged }) => judged.verdict === verdict).map((each) => bayTaskOfCard(each, names));
  const snags = snagsOfCar(state, entry.entryId, service.id).map((each) =>
    bayTaskOfSnag(each, nameOf(replica, each.snag.raisedBy)),
  );
  const leave = of('leave');
  const newParts = useMemo(() => new Set(cardIdsThatFit(entry.cards)), [entry.cards]);
  const times = visitTimes(replica, state, visit);
  // Once the car is in, the times on the way are only looked up or put right.
  const isIn = times.recordedIn !== null;
  const wayHere = <WayHere work={work} visit={visit} by={by} />;
  const list = { work, by, newParts, onOpen: setDialog };
  const ids = { team: work.teamId, event: work.eventId, car: entry.entryId, at: service.id };
  return (
    <>
      <PageHeader
        above={`${replica.name} · ${carNameOf(replica, entry.entryId)}, ${entry.car.name}`}
        title={visitTitle(replica, visit)}
        facts={visitFacts(replica, visit, times).slice(0, 3)}
        actions={
          <>
            <LinkButton href={serviceAddress(ids)}>Why, and does it fit?</LinkButton>
            <LinkButton href={readingsAddress(ids)}>Readings</LinkButton>
            <LinkButton href={tyresAddress(ids)}>Tyres and settings</LinkButton>
          </>
        }
      />
      <div className={styles.clock}>
        <VisitClock work={work} visit={visit} />
      </div>
      <ControlSheet work={work} visit={visit} by={by} />
      {isIn ? null : wayHere}
      {times.recordedOut ? <WayHome work={work} visit={visit} by={by} /> : null}
      <LaterBulletinNotice teamId={work.teamId} eventId={work.eventId} />
      <LaterOutNotice replica={replica} state={state} visit={visit} />
      <WhoSheet work={work} by={by} onChoose={setBy} />
      <CarGate work={work} visit={visit} by={by} />
      <div className={styles.raise}>
        <Button wide look="main" onClick={() => setDialog({ kind: 'snag' })}>
          Raise a snag
        </Button>
        <Button wide onClick={() => setDialog({ kind: 'happened' })}>
          Something happened on the road
        </Button>
        <Button wide onClick={() => setDialog({ kind: 'fitted', cardId: null })}>
          A part was changed on the road
        </Button>
      </div>
      {snags.length > 0 ? (
        <Sheet title="Snags">
          <TaskList tasks={snags} {...list} />
        </Sheet>
      ) : null}
      <RepairSheet work={work} visit={visit} by={by} />
      <Sheet title="Do now">
        <TaskList tasks={of('doNow')} {...list} empty="Nothing must be done here." />
      </Sheet>
      <Sheet title="If time">
        <TaskList tasks={of('ifTime')} {...list} empty="Nothing is in between." />
      </Sheet>
      <Sheet title="Leave">
        <Disclosure summary={leave.length === 1 ? '1 card can wait' : `${leave.length} cards can wait`}>
          <TaskList tasks={leave} {...list} empty="No card can be left." />
        </Disclosure>
      </Sheet>
      <StageSheet work={work} visit={visit} by={by} onOpen={setDialog} />
      {isIn ? wayHere : null}
      <BayDock work={work} />
      {dialog === null ? null : (
        <LaterDialog work={work} visit={visit} by={by} dialog={dialog} onClose={() => setDialog(null)} />
      )}
    </>
  );
}
