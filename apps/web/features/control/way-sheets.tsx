'use client';

import type { PersonId } from '@halfshaft/worklog';
import type { Visit } from '../service/visit';
import { serviceNameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { RoadSheet } from './road-sheet';
import { roadHome, roadTo } from './road-times';
import { visitTimes } from './visit-times';

interface WaySheetProps {
  work: LoadedWork;
  visit: Visit;
  by: PersonId;
}

/** The times on the road to a service. */
export function WayHere({ work, visit, by }: WaySheetProps) {
  const { recordedIn, dueIn } = visitTimes(work.replica, work.state, visit);
  const openUntil = recordedIn ? Number.NEGATIVE_INFINITY : dueIn;
  const title = `On the way to ${serviceNameOf(work.replica, visit.service.id)}`;
  return <RoadSheet {...{ work, visit, by, title, openUntil }} part={roadTo(visit)} />;
}

/** The times on the road from the last service; nothing at any other. */
export function WayHome({ work, visit, by }: WaySheetProps) {
  const part = roadHome(visit, work.replica);
  return (
    part && (
      <RoadSheet
        {...{ work, visit, by, part }}
        title="On the way to the finish"
        openUntil={Number.POSITIVE_INFINITY}
      />
    )
  );
}
