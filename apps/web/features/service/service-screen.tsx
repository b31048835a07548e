'use client';

import { positionsOf, routeMetresAt } from '@halfshaft/itinerary';
import { useMemo } from 'react';
import { Disclosure } from '@/components/disclosure';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { RepairSheet } from '../bay/repair-sheet';
import { ControlSheet } from '../control/control-sheet';
import { timesOfEntry } from '../control/lateness-of';
import { visitTimes } from '../control/visit-times';
import { WayHere, WayHome } from '../control/way-sheets';
import { bayAddress, readingsAddress, sheetAddress, tyresAddress } from '../events/addresses';
import { RouteStrip } from '../route/route-strip';
import { QueueSheet } from '../sheet/queue-sheet';
import { outAt } from '../stopped/out-at';
import { OutNotice } from '../stopped/out-notice';
import { carNameOf } from '../work/names';
import { WorkNotices } from '../work/work-notices';
import type { LoadedWork } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import { CardList } from './card-list';
import { CrewSheet } from './crew-sheet';
import { FitSheet } from './fit-sheet';
import { HomeWork } from './home-work';
import { judgeVisit } from './judge-visit';
import { OtherServices } from './other-services';
import { SnagList } from './snag-list';
import { snagsOfCar } from './snags-of-car';
import { reasonNamesOf } from './time-in-words';
import type { Visit } from './visit';
import { VisitClock } from './visit-clock';
import { visitFacts, visitTitle } from './visit-facts';
import { wearRowsOf } from './wear-rows';

/** One service of one car: what must be done, what can wait, why, and whether it fits. */
export function ServiceScreen({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { replica, state, teamId, eventId } = work;
  const { entry, service } = visit;
  const { entryId } = entry;
  const cards = useMemo(() => judgeVisit(replica, state, visit), [replica, state, visit]);
  const of = (verdict: 'doNow' | 'ifTime' | 'leave') =>
    cards.filter((each) => each.judged.verdict === verdict);
  const leave = of('leave');
  const isOut = outAt(replica, state, visit) !== null;
  const times = visitTimes(replica, state, visit);
  const title = visitTitle(replica, visit);
  const car = carNameOf(replica, entryId);
  const ids = { team: teamId, event: eventId, car: entryId, at: service.id };
  return (
    <>
      <WorkTrouble work={work} />
      <WorkNotices work={work} />
      <PageHeader
        above={`${replica.name} · ${car}, ${entry.car.name}`}
        title={title}
        facts={visitFacts(replica, visit, times)}
        actions={
          <>
            <LinkButton look="main" href={bayAddress(ids)}>
              To the bay
            </LinkButton>
            <LinkButton href={sheetAddress(ids)}>Sheet by person</LinkButton>
            <LinkButton href={readingsAddress(ids)}>Readings</LinkButton>
            <LinkButton href={tyresAddress(ids)}>Tyres and settings</LinkButton>
            <PrintButton foot={`${title}, ${car}, ${replica.name}`}>Print</PrintButton>
          </>
        }
      />
      <div className="screen-only">
        <Stack>
          <VisitClock work={work} visit={visit} />
          <ControlSheet work={work} visit={visit} by={replica.me.personId} />
          {times.recordedIn === null ? <WayHere work={work} visit={visit} by={replica.me.personId} /> : null}
          {times.recordedOut ? <WayHome work={work} visit={visit} by={replica.me.personId} /> : null}
        </Stack>
      </div>
      <OutNotice replica={replica} state={state} visit={visit} />
      {visit.serviceIndex === 0 ? <HomeWork work={work} entry={entry} /> : null}
      {isOut ? null : (
        <>
          <FitSheet visit={visit} allowedSeconds={times.workSeconds} doNow={of('doNow')} />
          <QueueSheet cards={cards} />
        </>
      )}
      <Sheet title="Do now">
        <CardList cards={of('doNow')} work={work} visit={visit} empty="Nothing must be done here." />
      </Sheet>
      <Sheet title="If time">
        <CardList cards={of('ifTime')} work={work} visit={visit} empty="Nothing is in between." />
      </Sheet>
      <Sheet title="Snags">
        <SnagList snags={snagsOfCar(state, entryId, service.id)} work={work} />
      </Sheet>
      <RepairSheet work={work} visit={visit} by={replica.me.personId} />
      {isOut ? null : <CrewSheet work={work} visit={visit} />}
      <Sheet title="Leave">
        <Disclosure
          printOpen
          summary={leave.length === 1 ? '1 card can wait' : `${leave.length} cards can wait`}
        >
          <CardList cards={leave} work={work} visit={visit} empty="No card can be left." />
        </Disclosure>
      </Sheet>
      <Sheet title="Along the route">
        <RouteStrip
          itinerary={replica.itinerary}
          services={visit.services}
          startPosition={positionsOf(entry)}
          times={timesOfEntry(replica, state, entry)}
          hereMetres={routeMetresAt(replica.itinerary, service.inIndex)}
          rows={wearRowsOf(replica.itinerary, visit, cards, reasonNamesOf(replica, visit.inAt))}
        />
      </Sheet>
      <Stack>
        <OtherServices work={work} visit={visit} />
      </Stack>
    </>
  );
}
